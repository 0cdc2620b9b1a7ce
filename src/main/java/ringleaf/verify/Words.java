package ringleaf.verify;

import java.math.BigDecimal;
import java.math.RoundingMode;
import ringleaf.geom.Point;

/** Figures and places as they stand in messages, the same in every locale. */
final class Words {
    private Words() {}

    /** At most {@code decimals} places, no trailing zeros, never in powers of ten. */
    static String number(double value, int decimals) {
        if (Double.isNaN(value) || Double.isInfinite(value)) {
            return "no number";
        }
        BigDecimal d = new BigDecimal(value).setScale(decimals, RoundingMode.HALF_EVEN);
        return d.signum() == 0 ? "0" : d.stripTrailingZeros().toPlainString();
    }

    static String mm(double value) {
        return number(value, 3) + " mm";
    }

    static String area(double value) {
        return number(value, value < 0.01 ? 6 : 4) + " mm²";
    }

    static String degrees(double radians) {
        return number(Math.toDegrees(radians), 2) + "°";
    }

    static String at(Point p) {
        return "at (" + number(p.x(), 3) + ", " + number(p.y(), 3) + ")";
    }
}
