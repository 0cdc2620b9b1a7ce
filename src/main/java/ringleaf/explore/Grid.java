// SPDX-License-Identifier: Apache-2.0
package ringleaf.explore;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import ringleaf.spec.SetOption;
import ringleaf.spec.text.Problem;
import ringleaf.spec.text.Problems;
import ringleaf.spec.text.Shown;

/**
 * Every combination of the values of some axes; the last axis counts fastest.
 *
 * @param axes at least one
 */
public record Grid(List<Axis> axes) {
    /** More combinations than this are asked for twice. */
    public static final int ASKED_TWICE = 100_000;
    /** More than this are never looked at: the table would not fit into a usual machine's memory. */
    public static final int MOST = 2_000_000;

    private static final long UNCOUNTABLE = 1_000_000_000_000_000L;

    public Grid {
        axes = List.copyOf(axes);
    }

    /**
     * Reads the axes of a command line. What is wrong goes to the problems: values that no spec takes, and more
     * combinations than are allowed, with their count.
     *
     * @param typed each {@code PATH=VALUES}
     * @param sure whether more than {@link #ASKED_TWICE} combinations are meant
     */
    public static Optional<Grid> read(List<String> typed, Variants variants, boolean sure, Problems problems) {
        AxisReader reader = new AxisReader(variants.kinds(), variants.root(), problems);
        List<AxisReader.Counted> counted = new ArrayList<>();
        long count = 1;
        for (String each : typed) {
            Optional<AxisReader.Counted> axis = reader.read(each);
            if (axis.isPresent()) {
                for (AxisReader.Counted other : counted) {
                    if (overlap(other.path().keys(), axis.get().path().keys())) {
                        problems.at(
                                axis.get().source().whole(),
                                "varies what " + other.path().shown() + " varies");
                    }
                }
                counted.add(axis.get());
                count = count > Long.MAX_VALUE / Math.max(1, axis.get().size())
                        ? Long.MAX_VALUE
                        : count * axis.get().size();
            }
        }
        if (!problems.isEmpty() || counted.isEmpty()) {
            return Optional.empty();
        }
        if (count > MOST || count > ASKED_TWICE && !sure) {
            String shown = count > UNCOUNTABLE ? "more than " + UNCOUNTABLE : Long.toString(count);
            problems.at(
                    counted.get(counted.size() - 1).source().whole(),
                    "comes to " + shown + " combinations in all, and "
                            + (count > MOST ? MOST + " are the most" : "more than " + ASKED_TWICE + " take long"),
                    count > MOST ? "wider steps, or fewer fields" : "wider steps, or --yes if you mean it");
            return Optional.empty();
        }
        List<Axis> axes = new ArrayList<>();
        for (AxisReader.Counted each : counted) {
            reader.axis(each).ifPresent(axes::add);
        }
        return problems.isEmpty() ? checked(new Grid(axes), variants, problems) : Optional.empty();
    }

    private static boolean overlap(List<String> one, List<String> other) {
        int n = Math.min(one.size(), other.size());
        return one.subList(0, n).equals(other.subList(0, n));
    }

    /** Values that their fields refuse are told now; values that contradict others are rows of the result. */
    private static Optional<Grid> checked(Grid grid, Variants variants, Problems problems) {
        Variants.Reader reader = variants.reader();
        for (int a = 0; a < grid.axes.size(); a++) {
            Axis axis = grid.axes.get(a);
            for (int end : axis.ends()) {
                List<SetOption> options = grid.firsts();
                options.set(a, axis.options().get(end));
                Variants.Variant variant = reader.read(options);
                if (variant.document().isEmpty()) {
                    grid.refuse(axis, end, variant.problems(), problems);
                }
            }
        }
        return problems.isEmpty() ? Optional.of(grid) : Optional.empty();
    }

    private void refuse(Axis axis, int end, List<Problem> found, Problems problems) {
        for (Problem problem : found) {
            boolean own = problem.place().source() == axis.source();
            boolean others = false;
            for (Axis each : axes) {
                others |= problem.place().source() == each.source();
            }
            if (own && axis.path().isOfMechanism()) {
                problems.at(problem.place(), problem.reason(), problem.hint());
            } else if (own && problem.reason().startsWith("there is no ")) {
                problems.at(
                        problem.place(), Shown.quoted(axis.texts().get(end)) + ": " + problem.reason(), problem.hint());
            } else if (!others) {
                problems.at(problem.place(), problem.reason(), problem.hint());
            }
        }
    }

    private List<SetOption> firsts() {
        List<SetOption> options = new ArrayList<>();
        for (Axis axis : axes) {
            options.add(axis.options().get(0));
        }
        return options;
    }

    /** The number of combinations. */
    public int size() {
        int size = 1;
        for (Axis axis : axes) {
            size *= axis.size();
        }
        return size;
    }

    /** Which value of an axis a combination takes. */
    public int place(int index, int axis) {
        int rest = index;
        for (int a = axes.size() - 1; a > axis; a--) {
            rest /= axes.get(a).size();
        }
        return rest % axes.get(axis).size();
    }

    /** The text of the value that a combination takes on an axis. */
    public String text(int index, int axis) {
        return axes.get(axis).texts().get(place(index, axis));
    }

    /** What lays a combination over the spec. */
    public List<SetOption> options(int index) {
        List<SetOption> options = new ArrayList<>();
        for (int a = 0; a < axes.size(); a++) {
            options.add(axes.get(a).options().get(place(index, a)));
        }
        return options;
    }

    /** The mechanisms that vary, in the order of the axes; all of them where something varies that all share. */
    List<String> touched(List<String> all) {
        List<String> touched = new ArrayList<>();
        for (Axis axis : axes) {
            if (!axis.path().isOfMechanism()) {
                return all;
            }
            if (!touched.contains(axis.path().mechanism())) {
                touched.add(axis.path().mechanism());
            }
        }
        return touched;
    }

    /** What of a combination concerns a mechanism, as a key. */
    List<Integer> part(int index, String mechanism) {
        List<Integer> part = new ArrayList<>();
        for (int a = 0; a < axes.size(); a++) {
            SpecPath path = axes.get(a).path();
            if (!path.isOfMechanism() || path.mechanism().equals(mechanism)) {
                part.add(place(index, a));
            }
        }
        return part;
    }
}
