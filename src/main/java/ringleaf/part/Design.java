// SPDX-License-Identifier: Apache-2.0
package ringleaf.part;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import ringleaf.part.Dimension.Origin;

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
 * @param decisions fields that the spec left open and whose first guess did not work: path, value, and why
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
        List<FitRow> joints,
        List<String> headline,
        List<Choice> decisions) {

    /** The same with other remedies. */
    public Design withRemedies(List<String> lines) {
        return new Design(
                name,
                kind,
                choices,
                dimensions,
                parts,
                assembly,
                motion,
                findings,
                travel,
                lines,
                joints,
                headline,
                decisions);
    }

    /** The same with other parts. */
    public Design withParts(List<Part> other) {
        return new Design(
                name,
                kind,
                choices,
                dimensions,
                other,
                assembly,
                motion,
                findings,
                travel,
                remedies,
                joints,
                headline,
                decisions);
    }

    /** The same with other names of what comes first. */
    public Design withHeadline(List<String> names) {
        return new Design(
                name,
                kind,
                choices,
                dimensions,
                parts,
                assembly,
                motion,
                findings,
                travel,
                remedies,
                joints,
                names,
                decisions);
    }

    /**
     * The same, with what was decided for it: sizes and choices that would count as given are told as found, with the
     * reason.
     */
    public Design withDecisions(List<Choice> taken) {
        Map<String, String> reasons = new HashMap<>();
        for (Choice each : taken) {
            reasons.put(each.name().replace('.', '-'), each.how());
            reasons.put(each.name().substring(each.name().lastIndexOf('.') + 1), each.how());
        }
        List<Choice> named = choices.stream()
                .map(each -> reasons.containsKey(each.name())
                        ? new Choice(each.name(), each.value(), Origin.SOLVED, reasons.get(each.name()))
                        : each)
                .toList();
        List<Dimension> sizes = dimensions.stream()
                .map(each -> reasons.containsKey(each.name()) && each.origin() == Origin.GIVEN
                        ? new Dimension(each.name(), each.value(), each.unit(), Origin.SOLVED, reasons.get(each.name()))
                        : each)
                .toList();
        return new Design(
                name, kind, named, sizes, parts, assembly, motion, findings, travel, remedies, joints, headline, taken);
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
            List<FitRow> joints) {
        this(
                name,
                kind,
                choices,
                dimensions,
                parts,
                assembly,
                motion,
                findings,
                travel,
                remedies,
                joints,
                List.of(),
                List.of());
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
