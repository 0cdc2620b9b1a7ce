// SPDX-License-Identifier: Apache-2.0
package ringleaf.mechanism.slide;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import ringleaf.curve.Overlay;
import ringleaf.curve.Shapes;
import ringleaf.geom.Box;
import ringleaf.geom.Contour;
import ringleaf.geom.Placement;
import ringleaf.geom.Point;
import ringleaf.geom.Region;
import ringleaf.machine.Members;
import ringleaf.mechanism.Bolt;
import ringleaf.part.Family;
import ringleaf.part.Layer;
import ringleaf.part.Member;
import ringleaf.part.Part;
import ringleaf.space.Pose;
import ringleaf.space.Turn;
import ringleaf.space.Vector;

/**
 * The parts of a slide. What lies in the plane of the horn is drawn in its place, drawn in; what stands across it is drawn
 * as seen from the front, x to the right, y up, and stood up: its x then runs towards -z, its height along the travel.
 */
final class SlideParts {
    static final int FRAME = 0;
    static final int CARRIAGE = 1;
    static final int ARM = 2;
    static final int LINK = 3;

    private static final double CORNER = 2;

    private final SlideLayout layout;
    private final SlideSpec spec;
    private final double thick;

    SlideParts(SlideLayout layout) {
        this.layout = layout;
        this.spec = layout.spec();
        this.thick = layout.thickness();
    }

    Members members() {
        Members members = new Members();
        double rear = layout.rear() - thick;
        double length = layout.carriage();
        members.stand(SlideRole.END, 0, endPlate(), FRAME, across(rear, 0));
        members.stand(SlideRole.END, 1, endPlate(), FRAME, across(layout.front(), 0));
        members.add(SlideRole.SIDE, flat(SlideRole.SIDE, side(), layout.sideFrom(), layout.sideFrom() + thick), FRAME);
        for (int i = 0; i < 2; i++) {
            members.stand(SlideRole.ROD, i, rod(), FRAME, across(rear, z(i)));
        }
        members.stand(SlideRole.CARRIAGE, 0, carriagePlate(), CARRIAGE, across(-length, 0));
        members.stand(SlideRole.CARRIAGE, 1, carriagePlate(), CARRIAGE, across(-thick, 0));
        members.add(SlideRole.BRIDGE, flat(SlideRole.BRIDGE, bridge(), -thick / 2, thick / 2), CARRIAGE);
        for (int i = 0; i < 4; i++) {
            double x = i < 2 ? -length : -layout.bearing().length();
            members.stand(SlideRole.BEARING, i, bearing(), CARRIAGE, across(x, z(i % 2)));
        }
        double[] caps = {layout.linkFrom() + thick + SlideLayout.AIR, layout.linkFrom() + 2 * thick + SlideLayout.AIR};
        Point start = layout.hornPin(layout.startAngle());
        members.add(SlideRole.CARRIAGE_PIN, pin(SlideRole.CARRIAGE_PIN, layout.carriagePin(), caps[1]), CARRIAGE);
        members.add(SlideRole.ARM, flat(SlideRole.ARM, arm(), -thick / 2, thick / 2), ARM);
        members.add(SlideRole.HORN_PIN, pin(SlideRole.HORN_PIN, start, caps[1]), ARM);
        members.add(SlideRole.LINK, flat(SlideRole.LINK, link(), layout.linkFrom(), layout.linkFrom() + thick), LINK);
        Region ring = Region.ring(start, spec.pinSet().width() / 2, layout.boss());
        Part cap = flat(SlideRole.CAP, ring, caps[0], caps[1]).withQuantity(2);
        members.add(SlideRole.CAP, 0, cap, ARM, Placement.IDENTITY);
        Point to = layout.carriagePin().minus(start);
        members.add(SlideRole.CAP, 1, cap, CARRIAGE, Placement.shift(to.x(), to.y()));
        return members;
    }

    /** What is made and what is bought, once each. */
    List<Part> parts(Members members) {
        List<Part> parts = new ArrayList<>();
        List<String> told = new ArrayList<>();
        for (Member member : members.all()) {
            Part part = member.part();
            if (!told.contains(part.name())) {
                told.add(part.name());
                parts.add(
                        part.source().isBought()
                                ? Part.bought(
                                        part.name(),
                                        part.quantity(),
                                        part.source().stock())
                                : part);
            }
        }
        parts.add(Part.bought("servo", 1, spec.servo().words()));
        servoScrew().ifPresent(bolt -> {
            int ears = spec.servo().holesAcross() > 0 ? 4 : 2;
            parts.add(bolt.part(ears));
            parts.add(bolt.nuts("servo-nut", ears));
        });
        return parts;
    }

    /** Those in the servo's ears, heads before the side plate; none where none is sold that goes through. */
    private Optional<Bolt> servoScrew() {
        return spec.hardware()
                .screwThrough(spec.servo().holeDiameter(), layout.belowArm())
                .map(screw -> Bolt.of("servo-screw", screw, thick + spec.servo().earThickness()));
    }

    /** Place of a rod along z: the first is at the back. */
    private double z(int rod) {
        return (rod == 0 ? -1 : 1) * layout.rodSpacing() / 2;
    }

    private static Pose across(double x, double z) {
        return new Pose(Turn.about(Vector.Y, Math.PI / 2), new Vector(x, 0, z));
    }

    private Part flat(SlideRole role, Region region, double from, double to) {
        return made(role, 1, region, from, to);
    }

    private Part made(SlideRole role, int quantity, Region region, double from, double to) {
        return new Part(
                role.label(),
                Family.PLATE,
                quantity,
                spec.plate().source(),
                List.of(Layer.of(region, from, to)),
                "",
                List.of(),
                false);
    }

