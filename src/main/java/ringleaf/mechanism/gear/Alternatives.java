// SPDX-License-Identifier: Apache-2.0
package ringleaf.mechanism.gear;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;
import ringleaf.part.Words;
import ringleaf.spec.field.Values;
import ringleaf.tooth.TeethRatio;

/** Other teeth that would do as well: each was typed, solved, made and checked before it is told. */
final class Alternatives {
    private static final int TOLD = 4;

    private final TrainDesign design;
    private final TrainSpec spec;

    Alternatives(TrainDesign design) {
        this.design = design;
        this.spec = design.spec();
    }

    /** {@code 17/28 of module 0.8: ratio 1.647, centres 18, overall length 37.6 mm, no common factor}, each a line. */
    List<String> words() {
        List<String> words = new ArrayList<>();
        if (spec.isPair()) {
            for (PairCandidate one : design.stages().get(0).spec().others()) {
                if (words.size() < TOLD) {
                    tried(typed(one)).ifPresent(words::add);
                }
            }
        }
        for (List<TeethRatio> one : spec.others()) {
            if (words.size() < TOLD) {
                tried(typed(one)).ifPresent(words::add);
            }
        }
        return words;
    }

    private Optional<String> tried(UnaryOperator<Values> change) {
        return spec.tryout().design(change).filter(this::asGood).map(d -> words(d.spec()));
    }

    /** Whether it misses the ratio by no more than what was taken does, or than may be missed. */
    private boolean asGood(TrainDesign other) {
        if (spec.ratio().isEmpty()) {
            return true;
        }
        double asked = spec.ratio().getAsDouble();
        double own = Math.max(spec.ratioWithin(), Math.abs(spec.totalRatio() / asked - 1));
        return Math.abs(other.spec().totalRatio() / asked - 1) <= own + 1e-9;
    }

    private UnaryOperator<Values> typed(PairCandidate one) {
        UnaryOperator<Values> teeth = both(one.teeth());
        return values -> teeth.apply(values).with(GearFields.MODULE, one.module());
    }

    private static UnaryOperator<Values> both(TeethRatio teeth) {
        return values -> Tryout.of(GearFields.DRIVEN, GearFields.TEETH, teeth.driven())
                .apply(Tryout.of(GearFields.DRIVER, GearFields.TEETH, teeth.driver())
                        .apply(values));
    }

    /** The stages written out, with the module that was taken. */
    private UnaryOperator<Values> typed(List<TeethRatio> train) {
        double module = spec.stages().get(0).mesh().module();
        return values -> {
            List<Values> stages = new ArrayList<>();
            for (TeethRatio one : train) {
                stages.add(both(one).apply(GearFields.STAGE.none(values.where(GearFields.STAGES))));
            }
            return values.with(GearFields.STAGES, stages)
                    .with(GearFields.MODULE, module)
                    .without(GearFields.STAGE_COUNT);
        };
    }

    private static String words(TrainSpec other) {
        StringBuilder words = new StringBuilder();
        boolean hunting = true;
        for (StageSpec stage : other.stages()) {
            TeethRatio teeth = stage.teeth();
            words.append(words.length() == 0 ? "" : " and ")
                    .append(teeth.driver())
                    .append('/')
                    .append(teeth.driven());
            hunting &= teeth.isHunting();
        }
        words.append(" of module ")
                .append(Words.number(other.stages().get(0).mesh().module(), 4));
        words.append(": ratio ").append(Words.number(other.totalRatio(), 4));
        if (other.isPair()) {
            words.append(", centres ")
                    .append(Words.mm(other.stages().get(0).mesh().centreDistance()));
        }
        words.append(", overall length ").append(Words.mm(other.length()));
        return words.append(hunting ? ", no common factor" : "").toString();
    }
}
