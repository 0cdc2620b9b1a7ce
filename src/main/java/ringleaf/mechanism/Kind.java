package ringleaf.mechanism;

import java.util.Optional;
import ringleaf.part.Design;
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

    /** A mechanism that is ready to be designed. */
    @FunctionalInterface
    interface Planned {
        /** Designs it, with the motion in so many states (at least 2). Never fails: what does not fit is a finding. */
        Design design(int states);

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
