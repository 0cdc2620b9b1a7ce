// SPDX-License-Identifier: Apache-2.0
package ringleaf.leaf;

import java.util.ArrayList;
import java.util.List;

/**
 * One choice of width, span and lever, held against the needs. Set again and again by the search, so it keeps its
 * figures in fields; {@link #firstBroken} stops at the first limit that does not hold, {@link #audit} lists all.
 */
final class BladeTrial {
    private static final BladeLimit[] STATIC = {
        BladeLimit.PIN_EDGE,
        BladeLimit.LEVER_LENGTH,
        BladeLimit.BORE_EDGE,
        BladeLimit.BORE_WEB,
        BladeLimit.DIP,
        BladeLimit.SLOT_WEB,
        BladeLimit.TURNS_BACK,
        BladeLimit.EAR,
        BladeLimit.PIN_CLEAR
    };
    /** States at which ears are looked at. */
    private static final int EAR_STATES = 12;
    /** Laps are held with this much to spare, as a share of the pivot radius, so that rounding cannot break them. */
    private static final double SPARE = 1e-8;

    private final BladeNeeds needs;
    private final FoldedCover cover;
    private final PlayedCover played = new PlayedCover();
    private final BladeArcs arcs = new BladeArcs();
    private final PinRoom room = new PinRoom();

    Layout layout;
    double width;
    double span;
    /** Whether a lever may stand where its pin meets other blades or the view; told by {@link #audit} all the same. */
    boolean anywhere;
    /** How much longer a lever is than its pin needs to stand clear of the open blades, mm; for levers only. */
    double excess;
    /** Lever angle asked for by a linear slot, rad, or not a number. */
    double angle = Double.NaN;

    Band band;
    DrivePin pin;
    double closed;
    double ear;
    double reach;
    double cavity;
    /** Share of the travel at which {@link #holdsThroughout} last failed. */
    double failing;
    /** Steps between the blades whose play failed there. */
    int failingApart;

    /** Whether it failed there by its pressure angle. */
    boolean steep;

    /** While the law of a linear slot is still open, its pressure angle is taken as this, rad. */
    double linearPressure;

    private double leastPin;
    private double broke;
    /** Set by {@link #value}. */
    private double asked;

    BladeTrial(BladeNeeds needs) {
        this.needs = needs;
        this.cover = new FoldedCover(new Band(2, 1, 1, 3), 0);
    }

    BladeTrial set(Layout where, double blade, double spans, double standsOut) {
        layout = where;
        width = blade;
        span = spans;
        excess = standsOut;
        BladeNeeds.PinNeeds pins = needs.pins();
        double edge = pins.hole() / 2 + pins.edge();
        double open = needs.clearRadius() + needs.opensBy();
        band = new Band(open + Math.max(width / 2, edge), width, span, needs.blades());
        closed = band.bladeAngle(needs.leastRadius());
        boolean standsClear = width / 2 < edge - 1e-12;
        if (layout.isLever()) {
            double direction = leverAngle();
            double length = leverLength(direction);
            standsClear |= length + edge > width / 2 + 1e-9;
            pin = new DrivePin.Lever(length, direction);
        } else {
            pin = new DrivePin.FarEnd();
        }
        ear = standsClear ? edge : 0;
        leastPin = band.leastPinRadius(pin, closed);
        reach = Math.max(band.outerRadius(), arcs.pose(band, closed, 0).greatest());
        if (ear > 0) {
            reach = Math.max(reach, Math.max(band.pivotRadius(), band.greatestPinRadius(pin, closed)) + ear);
        }
        cavity = reach + needs.endClearance();
        return this;
    }

    private double leverLength(double direction) {
        if (!Double.isNaN(needs.given().lever())) {
            return needs.given().lever();
        }
        // A hair more, so that rounding cannot break it.
        double least = PinRoom.leastLength(band, direction, needs.pins().diameter() / 2 + needs.endClearance() + 1e-6);
        return least + excess;
    }

    private double leverAngle() {
        if (!Double.isNaN(angle)) {
            return angle;
        }
        if (!Double.isNaN(needs.given().leverAngle())) {
            return needs.given().leverAngle();
        }
        return -closed / 2;
    }

    /** The law of the slots; for linear ones this searches the ring travel and is dear. */
    SlotLaw law() {
        if (needs.linear() && Double.isNaN(SlotLaw.LinearOpening.turnsBack(band, pin, closed))) {
            return SlotLaw.LinearOpening.leastPressure(band, pin, closed, Math.PI / 2);
        }
        return new SlotLaw.Radial(band, pin);
    }

