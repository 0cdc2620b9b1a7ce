// SPDX-License-Identifier: Apache-2.0
package ringleaf.verify;

/**
 * The area two shapes share, by Green's theorem over those stretches of either outline that lie in the other. Where
 * outlines run along each other the first shape's stretch stands for both. Exact to rounding and to the hair times
 * the length of such runs.
 */
final class SharedArea {
    private SharedArea() {}

    /** In mm²; {@code hair} is how far beside an outline one looks to tell inside from outside, mm. */
    static double of(Shape a, Shape b, double hair) {
        if (a.gapTo(b) > 0) {
            return 0;
        }
        double area = 0;
        for (Piece p : a.pieces) {
            Walk walk = new Walk(p, hair);
            walk.stopAt(b);
            int stretches = walk.stretches();
            for (int i = 0; i < stretches; i++) {
                if (walk.look(i) && b.contains(walk.x + hair * walk.leftX, walk.y + hair * walk.leftY)) {
                    area += walk.areaTerm(i);
                }
            }
        }
        for (Piece p : b.pieces) {
            Walk walk = new Walk(p, hair);
            walk.stopAt(a);
            int stretches = walk.stretches();
            for (int i = 0; i < stretches; i++) {
                if (walk.look(i)
                        && a.contains(walk.x + hair * walk.leftX, walk.y + hair * walk.leftY)
                        && a.contains(walk.x - hair * walk.leftX, walk.y - hair * walk.leftY)) {
                    area += walk.areaTerm(i);
                }
            }
        }
        return area;
    }
}
