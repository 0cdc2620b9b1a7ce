// SPDX-License-Identifier: Apache-2.0
package ringleaf.mechanism.gear;

import java.util.ArrayList;
import java.util.List;
import ringleaf.geom.Contour;
import ringleaf.geom.Path;
import ringleaf.geom.Placement;
import ringleaf.geom.Region;
import ringleaf.machine.Members;
import ringleaf.mechanism.body.Body;
import ringleaf.mechanism.body.Bore;
import ringleaf.part.Family;
import ringleaf.part.Finding;
import ringleaf.part.Layer;
import ringleaf.part.Part;

/** The gears of a train, one part a shaft, and what is bought with them. */
final class TrainParts {
    private final TrainDesign design;
    private final TrainSpec spec;

    TrainParts(TrainDesign design) {
        this.design = design;
        this.spec = design.spec();
    }

    List<Part> parts() {
        List<Part> parts = new ArrayList<>();
        for (int shaft = 0; shaft <= design.stages().size(); shaft++) {
            parts.add(shaft(shaft));
        }
        for (int shaft = 0; shaft <= design.stages().size(); shaft++) {
            for (Part part : bought(shaft)) {
                // two gears of a shaft may be bored differently, and sit on one axle all the same
                if (parts.stream().noneMatch(other -> other.equals(part))) {
                    parts.add(part);
                }
            }
        }
        spec.drive().servo().ifPresent(servo -> parts.add(Part.bought("servo", 1, servo.words())));
        return parts;
    }

    private List<Part> bought(int shaft) {
        List<Part> parts = new ArrayList<>();
        for (Body body : bodies(design, shaft)) {
            parts.addAll(body.axle().bought(name(spec, shaft) + "-"));
        }
        return parts;
    }

    /** Whether rod is sold for all axles. */
    List<Finding> axles() {
        List<Finding> found = new ArrayList<>();
        for (int shaft = 0; shaft <= design.stages().size(); shaft++) {
            List<Body> bodies = bodies(design, shaft);
            if (!bodies.isEmpty()) {
                found.addAll(bodies.get(0).axle().findings(name(spec, shaft) + "-"));
            }
        }
        return found;
    }

    /** The gears in their places, each shaft a body of its own. */
    Members members() {
        Members members = new Members();
        for (int shaft = 0; shaft <= design.stages().size(); shaft++) {
            members.add(Shaft.of(spec, shaft), shaft(shaft), shaft + 1);
        }
        return members;
    }

    /** What is cut into the gears on a shaft: one of them where they have the same. */
    static List<Body> bodies(TrainDesign design, int shaft) {
        List<Body> bodies = new ArrayList<>();
        if (shaft > 0) {
            bodies.add(design.stages().get(shaft - 1).driven().spec().body());
        }
        if (shaft < design.stages().size()) {
            Body body = design.stages().get(shaft).driver().spec().body();
            if (bodies.isEmpty() || !bodies.get(0).equals(body)) {
                bodies.add(body);
            }
        }
        return bodies;
    }

    /** Name of the part on a shaft, the first driver's being 0. */
    static String name(TrainSpec spec, int shaft) {
        if (spec.isPair()) {
            return shaft == 0 ? "driver" : "driven";
        }
        return "gear-" + (shaft + 1);
    }

    private Part shaft(int shaft) {
        List<Layer> layers = new ArrayList<>();
        Stage before = shaft > 0 ? design.stages().get(shaft - 1) : null;
        Stage after = shaft < design.stages().size() ? design.stages().get(shaft) : null;
        String note = "";
        if (before != null) {
            Wheel wheel = before.driven();
            Region region = wheel.region();
            if (after != null) {
                region = lightened(wheel, after.driver());
            }
            layers.add(Layer.of(region.placed(before.drivenHome()), before.zFrom(), before.zTo())
                    .withMarks(mark(
                            wheel,
                            region,
                            before.drivenHome(),
                            before.drivenPhase() + wheel.rim().pitchAngle() / 2)));
            note = note(wheel);
        }
        if (after != null) {
            Wheel wheel = after.driver();
            double from = before == null ? after.zFrom() : before.zTo();
            layers.add(Layer.of(wheel.region().placed(after.driverHome()), from, after.zTo())
                    .withMarks(mark(wheel, wheel.region(), after.driverHome(), after.driverPhase())));
            String own = before == null ? driving(wheel) : note(wheel);
            note = before == null ? own : "two gears on one shaft, fixed to each other as drawn; " + own;
        }
        int sheets = (int) Math.rint(spec.width() / spec.material().thickness());
        if (spec.material().sheet() && (sheets > 1 || layers.size() > 1)) {
            note += "; sheets glued with the teeth in line";
        }
        return new Part(name(spec, shaft), Family.GEAR, 1, spec.material().source(), layers, note, List.of(), false);
    }

    /** The wheel with its openings kept clear of the smaller gear that stands on it. */
    private Region lightened(Wheel wheel, Wheel upper) {
        double web = spec.material().leastWeb();
        double keep = upper.reach() + web;
        List<Contour> holes = new ArrayList<>(upper.spec().body().bore().cuts());
        if (wheel.rim() instanceof Rim.Inner || wheel.spec().sector().isPresent()) {
            return wheel.region();
        }
        wheel.spec().body().screws().ifPresent(s -> holes.addAll(s.cuts()));
        double whole = Wheel.whole(wheel.rim(), web);
        holes.addAll(wheel.spec().body().lightening().cuts(keep, whole, web));
        return new Region(wheel.region().outer(), holes);
    }

    /** The mark towards the mate: {@code direction} is that of the marked tooth or space, in the mechanism's frame. */
    private List<Path> mark(Wheel wheel, Region on, Placement home, double direction) {
        return spec.marks()
                ? wheel.mark(direction - home.angle(), on).stream()
                        .map(m -> m.placed(home))
                        .toList()
                : List.of();
    }

    /** How the first driver is held. */
    private String driving(Wheel wheel) {
        Bore bore = wheel.spec().body().bore();
        if (spec.drive().servo().isEmpty() || spec.given().contains("driver.bore")) {
            return note(wheel);
        }
        return bore instanceof Bore.Horn ? "screwed to the servo's horn" : "pressed on the servo's output and screwed";
    }

    private static String note(Wheel wheel) {
        if (wheel.rim() instanceof Rim.Inner) {
            return "internal teeth";
        }
        return wheel.spec().body().bore().words();
    }
}
