// SPDX-License-Identifier: Apache-2.0
package ringleaf.curve;

import ringleaf.geom.Point;
import ringleaf.geom.Segment;

/** A piece between two nodes that crosses no other, and how often each operand's outlines run along it. */
final class Edge {
    final Segment segment;
    final int from;
    final int to;
    /** Runs from start to end less runs back, of the first operand's outlines. */
    int first;
    /** The same of the second operand's outlines. */
    int second;

    Edge(Segment segment, int from, int to) {
        this.segment = segment;
        this.from = from;
        this.to = to;
    }

    void count(int operand, int runs) {
        if (operand == 0) {
            first += runs;
        } else {
            second += runs;
        }
    }

    /** 1 when {@code piece} runs along this edge, -1 when it runs back along it, 0 when it runs elsewhere. */
    int along(Segment piece, int pieceFrom, int pieceTo, double near) {
        boolean forth = pieceFrom == from && pieceTo == to;
        boolean back = pieceFrom == to && pieceTo == from;
        if (!forth && !back) {
            return 0;
        }
        // pieces with common ends are one when their middles are: lines and arcs part most in the middle
        Point middle = segment.pointAt(0.5);
        if (middle.distance(piece.pointAt(0.5)) > near) {
            return 0;
        }
        if (forth && back) {
            return segment.tangentAt(0.5).dot(piece.tangentAt(0.5)) > 0 ? 1 : -1;
        }
        return forth ? 1 : -1;
    }
}
