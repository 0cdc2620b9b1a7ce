// SPDX-License-Identifier: Apache-2.0
package ringleaf.mechanism.aperture;

import java.util.ArrayList;
import java.util.List;
import ringleaf.leaf.BladePlan;
import ringleaf.leaf.LeafSlope;
import ringleaf.leaf.PinRange;
import ringleaf.leaf.Sweep;
import ringleaf.machine.Room;
import ringleaf.part.Dimension.Origin;
import ringleaf.part.Finding;
import ringleaf.part.Finding.Place;
import ringleaf.part.Words;

/**
 * The aperture's own checks, calculated at every state of the sweep. The judge of outlines stands beside them and does
 * not know these formulas.
 */
final class ApertureChecks {
    /** The opening may differ from the one asked for by this much in diameter, mm. */
    static final double OPENING_TOLERANCE = 0.02;
    /** Slot pressure angles, rad: common practice for pivoted followers, no source. */
    static final double PRESSURE_WARN = Math.toRadians(30);

    static final double PRESSURE_FAIL = Math.toRadians(45);

    private final ApertureDesign design;
    private final ApertureSpec spec;
    private final Sweep sweep;
    private final boolean advises;
    private final List<Finding> found = new ArrayList<>();

    /** For one design of many: without advice that has to be sought. */
    ApertureChecks(ApertureDesign design, Sweep sweep) {
        this(design, sweep, false);
    }

    /**
     * @param advises whether to seek what would do where a lever cannot be as given, which is dear
     */
    ApertureChecks(ApertureDesign design, Sweep sweep, boolean advises) {
        this.advises = advises;
        this.design = design;
        this.spec = design.spec();
        this.sweep = sweep;
    }

    List<Finding> all() {
        opening();
        cover();
        blades();
        slots();
        webs();
        shortfalls();
        StackChecks stack = new StackChecks(design, advises);
        found.addAll(stack.all());
        ServoTorque torque = ServoTorque.of(design, sweep);
        design.pinionPlan().ifPresent(plan -> found.addAll(new DriveChecks(design, plan, torque).all()));
        clearest();
        given();
        return found;
    }

    private void opening() {
        double blades = design.band().innerRadius();
        double plates = design.rim().opening();
        found.add(Finding.of("opens-fully")
                .about(blades <= plates ? "blade" : "base-plate")
                .at(state(0))
                .atLeast(2 * Math.min(blades, plates), 2 * spec.clearRadius(), "mm")
                .inWords("the view is clear when open"));
        double closed = 2 * design.band().inscribedRadius(design.closed());
        found.add(Finding.of("closes-to")
                .about("blade")
                .at(state(sweep.states() - 1))
                .about(closed, 2 * spec.leastRadius(), OPENING_TOLERANCE, "mm")
                .inWords("opening that is left when closed"));
    }

    private void cover() {
        int leaky = Sweep.greatestOf(sweep.leak);
        double leak = sweep.leak[leaky];
        found.add(Finding.of("light-tight")
                .about("blade")
                .at(state(leaky))
                .atMost(leak, 0, "mm2")
                .inWords(leak == 0 ? "no light gets past the blades at any state" : "light gets past the blades"));
        int thin = Sweep.leastOf(sweep.lap);
        found.add(Finding.of("lap")
                .about("blade")
                .at(state(thin))
                .atLeast(sweep.lap[thin], spec.lap(), "mm")
                .inWords("least overlap of the blades as drawn"));
        int worst = Sweep.leastOf(sweep.lapAfterPlay);
        found.add(Finding.of("lap-worst-case")
                .about("blade")
                .at(state(worst))
                .atLeast(sweep.lapAfterPlay[worst], 0, "mm")
                .inWords("overlap left when bores, slots, ring and process shift two neighbours apart the most"));
    }

    private void blades() {
        walls();
        double radius = design.band().inscribedRadius(design.closed());
        double slope = LeafSlope.slope(spec.blades(), spec.thickness(), radius);
        double limit = spec.blade().slopeLimit();
        double least = LeafSlope.leastRadiusForSlope(spec.blades(), spec.thickness(), limit);
        String advice = slope > limit
                ? "; the least opening that blades of this thickness close to is " + Words.mm(2 * least)
                : "";
        Place closed = state(sweep.states() - 1);
        found.add(Finding.of("blade-slope")
                .about("blade")
                .at(closed.withDetail("edge of the opening"))
                .atMost(Math.toDegrees(slope), Math.toDegrees(limit), "deg")
                .inWords("slope at which the blades climb over one another" + advice));
        found.add(Finding.of("bending-strain")
                .about("blade")
                .at(closed)
                .atMost(
                        LeafSlope.strain(spec.blades(), spec.thickness(), radius),
                        spec.blade().elasticStrain(),
                        "1")
                .inWords("bending strain of a blade, estimated, against its elastic limit"));
    }

    /** Blades reach farthest at a state of the travel, or where a stop holds the ring past one of its ends. */
    private void walls() {
        int far = Sweep.greatestOf(sweep.reach);
        double reach = sweep.reach[far];
        Place where = state(far);
        double[] stops =
                PinRange.blade(design.law(), design.closed(), design.rim().overTravel());
        for (double b : stops) {
            double there = design.band().reach(b, design.pin(), design.ear());
            if (there > reach) {
                reach = there;
                where = Place.state(-1, "ring against its stop, " + (b < design.closed() / 2 ? "open" : "closed"));
            }
        }
        found.add(Finding.of("wall-clearance")
                .about("blade", "spacer-ring")
                .at(where)
                .room(design.rim().cavity() - reach, spec.clearances().blade(), "mm")
                .inWords("room between the blades' reach and the cavity's wall"));
    }

