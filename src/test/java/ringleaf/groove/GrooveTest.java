// SPDX-License-Identifier: Apache-2.0
package ringleaf.groove;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Geometry;
import ringleaf.curve.JtsShapes;
import ringleaf.geom.Arc;
import ringleaf.geom.Contour;
import ringleaf.geom.Point;
import ringleaf.geom.Region;
import ringleaf.geom.Segment;
import ringleaf.geom.Tolerance;

class GrooveTest {
    private static final int[] TEETH = {10, 14, 20, 36, 90};

    /** The rolling check knows nothing of envelopes: no overlap at any phase, and the tip's room as asked for. */
    @Test
    void everyToothRollsThroughItsOwnGrooveWithoutOverlap() {
        for (Map.Entry<String, BeltTooth> each : Sections.all().entrySet()) {
            for (int teeth : TEETH) {
                for (double room : new double[] {0, 0.02}) {
                    double pitch = each.getValue().pitch();
                    Groove groove =
                            Groove.generated(each.getValue(), teeth, room * pitch, room * pitch / 2, Tolerance.CURVE);
                    RollCheck rolled = RollCheck.of(groove, each.getValue());
                    String name = each.getKey() + ", " + teeth + " teeth, room " + room;
                    assertThat(rolled.overlap()).as(name).isLessThanOrEqualTo(0.0006);
                    assertThat(rolled.tipRoom()).as(name).isCloseTo(room * pitch / 2, within(1e-9));
                    // two flanks, each within half a micrometre, over a slanted line
                    assertThat(rolled.play()).as(name).isGreaterThanOrEqualTo(room * pitch - 3e-3);
                    assertThat(groove.deviation()).as(name).isLessThanOrEqualTo(0.0005);
                }
            }
        }
    }

    /** Where nothing undercuts, a seated tooth has the backlash asked for, and no more. */
    @Test
    void aSeatedToothHasTheBacklashAskedForOnALargePulley() {
        for (Map.Entry<String, BeltTooth> each : Sections.all().entrySet()) {
            BeltTooth tooth = each.getValue();
            if (tooth.rootRadius() == 0 || tooth.flank() == 0) {
                continue;
            }
            double backlash = 0.03 * tooth.pitch();
            Groove groove = Groove.generated(tooth, 120, backlash, backlash, Tolerance.CURVE);
            RollCheck rolled = RollCheck.of(groove, tooth);
            // what the check counts as a touch is 1 µm into the edge, on either side
            assertThat(rolled.play()).as(each.getKey()).isBetween(backlash - 0.002, backlash + 0.02 * tooth.pitch());
        }
    }

    /**
     * The groove against the tooth itself, flattened and put in many phases by hand: at every radius the groove is as
     * wide as the widest of them, and no wider than what lies between two phases.
     */
    @Test
    void theGrooveIsWhatTheToothSweeps() {
        for (Map.Entry<String, BeltTooth> each : Sections.all().entrySet()) {
            BeltTooth tooth = each.getValue();
            for (int teeth : new int[] {12, 24, 60}) {
                Groove groove = Groove.generated(tooth, teeth, 0, 0, Tolerance.CURVE);
                GrooveEdge edge = new GrooveEdge(groove);
                double[] radii = new double[24];
                for (int i = 0; i < radii.length; i++) {
                    radii[i] = groove.rootRadius() + (groove.rim() - groove.rootRadius()) * (i + 1) / 25;
                }
                double[] swept = swept(tooth, teeth, radii);
                for (int i = 0; i < radii.length; i++) {
                    double more = (edge.open(radii[i]) - swept[i]) * radii[i];
                    String name = each.getKey() + ", " + teeth + " teeth, " + i;
                    // arcs within half a micrometre, measured along a circle that may run flat to the edge
                    assertThat(more).as(name).isGreaterThan(-0.004);
                    // rounded ridges of a two-hundredth of the pitch, and the bow between two phases
                    assertThat(more).as(name).isLessThan(0.004 + 0.01 * tooth.pitch());
                }
            }
        }
    }

