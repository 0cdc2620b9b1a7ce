// SPDX-License-Identifier: Apache-2.0
package ringleaf.outline;

import ringleaf.geom.Point;

/**
 * A block put into a drawing (groups as in the format's public reference, from memory).
 *
 * @param at where the block's base point comes to lie
 * @param x scale across, in the block's own frame
 * @param y scale up
 * @param turn rad, counter-clockwise
 */
record DxfInsert(String block, Point at, double x, double y, double turn, boolean isArray) {
    static DxfInsert of(DxfEntity entity) {
        double x = entity.has(41) ? entity.number(41) : 1;
        double y = entity.has(42) ? entity.number(42) : 1;
        double turn = entity.has(50) ? Math.toRadians(entity.number(50)) : 0;
        boolean array = entity.whole(70) > 1 || entity.whole(71) > 1;
        return new DxfInsert(entity.text(2, ""), entity.point(10), x, y, turn, array);
    }

    /** From the block's frame to that of the drawing. */
    Affine map(Point base) {
        return Affine.shift(at.x(), at.y())
                .after(Affine.turn(turn))
                .after(new Affine(x, 0, 0, y, 0, 0))
                .after(Affine.shift(-base.x(), -base.y()));
    }
}
