// SPDX-License-Identifier: Apache-2.0
package ringleaf.mechanism.aperture;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import ringleaf.curve.Roots;
import ringleaf.geom.Point;
import ringleaf.leaf.Band;
import ringleaf.leaf.BladeLimit;
import ringleaf.leaf.BladeNeeds;
import ringleaf.leaf.BladePlan;
import ringleaf.leaf.DrivePin;
import ringleaf.leaf.FoldedCover;
import ringleaf.leaf.Layout;
import ringleaf.leaf.PinRange;
import ringleaf.leaf.SlotLaw;
import ringleaf.mechanism.body.ServoOutline;

/**
 * Decides every size: blades by the solver, then ring, drive, housing and heights round them. Of the layouts allowed
 * it takes the one with the fewest broken limits, and of those the smallest housing.
 */
final class ApertureDesigner {
    /** Round housings are made to a tenth of a millimetre. */
    private static final double OUTER_STEP = 0.1;

    private static final double RADIUS_STEP = 0.05;
    /** States at which reach and layers are looked at while sizes are still open. */
    private static final int COARSE = 36;
    /** When the outer diameter is given, its spare room goes into the lap in this many halvings. */
    private static final int MARGIN_STEPS = 6;

    /** Least radius of a curved slot's middle in widths of its half. */
    private static final double SHARPEST = 1.2;

    private final ApertureSpec spec;
    private final BladePlans plans;

    ApertureDesigner(ApertureSpec spec) {
        this(spec, BladePlans.SOLVED);
    }

    ApertureDesigner(ApertureSpec spec, BladePlans plans) {
        this.spec = spec;
        this.plans = plans;
    }

    /**
     * What came of one layout.
     *
     * @param design the sizes
     * @param broken number of limits that do not hold
     */
    record Candidate(ApertureDesign design, int broken) {
        boolean isBetterThan(Candidate other) {
            if (broken != other.broken) {
                return broken < other.broken;
            }
            return design.rim().outer() < other.design.rim().outer() - 1e-9;
        }
    }

    /**
     * The best of each layout that is worth a try, the one to take first. Where the far end breaks no limit, or is but
     * too wide, a lever is of use only if it makes a smaller cavity, and it is not even looked for where nothing but
     * the band keeps the cavity from being smaller.
     */
    List<Candidate> candidates() {
        List<Candidate> found = new ArrayList<>();
        BladeNeeds needs = needs(spec.lap());
        for (Layout layout : spec.layouts()) {
            BladePlan plan = found.isEmpty() ? plans.of(needs, layout) : other(needs, layout, found.get(0));
            if (plan != null) {
                found.add(candidate(plan));
            }
        }
        int best = 0;
        for (int i = 1; i < found.size(); i++) {
            best = found.get(i).isBetterThan(found.get(best)) ? i : best;
        }
        Candidate first = found.remove(best);
        found.add(0, spec.outer().isExact() ? widened(first) : first);
        return found;
    }

    /** Blades of another layout that can be better than the first one's, or null. */
    private BladePlan other(BladeNeeds needs, Layout layout, Candidate first) {
        BladePlan plan = first.design().plan();
        if (first.broken() > (isTooWide(first.design()) ? 1 : 0)) {
            return plans.of(needs, layout);
        }
        return plan.isBoundByTheBand()
                ? null
                : plans.below(needs, layout, plan.cavityRadius()).orElse(null);
    }

    BladeNeeds needs(double lap) {
        return new BladeNeeds(
                spec.clearRadius(),
                spec.leastRadius(),
                spec.blades(),
                lap,
                spec.clearances().opening(),
                spec.clearances().blade(),
                spec.pinNeeds(),
                spec.play(),
                new BladeNeeds.Given(
                        spec.bladeWidth().orElse(Double.NaN),
                        spec.bladeSpan().orElse(Double.NaN),
                        spec.lever().orElse(Double.NaN),
                        inFrame(spec.leverAngle().orElse(Double.NaN))),
                spec.linearSlot(),
                Double.NaN);
    }

    /** With the outer diameter given, the widest lap for which everything still fits into it. */
    private Candidate widened(Candidate least) {
        if (least.design().rim().outer() > spec.outer().most() / 2 + 1e-9
                || spec.bladeWidth().isPresent()) {
            return least;
        }
        return Roots.lastMade(lap -> wider(least, lap), spec.lap(), FoldedCover.LAP_CAP, MARGIN_STEPS)
                .orElse(least);
    }

