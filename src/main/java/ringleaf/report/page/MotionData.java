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
        Point[] shift = new Point[states.length];
        boolean still = true;
        int widest = 0;
        for (int i = 0; i < states.length; i++) {
            Placement pose = motion.pose(body, states[i]);
            angle[i] = pose.angle();
            shift[i] = pose.shift();
            still &= angle[i] == 0 && shift[i].x() == 0 && shift[i].y() == 0;
            if (Math.abs(Math.sin(angle[i] / 2)) > Math.abs(Math.sin(angle[widest] / 2))) {
                widest = i;
            }
        }
        if (still) {
            out.append("[]");
            return;
        }
        long[] turns = new long[states.length];
        for (int i = 0; i < turns.length; i++) {
            turns[i] = Decimals.scaled(Math.toDegrees(angle[i]), DECIMALS);
        }
        out.append('[').append(index(turns)).append(',');
        Point pivot = pivot(angle[widest], shift[widest]);
        if (pivot != null && isFixed(pivot, angle, shift)) {
            PageText.number(out, pivot.x(), 6).append(',');
            PageText.number(out, pivot.y(), 6).append(']');
            return;
        }
        long[] xs = new long[states.length];
        long[] ys = new long[states.length];
        for (int i = 0; i < turns.length; i++) {
            xs[i] = Decimals.scaled(shift[i].x(), DECIMALS);
            ys[i] = Decimals.scaled(shift[i].y(), DECIMALS);
        }
        out.append('[').append(index(xs)).append(',').append(index(ys)).append("]]");
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

    private static boolean isFixed(Point pivot, double[] angle, Point[] shift) {
        for (int i = 0; i < angle.length; i++) {
            Point off = Placement.turnAbout(pivot, angle[i]).shift().minus(shift[i]);
            if (Math.abs(off.x()) > FIXED || Math.abs(off.y()) > FIXED) {
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
