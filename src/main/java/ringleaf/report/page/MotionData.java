// SPDX-License-Identifier: Apache-2.0
package ringleaf.report.page;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import ringleaf.draw.Decimals;
import ringleaf.geom.Placement;
import ringleaf.geom.Point;
import ringleaf.part.Motion;

/**
 * The motion of a mechanism as few whole numbers, for a page that plays it: angles in ten thousandths of a degree and
 * shifts in ten thousandths of a millimetre, each as the difference from the state before, after rounding, so that
 * rounding never adds up. A body that only turns about a fixed point is that point and a list of turns, and bodies that
 * turn alike share the list. Error: 5e-5 degrees, 5e-5 mm, and for fixed points {@link #FIXED}.
 */
final class MotionData {
    /** Decimals of degrees and millimetres. */
    static final int DECIMALS = 4;
    /** A pivot counts as fixed when no state moves it by more than this, mm; far below what a page shows. */
    static final double FIXED = 1e-5;
    /** More states than this are thinned out for the page; the table in motion/ has all. */
    static final int MOST_STATES = 361;

    private final Motion motion;
    private final int[] states;
    private final List<long[]> series = new ArrayList<>();
    /** Angles of the body last looked at, rad, and what follows from them. */
    private double[] turned;

    private double[] cos;
    private double[] sin;
    private int widest;
    private int turns;

    MotionData(Motion motion) {
        this.motion = motion;
        this.states = states(motion);
    }

    /** The states that the page shows, in order: all, or evenly spaced ones with the notable ones among them. */
    int[] states() {
        return states;
    }

    private static int[] states(Motion motion) {
        int last = motion.states() - 1;
        int stride = Math.max(1, (last + MOST_STATES - 2) / (MOST_STATES - 1));
        boolean[] kept = new boolean[last + 1];
        for (int state = 0; state <= last; state += stride) {
            kept[state] = true;
        }
        kept[last] = true;
        for (int state : motion.notable()) {
            kept[state] = true;
        }
        int count = 0;
        for (boolean one : kept) {
            count += one ? 1 : 0;
        }
        int[] states = new int[count];
        count = 0;
        for (int state = 0; state <= last; state++) {
            if (kept[state]) {
                states[count++] = state;
            }
        }
        return states;
    }

    /**
     * Appends {@code "bodies":[...],"series":[...]}: a body is {@code []} where it stands still, {@code [turns, x, y]}
     * where it turns about a fixed point, and {@code [turns, [xs, ys]]} with numbers of series where it is shifted too.
     *
     * @param bodies number of bodies, body 0 included
     */
    void append(StringBuilder out, int bodies) {
        out.append("\"bodies\":[");
        for (int body = 0; body < bodies; body++) {
            out.append(body == 0 ? "" : ",");
            body(out, body);
        }
        out.append("],\"series\":[");
        for (int i = 0; i < series.size(); i++) {
            out.append(i == 0 ? "[" : ",[");
            long before = 0;
            long[] own = series.get(i);
            for (int k = 0; k < own.length; k++) {
                out.append(k == 0 ? "" : ",").append(own[k] - before);
                before = own[k];
            }
            out.append(']');
        }
        out.append(']');
    }

    private void body(StringBuilder out, int body) {
        double[] angle = new double[states.length];
        double[] x = new double[states.length];
        double[] y = new double[states.length];
        boolean still = true;
        for (int i = 0; i < states.length; i++) {
            Placement pose = motion.pose(body, states[i]);
            angle[i] = pose.angle();
            x[i] = pose.shift().x();
            y[i] = pose.shift().y();
            still &= angle[i] == 0 && x[i] == 0 && y[i] == 0;
        }
        if (still) {
            out.append("[]");
            return;
        }
        if (!Arrays.equals(angle, turned)) {
            turn(angle);
        }
        out.append('[').append(turns).append(',');
        Point pivot = pivot(angle[widest], new Point(x[widest], y[widest]));
        if (pivot != null && isFixed(pivot, x, y)) {
            PageText.number(out, pivot.x(), 6).append(',');
            PageText.number(out, pivot.y(), 6).append(']');
        } else {
            out.append('[')
                    .append(index(whole(x)))
                    .append(',')
                    .append(index(whole(y)))
                    .append("]]");
        }
    }

    /** Takes up other angles: bodies that turn alike follow one another, and share what is worked out here. */
    private void turn(double[] angle) {
        turned = angle;
        cos = new double[angle.length];
        sin = new double[angle.length];
        widest = 0;
        double[] degrees = new double[angle.length];
        for (int i = 0; i < angle.length; i++) {
            cos[i] = Math.cos(angle[i]);
            sin[i] = Math.sin(angle[i]);
            degrees[i] = Math.toDegrees(angle[i]);
            // 1 - cos a is 2 sin²(a/2): the state in which a pivot shows best.
            widest = cos[i] < cos[widest] ? i : widest;
        }
        turns = index(whole(degrees));
    }

    private static long[] whole(double[] values) {
        long[] whole = new long[values.length];
        for (int i = 0; i < whole.length; i++) {
            whole[i] = Decimals.scaled(values[i], DECIMALS);
        }
        return whole;
    }

    /** The point that a turn with a shift leaves where it is; null for next to no turn. */
    private static Point pivot(double angle, Point shift) {
        double half = Math.sin(angle / 2);
        if (Math.abs(half) < 1e-4) {
            return null;
        }
        // p - R p = shift; the chord from p to R p is 2 sin(a/2) long, a quarter turn and a/2 from the radius.
        double cot = Math.cos(angle / 2) / half;
        return new Point((shift.x() - cot * shift.y()) / 2, (shift.y() + cot * shift.x()) / 2);
    }

    private boolean isFixed(Point pivot, double[] x, double[] y) {
        for (int i = 0; i < x.length; i++) {
            double offX = pivot.x() - cos[i] * pivot.x() + sin[i] * pivot.y() - x[i];
            double offY = pivot.y() - sin[i] * pivot.x() - cos[i] * pivot.y() - y[i];
            if (Math.abs(offX) > FIXED || Math.abs(offY) > FIXED) {
                return false;
            }
        }
        return true;
    }

    private int index(long[] wanted) {
        for (int i = 0; i < series.size(); i++) {
            if (Arrays.equals(series.get(i), wanted)) {
                return i;
            }
        }
        series.add(wanted);
        return series.size() - 1;
    }
}
