// SPDX-License-Identifier: Apache-2.0
package ringleaf.mechanism.aperture;

import java.util.Arrays;
import java.util.Optional;
import ringleaf.leaf.ArcFold;
import ringleaf.leaf.Band;
import ringleaf.leaf.BladeArcs;
import ringleaf.leaf.LeafSlope;
import ringleaf.leaf.PinInSlot;
import ringleaf.leaf.PinRange;
import ringleaf.leaf.PlayedCover;
import ringleaf.mechanism.AsBuilt;
import ringleaf.mechanism.MeshOff;

/** Judges builds of one aperture, see {@link ApertureBuilt}. Not for several threads at once. */
final class ApertureBench implements AsBuilt.Bench {
    /** Pins keep this share of the hold that they are designed with; common practice, no source. */
    private static final double HOLD = 0.5;

    /** The slope for which blades are designed is a rule with a reserve; so much of it still works; no source. */
    private static final double STEEPER = 1.25;

    private final ApertureDesign design;
    private final ApertureSpec spec;
    private final ApertureSizes sizes;
    private final Band band;
    private final int n;
    private final PinInSlot follower;
    private final MadeBlades blades;
    /** Ring angles of the states, the two stops last. */
    private final double[] ring;

    /** Blade angles there as drawn. */
    private final double[] angle;

    private final double[] distance;
    private final double[] gain;
    private final double[] slotRoom;
    private final double[] pinRadius;
    private final double[] bore;
    private final double[] slot;
    private final double[] loss;
    private final double[] margins;
    /** How far any blade's inner edge stands off in the state that is looked at, mm. */
    private double astray;

    ApertureBench(ApertureDesign design, ApertureSizes sizes, double[] bladeAngles, int limits) {
        this.design = design;
        this.spec = design.spec();
        this.sizes = sizes;
        this.band = design.band();
        this.n = band.blades();
        this.follower = new PinInSlot(design.law());
        this.blades = new MadeBlades(n, band.pivotRadius());
        int states = bladeAngles.length + 2;
        ring = new double[states];
        angle = new double[states];
        distance = new double[states];
        gain = new double[states];
        slotRoom = new double[states];
        pinRadius = new double[states];
        bore = new double[n];
        slot = new double[n];
        loss = new double[n];
        margins = new double[limits];
        double sense = Math.signum(design.travel());
        double[] stops =
                PinRange.blade(design.law(), design.closed(), design.rim().overTravel());
        double lever = design.pin().length(band);
        BladeArcs arcs = new BladeArcs();
        for (int i = 0; i < states; i++) {
            boolean stop = i >= bladeAngles.length;
            double b = stop ? stops[i - bladeAngles.length] : bladeAngles[i];
            ring[i] = stop
                    ? (i == states - 1
                            ? design.travel() + sense * design.rim().overTravel()
                            : -sense * design.rim().overTravel())
                    : design.law().ringAngle(b);
            angle[i] = b;
            distance[i] = arcs.pose(band, b, 0).farthestFromPivot(spec.clearRadius());
            gain[i] = distance[i] / (lever * Math.cos(design.law().pressure(b)));
            slotRoom[i] = SlotRoom.at(design, b);
            pinRadius[i] = band.pinRadius(design.pin(), b);
        }
    }

    @Override
    public double[] margins(double[][] off) {
        Arrays.fill(margins, Double.POSITIVE_INFINITY);
        double play = play(off);
        clearances(off);
        motion(off, Math.max(0, play));
        double opening = design.rim().opening();
        for (double edge : off[sizes.plateOpening]) {
            least(BuiltLimit.OPENS, opening + edge - spec.clearRadius());
        }
        least(BuiltLimit.OPENS, opening + off[sizes.ringOpening][0] - spec.clearRadius());
        pins(off);
        least(BuiltLimit.TURNS, play);
        least(BuiltLimit.SEAT, rim(off) - Math.max(0, play) - design.rim().cavity() - off[sizes.cavity][0]);
        heights(off);
        int at = mesh(sizes.mesh, off, BuiltLimit.values().length);
        mesh(sizes.stepMesh, off, at);
        return margins.clone();
    }

    private void least(BuiltLimit limit, double margin) {
        least(limit.ordinal(), margin);
    }

    private void least(int limit, double margin) {
        // What cannot be reckoned does not hold.
        margins[limit] = Double.isNaN(margin) ? Double.NEGATIVE_INFINITY : Math.min(margins[limit], margin);
    }

    private double rim(double[][] off) {
        int size = sizes.mesh.isPresent() ? sizes.mesh.get().secondTip() : sizes.rim;
        return design.rim().rim() + off[size][0];
    }

    private double play(double[][] off) {
        return design.rim().wall() + off[sizes.wall][0] - rim(off);
    }

    private static double of(double[] copies, int i) {
        return copies[Math.min(i, copies.length - 1)];
    }