    private void slots() {
        double least = Double.POSITIVE_INFINITY;
        int at = 0;
        for (int i = 0; i < sweep.states(); i++) {
            double room = SlotRoom.at(design, sweep.bladeAngle[i]);
            if (room < least) {
                least = room;
                at = i;
            }
        }
        found.add(Finding.of("pin-in-slot")
                .about("drive-pin", "drive-ring")
                .at(state(at).withDetail("slot end"))
                .room(least, spec.clearances().slotEnd(), "mm")
                .inWords("room between the drive pin and the nearer end of its slot; the stops come first"));
        int steep = Sweep.greatestOf(sweep.pressure);
        found.add(Finding.of("slot-pressure-angle")
                .about("drive-pin", "drive-ring")
                .at(state(steep))
                .atMost(
                        Math.toDegrees(sweep.pressure[steep]),
                        Math.toDegrees(PRESSURE_FAIL),
                        Math.toDegrees(PRESSURE_WARN),
                        "deg")
                .inWords("pressure angle of the slot on its pin"));
    }

    /** Limits of the solver that no other check here measures. */
    private void shortfalls() {
        for (BladePlan.Shortfall miss : design.plan().broken()) {
            String advice = "";
            Finding.Draft draft;
            switch (miss.limit()) {
                case TURNS_BACK -> {
                    draft = Finding.of("slot-pressure-angle").about("drive-ring");
                    advice = deadPoint();
                }
                case EAR -> {
                    draft = Finding.of("opens-fully").about("blade");
                    advice = advises ? StackChecks.leverThatWould(design) : "";
                }
                case BORE_EDGE, BORE_WEB -> draft = Finding.of("minimum-web").about("base-plate");
                case LEVER_LENGTH -> draft = Finding.of("minimum-web").about("blade");
                default -> {
                    continue;
                }
            }
            draft.at(Place.state(-1, "blade turned by " + Words.degrees(miss.bladeAngle(), 2)));
            if (miss.limit().unit().equals("deg")) {
                // Where a curve turns back no angle would do: the message has the figures.
                draft.plain(false);
            } else {
                draft.atLeast(miss.measured(), miss.asked(), "mm");
            }
            found.add(draft.inWords(miss.limit().subject() + advice));
        }
    }

    private String deadPoint() {
        double dip = design.band().dipAngle(design.pin());
        return ": it lies at a blade angle of " + Words.degrees(dip, 1) + " and the travel ends at "
                + Words.degrees(design.closed(), 1) + ". The motion file evens the opening out in software"
                + " instead; a lever off centre or a shorter travel may do"
                + (design.isLinear() ? "" : ". Drawn with straight slots");
    }

    private void webs() {
        RingWebs webs = RingWebs.of(design);
        found.add(Finding.of("minimum-web")
                .about("drive-ring")
                .at(Place.NONE.withDetail(webs.place()))
                .room(webs.least(), spec.ring().leastWeb(), "mm")
                .inWords("least web of the drive ring"));
        found.add(Finding.of("minimum-web")
                .about("blade")
                .at(Place.NONE.withDetail("round a pin hole"))
                .room(design.holeEdge(), spec.holeEdge(), "mm")
                .inWords("blade left round a pin hole"));
    }

    private void clearest() {
        Clearest least = Clearest.at(design, sweep, 0);
        int at = 0;
        for (int i = 1; i < sweep.states(); i++) {
            Clearest one = Clearest.at(design, sweep, i);
            if (one.distance() < least.distance()) {
                least = one;
                at = i;
            }
        }
        found.add(Finding.of("clearance")
                .about(least.parts())
                .at(state(at).withDetail(least.pair()))
                .room(least.distance(), ApertureRequirements.APART, "mm")
                .inWords("least clearance of what is meant to stay apart"));
    }

    /** Clearances that the spec gives, against what the processes of the parts that meet keep their sizes within. */
    private void given() {
        for (Room room : spec.clearances().rooms()) {
            boolean idle = design.pinionPlan().isEmpty() && room.name().startsWith("pinion");
            if (room.origin() != Origin.GIVEN || idle) {
                continue;
            }
            Finding.Draft draft = Finding.of("process-room").about("clearances." + room.name());
            boolean moves = !room.name().equals(ApertureFields.OPENING_ROOM.name());
            String message = "room as given; " + room.how();
            found.add(
                    moves && room.mm() <= Finding.ROUNDING
                            ? draft.room(room.mm(), room.asked(), "mm").inWords(message + "; what moves needs some")
                            : draft.orWarn()
                                    .atLeast(room.mm(), room.asked(), "mm")
                                    .inWords(message));
        }
    }

    private Place state(int state) {
        if (state == 0) {
            return Place.state(0, "open");
        }
        return Place.state(
                state,
                state == sweep.states() - 1
                        ? "closed"
                        : "state " + state + ", opening " + Words.mm(2 * sweep.openingRadius[state]));
    }
}
