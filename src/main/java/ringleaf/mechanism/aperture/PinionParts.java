// SPDX-License-Identifier: Apache-2.0
package ringleaf.mechanism.aperture;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import ringleaf.geom.Contour;
import ringleaf.geom.Line;
import ringleaf.geom.Path;
import ringleaf.geom.Placement;
import ringleaf.geom.Point;
import ringleaf.geom.Region;
import ringleaf.part.Family;
import ringleaf.part.Layer;
import ringleaf.part.Part;
import ringleaf.spec.shared.Servo;
import ringleaf.tooth.GearOutline;

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
        Part.Source source = design.spec().gear().source();
        Point inward = Point.polar(1, plan.at() + Math.PI);
        Optional<StepUp> step = plan.stepUp();
        String fixing = step.isPresent() ? "pressed and glued on the axle" : servoFixing();
        List<Contour> holes = step.isPresent() ? List.of(axleHole(step.get())) : servoHoles(plan.centre());
        parts.add(gear("pinion", teeth.pinion(), plan.phase(), plan.centre(), inward, holes, fixing, source));
        step.ifPresent(s -> stepUp(s, source, parts));
        parts.add(Part.bought("servo", 1, plan.servo().words()));
        return parts;
    }

    private void stepUp(StepUp step, Part.Source source, List<Part> parts) {
        Point to = Point.polar(1, step.direction());
        parts.add(gear(
                "step-wheel",
                teeth.wheel().orElseThrow(),
                step.wheelPhase(),
                plan.centre(),
                to,
                List.of(axleHole(step)),
                "pressed and glued on the axle behind the base",
                source));
        parts.add(gear(
                "servo-gear",
                teeth.servoGear().orElseThrow(),
                step.servoPhase(),
                plan.servoCentre(),
                to.times(-1),
                servoHoles(plan.servoCentre()),
                servoFixing(),
                source));
        double from = mount.servoGearBottom();
        double front = design.stack().retainerTop();
        Layer layer = Layer.of(Region.disc(plan.centre(), step.axle() / 2), from, front);
        Part.Source rod = design.spec().hardware().rod("axle", step.axle()).source(front - from);
        parts.add(new Part("axle", Family.PIN, 1, rod, List.of(layer), List.of(), "turns in base and retainer"));
    }

    private String servoFixing() {
        return mount.horn() ? "screwed to the servo's horn" : "pressed on the servo's output and screwed";
    }

    /** A gear in its place, with a line under the tooth that looks at its mate. */
    private Part gear(
            String name,
            GearOutline outline,
            double phase,
            Point centre,
            Point towardsMate,
            List<Contour> holes,
            String fixing,
            Part.Source source) {
        Region region = new Region(outline.external().placed(new Placement(phase, centre)), holes);
        boolean behind = plan.stepUp().isPresent() && !name.equals("pinion");
        double bottom = behind ? mount.servoGearBottom() : mount.pinionBottom();
        Layer layer = Layer.of(region, bottom, bottom + mount.pinionWidth());
        double root = outline.form().rootRadius();
        Path mark = Path.of(new Line(
                centre.plus(towardsMate.times(root - Math.min(2, root / 4))),
                centre.plus(towardsMate.times(root - 0.3))));
        String sheets =
                mount.pinionSheets() > 1 ? ", " + mount.pinionSheets() + " sheets glued with the teeth in line" : "";
        // Roots and flanks; the lands at the tips stay free.
        Region flanks = Region.disc(centre, outline.form().tipRadius() - 0.02);
        return new Part(name, Family.GEAR, 1, source, List.of(layer), List.of(mark), fixing + sheets)
                .withWorking(List.of(flanks));
    }

    private Contour axleHole(StepUp step) {
        return Contour.circle(plan.centre(), step.axle() / 2);
    }

    private List<Contour> servoHoles(Point centre) {
        Servo servo = plan.servo();
        List<Contour> holes = new ArrayList<>();
        if (!mount.horn()) {
            holes.add(Contour.circle(centre, servo.splineDiameter() / 2));
            return holes;
        }
        holes.add(Contour.circle(centre, ServoMount.hub(servo)));
        for (int i = 0; i < HORN_SCREWS; i++) {
            Point at = centre.plus(Point.polar(servo.hornScrewCircle() / 2, plan.at() + i * Math.PI / 2));
            holes.add(Contour.circle(at, servo.hornScrewHole() / 2));
        }
        return holes;
    }
}
