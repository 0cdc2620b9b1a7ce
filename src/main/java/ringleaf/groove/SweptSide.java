// SPDX-License-Identifier: Apache-2.0
package ringleaf.groove;

import java.util.ArrayList;
import java.util.List;
import ringleaf.curve.Roots;
import ringleaf.curve.SmoothCurve;
import ringleaf.geom.Point;

/**
 * The right-hand side of what a tooth sweeps, as smooth branches from the rim to the groove's bottom.
 *
 * <p>The envelopes of root rounding, flank and tip rounding follow one another with one tangent. Where one of them
 * turns back, the tip cuts away what lies above: the runs that go forward on either side of the gap end where they
 * cross, or the lower one runs out through the rim. Along a branch that goes forward the distance from the pulley's
 * axis only falls (its rate is -r sin v times the speed), so a crossing is found by comparing angles at equal radius.
 *
 * @param branches from the rim to the bottom
 * @param ridge whether two of them meet at an angle
 */
record SweptSide(List<SmoothCurve> branches, boolean ridge) {
    /** A turn back that leaves no more than this between the runs is rounding, mm. */
    private static final double JOINED = 1e-9;

    static SweptSide of(BeltTooth tooth, Rolling rolling, double rim) {
        List<List<Branch>> runs = runs(tooth, rolling);
        List<Branch> side = runs.get(runs.size() - 1);
        boolean ridge = false;
        for (int i = runs.size() - 2; i >= 0; i--) {
            ridge = true;
            side = crossed(runs.get(i), side);
        }
        double top = side.get(0).at(side.get(0).from()).norm();
        if (top > rim + JOINED) {
            ridge = true;
            side = below(side, rim);
        }
        return new SweptSide(List.copyOf(side), ridge);
    }

    /** What runs forward, each run in one piece, from the rim to the bottom. */
    private static List<List<Branch>> runs(BeltTooth tooth, Rolling rolling) {
        List<List<Branch>> runs = new ArrayList<>();
        List<Branch> run = new ArrayList<>();
        List<Branch> all = new ArrayList<>();
        if (tooth.rootRadius() > 0) {
            all.add(Branch.Root.whole(tooth, rolling));
        }
        if (Math.abs(tooth.flank()) > 1e-6) {
            all.add(new Branch.Flank(tooth, rolling, tooth.flankFrom(), tooth.flankTo()));
        }
        for (Branch branch : all) {
            double end = branch.turnsBack();
            if (end > branch.from()) {
                run.add(branch.over(branch.from(), end));
            }
            if (end < branch.to() && !run.isEmpty()) {
                runs.add(run);
                run = new ArrayList<>();
            }
        }
        Branch tip = Branch.Tip.whole(tooth, rolling);
        if (!run.isEmpty()) {
            Branch last = run.get(run.size() - 1);
            if (last.at(last.to()).distance(tip.at(tip.from())) > JOINED) {
                runs.add(run);
                run = new ArrayList<>();
            }
        }
        run.add(tip);
        runs.add(run);
        return runs;
    }

    /** The upper run to where it meets the lower, and the lower from there; the lower alone where it lies outside. */
    private static List<Branch> crossed(List<Branch> upper, List<Branch> lower) {
        List<Branch> all = new ArrayList<>();
        if (ahead(lower, upper.get(0).at(upper.get(0).from())) >= 0) {
            return lower;
        }
        for (Branch branch : upper) {
            if (ahead(lower, branch.at(branch.to())) < 0) {
                all.add(branch);
                continue;
            }
            double low = Roots.last(u -> ahead(lower, branch.at(u)) < 0, branch.from(), branch.to());
            if (low > branch.from()) {
                all.add(branch.over(branch.from(), low));
            }
            all.addAll(below(lower, branch.at(low).norm()));
            return all;
        }
        Branch last = upper.get(upper.size() - 1);
        Branch next = lower.get(0);
        if (last.at(last.to()).distance(next.at(next.from())) > 1e-6) {
            throw new IllegalStateException("two runs of the envelope do not meet");
        }
        all.addAll(lower);
        return all;
    }

    /** By how much a run lies further from the groove's axis than {@code p} at its radius, rad; -1 above its top. */
    private static double ahead(List<Branch> run, Point p) {
        double radius = p.norm();
        for (Branch branch : run) {
            if (branch.radiusAt(branch.from()) < radius) {
                return -1;
            }
            if (branch.radiusAt(branch.to()) <= radius) {
                Point q = branch.at(atRadius(branch, radius));
                return Math.atan2(q.x(), q.y()) - Math.atan2(p.x(), p.y());
            }
        }
        return 1;
    }

    /** What of a run lies below a radius. */
    private static List<Branch> below(List<Branch> run, double radius) {
        List<Branch> rest = new ArrayList<>();
        for (Branch branch : run) {
            if (branch.radiusAt(branch.to()) >= radius) {
                continue;
            }
            boolean cut = rest.isEmpty() && branch.radiusAt(branch.from()) > radius;
            rest.add(cut ? branch.over(atRadius(branch, radius), branch.to()) : branch);
        }
        return rest;
    }

    /** Where a branch passes a radius; the end that is nearer to it where it does not. */
    private static double atRadius(Branch branch, double radius) {
        double outer = branch.radiusAt(branch.from()) - radius;
        double inner = branch.radiusAt(branch.to()) - radius;
        if (outer <= 0 || inner >= 0) {
            return outer <= 0 ? branch.from() : branch.to();
        }
        return Roots.between(u -> branch.radiusAt(u) - radius, branch.from(), branch.to(), 0);
    }
}
