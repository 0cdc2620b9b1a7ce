// SPDX-License-Identifier: Apache-2.0
package ringleaf.verify;

import java.util.ArrayList;
import java.util.List;
import ringleaf.curve.FreeTurn;
import ringleaf.curve.Gap;
import ringleaf.curve.RollingPair;
import ringleaf.geom.Contour;
import ringleaf.geom.Placement;
import ringleaf.geom.Point;
import ringleaf.geom.Region;
import ringleaf.geom.Segment;
import ringleaf.part.Figure;
import ringleaf.part.Finding;
import ringleaf.part.Layer;
import ringleaf.part.Member;
import ringleaf.part.Requirement;
import ringleaf.part.Saying;

/**
 * Rolls two members through what is asked for: their gap on lines and arcs, the depth of their overlap where they
 * cross, and by how much the driven one can turn to either side while the other stands. Between the steps it looks
 * more closely round the least gap and the least and the greatest play.
 */
final class MeshCheck extends Check {
    /** Free turns are looked for up to this many times the play that is required, and no less than a degree. */
    private static final double LOOK = 4;

    private static final double LEAST_LOOK = Math.toRadians(1);

    /** In how many of the positions in which the outlines cross it is measured how deep, evenly chosen. */
    private static final int DEPTHS = 12;

    /** Shares of a step at which it is looked more closely beside the worst one. */
    private static final int CLOSER = 4;

    private final Requirement.Meshes required;
    private final List<Region> first = new ArrayList<>();
    private final List<Region> second = new ArrayList<>();
    private List<Shape> firstShapes;
    private List<Shape> secondShapes;
    private RollingPair pair;
    /** Positions in which the outlines cross or touch. */
    private final List<At> crossing = new ArrayList<>();

    private At leastGap;
    private At leastPlay;
    private At mostPlay;

    /**
     * What was measured in one position.
     *
     * @param step at which, not always a whole one
     * @param gap of the outlines, mm, negative where they overlap
     * @param where the outlines are nearest
     * @param play of the driven member, rad
     */
    private record At(double step, double gap, Point where, double play) {}

    MeshCheck(Scene scene, Requirement.Meshes required) {
        super(scene);
        this.required = required;
        Member one = scene.assembly.members().get(required.first().member());
        Member other = scene.assembly.members().get(required.second().member());
        for (Layer a : one.part().layers()) {
            for (Layer b : other.part().layers()) {
                if (a.zTo() > b.zFrom() + scene.hair && b.zTo() > a.zFrom() + scene.hair) {
                    a.regions().forEach(region -> add(first, region));
                    b.regions().forEach(region -> add(second, region));
                }
            }
        }
    }

    private static void add(List<Region> regions, Region region) {
        if (!regions.contains(region)) {
            regions.add(region);
        }
    }

    @Override
    Measure measure(Pose pose, Figures figures) {
        if (pose.state == 0 && !first.isEmpty()) {
            Placement firstHome = pose.members[required.first().member()];
            Placement secondHome = pose.members[required.second().member()];
            firstShapes = shapes(first, firstHome);
            secondShapes = shapes(second, secondHome);
            pair = pair(pieces(first, firstHome), pieces(second, secondHome));
            roll();
        }
        return null;
    }

    private RollingPair pair(List<Segment> one, List<Segment> other) {
        Point axis = required.second().axis();
        return required.first() instanceof Requirement.Turning turning
                ? new RollingPair(one, turning.axis(), other, axis)
                : RollingPair.sliding(one, ((Requirement.Sliding) required.first()).direction(), other, axis);
    }

    private void roll() {
        int steps = required.rolled().steps();
        for (int i = 0; i <= steps; i++) {
            look(i);
        }
        for (At worst : List.of(leastGap, leastPlay, mostPlay)) {
            for (int i = -CLOSER + 1; i < CLOSER; i++) {
                double step = worst.step + (double) i / CLOSER;
                if (i != 0 && step >= 0 && step <= steps) {
                    look(step);
                }
            }
        }
        depths();
    }

    private void depths() {
        int stride = Math.max(1, (crossing.size() + DEPTHS - 1) / DEPTHS);
        for (int i = 0; i < crossing.size(); i += stride) {
            At at = crossing.get(i);
            double turn = required.rolled().at(at.step);
            Reach reach = overlap(turn, turn * required.ratio());
            if (reach.distance() < leastGap.gap) {
                leastGap = new At(at.step, reach.distance(), reach.at(), at.play);
            }
        }
    }

