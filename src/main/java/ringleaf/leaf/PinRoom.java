// SPDX-License-Identifier: Apache-2.0
package ringleaf.leaf;

/**
 * How far a drive pin on a lever stands from the other blades. A blade passes over the roots of its neighbours, so a
 * pin at the root reaches the ring only where none of the others comes. In the open pose the others cover every
 * direction from the inner edge to the outer one, so such a pin stands outside them, for inside them it would stand
 * in the clear opening. Not for several threads at once.
 */
public final class PinRoom {
    /** Steps of the travel between which the nearest state is sought; assumed, compared with the judge. */
    private static final int STEPS = 12;
    /** Each takes a third off the part of a step in which the nearest state lies. */
    private static final int THIRDS = 12;

    private double[] cos = new double[0];
    private double[] sin = new double[0];
    private Band band;
    private double ear;
    private double length;
    /** Directions in the open pose, about the pivot of the lever, about the axis of the band's end and middle. */
    private double armCos;

    private double armSin;
    private double spanCos;
    private double spanSin;
    private double midCos;
    private double midSin;
    /** Cosine of half the band's span. */
    private double halfCos;
    /** Step of the travel at which a search with a limit last ended early; the next is likely to end there too. */
    private int ended;

    /**
     * Least length of a lever at an angle to the outward radial, rad, whose pin in the open pose stands {@code room} mm
     * outside the circle that the blades' outer edges lie on.
     */
    static double leastLength(Band band, double angle, double room) {
        double far = band.outerRadius() + room;
        double along = band.pivotRadius() * Math.cos(angle);
        double across = band.pivotRadius() * Math.sin(angle);
        return Math.sqrt(far * far - across * across) - along;
    }

    /**
     * Least distance over the travel from the pin's middle to another blade's outline, mm; below 0 inside one.
     *
     * @param radius of the blades' ears at pivot and pin, mm, 0 for none
     * @param closed blade angle at the end of the travel, rad
     */
    public double least(Band blades, DrivePin drive, double radius, double closed) {
        set(blades, drive, radius);
        return least(closed, Double.NEGATIVE_INFINITY);
    }

    /** Whether that distance is {@code enough}; the first state at which it is not ends the search. */
    boolean keeps(Band blades, DrivePin drive, double radius, double closed, double enough) {
        set(blades, drive, radius);
        return at(closed * ended / STEPS) >= enough && least(closed, enough) >= enough;
    }

    private double least(double closed, double enough) {
        double least = Double.MAX_VALUE;
        int nearest = 0;
        for (int i = 0; i <= STEPS; i++) {
            double found = at(closed * i / STEPS);
            nearest = found < least ? i : nearest;
            least = Math.min(least, found);
            if (found < enough) {
                ended = i;
                return found;
            }
        }
        double low = closed * Math.max(0, nearest - 1) / STEPS;
        double high = closed * Math.min(STEPS, nearest + 1) / STEPS;
        for (int i = 0; i < THIRDS; i++) {
            double third = (high - low) / 3;
            double one = at(low + third);
            double two = at(high - third);
            least = Math.min(least, Math.min(one, two));
            if (one < two) {
                high -= third;
            } else {
                low += third;
            }
        }
        return least;
    }

    private void set(Band blades, DrivePin drive, double radius) {
        band = blades;
        ear = radius;
        length = drive.length(blades);
        armCos = Math.cos(drive.angle(blades));
        armSin = Math.sin(drive.angle(blades));
        spanCos = Math.cos(blades.span());
        spanSin = Math.sin(blades.span());
        midCos = Math.cos(blades.span() / 2);
        midSin = Math.sin(blades.span() / 2);
        halfCos = midCos;
        if (cos.length != blades.blades()) {
            cos = new double[blades.blades()];
            sin = new double[blades.blades()];
            for (int k = 0; k < cos.length; k++) {
                cos[k] = Math.cos(k * blades.period());
                sin[k] = Math.sin(k * blades.period());
            }
        }
    }

    /** Distance from the axis to the hull of root and ear of a blade turned by {@code b}, mm; below 0 inside it. */
    double toAxis(Band blades, DrivePin drive, double radius, double b) {
        ear = radius;
        double length = drive.length(blades);
        double direction = drive.angle(blades) + b;
        double along = -blades.pivotRadius() * Math.cos(direction);
        double beside = blades.pivotRadius() * Math.abs(Math.sin(direction));
        return toHull(along, beside, length, Math.max(blades.width() / 2, radius));
    }

    /** Distance from the pin's middle to the nearest other blade in one pose, mm; found on the first blade's frame. */
    private double at(double b) {
        double rp = band.pivotRadius();
        double half = band.width() / 2;
        double cb = Math.cos(b);
        double sb = Math.sin(b);
        double armX = armCos * cb - armSin * sb;
        double armY = armSin * cb + armCos * sb;
        double x = rp + length * armX;
        double y = length * armY;
        double centreX = rp * (1 - cb);
        double centreY = -rp * sb;
        double endX = centreX + rp * (spanCos * cb - spanSin * sb);
        double endY = centreY + rp * (spanSin * cb + spanCos * sb);
        double midX = midCos * cb - midSin * sb;
        double midY = midSin * cb + midCos * sb;
        double root = Math.max(half, ear);
        double least = Double.MAX_VALUE;
        for (int k = 1; k < cos.length; k++) {
            double px = x * cos[k] - y * sin[k];
            double py = x * sin[k] + y * cos[k];
            double dx = px - centreX;
            double dy = py - centreY;
            double r = Math.sqrt(dx * dx + dy * dy);
            double toArc;
            if (dx * midX + dy * midY >= halfCos * r) {
                toArc = Math.abs(r - rp);
            } else {
                double toRoot = (px - rp) * (px - rp) + py * py;
                double toEnd = (px - endX) * (px - endX) + (py - endY) * (py - endY);
                toArc = Math.sqrt(Math.min(toRoot, toEnd));
            }
            least = Math.min(least, toArc - half);
            if (ear > 0) {
                double qx = px - rp;
                double near = length + root + Math.max(0, least);
                if (qx * qx + py * py < near * near) {
                    double along = qx * armX + py * armY;
                    double beside = Math.abs(qx * armY - py * armX);
                    least = Math.min(least, toHull(along, beside, length, root));
                }
            }
        }
        return least;
    }

    /** Distance to the hull of the root's disc and the pin's ear, which is no larger, seen from the root's middle. */
    private double toHull(double along, double beside, double length, double root) {
        double slope = (root - ear) / length;
        if (slope >= 1) {
            return Math.sqrt(along * along + beside * beside) - root;
        }
        double flank = Math.sqrt(1 - slope * slope);
        double foot = flank * along - slope * beside;
        if (foot < 0) {
            return Math.sqrt(along * along + beside * beside) - root;
        }
        if (foot > flank * length) {
            double past = along - length;
            return Math.sqrt(past * past + beside * beside) - ear;
        }
        return flank * beside + slope * along - root;
    }
}
