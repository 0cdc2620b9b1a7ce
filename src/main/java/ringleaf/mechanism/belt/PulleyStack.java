// SPDX-License-Identifier: Apache-2.0
package ringleaf.mechanism.belt;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import ringleaf.geom.Contour;
import ringleaf.geom.Line;
import ringleaf.geom.Path;
import ringleaf.geom.Placement;
import ringleaf.geom.Point;
import ringleaf.geom.Region;
import ringleaf.machine.Fit;
import ringleaf.machine.Joint;
import ringleaf.machine.Joint.Held;
import ringleaf.machine.Members;
import ringleaf.machine.Role;
import ringleaf.mechanism.Material;
import ringleaf.mechanism.body.HubScrews;
import ringleaf.part.Family;
import ringleaf.part.Layer;
import ringleaf.part.Member;
import ringleaf.part.Part;
import ringleaf.part.Placing;
import ringleaf.part.Requirement;
import ringleaf.part.Way;
import ringleaf.part.Words;
import ringleaf.spec.shared.FitName;

/**
 * The parts of a pulley and how they lie on one another: flange, rim, flange, hub, from the foot up.
 *
 * <p>A printed pulley is one body with a seat at either end that centres its flanges; from sheet it is a stack of equal
 * plates between flanges that have the same holes.
 */
final class PulleyStack {
    private final PulleySpec spec;
    private final double foot;
    private final int plates;
    private final double face;
    private final double seat;

    /** {@code foot} is the height of the lowest face, mm. */
    PulleyStack(PulleySpec spec, double foot) {
        this.spec = spec;
        this.foot = foot;
        double thickness = spec.material().thickness();
        boolean sheet = spec.material().sheet();
        this.plates = sheet ? Math.max(1, (int) Math.ceil(spec.choice().face() / thickness - 1e-9)) : 0;
        this.face = sheet ? plates * thickness : spec.choice().face();
        this.seat = seat();
    }

    /** Radius of the seat of the flanges, 0 where they sit by their bore and screws. */
    private double seat() {
        double web = spec.material().leastWeb();
        double radius = spec.rim().rootRadius() - web / 2;
        boolean room = radius >= spec.body().hubReach() + web;
        return spec.flanges() > 0 && !spec.material().sheet() && spec.joining().isEmpty() && room ? radius : 0;
    }

    /** How many plates make up the rim; 0 when it is one body. */
    int plates() {
        return plates;
    }

    double face() {
        return face;
    }

    double seatRadius() {
        return seat;
    }

    double faceBottom() {
        return foot + (spec.flanges() > 0 ? spec.flangeThickness() : 0);
    }

    double faceTop() {
        return faceBottom() + face;
    }

    double top() {
        return joinedTop() + spec.hubHeight();
    }

    /** Height that joining screws go through: the rim and its flanges, mm. */
    double joined() {
        return joinedTop() - foot;
    }

    /** Upper face of what they go through. */
    double joinedTop() {
        return faceTop() + (spec.flanges() > 1 ? spec.flangeThickness() : 0);
    }

    double hubRadius() {
        double need = spec.body().hubReach() + 2 * spec.material().leastWeb();
        return Math.min(mostHub(), spec.hubDiameter().orElse(2 * need) / 2);
    }

    /** The greatest radius of a hub: what it stands on, and clear of the heads of joining screws. */
    double mostHub() {
        double most = spec.flanges() > 1 && seat > 0 ? seat : spec.rim().rootRadius();
        if (spec.joining().isEmpty()) {
            return most;
        }
        HubScrews joining = spec.joining().get();
        double heads = joining.circle() / 2 - joining.screw().headDiameter() / 2;
        return Math.min(most, Math.min(heads, joining.inner() - spec.material().leastWeb()));
    }