    /** Half the angle over which some phase of the tooth covers each circle. */
    private static double[] swept(BeltTooth tooth, int teeth, double[] radii) {
        Rolling rolling = new Rolling(tooth.pitch() * teeth / (2 * Math.PI));
        List<Point> edge = JtsShapes.points(tooth.edge(), new Tolerance(1e-5));
        double reach = rolling.reach(tooth);
        double[] widest = new double[radii.length];
        int phases = 250;
        for (int i = -phases; i <= phases; i++) {
            Point before = null;
            for (Point p : edge) {
                Point at = rolling.place(p, reach * i / phases);
                for (int k = 0; before != null && k < radii.length; k++) {
                    if (Math.min(before.norm(), at.norm()) < radii[k] + 0.05
                            && Math.max(before.norm(), at.norm()) > radii[k] - 0.05) {
                        widest[k] = Math.max(widest[k], crossing(before, at, radii[k]));
                    }
                }
                before = at;
            }
        }
        return widest;
    }

    /**
     * The play against outlines flattened to 10 nm: about the pulley's axis a seated tooth turns freely by the least
     * angle between its edge and the groove's at any radius. On small pulleys that is where the rounding at the
     * tooth's root comes to the rim's edge.
     */
    @Test
    void thePlayIsTheLeastAngleBetweenToothAndGrooveAtAnyRadius() {
        for (Map.Entry<String, BeltTooth> each : Sections.all().entrySet()) {
            BeltTooth tooth = each.getValue();
            for (int teeth : new int[] {10, 12, 16, 24, 60}) {
                double pitch = tooth.pitch();
                Groove groove = Groove.generated(tooth, teeth, 0.04 * pitch, 0.02 * pitch, Tolerance.CURVE);
                double radius = pitch * teeth / (2 * Math.PI);
                List<Point> seated = new ArrayList<>();
                for (Point p : JtsShapes.points(tooth.edge(), new Tolerance(1e-5))) {
                    seated.add(new Point(p.x(), p.y() + radius));
                }
                List<Point> edge = JtsShapes.points(groove.edge(), new Tolerance(1e-5));
                double least = Double.POSITIVE_INFINITY;
                for (Point p : edge) {
                    if (p.x() > 0) {
                        least = Math.min(least, Math.atan2(p.x(), p.y()) - angleAt(seated, p.norm(), true));
                    }
                }
                for (Point p : seated) {
                    if (p.x() > 0 && p.norm() < groove.rim() && p.norm() > groove.rootRadius()) {
                        least = Math.min(least, angleAt(edge, p.norm(), false) - Math.atan2(p.x(), p.y()));
                    }
                }
                assertThat(RollCheck.of(groove, tooth).play())
                        .as(each.getKey() + ", " + teeth + " teeth")
                        .isCloseTo(2 * least * radius, within(2e-4 * pitch));
            }
        }
    }

    /** The greatest or the least angle from the axis at which a chain of points crosses a circle, on the right. */
    private static double angleAt(List<Point> chain, double radius, boolean greatest) {
        double found = greatest ? Double.NEGATIVE_INFINITY : Double.POSITIVE_INFINITY;
        for (int i = 1; i < chain.size(); i++) {
            Point a = chain.get(i - 1);
            Point b = chain.get(i);
            double ra = a.norm() - radius;
            double rb = b.norm() - radius;
            if (ra * rb <= 0 && ra != rb && a.towards(b, 0.5).x() > 0) {
                Point p = a.towards(b, ra / (ra - rb));
                double angle = Math.atan2(p.x(), p.y());
                found = greatest ? Math.max(found, angle) : Math.min(found, angle);
            }
        }
        return found;
    }

    private static double crossing(Point a, Point b, double radius) {
        Point d = b.minus(a);
        double half = d.dot(a);
        double root = half * half - d.dot(d) * (a.dot(a) - radius * radius);
        if (root < 0) {
            return 0;
        }
        double widest = 0;
        for (double sign : new double[] {-1, 1}) {
            double u = (-half + sign * Math.sqrt(root)) / d.dot(d);
            if (u >= 0 && u <= 1) {
                Point p = a.towards(b, u);
                widest = Math.max(widest, Math.atan2(p.x(), p.y()));
            }
        }
        return widest;
    }

