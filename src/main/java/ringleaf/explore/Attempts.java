// SPDX-License-Identifier: Apache-2.0
package ringleaf.explore;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import ringleaf.mechanism.Kind;
import ringleaf.mechanism.Memo;
import ringleaf.mechanism.Trial;
import ringleaf.part.Design;
import ringleaf.part.Finding;
import ringleaf.part.Words;
import ringleaf.spec.SetOption;
import ringleaf.spec.text.Node;
import ringleaf.spec.text.SpecSource;
import ringleaf.verify.Judge;
import ringleaf.verify.Options;

/** Tries changes of one mechanism, on one thread; what was tried before, by whichever thread, is known. */
final class Attempts {
    /** Whatever closed forms refuse misses by more than what they let through. */
    private static final double REFUSED = 1000;

    private final Variants.Reader reader;
    private final String mechanism;
    private final int states;
    private final Memo memo;
    private int asked;

    Attempts(Variants.Reader reader, String mechanism, int states, Memo memo) {
        this.reader = reader;
        this.mechanism = mechanism;
        this.states = states;
        this.memo = memo;
    }

    /**
     * A text in a place of the spec.
     *
     * @param keys from the root of the spec
     * @param along another that has to change with it, as the thickness that a sheet is given
     */
    record Setting(List<String> keys, String text, Optional<Setting> along) {
        Setting(List<String> keys, String text) {
            this(keys, text, Optional.empty());
        }

        SetOption option() {
            SpecSource source = SpecSource.ofOption(String.join(".", keys), text);
            Node node = text.equals("{}")
                    ? new Node.Mapping(source.whole(), Map.of())
                    : new Node.Scalar(source.whole(), text, true);
            return new SetOption(source, keys, node);
        }
    }

    /**
     * What came of one.
     *
     * @param valid whether it is a spec at all
     * @param works whether every check of the kind holds
     * @param failures what fails and by how much, as a text to compare
     * @param misses by how much each check that fails is missed, as a share of its limit
     * @param worst the check that is missed by most, in words; empty where none is
     */
    record Attempt(boolean valid, boolean works, String failures, Map<String, Double> misses, String worst) {
        private static final Attempt INVALID = new Attempt(false, false, "", Map.of(), "");

        /** By how much all checks together are missed; endless when it is no spec. */
        double miss() {
            double all = valid ? 0 : Double.POSITIVE_INFINITY;
            for (double miss : misses.values()) {
                all += miss;
            }
            return all;
        }
    }

    /** The spec with these texts in their places; with none, as it is. */
    Attempt with(Setting... settings) {
        asked++;
        return memo.get(List.of("attempt", mechanism, Arrays.asList(settings)), () -> attempt(settings));
    }

    /** How many were asked for so far. */
    int asked() {
        return asked;
    }

    private Attempt attempt(Setting... settings) {
        Optional<Kind.Planned> ready = ready(settings);
        if (ready.isEmpty()) {
            return Attempt.INVALID;
        }
        Optional<Finding> refused = ready.get().refusal();
        if (refused.isPresent()) {
            Map<String, Double> miss = Map.of(refused.get().check(), REFUSED + Limits.miss(refused.get()));
            return new Attempt(true, false, words(List.of(refused.get())), miss, Limits.words(refused.get()));
        }
        Trial trial = ready.get().trial(states, memo);
        Map<String, Double> misses = new LinkedHashMap<>();
        for (Finding finding : trial.findings()) {
            if (finding.failed()) {
                misses.merge(finding.check(), Limits.miss(finding), Double::sum);
            }
        }
        return new Attempt(
                true,
                !trial.failed(),
                words(trial.findings()),
                misses,
                Limits.worst(trial.findings()).map(Limits::words).orElse(""));
    }

    /** Whether a full design with these texts passes its own checks and the judge of outlines, at so many states. */
    boolean holds(int atStates, Setting... settings) {
        Optional<Kind.Planned> ready = ready(settings);
        if (ready.isEmpty()) {
            return false;
        }
        Design design = ready.get().design(atStates);
        List<Finding> findings = new ArrayList<>(design.findings());
        findings.addAll(Judge.judge(design.assembly(), Options.DEFAULT).findings());
        return Limits.worst(findings).isEmpty();
    }

    private Optional<Kind.Planned> ready(Setting... settings) {
        List<SetOption> options = new ArrayList<>();
        for (Setting setting : settings) {
            options.add(setting.option());
            setting.along().ifPresent(along -> options.add(along.option()));
        }
        Variants.Variant variant = reader.read(options);
        return variant.isGood() ? Optional.of(variant.planned().get(variant.indexOf(mechanism))) : Optional.empty();
    }

    private static String words(List<Finding> findings) {
        List<String> failures = new ArrayList<>();
        for (Finding finding : findings) {
            if (finding.failed()) {
                failures.add(finding.check()
                        + ' '
                        + Words.number(finding.measured(), 9)
                        + ' '
                        + Words.number(finding.limit(), 9));
            }
        }
        return String.join("; ", failures);
    }
}