    private static Part bought(
            SlideRole role, Family family, int quantity, Part.Source source, Region region, double from, double to) {
        return new Part(
                role.label(), family, quantity, source, List.of(Layer.of(region, from, to)), "", List.of(), false);
    }

    private Part rod() {
        Part.Source source = spec.hardware()
                .rod(SlideRole.ROD.label(), layout.bearing().rod())
                .source(layout.overall());
        Region disc = Region.disc(Point.ORIGIN, layout.bearing().rod() / 2);
        return bought(SlideRole.ROD, Family.BOUGHT, 2, source, disc, 0, layout.overall());
    }

    private Part bearing() {
        Part.Source source = new Part.Source("bought", layout.bearing().words());
        Region ring = Region.ring(
                Point.ORIGIN, layout.bearing().rod() / 2, layout.bearing().outside() / 2);
        return bought(
                SlideRole.BEARING,
                Family.BOUGHT,
                4,
                source,
                ring,
                0,
                layout.bearing().length());
    }

    private Part pin(SlideRole role, Point at, double to) {
        double from = -thick / 2;
        Part.Source source = spec.hardware().rod(role.label(), spec.pin()).source(to - from);
        return bought(role, Family.PIN, 1, source, Region.disc(at, spec.pin() / 2), from, to);
    }

    /** Both end plates are alike: seats of the rods, the slot of the side plate, and holes to screw them down. */
    private Part endPlate() {
        double rodEdge =
                layout.rodSpacing() / 2 + layout.rodSeat() / 2 + spec.plate().holeEdge(layout.rodSeat());
        double side = -layout.sideFrom() - thick / 2;
        double right = Math.max(rodEdge, side + layout.tabSlot() / 2 + Math.max(layout.web(), SlideLayout.TAB_EDGE));
        Box box = new Box(-rodEdge, layout.bottom(), right, layout.top());
        List<Contour> cuts = new ArrayList<>();
        for (int end = -1; end <= 1; end += 2) {
            cuts.add(Contour.circle(new Point(end * layout.rodSpacing() / 2, 0), layout.rodSeat() / 2));
        }
        double half = layout.tabSlot() / 2;
        cuts.add(Contour.rectangle(new Box(
                side - half, layout.tabLow() - spec.tab() / 2, side + half, layout.tabHigh() + spec.tab() / 2)));
        double hole = spec.screw().hole();
        double pad = hole / 2 + spec.plate().holeEdge(hole);
        for (double x : new double[] {box.minX() + pad, box.maxX() - pad}) {
            cuts.add(Contour.circle(new Point(x, box.minY() + pad), hole / 2));
        }
        return made(SlideRole.END, 2, new Region(Shapes.roundedRectangle(box, CORNER), cuts), 0, thick);
    }

    private Region side() {
        List<Region> solid = List.of(
                Region.of(Contour.rectangle(new Box(layout.rear(), layout.bottom(), layout.front(), layout.sideTop()))),
                Region.of(Contour.rectangle(
                        new Box(layout.rear() - thick, layout.tabLow(), layout.front() + thick, layout.tabHigh()))));
        return Overlay.union(solid).get(0).withHoles(layout.servo().seat(layout.web()));
    }

    private Part carriagePlate() {
        double w = layout.carriageWidth();
        double h = layout.carriageHalf();
        List<Contour> cuts = new ArrayList<>();
        for (int end = -1; end <= 1; end += 2) {
            cuts.add(Contour.circle(new Point(end * layout.rodSpacing() / 2, 0), layout.bearingSeat() / 2));
        }
        for (int end = -1; end <= 1; end += 2) {
            cuts.add(Contour.circle(
                    new Point(end * layout.mountAt(), 0), spec.screw().hole() / 2));
        }
        double half = layout.tabSlot() / 2;
        double high = layout.bridgeTab() + spec.tab() / 2;
        cuts.add(Contour.rectangle(new Box(-half, -high, half, high)));
        Region region = new Region(Shapes.roundedRectangle(new Box(-w, -h, w, h), CORNER), cuts);
        return made(SlideRole.CARRIAGE, 2, region, 0, thick);
    }

    private Region bridge() {
        double length = layout.carriage();
        double tab = layout.bridgeTab();
        Point pin = layout.carriagePin();
        double low = -layout.carriageHalf();
        List<Region> solid = List.of(
                Region.of(Contour.rectangle(new Box(-length + thick, low, -thick, layout.carriageHalf()))),
                Region.of(Contour.rectangle(new Box(-length, -tab, 0, tab))),
                Region.of(Shapes.obround(pin, new Point(pin.x(), low + layout.boss()), layout.boss())));
        return Overlay.union(solid)
                .get(0)
                .withHoles(List.of(Contour.circle(pin, spec.pinSet().width() / 2)));
    }

    private Region arm() {
        Point pin = layout.hornPin(layout.startAngle());
        Contour edge = Shapes.hull(layout.axis(), layout.root(), pin, layout.boss());
        List<Contour> cuts = new ArrayList<>();
        Placement place = Placement.turn(layout.startAngle() + Math.PI / 2)
                .then(Placement.shift(layout.axis().x(), layout.axis().y()));
        layout.horn().cuts().forEach(cut -> cuts.add(cut.placed(place)));
        cuts.add(Contour.circle(pin, spec.pinSet().width() / 2));
        return new Region(edge, cuts);
    }

    private Region link() {
        Point horn = layout.hornPin(layout.startAngle());
        Point carriage = layout.carriagePin();
        double bore = spec.pivot().width() / 2;
        return Region.of(
                Shapes.obround(horn, carriage, layout.boss()),
                Contour.circle(horn, bore),
                Contour.circle(carriage, bore));
    }
}
