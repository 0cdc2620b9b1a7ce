// SPDX-License-Identifier: Apache-2.0
package ringleaf.mechanism.plate;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import ringleaf.geom.Box;
import ringleaf.geom.Placement;
import ringleaf.geom.Point;
import ringleaf.machine.Room;
import ringleaf.mechanism.Kind;
import ringleaf.mechanism.Material;
import ringleaf.mechanism.Request;
import ringleaf.mechanism.Standoff;
import ringleaf.spec.Making;
import ringleaf.spec.field.Field;
import ringleaf.spec.field.Values;
import ringleaf.spec.shared.Board;
import ringleaf.spec.shared.Contact;
import ringleaf.spec.shared.FitName;
import ringleaf.spec.shared.MakingProcess;
import ringleaf.spec.shared.Screw;
import ringleaf.spec.shared.Servo;
import ringleaf.spec.text.Problems;

/** From the values of a spec to a {@link PlateSpec}; what cannot be is reported. */
final class PlateReader {
    private static final double PRINTED = 3;
    private static final double BESIDE = 0.5;
    /** Kept between the plate and what stands out of a board towards it, mm; common practice, no source. */
    private static final double UNDER_BOARD = 0.5;
    /** Things a seat may be. */
    private static final List<Field<?>> FORMS = List.of(
            PlateFields.SERVO,
            PlateFields.BEARING,
            PlateFields.AXLE,
            PlateFields.SHAFT,
            PlateFields.BOARD,
            PlateFields.CONTACT,
            PlateFields.STANDOFF,
            PlateFields.SPACER,
            PlateFields.SCREW,
            PlateFields.WIRES,
            PlateFields.WINDOW,
            PlateFields.SLOT);

    private final Request request;
    private final Values values;
    private final Problems problems;
    private final Material plate;
    private final Material spacer;
    private final MakingProcess process;
    private final int plates;
    private final Map<String, Integer> named = new HashMap<>();
    private final List<Seat> seats = new ArrayList<>();
    private final List<Standoff> standoffs = new ArrayList<>();
    /** Spacers wait until what stands between the plates is known. */
    private final List<Post> posts = new ArrayList<>();

    private record Post(Screw screw, Placement place) {}

    PlateReader(Request request) {
        this.request = request;
        this.values = request.values();
        this.problems = request.problems();
        Optional<Double> asked = values.given(PlateFields.PLATE_THICKNESS);
        Making making = request.fabrication().of("plate", asked.orElse(PRINTED));
        OptionalDouble sheet = making.given() ? making.stock().thickness() : OptionalDouble.empty();
        double thickness = asked.orElse(sheet.orElse(PRINTED));
        making.agrees(thickness, values.where(PlateFields.PLATE_THICKNESS), problems);
        this.plate = Material.of(making.process(), making.stock(), thickness);
        this.process = making.process();
        Making spaced = request.fabrication().of("spacer", 1);
        this.spacer = Material.of(
                spaced.process(), spaced.stock(), spaced.stock().thickness().orElse(1));
        this.plates = values.require(PlateFields.PLATES);
    }

    Kind.Planned read() {
        int earlier = problems.count();
        for (Values seat : values.get(PlateFields.SEATS).orElse(List.of())) {
            seat(seat);
        }
        spacersAgree();
        if (problems.count() > earlier || seats.isEmpty() && posts.isEmpty()) {
            return states -> null;
        }
        double within = plate.repeatability();
        Values own = values.given(PlateFields.CLEARANCES)
                .orElseGet(() -> PlateFields.CLEARANCES_SET.none(values.where(PlateFields.CLEARANCES)));
        Room beside =
                Room.of("beside", own.given(PlateFields.BESIDE), BESIDE, Math.max(1, seats.size()), within, within);
        List<Standoff> spacers = new ArrayList<>();
        double gap = plates == 2 ? gap(beside.mm(), spacers) : 0;
        for (int i = 0; i < posts.size(); i++) {
            SeatForm form = new SeatForm.OfPost(
                    "spacer", posts.get(i).screw, gap, spacers.get(i).outerRadius());
            seats.add(new Seat(name("spacer"), form, posts.get(i).place, true, true, false));
        }
        return new PlannedPlate(new PlateSpec(
                request.name(),
                List.copyOf(seats),
                values.require(PlateFields.OUTLINE),
                values.require(PlateFields.MARGIN),
                plates,
                gap,
                plate,
                spacers,
                standoffs,
                beside,
                values.bound(PlateFields.WIDTH),
                values.bound(PlateFields.OVERALL_HEIGHT),
                values.givenPaths()));
    }

    private void spacersAgree() {
        if (plates == 2 && posts.isEmpty()) {
            problems.at(
                    values.where(PlateFields.PLATES),
                    "two plates need spacers to hold them apart",
                    "e.g. a seat {spacer: M3, polar: {radius: 30}, repeat: 4}");
        }
        if (plates == 1 && !posts.isEmpty()) {
            problems.at(
                    values.where(PlateFields.PLATES),
                    "spacers stand between two plates, and there is one",
                    "plates: 2, or a standoff in place of a spacer");
        }
    }

