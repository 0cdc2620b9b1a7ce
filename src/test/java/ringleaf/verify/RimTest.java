// SPDX-License-Identifier: Apache-2.0
package ringleaf.verify;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import ringleaf.geom.Arc;
import ringleaf.geom.Contour;
import ringleaf.geom.Line;
import ringleaf.geom.Placement;
import ringleaf.geom.Point;
import ringleaf.geom.Region;
import ringleaf.part.Finding;
import ringleaf.part.Member;
import ringleaf.part.Motion;
import ringleaf.part.Requirement;

/** Rims that turn in walls with windows: how much faces, and the widest gap. */
class RimTest {
    private static final double TOTAL = Math.toRadians(180);
    private static final double GAP = Math.toRadians(120);

    private static Motion turning(double degrees) {
        return Mechanisms.motion(91, List.of(s -> Placement.turn(Math.toRadians(degrees * s / 90))));
    }

    /** A disc of radius 20 with the piece from {@code from} degrees on, over {@code over}, cut back to 18. */
    private static Region rim(double from, double over) {
        return cut(20, 18, from, over);
    }

    private static Contour cutContour(double radius, double other, double from, double over) {
        double a = Math.toRadians(from);
        double b = Math.toRadians(from + over);
        Point p = Point.polar(radius, b);
        Point q = Point.polar(radius, a);
        Point r = Point.polar(other, a);
        Point s = Point.polar(other, b);
        return Contour.of(
                Arc.around(Point.ORIGIN, p, q, true),
                new Line(q, r),
                Arc.around(Point.ORIGIN, r, s, true),
                new Line(s, p));
    }

    private static Region cut(double radius, double other, double from, double over) {
        return Region.of(cutContour(radius, other, from, over));
    }

    /** A wall of radius 20.1 with a window to radius 24. */
    private static Region wall(double from, double over) {
        return Region.of(Contour.circle(Point.ORIGIN, 30), cutContour(20.1, 24, from, over));
    }

    private static List<Finding> guided(double turn, Region rim, Region wall) {
        Member ring = Mechanisms.member("ring", 1, rim, 0, 2);
        Member around = Mechanisms.member("wall", 0, wall, 0, 2);
        return Mechanisms.judge(Mechanisms.assembly(
                        turning(turn),
                        List.of(ring, around),
                        new Requirement.GuidedRim(
                                "support-arc", "support-gap", 0, 1, Point.ORIGIN, 20, 20.1, TOTAL, GAP)))
                .findings();
    }

    @Test
    void aWholeRimInAWholeWallIsGuidedAllRound() {
        List<Finding> f = guided(80, Region.disc(Point.ORIGIN, 20), Region.ring(Point.ORIGIN, 20.1, 30));
        assertThat(f).extracting(Finding::failed).containsExactly(false, false);
        assertThat(f.get(0).measured()).isCloseTo(360, within(1e-9));
        assertThat(f.get(1).measured()).isCloseTo(0, within(1e-9));
        assertThat(f.get(0).unit()).isEqualTo("deg");
    }

    @Test
    void windowAndCutAddUpAtTheWorstState() {
        // Window over 100..150; cut over 0..40, turning by 80: at 60..80 the cut runs up to the window and into it.
        List<Finding> f = guided(80, rim(0, 40), wall(100, 50));
        assertThat(f).extracting(Finding::failed).containsExactly(false, false);
        assertThat(f.get(0).measured()).isCloseTo(270, within(1e-9));
        // The widest gap of the judged states: state 63 turns by 56: 56..96 leaves 4 before 100; 64 turns it on.
        assertThat(f.get(1).measured()).isBetween(70.0, 90.0 + 1e-9);
    }

    @Test
    void aRimThatIsTooMuchInterruptedFails() {
        List<Finding> f = guided(0.001, rim(0, 130), wall(200, 60));
        assertThat(f.get(0).failed()).isTrue();
        assertThat(f.get(0).measured()).isCloseTo(170, within(0.01));
        assertThat(f.get(1).failed()).isTrue();
        assertThat(f.get(1).measured()).isCloseTo(130, within(0.01));
        assertThat(ringleaf.report.FindingWords.where(f.get(1))).contains("ring, at (8.45");
    }

    @Test
    void aGapOverTheZeroDirectionIsSeenWhole() {
        List<Finding> f = guided(0.001, rim(-70, 140), Region.ring(Point.ORIGIN, 20.1, 30));
        assertThat(f.get(1).measured()).isCloseTo(140, within(0.01));
        assertThat(f.get(0).measured()).isCloseTo(220, within(0.01));
    }

    @Test
    void aRimOffItsCircleOrHeightDoesNotCount() {
        List<Finding> f = guided(10, Region.disc(Point.ORIGIN, 19.9), Region.ring(Point.ORIGIN, 20.1, 30));
        assertThat(f.get(0).measured()).isEqualTo(0);
        assertThat(f.get(1).measured()).isCloseTo(360, within(1e-9));
    }
}
