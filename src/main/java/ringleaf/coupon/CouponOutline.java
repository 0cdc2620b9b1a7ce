// SPDX-License-Identifier: Apache-2.0
package ringleaf.coupon;

import java.util.ArrayList;
import java.util.List;
import ringleaf.curve.Shapes;
import ringleaf.geom.Box;
import ringleaf.geom.Contour;
import ringleaf.geom.Line;
import ringleaf.geom.Path;
import ringleaf.geom.Point;
import ringleaf.geom.Region;

/**
 * Lays out a coupon: mm, lower left corner of the plate at the origin. Open comb slots stand in the lower edge, rows of
 * holes above them, webs between windows, holes and slots to be measured, and pins at the top: fingers of the plate
 * where it is cut from sheet, upright round pins where it is built up. Jaws of a caliper (6 mm) pass between pins.
 */
final class CouponOutline {
    private static final double COMB_DEPTH = 9;
    private static final double PITCH = 7;
    private static final double FIT_ROW = 21;
    private static final double DOT_ROW = 31.5;
    private static final double WEB_FROM = 40;
    private static final double WEB_TO = 47;
    private static final double WINDOW = 5;
    private static final double WIDE_ROW = 59.5;
    private static final double SLOT_LENGTH = 12;
    private static final double BETWEEN_HOLES = 4;
    private static final double SHEET_TOP = 78;
    private static final double STAND_TOP = 92;
    private static final double FINGER = 10;
    private static final double JAW = 7;
    private static final double SCALE_FROM = 10;
    private static final double SCALE_TO = 110;
    private static final double SCALE_Y = 15.5;
    /** The tongue stands beside the plate. */
    private static final double TONGUE_X = 126;

    private static final double TONGUE_LENGTH = 16;
    private static final double HANDLE = 12;

    private final Coupon coupon;
    private final List<Contour> holes = new ArrayList<>();
    private final List<Region> standing = new ArrayList<>();
    private final List<CouponLabel> labels = new ArrayList<>();
    private final Contour outer;

    CouponOutline(Coupon coupon) {
        this.coupon = coupon;
        outer = outer();
        row(Feature.Kind.FIT, FIT_ROW, FIT_ROW + 3.2);
        row(Feature.Kind.DOT, DOT_ROW, DOT_ROW + 3.4);
        webs();
        wide();
        if (coupon.layers()) {
            pinsThatStand();
        }
        heads();
    }

    /** Height of the plate, fingers apart. */
    static double height(boolean layers) {
        return layers ? STAND_TOP : SHEET_TOP;
    }

    /** The plate with its openings, and the tongue. */
    List<Region> plate() {
        return List.of(new Region(outer, holes), Region.of(tongue()));
    }

    /** Pins that stand on the plate; none where they are fingers. */
    List<Region> standing() {
        return standing;
    }

    List<CouponLabel> labels() {
        return labels;
    }

    /** Lines beside lettering: a bar of 100 mm with a tick every 10 mm. */
    List<Path> bar() {
        List<Path> lines = new ArrayList<>();
        lines.add(Path.of(new Line(new Point(SCALE_FROM, SCALE_Y), new Point(SCALE_TO, SCALE_Y))));
        for (int i = 0; i <= 10; i++) {
            double x = SCALE_FROM + i * 10;
            double up = i % 5 == 0 ? 1.6 : 1;
            lines.add(Path.of(new Line(new Point(x, SCALE_Y), new Point(x, SCALE_Y + up))));
        }
        return lines;
    }

    private List<Double> rowCentres(int count) {
        List<Double> centres = new ArrayList<>();
        double first = CouponPlan.LENGTH / 2 - PITCH * (count - 1) / 2;
        for (int i = 0; i < count; i++) {
            centres.add(first + i * PITCH);
        }
        return centres;
    }

    private List<Double> pinCentres() {
        List<Feature> pins = coupon.of(Feature.Kind.PIN);
        double width = JAW * (pins.size() - 1);
        for (Feature pin : pins) {
            width += pin.drawn();
        }
        List<Double> centres = new ArrayList<>();
        double x = (CouponPlan.LENGTH - width) / 2;
        for (Feature pin : pins) {
            centres.add(x + pin.drawn() / 2);
            x += pin.drawn() + JAW;
        }
        return centres;
    }

    private void pinsThatStand() {
        List<Double> centres = pinCentres();
        List<Feature> pins = coupon.of(Feature.Kind.PIN);
        for (int i = 0; i < pins.size(); i++) {
            Point centre = new Point(centres.get(i), STAND_TOP - 9);
            standing.add(Region.disc(centre, pins.get(i).drawn() / 2));
            labels.add(CouponLabel.centred(pins.get(i).name(), centres.get(i), STAND_TOP - 18.4));
        }
    }

    private Contour outer() {
        List<Point> corners = new ArrayList<>();
        corners.add(Point.ORIGIN);
        List<Feature> comb = coupon.of(Feature.Kind.COMB);
        List<Double> centres = rowCentres(comb.size());
        for (int i = 0; i < comb.size(); i++) {
            double half = comb.get(i).drawn() / 2;
            double x = centres.get(i);
            corners.add(new Point(x - half, 0));
            corners.add(new Point(x - half, COMB_DEPTH));
            corners.add(new Point(x + half, COMB_DEPTH));
            corners.add(new Point(x + half, 0));
            labels.add(CouponLabel.centred(comb.get(i).name(), x, COMB_DEPTH + 1.6));
        }
        double top = height(coupon.layers());
        corners.add(new Point(CouponPlan.LENGTH, 0));
        corners.add(new Point(CouponPlan.LENGTH, top));
        if (!coupon.layers()) {
            fingers(corners, top);
        }
        corners.add(new Point(0, top));
        return Contour.polygon(corners);
    }

