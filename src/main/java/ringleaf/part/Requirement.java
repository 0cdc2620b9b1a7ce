// SPDX-License-Identifier: Apache-2.0
package ringleaf.part;

import java.util.List;
import java.util.Optional;
import ringleaf.geom.Contour;
import ringleaf.geom.Mirror;
import ringleaf.geom.Placement;
import ringleaf.geom.Point;
import ringleaf.geom.Region;

/**
 * What an assembly must hold to, in terms of outlines and motion only. Each names the check under which it is
 * reported. Member numbers are indices into the assembly's members; shapes are given in the mechanism's frame in
 * state 0.
 */
public sealed interface Requirement {
    String check();

    /** No member reaches into {@code area} in the given states (an empty list means all judged states). */
    record KeepsClear(String check, Region area, List<Integer> states) implements Requirement {}

    /** In {@code state} the greatest circle about {@code centre} that meets no leaf has this diameter. */
    record OpensTo(String check, Point centre, int state, double diameter, double tolerance) implements Requirement {}

    /** The clear disc less the opening is covered by leaves at every state, even when they are shrunk by lap/2. */
    record Covered(String check, String lapCheck, double lap) implements Requirement {}

    /** The members stay inside {@code room} with {@code clearance} at every state. */
    record StaysInside(String check, List<Integer> members, Region room, double clearance) implements Requirement {}

    /**
     * Round pins stay within their holes with at least {@code clearance} all round at every state.
     *
     * @param snug whether more room than that is wrong as well, because the design counts on no more
     */
    record PinInHole(String check, List<Fit> fits, double clearance, boolean snug) implements Requirement {
        public PinInHole {
            fits = List.copyOf(fits);
        }

        /** Holes that may be wider. */
        public PinInHole(String check, List<Fit> fits, double clearance) {
            this(check, fits, clearance, false);
        }
    }

    /**
     * A round pin that rides on one member, and the hole of another in which it must stay: that which the member has
     * where {@code hole} was meant to be.
     */
    record Fit(int pinMember, Point pin, double pinRadius, int holeMember, Contour hole) {}

    /**
     * Round studs stand {@code clearance} clear of every one of the members but the one they ride on, seen along the
     * axis, at every state: for what passes by at any height.
     */
    record StudsClear(String check, List<Stud> studs, List<Integer> members, double clearance) implements Requirement {
        public StudsClear {
            studs = List.copyOf(studs);
            members = List.copyOf(members);
        }
    }

    /** A round stud of a radius in mm that rides on a member. */
    record Stud(int member, Point at, double radius) {}

    /**
     * Members that share a height and do not move as one stay {@code least} apart at every state, except for the
     * pairs that carry a figure of their own.
     */
    record StaysApart(String check, double least, List<Pair> pairs) implements Requirement {}

    /**
     * Two members with a figure of their own. Where they may not touch, a {@code least} of 0 still asks for room.
     *
     * @param least mm; negative infinity where they are one piece and nothing is asked
     * @param touches whether they are meant to touch: then anything but overlap is right
     */
    record Pair(int first, int second, double least, boolean touches) {
        /** Two that keep apart. */
        public Pair(int first, int second, double least) {
            this(first, second, least, false);
        }

        /** Two that lie on one another, or run on one another. */
        public static Pair touching(int first, int second) {
            return new Pair(first, second, 0, true);
        }
    }

    /**
     * Seen along the axis, where two members lie over one another, the upper one keeps room above the lower one, at
     * every state. What rides on a leaf is looked at where the leaf lies nearest.
     */
    record StaysAbove(String check, List<Above> pairs) implements Requirement {
        public StaysAbove {
            pairs = List.copyOf(pairs);
        }
    }

    /**
     * Two members and the room that they keep along the axis, mm; 0 still asks for some.
     *
     * @param area over which the two must lie over one another, because one holds the other, mm²; 0 for any or none
     */
    record Above(int upper, int lower, double least, double area) {}

    /** Members lie on one another: the lower face of the upper one on a face of the lower one. */
    record Rests(String check, List<Resting> pairs) implements Requirement {
        public Rests {
            pairs = List.copyOf(pairs);
        }
    }

    /** A member and what it lies on, over at least so many mm². */
    record Resting(int upper, int lower, double area) {}

    /** Pins reach into their holes by so much of their length, wherever the leaf lies on which they ride. */
    record Engages(String check, List<Engaged> pairs) implements Requirement {
        public Engages {
            pairs = List.copyOf(pairs);
        }
    }

    /** A pin, the member that has its hole, and how much of its length must stand in it at least, mm. */
    record Engaged(int pin, int hole, double least) {}

