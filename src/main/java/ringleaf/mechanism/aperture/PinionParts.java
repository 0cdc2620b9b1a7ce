package ringleaf.mechanism.aperture;

import java.util.ArrayList;
import java.util.List;
import ringleaf.geom.Contour;
import ringleaf.geom.Line;
import ringleaf.geom.Path;
import ringleaf.geom.Placement;
import ringleaf.geom.Point;
import ringleaf.geom.Region;
import ringleaf.spec.shared.Servo;
import ringleaf.part.Layer;
import ringleaf.part.Part;
import ringleaf.part.Words;

/** The pinion in its place beside the ring, and what is bought with it. */
final class PinionParts {
    /** Screws that hold a pinion to a horn. */
    private static final int HORN_SCREWS = 4;

    private final ApertureDesign design;
    private final PinionPlan plan;
    private final ServoMount mount;
    private final Teeth teeth;

    PinionParts(ApertureDesign design, Teeth teeth) {
        this.design = design;
        this.plan = design.pinionPlan().orElseThrow();
        this.mount = design.mount().orElseThrow();
        this.teeth = teeth;
    }

    List<Part> parts() {
        List<Part> parts = new ArrayList<>();
        parts.add(pinion());
        Servo servo = plan.servo();
        parts.add(bought("servo", 1, servo.name() + ", travel " + Words.degrees(servo.travel(), 0)));
        if (mount.hasPlate() && mount.standoff() > 0) {
            parts.add(bought("standoff", 4, "tube " + Words.mm(mount.standoff()) + " long, bore for "
                    + design.spec().screw().name()));
        } else if (!mount.hasPlate() && mount.standoff() > 0) {
            parts.add(bought("packing", 2, Words.mm(mount.standoff()) + " under the servo's ears"));
        }
        return parts;
    }

    private static Part bought(String name, int quantity, String stock) {
        return new Part(name, "bought", quantity, new Part.Source("bought", stock), List.of(), List.of(), "");
    }

    private Part pinion() {
        Contour outline = teeth.pinion()
                .external()
                .placed(new Placement(plan.phase(), plan.centre()));
        List<Contour> holes = holes();
        Region region = new Region(outline, holes);
        Layer layer = Layer.of(region, mount.pinionBottom(), mount.pinionTop());
        String fixing = mount.horn() ? "screwed to the servo's horn" : "pressed on the servo's output and screwed";
        String sheets = mount.pinionSheets() > 1 ? ", " + mount.pinionSheets() + " sheets glued with the teeth in line" : "";
        Point inward = Point.polar(1, plan.at() + Math.PI);
        double root = plan.pinion().rootRadius();
        Path mark = Path.of(new Line(
                plan.centre().plus(inward.times(root - Math.min(2, root / 4))),
                plan.centre().plus(inward.times(root - 0.3))));
        return new Part(
                "pinion", "gear", 1, design.spec().gear().source(), List.of(layer), List.of(mark), fixing + sheets)
                .withWorking(List.of(flanks()));
    }

    /** Roots and flanks; the lands at the tips stay free. */
    private Region flanks() {
        return Region.disc(plan.centre(), plan.pinion().tipRadius() - 0.02);
    }

    private List<Contour> holes() {
        Servo servo = plan.servo();
        List<Contour> holes = new ArrayList<>();
        if (!mount.horn()) {
            holes.add(Contour.circle(plan.centre(), servo.splineDiameter() / 2));
            return holes;
        }
        holes.add(Contour.circle(plan.centre(), servo.splineDiameter() / 2 + ServoMount.ROOM));
        for (int i = 0; i < HORN_SCREWS; i++) {
            Point at = plan.centre().plus(Point.polar(servo.hornScrewCircle() / 2, plan.at() + i * Math.PI / 2));
            holes.add(Contour.circle(at, servo.hornScrewHole() / 2));
        }
        return holes;
    }
}