    /** Between both plates: as given, else what stands there, with spacers that are sold. */
    private double gap(double beside, List<Standoff> spacers) {
        double need = 0;
        for (Seat seat : seats) {
            need = Math.max(need, into(seat) + beside);
            for (Seat other : seats) {
                if (seat.onFront() && other.onRear() && seat != other && meet(seat, other)) {
                    need = Math.max(need, into(seat) + into(other) + beside);
                }
            }
        }
        double asked = values.given(PlateFields.GAP).orElse(Math.max(need, 1));
        boolean given = values.isGiven(PlateFields.GAP);
        double gap = asked;
        for (Post post : posts) {
            if (!given) {
                gap = Math.max(
                        gap, Standoff.from("spacer", asked, post.screw, spacer).length());
            }
        }
        for (Post post : posts) {
            spacers.add(new Standoff("spacer", gap, post.screw, spacer));
        }
        return gap;
    }

    /** How far a seat's thing reaches between the plates. */
    private double into(Seat seat) {
        double t = plate.thickness();
        if (seat.onFront() && seat.onRear()) {
            return 0;
        }
        boolean between = seat.onFront() != seat.ahead();
        return between ? seat.reach(t) : seat.through(t);
    }

    private boolean meet(Seat one, Seat other) {
        Box a = box(one);
        Box b = box(other);
        return a != null && b != null && a.meets(b);
    }

    private Box box(Seat seat) {
        Box box = null;
        for (var layer : seat.thing(0, plate.thickness())) {
            Box own = layer.regions().get(0).box();
            box = box == null ? own : box.union(own);
        }
        return box;
    }

    private void seat(Values seat) {
        List<Field<?>> given =
                FORMS.stream().filter(field -> seat.isGiven(field)).toList();
        if (given.size() != 1) {
            boolean refused = FORMS.stream().anyMatch(seat::isRefused);
            if (!refused) {
                problems.at(
                        seat.where(),
                        given.isEmpty() ? "does not say what sits there" : "is two things at once",
                        "one of "
                                + String.join(
                                        ", ", FORMS.stream().map(Field::name).toList()));
            }
            return;
        }
        List<Placement> places = places(seat);
        boolean ahead = seat.require(PlateFields.SIDE).equals("front");
        if (seat.isGiven(PlateFields.SPACER)) {
            request.screw(seat.require(PlateFields.SPACER), seat.where(PlateFields.SPACER))
                    .ifPresent(screw -> places.forEach(at -> posts.add(new Post(screw, at))));
            return;
        }
        Optional<SeatForm> form = form(seat);
        if (form.isEmpty()) {
            return;
        }
        boolean both = seat.isGiven(PlateFields.AXLE) || seat.isGiven(PlateFields.SHAFT);
        String on = seat.given(PlateFields.PLATE).orElse(both && plates == 2 ? "both" : "front");
        if (plates == 1 && !on.equals("front")) {
            problems.at(seat.where(PlateFields.PLATE), "there is one plate", "plates: 2, or leave it out");
            return;
        }
        for (Placement at : places) {
            seats.add(
                    new Seat(name(form.get().label()), form.get(), at, !on.equals("rear"), !on.equals("front"), ahead));
        }
    }

    /** Where it stands, repeated and mirrored. */
    private List<Placement> places(Values seat) {
        if (seat.isGiven(PlateFields.AT) && seat.isGiven(PlateFields.POLAR)) {
            problems.at(seat.where(PlateFields.POLAR), "its place is said twice", "at, or polar");
        }
        int repeat = seat.require(PlateFields.REPEAT);
        Optional<Values> polar = seat.given(PlateFields.POLAR).filter(Values::isComplete);
        Point first = point(seat.given(PlateFields.AT));
        Point step = point(seat.given(PlateFields.STEP));
        if (repeat > 1 && polar.isEmpty() && step.norm() == 0) {
            problems.at(
                    seat.where(PlateFields.REPEAT),
                    "all " + repeat + " would stand in one place",
                    "step: {x: 10} for a row, or polar: {radius: 30} for a circle");
        }
        double turn = seat.require(PlateFields.TURN);
        List<Placement> all = new ArrayList<>();
        for (int i = 0; i < repeat; i++) {
            double round = polar.isPresent() ? 2 * Math.PI * i / repeat : 0;
            Point at = polar.isPresent()
                    ? Point.polar(
                            polar.get().require(PlateFields.RADIUS), polar.get().require(PlateFields.ANGLE) + round)
                    : first.plus(step.times(i));
            all.add(placed(at, turn + round));
            if (seat.require(PlateFields.MIRROR)) {
                all.add(placed(new Point(-at.x(), at.y()), Math.PI - turn - round));
            }
        }
        return all;
    }

    private static Placement placed(Point at, double turn) {
        return Placement.turn(turn).then(Placement.shift(at.x(), at.y()));
    }

