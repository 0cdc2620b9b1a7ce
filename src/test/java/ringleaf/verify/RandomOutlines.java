// SPDX-License-Identifier: Apache-2.0
package ringleaf.verify;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import ringleaf.geom.Arc;
import ringleaf.geom.Contour;
import ringleaf.geom.Line;
import ringleaf.geom.Point;
import ringleaf.geom.Region;
import ringleaf.geom.Segment;

/** Random outlines of lines and arcs that do not cross themselves. */
final class RandomOutlines {
    private RandomOutlines() {}

    /** A star-shaped outline about a random centre, its corners joined by lines and shallow arcs of either sense. */
    static Region star(Random random) {
        Point centre = new Point(random.nextDouble() * 20 - 10, random.nextDouble() * 20 - 10);
        int n = 3 + random.nextInt(6);
        double turned = random.nextDouble() * 6;
        List<Point> corners = new ArrayList<>();
        for (int i = 0; i < n; i++) {
            double angle = turned + 2 * Math.PI * (i + 0.4 * random.nextDouble()) / n;
            corners.add(centre.plus(Point.polar(4 + 4 * random.nextDouble(), angle)));
        }
        List<Segment> segments = new ArrayList<>();
        for (int i = 0; i < n; i++) {
            Point a = corners.get(i);
            Point b = corners.get((i + 1) % n);
            double bulge = random.nextInt(3) == 0 ? 0 : random.nextDouble() * 0.16 - 0.08;
            segments.add(bulge == 0 ? new Line(a, b) : Arc.ofBulge(a, b, bulge));
        }
        Contour outer = new Contour(segments);
        return random.nextBoolean() ? Region.of(outer) : Region.of(outer, Contour.circle(centre, 0.3));
    }

    static Segment segment(Random random) {
        Point a = new Point(random.nextDouble() * 20 - 10, random.nextDouble() * 20 - 10);
        int form = random.nextInt(4);
        if (form == 0) {
            return new Line(a, new Point(random.nextDouble() * 20 - 10, random.nextDouble() * 20 - 10));
        }
        double radius = 0.2 + 8 * random.nextDouble();
        if (form == 1) {
            return Arc.circle(a, radius);
        }
        double sweep = (random.nextDouble() * 6.2 + 0.01) * (random.nextBoolean() ? 1 : -1);
        return Arc.of(a, radius, random.nextDouble() * 6.2, sweep);
    }
}