    /** The figure that a limit is about, with {@link #asked} set; {@link BladeLimit#CAVITY} is an upper bound. */
    private double value(BladeLimit limit) {
        BladeNeeds.PinNeeds pins = needs.pins();
        double apart = 2 * Math.sin(Math.PI / band.blades());
        switch (limit) {
            case PIN_EDGE:
                // Ears make up for a narrow band, but only where the user wants it so.
                asked = Double.isNaN(needs.given().width()) ? pins.hole() + 2 * pins.edge() : 0;
                return width;
            case LEVER_LENGTH:
                asked = layout.isLever() ? pins.hole() + pins.edge() : 0;
                return pin.length(band);
            case BORE_EDGE:
                asked = pins.plateWeb();
                return band.pivotRadius() - needs.clearRadius() - needs.opensBy() - pins.bore() / 2;
            case BORE_WEB:
                asked = pins.plateWeb();
                return band.pivotRadius() * apart - pins.bore();
            case DIP:
                asked = pins.ringOpening() + pins.web();
                return leastPin - pins.slotWidth() / 2 - pins.slotEnd();
            case SLOT_WEB:
                asked = pins.web();
                return Math.max(0, leastPin - pins.slotEnd()) * apart - pins.slotWidth();
            case TURNS_BACK:
                double turns = needs.linear() ? SlotLaw.LinearOpening.turnsBack(band, pin, closed) : Double.NaN;
                asked = closed;
                return Double.isNaN(turns) ? closed : turns;
            case EAR:
                asked = 0;
                return ear > 0 ? earClearance() : 0;
            case PIN_CLEAR:
                asked = layout.isLever() ? needs.endClearance() : 0;
                return layout.isLever() ? room.least(band, pin, ear, closed) - pins.diameter() / 2 : 0;
            default:
                throw new IllegalArgumentException(limit.name());
        }
    }

    private boolean isBroken(BladeLimit limit) {
        if (limit == BladeLimit.PIN_CLEAR && layout.isLever()) {
            double needed = needs.pins().diameter() / 2 + needs.endClearance() - 1e-9;
            return !room.keeps(band, pin, ear, closed, needed);
        }
        double value = value(limit);
        return value < asked - 1e-9;
    }

    private double earClearance() {
        double least = Double.MAX_VALUE;
        for (int i = 0; i <= EAR_STATES; i++) {
            double b = closed * i / EAR_STATES;
            double open = Math.min(needs.clearRadius(), band.cornerRadius(b));
            double near = layout.isLever() ? room.toAxis(band, pin, ear, b) : band.pinRadius(pin, b) - ear;
            least = Math.min(least, near - open);
        }
        return least;
    }

    /**
     * The first limit that does not hold, or null. A state at which a trial fails moves to the front, for the next
     * trial is likely to fail there too. Lap and play are both called the lap until {@link #reason} is asked.
     */
    BladeLimit firstBroken(TrialStates states, double pressureLimit) {
        for (BladeLimit limit : STATIC) {
            boolean waived = anywhere && limit == BladeLimit.EAR;
            if (limit != BladeLimit.PIN_CLEAR && !waived && isBroken(limit)) {
                return limit;
            }
        }
        if (!needs.linear() && endPressure() > pressureLimit) {
            return BladeLimit.PRESSURE;
        }
        for (int i = 0; i < states.count(); i++) {
            double b = closed * states.share(i);
            double pressure = needs.linear() ? linearPressure : band.slotPressure(pin, b);
            if (pressure > pressureLimit) {
                return BladeLimit.PRESSURE;
            }
            PlayedCover cover = played(b, pressure);
            // On a lever play weighs much, and a full look at it is dear; the end judges it in full.
            boolean holds = layout.isLever() ? cover.holdsFor(lap(), states.apart(i)) : cover.holds(lap());
            if (!holds) {
                states.toFront(i);
                broke = b;
                return BladeLimit.LAP;
            }
        }
        // The dearest last.
        return !anywhere && isBroken(BladeLimit.PIN_CLEAR) ? BladeLimit.PIN_CLEAR : null;
    }

    /** How many limits that do not depend on the state are broken. */
    int staticBroken() {
        int broken = 0;
        for (BladeLimit limit : STATIC) {
            broken += isBroken(limit) ? 1 : 0;
        }
        return broken;
    }

