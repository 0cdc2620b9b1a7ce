// SPDX-License-Identifier: Apache-2.0
package ringleaf.tooth;

import java.util.ArrayList;
import java.util.List;
import ringleaf.curve.Fillet;
import ringleaf.geom.Angles;
import ringleaf.geom.Arc;
import ringleaf.geom.Contour;
import ringleaf.geom.Path;
import ringleaf.geom.Placement;
import ringleaf.geom.Point;
import ringleaf.geom.Segment;
import ringleaf.geom.Tolerance;

/**
 * Outlines of external teeth: true arcs about the gear's axis on tip and root circles, and tangent-continuous arcs
 * within a tolerance of involute and root curve.
 *
 * <p>The axis is the origin. One flank is fitted; every other is its mirror image or turned copy, and neighbours share
 * their end points as values. A flank is tangent-continuous from the root circle on, except at the joint of an
 * undercut, which is a true corner; so are the tip's edges.
 */
public final class GearOutline {
    /** Share of the module within which a rim counts as lying on the tip circle. */
    private static final double SAME_CIRCLE = 1e-9;
    /** Least tip thickness and waist that make an outline, as a share of the module; below lies rounding only. */
    private static final double NO_WIDTH = 1e-7;

    private static final int WAIST_SAMPLES = 64;

    private final ToothForm form;
    private final Tolerance tolerance;
    private final TipFinish finish;
    private final FlankOutline flank;
    private final List<Segment> space;

    private GearOutline(ToothForm form, Tolerance tolerance, TipFinish finish, FlankOutline flank) {
        this.form = form;
        this.tolerance = tolerance;
        this.finish = finish;
        this.flank = flank;
        this.space = FlankOutline.space(flank, flank);
    }

    /**
     * Fits the flank.
     *
     * @param tolerance greatest distance from the true curve, as a rule {@link Tolerance#CURVE}
     * @throws IllegalArgumentException when such teeth cannot be: pointed below the tip circle, cut off by undercut,
     *     or without any involute; the message names the limit
     */
    public static GearOutline of(ToothForm form, Tolerance tolerance) {
        return of(form, tolerance, TipFinish.NONE);
    }

    /** The same with finished tips; refused too when relief begins below the involute. */
    public static GearOutline of(ToothForm form, Tolerance tolerance, TipFinish finish) {
        ToothFlank exact = ToothFlank.of(form);
        double noWidth = NO_WIDTH * form.module();
        if (!(form.tipThickness() > noWidth)) {
            throw new IllegalArgumentException("the flanks of " + form.teeth() + " teeth with profile shift "
                    + form.shift() + " meet at radius " + form.peakRadius() + " mm, inside the tip radius "
                    + form.tipRadius() + " mm");
        }
        if (!(exact.leastHalfAngle(WAIST_SAMPLES) * form.rootRadius() > noWidth)) {
            throw new IllegalArgumentException("undercut cuts off the " + form.teeth()
                    + " teeth: the profile shift must be nearer to " + form.leastShift());
        }
        FlankOutline flank = FlankOutline.of(exact, tolerance, finish);
        if (!(form.pitchAngle() / 2 - flank.tipHalfAngle() > 0)) {
            throw new IllegalArgumentException("a tip relief of " + finish.relief() + " mm leaves no tip");
        }
        return new GearOutline(form, tolerance, finish, flank);
    }

    public ToothForm form() {
        return form;
    }

    /** Greatest distance of the flank's arcs from the true curve, mm, measured independently of the fitting. */
    public double deviation() {
        return flank.deviation();
    }

    /** The same for a sector in a rim of this radius, whose outermost flanks run on beyond the tip circle. */
    public double deviation(double rimRadius) {
        return Math.max(deviation(), rimFlank(rimRadius).deviation());
    }

    /** The whole gear, counter-clockwise, the middle of tooth 0 on +x. */
    public Contour external() {
        double pitch = form.pitchAngle();
        List<List<Segment>> spaces = new ArrayList<>(form.teeth());
        for (int i = 0; i < form.teeth(); i++) {
            spaces.add(turned(space, (i + 0.5) * pitch));
        }
        List<Segment> pieces = new ArrayList<>();
        List<Segment> before = spaces.get(form.teeth() - 1);
        for (int i = 0; i < form.teeth(); i++) {
            List<Segment> next = spaces.get(i);
            pieces.add(tip(end(before), start(next), i * pitch));
            pieces.addAll(next);
            before = next;
        }
        return finished(new Contour(pieces), form.tipRadius());
    }

