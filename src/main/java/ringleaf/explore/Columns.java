// SPDX-License-Identifier: Apache-2.0
package ringleaf.explore;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import ringleaf.mechanism.Kind;
import ringleaf.mechanism.Memo;
import ringleaf.mechanism.Trial;
import ringleaf.part.Choice;
import ringleaf.part.Dimension;
import ringleaf.spec.text.Nearest;
import ringleaf.spec.text.Renamed;
import ringleaf.spec.text.Shown;

/**
 * What is compared: one figure that is sought, those that are weighed against each other, others that are shown.
 *
 * @param mechanisms that vary
 * @param all columns, the one that is sought first
 * @param units of the columns
 * @param weighed places of the columns that are weighed
 * @param ways names of the choices that are solved, with their mechanism where there are several
 */
public record Columns(
        List<String> mechanisms, List<Column> all, List<String> units, List<Integer> weighed, List<Column> ways) {

    /** The figure that is sought. */
    public Column sought() {
        return all.get(0);
    }

    /** Names of the figures that a mechanism is asked for. */
    List<String> names(String mechanism) {
        List<String> names = new ArrayList<>();
        for (Column column : all) {
            if (column.mechanism().isEmpty() || column.mechanism().equals(mechanism)) {
                names.add(column.name());
            }
        }
        return names;
    }

    /** Finds them out from two variants that can be read. */
    static final class Finder {
        private final Grid grid;
        private final Variants.Variant variant;
        private final List<String> mechanisms;
        private final List<Trial> trials = new ArrayList<>();
        /** Columns that the last of the combinations has, where some figures come and go with what varies. */
        private final List<Trial> others = new ArrayList<>();

        Finder(Grid grid, Variants.Variant variant, Variants.Variant other, int states, Memo memo) {
            this.grid = grid;
            this.variant = variant;
            List<String> every = new ArrayList<>();
            variant.mechanisms().forEach(m -> every.add(m.name()));
            this.mechanisms = grid.touched(every);
            for (String name : mechanisms) {
                trials.add(variant.planned().get(variant.indexOf(name)).trial(states, memo));
                others.add(
                        other == variant
                                ? trials.get(trials.size() - 1)
                                : other.planned().get(other.indexOf(name)).trial(states, memo));
            }
        }

        /**
         * The columns.
         *
         * @param asked the figure to seek; empty for the first that the kind weighs
         * @throws UnknownFigure when no mechanism that varies has it
         */
        Columns find(Optional<String> asked) {
            Set<Column> all = new LinkedHashSet<>();
            Set<Column> weighed = new LinkedHashSet<>();
            Set<Column> more = new LinkedHashSet<>();
            for (String name : mechanisms) {
                Kind kind = variant.kinds().get(variant.indexOf(name));
                String own = mechanisms.size() == 1 ? "" : name;
                kind.weighed().stream().filter(d -> has(name, d)).forEach(d -> weighed.add(new Column(own, d)));
                kind.compared().stream().filter(d -> has(name, d)).forEach(d -> more.add(new Column(own, d)));
            }
            Column sought = asked.isPresent()
                    ? sought(asked.get())
                    : weighed.isEmpty()
                            ? new Column("", Column.PARTS)
                            : weighed.iterator().next();
            if (weighed.isEmpty()) {
                weighed.add(sought);
            }
            all.add(sought);
            all.addAll(weighed);
            all.addAll(more);
            List<Column> list = new ArrayList<>();
            List<String> units = new ArrayList<>();
            List<Integer> places = new ArrayList<>();
            for (Column column : all) {
                boolean isWeighed = weighed.contains(column);
                if (column.equals(sought) || isWeighed || !isVaried(column)) {
                    if (isWeighed) {
                        places.add(list.size());
                    }
                    list.add(column);
                    units.add(unit(column));
                }
            }
            return new Columns(mechanisms, list, units, places, ways());
        }

        /** Whether a mechanism has such a figure in one of the two combinations that were looked at. */
        private boolean has(String mechanism, String figure) {
            int m = mechanisms.indexOf(mechanism);
            return Column.WORK.contains(figure)
                    || !Double.isNaN(trials.get(m).value(figure))
                    || !Double.isNaN(others.get(m).value(figure));
        }

        private boolean isVaried(Column column) {
            for (Axis axis : grid.axes()) {
                if (axis.path().within().equals(column.name())) {
                    return true;
                }
            }
            return false;
        }

        private Column sought(String asked) {
            if (Column.WORK.contains(asked)) {
                return new Column("", asked);
            }
            List<String> known = new ArrayList<>(Column.WORK);
            for (int i = 0; i < mechanisms.size(); i++) {
                for (Dimension dimension : trials.get(i).dimensions()) {
                    String full = mechanisms.get(i) + '.' + dimension.name();
                    if (asked.equals(dimension.name())) {
                        return new Column("", asked);
                    }
                    if (asked.equals(full)) {
                        return new Column(mechanisms.size() == 1 ? "" : mechanisms.get(i), dimension.name());
                    }
                    known.add(dimension.name());
                }
            }
            throw new UnknownFigure("there is no figure " + Shown.quoted(asked) + " to minimise; "
                    + Renamed.now(asked, known).map(Renamed::hint).orElseGet(() -> Nearest.hint(asked, known)));
        }

        private String unit(Column column) {
            if (column.isWork()) {
                return column.name().equals(Column.PARTS) ? "1" : column.name().equals(Column.LENGTH) ? "mm" : "s";
            }
            for (int i = 0; i < mechanisms.size(); i++) {
                if (column.mechanism().isEmpty() || column.mechanism().equals(mechanisms.get(i))) {
                    for (Trial trial : List.of(trials.get(i), others.get(i))) {
                        for (Dimension dimension : trial.dimensions()) {
                            if (dimension.name().equals(column.name())) {
                                return dimension.unit();
                            }
                        }
                    }
                }
            }
            return "1";
        }

        private List<Column> ways() {
            List<Column> ways = new ArrayList<>();
            for (int i = 0; i < mechanisms.size(); i++) {
                for (Choice choice : trials.get(i).choices()) {
                    Column way = new Column(mechanisms.size() == 1 ? "" : mechanisms.get(i), choice.name());
                    if (choice.origin() == Dimension.Origin.SOLVED && !isVaried(way)) {
                        ways.add(way);
                    }
                }
            }
            return ways;
        }
    }

    /** A figure was asked for that there is not. */
    public static final class UnknownFigure extends RuntimeException {
        UnknownFigure(String message) {
            super(message, null, false, false);
        }
    }
}
