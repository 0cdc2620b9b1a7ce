// SPDX-License-Identifier: Apache-2.0
package ringleaf.mechanism;

import java.util.ArrayList;
import java.util.List;
import ringleaf.part.Choice;
import ringleaf.part.Design;
import ringleaf.part.Dimension;
import ringleaf.part.Finding;
import ringleaf.part.Part;

/**
 * What a design comes to, as far as sizes and the kind's own checks tell: the same figures as those of the full
 * design, without assembly, table and views.
 */
public interface Trial {
    /** Choices between named ways. */
    List<Choice> choices();

    /** Resolved sizes; the same values as in the full design, and perhaps figures that only comparisons need. */
    List<Dimension> dimensions();

    /** The kind's own closed-form checks. */
    List<Finding> findings();

    /** What keeps the design from being smaller, in words; empty when nothing is known. */
    String bound();

    /** Distinct parts, made and bought; drawn when it is asked, which can take longer than all the rest. */
    List<Part> parts();

    /** Whether a check failed. */
    default boolean failed() {
        for (Finding finding : findings()) {
            if (finding.failed()) {
                return true;
            }
        }
        return false;
    }

    /** The dimension of this name, or not a number. */
    default double value(String name) {
        for (Dimension dimension : dimensions()) {
            if (dimension.name().equals(name)) {
                return dimension.value();
            }
        }
        return Double.NaN;
    }

    /** A full design seen as a trial, with figures behind its own that only comparisons need. */
    static Trial of(Design design, Dimension... more) {
        List<Dimension> dimensions = new ArrayList<>(design.dimensions());
        dimensions.addAll(List.of(more));
        return new Designed(design, dimensions);
    }

    /**
     * By how much teeth miss a ratio, for comparisons, in per cent.
     *
     * @param ratio of the teeth
     * @param asked ratio, above 0
     */
    static Dimension ratioError(double ratio, double asked) {
        double error = Math.abs(ratio / asked - 1);
        // What is missed by rounding alone is not missed.
        return new Dimension(
                "ratio-error", error < 1e-9 ? 0 : 100 * error, "%", Dimension.Origin.SOLVED, "of the ratio asked for");
    }

    /**
     * A full design seen as a trial.
     *
     * @param design with everything
     * @param dimensions its own and further ones
     */
    record Designed(Design design, List<Dimension> dimensions) implements Trial {
        @Override
        public List<Choice> choices() {
            return design.choices();
        }

        @Override
        public List<Finding> findings() {
            return design.findings();
        }

        @Override
        public String bound() {
            return "";
        }

        @Override
        public List<Part> parts() {
            return design.parts();
        }
    }
}