    private static Point point(Optional<Values> of) {
        return of.map(v -> new Point(v.require(PlateFields.X), v.require(PlateFields.Y)))
                .orElse(Point.ORIGIN);
    }

    private String name(String label) {
        int count = named.merge(label, 1, Integer::sum);
        return count == 1 ? label : label + "-" + count;
    }

    private Optional<SeatForm> form(Values seat) {
        if (seat.isGiven(PlateFields.SERVO)) {
            Optional<Servo> servo = seat.get(PlateFields.SERVO).flatMap(request.catalogues()::servo);
            return servo.map(s -> new SeatForm.OfServo(
                    s, request.hardware().screwThrough(s.holeDiameter(), Double.POSITIVE_INFINITY)));
        }
        if (seat.isGiven(PlateFields.BEARING)) {
            FitName fit = fit(seat, FitName.PRESS);
            return request.catalogues()
                    .bearings()
                    .find(seat.require(PlateFields.BEARING), seat.where(PlateFields.BEARING))
                    .map(b -> new SeatForm.OfBearing(b, fit, process.allowance(fit)));
        }
        if (seat.isGiven(PlateFields.BOARD)) {
            return seat.get(PlateFields.BOARD)
                    .flatMap(request.catalogues()::board)
                    .flatMap(b -> board(seat, b));
        }
        if (seat.isGiven(PlateFields.CONTACT)) {
            Optional<Contact> contact = seat.get(PlateFields.CONTACT).flatMap(request.catalogues()::contact);
            return contact.map(c ->
                    new SeatForm.OfContact(c, request.hardware().screwThrough(c.hole(), Double.POSITIVE_INFINITY)));
        }
        if (seat.isGiven(PlateFields.STANDOFF)) {
            return request.screw(seat.require(PlateFields.STANDOFF), seat.where(PlateFields.STANDOFF))
                    .map(screw -> {
                        Standoff own = standoff(seat, 5, screw);
                        return new SeatForm.OfPost("standoff", screw, own.length(), own.outerRadius());
                    });
        }
        if (seat.isGiven(PlateFields.SCREW)) {
            return request.screw(seat.require(PlateFields.SCREW), seat.where(PlateFields.SCREW))
                    .map(screw -> new SeatForm.OfHole("screw", screw.hole(), Optional.empty()));
        }
        return Optional.of(opening(seat));
    }

    private SeatForm opening(Values seat) {
        if (seat.isGiven(PlateFields.WINDOW)) {
            Values window = seat.require(PlateFields.WINDOW);
            return new SeatForm.OfWindow(
                    window.require(PlateFields.WINDOW_WIDTH),
                    window.require(PlateFields.WINDOW_HEIGHT),
                    window.require(PlateFields.WINDOW_CORNER));
        }
        if (seat.isGiven(PlateFields.SLOT)) {
            Values slot = seat.require(PlateFields.SLOT);
            return new SeatForm.OfSlot(slot.require(PlateFields.SLOT_LENGTH), slot.require(PlateFields.WINDOW_WIDTH));
        }
        if (seat.isGiven(PlateFields.WIRES)) {
            return new SeatForm.OfHole("wires", seat.require(PlateFields.WIRES), Optional.empty());
        }
        boolean axle = seat.isGiven(PlateFields.AXLE);
        double rod = seat.require(axle ? PlateFields.AXLE : PlateFields.SHAFT);
        FitName fit = fit(seat, axle ? FitName.RUNNING : FitName.SLIDING);
        double bore = rod + (fit == FitName.RUNNING ? plate.runningClearance() : process.allowance(fit));
        return new SeatForm.OfHole(axle ? "axle" : "shaft", bore, Optional.of(new SeatForm.Fitted(fit, rod, bore)));
    }

    private Optional<SeatForm> board(Values seat, Board board) {
        Optional<Screw> screw = request.hardware().screwThrough(board.hole(), Double.POSITIVE_INFINITY);
        if (screw.isEmpty()) {
            problems.at(
                    seat.where(PlateFields.BOARD),
                    "no usual screw goes through holes of its size",
                    "name one in a screws.yaml of your own");
            return Optional.empty();
        }
        Screw sized = request.sized(screw.get());
        Standoff under = standoff(seat, board.below() + UNDER_BOARD, sized);
        return Optional.of(new SeatForm.OfBoard(board, sized, under.length()));
    }

    /** As long as asked, else the shortest that is sold. */
    private Standoff standoff(Values seat, double least, Screw screw) {
        Standoff own = seat.given(PlateFields.HEIGHT)
                .map(h -> new Standoff("standoff", h, screw, spacer))
                .orElseGet(() -> Standoff.from("standoff", least, screw, spacer));
        standoffs.add(own);
        return own;
    }

    private static FitName fit(Values seat, FitName otherwise) {
        return seat.given(PlateFields.BEARING_FIT).map(FitName::of).orElse(otherwise);
    }
}
