// SPDX-License-Identifier: Apache-2.0
package ringleaf.mechanism.rack;

import java.util.ArrayList;
import java.util.List;
import ringleaf.curve.OnMaterial;
import ringleaf.curve.Overlay;
import ringleaf.geom.Box;
import ringleaf.geom.Contour;
import ringleaf.geom.Line;
import ringleaf.geom.Path;
import ringleaf.geom.Placement;
import ringleaf.geom.Point;
import ringleaf.geom.Region;
import ringleaf.geom.Tolerance;
import ringleaf.machine.Members;
import ringleaf.part.Family;
import ringleaf.part.Layer;
import ringleaf.part.Member;
import ringleaf.part.Part;
import ringleaf.tooth.GearOutline;

/** The parts of a rack and pinion, drawn in their places at the start of the travel. */
final class RackParts {
    static final String RACK = "rack";
    static final String PINION = "pinion";
    static final String BASE = "base-plate";
    static final String FRONT = "front-plate";
    static final String SPACER = "spacer";
    static final String PACKING = "servo-spacer";
    static final String SERVO_PLATE = "servo-plate";
    static final String PIN = "guide-pin";
    static final String AXLE = "axle";

    /** Material kept inside the root circle, in modules, where it is more than the web; common practice, no source. */
    private static final double RIM_BACK = 1.5;

    private static final double MARK_LENGTH = 2;
    private static final double MARK_GAP = 0.3;

    private final RackLayout layout;
    private final RackSpec spec;
    private final RackPlates plates;
    private final GearOutline teeth;

    RackParts(RackLayout layout, RackPlates plates) {
        this.layout = layout;
        this.spec = layout.spec();
        this.plates = plates;
        this.teeth = GearOutline.of(layout.pinion(), Tolerance.CURVE);
    }

    /** Greatest distance of any arc of the pinion from the curve it stands for, mm; the rack is exact. */
    double deviation() {
        return teeth.deviation();
    }

    /** Everything with an outline, in its place. */
    Members members() {
        Members members = new Members();
        double base = plates.thickness();
        members.add(RackRole.BASE, part(BASE, Family.PLATE, spec.plate().source(), plates.base(), 0, base), 0);
        Box worked = new Box(plates.left(), layout.datum() - layout.rootDepth(), plates.right(), layout.tips());
        members.add(
                RackRole.RACK,
                toothed(RACK, bar(), base, rackMark(), "").withWorking(List.of(Region.of(Contour.rectangle(worked)))),
                RackMotion.RACK);
        String bore = spec.body().bore().words();
        members.add(
                RackRole.PINION,
                toothed(PINION, pinion(), plates.pinionBottom(), pinionMark(), bore),
                RackMotion.PINION);
        members.add(RackRole.SPACER, stack(SPACER, plates.spacers(), base, plates.frontBottom()), 0);
        if (plates.packing() > 0) {
            members.add(RackRole.PACKING, stack(PACKING, plates.packings(), -plates.packing(), 0), 0);
        }
        if (plates.hasServoPlate()) {
            double back = -plates.packing() - plates.thickness();
            Region plate = plates.servoPlate();
            members.add(
                    RackRole.SERVO_PLATE,
                    part(SERVO_PLATE, Family.PLATE, spec.plate().source(), plate, back, -plates.packing()),
                    0);
        }
        members.add(RackRole.PIN, pins(), RackMotion.RACK);
        if (spec.axle() > 0) {
            Region disc = Region.disc(Point.ORIGIN, spec.axle() / 2);
            Part.Source rod = spec.hardware().rod(AXLE, spec.axle()).source(plates.depth());
            members.add(RackRole.AXLE, part(AXLE, Family.BOUGHT, rod, disc, 0, plates.depth()), RackMotion.PINION);
        }
        members.add(
                RackRole.FRONT,
                part(FRONT, Family.PLATE, spec.plate().source(), plates.front(), plates.frontBottom(), plates.depth())
                        .shown(),
                0);
        return members;
    }

    private Part toothed(String name, Region region, double from, Line mark, String note) {
        return new Part(
                name,
                Family.GEAR,
                1,
                spec.gear().source(),
                List.of(Layer.of(region, from, from + spec.width()).withMarks(marks(mark, region))),
                sheets(note),
                List.of(),
                false);
    }

    /** What is made and what is bought; bought things have no outline to make them by. */
    List<Part> parts(Members members) {
        List<Part> parts = new ArrayList<>();
        for (Member member : members.all()) {
            Part part = member.part();
            boolean isBought = part.source().isBought();
            parts.add(
                    isBought
                            ? Part.bought(
                                    part.name(), part.quantity(), part.source().stock())
                            : one(part));
        }
        spec.body().axle().bearing().ifPresent(b -> parts.add(Part.bought("bearing", 1, b.words())));
        spec.servo().ifPresent(s -> parts.add(Part.bought("servo", 1, s.words())));
        parts.add(plates.screw().part(plates.screws().size()));
        parts.add(plates.screw().nuts("nut", plates.screws().size()));
        plates.servoScrew().ifPresent(bolt -> {
            int ears = spec.servo().orElseThrow().holesAcross() > 0 ? 4 : 2;
            parts.add(bolt.part(ears));
            parts.add(bolt.nuts("servo-nut", ears));
        });
        return parts;
    }

