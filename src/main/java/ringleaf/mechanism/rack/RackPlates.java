// SPDX-License-Identifier: Apache-2.0
package ringleaf.mechanism.rack;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import ringleaf.curve.Overlay;
import ringleaf.curve.Shapes;
import ringleaf.geom.Box;
import ringleaf.geom.Contour;
import ringleaf.geom.Point;
import ringleaf.geom.Region;
import ringleaf.mechanism.Bolt;
import ringleaf.mechanism.Material;
import ringleaf.mechanism.body.ServoOutline;
import ringleaf.part.Finding;
import ringleaf.spec.shared.Dowel;
import ringleaf.spec.shared.Servo;

/** Heights, outline, slots and holes of both plates; mm. z = 0 is the back of the base. */
final class RackPlates {
    /** Between base and pinion, so that they do not rub; common practice, no source. */
    private static final double AIR = 0.2;

    /** Between the plates' edge and the eye where the rack is drawn in, mm. */
    private static final double EYE_AIR = 0.5;

    private final RackLayout layout;
    private final RackSpec spec;
    private final double pad;

    RackPlates(RackLayout layout) {
        this.layout = layout;
        this.spec = layout.spec();
        this.pad = spec.screw().hole() / 2
                + Math.max(spec.plate().leastWeb(), spec.spacer().leastWeb());
    }

    /** Thickness of either plate. */
    double thickness() {
        return spec.plate().thickness();
    }

    /** From the base's back to the servo's ears' upper face, so that the pinion turns at the rack's height. */
    private double gap() {
        return Math.max(0, carried() - thickness() - AIR);
    }

    /** Height above the ears of the pinion's lower face: on the horn, or ending where the output does. */
    private double carried() {
        double end = spec.servo().orElseThrow().hornHeight();
        return spec.isOnHorn() ? end : end - spec.width();
    }

    /** Whether the servo has a plate of its own behind the base; else it sits on the base itself. */
    boolean hasServoPlate() {
        return spec.servo().isPresent() && gap() >= thickness();
    }

    /** Length of the spacers between base and servo plate, or under the ears; whole sheets where they are cut. */
    double packing() {
        if (spec.servo().isEmpty()) {
            return 0;
        }
        double need = gap() - (hasServoPlate() ? thickness() : 0);
        double sheet = spec.spacer().thickness();
        return spec.spacer().sheet() ? Math.floor(need / sheet + Finding.ROUNDING) * sheet : need;
    }

    /** Height of the servo's ears' upper face. */
    double earFace() {
        return -packing() - (hasServoPlate() ? thickness() : 0);
    }

    /** Height of the pinion's lower face. */
    double pinionBottom() {
        return spec.servo().isPresent() ? carried() + earFace() : thickness();
    }

    /** Room between the pinion's lower face and the base, below 0 where it stands in it. */
    double belowPinion() {
        return pinionBottom() - thickness();
    }

    /** Length of the spacers between both plates: whole sheets where they are cut from sheet. */
    double between() {
        double need =
                Math.max(0, belowPinion()) + spec.width() + spec.rooms().axial().mm();
        double sheet = spec.spacer().thickness();
        return spec.spacer().sheet() ? Math.ceil(need / sheet - Finding.ROUNDING) * sheet : need;
    }

    double frontBottom() {
        return thickness() + between();
    }

    /** Front to back of base and front plate. */
    double depth() {
        return frontBottom() + thickness();
    }

    /** Front to back of all plates that the screws hold together. */
    double screwed() {
        return depth() + (hasServoPlate() ? packing() + thickness() : 0);
    }

    /** Height over which teeth of both lie beside each other. */
    double engaged() {
        double from = Math.max(thickness(), pinionBottom());
        double to = Math.min(thickness(), pinionBottom()) + spec.width();
        return Math.max(0, to - from);
    }

    /** Outer radius of a spacer. */
    double spacerRadius() {
        return spec.screw().hole() / 2 + Math.max(1.5, spec.spacer().leastWeb());
    }

    private double reach() {
        return Math.max(pad, spacerRadius());
    }

