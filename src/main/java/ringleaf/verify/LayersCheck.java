// SPDX-License-Identifier: Apache-2.0
package ringleaf.verify;

import java.util.List;
import ringleaf.geom.Point;
import ringleaf.part.Finding;
import ringleaf.part.LeafFamily;
import ringleaf.part.Requirement;

/**
 * The leaves' room holds as many as lie over one point. Where most of them lie over one another, the common area has
 * a corner at which two of their outlines cross, or is one whole leaf; so it is enough to count a hair inside the
 * crossings, and inside each leaf. Areas narrower than the hair are not counted.
 */
final class LayersCheck extends Check {
    private final Requirement.LeavesFit required;
    private final LeafFamily family;
    /** What one leaf takes: what is required, or its own height where it came out thicker, mm. */
    private final double each;

    LayersCheck(Scene scene, Requirement.LeavesFit required, LeafFamily family) {
        super(scene);
        this.required = required;
        this.family = family;
        double height = required.each();
        for (Slab slab : scene.slabs) {
            height = slab.leafy ? Math.max(height, slab.zTo - slab.zFrom) : height;
        }
        this.each = height;
    }

    @Override
    Measure measure(Pose pose, Figures figures) {
        Leaves leaves = new Leaves(scene, pose, family);
        Count count = new Count(leaves);
        int sources = leaves.alike() ? 1 : leaves.count();
        for (int i = 0; i < sources; i++) {
            count.insideOf(i);
            for (int j = 0; j < leaves.count(); j++) {
                if (j != i) {
                    count.crossings(i, j);
                }
            }
        }
        figures.leafLayers = count.most;
        double needed = count.most * each + required.play();
        double room = family.zTo() - family.zFrom();
        return new Measure(pose.state, room - needed, room, needed, Place.of(family.name(), count.at));
    }

    @Override
    void conclude(Measure[] measures, List<Finding> findings) {
        Measure worst = Measure.worst(measures, scene.hair);
        double stacked = worst.limit() - required.play();
        findings.add(on(required.check(), worst)
                .room(worst.value(), stacked, worst.limit(), "mm")
                .says(
                        "verify.layers",
                        Math.round(stacked / each),
                        family.name(),
                        Words.mm(each),
                        Words.mm(required.play()),
                        Words.mm(worst.limit()),
                        Words.mm(worst.value()),
                        scene.judged()));
    }

    /** Counts leaves over points and keeps the most. */
    private final class Count {
        final Leaves leaves;
        final double hair = scene.tolerance / 4;
        final double[] crossings = new double[4];
        int most;
        Point at = Point.ORIGIN;

        Count(Leaves leaves) {
            this.leaves = leaves;
        }

        void over(double x, double y) {
            int n = 0;
            for (int k = 0; k < leaves.count(); k++) {
                n += leaves.covers(k, x, y) ? 1 : 0;
            }
            if (n > most) {
                most = n;
                at = new Point(x, y);
            }
        }

        void insideOf(int leaf) {
            for (Shape shape : leaves.shapes(leaf)) {
                Point middle = shape.pieces[0].middle();
                Point in = shape.pieces[0].leftNormal(middle.x(), middle.y()).times(hair);
                over(middle.x() + in.x(), middle.y() + in.y());
            }
        }

        void crossings(int i, int j) {
            for (Shape a : leaves.shapes(i)) {
                for (Shape b : leaves.shapes(j)) {
                    if (a.gapTo(b) == 0) {
                        crossings(a, b);
                    }
                }
            }
        }

        private void crossings(Shape a, Shape b) {
            for (Piece p : a.pieces) {
                if (b.gapTo(p) > 0) {
                    continue;
                }
                for (Piece q : b.pieces) {
                    int n = Piece.gap(p, q) > 0 ? 0 : Crossing.points(p, q, crossings);
                    for (int k = 0; k < n; k++) {
                        inside(p, q, crossings[2 * k], crossings[2 * k + 1]);
                    }
                }
            }
        }

        /** The point a hair inside both outlines; none when they only touch. */
        private void inside(Piece p, Piece q, double x, double y) {
            Point sum = p.leftNormal(x, y).plus(q.leftNormal(x, y));
            double square = sum.dot(sum);
            if (square > 1e-6) {
                Point in = sum.times(2 * hair / square);
                over(x + in.x(), y + in.y());
            }
        }
    }
}
