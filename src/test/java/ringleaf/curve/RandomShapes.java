// SPDX-License-Identifier: Apache-2.0
package ringleaf.curve;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import ringleaf.geom.Arc;
import ringleaf.geom.Box;
import ringleaf.geom.Contour;
import ringleaf.geom.Point;
import ringleaf.geom.Region;

/** Seeded outlines for trials; on a grid they meet in tangents, shared edges and common circles by design. */
final class RandomShapes {
    private final Random random;
    private final boolean grid;

    RandomShapes(long seed, boolean grid) {
        this.random = new Random(seed);
        this.grid = grid;
    }

    List<Region> some(int least, int most) {
        List<Region> regions = new ArrayList<>();
        int n = least + random.nextInt(most - least + 1);
        for (int i = 0; i < n; i++) {
            regions.add(one());
        }
        return regions;
    }

    Region one() {
        switch (random.nextInt(7)) {
            case 0:
                return Region.disc(point(), length());
            case 1:
                Point corner = point();
                return Region.of(Contour.rectangle(Box.of(corner, corner.plus(new Point(length() + 1, length() + 1)))));
            case 2:
                return Region.of(Shapes.obround(point(), point(), length()));
            case 3:
                double start = angle();
                double turn = grid ? (1 + random.nextInt(2)) * Math.PI / 2 : 0.3 + 3.5 * random.nextDouble();
                return Region.of(ArcSlot.of(point(), length() + 4, length() / 2, start, start + turn));
            case 4:
                double inner = length();
                return Region.ring(point(), inner, inner + length());
            case 5:
                return crescent();
            default:
                double rInner = length();
                double from = angle();
                double sweep = grid ? (1 + random.nextInt(3)) * Math.PI / 2 : 0.2 + 5 * random.nextDouble();
                return Region.of(Shapes.annulusSector(point(), rInner, rInner + length(), from, from + sweep));
        }
    }

    private Region crescent() {
        Point a = point();
        Point b = a.plus(new Point(length() + 1, grid ? 0 : length()));
        double outer = grid ? 1 : 0.5 + random.nextDouble();
        return Region.of(Contour.of(Arc.ofBulge(a, b, outer), Arc.ofBulge(b, a, -outer * 0.5)));
    }

    private Point point() {
        return grid
                ? new Point(random.nextInt(7), random.nextInt(7))
                : new Point(12 * random.nextDouble(), 12 * random.nextDouble());
    }

    private double length() {
        return grid ? 1 + random.nextInt(3) : 0.3 + 3 * random.nextDouble();
    }

    private double angle() {
        return grid ? random.nextInt(4) * Math.PI / 2 : 6 * random.nextDouble();
    }
}