    /** Half the plates' length along the travel. */
    double halfLength() {
        double web = spec.plate().leastWeb();
        double half = layout.slotReach() + web;
        Point corner = new Point(half - reach(), top() - reach());
        double pinion = layout.pinion().tipRadius() + RackRooms.BESIDE + reach();
        if (corner.norm() < pinion) {
            double y = Math.max(0, corner.y());
            half = Math.max(half, Math.sqrt(Math.max(0, (pinion - y) * (pinion + y))) + reach());
        }
        if (spec.servo().isPresent()) {
            double head = Math.max(spec.screw().headDiameter() / 2, spec.screw().nutAcross() / Math.sqrt(3));
            half = Math.max(
                    half, spec.servo().get().bodyWidth() / 2 + ServoOutline.ROOM + Math.max(head, reach()) + reach());
        }
        return half;
    }

    /** Upper edge of the plates. */
    double top() {
        double web = spec.plate().leastWeb();
        double top = layout.tips() + RackRooms.BESIDE + 2 * reach();
        top = Math.max(top, holeRadius() + 2 * web);
        if (spec.servo().isPresent()) {
            for (Point corner : outline().earCorners()) {
                top = Math.max(top, corner.y() + web);
            }
        }
        return top;
    }

    /** Lower edge of the plates. */
    double bottom() {
        return layout.datum() - layout.back() - RackRooms.BESIDE - 2 * reach();
    }

    ServoOutline outline() {
        return new ServoOutline(spec.servo().orElseThrow(), RackLayout.servoPlace());
    }

    Contour edge() {
        Box box = new Box(-halfLength(), bottom(), halfLength(), top());
        return Shapes.roundedRectangle(box, reach());
    }

    List<Point> screws() {
        double x = halfLength() - reach();
        return List.of(
                new Point(-x, bottom() + reach()),
                new Point(x, bottom() + reach()),
                new Point(x, top() - reach()),
                new Point(-x, top() - reach()));
    }

    /** Radius of the hole for the pinion's axle in both plates; 0 with a servo. */
    double axleHole() {
        double axle = spec.axle();
        return axle > 0 ? (axle + spec.plate().runningClearance()) / 2 : 0;
    }

    /** Radius of the widest round hole about the pinion's axis in the base. */
    private double holeRadius() {
        return spec.servo().isPresent() ? RackLayout.hornHole(spec) : axleHole();
    }

    /** Where both guide pins run, each in its own slot or both in one. */
    List<Contour> slots() {
        double y = layout.datum() - layout.pinDepth();
        double way = layout.stroke() / 2 + layout.slotBeyond();
        double radius = layout.slotWidth() / 2;
        double at = layout.pinAt();
        if (!layout.hasTwoSlots()) {
            return List.of(Shapes.obround(new Point(-at - way, y), new Point(at + way, y), radius));
        }
        return List.of(
                Shapes.obround(new Point(-at - way, y), new Point(-at + way, y), radius),
                Shapes.obround(new Point(at - way, y), new Point(at + way, y), radius));
    }

    /** Slots and screws, which both plates have. */
    private List<Contour> common() {
        List<Contour> cuts = new ArrayList<>(slots());
        for (Point screw : screws()) {
            cuts.add(Contour.circle(screw, spec.screw().hole() / 2));
        }
        if (axleHole() > 0) {
            cuts.add(Contour.circle(Point.ORIGIN, axleHole()));
        }
        return cuts;
    }

    Region front() {
        return new Region(edge(), common());
    }

    /** The base, with a hole for the horn; it holds the servo by its ears where there is no plate for that. */
    Region base() {
        List<Contour> cuts = common();
        if (spec.servo().isPresent()) {
            Region through = Region.disc(Point.ORIGIN, RackLayout.hornHole(spec));
            cuts.addAll(hasServoPlate() ? through.contours() : seat(List.of(through), 0));
        }
        return new Region(edge(), cuts);
    }

