// SPDX-License-Identifier: Apache-2.0
package ringleaf.verify;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import ringleaf.curve.Circle;
import ringleaf.curve.Shapes;
import ringleaf.geom.Angles;
import ringleaf.geom.Point;
import ringleaf.geom.Region;
import ringleaf.part.LeafFamily;
import ringleaf.part.Saying;

/**
 * Which leaf lies over which, and what it takes to slip one in under others.
 *
 * <p>Seen from the origin every leaf covers a range of directions; the ranges are equal, a pitch apart in laying order.
 * Of two leaves over one direction the one whose range has begun later lies above: over the one laid before it, and,
 * where the circle closes, the first ones laid over the last. So a leaf goes under one that is there already when that
 * one comes after it in the circle by fewer pitches than a range is wide, and the two share an area.
 */
final class LeafRule {
    private static final int SAMPLES = 32;
    /** Directions, from straight in, in which the pin of a leaf may come to its bore, rad. */
    private static final double[] ASIDE = {0, 0.35, -0.35, 0.7, -0.7, 1.05, -1.05};

    private final Scene scene;
    private final LeafFamily family;
    private final Function<Slab, Shape> shapes;
    private final int[] slabs;
    private final int[] order;
    private final double pitch;
    private final double range;
    /** Least and greatest direction of the first leaf, rad. */
    private final double[] first;

    /** Sense of laying: 1 counter-clockwise, -1 clockwise. */
    private final double sense;

    /**
     * @param shapes of slabs in their places
     * @param slabs index of each member's first slab
     */
    LeafRule(Scene scene, LeafFamily family, Function<Slab, Shape> shapes, int[] slabs) {
        this.scene = scene;
        this.family = family;
        this.shapes = shapes;
        this.slabs = slabs;
        this.order = new int[scene.assembly.members().size()];
        java.util.Arrays.fill(order, -1);
        for (int i = 0; i < family.members().size(); i++) {
            order[family.members().get(i)] = i;
        }
        this.pitch = Angles.TURN / family.members().size();
        this.first = extent(shape(family.members().get(0)));
        this.range = first[1] - first[0];
        Point one = middle(shape(family.members().get(0)));
        Point next = middle(shape(family.members().get(1)));
        this.sense = Math.signum(Angles.signed(next.angle() - one.angle()));
    }

    private static Point middle(Shape shape) {
        return new Point((shape.minX + shape.maxX) / 2, (shape.minY + shape.maxY) / 2);
    }

    /**
     * Whether {@code upper} lies over {@code lower} in the direction of a point: two long leaves meet in two places, and
     * the one that is above in the one is below in the other.
     */
    private boolean liesOver(int upper, int lower, Point at) {
        return begun(upper, at) < begun(lower, at);
    }

    /** How far in the sense of laying the leaf's range has begun before the direction of the point, rad. */
    private double begun(int leaf, Point at) {
        double begin = (sense > 0 ? first[0] : first[1]) + sense * pitch * order[leaf];
        double begun = Angles.positive(sense * (at.angle() - begin));
        // A point beside either end of the range counts with the nearer one.
        return begun > (range + Angles.TURN) / 2 ? begun - Angles.TURN : begun;
    }

    boolean isLeaf(int member) {
        return order[member] >= 0;
    }

    private Slab leaf(int member) {
        for (int i = slabs[member]; i < slabs[member + 1]; i++) {
            if (scene.slabs.get(i).leafy) {
                return scene.slabs.get(i);
            }
        }
        throw new IllegalStateException(
                scene.assembly.members().get(member).name() + " has no level in the leaves' room");
    }

    private Shape shape(int member) {
        return shapes.apply(leaf(member));
    }

    /** The least and greatest direction in which the origin sees the shape, rad, by points along its outline. */
    private static double[] extent(Shape shape) {
        double last = Math.atan2(shape.pieces[0].y0, shape.pieces[0].x0);
        double at = last;
        double least = at;
        double most = at;
        for (int i = 0; i < shape.starts[1]; i++) {
            Piece p = shape.pieces[i];
            double start = Math.atan2(p.y0 - p.cy, p.x0 - p.cx);
            for (int k = 1; k <= SAMPLES; k++) {
                double share = (double) k / SAMPLES;
                double turned = start + p.turn * share * (p.isLine() ? 0 : p.sweep());
                double x = p.isLine() ? p.x0 + share * (p.x1 - p.x0) : p.cx + p.r * Math.cos(turned);
                double y = p.isLine() ? p.y0 + share * (p.y1 - p.y0) : p.cy + p.r * Math.sin(turned);
                double next = Math.atan2(y, x);
                at += Angles.signed(next - last);
                last = next;
                least = Math.min(least, at);
                most = Math.max(most, at);
            }
        }
        return new double[] {least, most};
    }

