// SPDX-License-Identifier: Apache-2.0
package ringleaf.part;

import java.util.List;
import java.util.Map;

/**
 * A mechanism resolved: everything that is reported or written of it.
 *
 * @param name of the mechanism in the spec
 * @param kind e.g. {@code leaf-aperture}
 * @param choices between named ways
 * @param dimensions resolved sizes, in a stable order
 * @param parts distinct parts, made and bought
 * @param assembly the same put together
 * @param motion the table of the travel
 * @param findings the kind's own closed-form checks
 * @param travel named figures of the travel, in display units, in a stable order
 * @param remedies when limits are broken: the nearest changes that would fit, the best first; else empty
 * @param joints pins, bores, slots, seats and screws with their fits
 * @param headline names of the dimensions and choices that a maker asks for first, in that order; others may be among them
 */
public record Design(
        String name,
        String kind,
        List<Choice> choices,
        List<Dimension> dimensions,
        List<Part> parts,
        Assembly assembly,
        MotionTable motion,
        List<Finding> findings,
        Map<String, Double> travel,
        List<String> remedies,
        List<Joint> joints,
        List<String> headline) {

    /** The same with other remedies. */
    public Design withRemedies(List<String> lines) {
        return new Design(
                name, kind, choices, dimensions, parts, assembly, motion, findings, travel, lines, joints, headline);
    }

    /** The same with other parts. */
    public Design withParts(List<Part> other) {
        return new Design(
                name, kind, choices, dimensions, other, assembly, motion, findings, travel, remedies, joints, headline);
    }

    /** The same with other names of what comes first. */
    public Design withHeadline(List<String> names) {
        return new Design(
                name, kind, choices, dimensions, parts, assembly, motion, findings, travel, remedies, joints, names);
    }

    /** Whether a servo turns it. */
    public boolean hasServo() {
        return travel.containsKey("servo");
    }

    /** A design of which nothing comes first. */
    public Design(
            String name,
            String kind,
            List<Choice> choices,
            List<Dimension> dimensions,
            List<Part> parts,
            Assembly assembly,
            MotionTable motion,
            List<Finding> findings,
            Map<String, Double> travel,
            List<String> remedies,
            List<Joint> joints) {
        this(name, kind, choices, dimensions, parts, assembly, motion, findings, travel, remedies, joints, List.of());
    }

    /** A design without joints. */
    public Design(
            String name,
            String kind,
            List<Choice> choices,
            List<Dimension> dimensions,
            List<Part> parts,
            Assembly assembly,
            MotionTable motion,
            List<Finding> findings,
            Map<String, Double> travel,
            List<String> remedies) {
        this(name, kind, choices, dimensions, parts, assembly, motion, findings, travel, remedies, List.of());
    }
}