    private void look(double step) {
        double turn = required.rolled().at(step);
        double follows = turn * required.ratio();
        RollingPair.Position position = pair.at(turn, follows);
        double look = Math.max(LEAST_LOOK, LOOK * required.play());
        FreeTurn forward = position.freeTurn(true, look);
        FreeTurn back = position.freeTurn(false, look);
        Gap gap = position.gap();
        boolean crosses = gap.distance() <= scene.hair || holds();
        Point where = gap.onFirst().towards(gap.onSecond(), 0.5);
        At at = new At(step, crosses ? 0 : gap.distance(), where, forward.angle() + back.angle());
        if (crosses) {
            crossing.add(at);
        }
        leastGap = leastGap == null || at.gap < leastGap.gap - scene.hair ? at : leastGap;
        leastPlay = leastPlay == null || at.play < leastPlay.play ? at : leastPlay;
        mostPlay = mostPlay == null || at.play > mostPlay.play ? at : mostPlay;
    }

    /** Whether one of the two lies in the other's material from the start, where no outlines cross. */
    private boolean holds() {
        for (Shape a : firstShapes) {
            for (Shape b : secondShapes) {
                if (a.contains(b.pieces[0].x0, b.pieces[0].y0) || b.contains(a.pieces[0].x0, a.pieces[0].y0)) {
                    return true;
                }
            }
        }
        return false;
    }

    /** How deep the two overlap; overlaps within the tolerance count as contact. */
    private Reach overlap(double turn, double follows) {
        Placement one = required.first().after(turn);
        Placement other = required.second().after(follows);
        Reach deepest = null;
        for (Shape a : firstShapes) {
            for (Shape b : secondShapes) {
                Reach reach = Reach.of(a.placed(one), b.placed(other), Double.POSITIVE_INFINITY, scene.tolerance);
                deepest = deepest == null || reach.distance() < deepest.distance() ? reach : deepest;
            }
        }
        return deepest;
    }

    private static List<Shape> shapes(List<Region> regions, Placement home) {
        List<Shape> shapes = new ArrayList<>();
        for (Region region : regions) {
            shapes.add(Shape.of(region).placed(home));
        }
        return shapes;
    }

    private static List<Segment> pieces(List<Region> regions, Placement home) {
        List<Segment> pieces = new ArrayList<>();
        for (Region region : regions) {
            for (Contour contour : region.contours()) {
                pieces.addAll(contour.placed(home).segments());
            }
        }
        return pieces;
    }

    @Override
    void conclude(Measure[] measures, List<Finding> findings) {
        int one = required.first().member();
        int other = required.second().member();
        List<String> both = both(one, other);
        if (first.isEmpty()) {
            findings.add(still(Requirement.Meshes.GAP, both).plain(false).says("verify.no-mesh", Words.and(both)));
            return;
        }
        Saying rolled = Saying.of(
                "verify.rolled", required.rolled().words(), required.rolled().steps());
        Finding.Draft gap = still(Requirement.Meshes.GAP, both)
                .at(moved(required.rolled().at(leastGap.step)).withPoint(leastGap.where));
        gap = required.gap() > 0
                ? gap.room(leastGap.gap, required.gap(), "mm")
                : gap.atLeast(leastGap.gap, required.gap(), "mm");
        findings.add(gap.says("verify.gap", leastGap.gap < 0, Words.mm(Math.abs(leastGap.gap)), rolled));
        boolean leastIsOff = Math.abs(leastPlay.play - required.play()) > Math.abs(mostPlay.play - required.play());
        findings.add(still(Requirement.Meshes.PLAY, both)
                .onOutlines(0)
                .about(
                        Math.toDegrees(leastIsOff ? leastPlay.play : mostPlay.play),
                        Math.toDegrees(required.play()),
                        Math.toDegrees(required.tolerance() / pair.secondReach()),
                        "deg")
                .says(
                        "verify.free-play",
                        Figure.degrees(leastPlay.play, 4),
                        Figure.degrees(mostPlay.play, 4),
                        Figure.degrees(required.play(), 4),
                        rolled));
    }

    private Finding.Place moved(double move) {
        return required.first() instanceof Requirement.Turning
                ? Finding.Place.when("verify.turned", Words.degrees(move))
                : Finding.Place.when("verify.moved", name(required.first().member()), Words.mm(move));
    }
}
