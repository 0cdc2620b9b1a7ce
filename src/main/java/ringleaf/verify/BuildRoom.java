// SPDX-License-Identifier: Apache-2.0
package ringleaf.verify;

import java.util.List;
import java.util.function.Function;
import ringleaf.geom.Placement;
import ringleaf.geom.Point;
import ringleaf.part.Saying;

/** Whether what is put to its place has the room to come there, straight along the axis or sideways. */
final class BuildRoom {
    /** Least advance when something slides along what it touches, mm; overlaps that end sooner are not seen. */
    private static final double STEP = 0.05;

    private final Scene scene;
    private final Function<Slab, Shape> shapes;
    private final boolean apartJudged;

    /**
     * @param shapes of slabs in their places
     * @param apartJudged whether members of different bodies that share a height are told apart by another check
     */
    BuildRoom(Scene scene, Function<Slab, Shape> shapes, boolean apartJudged) {
        this.scene = scene;
        this.shapes = shapes;
        this.apartJudged = apartJudged;
    }

    /** What is in the way of a straight way along the axis to {@code off} beside the place; null when nothing is. */
    Obstacle straight(List<Slab> moving, List<Slab> present, boolean fromAbove, Point off, double press) {
        boolean atPlace = off.x() == 0 && off.y() == 0;
        for (Slab s : moving) {
            Shape shape = atPlace ? shapes.apply(s) : shapes.apply(s).placed(new Placement(0, off));
            for (Slab t : present) {
                boolean one = s.body == t.body;
                if (s.leafy && t.leafy || !crosses(s, t, one, fromAbove)) {
                    continue;
                }
                if (atPlace && !one && apartJudged && s.shares(t, scene.hair)) {
                    continue;
                }
                Obstacle obstacle = overlap(s, shape, t, one ? press : 0, fromAbove);
                if (obstacle != null) {
                    return obstacle;
                }
            }
        }
        return null;
    }

    /** Pieces that move as one meet at the heights they are drawn at; a leaf meets others anywhere in its room. */
    private boolean crosses(Slab s, Slab t, boolean one, boolean fromAbove) {
        double low = one ? t.zFrom : t.meetsFrom;
        double high = one ? t.zTo : t.meetsTo;
        double bottom = one ? s.zFrom : s.meetsFrom;
        double top = one ? s.zTo : s.meetsTo;
        if (high - low <= scene.hair || top - bottom <= scene.hair) {
            return false;
        }
        return fromAbove ? high > bottom + scene.hair : low < top - scene.hair;
    }

    private Obstacle overlap(Slab s, Shape shape, Slab t, double press, boolean fromAbove) {
        Shape other = shapes.apply(t);
        double least = scene.tolerance;
        if (shape.gapTo(other) > 0 || SharedArea.of(shape, other, scene.tolerance / 1000) < least * least) {
            return null;
        }
        Reach reach = Reach.of(shape, other, 0, scene.tolerance);
        if (-reach.distance() <= press + scene.tolerance) {
            return null;
        }
        String mover = name(s.member);
        return new Obstacle(
                List.of(mover, name(t.member)),
                reach.at(),
                -reach.distance(),
                press,
                Saying.of("verify.in-the-way", mover, fromAbove, name(t.member), Words.mm(-reach.distance())));
    }

    /**
     * What is in the way of a slide from {@code from} beside the place into it; null when nothing is. Each time the
     * slide goes on by the distance that is free, at least by {@link #STEP}.
     */
    Obstacle sideways(List<Slab> moving, List<Slab> present, Point from) {
        double length = from.norm();
        for (Slab s : moving) {
            for (Slab t : present) {
                if (!s.shares(t, scene.hair)) {
                    continue;
                }
                for (double gone = 0; gone < length; ) {
                    Point off = from.times(1 - gone / length);
                    Shape shape = shapes.apply(s).placed(new Placement(0, off));
                    Reach reach = Reach.of(shape, shapes.apply(t), length - gone, scene.tolerance);
                    if (reach.distance() < -scene.tolerance) {
                        return new Obstacle(
                                List.of(name(s.member), name(t.member)),
                                reach.at(),
                                -reach.distance(),
                                0,
                                Saying.of(
                                        "verify.in-the-way-aside",
                                        name(s.member),
                                        name(t.member),
                                        Words.mm(-reach.distance())));
                    }
                    gone += Math.max(STEP, reach.distance());
                }
            }
        }
        return null;
    }

    private String name(int member) {
        return scene.assembly.members().get(member).name();
    }
}