    /**
     * The joints of its bores, screw holes and seats.
     *
     * @param wheel that it is, as an index among a path's wheels
     * @param axle that it sits on
     * @param home of its axis and its first groove
     */
    List<Joint> joints(int wheel, Role axle, Placement home) {
        DrivePart rim = DrivePart.rim(spec, wheel);
        DrivePart flange = DrivePart.flange(spec, wheel);
        List<Joint> joints = fixings(rim, axle, home);
        if (spec.flanges() > 0 && seat == 0) {
            joints.addAll(fixings(flange, axle, home));
        } else if (spec.flanges() > 0) {
            Fit fit =
                    Fit.still(FitName.GLUE, 2 * seat, 2 * seat + spec.material().slotClearance() / 2, "");
            List<Point> at = Collections.nCopies(spec.flanges(), home.apply(Point.ORIGIN));
            joints.add(new Joint.Fixed(
                    new Held<>(rim, fit.pin("flange-seat", at)),
                    new Held<>(flange, fit.bore("flange-seat", at.subList(0, 1))),
                    fit));
        }
        return joints;
    }

    private List<Joint> fixings(Role part, Role axle, Placement home) {
        List<Joint> joints = new ArrayList<>(spec.body().joints(part, axle, home));
        spec.joining().ifPresent(s -> joints.add(s.joint("joining-screw-hole", part, home)));
        return joints;
    }

    /** Parts as they are made, in their place: the axis at {@code centre}, the first groove in {@code phase}. */
    List<Part> parts(Point centre, double phase) {
        Placement place = new Placement(phase, centre);
        List<Part> parts = new ArrayList<>();
        if (spec.flanges() > 0) {
            parts.add(flange(place, "flange", foot, spec.flanges()));
        }
        parts.add(rim(place, faceBottom(), false));
        return parts;
    }

    /** As the others, but plates in one piece and flanges one by one under names of their own, to be put together. */
    void addTo(Members members, int wheel, int body, Point centre, double phase) {
        Placement place = new Placement(phase, centre);
        if (spec.flanges() > 0) {
            members.add(DrivePart.flange(spec, wheel), flange(place, "flange", foot, 1), body);
        }
        members.add(DrivePart.rim(spec, wheel), rim(place, faceBottom(), true), body);
        if (spec.flanges() > 1) {
            members.add(DrivePart.flangeAbove(spec, wheel), flange(place, "flange-above", faceTop(), 1), body);
        }
    }

    /**
     * How rim and flanges of a pulley come together: the lower flange from below, the upper one from above.
     *
     * @param members of an assembly that the pulley's parts are among
     * @param onto to what the rim comes before; nothing where the pulley is put together by itself
     */
    static List<Placing> joining(Members members, PulleySpec spec, int wheel, int onto) {
        List<Placing> placings = new ArrayList<>();
        int rim = members.one(DrivePart.rim(spec, wheel));
        placings.add(Placing.of(rim, onto, Way.DOWN));
        members.of(DrivePart.flange(spec, wheel)).forEach(lower -> placings.add(Placing.of(lower, rim, Way.UP)));
        members.of(DrivePart.flangeAbove(spec, wheel)).forEach(upper -> placings.add(Placing.of(upper, rim, Way.DOWN)));
        return placings;
    }

    /** What must stand between the cuts of every plate and of every part of a pulley, by the process that makes it. */
    static List<Requirement> webs(List<Member> members, Material plate, Material pulley) {
        List<Requirement> all = new ArrayList<>();
        for (Member member : members) {
            Part part = member.part();
            if (part.family() == Family.PULLEY || part.family() == Family.PLATE) {
                double web = part.family() == Family.PLATE ? plate.leastWeb() : pulley.leastWeb();
                all.add(new Requirement.LeastWeb("minimum-web", part.name(), web));
            }
        }
        return all;
    }

