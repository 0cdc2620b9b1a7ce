// SPDX-License-Identifier: Apache-2.0
package ringleaf.leaf;

import java.util.Arrays;

/**
 * One blade seen on circles about the axis. Between two neighbouring critical radii (tangencies and joints of the
 * outline) a circle of radius rho meets the blade in the same few arcs of angle, whose ends are
 * {@code base ± acos((rho² + d² - R²)/(2 rho d))} for the outline arc they lie on, and every end runs one way only.
 * Such a range of radii is a <em>zone</em>. Plain arrays, filled again for every pose.
 */
final class BladeZones {
    /** The opening's own arc: the figure bounded by the inner edges, taken as one more cover. */
    static final int OPENING = 4;

    private static final int MOST_ZONES = 24;
    private static final int MOST_ARCS = 5;
    /** Zones thinner than this share of the pivot radius are rounding. */
    private static final double THIN = 1e-13;

    final BladeArcs arcs = new BladeArcs();
    int zones;
    final double[] from = new double[MOST_ZONES];
    final double[] to = new double[MOST_ZONES];
    /** Number of arcs in a zone; -1 when all of its circles lie in the blades or in the opening. */
    final int[] count = new int[MOST_ZONES];
    /** Outline arc and base angle of where each arc of angle starts and ends; index zone * MOST_ARCS + arc. */
    final int[] startOn = new int[MOST_ZONES * MOST_ARCS];

    final int[] endOn = new int[MOST_ZONES * MOST_ARCS];
    final double[] startBase = new double[MOST_ZONES * MOST_ARCS];
    final double[] endBase = new double[MOST_ZONES * MOST_ARCS];

    private final double[] critical = new double[MOST_ZONES];
    /** Turns of the four outline arcs at each critical radius, not a number until asked for. */
    private final double[] turnAt = new double[MOST_ZONES * BladeArcs.COUNT];

    private final int[] fromAt = new int[MOST_ZONES];
    private final int[] toAt = new int[MOST_ZONES];
    private int criticals;
    private final double[] crossAngle = new double[2 * BladeArcs.COUNT];
    private final double[] crossBase = new double[2 * BladeArcs.COUNT];
    private final int[] crossOn = new int[2 * BladeArcs.COUNT];
    private final boolean[] crossStarts = new boolean[2 * BladeArcs.COUNT];
    private double period;
    private double scale;

    static int first(int zone) {
        return zone * MOST_ARCS;
    }

    /**
     * Cuts the radii from {@code low} to {@code high} mm into zones for the blade as posed in {@link #arcs}.
     *
     * @param corner corner radius of the opening when it is to count as cover, else 0
     */
    void cut(Band band, double low, double high, double corner) {
        period = band.period();
        scale = band.pivotRadius();
        zones = 0;
        if (!(high > low)) {
            return;
        }
        criticals = 0;
        keep(low);
        keep(high);
        mark(corner, low, high);
        for (int i = 0; i < BladeArcs.COUNT; i++) {
            double d = arcs.dist[i];
            double r = arcs.rad[i];
            if (arcs.holdsRay(i, 1)) {
                mark(d + r, low, high);
            }
            if (arcs.holdsRay(i, -1)) {
                mark(Math.abs(d - r), low, high);
            }
            if (d > r) {
                // Where a ray from the axis touches the circle the end turns back.
                mark(Math.sqrt((d - r) * (d + r)), low, high);
            }
            mark(arcs.joint[i], low, high);
        }
        Arrays.fill(turnAt, 0, criticals * BladeArcs.COUNT, Double.NaN);
        for (int i = 0; i + 1 < criticals; i++) {
            if (critical[i + 1] - critical[i] > THIN * scale) {
                fromAt[zones] = i;
                toAt[zones] = i + 1;
                add(critical[i], critical[i + 1], corner);
            }
        }
    }

    private void mark(double radius, double low, double high) {
        if (radius > low && radius < high) {
            keep(radius);
        }
    }

    private void keep(double radius) {
        int i = criticals++;
        while (i > 0 && critical[i - 1] > radius) {
            critical[i] = critical[i - 1];
            i--;
        }
        critical[i] = radius;
    }