    private void clearances(double[][] off) {
        for (int i = 0; i < n; i++) {
            bore[i] = spec.clearances().pivot().play(off[sizes.bore][i], of(off[sizes.pivotPin], i));
            slot[i] = spec.clearances().drive().play(off[sizes.slotWidth][i], of(off[sizes.drivePin], i));
        }
    }

    /** Everything that depends on where the blades stand. */
    private void motion(double[][] off, double play) {
        least(BuiltLimit.TIGHT, 1);
        least(BuiltLimit.PLAY, 1);
        for (int state = 0; state < ring.length; state++) {
            boolean stop = state >= ring.length - 2;
            astray = 0;
            for (int i = 0; i < n; i++) {
                double b = follower.bladeAngle(
                        ring[state],
                        off[sizes.boreRadial][i],
                        off[sizes.boreAcross][i],
                        off[sizes.pinAlong][i],
                        off[sizes.pinAcross][i],
                        off[sizes.slotPlace][i]);
                if (Double.isNaN(b)) {
                    least(BuiltLimit.SLOT_ENDS, Double.NaN);
                    least(BuiltLimit.PLAY, -1);
                    return;
                }
                place(i, b, off, state);
            }
            if (state == ring.length - 2) {
                // Open is where the stop is, as closed is: the ring may go on until the last blade is out of the view.
                for (int i = 0; i < n; i++) {
                    least(BuiltLimit.OPENS, blades.nearest(i) - spec.clearRadius());
                }
            }
            if (state == ring.length - 1) {
                double most = spec.leastRadius() + ApertureChecks.OPENING_TOLERANCE / 2;
                least(BuiltLimit.CLOSES, most - blades.inscribedRadius());
            }
            if (!stop && distance[state] > 0) {
                covers(state, play);
            }
        }
    }

    private void place(int i, double b, double[][] off, int state) {
        double turn = i * band.period();
        double x = band.pivotRadius() + off[sizes.boreRadial][i];
        double y = off[sizes.boreAcross][i];
        double c = Math.cos(turn);
        double s = Math.sin(turn);
        blades.place(
                i,
                x * c - y * s,
                x * s + y * c,
                b + turn,
                band.pivotRadius(),
                band.innerRadius() + off[sizes.innerEdge][i],
                band.outerRadius() + off[sizes.outerEdge][i],
                band.span() + off[sizes.farEnd][i] / band.pivotRadius());
        double cx = x - band.pivotRadius() * (1 + Math.cos(b) - Math.cos(angle[state]));
        double cy = y - band.pivotRadius() * (Math.sin(b) - Math.sin(angle[state]));
        astray = Math.max(astray, Math.hypot(cx, cy) + Math.abs(off[sizes.innerEdge][i]));
        double lever = design.pin().angle(band) + b;
        double longer = design.pin().length(band) + off[sizes.pinAlong][i];
        double px = x + longer * Math.cos(lever) - off[sizes.pinAcross][i] * Math.sin(lever);
        double py = y + longer * Math.sin(lever) + off[sizes.pinAcross][i] * Math.cos(lever);
        double radius = Math.hypot(px, py);
        double reach = blades.reach(i);
        if (design.ear() > 0) {
            reach = Math.max(reach, Math.max(Math.hypot(x, y), radius) + design.ear());
        }
        least(BuiltLimit.STAYS_IN, design.rim().cavity() + off[sizes.cavity][0] - reach);
        slotEnds(i, radius, off, state);
    }

    private void slotEnds(int i, double radius, double[][] off, int state) {
        double pin = spec.pinDiameter() / 2 + of(off[sizes.drivePin], i) / 2;
        if (design.isLinear()) {
            double moved = Math.abs(radius - pinRadius[state]);
            double ends = Math.min(-off[sizes.slotInner][i], off[sizes.slotOuter][i]);
            least(BuiltLimit.SLOT_ENDS, slotRoom[state] - moved + Math.min(0, ends) - of(off[sizes.drivePin], i) / 2);
            return;
        }
        least(
                BuiltLimit.SLOT_ENDS,
                Math.min(
                        radius - pin - design.rim().slotInner() - off[sizes.slotInner][i],
                        design.rim().slotOuter() + off[sizes.slotOuter][i] - pin - radius));
    }

    private boolean broken(BuiltLimit limit) {
        return margins[limit.ordinal()] < 0;
    }

    private void covers(int state, double play) {
        if (broken(BuiltLimit.TIGHT)) {
            return;
        }
        double beside = spec.clearRadius() - blades.inscribedRadius();
        if (beside <= 0) {
            return;
        }
        // Blades that keep tight while they lean apart are tight as they stand.
        if (!broken(BuiltLimit.PLAY) && !opens(state, play, beside)) {
            return;
        }
        least(BuiltLimit.PLAY, -1);
        Arrays.fill(loss, 0);
        if (blades.gapApart(spec.clearRadius(), loss, slack()) >= 0) {
            least(BuiltLimit.TIGHT, -1);
        }
    }

