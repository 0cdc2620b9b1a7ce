// SPDX-License-Identifier: Apache-2.0
package ringleaf.leaf;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Point;
import org.locationtech.jts.geom.util.AffineTransformation;
import org.locationtech.jts.operation.overlayng.OverlayNG;
import org.locationtech.jts.operation.overlayng.OverlayNGRobust;

/** Blades each thrown off to a corner of what the play of its joints allows, as polygons. */
final class ThrownBlades {
    private ThrownBlades() {}

    static double leak(SlotLaw law, double b, double clear, Play play, double loss, Random random) {
        Band band = law.band();
        Geometry blade = new FlatBlades(band, b, 1e-3).blade(band.width() / 2);
        ringleaf.geom.Point z = band.pin(law.pin(), b);
        double arm = law.pin().length(band) * Math.cos(law.pressure(b));
        double shift = play.bore() / 2 + play.position();
        double turn = (play.slot() / 2 + shift) / arm;
        double ring = random.nextDouble() * 2 * Math.PI;
        GeometryFactory factory = new GeometryFactory();
        List<Geometry> blades = new ArrayList<>();
        Geometry opening = null;
        ringleaf.geom.Point centre = band.centre(b);
        for (int k = 0; k < band.blades(); k++) {
            double place = k * band.period();
            double off = random.nextDouble() * 2 * Math.PI;
            // A ring shifted by e turns this blade by its share along the slot's normal, which is square to z.
            double felt = play.ring() * Math.cos(ring - place - z.angle() - Math.PI / 2) / arm;
            double angle = (random.nextBoolean() ? turn : -turn) + felt;
            AffineTransformation thrown = AffineTransformation.rotationInstance(angle, band.pivotRadius(), 0);
            thrown.translate(shift * Math.cos(off), shift * Math.sin(off));
            thrown.rotate(place);
            blades.add(thrown.transform(blade));
            Point at = factory.createPoint(new org.locationtech.jts.geom.Coordinate(centre.x(), centre.y()));
            Geometry hole = AffineTransformation.rotationInstance(place)
                    .transform(at.buffer(band.innerRadius() + 2 * loss, 200));
            opening = opening == null ? hole : OverlayNGRobust.overlay(opening, hole, OverlayNG.INTERSECTION);
        }
        Geometry cover = OverlayNGRobust.union(factory.buildGeometry(blades));
        Geometry disc = factory.createPoint(new org.locationtech.jts.geom.Coordinate(0, 0))
                .buffer(clear, 200);
        Geometry must = OverlayNGRobust.overlay(disc, opening, OverlayNG.DIFFERENCE);
        return OverlayNGRobust.overlay(must, cover, OverlayNG.DIFFERENCE).getArea();
    }
}
