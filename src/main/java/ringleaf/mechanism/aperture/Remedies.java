package ringleaf.mechanism.aperture;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import ringleaf.part.Finding;
import ringleaf.part.Words;
import ringleaf.spec.shared.Servo;

/**
 * What would fit when something does not: each change alone, the values that were given otherwise kept, tried by
 * designing and checking it again. The changes that need least stand first: more room, another layout, more blades,
 * thinner sheet, a larger least opening, another servo.
 */
final class Remedies {
    /** States that a trial looks at. */
    private static final int STATES = 31;

    private static final int MOST_MORE_BLADES = 8;
    private static final int MOST_BLADES = 64;
    /** Halvings between the least opening asked for and the full one. */
    private static final int OPENING_STEPS = 7;
    /** Thicknesses in which shim and film are sold, mm; common practice, no source. */
    private static final double[] THICKNESSES = {1, 0.8, 0.5, 0.4, 0.3, 0.25, 0.2, 0.15, 0.1, 0.05, 0.03};

    private static final int MOST_THICKNESSES = 4;

    private final ApertureSpec spec;
    private final ApertureDesign design;
    private final List<Finding> findings;

    Remedies(ApertureSpec spec, ApertureDesign design, List<Finding> findings) {
        this.spec = spec;
        this.design = design;
        this.findings = findings;
    }

    /** A line a remedy; none when nothing fails. */
    List<String> lines() {
        List<String> lines = new ArrayList<>();
        if (!fails(findings)) {
            return lines;
        }
        room(lines);
        layout(lines);
        blades(lines);
        thinner(lines);
        opening(lines);
        servo(lines);
        return lines;
    }

    private void room(List<String> lines) {
        Wanted free = spec.wanted().withOuter(new OuterLimit(spec.outer().least(), Double.POSITIVE_INFINITY));
        Wanted deep = spec.wanted().withDepth(OptionalDouble.empty());
        if (spec.outer().hasMost() && failed("outer-diameter")) {
            ApertureDesign larger = design(spec.with(free));
            if (!fails(checks(larger))) {
                double outer = 2 * larger.rim().outer();
                lines.add("outer-diameter: " + Words.mm(outer) + " would fit, "
                        + Words.mm(outer - spec.outer().most()) + " more than allowed");
                return;
            }
        }
        if (spec.depth().isPresent() && failed("depth")) {
            ApertureDesign deeper = design(spec.with(deep));
            if (!fails(checks(deeper))) {
                double depth = deeper.stack().depth();
                lines.add("depth: " + Words.mm(depth) + " would fit, "
                        + Words.mm(depth - spec.depth().getAsDouble()) + " more than allowed");
                return;
            }
        }
        if (spec.outer().hasMost() && spec.depth().isPresent()) {
            ApertureDesign both = design(spec.with(free.withDepth(OptionalDouble.empty())));
            if (!fails(checks(both))) {
                lines.add("outer-diameter: " + Words.mm(2 * both.rim().outer()) + " together with depth: "
                        + Words.mm(both.stack().depth()) + " would fit");
            }
        }
    }

    private void layout(List<String> lines) {
        if (!spec.layoutGiven()) {
            return;
        }
        boolean lever = spec.layouts().get(0).isLever();
        List<Layout> other = lever ? List.of(Layout.FAR_END) : List.of(Layout.LEVER_INWARD, Layout.LEVER_OUTWARD);
        if (spec.lever().isEmpty() && spec.leverAngle().isEmpty() && holds(spec.with(other))) {
            lines.add("drive-pin: " + (lever ? "far-end" : "lever") + " would fit");
        }
    }

    /** The nearest number of blades that fits: doubling steps up and down, then back to the first that does. */
    private void blades(List<String> lines) {
        int reach = 0;
        for (int more = 1; more <= MOST_MORE_BLADES; more *= 2) {
            for (int sense = 1; sense >= -1; sense -= 2) {
                if (bladesFit(spec.blades() + sense * more)) {
                    int nearest = more;
                    for (int less = reach + 1; less < more; less++) {
                        if (bladesFit(spec.blades() + sense * less)) {
                            nearest = less;
                            break;
                        }
                    }
                    lines.add("blades: " + (spec.blades() + sense * nearest) + " would fit");
                    return;
                }
            }
            reach = more;
        }
    }

    private boolean bladesFit(int count) {
        return count >= 3 && count <= MOST_BLADES && holds(spec.with(spec.wanted().withBlades(count)));
    }

    private void thinner(List<String> lines) {
        int tried = 0;
        for (double thickness : THICKNESSES) {
            if (thickness < spec.thickness() - 1e-9) {
                if (holds(spec.with(spec.wanted().withThickness(thickness)))) {
                    lines.add("blade-thickness: " + Words.number(thickness, 3) + " mm would fit");
                    return;
                }
                if (++tried == MOST_THICKNESSES) {
                    return;
                }
            }
        }
    }

    private void opening(List<String> lines) {
        double low = spec.leastRadius();
        double high = spec.clearRadius() * 0.98;
        if (!holds(spec.with(spec.wanted().withLeastRadius(high)))) {
            return;
        }
        for (int i = 0; i < OPENING_STEPS; i++) {
            double middle = (low + high) / 2;
            if (holds(spec.with(spec.wanted().withLeastRadius(middle)))) {
                high = middle;
            } else {
                low = middle;
            }
        }
        double shown = Math.ceil(20 * high - 1e-9) / 10;
        if (shown < 2 * spec.clearRadius() && holds(spec.with(spec.wanted().withLeastRadius(shown / 2)))) {
            lines.add("least-opening: " + Words.mm(shown) + " would fit");
        }
    }

    private void servo(List<String> lines) {
        if (!failed("servo-reaches") || !(spec.drive() instanceof DriveSpec.Pinion pinion)) {
            return;
        }
        double needed = design.pinionPlan().orElseThrow().servoTravel();
        double travel = Math.toRadians(Math.ceil(Math.toDegrees(needed) / 10) * 10);
        DriveSpec longer = pinion.withServo(pinion.servo().withTravel(travel));
        if (holds(spec.with(longer))) {
            lines.add("a servo with a travel of " + Words.degrees(travel, 0) + " would fit");
        }
        if (!pinion.stepUp() && holds(spec.with(pinion.steppedUp()))) {
            lines.add("drive.by: step-up would fit");
        }
        if (pinion.pinionTeeth().isPresent()) {
            DriveSpec open = pinion.withTeeth(OptionalInt.empty());
            if (holds(spec.with(open))) {
                int teeth = design(spec.with(open)).pinionPlan().orElseThrow().pinion().teeth();
                lines.add("pinion-teeth: " + teeth + " would fit");
            }
        }
    }

    private boolean failed(String check) {
        for (Finding finding : findings) {
            if (finding.failed() && finding.check().equals(check)) {
                return true;
            }
        }
        return false;
    }

    private static boolean holds(ApertureSpec changed) {
        return !fails(checks(design(changed)));
    }

    private static ApertureDesign design(ApertureSpec changed) {
        return new ApertureDesigner(changed).candidates().get(0).design();
    }

    private static List<Finding> checks(ApertureDesign tried) {
        return new ApertureChecks(tried, LeafAperture.sweep(tried, STATES)).all();
    }

    private static boolean fails(List<Finding> findings) {
        for (Finding finding : findings) {
            if (finding.failed()) {
                return true;
            }
        }
        return false;
    }
}