    private static Geometry opening(Groove groove) {
        List<Segment> pieces = new ArrayList<>(groove.edge().segments());
        pieces.add(Arc.around(Point.ORIGIN, groove.edge().end(), groove.edge().start(), false));
        return JtsShapes.polygon(Region.of(new Contour(pieces)), new Tolerance(1e-4));
    }

    /**
     * A straight flank that rolls on a circle leaves an involute (the generating rack of ISO 5294 and of any gear): the
     * normals of the groove's flank touch the base circle r cos f.
     */
    @Test
    void theFlankIsAnInvolute() {
        BeltTooth tooth = Sections.all().get("XL");
        int teeth = 60;
        Groove groove = Groove.generated(tooth, teeth, 0, 0, Tolerance.CURVE);
        double base = tooth.pitch() * teeth / (2 * Math.PI) * Math.cos(tooth.flank());
        int onFlank = 0;
        for (Segment piece : groove.edge().segments()) {
            Point middle = piece.pointAt(0.5);
            double depth = groove.rim() - middle.norm();
            if (middle.x() > 0 && depth > 0.45 && depth < 0.9) {
                Point normal = piece.tangentAt(0.5).left();
                // the arcs are within 0.5 µm, their direction within some 4e-3 over pieces of a quarter millimetre
                assertThat(Math.abs(middle.cross(normal))).isCloseTo(base, within(4e-3 * middle.norm()));
                onFlank++;
            }
        }
        assertThat(onFlank).isPositive();
    }

    @Test
    void aToothTooWideForItsGrooveIsSeen() {
        for (Map.Entry<String, BeltTooth> each : Sections.all().entrySet()) {
            BeltTooth tooth = each.getValue();
            Groove groove = Groove.generated(tooth, 24, 0, 0, Tolerance.CURVE);
            double more = 0.02 * tooth.pitch();
            RollCheck rolled = RollCheck.of(groove, tooth.grown(2 * more, 0));
            assertThat(rolled.overlap()).as(each.getKey()).isBetween(0.3 * more, 2 * more);
            RollCheck deep = RollCheck.of(groove, tooth.grown(0, more));
            assertThat(deep.overlap()).as(each.getKey()).isBetween(0.5 * more, 1.01 * more);
        }
    }

    @Test
    void theOutlineIsClosedValidAndTheSameInEveryGroove() {
        for (Map.Entry<String, BeltTooth> each : Sections.all().entrySet()) {
            Groove groove = Groove.generated(each.getValue(), 18, 0.05, 0.05, Tolerance.CURVE);
            Contour outline = groove.outline(0.3);
            assertThat(outline.isCounterClockwise()).isTrue();
            assertThat(JtsShapes.polygon(Region.of(outline), Tolerance.JUDGE).isValid())
                    .as(each.getKey())
                    .isTrue();
            Contour turned = groove.outline(0.3 + 2 * Math.PI / 18);
            assertThat(turned.area()).isCloseTo(outline.area(), within(1e-9 * outline.area()));
            double disc = Math.PI * groove.rim() * groove.rim();
            double one = opening(groove).getArea();
            assertThat(outline.area()).as(each.getKey()).isCloseTo(disc - 18 * one, within(1e-4 * disc));
        }
    }

    /** The tangents of neighbouring pieces agree, except where the tip has cut a ridge, which is rounded. */
    @Test
    void piecesJoinWithACommonTangent() {
        for (Map.Entry<String, BeltTooth> each : Sections.all().entrySet()) {
            for (int teeth : TEETH) {
                Groove groove = Groove.generated(each.getValue(), teeth, 0.02, 0.02, Tolerance.CURVE);
                List<Segment> pieces = groove.edge().segments();
                for (int i = 1; i < pieces.size(); i++) {
                    Point before = pieces.get(i - 1).tangentAt(1);
                    Point after = pieces.get(i).tangentAt(0);
                    assertThat(before.minus(after).norm())
                            .as(each.getKey() + ", " + teeth + " teeth, piece " + i + " at "
                                    + pieces.get(i).start())
                            .isLessThan(1e-5);
                }
            }
        }
    }

