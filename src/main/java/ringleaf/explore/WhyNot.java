package ringleaf.explore;

import java.util.ArrayList;
import java.util.List;
import java.util.function.BooleanSupplier;
import ringleaf.mechanism.Memo;
import ringleaf.mechanism.Trial;

/**
 * Why a design does not work, told by what would make it work: every field that the spec gives or that has a default
 * is changed by itself, each way, to the nearest value with which every closed-form check holds. Each value told was
 * solved and checked. The changes stand in the order of how little they change.
 */
public final class WhyNot {
    private static final int REMEMBERED = 2000;

    private final Variants variants;
    private final int states;
    private final int threads;

    /**
     * A search for changes.
     *
     * @param states of the travel that each change is checked at
     * @param threads that share the work
     */
    public WhyNot(Variants variants, int states, int threads) {
        this.variants = variants;
        this.states = states;
        this.threads = threads;
    }

    /**
     * The changes that make one mechanism work, those that change least first; none when it works, or when no single
     * change helps.
     *
     * @param mechanism its name
     * @param told of how many fields were tried
     * @param stopped whether somebody wants it to end
     */
    public List<Change> changes(String mechanism, Exploration.Told told, BooleanSupplier stopped) {
        Memo memo = new Memo(REMEMBERED);
        Variants.Reader reader = variants.reader();
        Attempts attempts = new Attempts(reader, mechanism, states, memo);
        Attempts.Attempt now = attempts.asItIs();
        if (!now.valid() || now.works()) {
            return List.of();
        }
        Variants.Variant variant = reader.read(List.of());
        Trial trial = now.trial().isPresent()
                ? now.trial().get()
                : variant.planned().get(variant.indexOf(mechanism)).trial(states, memo);
        List<String> harmless = new ArrayList<>();
        for (String group : Knobs.leftOut(variant.mechanisms().get(variant.indexOf(mechanism)))) {
            Attempts.Attempt empty = attempts.with(List.of("mechanisms", mechanism, group), "{}");
            if (empty.valid() && empty.failures().equals(now.failures())) {
                harmless.add(group);
            }
        }
        List<Knob> knobs = new Knobs(variant, mechanism, trial, reader, harmless).all();
        return sorted(tried(knobs, mechanism, now.failures(), memo, told, stopped));
    }

    private List<List<Change>> tried(
            List<Knob> knobs,
            String mechanism,
            String failures,
            Memo memo,
            Exploration.Told told,
            BooleanSupplier stopped) {
        @SuppressWarnings({"unchecked", "rawtypes"})
        List<Change>[] changes = new List[knobs.size()];
        new Workers(threads, told, stopped).all(knobs.size(), 1, () -> {
            Attempts own = new Attempts(variants.reader(), mechanism, states, memo);
            return i -> changes[i] = new NearestValue(knobs.get(i), own, failures).changes();
        });
        List<List<Change>> found = new ArrayList<>();
        for (List<Change> each : changes) {
            found.add(each == null ? List.of() : each);
        }
        return found;
    }

    private static List<Change> sorted(List<List<Change>> found) {
        List<Change> sorted = new ArrayList<>();
        for (List<Change> each : found) {
            for (Change change : each) {
                int i = sorted.size();
                while (i > 0 && change.isBefore(sorted.get(i - 1))) {
                    i--;
                }
                sorted.add(i, change);
            }
        }
        return sorted;
    }
}
