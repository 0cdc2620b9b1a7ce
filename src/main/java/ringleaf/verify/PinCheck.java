package ringleaf.verify;

import java.util.ArrayList;
import java.util.List;
import ringleaf.geom.Placement;
import ringleaf.geom.Point;
import ringleaf.geom.Region;
import ringleaf.part.Finding;
import ringleaf.part.Requirement;

/** Round pins stay within holes of other members; exact on lines and arcs. */
final class PinCheck extends Check {
    private final Requirement.PinInHole required;
    private final List<Shape> holes = new ArrayList<>();

    PinCheck(Scene scene, Requirement.PinInHole required) {
        super(scene);
        this.required = required;
        for (Requirement.Fit fit : required.fits()) {
            holes.add(Shape.of(Region.of(fit.hole())));
        }
    }

    @Override
    Measure measure(Pose pose, Figures figures) {
        Measure worst = null;
        for (int i = 0; i < holes.size(); i++) {
            Measure one = measure(pose, required.fits().get(i), holes.get(i));
            if (worst == null || one.margin() < worst.margin() - scene.hair) {
                worst = one;
            }
        }
        return worst;
    }

    private Measure measure(Pose pose, Requirement.Fit fit, Shape hole) {
        Placement pinMoved = pose.bodies[body(fit.pinMember())];
        Placement holeMoved = pose.bodies[body(fit.holeMember())];
        Point here = pinMoved.apply(fit.pin());
        Point inHole = holeMoved.inverse().apply(here);
        double edge = hole.distanceFromOutline(inHole.x(), inHole.y());
        boolean inside = hole.contains(inHole.x(), inHole.y());
        double room = (inside ? edge : -edge) - fit.pinRadius();
        Place place = new Place(both(fit.pinMember(), fit.holeMember()), here);
        return new Measure(pose.state, room - required.clearance(), room, required.clearance(), place);
    }

    private int body(int member) {
        return scene.assembly.members().get(member).body();
    }

    @Override
    void conclude(Measure[] measures, List<Finding> findings) {
        Measure worst = Measure.worst(measures, scene.hair);
        String most = worst.value() < -scene.tolerance
                ? "stands " + Words.mm(-worst.value()) + " over the edge"
                : "has " + Words.mm(Math.max(0, worst.value())) + " all round and needs " + Words.mm(worst.limit());
        int count = holes.size();
        String pins = count == 1 ? "The pin in its hole " : "Of " + count + " pins in their holes the tightest ";
        findings.add(on(required.check(), worst)
                .room(worst.value(), worst.limit(), "mm")
                .says(pins + most + scene.judged()));
    }
}
