// SPDX-License-Identifier: Apache-2.0
package ringleaf.mechanism;

import java.util.List;
import java.util.Optional;
import ringleaf.part.Design;
import ringleaf.part.Finding;
import ringleaf.spec.field.FieldSet;

/** A kind of mechanism: its fields, declared once, and the way from their values to a design. */
public interface Kind {
    /** As it stands in a spec under {@code kind}. */
    String name();

    /** One line for lists. */
    String summary();

    /** Everything that a spec may say of it. */
    FieldSet fields();

    /**
     * Checks what the ranges of single fields cannot: values that contradict one another, the process or the stock.
     * What is wrong goes to the request's problems.
     *
     * @return what to design; of no use when problems were found
     */
    Planned read(Request request);

    /**
     * Names of dimensions of a trial that are weighed against each other when designs are compared, each the better the
     * smaller, and of {@code parts}, the number of pieces; the first is what is sought when nothing else is asked for.
     * What a trial has not is left out. None where the kind has no opinion.
     */
    default List<String> weighed() {
        return List.of();
    }

    /** Names of further dimensions that are shown when designs are compared. */
    default List<String> compared() {
        return List.of();
    }

    /** Names of its dimensions and choices that a maker asks for first, in that order; a design need not have them all. */
    default List<String> headline() {
        return List.of();
    }

    /**
     * Bodies on which other mechanisms may stand, by the names that its assemblies have for them; a design need not have
     * them all.
     */
    List<BodyName> bodies();

    /**
     * Fields that may be left open and whose defaults are first guesses only, with other values worth trying. None where
     * the kind has no say; what it solves by itself need not stand here.
     */
    default List<Decision> decisions() {
        return List.of();
    }

    /** Sizes in which a thing is sold that a numeric field says the size of, ascending, inner units; or none. */
    default double[] sold(String field) {
        return new double[0];
    }

    /** A mechanism that is ready to be designed. */
    @FunctionalInterface
    interface Planned {
        /** Designs it, with the motion in so many states (at least 2). Never fails: what does not fit is a finding. */
        Design design(int states);

        /**
         * Sizes and checks of the same design, by the quickest way there is.
         *
         * @param memo what other trials of the same exploration have worked out
         */
        default Trial trial(int states, Memo memo) {
            return Trial.of(design(states));
        }

        /**
         * A check that surely fails whatever sizes are solved, by closed forms alone; empty when none is known. What
         * is refused here need not be designed.
         */
        default Optional<Finding> refusal() {
            return Optional.empty();
        }

        /** Among how many like members a trial piece chooses; 0 where the kind makes none. */
        default int members() {
            return 0;
        }

        /**
         * A trial piece: pieces cut out of the real parts that prove how so many of the members go together. Its checks
         * are those of the whole design.
         *
         * @param members from 2 to {@link #members}
         */
        default Design trialPiece(int states, int members) {
            throw new IllegalStateException("this kind has no members to make a trial piece of");
        }

        /** What its servo moves; empty where no servo drives it. */
        default Optional<ServoLaw> servoLaw() {
            return Optional.empty();
        }

        /** What in a spec would give it a servo, for whoever asked for its table; empty where nothing does. */
        default String servoHint() {
            return "";
        }

        /** The finished thing with sizes that are off; empty where a kind does not say how it takes them. */
        default Optional<AsBuilt> asBuilt() {
            return Optional.empty();
        }
    }
}
