// SPDX-License-Identifier: Apache-2.0
package ringleaf.fabricate;

import java.util.ArrayList;
import java.util.List;
import ringleaf.curve.Flattening;
import ringleaf.curve.Offset;
import ringleaf.geom.Box;
import ringleaf.geom.Point;
import ringleaf.geom.Region;
import ringleaf.geom.Tolerance;

/** A piece at every angle at which it may lie. */
final class NestShape {
    private static final int FREE = 24;

    final NestPiece piece;
    final List<TurnedShape> turned = new ArrayList<>();
    final double area;
    final double longest;

    NestShape(NestPiece piece, String turn, double gap, double cell, double roomWidth, double roomHeight) {
        this.piece = piece;
        Box box = piece.outline().box();
        area = piece.outline().area();
        longest = Math.max(box.width(), box.height());
        // growing a connected region by a gap gives one region
        Region wide =
                gap == 0 ? piece.outline() : Offset.of(piece.outline(), gap).get(0);
        for (double angle : angles(piece.outline(), turn)) {
            Box turnedBox = boxAt(piece.outline(), angle);
            if (turnedBox.width() > roomWidth || turnedBox.height() > roomHeight) {
                continue;
            }
            TurnedShape shape = TurnedShape.of(piece.outline(), wide, angle, cell);
            boolean known = false;
            for (TurnedShape other : turned) {
                known |= other.looksLike(shape);
            }
            if (!known) {
                turned.add(shape);
            }
        }
    }

    /** Whether it fits at any angle. */
    static boolean fits(Region outline, String turn, double roomWidth, double roomHeight) {
        for (double angle : angles(outline, turn)) {
            Box box = boxAt(outline, angle);
            if (box.width() <= roomWidth && box.height() <= roomHeight) {
                return true;
            }
        }
        return false;
    }

    private static Box boxAt(Region outline, double angle) {
        return outline.placed(ringleaf.geom.Placement.turn(angle)).box();
    }

    static List<Double> angles(Region outline, String turn) {
        int steps =
                switch (turn) {
                    case "free" -> FREE;
                    case "quarter" -> 4;
                    case "half" -> 2;
                    default -> 1;
                };
        List<Double> angles = new ArrayList<>();
        for (int i = 0; i < steps; i++) {
            angles.add(2 * Math.PI * i / steps);
        }
        if (steps == FREE) {
            double slim = slimmest(outline);
            for (int i = 0; i < 4; i++) {
                angles.add(slim + i * Math.PI / 2);
            }
        }
        return angles;
    }

    /** The turn, to half a degree, after which the box is least; a usual angle serves as well where it is as small. */
    private static double slimmest(Region outline) {
        List<Point> points = Flattening.points(outline.outer(), new Tolerance(0.05));
        double least = Double.POSITIVE_INFINITY;
        double best = 0;
        for (int i = 0; i < 180; i++) {
            double angle = Math.toRadians(i * 0.5);
            double c = Math.cos(angle);
            double s = Math.sin(angle);
            double minX = Double.POSITIVE_INFINITY;
            double maxX = Double.NEGATIVE_INFINITY;
            double minY = Double.POSITIVE_INFINITY;
            double maxY = Double.NEGATIVE_INFINITY;
            for (Point p : points) {
                double x = c * p.x() - s * p.y();
                double y = s * p.x() + c * p.y();
                minX = Math.min(minX, x);
                maxX = Math.max(maxX, x);
                minY = Math.min(minY, y);
                maxY = Math.max(maxY, y);
            }
            double size = (maxX - minX) * (maxY - minY);
            if (size < least * (1 - 1e-6)) {
                least = size;
                best = angle;
            }
        }
        return best;
    }
}
