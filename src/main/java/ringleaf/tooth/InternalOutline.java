// SPDX-License-Identifier: Apache-2.0
package ringleaf.tooth;

import java.util.ArrayList;
import java.util.List;
import ringleaf.curve.ArcFit;
import ringleaf.geom.Angles;
import ringleaf.geom.Arc;
import ringleaf.geom.Contour;
import ringleaf.geom.Mirror;
import ringleaf.geom.Path;
import ringleaf.geom.Placement;
import ringleaf.geom.Point;
import ringleaf.geom.Segment;
import ringleaf.geom.Tolerance;

/**
 * The toothed opening of an internal gear: arcs about the axis on tip and root circles, arcs within a tolerance of the
 * involutes, true arcs in the root's corners. Tangent-continuous except at the tips' edges; the axis is the origin.
 */
public final class InternalOutline {
    private static final int PLACES = 24;
    /** A root circle's arc shorter than this share of the module is left out. */
    private static final double SHORTEST_ROOT = 5e-7;

    private final InternalForm form;
    private final InvoluteCurve exact;
    private final Path flank;
    private final List<Segment> space;

    private InternalOutline(InternalForm form, InvoluteCurve exact, Path flank, List<Segment> space) {
        this.form = form;
        this.exact = exact;
        this.flank = flank;
        this.space = space;
    }

    /**
     * Fits the flank.
     *
     * @throws IllegalArgumentException when the ring's teeth are pointed at their tips or its spaces at the root
     */
    public static InternalOutline of(InternalForm form, Tolerance tolerance) {
        InternalRoot root = InternalRoot.of(form);
        if (!(form.thicknessAt(2 * form.tipRadius()) > 1e-7 * form.module())) {
            throw new IllegalArgumentException("the teeth of the ring meet inside radius " + form.tipRadius() + " mm");
        }
        if (!(root.endRadius() > form.tipRadius())) {
            throw new IllegalArgumentException(
                    "the ring's teeth are all root: no involute beyond radius " + form.tipRadius() + " mm");
        }
        InvoluteCurve exact = root.flank(form.tipRadius());
        Path flank = ArcFit.fit(exact, tolerance);
        return new InternalOutline(form, exact, flank, space(form, root, flank));
    }

    /** One space about +x: out along the lower flank, counter-clockwise over the root, back along the upper flank. */
    private static List<Segment> space(InternalForm form, InternalRoot root, Path flank) {
        List<Segment> lower = new ArrayList<>(flank.segments());
        double half = -root.centre().angle();
        double radius = form.rootRadius();
        boolean land = half * radius > SHORTEST_ROOT * form.module();
        Point foot = land ? Point.polar(radius, -half) : new Point(radius, 0);
        // Seen from the arc's centre the flank's touching point lies square to the flank, clockwise of its direction.
        double startAngle = root.baseAngle() + root.roll() - Math.PI / 2;
        double sweep = -half - startAngle;
        lower.add(new Arc(root.centre(), root.rounding(), startAngle, sweep, flank.end(), foot));
        List<Segment> pieces = new ArrayList<>(lower);
        if (land) {
            pieces.add(new Arc(Point.ORIGIN, radius, -half, 2 * half, foot, Mirror.FLIP_Y.apply(foot)));
        }
        for (int i = lower.size() - 1; i >= 0; i--) {
            pieces.add(lower.get(i).mirrored(Mirror.FLIP_Y).reversed());
        }
        return pieces;
    }

    public InternalForm form() {
        return form;
    }

    /** Greatest distance of the flank's arcs from the involute, mm, measured independently of the fitting. */
    public double deviation() {
        double worst = 0;
        for (Segment piece : flank.segments()) {
            for (int i = 0; i <= PLACES; i++) {
                worst = Math.max(worst, Math.abs(exact.distanceFrom(piece.pointAt((double) i / PLACES))));
            }
        }
        return worst;
    }

    /** The opening, counter-clockwise, the middle of ring tooth 0 on +x: a hole for the ring's region. */
    public Contour opening() {
        double pitch = form.pitchAngle();
        List<List<Segment>> spaces = new ArrayList<>();
        for (int i = 0; i < form.teeth(); i++) {
            Placement turn = Placement.turn((i + 0.5) * pitch);
            List<Segment> turned = new ArrayList<>(space.size());
            for (Segment piece : space) {
                turned.add(piece.placed(turn));
            }
            spaces.add(turned);
        }
        List<Segment> pieces = new ArrayList<>();
        List<Segment> before = spaces.get(form.teeth() - 1);
        double half = pitch / 2 + flank.start().angle();
        for (int i = 0; i < form.teeth(); i++) {
            List<Segment> next = spaces.get(i);
            Point from = before.get(before.size() - 1).end();
            Point to = next.get(0).start();
            double start = Angles.signed(i * pitch - half);
            pieces.add(new Arc(Point.ORIGIN, form.tipRadius(), start, 2 * half, from, to));
            pieces.addAll(next);
            before = next;
        }
        return new Contour(pieces);
    }
}
