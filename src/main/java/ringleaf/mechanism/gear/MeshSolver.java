// SPDX-License-Identifier: Apache-2.0
package ringleaf.mechanism.gear;

import java.util.Optional;
import ringleaf.curve.Roots;
import ringleaf.part.Words;
import ringleaf.spec.field.Bound;
import ringleaf.tooth.BasicRack;
import ringleaf.tooth.GearPair;
import ringleaf.tooth.InternalForm;
import ringleaf.tooth.InternalPair;
import ringleaf.tooth.Involute;
import ringleaf.tooth.ShiftChoice;
import ringleaf.tooth.TeethRatio;
import ringleaf.tooth.TipFinish;
import ringleaf.tooth.ToothForm;

/** From teeth and module to a mesh: profile shifts, centre distance, tips and backlash. */
final class MeshSolver {
    /** Shares of the module in which a range of distances is searched, and to which its ends are found. */
    private static final double SCAN = 0.05;

    private static final double FINE = 1e-4;
    /** Backlash, in modules, that takes half of both gears' teeth on the reference circle. */
    private static final double MOST_BACKLASH = Math.PI / 2;
    /** What thinning on the reference circle takes from the tip, at most: the ratio of the circles. */
    private static final double THINNED_TIP = 1.2;

    private static final double WIDEST = 3;
    private static final int ROOM_STEPS = 20;

    private final PairAsk ask;
    private final TeethRatio teeth;
    private final double module;

    MeshSolver(PairAsk ask, TeethRatio teeth, double module) {
        this.ask = ask;
        this.teeth = teeth;
        this.module = module;
    }

    /** The mesh as asked. */
    Mesh solve() throws Unmeshable {
        double backlash = ask.backlash(module);
        if (backlash > MOST_BACKLASH * module) {
            throw new Unmeshable("a backlash of " + Words.mm(backlash) + " leaves nothing of teeth of module "
                    + Words.number(module, 4) + ", which take " + Words.mm(MOST_BACKLASH * module) + " at most");
        }
        try {
            Mesh mesh = withRoom();
            mesh.driverRim().look(TipFinish.NONE);
            mesh.drivenRim().look(TipFinish.NONE);
            return mesh;
        } catch (IllegalArgumentException e) {
            throw new Unmeshable(Unmeshable.words(e));
        }
    }

    /**
     * The mesh whose tips have the room that the process asks for: roots are cut deeper, as nothing here is cut by a tool
     * that rolls, and teeth keep their height. A foot that would become too narrow is let be, and the roots are as deep
     * as they can, found by halving.
     */
    private Mesh withRoom() throws Unmeshable {
        double needed =
                ask.room().tips(module, ask.rack()).mm() / module - ask.rack().clearance();
        Mesh drawn = mesh(0);
        return needed <= 0
                ? drawn
                : Roots.lastMade(deeper -> standing(deeper, drawn), 0, needed, ROOM_STEPS)
                        .orElse(drawn);
    }

    /** The mesh with roots deeper by so many modules, when its teeth keep enough of their feet. */
    private Optional<Mesh> standing(double deeper, Mesh drawn) {
        try {
            Mesh mesh = mesh(deeper);
            boolean stands = mesh.driver().keepsFoot(drawn.driver(), ask.web());
            if (mesh instanceof Mesh.Outer outer && drawn instanceof Mesh.Outer other) {
                stands &= outer.pair().gear().keepsFoot(other.pair().gear(), ask.web());
            }
            return stands ? Optional.of(mesh) : Optional.empty();
        } catch (Unmeshable | IllegalArgumentException e) {
            return Optional.empty();
        }
    }

    private Mesh mesh(double deeper) throws Unmeshable {
        BasicRack rack = ask.rack().withDeeper(deeper);
        return ask.internal() ? inner(rack) : outer(rack);
    }

    private Mesh outer(BasicRack rack) throws Unmeshable {
        double[] shifts = shifts();
        double thinning = 0;
        ToothForm driver = ToothForm.of(module, teeth.driver(), shifts[0], thinning, rack);
        ToothForm driven = ToothForm.of(module, teeth.driven(), shifts[1], thinning, rack);
        GearPair pair = ask.centreDistance().isExact()
                ? new GearPair(driver, driven, ask.centreDistance().mostOr(0))
                : GearPair.of(driver, driven);
        pair = pair.withTipClearance(module * rack.clearance());
        boolean forced = ask.centreDistance().isExact() && bothShifts();
        if (!forced || ask.backlash().isPresent()) {
            double normal = ask.backlash(module) * Math.cos(pair.workingAngle());
            pair = pair.withNormalBacklash(normal, 0.5);
        }
        if (!ask.fullTips()) {
            pair = lowered(pair);
        }
        if (pair.backlash() < -Mesh.SAME) {
            throw new Unmeshable("the teeth overlap by " + Words.mm(-pair.backlash()) + " along the rolling circles");
        }
        return new Mesh.Outer(pair);
    }