    private Part rim(Placement place, double bottom, boolean stacked) {
        List<Contour> cuts = cuts();
        Region toothed = new Region(spec.rim().groove().outline(0), cuts).placed(place);
        Path mark = Path.of(new Line(
                        new Point(
                                spec.rim().rootRadius()
                                        - Math.min(1.5, spec.rim().rootRadius() / 5),
                                0),
                        new Point(spec.rim().rootRadius() - 0.3, 0)))
                .placed(place);
        List<Layer> layers = new ArrayList<>();
        if (plates > 0) {
            double height = stacked ? face : spec.material().thickness();
            layers.add(Layer.of(toothed, bottom, bottom + height));
            String note = plates > 1 ? plates + " sheets in line, " + joinedBy() : "";
            return new Part(
                    spec.partName("pulley"),
                    Family.PULLEY,
                    stacked ? 1 : plates,
                    spec.material().source(),
                    layers,
                    List.of(mark),
                    note);
        }
        List<Contour> middle = new ArrayList<>(spec.body().bore().cuts());
        spec.body().screws().ifPresent(s -> middle.addAll(s.cuts()));
        if (seat > 0) {
            Region disc = new Region(Contour.circle(Point.ORIGIN, seat), cuts).placed(place);
            layers.add(Layer.of(disc, foot, bottom));
            layers.add(Layer.of(toothed, bottom, faceTop()));
            if (spec.flanges() > 1) {
                layers.add(Layer.of(disc, faceTop(), faceTop() + spec.flangeThickness()));
            }
        } else {
            layers.add(Layer.of(toothed, bottom, faceTop()));
        }
        if (spec.hubHeight() > 0) {
            Region hub = new Region(Contour.circle(Point.ORIGIN, hubRadius()), middle).placed(place);
            double from = seat > 0 || spec.flanges() < 2 ? top() - spec.hubHeight() : faceTop();
            layers.add(Layer.of(hub, from, top()));
        }
        return new Part(
                spec.partName("pulley"),
                Family.PULLEY,
                1,
                spec.material().source(),
                layers,
                List.of(mark),
                seat > 0 ? "the flanges are pressed on its seats and glued" : "");
    }

    private String joinedBy() {
        return spec.joining().isPresent()
                ? "joined by " + spec.joining().get().count() + " screws "
                        + spec.joining().get().screw().name()
                : "glued on a rod through the bore";
    }

    /** Bore, screws, joining holes and what is taken out between them and the rim. */
    private List<Contour> cuts() {
        List<Contour> cuts = new ArrayList<>(fixings());
        cuts.addAll(spec.body()
                .lightening()
                .cuts(lighterFrom(), lighterTo(), spec.material().leastWeb()));
        return cuts;
    }

    /** Radius from which something may be taken out, outside bore, screws and hub. */
    double lighterFrom() {
        double web = spec.material().leastWeb();
        double hub = spec.joining().isPresent()
                ? spec.joining().get().reach()
                : spec.body().hubReach();
        return Math.max(Math.max(hub, hubUse()) + web, 2 * web);
    }

    /** Radius to which something may be taken out, inside the grooves and the flanges' seats. */
    double lighterTo() {
        return (seat > 0 ? seat : spec.rim().rootRadius()) - spec.material().leastWeb();
    }

    private double hubUse() {
        return spec.hubHeight() > 0 ? hubRadius() - spec.material().leastWeb() : 0;
    }

    private List<Contour> fixings() {
        List<Contour> cuts = new ArrayList<>(spec.body().bore().cuts());
        spec.body().screws().ifPresent(s -> cuts.addAll(s.cuts()));
        spec.joining().ifPresent(s -> cuts.addAll(s.cuts()));
        return cuts;
    }

    private Part flange(Placement place, String name, double from, int quantity) {
        boolean overHub = spec.hubHeight() > 0 && seat == 0 && from > foot;
        List<Contour> holes = new ArrayList<>();
        if (seat > 0) {
            holes.add(Contour.circle(Point.ORIGIN, seat + spec.material().slotClearance() / 4));
        } else if (overHub) {
            holes.add(Contour.circle(Point.ORIGIN, hubRadius() + spec.material().slotClearance() / 4));
            spec.joining().ifPresent(s -> holes.addAll(s.cuts()));
        } else {
            holes.addAll(fixings());
        }
        Region region = new Region(Contour.circle(Point.ORIGIN, spec.flangeDiameter() / 2), holes).placed(place);
        String note = seat > 0
                ? "sits on a seat of " + Words.mm(2 * seat)
                : spec.joining().isPresent() ? "held by the joining screws" : "glued on, lined up by the bore";
        return new Part(
                spec.partName(name),
                Family.PULLEY,
                quantity,
                spec.material().source(),
                List.of(Layer.of(region, from, from + spec.flangeThickness())),
                List.of(),
                note);
    }
}
