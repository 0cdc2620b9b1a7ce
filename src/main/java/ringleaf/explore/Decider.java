// SPDX-License-Identifier: Apache-2.0
package ringleaf.explore;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import ringleaf.mechanism.Decision;
import ringleaf.mechanism.Memo;
import ringleaf.part.Choice;
import ringleaf.part.Dimension;
import ringleaf.spec.MechanismSpec;
import ringleaf.spec.SetOption;
import ringleaf.spec.field.Field;
import ringleaf.spec.field.FieldSet;
import ringleaf.spec.field.Values;

/**
 * Settles what a spec leaves open where the first guesses do not work: a best-first search over the kind's
 * {@link Decision}s, one value after another laid over the spec as it would be typed, each set solved again by the kind.
 * Sets that miss least are followed further; among those that work the one that departs least from the kind's order of
 * preference is taken, after a full design of it has passed the judge of outlines. The same spec gives the same
 * decisions whatever the number of threads: the search is bounded by counts and never by a clock.
 */
public final class Decider {
    /** States that are enough to look; what is found is proved at all that are asked for. */
    private static final int SEARCHED = 31;

    private static final int REMEMBERED = 6000;
    /** Sets that are followed further at each depth. */
    private static final int FOLLOWED = 5;
    /** A value helps where it leaves no more than this share of what was missed. */
    private static final double NEARER = 0.85;
    /** Ranks that a further field counts for. */
    private static final int FIELD = 3;
    /** Values that one set may have. */
    private static final int DEEPEST = 4;
    /** Sets that work which are held against the outlines before the search gives up on them. */
    private static final int PROVED = 8;
    /** Likewise where nothing but the outlines tells one from the other. */
    private static final int PROVED_ALONE = 24;

    private final Variants variants;
    private final String mechanism;
    private final int states;
    private final int threads;
    private final Memo memo = new Memo(REMEMBERED);

    /**
     * A search for one mechanism.
     *
     * @param states of the travel at which what is found must hold
     */
    public Decider(Variants variants, String mechanism, int states, int threads) {
        this.variants = variants;
        this.mechanism = mechanism;
        this.states = states;
        this.threads = threads;
    }

    /**
     * A decision that was taken.
     *
     * @param choice path of the field within the mechanism, its value as it would be typed, and what fails by how much
     *     when the field is left to its first guess and all else is as decided
     * @param option that lays it over the spec
     */
    public record Taken(Choice choice, SetOption option) {}

    /** A value for a field. */
    private record Step(int field, int rank, Attempts.Setting setting) {}

    /** Values for some fields, with what they come to. */
    private record Node(List<Step> steps, Attempts.Attempt attempt) {
        /** How far it departs from what the kind would rather have; each further field counts like some ranks. */
        int cost() {
            int cost = least(steps.size());
            for (Step step : steps) {
                cost += step.rank;
            }
            return cost;
        }

        boolean has(int field) {
            return steps.stream().anyMatch(step -> step.field == field);
        }

        Attempts.Setting[] settings() {
            return steps.stream().map(Step::setting).toArray(Attempts.Setting[]::new);
        }
    }

    /** The decisions that make the mechanism work; empty where none were found. Not asked of what works as it is. */
    public List<Taken> taken() {
        Attempts attempts = attempts();
        Attempts.Attempt now = attempts.with();
        if (!now.valid()) {
            return List.of();
        }
        List<List<Step>> open = open(attempts, now);
        if (now.works()) {
            return onTheOutlines(open, attempts);
        }
        List<List<Step>> helping = helping(open, new Node(List.of(), now));
        List<Node> followed = List.of(new Node(List.of(), now));
        Set<Set<Attempts.Setting>> seen = new HashSet<>();
        List<Node> working = new ArrayList<>();
        int proved = 0;
        double nearest = now.miss();
        for (int depth = 1; depth <= DEEPEST && !followed.isEmpty(); depth++) {
            List<Node> next = new ArrayList<>();
            for (Node node : followed) {
                // What breaks by a decision may be mended by fields that made no difference before.
                boolean same =
                        now.misses().keySet().containsAll(node.attempt.misses().keySet());
                next.addAll(expanded(node, same ? helping : helping(open, node), seen));
            }
            next.stream().filter(node -> node.attempt.works()).forEach(working::add);
            working.sort(Comparator.comparingInt(Node::cost));
            // A set with one value more may depart less; beyond that it cannot.
            while (!working.isEmpty()
                    && proved < PROVED
                    && (depth == DEEPEST || working.get(0).cost() <= least(depth + 1))) {
                Node best = working.remove(0);
                proved++;
                if (attempts.holds(states, best.settings())) {
                    return told(best, attempts);
                }
            }
            // Where nothing comes nearer, more of the same would not either.
            double before = nearest;
            nearest = Math.min(
                    nearest,
                    next.stream().mapToDouble(node -> node.attempt.miss()).min().orElse(nearest));
            if (nearest > NEARER * before) {
                break;
            }
            followed = next.stream()
                    .filter(node -> node.attempt.valid() && !node.attempt.works())
                    .sorted(Comparator.comparingDouble((Node node) -> node.attempt.miss())
                            .thenComparingInt(Node::cost))
                    .limit(FOLLOWED)
                    .toList();
        }
        return List.of();
    }