    /** Of rings that are alike one is drawn to cut, about its own middle's place. */
    private static Part one(Part part) {
        Layer layer = part.layers().get(0);
        if (layer.regions().size() == 1) {
            return part;
        }
        return part.withLayers(List.of(layer.withRegions(layer.regions().subList(0, 1))));
    }

    private Part pins() {
        List<Region> discs = layout.pins().stream()
                .map(at -> Region.disc(at, layout.pin() / 2))
                .toList();
        double middle = plates.thickness() + plates.between() / 2;
        double half = plates.pinLength() / 2;
        Part.Source goods = plates.dowel()
                .map(d -> bought(d.order(plates.pinLength())))
                .orElseGet(() -> spec.hardware().rod(PIN, layout.pin()).source(plates.pinLength()));
        return new Part(
                PIN,
                Family.PIN,
                2,
                goods,
                List.of(new Layer(discs, middle - half, middle + half)),
                "",
                List.of(),
                false);
    }

    private static Part.Source bought(String words) {
        return new Part.Source("bought", words);
    }

    private static Part part(String name, Family family, Part.Source source, Region region, double from, double to) {
        return new Part(name, family, 1, source, List.of(Layer.of(region, from, to)), "", List.of(), false);
    }

    private Part stack(String name, List<Region> rings, double from, double to) {
        int sheets = spec.spacer().sheet()
                ? (int) Math.rint((to - from) / spec.spacer().thickness())
                : 1;
        String note = sheets > 1 ? sheets + " sheets each, glued in line" : "";
        return new Part(
                name,
                Family.SPACER,
                rings.size(),
                spec.spacer().source(),
                List.of(new Layer(rings, from, to)),
                note,
                List.of(),
                false);
    }

    private String sheets(String note) {
        int sheets = (int) Math.rint(spec.width() / spec.gear().thickness());
        String glued = sheets > 1 && spec.gear().sheet() ? "sheets glued with the teeth in line" : "";
        return note.isEmpty() || glued.isEmpty() ? note + glued : note + "; " + glued;
    }

    private Region bar() {
        double module = layout.module();
        double first = -layout.stroke() / 2 - (layout.rackTeeth() - 1) * layout.pitch() / 2;
        Contour toothed =
                layout.teeth().bar(layout.rackTeeth(), layout.back()).placed(Placement.shift(first, layout.datum()));
        double low = layout.datum() - layout.back();
        double high = layout.datum() - layout.rootDepth();
        List<Region> all = new ArrayList<>(List.of(Region.of(toothed)));
        Box box = toothed.box();
        if (box.minX() - plates.left() > 1e-9) {
            all.add(Region.of(Contour.rectangle(new Box(plates.left(), low, box.minX(), high))));
        }
        if (plates.end() - box.maxX() > 1e-9) {
            all.add(Region.of(Contour.rectangle(new Box(box.maxX(), low, plates.end(), high))));
        }
        Region bar = all.size() == 1 ? all.get(0) : Overlay.union(all).get(0);
        List<Contour> holes = new ArrayList<>();
        layout.pins().forEach(at -> holes.add(Contour.circle(at, layout.pinHole() / 2)));
        if (spec.eye().isPresent()) {
            holes.add(Contour.circle(
                    new Point(plates.eye(), (low + high) / 2), spec.eye().getAsDouble() / 2));
        }
        return bar.withHoles(holes);
    }

    /** Place along the travel, at its start, of the rack's tooth that is marked: the nearest to the pinion's axis. */
    private double marked() {
        double first = -layout.stroke() / 2 - (layout.rackTeeth() - 1) * layout.pitch() / 2;
        double tooth = Math.rint(-first / layout.pitch());
        return first + Math.min(layout.rackTeeth() - 1, Math.max(0, tooth)) * layout.pitch();
    }

    /** Direction from the pinion's axis of the space in which the marked tooth lies. */
    private double space() {
        return -Math.PI / 2 + marked() / layout.pinion().referenceRadius();
    }

    private Region pinion() {
        double web = spec.gear().leastWeb();
        double whole = layout.pinion().rootRadius() - Math.max(web, RIM_BACK * layout.module());
        Region wheel = new Region(teeth.external(), spec.body().cuts(whole, web));
        return wheel.placed(Placement.turn(space() + layout.pinion().pitchAngle() / 2));
    }

    /** The mark where the spec wants it, on what is left of the material along it. */
    private List<Path> marks(Line mark, Region on) {
        return spec.marks()
                ? OnMaterial.longest(mark, on, MARK_GAP)
                        .filter(line -> line.length() >= MARK_GAP)
                        .map(Path::of)
                        .stream()
                        .toList()
                : List.of();
    }

    private Line pinionMark() {
        double root = layout.pinion().rootRadius();
        double length = Math.min(MARK_LENGTH, root / 4);
        Point out = Point.polar(1, space());
        return new Line(out.times(root - MARK_GAP - length), out.times(root - MARK_GAP));
    }

    private Line rackMark() {
        double top = layout.datum() - layout.rootDepth() - MARK_GAP;
        double length = Math.min(MARK_LENGTH, (layout.back() - layout.rootDepth()) / 3);
        return new Line(new Point(marked(), top), new Point(marked(), top - length));
    }
}
