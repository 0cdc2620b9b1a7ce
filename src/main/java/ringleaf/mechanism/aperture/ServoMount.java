// SPDX-License-Identifier: Apache-2.0
package ringleaf.mechanism.aperture;

import java.util.ArrayList;
import java.util.List;
import ringleaf.curve.Circle;
import ringleaf.geom.Point;
import ringleaf.mechanism.Material;
import ringleaf.mechanism.Standoff;
import ringleaf.mechanism.body.ServoOutline;
import ringleaf.part.Finding;
import ringleaf.spec.shared.Screw;
import ringleaf.spec.shared.Servo;

/**
 * How pinion and servo sit: the servo stands behind the base, its output towards +z, its long side along the rim; its
 * ears lie against the back of a servo plate on standoffs, or against packing on the base when there is no room for
 * one. Heights in mm in the mechanism's frame.
 *
 * @param horn whether the pinion is screwed to the servo's horn; else it is bored for the output itself
 * @param pinionBottom lower face of the pinion
 * @param pinionTop upper face
 * @param pinionSheets sheets that make up the pinion, 0 when built up in one piece
 * @param servoGearBottom lower face of the gear on the servo's output: the pinion, or behind the base that of a step-up
 * @param earFace height of the ears' upper face
 * @param caseTop height of the servo's case
 * @param plateThickness of the servo plate, 0 where the servo sits on the base
 * @param standoff length of the standoffs between base and servo plate, or of the packing under the ears
 * @param throughRadius radius of the hole in base, cover and ledge through which horn, output or axle turn
 */
record ServoMount(
        boolean horn,
        double pinionBottom,
        double pinionTop,
        int pinionSheets,
        double servoGearBottom,
        double earFace,
        double caseTop,
        double plateThickness,
        double standoff,
        double throughRadius) {

    /** Between the back of the base and the gears of a step-up, mm. */
    static final double BEHIND = 0.4;

    static ServoMount of(ApertureSpec spec, Stack stack, PinionPlan plan) {
        Servo servo = plan.servo();
        Material gear = spec.gear();
        double top = stack.retainerBottom() - spec.clearances().pinionAxial();
        double need = stack.ringTop() - stack.ringBottom() + spec.clearances().ringAxial();
        double room = top - stack.baseTop() - spec.clearances().pinionAxial();
        int sheets = gear.sheet() ? Math.max(1, (int) Math.ceil(need / gear.thickness() - 1e-9)) : 0;
        if (sheets > 1 && sheets * gear.thickness() > room) {
            // Rather a little of the ring's play uncovered than a pinion that stands in the base.
            sheets = Math.max(1, (int) (room / gear.thickness() + 1e-9));
        }
        double width = sheets > 0 ? sheets * gear.thickness() : need;
        double screwEdge = servo.hornScrewCircle() / 2 + servo.hornScrewHole() / 2 + gear.leastWeb();
        double within = servo.hornScrewCircle() / 2 - servo.hornScrewHole() / 2 - hub(servo);
        // A gear too small for a horn's screws, or horns too small for its webs: it is bored for the output itself.
        boolean horn = plan.servoGear().rootRadius() >= Math.max(screwEdge, servo.hornDiameter() / 2)
                && within >= gear.leastWeb() - Finding.ROUNDING;
        boolean stepUp = plan.stepUp().isPresent();
        if (horn && !stepUp) {
            // A wider pinion carries the horn, and the servo with it, out of the back of the base.
            double most = sheets == 0 ? room : (int) (room / gear.thickness() + 1e-9) * gear.thickness();
            double wider = width(spec, servo, top - servo.hornHeight() - stack.coverBottom(), width, most);
            if (wider > width + 1e-9) {
                sheets = (int) Math.ceil(sheets == 0 ? 0 : wider / gear.thickness() - 1e-9);
                width = sheets == 0 ? wider : sheets * gear.thickness();
            }
        }
        double bottom = top - width;
        double gearTop = stepUp ? stack.coverBottom() - BEHIND : top;
        double gearBottom = gearTop - width;
        double earFace = (horn ? gearBottom : gearTop) - servo.hornHeight();
        double caseTop = earFace + servo.caseHeight();
        double plate = spec.plate().thickness();
        double gap = stack.coverBottom() - earFace;
        boolean hasPlate = gap >= plate;
        double through = (horn ? servo.hornDiameter() / 2 : servo.splineDiameter()) + ServoOutline.ROOM;
        if (stepUp) {
            through = (plan.stepUp().get().axle() + plan.stepUp().get().axleRoom()) / 2;
        }
        return new ServoMount(
                horn,
                bottom,
                top,
                sheets,
                gearBottom,
                earFace,
                caseTop,
                hasPlate ? plate : 0,
                hasPlate ? gap - plate : gap,
                through);
    }

    /**
     * How wide a pinion on a horn is: as it must be where that leaves a servo plate its room, else so wide that a plate
     * goes behind the base on standoffs that are sold and clear of the heads of the ears' screws, else as near to that as
     * there is room for. Ears on the base itself are the last resort: their screws may stand where the horn turns.
     *
     * @param flush width with which the ears lie against the back of the base, mm
     * @param least width
     * @param most width that there is room for
     */
    private static double width(ApertureSpec spec, Servo servo, double flush, double least, double most) {
        double plate = flush + spec.plate().thickness();
        if (plate <= least + 1e-9) {
            return least;
        }
        double head = spec.hardware()
                .screwThrough(servo.holeDiameter(), Double.MAX_VALUE)
                .map(Screw::headHeight)
                .orElse(0.0);
        double standoff =
                Standoff.from("standoff", head, spec.screw(), spec.spacer()).length();
        for (double width : new double[] {plate + standoff, plate + head, plate, flush}) {
            if (width <= most + 1e-9) {
                return Math.max(least, width);
            }
        }
        return Math.max(least, most);
    }

    boolean hasPlate() {
        return plateThickness > 0;
    }

    double pinionWidth() {
        return pinionTop - pinionBottom;
    }

    /** Whether the servo's case stands higher than {@code z}, so that it needs a cut-out there. */
    boolean caseReaches(double z) {
        return caseTop > z + 1e-9;
    }

    /** Radius of the hole in a gear on a horn through which the output's own screw is reached, mm. */
    static double hub(Servo servo) {
        return servo.splineDiameter() / 2 + ServoOutline.ROOM;
    }

    /** Discs round which the servo plate is drawn: its screws and the corners of the ears. */
    static List<Circle> pads(PinionPlan plan, List<Point> screws, double pad, double web) {
        List<Circle> discs = new ArrayList<>();
        for (Point screw : screws) {
            discs.add(new Circle(screw, pad));
        }
        discs.addAll(ears(plan, web + ServoOutline.ROOM));
        return discs;
    }

    /** Discs of this radius about the corners of the ears. */
    static List<Circle> ears(PinionPlan plan, double radius) {
        List<Circle> discs = new ArrayList<>();
        for (Point corner : plan.servoOutline().earCorners()) {
            discs.add(new Circle(corner, radius));
        }
        return discs;
    }
}