    private void add(double low, double high, double corner) {
        double rho = (low + high) / 2;
        int crossings = cross(rho);
        int zone = zones++;
        from[zone] = low;
        to[zone] = high;
        int arc = first(zone);
        if (crossings == 0) {
            count[zone] = arcs.covers(rho, 0) ? -1 : 0;
        } else {
            for (int i = 0; i < crossings; i++) {
                int next = i + 1 < crossings ? i + 1 : 0;
                if (crossStarts[i] && !crossStarts[next]) {
                    startOn[arc] = crossOn[i];
                    startBase[arc] = crossBase[i];
                    endOn[arc] = crossOn[next];
                    endBase[arc] = crossBase[next] + (next > i ? 0 : 2 * Math.PI);
                    arc++;
                }
            }
            count[zone] = arc - first(zone);
        }
        if (rho < corner && isInnerEdgeAlone(zone)) {
            // What is not in the opening lies beyond some blade's inner edge, and all of that is this blade.
            count[zone] = -1;
        } else if (rho < corner && count[zone] >= 0) {
            // Beyond the inscribed circle the opening lies between the inner edges of two neighbours.
            startOn[arc] = OPENING;
            startBase[arc] = arcs.phi[BladeArcs.INNER] + 2 * Math.PI;
            endOn[arc] = OPENING;
            endBase[arc] = arcs.phi[BladeArcs.INNER] + period;
            count[zone]++;
        }
    }

    /** Whether the blade covers all that lies beyond its inner edge on the circles of a zone, and nothing else. */
    private boolean isInnerEdgeAlone(int zone) {
        int arc = first(zone);
        return count[zone] == 1 && startOn[arc] == BladeArcs.INNER && endOn[arc] == BladeArcs.INNER;
    }

    /** Where the circle of radius rho meets the outline, in order of angle; each either enters or leaves the blade. */
    private int cross(double rho) {
        int n = 0;
        for (int i = 0; i < BladeArcs.COUNT; i++) {
            double d = arcs.dist[i];
            double r = arcs.rad[i];
            double cos = ((rho - r) * (rho + r) + d * d) / (2 * rho * d);
            if (!(Math.abs(cos) < 1)) {
                continue;
            }
            double sin = Math.sqrt((1 - cos) * (1 + cos));
            for (int side = -1; side <= 1; side += 2) {
                // From the arc's centre to the crossing, in the frame of the centre's own ray.
                double along = rho * cos - d;
                double across = side * rho * sin;
                double ux = along * arcs.cosPhi[i] - across * arcs.sinPhi[i];
                double uy = along * arcs.sinPhi[i] + across * arcs.cosPhi[i];
                if (ux * arcs.midX[i] + uy * arcs.midY[i] >= arcs.cosHalf[i] * r) {
                    double x = arcs.cosPhi[i] * cos - arcs.sinPhi[i] * side * sin;
                    double y = arcs.sinPhi[i] * cos + arcs.cosPhi[i] * side * sin;
                    n = insert(n, i, side, x, y);
                }
            }
        }
        return n;
    }

    /** Keeps the crossings in order of angle; a stand-in that grows with the angle saves the arc cosine. */
    private int insert(int n, int on, int side, double x, double y) {
        double angle = y >= 0 ? 1 - x : 3 + x;
        double phi = arcs.phi[on];
        // The base is such that base + side * turn lies in [0, 2 pi): the turn is in (0, pi), phi in (-pi, pi].
        boolean below = phi > 0 ? side < 0 && y < 0 : side < 0 || y < 0;
        double base = below ? phi + 2 * Math.PI : phi;
        boolean starts = (side < 0) != (on == BladeArcs.INNER);
        int i = n;
        while (i > 0 && crossAngle[i - 1] > angle) {
            crossAngle[i] = crossAngle[i - 1];
            crossBase[i] = crossBase[i - 1];
            crossOn[i] = crossOn[i - 1];
            crossStarts[i] = crossStarts[i - 1];
            i--;
        }
        crossAngle[i] = angle;
        crossBase[i] = base;
        crossOn[i] = on;
        crossStarts[i] = starts;
        return n + 1;
    }

    /** The sign of the turn with which an arc of angle starts on this outline arc; its end's is the opposite. */
    static int startSign(int on) {
        return on == BladeArcs.INNER ? 1 : -1;
    }

