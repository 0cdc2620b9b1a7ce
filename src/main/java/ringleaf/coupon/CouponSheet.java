// SPDX-License-Identifier: Apache-2.0
package ringleaf.coupon;

import java.util.List;
import ringleaf.spec.text.Decimal;

/**
 * Writes the sheet that goes with a coupon: plain YAML, to be filled in by hand in any editor. It names the piece and
 * repeats every drawn size, so that a filled sheet says all there is to know.
 */
public final class CouponSheet {
    /** Blanks for repeated readings, by way of advice. */
    private static final int READINGS = 3;

    private final StringBuilder out = new StringBuilder();
    private final Coupon coupon;

    private CouponSheet(Coupon coupon) {
        this.coupon = coupon;
    }

    /** The text of the sheet, to be filled in. */
    public static String of(Coupon coupon) {
        return new CouponSheet(coupon).text();
    }

    private String text() {
        head();
        instruments();
        measured(
                Feature.Kind.PIN,
                coupon.layers()
                        ? "Upright pins: diameter, outside jaws, half way up, turned between the readings."
                        : "Fingers: width, outside jaws, half way out, burr taken off first.");
        measured(
                Feature.Kind.BAR,
                "The plate over all with the outside jaws, beside the lettering X and Y: BX"
                        + " from left to"
                        + " right, BY from\n# top to bottom at the left or right end, where neither comb nor pins stand.");
        measured(
                Feature.Kind.HOLE,
                "Holes: the thickest pin gauge or drill shank that goes in by its own"
                        + " weight, or the"
                        + " inside jaws, in\n# different directions.");
        measured(Feature.Kind.SLOT, "Slots: width, inside jaws or gauges, at different places along them.");
        tries();
        looks(Feature.Kind.WEB, "whole", "Webs: is the web whole, straight and not burnt through? yes or no for each.");
        looks(Feature.Kind.DOT, "open", "Small holes: does light fall through all of it? yes or no for each.");
        return out.toString();
    }

    private void head() {
        out.append("# What piece ")
                .append(coupon.id())
                .append(" measures: ")
                .append(coupon.process())
                .append(" on ");
        out.append(coupon.stock()).append(".\n#\n");
        out.append("# Make the piece as your machine makes parts every day, but with no correction of kerf or"
                + " size switched"
                + " on.\n");
        out.append("# Let it cool, take burr and skin off, then fill in the brackets: at least two readings each, ");
        out.append(READINGS).append(" are better,\n");
        out.append("# each with the instrument taken off and set anew, e.g.   measured: [3.87, 3.89, 3.88]\n");
        out.append("# A dot parts the decimals, a comma the readings. What broke or cannot be reached gets  "
                + " measured: none\n");
        out.append("# Then:   ringleaf coupon --read this-file.yaml\n\n");
        out.append("ringleaf-coupon: ")
                .append(Coupon.FORM)
                .append("    # these lines say which piece it is:" + " leave them\n");
        out.append("piece: ").append(coupon.id()).append('\n');
        out.append("process: ").append(coupon.process()).append('\n');
        out.append("stock: ").append(coupon.stock()).append('\n');
        out.append("makes: ").append(coupon.layers() ? "layers" : "sheet").append('\n');
        out.append("thickness: ").append(Decimal.of(coupon.thickness())).append("mm\n\n");
        out.append("units: mm             # of your readings: mm, cm, in or thou; drawn sizes are always mm\n\n");
    }

    private void instruments() {
        out.append("# The instruments: the smallest step they show, and the error their maker allows (a caliper's sheet"
                + " says both).\n");
        out.append("outside: {step: 0.01mm, error: 0.02mm}\n");
        out.append("inside: {step: 0.01mm, error: 0.03mm}\n\n");
        out.append("# A round steel pin of about ").append(Decimal.of(coupon.pin()));
        out.append(" mm that you try in comb and holes: its diameter. No such pin: none\n");
        out.append("pin: {drawn: ").append(Decimal.of(coupon.pin())).append("mm, measured: []}\n\n");
    }

    private void measured(Feature.Kind kind, String words) {
        out.append("# ").append(words).append('\n').append(kind.group()).append(":\n");
        for (Feature feature : coupon.of(kind)) {
            line(feature, "measured: []");
        }
        out.append('\n');
    }

    private void looks(Feature.Kind kind, String key, String words) {
        out.append("# ").append(words).append('\n').append(kind.group()).append(":\n");
        for (Feature feature : coupon.of(kind)) {
            line(feature, key + ": ");
        }
        out.append('\n');
    }

    private void tries() {
        out.append("# Comb at the lower edge, narrowest slot first. Slide the tongue T in flat, and the pin"
                + " upright.\n");
        out.append("# Write the name of the slot, e.g. C4; none where it goes into no slot.\n");
        out.append(Feature.Kind.COMB.group()).append(":\n");
        sizes(Feature.Kind.COMB);
        out.append("  tongue-enters:        # the narrowest slot that the tongue goes into without force\n");
        out.append("  pin-slides:           # the narrowest slot along which the pin slides freely; none"
                + " without a pin\n\n");
        out.append("# Row F, smallest hole first: the pin pushed in by hand.\n");
        out.append(Feature.Kind.FIT.group()).append(":\n");
        sizes(Feature.Kind.FIT);
        out.append("  pin-held:             # the largest hole that still holds the pin when you let go upside down\n");
        out.append("  pin-turns:            # the smallest hole in which the pin turns freely without wobbling\n\n");
    }

    private void sizes(Feature.Kind kind) {
        out.append("  drawn: {");
        List<Feature> some = coupon.of(kind);
        for (int i = 0; i < some.size(); i++) {
            out.append(i == 0 ? "" : ", ").append(some.get(i).name()).append(": ");
            out.append(Decimal.of(some.get(i).drawn())).append("mm");
        }
        out.append("}\n");
    }

    private void line(Feature feature, String rest) {
        out.append("  ").append(feature.name()).append(": {drawn: ").append(Decimal.of(feature.drawn()));
        out.append("mm, ").append(rest).append("}\n");
    }
}