    /**
     * A single value with which the outlines hold as well, where all that is calculated holds and they do not; the one that
     * departs least, in the kind's order.
     */
    private List<Taken> onTheOutlines(List<List<Step>> open, Attempts attempts) {
        List<Step> singles = new ArrayList<>();
        open.forEach(singles::addAll);
        singles.sort(Comparator.comparingInt(Step::rank));
        int proved = 0;
        for (Step step : singles) {
            if (proved < PROVED_ALONE && attempts.with(step.setting).works()) {
                proved++;
                if (attempts.holds(states, step.setting)) {
                    return told(new Node(List.of(step), attempts.with(step.setting)), attempts);
                }
            }
        }
        return List.of();
    }

    /** The least that a set of so many values can cost. */
    private static int least(int values) {
        return FIELD * values;
    }

    private Attempts attempts() {
        return new Attempts(variants.reader(), mechanism, Math.min(SEARCHED, states), memo);
    }

    /**
     * The fields that by themselves make a difference to what fails: a number whose least and greatest values leave it as
     * it is does so in between as well. Fields keep their numbers.
     */
    private List<List<Step>> helping(List<List<Step>> open, Node from) {
        List<List<Step>> probes = new ArrayList<>();
        for (List<Step> steps : open) {
            boolean numbers =
                    steps.stream().allMatch(step -> step.setting.text().matches("[0-9.]+(mm)?"));
            Comparator<Step> size = Comparator.comparingDouble(
                    step -> Double.parseDouble(step.setting.text().replace("mm", "")));
            probes.add(
                    numbers && steps.size() > 2
                            ? List.of(Collections.min(steps, size), Collections.max(steps, size))
                            : steps);
        }
        boolean[] helps = new boolean[open.size()];
        for (Node node : expanded(from, probes, new HashSet<>())) {
            boolean same = node.attempt.valid() && node.attempt.misses().equals(from.attempt.misses());
            for (Step step : node.steps) {
                helps[step.field] |= !same;
            }
        }
        List<List<Step>> helping = new ArrayList<>();
        for (int f = 0; f < open.size(); f++) {
            helping.add(helps[f] ? open.get(f) : List.of());
        }
        return helping;
    }

    /** Every set with one value more than one that is followed, in a stable order. */
    private List<Node> expanded(Node node, List<List<Step>> open, Set<Set<Attempts.Setting>> seen) {
        List<List<Step>> sets = new ArrayList<>();
        for (int f = 0; f < open.size(); f++) {
            for (Step step : node.has(f) ? List.<Step>of() : open.get(f)) {
                List<Step> steps = new ArrayList<>(node.steps);
                steps.add(step);
                steps.sort(Comparator.comparingInt(Step::field));
                if (seen.add(Set.copyOf(steps.stream().map(Step::setting).toList()))) {
                    sets.add(steps);
                }
            }
        }
        Node[] nodes = new Node[sets.size()];
        new Workers(threads, (d, t) -> {}, () -> false).all(sets.size(), 1, () -> {
            Attempts own = attempts();
            return i -> {
                Node bare = new Node(sets.get(i), null);
                nodes[i] = new Node(sets.get(i), own.with(bare.settings()));
            };
        });
        return List.of(nodes);
    }

    /** The kind's decisions on what the spec leaves open, each with its values. */
    private List<List<Step>> open(Attempts attempts, Attempts.Attempt now) {
        Variants.Variant variant = variants.reader().read(List.of());
        MechanismSpec spec = variant.mechanisms().get(variant.indexOf(mechanism));
        List<List<Step>> open = new ArrayList<>();
        for (Decision decision : variants.kinds().of(spec).decisions()) {
            String[] keys = decision.path().split("\\.");
            if (isOpen(spec.values(), keys, attempts, now)) {
                List<String> path = new ArrayList<>(List.of(SpecPath.MECHANISMS, mechanism));
                path.addAll(List.of(keys));
                List<Step> steps = new ArrayList<>();
                for (String value : decision.values()) {
                    steps.add(new Step(open.size(), steps.size(), new Attempts.Setting(path, value)));
                }
                open.add(steps);
            }
        }
        return open;
    }

    /** Whether the spec does not say it, and it may be said without saying something else. */
    private boolean isOpen(Values values, String[] keys, Attempts attempts, Attempts.Attempt now) {
        FieldSet fields = values.fields();
        Optional<Values> at = Optional.of(values);
        for (int i = 0; i < keys.length; i++) {
            Field<?> field = fields.find(keys[i]);
            Object given = at.flatMap(own -> own.given(field)).orElse(null);
            if (i == keys.length - 1) {
                return given == null;
            }
            if (given == null) {
                List<String> group = new ArrayList<>(List.of(SpecPath.MECHANISMS, mechanism));
                group.addAll(List.of(keys).subList(0, i + 1));
                Attempts.Attempt empty = attempts.with(new Attempts.Setting(group, "{}"));
                if (!empty.valid() || !empty.failures().equals(now.failures())) {
                    return false;
                }
                at = Optional.empty();
            } else if (given instanceof Values inner) {
                at = Optional.of(inner);
            } else {
                return false;
            }
            fields = field.inner();
        }
        return false;
    }

    private List<Taken> told(Node node, Attempts attempts) {
        List<Taken> taken = new ArrayList<>();
        for (Step step : node.steps) {
            Attempts.Setting[] others = node.steps.stream()
                    .filter(other -> other != step)
                    .map(Step::setting)
                    .toArray(Attempts.Setting[]::new);
            List<String> keys = step.setting.keys();
            String missed = attempts.with(others).worst();
            taken.add(new Taken(
                    new Choice(
                            String.join(".", keys.subList(2, keys.size())),
                            step.setting.text(),
                            Dimension.Origin.SOLVED,
                            missed.isEmpty() ? "as the outlines ask for it" : "with the first guess, " + missed),
                    step.setting.option()));
        }
        return taken;
    }
}