    private void fingers(List<Point> corners, double top) {
        List<Feature> pins = coupon.of(Feature.Kind.PIN);
        List<Double> centres = pinCentres();
        for (int i = pins.size() - 1; i >= 0; i--) {
            double half = pins.get(i).drawn() / 2;
            double x = centres.get(i);
            corners.add(new Point(x + half, top));
            corners.add(new Point(x + half, top + FINGER));
            corners.add(new Point(x - half, top + FINGER));
            corners.add(new Point(x - half, top));
            labels.add(CouponLabel.centred(pins.get(i).name(), x, top - 3.4));
        }
    }

    private void row(Feature.Kind kind, double y, double labelY) {
        List<Feature> features = coupon.of(kind);
        List<Double> centres = rowCentres(features.size());
        for (int i = 0; i < features.size(); i++) {
            Point centre = new Point(centres.get(i), y);
            holes.add(Contour.circle(centre, features.get(i).drawn() / 2));
            labels.add(CouponLabel.centred(features.get(i).name(), centres.get(i), labelY));
        }
    }

    private void webs() {
        List<Feature> webs = coupon.of(Feature.Kind.WEB);
        double width = WINDOW * (webs.size() + 1);
        for (Feature web : webs) {
            width += web.drawn();
        }
        double x = (CouponPlan.LENGTH - width) / 2;
        for (Feature web : webs) {
            holes.add(Contour.rectangle(new Box(x, WEB_FROM, x + WINDOW, WEB_TO)));
            labels.add(CouponLabel.centred(web.name(), x + WINDOW + web.drawn() / 2, WEB_TO + 1.4));
            x += WINDOW + web.drawn();
        }
        holes.add(Contour.rectangle(new Box(x, WEB_FROM, x + WINDOW, WEB_TO)));
    }

    private void wide() {
        List<Feature> round = coupon.of(Feature.Kind.HOLE);
        List<Feature> slots = coupon.of(Feature.Kind.SLOT);
        double width = BETWEEN_HOLES * (round.size() + slots.size() - 1);
        for (Feature feature : round) {
            width += feature.drawn();
        }
        for (Feature feature : slots) {
            width += feature.drawn();
        }
        double x = (CouponPlan.LENGTH - width) / 2;
        double labelY = WIDE_ROW + SLOT_LENGTH / 2 + 1.3;
        for (Feature hole : round) {
            double radius = hole.drawn() / 2;
            holes.add(Contour.circle(new Point(x + radius, WIDE_ROW), radius));
            labels.add(CouponLabel.centred(hole.name(), x + radius, labelY));
            x += hole.drawn() + BETWEEN_HOLES;
        }
        for (Feature slot : slots) {
            double half = SLOT_LENGTH / 2;
            Box box = new Box(x, WIDE_ROW - half, x + slot.drawn(), WIDE_ROW + half);
            holes.add(Shapes.roundedRectangle(box, 0));
            labels.add(CouponLabel.centred(slot.name(), x + slot.drawn() / 2, labelY));
            x += slot.drawn() + BETWEEN_HOLES;
        }
    }

    private Contour tongue() {
        double half = coupon.pin() / 2;
        double x = TONGUE_X + HANDLE / 2;
        List<Point> corners = List.of(
                new Point(x - half, 0),
                new Point(x + half, 0),
                new Point(x + half, TONGUE_LENGTH),
                new Point(x + HANDLE / 2, TONGUE_LENGTH),
                new Point(x + HANDLE / 2, TONGUE_LENGTH + HANDLE),
                new Point(x - HANDLE / 2, TONGUE_LENGTH + HANDLE),
                new Point(x - HANDLE / 2, TONGUE_LENGTH),
                new Point(x - half, TONGUE_LENGTH));
        return Contour.polygon(corners);
    }

    private void heads() {
        labels.add(CouponLabel.centred("T", TONGUE_X + HANDLE / 2, TONGUE_LENGTH + HANDLE / 2 - 1));
        if (!coupon.layers()) {
            labels.add(new CouponLabel("100", new Point(SCALE_TO + 1.4, SCALE_Y - 0.2), CouponLabel.HEIGHT));
        }
        labels.add(CouponLabel.within(coupon.id(), 2, WEB_TO - 2, 21, 3));
        labels.add(CouponLabel.within(coupon.process(), 2, WEB_FROM - 1, 21, 1.6));
        labels.add(CouponLabel.within(coupon.stock(), 2, WEB_FROM - 4.4, 21, 1.6));
        double right = CouponPlan.LENGTH - 21;
        labels.add(CouponLabel.within("X " + Math.round(CouponPlan.LENGTH), right, WEB_FROM - 1, 18, 2));
        labels.add(CouponLabel.within("Y " + Math.round(height(coupon.layers())), right, WEB_FROM - 4.8, 18, 2));
    }
}
