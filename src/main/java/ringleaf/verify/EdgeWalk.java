// SPDX-License-Identifier: Apache-2.0
package ringleaf.verify;

import java.util.List;

/**
 * Decides exactly whether leaves cover what they must, without polygons. What is uncovered is bounded by stretches of
 * leaf edges, of the opening's edge or of the clear area's edge; so it is enough to walk along all of them, stop at
 * every crossing, and look a hair beside each stretch. Gaps narrower than the hair go unseen.
 */
final class EdgeWalk {
    private final Shape clear;
    private final Shape opening;
    private final List<Inset> leaves;
    private final double hair;

    EdgeWalk(Shape clear, Shape opening, List<Inset> leaves, double hair) {
        this.clear = clear;
        this.opening = opening;
        this.leaves = leaves;
        this.hair = hair;
    }

    /**
     * Whether anything is uncovered; {@code copies} leaves from the first on are walked along, and as many pieces of
     * the opening (others are turned copies of these).
     */
    boolean leaks(int walkedLeaves, int openingPieces) {
        for (Piece p : clear.pieces) {
            if (bare(p, null, 1)) {
                return true;
            }
        }
        for (int i = 0; i < openingPieces; i++) {
            if (bare(opening.pieces[i], null, -1)) {
                return true;
            }
        }
        for (int k = 0; k < walkedLeaves; k++) {
            Inset leaf = leaves.get(k);
            for (Piece p : leaf.curves) {
                if (clear.gapTo(p) <= 0 && bare(p, leaf, -1)) {
                    return true;
                }
            }
        }
        return false;
    }

    /** Whether some stretch has nothing beside it, {@code side} 1 for its left and -1 for its right. */
    private boolean bare(Piece p, Inset own, int side) {
        Walk walk = new Walk(p, hair);
        walk.stopAt(clear);
        walk.stopAt(opening);
        for (int k = 0; k < leaves.size(); k++) {
            Inset leaf = leaves.get(k);
            if (leaf.shape.gapTo(p) <= hair) {
                for (Piece q : leaf.curves) {
                    walk.stopAt(q);
                }
            }
        }
        int stretches = walk.stretches();
        for (int i = 0; i < stretches; i++) {
            if (walk.look(i)
                    && (own == null || own.isEdge(walk.x, walk.y, hair / 4))
                    && open(walk.x + side * hair * walk.leftX, walk.y + side * hair * walk.leftY)) {
                return true;
            }
        }
        return false;
    }

    private boolean open(double x, double y) {
        if (!clear.contains(x, y) || opening.contains(x, y)) {
            return false;
        }
        for (int k = 0; k < leaves.size(); k++) {
            if (leaves.get(k).contains(x, y)) {
                return false;
            }
        }
        return true;
    }
}