    private Optional<Candidate> wider(Candidate least, double lap) {
        Candidate wider = candidate(plans.of(needs(lap), least.design().plan().layout()));
        boolean fits = wider.broken() <= least.broken()
                && wider.design().rim().outer() <= spec.outer().most() / 2 + 1e-9;
        return fits ? Optional.of(wider) : Optional.empty();
    }

    private Candidate candidate(BladePlan found) {
        BladePlan plan = drawable(found);
        SlotLaw law = plan.law();
        Band band = law.band();
        double closed = plan.closed();
        double travel = law.ringAngle(closed);
        double over = overTravel(band, travel);
        double[] ends = PinRange.blade(law, closed, over);
        double cavity = up(reach(law, ends, plan.ear()) + spec.clearances().blade(), RADIUS_STEP);
        double pin = spec.pinDiameter() / 2 + spec.clearances().slotEnd();
        double slotInner = Double.POSITIVE_INFINITY;
        double slotOuter = 0;
        for (int i = 0; i <= COARSE; i++) {
            double radius = band.pinRadius(law.pin(), ends[0] + (ends[1] - ends[0]) * i / COARSE);
            slotInner = Math.min(slotInner, radius - pin);
            slotOuter = Math.max(slotOuter, radius + pin);
        }
        slotInner = Math.min(slotInner, band.leastPinRadius(law.pin(), closed) - pin);
        Stack stack = stack(law, closed);
        DrivePlan drive = drive(cavity, slotOuter, travel, over);
        Rim rim = rim(drive, cavity, slotInner, slotOuter, over);
        Optional<ServoMount> mount = Optional.empty();
        if (drive instanceof PinionPlan pinion) {
            ServoMount on = ServoMount.of(spec, stack, pinion);
            mount = Optional.of(on);
            // A case that stands in the plates is cut out of them, so their outline goes round it.
            boolean behind = on.hasPlate() && !on.caseReaches(stack.coverBottom());
            double web = spec.plate().leastWeb() + ServoOutline.ROOM;
            drive = behind ? drive : pinion.holding(ServoMount.ears(pinion, web));
        }
        Housing housing = Housing.of(spec, rim, drive);
        ApertureDesign design =
                new ApertureDesign(spec, plan, travel, rim, stack, drive, mount, housing, bound(plan, rim));
        return new Candidate(design, broken(design));
    }

    /** A curved slot that bends more sharply than it is wide cannot be cut: the slots become straight and it is told. */
    private BladePlan drawable(BladePlan plan) {
        double radius = SlotOutline.radius(spec);
        if (!(plan.law() instanceof SlotLaw.LinearOpening)
                || PinRange.leastRadius(plan.law(), plan.closed()) > SHARPEST * radius) {
            return plan;
        }
        List<BladePlan.Shortfall> broken = new ArrayList<>(plan.broken());
        double dip = plan.band().dipAngle(plan.pin());
        broken.add(0, new BladePlan.Shortfall(BladeLimit.TURNS_BACK, plan.closed(), dip, plan.closed()));
        return new BladePlan(
                plan.layout(),
                new SlotLaw.Radial(plan.band(), plan.pin()),
                plan.closed(),
                plan.reach(),
                plan.cavityRadius(),
                plan.ear(),
                plan.pressureLimit(),
                plan.bounds(),
                broken);
    }

    /** The stops stand a fixed gap past the travel, but never so far that blades or pins run wild. */
    private double overTravel(Band band, double travel) {
        double gap = spec.clearances().stop() / (band.pivotRadius() + band.width());
        return Math.min(Math.min(gap, Rim.MOST_OVER_TRAVEL), 0.1 * Math.abs(travel));
    }

    private double reach(SlotLaw law, double[] ends, double ear) {
        double reach = 0;
        for (int i = 0; i <= COARSE; i++) {
            double b = ends[0] + (ends[1] - ends[0]) * i / COARSE;
            reach = Math.max(reach, law.band().reach(b, law.pin(), ear));
        }
        return reach;
    }

