package ringleaf.verify;

import java.util.List;
import ringleaf.geom.Contour;
import ringleaf.geom.Placement;
import ringleaf.geom.Point;
import ringleaf.geom.Region;
import ringleaf.part.Finding;
import ringleaf.part.Requirement;

/** A round pin stays within a hole of another member; exact on lines and arcs. */
final class PinCheck extends Check {
    private final Requirement.PinInHole required;
    private final Shape hole;

    PinCheck(Scene scene, Requirement.PinInHole required) {
        super(scene);
        this.required = required;
        Contour edge = required.hole();
        this.hole = Shape.of(Region.of(edge));
    }

    @Override
    Measure measure(Pose pose, Figures figures) {
        Placement pinMoved = pose.bodies[body(required.pinMember())];
        Placement holeMoved = pose.bodies[body(required.holeMember())];
        Point here = pinMoved.apply(required.pin());
        Point inHole = holeMoved.inverse().apply(here);
        double edge = hole.distanceFromOutline(inHole.x(), inHole.y());
        boolean inside = hole.contains(inHole.x(), inHole.y());
        double room = (inside ? edge : -edge) - required.pinRadius();
        Place place = new Place(both(required.pinMember(), required.holeMember()), here);
        return new Measure(pose.state, room - required.clearance(), room, required.clearance(), place);
    }

    private int body(int member) {
        return scene.assembly.members().get(member).body();
    }

    @Override
    void conclude(Measure[] measures, List<Finding> findings) {
        Measure worst = Measure.worst(measures, scene.hair);
        String pin = "The " + name(required.pinMember()) + " in its hole of the " + name(required.holeMember());
        String message = worst.value() < -scene.tolerance
                ? pin + " stands " + Words.mm(-worst.value()) + " over the edge"
                : pin + " has " + Words.mm(Math.max(0, worst.value())) + " all round and needs "
                        + Words.mm(worst.limit());
        findings.add(finding(required.check(), worst, "mm", message));
    }
}