    /**
     * A member that turns about an axis meets a stop a little past either end of its travel.
     *
     * @param forward whether it turns counter-clockwise from state 0 to the last
     * @param most way past either end, rad
     */
    record Stops(String check, int member, int stop, Point axis, boolean forward, double most) implements Requirement {}

    /** Between any two contours of a level of the part, and across each, at least {@code web} of material stands. */
    record LeastWeb(String check, String part, double web) implements Requirement {}

    /**
     * A round rim turns in a round wall: both lie on circles about {@code centre}, {@code play} apart in radius; over
     * all states they face each other over more than {@code leastTotal} rad, and no gap is over {@code mostGap} rad,
     * which {@code gapCheck} tells.
     */
    record GuidedRim(
            String check,
            String gapCheck,
            int rimMember,
            int wallMember,
            Point centre,
            double rimRadius,
            double wallRadius,
            double leastTotal,
            double mostGap)
            implements Requirement {}

    /**
     * The leaves' room holds as many of them as ever lie over one point: each {@code each} mm, or its own height where
     * that is more, plus {@code play}.
     */
    record LeavesFit(String check, double each, double play) implements Requirement {}

    /** The members named reach over no more than {@code depth} mm from the lowest face to the highest. */
    record FitsDepth(String check, List<Integer> members, double depth) implements Requirement {}

    /**
     * Everything named stays within a circle about the origin of this diameter.
     *
     * @param lobe what stands out of it on purpose and is not measured
     */
    record FitsRound(String check, List<Integer> members, double diameter, Optional<Lobe> lobe) implements Requirement {
        /** Round all over. */
        public FitsRound(String check, List<Integer> members, double diameter) {
            this(check, members, diameter, Optional.empty());
        }
    }

    /** A lobe about a direction and to either side of it, rad; {@code half} at least a quarter turn. */
    record Lobe(double direction, double half) {}

    /** In state 0 the members reach over no more than {@code width} mm along a direction, from end to end. */
    record FitsWidth(String check, List<Integer> members, Point direction, double width) implements Requirement {}

    /**
     * Two members move in step from one end of the travel to the other and never overlap; and while the first stands,
     * the second is free to turn by {@code play} in all, a little to either side. Either may be a whole gear, a ring
     * with teeth inside, or carry teeth on a part of its rim only; the first may be a rack that slides.
     *
     * <p>Its findings have the same names whatever meshes: {@link #GAP} and {@link #PLAY}.
     *
     * @param first that drives
     * @param second that is driven, in the middle of its play
     * @param ratio turn of the second for a turn of the first, counter-clockwise positive for both; rad per mm where
     *     the first slides
     * @param rolled moves of the first that are rolled through
     * @param gap least distance of the outlines in the middle of the play, mm; 0 allows them to touch
     * @param play of the second, rad
     * @param tolerance by how much the play may miss, as a length at the second's reach, mm
     */
    record Meshes(Moving first, Turning second, double ratio, Rolled rolled, double gap, double play, double tolerance)
            implements Requirement {
        /** Name of the finding on overlap and gap. */
        public static final String GAP = "mesh-clearance";

        /** Name of the finding on the play. */
        public static final String PLAY = "backlash";

        @Override
        public String check() {
            return GAP;
        }
    }

    /** A member that moves from its place in state 0. */
    sealed interface Moving {
        int member();

        /** Where it is after a move: a turn in rad, or a way in mm. */
        Placement after(double move);

        /** The mirror image, which moves the other way round: what was a move is minus that move. */
        Moving mirrored(Mirror mirror);
    }

    /** A member and the axis about which it turns. */
    record Turning(int member, Point axis) implements Moving {
        @Override
        public Placement after(double move) {
            return Placement.turnAbout(axis, move);
        }

        @Override
        public Turning mirrored(Mirror mirror) {
            return new Turning(member, mirror.apply(axis));
        }
    }

    /** A member and the direction, of length 1, in which it slides. */
    record Sliding(int member, Point direction) implements Moving {
        @Override
        public Placement after(double move) {
            return Placement.shift(direction.x() * move, direction.y() * move);
        }

        @Override
        public Sliding mirrored(Mirror mirror) {
            return new Sliding(member, mirror.apply(Point.ORIGIN).minus(mirror.apply(direction)));
        }
    }

    /**
     * The moves of a driver, rad or mm, through which a mesh is rolled: a pitch where all teeth are alike, the whole travel where
     * they end.
     *
     * @param from turn from its place in state 0, rad, counter-clockwise positive
     * @param to turn at the other end, rad
     * @param steps in which it is rolled through, both ends looked at, at least 1
     * @param words what is rolled through, for people, e.g. {@code a pitch} or {@code the whole travel}
     */
    record Rolled(double from, double to, int steps, String words) {
        /** The turn at a step, from 0 on; steps need not be whole. */
        public double at(double step) {
            return from + (to - from) * step / steps;
        }
    }
}