    /** The plate behind the base in which the servo sits. */
    Region servoPlate() {
        List<Contour> cuts = new ArrayList<>();
        for (Point screw : screws()) {
            cuts.add(Contour.circle(screw, spec.screw().hole() / 2));
        }
        cuts.addAll(seat(List.of(), -packing() - thickness()));
        return new Region(edge(), cuts);
    }

    /** Holes of the ears, and a window for the case where it reaches into a plate whose lower face lies at a height. */
    private List<Contour> seat(List<Region> also, double bottom) {
        Servo servo = spec.servo().orElseThrow();
        List<Contour> cuts = new ArrayList<>();
        List<Region> windows = new ArrayList<>(also);
        if (earFace() + servo.caseHeight() > bottom) {
            List<Contour> seat = outline().seat(spec.plate().leastWeb());
            windows.add(Region.of(seat.get(0)));
            cuts.addAll(seat.subList(1, seat.size()));
        } else {
            outline().earHoles().forEach(hole -> cuts.add(Contour.circle(hole, servo.holeDiameter() / 2)));
        }
        for (Region region : Overlay.union(windows)) {
            cuts.add(region.outer());
        }
        return cuts;
    }

    /** Whether the servo's screws clamp its ears in slots. */
    boolean isClamped() {
        return hasServoPlate() && outline().isSlotted(spec.plate().leastWeb());
    }

    /** Spacers about the screws, between the plates. */
    List<Region> spacers() {
        List<Region> rings = new ArrayList<>();
        for (Point screw : screws()) {
            rings.add(Region.ring(screw, spec.screw().hole() / 2, spacerRadius()));
        }
        return rings;
    }

    /** Rings between base and servo plate, or under the servo's ears. */
    List<Region> packings() {
        if (hasServoPlate()) {
            return spacers();
        }
        Servo servo = spec.servo().orElseThrow();
        Material made = spec.spacer();
        List<Region> rings = new ArrayList<>();
        for (Point hole : outline().earHoles()) {
            double radius = servo.holeDiameter() / 2;
            rings.add(Region.ring(hole, radius, radius + Math.max(1, made.leastWeb())));
        }
        return rings;
    }

    /** End of the toothed bar at the start of the travel, without the eye. */
    double left() {
        return -layout.stroke() / 2 - layout.length() / 2;
    }

    /** The other end. */
    double right() {
        return -layout.stroke() / 2 + layout.length() / 2;
    }

    /** Far end of the rack at the start of the travel, with its eye. */
    double end() {
        return spec.eye().isEmpty() ? right() : Math.max(right(), eye() + layout.eyeReach());
    }

    /** Middle of the eye at the start of the travel. */
    double eye() {
        return Math.max(halfLength() + EYE_AIR + layout.eyeReach(), right() + layout.eyeReach());
    }

    /** Room along the travel that plates and rack take in all states. */
    double overallLength() {
        return Math.max(halfLength(), end() + layout.stroke()) - Math.min(-halfLength(), left());
    }

    /** The longest dowel that ends within both plates, or a rod of their depth where none is sold. */
    double pinLength() {
        return dowel().map(d -> d.within(depth()).orElseThrow()).orElse(depth());
    }

    /** The dowels of which the pins are, where any of this diameter go between the plates' faces. */
    Optional<Dowel> dowel() {
        return spec.hardware().dowel(layout.pin()).filter(d -> d.within(depth()).isPresent());
    }

    /** The screws through all plates, nuts behind. */
    Bolt screw() {
        return Bolt.of("screw", spec.screw(), screwed());
    }

    /** Those in the servo's ears, their heads before its plate; none where it has none or they find no room there. */
    Optional<Bolt> servoScrew() {
        if (!hasServoPlate()) {
            return Optional.empty();
        }
        Servo servo = spec.servo().orElseThrow();
        return spec.hardware()
                .screwThrough(servo.holeDiameter(), packing())
                .map(s -> Bolt.of("servo-screw", s, thickness() + servo.earThickness()));
    }

    /** How much of a pin lies in either plate. */
    double pinHold() {
        return (pinLength() - between()) / 2;
    }
}