    /** Outline arc on which a cover's end lies; the opening's is the inner edge. */
    static int carrier(int on) {
        return on == OPENING ? BladeArcs.INNER : on;
    }

    /** Where the arcs of angle of a zone start and end on the circle of radius rho, rad. */
    void ends(int zone, double rho, double[] starts, double[] stops) {
        int k0 = first(zone);
        for (int i = 0; i < count[zone]; i++) {
            int k = k0 + i;
            double turn = turn(startOn[k], rho);
            starts[i] = startBase[k] + startSign(startOn[k]) * turn;
            if (carrier(endOn[k]) != carrier(startOn[k])) {
                turn = turn(endOn[k], rho);
            }
            stops[i] = endBase[k] - startSign(endOn[k]) * turn;
        }
    }

    /** The same on the zone's least circle (or its greatest), from the table. */
    void ends(int zone, boolean greatest, double[] starts, double[] stops) {
        int k0 = first(zone);
        int row = BladeArcs.COUNT * (greatest ? toAt[zone] : fromAt[zone]);
        double rho = greatest ? to[zone] : from[zone];
        for (int i = 0; i < count[zone]; i++) {
            int k = k0 + i;
            starts[i] = startBase[k] + startSign(startOn[k]) * turnAt(row, startOn[k], rho);
            stops[i] = endBase[k] - startSign(endOn[k]) * turnAt(row, endOn[k], rho);
        }
    }

    private double turnAt(int row, int on, double rho) {
        int i = row + carrier(on);
        if (Double.isNaN(turnAt[i])) {
            turnAt[i] = turn(on, rho);
        }
        return turnAt[i];
    }

    private double turn(int on, double rho) {
        int i = carrier(on);
        double d = arcs.dist[i];
        double r = arcs.rad[i];
        double cos = ((rho - r) * (rho + r) + d * d) / (2 * rho * d);
        return Math.acos(Math.max(-1, Math.min(1, cos)));
    }

    /**
     * The integral of rho times the turn from rho1 to rho2: half the growth of the lens that the circle about the
     * axis and the outline arc's circle have in common, since the lens grows by 2 rho acos(...) per mm.
     */
    double turnIntegral(int on, double rho1, double rho2) {
        int i = carrier(on);
        return (lens(arcs.dist[i], arcs.rad[i], rho2) - lens(arcs.dist[i], arcs.rad[i], rho1)) / 2;
    }

    private static double lens(double d, double r, double rho) {
        double cos1 = Math.max(-1, Math.min(1, ((rho - r) * (rho + r) + d * d) / (2 * rho * d)));
        double cos2 = Math.max(-1, Math.min(1, ((r - rho) * (r + rho) + d * d) / (2 * r * d)));
        double kite = (r + rho - d) * (r - rho + d) * (rho - r + d) * (r + rho + d);
        return rho * rho * Math.acos(cos1) + r * r * Math.acos(cos2) - Math.sqrt(Math.max(0, kite)) / 2;
    }

    /**
     * Radii at which the carrier of one end meets that of another turned on by {@code turned} rad: up to two, written
     * to {@code out} from {@code n} on when they lie between the bounds; gives the new count.
     */
    int meet(int on1, int on2, double turned, double low, double high, double[] out, int n) {
        int i = carrier(on1);
        int j = carrier(on2);
        double d1 = arcs.dist[i];
        double d2 = arcs.dist[j];
        double r1 = arcs.rad[i];
        double r2 = arcs.rad[j];
        double delta = arcs.phi[j] + turned - arcs.phi[i];
        double x = d2 * Math.cos(delta) - d1;
        double y = d2 * Math.sin(delta);
        double apart2 = x * x + y * y;
        double along = (apart2 + (r1 - r2) * (r1 + r2)) / 2;
        double high2 = r1 * r1 * apart2 - along * along;
        if (!(high2 > 0) || !(apart2 > 0)) {
            return n;
        }
        double across = Math.sqrt(high2);
        int found = n;
        for (int side = -1; side <= 1; side += 2) {
            double px = d1 + (along * x - side * across * y) / apart2;
            double py = (along * y + side * across * x) / apart2;
            double rho = Math.sqrt(px * px + py * py);
            if (rho > low && rho < high) {
                out[found++] = rho;
            }
        }
        return found;
    }
}
