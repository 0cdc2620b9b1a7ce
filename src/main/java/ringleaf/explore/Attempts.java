package ringleaf.explore;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import ringleaf.mechanism.Kind;
import ringleaf.mechanism.Memo;
import ringleaf.mechanism.Trial;
import ringleaf.part.Finding;
import ringleaf.part.Words;
import ringleaf.spec.SetOption;
import ringleaf.spec.text.Node;
import ringleaf.spec.text.SpecSource;

/** Tries single changes of one mechanism, on one thread. */
final class Attempts {
    private final Variants.Reader reader;
    private final String mechanism;
    private final int states;
    private final Memo memo;

    Attempts(Variants.Reader reader, String mechanism, int states, Memo memo) {
        this.reader = reader;
        this.mechanism = mechanism;
        this.states = states;
        this.memo = memo;
    }

    /**
     * What came of one.
     *
     * @param valid whether it is a spec at all
     * @param works whether every check holds
     * @param failures what fails and by how much, as a text to compare
     * @param trial sizes, where it was solved
     * @param note what comes along with it
     */
    record Attempt(boolean valid, boolean works, String failures, Optional<Trial> trial, String note) {
        private static final Attempt INVALID = new Attempt(false, false, "", Optional.empty(), "");
    }

    /** The spec as it is. */
    Attempt asItIs() {
        return judged(reader.read(List.of()), "");
    }

    /** The spec with this text in this place. */
    Attempt with(List<String> keys, String text) {
        SpecSource source = SpecSource.ofOption(String.join(".", keys), text);
        Node node = text.equals("{}")
                ? new Node.Mapping(source.whole(), java.util.Map.of())
                : new Node.Scalar(source.whole(), text, true);
        Variants.Variant variant = reader.read(List.of(new SetOption(source, keys, node)));
        if (variant.isGood()) {
            return judged(variant, "");
        }
        Optional<Kind.Planned> loose = reader.inAnyThickness(variant, mechanism);
        return loose.isPresent() ? judged(loose.get(), "in stock of that thickness") : Attempt.INVALID;
    }

    private Attempt judged(Variants.Variant variant, String note) {
        return variant.isGood() ? judged(variant.planned().get(variant.indexOf(mechanism)), note) : Attempt.INVALID;
    }

    private Attempt judged(Kind.Planned planned, String note) {
        Optional<Finding> refused = planned.refusal();
        if (refused.isPresent()) {
            return new Attempt(true, false, words(List.of(refused.get())), Optional.empty(), note);
        }
        Trial trial = planned.trial(states, memo);
        return new Attempt(true, !trial.failed(), words(trial.findings()), Optional.of(trial), note);
    }

    private static String words(List<Finding> findings) {
        List<String> failures = new ArrayList<>();
        for (Finding finding : findings) {
            if (finding.failed()) {
                failures.add(finding.check() + ' ' + Words.number(finding.measured(), 9) + ' '
                        + Words.number(finding.limit(), 9));
            }
        }
        return String.join("; ", failures);
    }
}