    /** Tips cut where they would run into a root, and where a small gear's would be thinner than they should. */
    private GearPair lowered(GearPair pair) {
        ToothForm driver = pair.pinion();
        ToothForm driven = pair.gear();
        driver = driver.withLeastTipThickness(ShiftChoice.LEAST_TIP * module);
        driven = driven.withLeastTipThickness(ShiftChoice.LEAST_TIP * module);
        driver =
                driver.withTipRadius(Math.min(driver.tipRadius(), pair.contact().pinionTipLimit()));
        driven =
                driven.withTipRadius(Math.min(driven.tipRadius(), pair.contact().gearTipLimit()));
        return new GearPair(driver, driven, pair.centreDistance());
    }

    private boolean bothShifts() {
        return ask.driverShift().isPresent() && ask.drivenShift().isPresent();
    }

    private double[] shifts() throws Unmeshable {
        if (bothShifts()) {
            return new double[] {
                ask.driverShift().getAsDouble(), ask.drivenShift().getAsDouble()
            };
        }
        BasicRack rack = ask.rack();
        double needed = Math.max(0, rack.leastShift(teeth.driver()) + rack.leastShift(teeth.driven()));
        double sum = needed;
        if (ask.centreDistance().isExact()) {
            double distance = ask.centreDistance().mostOr(0);
            double base = module * (teeth.driver() + teeth.driven()) / 2 * Math.cos(rack.pressureAngle());
            if (!(distance > base)) {
                throw new Unmeshable("the base circles leave no line of action nearer than " + Words.mm(base));
            }
            sum = GearPair.shiftSum(module, rack, teeth.driver() + teeth.driven(), distance);
        } else if (ask.driverShift().isPresent() || ask.drivenShift().isPresent()) {
            double given = ask.driverShift().orElse(ask.drivenShift().orElse(0));
            int other = ask.driverShift().isPresent() ? teeth.driven() : teeth.driver();
            sum = given + Math.max(-given, ShiftChoice.forPinion(rack, other));
        }
        if (ask.driverShift().isPresent()) {
            return new double[] {
                ask.driverShift().getAsDouble(), sum - ask.driverShift().getAsDouble()
            };
        }
        if (ask.drivenShift().isPresent()) {
            return new double[] {
                sum - ask.drivenShift().getAsDouble(), ask.drivenShift().getAsDouble()
            };
        }
        boolean driverSmaller = teeth.driver() <= teeth.driven();
        int small = Math.min(teeth.driver(), teeth.driven());
        int large = Math.max(teeth.driver(), teeth.driven());
        // Half the backlash is taken from either gear's teeth, and a little more of it at the tips.
        double thinned = THINNED_TIP * ask.backlash(module) / 2 / module;
        ShiftChoice choice = choice(small, large, sum, ShiftChoice.LEAST_TIP + thinned);
        return driverSmaller
                ? new double[] {choice.pinion(), choice.gear()}
                : new double[] {choice.gear(), choice.pinion()};
    }

    /** The balanced shifts with tips of a width, or where few teeth have none such, just free of undercut. */
    private ShiftChoice choice(int small, int large, double sum, double tip) {
        try {
            return ShiftChoice.of(ask.rack(), small, large, sum, tip);
        } catch (IllegalArgumentException e) {
            double shift = ShiftChoice.forPinion(ask.rack(), small);
            return new ShiftChoice(shift, sum - shift);
        }
    }

