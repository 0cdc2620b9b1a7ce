// SPDX-License-Identifier: Apache-2.0
package ringleaf.coupon;

import java.util.ArrayList;
import java.util.List;
import ringleaf.curve.Overlay;
import ringleaf.curve.Shapes;
import ringleaf.geom.Path;
import ringleaf.geom.Region;
import ringleaf.geom.Segment;
import ringleaf.part.Family;
import ringleaf.part.Layer;
import ringleaf.part.Part;
import ringleaf.part.Words;

/**
 * The coupon as a part: one layer with lettering as single strokes on {@code mark} where it is cut from sheet; where
 * it is built up, three, the lettering raised and the pins standing.
 */
public final class CouponParts {
    /** Height of raised lettering, mm: two or three layers of most printers (common practice, no source). */
    private static final double RAISED = 0.6;
    /** Width of its strokes, mm: a line of the usual nozzle. */
    private static final double STROKE = 0.45;
    /** Height of standing pins, mm: a caliper's jaws reach them. */
    private static final double STANDING = 8;

    private CouponParts() {}

    /** The part to cut or to print: plate and tongue in one file. */
    public static Part of(Coupon coupon) {
        CouponOutline outline = new CouponOutline(coupon);
        double top = coupon.thickness();
        List<Layer> layers = new ArrayList<>();
        layers.add(new Layer(outline.plate(), 0, top));
        List<Path> marks = new ArrayList<>();
        if (coupon.layers()) {
            List<Region> raised = new ArrayList<>(outline.standing());
            for (CouponLabel label : outline.labels()) {
                raised.addAll(letters(label));
            }
            layers.add(new Layer(raised, top, top + RAISED));
            layers.add(new Layer(outline.standing(), top + RAISED, top + STANDING));
        } else {
            for (CouponLabel label : outline.labels()) {
                marks.addAll(label.strokes());
            }
            marks.addAll(outline.bar());
        }
        String note = "piece " + coupon.id() + ": cut it as it is, without any correction of kerf or size in"
                + " the machine"
                + "; " + Words.number(top, 3) + " mm thick";
        Part.Source source = new Part.Source(coupon.process(), coupon.stock());
        return new Part("coupon", Family.PLATE, 1, source, layers, marks, note);
    }

    private static List<Region> letters(CouponLabel label) {
        List<Region> strokes = new ArrayList<>();
        for (Path path : label.strokes()) {
            for (Segment piece : path.segments()) {
                strokes.add(Region.of(Shapes.obround(piece.start(), piece.end(), STROKE / 2)));
            }
        }
        return Overlay.union(strokes);
    }
}
