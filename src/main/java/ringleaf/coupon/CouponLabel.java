// SPDX-License-Identifier: Apache-2.0
package ringleaf.coupon;

import java.util.List;
import ringleaf.curve.StrokeFont;
import ringleaf.geom.Path;
import ringleaf.geom.Point;

/**
 * Lettering on a coupon.
 *
 * @param corner lower left, mm
 * @param height of a capital, mm
 */
record CouponLabel(String text, Point corner, double height) {
    /** Capitals beside features, mm: the least that most machines draw legibly (common practice, no source). */
    static final double HEIGHT = 2.2;

    static CouponLabel centred(String text, double x, double y) {
        return new CouponLabel(text, new Point(x - StrokeFont.width(text, HEIGHT) / 2, y), HEIGHT);
    }

    /** As high as asked for, or lower so that it stays within the width. */
    static CouponLabel within(String text, double x, double y, double width, double height) {
        double fitting = height * Math.min(1, width / StrokeFont.width(text, height));
        return new CouponLabel(text, new Point(x, y), fitting);
    }

    List<Path> strokes() {
        return StrokeFont.strokes(text, corner, height);
    }
}