    private Mesh inner(BasicRack rack) throws Unmeshable {
        double driverShift = ask.driverShift().orElse(ShiftChoice.forPinion(ask.rack(), teeth.driver()));
        double drivenShift = ask.drivenShift().orElse(driverShift);
        if (ask.centreDistance().isExact() && !bothShifts()) {
            double difference = innerShiftDifference(ask.centreDistance().mostOr(0));
            if (ask.drivenShift().isPresent()) {
                driverShift = drivenShift - difference;
            } else {
                drivenShift = driverShift + difference;
            }
        }
        ToothForm pinion = ToothForm.of(module, teeth.driver(), driverShift, 0, rack);
        InternalForm ring = InternalForm.of(module, teeth.driven(), drivenShift, 0, rack);
        InternalPair pair = ask.centreDistance().isExact()
                ? new InternalPair(pinion, ring, ask.centreDistance().mostOr(0))
                : InternalPair.of(pinion, ring);
        if (!ask.fullTips()) {
            pair = pair.withCleanTips();
        }
        double normal = ask.backlash(module) * Math.cos(pair.workingAngle());
        pair = pair.withNormalBacklash(normal, 0.5);
        return new Mesh.Inner(pair);
    }

    /** x2 - x1 at which full teeth mesh at the distance: (inv aw - inv a)(z2 - z1)/(2 tan a). */
    private double innerShiftDifference(double distance) throws Unmeshable {
        double angle = ask.rack().pressureAngle();
        int difference = teeth.driven() - teeth.driver();
        double cosine = module * difference / 2 * Math.cos(angle) / distance;
        if (!(cosine < 1)) {
            throw new Unmeshable("the base circles leave no line of action nearer than " + Words.mm(cosine * distance));
        }
        double gain = Involute.inv(Math.acos(cosine)) - Involute.inv(angle);
        return gain * difference / (2 * Math.tan(angle));
    }

    /** Whether a mesh at the distance carries on from tooth to tooth. */
    private boolean works(double distance) {
        try {
            Mesh mesh = new MeshSolver(ask.withCentreDistance(Bound.of(distance)), teeth, module).solve();
            return mesh.contactRatio() >= 1 && mesh.tipClearance() > 0;
        } catch (Unmeshable e) {
            return false;
        }
    }

    /** The centre distances between which these teeth mesh, mm; empty values when they never do. */
    double[] range() {
        int sum = ask.internal() ? teeth.driven() - teeth.driver() : teeth.driver() + teeth.driven();
        double middle = module * sum / 2;
        double start = Double.NaN;
        for (double step = 0; step <= WIDEST && Double.isNaN(start); step += SCAN) {
            if (works(middle + step * module)) {
                start = middle + step * module;
            } else if (works(middle - step * module)) {
                start = middle - step * module;
            }
        }
        if (Double.isNaN(start)) {
            return new double[0];
        }
        return new double[] {end(start, -1), end(start, 1)};
    }

    private double end(double from, int way) {
        double good = from;
        double step = SCAN * module;
        while (Math.abs(good - from) < WIDEST * module && works(good + way * step)) {
            good += way * step;
        }
        double bad = good + way * step;
        while (Math.abs(bad - good) > FINE * module) {
            double half = (good + bad) / 2;
            if (works(half)) {
                good = half;
            } else {
                bad = half;
            }
        }
        return good;
    }

    /** The least shift of the ring at which its tips clear the pinion's base at full height; NaN where none does. */
    static double clearingShift(InternalPair pair) {
        ToothForm pinion = ToothForm.of(
                pair.pinion().module(),
                pair.pinion().teeth(),
                pair.pinion().shift(),
                0,
                pair.pinion().rack());
        double low = pair.ring().shift();
        double high = low + 2;
        if (fullMargin(pinion, pair.ring(), low) >= 0 || fullMargin(pinion, pair.ring(), high) < 0) {
            return Double.NaN;
        }
        return Roots.last(shift -> fullMargin(pinion, pair.ring(), shift) >= 0, high, low);
    }

    private static double fullMargin(ToothForm pinion, InternalForm ring, double shift) {
        return InternalPair.of(pinion, InternalForm.of(ring.module(), ring.teeth(), shift, 0, ring.rack()))
                .involuteMargin();
    }

    /** The margin of the involute condition of a pair whose teeth have full height and no backlash. */
    static double fullHeightMargin(InternalPair pair) {
        ToothForm pinion = ToothForm.of(
                pair.pinion().module(),
                pair.pinion().teeth(),
                pair.pinion().shift(),
                0,
                pair.pinion().rack());
        InternalForm ring = InternalForm.of(
                pair.ring().module(),
                pair.ring().teeth(),
                pair.ring().shift(),
                0,
                pair.ring().rack());
        return new InternalPair(pinion, ring, pair.centreDistance()).involuteMargin();
    }
}
