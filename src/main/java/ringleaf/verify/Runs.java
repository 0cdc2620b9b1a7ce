// SPDX-License-Identifier: Apache-2.0
package ringleaf.verify;

import java.util.Arrays;
import java.util.Comparator;

/**
 * An outline's pieces in runs of neighbours, each with its box: most runs of two outlines of many teeth are far from one
 * another, and with a run all of its pieces are.
 */
final class Runs {
    private static final int SHORTEST = 16;

    private final Piece[] pieces;
    private final Run[] runs;
    private final Shape shape;

    /** Pieces from one index to before another, and their box. */
    private record Run(int from, int to, double minX, double minY, double maxX, double maxY) {
        double gap(double x0, double y0, double x1, double y1) {
            double dx = Math.max(0, Math.max(minX - x1, x0 - maxX));
            double dy = Math.max(0, Math.max(minY - y1, y0 - maxY));
            return Math.sqrt(dx * dx + dy * dy);
        }

        double gap(Run other) {
            return gap(other.minX, other.minY, other.maxX, other.maxY);
        }

        double gap(Piece p) {
            return gap(p.minX, p.minY, p.maxX, p.maxY);
        }
    }

    Runs(Shape shape) {
        this.shape = shape;
        pieces = shape.pieces;
        // as many runs as pieces in one, so that looking at all runs and at some of their pieces takes about as long
        int length = Math.max(SHORTEST, (int) Math.sqrt(pieces.length));
        runs = new Run[(pieces.length + length - 1) / length];
        for (int i = 0; i < runs.length; i++) {
            runs[i] = run(i * length, Math.min(pieces.length, (i + 1) * length));
        }
    }

    private Run run(int from, int to) {
        double x0 = Double.POSITIVE_INFINITY;
        double y0 = x0;
        double x1 = -x0;
        double y1 = -x0;
        for (int i = from; i < to; i++) {
            x0 = Math.min(x0, pieces[i].minX);
            y0 = Math.min(y0, pieces[i].minY);
            x1 = Math.max(x1, pieces[i].maxX);
            y1 = Math.max(y1, pieces[i].maxY);
        }
        return new Run(from, to, x0, y0, x1, y1);
    }

    /** What is looked at of an outline, by the index of its pieces from one to before another. */
    interface Look {
        void at(int from, int to);
    }

    /** Looks at the runs that come nearer to a piece than {@code near} mm. */
    void beside(Piece p, double near, Look look) {
        for (Run run : runs) {
            if (run.gap(p) <= near) {
                look.at(run.from, run.to);
            }
        }
    }

    /** Looks at the runs that reach to the height {@code y}. */
    void level(double y, Look look) {
        for (Run run : runs) {
            if (y >= run.minY && y <= run.maxY) {
                look.at(run.from, run.to);
            }
        }
    }

    /** Looks at all pairs of pieces that may come near, those of the nearest runs first. */
    void soonest(Runs other, Nearest nearest) {
        Run[] sorted = runs.clone();
        Arrays.sort(sorted, Comparator.comparingDouble(run -> other.gap(run)));
        Run[] facing = other.runs.clone();
        Arrays.sort(facing, Comparator.comparingDouble(this::gap));
        look(sorted, facing, other, nearest);
    }

    /** The same pairs in the order of the outlines, as if each were looked at with each. */
    void inOrder(Runs other, Nearest nearest) {
        look(runs, other.runs, other, nearest);
    }

    private double gap(Run run) {
        return run.gap(shape.minX, shape.minY, shape.maxX, shape.maxY);
    }

    private void look(Run[] own, Run[] others, Runs other, Nearest nearest) {
        for (Run run : own) {
            if (other.gap(run) < nearest.distance) {
                Run[] near = near(run, others, nearest);
                for (int i = run.from; i < run.to; i++) {
                    look(pieces[i], near, other, nearest);
                }
            }
        }
    }

    private static Run[] near(Run run, Run[] others, Nearest nearest) {
        Run[] near = new Run[others.length];
        int n = 0;
        for (Run each : others) {
            if (run.gap(each) < nearest.distance) {
                near[n++] = each;
            }
        }
        return Arrays.copyOf(near, n);
    }

    private static void look(Piece piece, Run[] near, Runs other, Nearest nearest) {
        for (Run run : near) {
            if (run.gap(piece) < nearest.distance) {
                for (int i = run.from; i < run.to; i++) {
                    nearest.between(piece, other.pieces[i]);
                }
            }
        }
    }
}