    /** Whether two blades can lean apart so far that a gap opens between them; see {@link PlayedCover}. */
    private boolean opens(int state, double play, double beside) {
        int apart = n / 2;
        while (true) {
            double most = losses(state, play, apart, beside);
            int seen = blades.gapApart(spec.clearRadius(), loss, slack());
            // Beside the opening, which grows meanwhile, a gap can open and be taken in by it again.
            int stages = beside < ArcFold.BESIDE * most ? ArcFold.PROBES : 1;
            for (int k = stages - 1; k >= (stages > 1 ? 0 : 1) && seen < 0; k--) {
                losses(state, play, apart, beside);
                scale((double) k / stages);
                seen = blades.gapApart(spec.clearRadius(), loss, slack());
            }
            if (seen < 0) {
                return false;
            }
            if (Math.max(1, seen) >= apart) {
                return true;
            }
            apart = Math.max(1, seen);
        }
    }

    /** What counts as opening beside the opening: see {@link ApertureBuilt#assumptions}. */
    private double slack() {
        double least = Double.POSITIVE_INFINITY;
        double most = 0;
        for (double each : loss) {
            least = Math.min(least, each);
            most = Math.max(most, each);
        }
        return ApertureBuilt.SLIVER * astray + most - least;
    }

    private void scale(double share) {
        for (int i = 0; i < n; i++) {
            loss[i] *= share;
        }
    }

    /** Half of what each blade can lose against one so many steps apart; gives the most. */
    private double losses(int state, double play, int apart, double beside) {
        double ringPart = play * Math.abs(Math.sin(Math.PI * apart / n)) * gain[state];
        double most = 0;
        for (int i = 0; i < n; i++) {
            double shift = Math.max(0, bore[i]) / 2;
            double lost = shift + (Math.max(0, slot[i]) / 2 + shift) * gain[state] + ringPart;
            // A blade covers nothing by not being asked to.
            loss[i] = Math.min(lost, 0.999 * beside);
            most = Math.max(most, loss[i]);
        }
        return most;
    }

    private void pins(double[][] off) {
        double thickness = spec.thickness() + off[sizes.thickness][0];
        double slope = Math.atan(n * (thickness + spec.blade().burr()) / (2 * Math.PI * band.pivotRadius()));
        boolean posts = spec.pinStyle() == PinStyle.BASE_POSTS;
        double length = posts ? thickness : design.stack().pivotPinDepth() + off[sizes.pivotLength][0];
        PinLean pins = new PinLean(design);
        double tilt = length * Math.tan(slope + pins.inJig(false));
        double inSlot = pins.isJigged(true) ? pins.inside(true) * Math.tan(slope + pins.inJig(true)) : 0;
        for (int i = 0; i < n; i++) {
            least(BuiltLimit.PINS, bore[i] - tilt);
            least(BuiltLimit.PINS, slot[i] - inSlot);
        }
        double higher = off[sizes.cavityHeight][0];
        double hold = Math.min(spec.pinDiameter(), spec.plate().thickness());
        if (!posts) {
            least(BuiltLimit.HOLD, design.stack().pivotEngagement() + off[sizes.pivotLength][0] - higher - HOLD * hold);
            least(BuiltLimit.PIN_ENDS, spec.clearances().pivotEnd() - off[sizes.pivotLength][0]);
        }
        least(BuiltLimit.HOLD, design.stack().driveEngagement() + off[sizes.driveLength][0] - higher - HOLD * hold / 2);
        least(BuiltLimit.PIN_ENDS, spec.clearances().driveEnd() + off[sizes.wallHeight][0] - off[sizes.driveLength][0]);
    }

    private void heights(double[][] off) {
        Stack stack = design.stack();
        double thickness = spec.thickness() + off[sizes.thickness][0];
        double axial = stack.retainerBottom() - stack.ringTop();
        least(BuiltLimit.FREE, axial + off[sizes.wallHeight][0] - off[sizes.ringThickness][0]);
        double layers = stack.layers() * (thickness + spec.blade().burr());
        least(BuiltLimit.DEPTH, stack.cavity() + off[sizes.cavityHeight][0] - layers);
        double radius = band.inscribedRadius(design.closed());
        least(
                BuiltLimit.BEND,
                Math.toDegrees(STEEPER * spec.blade().slopeLimit() - LeafSlope.slope(n, thickness, radius)));
    }

    private int mesh(Optional<MeshOff> mesh, double[][] off, int from) {
        if (mesh.isEmpty()) {
            return from;
        }
        MeshOff.Margins found = mesh.get().margins(off, 0);
        least(from, found.backlash());
        least(from + 1, found.tips());
        least(from + 2, found.contact());
        return from + BuiltLimit.OF_MESH;
    }
}
