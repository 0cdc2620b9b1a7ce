// SPDX-License-Identifier: Apache-2.0
package ringleaf.mechanism.belt;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.OptionalInt;
import java.util.Set;
import ringleaf.part.Finding;
import ringleaf.part.Words;
import ringleaf.spec.field.Bound;

/** The nearest changes that would mend what failed; where belt and wheels are in each other's way, they were tried. */
final class DriveRemedies {
    /** Checks that another place of the wheels can mend. */
    private static final Set<String> OF_PLACE = Set.of(
            "pulley-clearance", "belt-clearance", "obstacle-clearance", "installation-allowance", "tension-allowance");

    /** How far, in hundredths of the centre distance, another one is tried. */
    private static final int SPREAD = 40;

    private final DrivePlan plan;
    private final DriveSpec spec;
    private final Set<String> lines = new LinkedHashSet<>();

    private DriveRemedies(DrivePlan plan) {
        this.plan = plan;
        this.spec = plan.spec();
    }

    static List<String> of(DrivePlan plan, List<Finding> findings) {
        DriveRemedies remedies = new DriveRemedies(plan);
        boolean placed = false;
        for (Finding finding : findings) {
            if (finding.failed() && OF_PLACE.contains(finding.check())) {
                placed = true;
            } else if (finding.failed()) {
                remedies.mend(finding);
            }
        }
        // slots of the servo that run into each other do so wherever the wheels stand
        boolean holes = findings.stream().anyMatch(f -> f.failed() && f.check().equals("hole-distance"));
        if (placed && !holes) {
            remedies.place();
        }
        return List.copyOf(remedies.lines);
    }

    private void mend(Finding finding) {
        switch (finding.check()) {
            case "centre-distance" -> {
                double distance = plan.layout().distance();
                lines.add(
                        spec.distance().isExact()
                                ? "centre-distance: " + Words.number(distance, 2)
                                        + " is what the nearest stocked belt gives; "
                                        + "centres: fixed with an idler keeps the one asked for, where a belt is long enough"
                                : "centre-distance: {at-least: " + Words.number(Math.floor(10 * distance) / 10, 1)
                                        + ", at-most: " + Words.number(Math.ceil(10 * distance) / 10, 1)
                                        + "} lets a stocked belt fit");
            }
            case "servo-travel" ->
                lines.add("travel: "
                        + Words.number(Math.toDegrees(spec.servo().orElseThrow().travel()) / spec.ratio() - 0.05, 1)
                        + " is what the servo's own travel gives through this ratio");
            case "servo-torque" ->
                lines.add("ratio: "
                        + Words.number(spec.ratio() * finding.measured() / finding.limit() + 0.005, 2)
                        + " would give the torque, where the servo's travel allows it");
            case "teeth-in-mesh" ->
                lines.add("more teeth on the " + finding.subjects().get(0)
                        + ", or a larger centre distance, bring more teeth into mesh");
            case "servo-height" -> {
                double most = spec.servo().orElseThrow().hornHeight() - plan.foot();
                if (most > 0.5) {
                    lines.add("plate-thickness: " + Words.number(Math.floor(10 * most) / 10, 1)
                            + " lets the horn come up to the driver");
                }
            }
            default -> {
                // nothing general helps
            }
        }
    }

    /** Other places of idler and pulleys, and other belts, the nearest that keep their room. */
    private void place() {
        if (spec.fixed()) {
            along();
        } else if (spec.beltTeeth().isPresent()) {
            for (int more = 1; more <= SPREAD && lines.isEmpty(); more++) {
                belt(spec.beltTeeth().getAsInt() + more);
                belt(spec.beltTeeth().getAsInt() - more);
            }
            return;
        }
        for (int share = 1;
                share <= SPREAD && isFree() && (spec.fixed() || spec.distance().isExact());
                share++) {
            distance(spec.wanted() * (1 + share / 100.0));
            distance(spec.wanted() * (1 - share / 100.0));
        }
    }

    private void along() {
        for (int step = 1; step <= 16; step++) {
            for (int sign = -1; sign <= 1; sign += 2) {
                double along = Math.rint(20 * spec.idler().along()) / 20 + sign * step * 0.05;
                if (along > 0.1 && along < 0.9 && BeltSearch.isSound(spec.withAlong(along))) {
                    lines.add("idler: {along: " + Words.number(along, 2) + "} gives the idler room to tighten");
                    return;
                }
            }
        }
    }

    private void belt(int teeth) {
        if (lines.isEmpty() && BeltSearch.isSound(spec.withBelt(OptionalInt.of(teeth)))) {
            lines.add("belt-teeth: " + teeth + " keeps the room");
        }
    }

    private boolean isFree() {
        return lines.stream().noneMatch(line -> line.startsWith("centre-distance"));
    }

    private void distance(double wanted) {
        double rounded = Math.rint(10 * wanted) / 10;
        DriveSpec other = spec.withDistance(Bound.of(rounded), rounded);
        DriveLayout layout = BeltSearch.of(other).best();
        if (layout != null && BeltSearch.isSound(other, layout)) {
            lines.add("centre-distance: " + Words.number(spec.fixed() ? rounded : layout.distance(), 2)
                    + " keeps the room");
        }
    }
}