    /** The contour with its tips' edges rounded. */
    private Contour finished(Contour sharp, double edgeRadius) {
        if (finish.rounding() == 0) {
            return sharp;
        }
        double hair = SAME_CIRCLE * form.module();
        Fillet.Rounded rounded = Fillet.of(
                sharp,
                finish.rounding(),
                p -> Math.abs(p.norm() - form.tipRadius()) <= hair || Math.abs(p.norm() - edgeRadius) <= hair);
        if (!rounded.left().isEmpty()) {
            throw new IllegalArgumentException(
                    "a rounding of " + finish.rounding() + " mm does not fit the tips' edges");
        }
        return rounded.contour();
    }

    /** One tooth space with its middle in {@code direction} (rad), counter-clockwise from tip corner to tip corner. */
    public Path toothSpace(double direction) {
        return new Path(turned(space, direction));
    }

    /**
     * A round disc of radius {@code rimRadius} with {@code spaces} neighbouring tooth spaces cut into its rim, centred
     * about {@code centreAngle} (rad), counter-clockwise. The teeth between the spaces end on the tip circle. Where
     * the rim lies outside it, the two outermost flanks run on as involutes up to the rim.
     *
     * @param rimRadius mm, the tip radius or more
     * @param spaces from 1 to one less than the teeth of the full circle
     * @throws IllegalArgumentException outside these limits
     */
    public Contour sectorRim(double rimRadius, int spaces, double centreAngle) {
        if (spaces < 1 || spaces >= form.teeth()) {
            throw new IllegalArgumentException(spaces + " tooth spaces: a sector has from 1 to " + (form.teeth() - 1));
        }
        FlankOutline last = rimFlank(rimRadius);
        double pitch = form.pitchAngle();
        double first = centreAngle - (spaces - 1) / 2.0 * pitch;
        double rim = Angles.TURN - (spaces - 1) * pitch - 2 * last.tipHalfAngle();
        if (!(rim > 0)) {
            throw new IllegalArgumentException("no rim of radius " + rimRadius + " mm is left beside the sector");
        }
        List<Segment> cut = new ArrayList<>();
        for (int i = 0; i < spaces; i++) {
            FlankOutline lower = i == 0 ? last : flank;
            FlankOutline upper = i == spaces - 1 ? last : flank;
            List<Segment> own = lower == flank && upper == flank ? space : FlankOutline.space(lower, upper);
            List<Segment> placed = turned(own, first + i * pitch);
            if (i > 0) {
                cut.add(tip(end(cut), start(placed), first + (i - 0.5) * pitch));
            }
            cut.addAll(placed);
        }
        double from = first + (spaces - 1) * pitch + last.tipHalfAngle();
        List<Segment> pieces = new ArrayList<>(cut.size() + 1);
        double radius = last.involute().end().norm();
        pieces.add(new Arc(Point.ORIGIN, radius, Angles.signed(from), rim, end(cut), start(cut)));
        pieces.addAll(cut);
        return finished(new Contour(pieces), radius);
    }

    private FlankOutline rimFlank(double rimRadius) {
        double over = rimRadius - form.tipRadius();
        if (Math.abs(over) <= SAME_CIRCLE * form.module()) {
            return flank;
        }
        if (!(over > 0)) {
            throw new IllegalArgumentException(
                    "rim radius " + rimRadius + " mm lies inside the tip radius " + form.tipRadius() + " mm");
        }
        return FlankOutline.of(ToothFlank.of(form.withTipRadius(rimRadius)), tolerance, finish);
    }

    /** The arc of the tip circle over the tooth whose middle lies in {@code direction}. */
    private Arc tip(Point from, Point to, double direction) {
        double half = form.pitchAngle() / 2 - flank.tipHalfAngle();
        return new Arc(Point.ORIGIN, form.tipRadius(), Angles.signed(direction - half), 2 * half, from, to);
    }

    private static List<Segment> turned(List<Segment> pieces, double angle) {
        Placement turn = Placement.turn(angle);
        List<Segment> turned = new ArrayList<>(pieces.size());
        for (Segment piece : pieces) {
            turned.add(piece.placed(turn));
        }
        return turned;
    }

    private static Point start(List<Segment> pieces) {
        return pieces.get(0).start();
    }

    private static Point end(List<Segment> pieces) {
        return pieces.get(pieces.size() - 1).end();
    }
}