    /** Whether every limit holds, the states being looked at evenly in ring angle; the first that fails is kept. */
    boolean holdsThroughout(SlotLaw law, int states, double pressureLimit) {
        double travel = law.ringAngle(closed);
        // Far-apart states first: a fault usually lasts over many.
        for (int stride = 16; stride >= 1; stride /= 2) {
            for (int i = states - 1; i >= 0; i -= stride) {
                int place = (states - 1 - i) / stride;
                if (stride == 16 || place % 2 == 1) {
                    double b = i == states - 1 ? closed : law.bladeAngle(travel * i / (states - 1), closed);
                    double pressure = law.pressure(b);
                    steep = pressure > pressureLimit;
                    if (steep || !played(b, pressure).holds(lap())) {
                        failing = b / closed;
                        failingApart = played.failing;
                        return false;
                    }
                }
            }
        }
        return true;
    }

    /** The greater pressure angle of a radial slot at the two ends of the travel, rad. */
    double endPressure() {
        return Math.max(band.slotPressure(pin, 0), band.slotPressure(pin, closed));
    }

    private PlayedCover played(double b, double pressure) {
        return played.at(band, pin, needs.play(), b, pressure, needs.clearRadius());
    }

    /** The lap asked for and a hair. */
    private double lap() {
        return needs.lap() + 2 * SPARE * band.pivotRadius();
    }

    /** What it was that {@link #firstBroken} called the lap: the lap itself, or only what play takes. */
    BladeLimit reason(BladeLimit limit) {
        boolean laps = limit == BladeLimit.LAP && cover.at(band, broke).keepsLap(needs.clearRadius(), needs.lap());
        return laps ? BladeLimit.PLAY : limit;
    }

    /** Every limit that does not hold, each in its worst state, over states evenly spaced in ring angle. */
    List<BladePlan.Shortfall> audit(SlotLaw law, int states, double pressureLimit) {
        List<BladePlan.Shortfall> broken = new ArrayList<>();
        for (BladeLimit limit : STATIC) {
            double value = value(limit);
            if (value < asked - 1e-9) {
                broken.add(new BladePlan.Shortfall(limit, value, asked, limit == BladeLimit.TURNS_BACK ? value : 0));
            }
        }
        if (cavity > needs.cavityAtMost() + 1e-9) {
            broken.add(new BladePlan.Shortfall(BladeLimit.CAVITY, cavity, needs.cavityAtMost(), closed));
        }
        auditStates(law, states, pressureLimit, broken);
        return worstFirst(broken);
    }

    private static List<BladePlan.Shortfall> worstFirst(List<BladePlan.Shortfall> broken) {
        List<BladePlan.Shortfall> sorted = new ArrayList<>();
        for (BladePlan.Shortfall shortfall : broken) {
            int i = sorted.size();
            while (i > 0 && sorted.get(i - 1).share() < shortfall.share()) {
                i--;
            }
            sorted.add(i, shortfall);
        }
        return sorted;
    }

    private void auditStates(SlotLaw law, int states, double pressureLimit, List<BladePlan.Shortfall> broken) {
        BladePlan.Shortfall lap = null;
        BladePlan.Shortfall play = null;
        BladePlan.Shortfall pressure = null;
        double travel = law.ringAngle(closed);
        for (int i = 0; i < states; i++) {
            double b = i == states - 1 ? closed : law.bladeAngle(travel * i / (states - 1), closed);
            double p = law.pressure(b);
            if (p > pressureLimit && (pressure == null || p > pressure.measured())) {
                pressure = new BladePlan.Shortfall(BladeLimit.PRESSURE, p, pressureLimit, b);
            }
            if (!played(b, p).holds(lap())) {
                double cap = Math.max(needs.lap(), played.mostLoss()) + 1;
                double found = cover.at(band, b).lap(needs.clearRadius(), cap);
                if (found < needs.lap() && (lap == null || found < lap.measured())) {
                    lap = new BladePlan.Shortfall(BladeLimit.LAP, found, needs.lap(), b);
                }
                double left = played.afterPlay(found);
                if (left < 0 && (play == null || left < play.measured())) {
                    play = new BladePlan.Shortfall(BladeLimit.PLAY, left, 0, b);
                }
            }
        }
        for (BladePlan.Shortfall found : new BladePlan.Shortfall[] {pressure, lap, play}) {
            if (found != null) {
                broken.add(found);
            }
        }
    }
}