    /** No crumbs of a few nanometres stay beside a rounded ridge: solids of single precision cannot hold them. */
    @Test
    void noPieceIsTooShortToBeWrittenDown() {
        for (Map.Entry<String, BeltTooth> each : Sections.all().entrySet()) {
            for (int teeth = 10; teeth < 70; teeth += 1) {
                for (double room : new double[] {0, 0.01, 0.04}) {
                    double play = room * each.getValue().pitch();
                    Groove groove = Groove.generated(each.getValue(), teeth, play, play / 2, Tolerance.CURVE);
                    for (Segment piece : groove.edge().segments()) {
                        assertThat(piece.length())
                                .as(each.getKey() + ", " + teeth + " teeth, room " + room + ", at " + piece.start())
                                .isGreaterThan(5e-5);
                    }
                }
            }
        }
    }

    @Test
    void randomTeethRollThroughOrAreRefused() {
        long seed = 20261125;
        Random random = new Random(seed);
        int made = 0;
        for (int i = 0; i < 60; i++) {
            double pitch = 1 + 9 * random.nextDouble();
            double flank = Math.toRadians(35 * random.nextDouble());
            double width = pitch * (0.35 + 0.25 * random.nextDouble());
            double height = Math.min(width * (0.3 + 0.4 * random.nextDouble()), 0.45 * width / Math.tan(flank + 1e-3));
            double land = pitch * (0.05 + 0.1 * random.nextDouble());
            double root = pitch * 0.1 * random.nextDouble();
            double tip = width * 0.2 * random.nextDouble();
            int teeth = 10 + random.nextInt(90);
            BeltTooth tooth = random.nextBoolean()
                    ? new BeltTooth(pitch, land, width, height, flank, tip, root)
                    : BeltTooth.round(pitch, land, width, height, flank, root);
            try {
                Groove groove = Groove.generated(tooth, teeth, 0.02 * pitch, 0.01 * pitch, Tolerance.CURVE);
                assertThat(RollCheck.of(groove, tooth).overlap())
                        .as("seed " + seed + ", case " + i + ": " + tooth + " on " + teeth)
                        .isLessThanOrEqualTo(0.001);
                made++;
            } catch (Groove.NoRim e) {
                assertThat(e.getMessage()).isNotEmpty();
            }
        }
        assertThat(made).isGreaterThan(30);
    }

    @Test
    void aTrapezoidHasTheSizesAskedFor() {
        Groove groove = Groove.trapezoid(20, 15.5, 1.25, 2.96, true, Math.toRadians(25), 0, 0);
        assertThat(groove.rootRadius()).isCloseTo(15.5 - 1.25, within(1e-12));
        Point foot = groove.edge().segments().get(0).end();
        assertThat(foot.x()).isCloseTo(2.96 / 2 - 1.25 * Math.tan(Math.toRadians(25)), within(1e-12));
        Groove rounded = Groove.trapezoid(20, 15.5, 1.25, 2.96, true, Math.toRadians(25), 0.6, 0.4);
        assertThat(rounded.edge().segments()).hasSizeGreaterThan(5);
        assertThat(rounded.rootRadius()).isCloseTo(15.5 - 1.25, within(1e-9));
        assertThatThrownBy(() -> Groove.trapezoid(20, 15.5, 5, 2.96, true, Math.toRadians(25), 0, 0))
                .isInstanceOf(Groove.NoRim.class);
    }

    @Test
    void groovesThatLeaveNoRimAreRefused() {
        BeltTooth tooth = Sections.all().get("8 mm round");
        assertThatThrownBy(() -> Groove.generated(tooth, 20, 3, 0, Tolerance.CURVE))
                .isInstanceOf(Groove.NoRim.class);
        assertThatThrownBy(() -> Groove.generated(tooth, 3, 0, 0, Tolerance.CURVE))
                .isInstanceOf(Groove.NoRim.class);
    }
}