    /** Those of the members present under which the leaf has to go. */
    List<Integer> over(int leaf, List<Integer> present) {
        List<Integer> over = new ArrayList<>();
        int n = family.members().size();
        for (int other : present) {
            if (!isLeaf(other)) {
                continue;
            }
            int after = Math.floorMod(order[other] - order[leaf], n);
            if (after * pitch < range && shares(shape(leaf), shape(other))) {
                over.add(other);
            }
        }
        return over;
    }

    private boolean shares(Shape a, Shape b) {
        return a.gapTo(b) == 0 && SharedArea.of(a, b, scene.tolerance / 1000) > scene.tolerance * scene.tolerance;
    }

    /** By how much the leaves above have to be lifted: the leaf and what stands below it pass under, mm. */
    double lift(int leaf, List<Slab> moving) {
        Slab own = leaf(leaf);
        double lowest = own.zFrom;
        for (Slab slab : moving) {
            lowest = Math.min(lowest, slab.zFrom);
        }
        return own.zTo - lowest;
    }

    /** What hinders the leaf from being slipped under the others; null when nothing does. */
    Obstacle obstacle(int leaf, List<Integer> over, List<Slab> moving, List<Slab> present) {
        Slab own = leaf(leaf);
        for (Slab slab : moving) {
            if (!slab.leafy && slab.zTo > own.zTo + scene.hair) {
                Shape stud = shapes.apply(slab);
                for (int other : over) {
                    if (liesOver(other, leaf, middle(stud)) && shares(stud, shape(other))) {
                        return pinned(leaf, other, slab.member, true);
                    }
                }
            }
        }
        for (Slab slab : present) {
            int above = carrier(slab, over);
            if (above >= 0
                    && !slab.leafy
                    && slab.zFrom < leaf(above).zFrom - scene.hair
                    && liesOver(above, leaf, middle(shapes.apply(slab)))
                    && shares(shapes.apply(slab), shape(leaf))) {
                return pinned(leaf, above, slab.member, false);
            }
        }
        for (Slab slab : moving) {
            if (!slab.leafy && slab.zFrom < own.zFrom - scene.hair) {
                Obstacle blocked = way(leaf, over, slab, present);
                if (blocked != null) {
                    return blocked;
                }
            }
        }
        return null;
    }

    private int carrier(Slab slab, List<Integer> over) {
        for (int other : over) {
            if (scene.assembly.members().get(other).body() == slab.body) {
                return other;
            }
        }
        return -1;
    }

    private Obstacle pinned(int leaf, int other, int pin, boolean up) {
        return Obstacle.plain(
                List.of(name(leaf), name(other)),
                Saying.of("verify.leaf-pinned", name(leaf), name(other), name(pin), up));
    }

    /**
     * What hangs below the leaf comes from the open middle to its place, over the leaves there but past whatever else
     * stands up in their room; one free direction is enough.
     */
    private Obstacle way(int leaf, List<Integer> over, Slab pin, List<Slab> present) {
        Shape shape = shapes.apply(pin);
        Point at = new Point((shape.minX + shape.maxX) / 2, (shape.minY + shape.maxY) / 2);
        double radius = Math.hypot(shape.maxX - shape.minX, shape.maxY - shape.minY) / 2;
        radius = shape.isDisc() ? shape.pieces[0].r : radius;
        Obstacle first = null;
        for (double aside : ASIDE) {
            Point target = Point.polar(at.norm() / 2, at.angle() + aside);
            Region swept = Region.of(Shapes.hull(List.of(new Circle(at, radius), new Circle(target, radius))));
            Obstacle blocked = blocked(leaf, over, pin, Shape.of(swept), present);
            if (blocked == null) {
                return null;
            }
            first = first == null ? blocked : first;
        }
        return first;
    }

    private Obstacle blocked(int leaf, List<Integer> over, Slab pin, Shape swept, List<Slab> present) {
        for (Slab slab : present) {
            boolean stands = !slab.leafy && slab.zTo > family.zFrom() + scene.hair;
            if (stands && carrier(slab, over) < 0 && shares(swept, shapes.apply(slab))) {
                return Obstacle.plain(
                        List.of(name(leaf), name(slab.member)),
                        Saying.of("verify.pin-blocked", name(pin.member), name(leaf), name(slab.member)));
            }
        }
        return null;
    }

    private String name(int member) {
        return scene.assembly.members().get(member).name();
    }
}