    private Stack stack(SlotLaw law, double closed) {
        Band band = law.band();
        FoldedCover cover = new FoldedCover(band, 0);
        int layers = 0;
        int overPivot = Integer.MAX_VALUE;
        int underTip = Integer.MAX_VALUE;
        boolean lever = law.pin() instanceof DrivePin.Lever;
        for (int i = 0; i <= COARSE; i++) {
            double b = closed * i / COARSE;
            cover.at(band, b);
            layers = Math.max(layers, cover.layers(layers));
            overPivot = Math.min(overPivot, cover.bladesOver(new Point(band.pivotRadius(), 0)) - 1);
            int others = cover.bladesOver(band.pin(law.pin(), b)) - 1;
            // At a blade's far end the others lie under it; a lever stands clear of them.
            underTip = Math.min(underTip, lever ? 0 : others);
        }
        return Stack.of(spec, band.pivotRadius(), layers, Math.max(0, overPivot), Math.max(0, underTip));
    }

    private DrivePlan drive(double cavity, double slotOuter, double travel, double over) {
        if (spec.drive() instanceof DriveSpec.Hand hand) {
            return new HandPlan(inFrame(hand.at()), travel, hand.armWidth() / 2, hand.armReach());
        }
        DriveSpec.Pinion wanted = (DriveSpec.Pinion) spec.drive();
        return new PinionPlanner(spec, wanted).plan(inFrame(wanted.at()), cavity, slotOuter, travel, over);
    }

    /** Directions are given in the frame as built; everything is designed unmirrored. */
    private double inFrame(double at) {
        return spec.mirrored() ? -at : at;
    }

    private Rim rim(DrivePlan drive, double cavity, double slotInner, double slotOuter, double over) {
        double plain = Rim.leastPlainRim(spec, cavity, slotOuter);
        double floor;
        double radius;
        String binding = slotOuter + spec.ring().leastWeb() >= cavity + spec.ledge() ? "slots" : "ledge";
        if (drive instanceof PinionPlan plan) {
            radius = plan.sector().tipRadius();
            floor = plan.sector().rootRadius();
            binding = radius > plain + plan.sector().module() ? "pinion" : binding;
        } else {
            radius = up(plain, RADIUS_STEP);
            floor = radius;
        }
        double wall = radius + spec.clearances().ringRadial();
        double width = Rim.wallWidth(spec);
        double outer = up(2 * (wall + width), OUTER_STEP) / 2;
        outer = Math.max(outer, spec.outer().least() / 2);
        if (drive instanceof HandPlan hand && spec.bezel().housing().isPresent()) {
            // The arm has to stand out of the user's own outline, wherever it passes.
            outer = Math.max(outer, up(2 * BezelFit.reachAlong(spec, hand, over), OUTER_STEP) / 2);
        }
        double screws = (wall + outer) / 2;
        double opening = spec.clearRadius() + spec.clearances().opening();
        return new Rim(opening, cavity, slotInner, slotOuter, floor, radius, wall, screws, outer, over, binding);
    }

    private static String bound(BladePlan plan, Rim rim) {
        StringBuilder words = new StringBuilder();
        for (BladeLimit limit : plan.bounds()) {
            words.append(words.length() == 0 ? "" : ", ").append(limit.subject());
        }
        String blades = words.length() == 0 ? "the blades as given" : words.toString();
        return blades + "; the rim by the " + rim.binding();
    }

    /** Limits of the spec that this design breaks, as far as they are known before the sweep. */
    private int broken(ApertureDesign design) {
        int broken = design.plan().broken().size();
        if (isTooWide(design)) {
            broken++;
        }
        if (spec.depth().isPresent() && design.stack().depth() > spec.depth().getAsDouble() + 1e-6) {
            broken++;
        }
        if (spec.bezel().housing().isPresent() && !BezelFit.holds(design)) {
            broken++;
        }
        if (design.drive() instanceof PinionPlan pinion
                && pinion.servoTravel() > pinion.servo().travel()) {
            broken++;
        }
        return broken;
    }

    private boolean isTooWide(ApertureDesign design) {
        return 2 * design.rim().outer() > spec.outer().most() + 1e-6;
    }

    private static double up(double value, double step) {
        return Math.ceil(value / step - 1e-9) * step;
    }
}
