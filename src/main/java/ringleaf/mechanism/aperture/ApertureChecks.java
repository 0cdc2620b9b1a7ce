package ringleaf.mechanism.aperture;

import java.util.ArrayList;
import java.util.List;
import ringleaf.leaf.BladePlan;
import ringleaf.leaf.LeafSlope;
import ringleaf.leaf.Sweep;
import ringleaf.part.Finding;
import ringleaf.part.Finding.Status;
import ringleaf.part.Words;

/**
 * The aperture's own checks, by closed forms and the folded blade, at every state of the sweep. The judge of outlines
 * stands beside them and does not know these formulas.
 */
final class ApertureChecks {
    /** The opening may differ from the one asked for by this much in diameter, mm. */
    static final double OPENING_TOLERANCE = 0.02;
    /** Slot pressure angles, rad: common practice for pivoted followers, no source. */
    static final double PRESSURE_WARN = Math.toRadians(30);

    static final double PRESSURE_FAIL = Math.toRadians(45);
    /** Rounding of sums of solved sizes, mm. */
    private static final double HAIR = 1e-6;

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
        blades(design.plan().broken());
        StackChecks stack = new StackChecks(design, advises);
        found.addAll(stack.all());
        ServoTorque torque = ServoTorque.of(design, sweep);
        design.pinionPlan().ifPresent(plan -> found.addAll(new DriveChecks(design, plan, torque).all()));
        clearest();
        return found;
    }

    private void opening() {
        double open = 2 * Math.min(design.band().innerRadius(), design.rim().opening());
        found.add(Finding.atLeast(
                "opens-fully", open + HAIR, 2 * spec.clearRadius(), "mm", "open", "the view is clear when open"));
        double closed = 2 * design.band().inscribedRadius(design.closed());
        double off = Math.abs(closed - 2 * spec.leastRadius());
        found.add(new Finding(
                "closes-to",
                off <= OPENING_TOLERANCE ? Status.PASS : Status.FAIL,
                closed,
                2 * spec.leastRadius(),
                "mm",
                "closed",
                "opening that is left when closed, by the closed form"));
    }

    private void cover() {
        int leaky = Sweep.greatestOf(sweep.leak);
        double leak = sweep.leak[leaky];
        found.add(Finding.atMost(
                "light-tight",
                leak,
                0,
                "mm2",
                where(leaky),
                leak == 0 ? "no light gets past the blades at any state" : "light gets past the blades"));
        int thin = Sweep.leastOf(sweep.lap);
        found.add(Finding.atLeast(
                "lap", sweep.lap[thin] + HAIR, spec.lap(), "mm", where(thin), "least overlap of the blades"));
        int worst = Sweep.leastOf(sweep.lapAfterPlay);
        found.add(Finding.atLeast(
                "lap-worst-case",
                sweep.lapAfterPlay[worst] + HAIR,
                0,
                "mm",
                where(worst),
                "overlap left when bores, slots, ring and process shift two neighbours apart the most"));
    }

    private void blades() {
        int far = Sweep.greatestOf(sweep.reach);
        found.add(Finding.atLeast(
                "wall-clearance",
                design.rim().cavity() - sweep.reach[far] + HAIR,
                spec.clearances().blade(),
                "mm",
                where(far),
                "room between the blades' reach and the cavity's wall"));
        double radius = design.band().inscribedRadius(design.closed());
        double slope = LeafSlope.slope(spec.blades(), spec.thickness(), radius);
        double limit = spec.blade().slopeLimit();
        double least = LeafSlope.leastRadiusForSlope(spec.blades(), spec.thickness(), limit);
        String advice = slope > limit
                ? "; the least opening that blades of this thickness close to is " + Words.mm(2 * least)
                : "";
        found.add(Finding.atMost(
                "blade-slope",
                Math.toDegrees(slope),
                Math.toDegrees(limit),
                "deg",
                "closed, edge of the opening",
                "slope at which the blades climb over one another" + advice));
        found.add(Finding.atMost(
                "bending-strain",
                LeafSlope.strain(spec.blades(), spec.thickness(), radius),
                spec.blade().elasticStrain(),
                "1",
                "closed",
                "bending strain of a blade, estimated, against its elastic limit"));
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
        found.add(Finding.atLeast(
                "pin-in-slot",
                least + HAIR,
                spec.clearances().slotEnd(),
                "mm",
                where(at),
                "room between the drive pin and the nearer end of its slot; the stops come first"));
        int steep = Sweep.greatestOf(sweep.pressure);
        double pressure = sweep.pressure[steep];
        Status status = pressure > PRESSURE_FAIL ? Status.FAIL : pressure > PRESSURE_WARN ? Status.WARN : Status.PASS;
        found.add(new Finding(
                "slot-pressure-angle",
                status,
                Math.toDegrees(pressure),
                Math.toDegrees(status == Status.FAIL ? PRESSURE_FAIL : PRESSURE_WARN),
                "deg",
                where(steep),
                "pressure angle in the slot"));
    }

    /** Limits of the solver that no other check here measures. */
    private void blades(List<BladePlan.Shortfall> broken) {
        for (BladePlan.Shortfall miss : broken) {
            String check;
            String advice = "";
            switch (miss.limit()) {
                case TURNS_BACK -> {
                    check = "slot-pressure-angle";
                    double dip = design.band().dipAngle(design.pin());
                    advice = ": it lies at a blade angle of " + Words.degrees(dip, 1) + " and the travel ends at "
                            + Words.degrees(design.closed(), 1) + ". The motion file evens the opening out in software"
                            + " instead; a lever off centre or a shorter travel may do"
                            + (design.isLinear() ? "" : ". Drawn with straight slots");
                }
                case EAR -> {
                    check = "opens-fully";
                    advice = advises ? StackChecks.leverThatWould(design) : "";
                }
                case BORE_EDGE, BORE_WEB -> check = "minimum-web";
                case LEVER_LENGTH -> check = "minimum-web";
                default -> check = "";
            }
            if (!check.isEmpty()) {
                boolean angle = miss.limit().unit().equals("deg");
                found.add(new Finding(
                        check,
                        Status.FAIL,
                        angle ? Math.toDegrees(miss.measured()) : miss.measured(),
                        angle ? Math.toDegrees(miss.asked()) : miss.asked(),
                        miss.limit().unit(),
                        "blade angle " + Words.degrees(miss.bladeAngle(), 2),
                        miss.limit().subject() + advice));
            }
        }
    }

    private void webs() {
        RingWebs webs = RingWebs.of(design);
        found.add(Finding.atLeast(
                "minimum-web",
                webs.least() + HAIR,
                spec.ring().leastWeb(),
                "mm",
                webs.place(),
                "least web of the drive ring"));
        found.add(Finding.atLeast(
                "minimum-web",
                design.holeEdge() + HAIR,
                spec.holeEdge(),
                "mm",
                "pin hole of a blade",
                "blade left round a pin hole"));
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
        found.add(Finding.atLeast(
                "clearance",
                least.distance(),
                ApertureRequirements.APART,
                "mm",
                where(at) + ", " + least.pair(),
                "least clearance of what is meant to stay apart"));
    }

    private String where(int state) {
        if (state == 0) {
            return "open";
        }
        return state == sweep.states() - 1
                ? "closed"
                : "state " + state + ", opening " + Words.mm(2 * sweep.openingRadius[state]);
    }
}
