// SPDX-License-Identifier: Apache-2.0
package ringleaf.readback;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import ringleaf.draw.Drawing;
import ringleaf.draw.DrawingLayer;
import ringleaf.draw.Drawn;
import ringleaf.draw.LayerStyle;
import ringleaf.draw.dxf.DxfVersion;
import ringleaf.draw.dxf.DxfWriter;
import ringleaf.draw.svg.SvgWriter;
import ringleaf.geom.Arc;
import ringleaf.geom.Path;
import ringleaf.geom.Point;

/** Arcs of all sizes, rebuilt from the rounded numbers of a file, stay by the true circle. */
class RandomArcsTest {
    private static final long SEED = 1234;
    private static final int COUNT = 4000;

    private static List<Arc> arcs() {
        Random random = new Random(SEED);
        List<Arc> arcs = new ArrayList<>();
        for (int i = 0; i < COUNT; i++) {
            Point centre = new Point(random.nextDouble() * 400 - 200, random.nextDouble() * 400 - 200);
            double radius = 0.05 * Math.pow(10, 4 * random.nextDouble());
            // Near 120 and 180 degrees as often as elsewhere: there readers go astray.
            double sweepDeg =
                    switch (i % 4) {
                        case 0 -> 120 + (random.nextDouble() - 0.5) * 0.01;
                        case 1 -> 180 + (random.nextDouble() - 0.5) * 0.01;
                        case 2 -> 359.99 * random.nextDouble() + 0.001;
                        default -> 20 * random.nextDouble() + 0.001;
                    };
            double sense = random.nextBoolean() ? 1 : -1;
            arcs.add(Arc.of(centre, radius, 7 * random.nextDouble(), sense * Math.toRadians(sweepDeg)));
        }
        return arcs;
    }

    private static Drawing drawing(List<Arc> arcs) {
        List<Drawn> things = new ArrayList<>();
        for (Arc arc : arcs) {
            things.add(Drawn.of(Path.of(arc)));
        }
        return new Drawing("arcs", List.of(), List.of(new DrawingLayer("mark", LayerStyle.black(0.1), "", things)));
    }

    /** The greatest distance from the true circle, and how far the rebuilt piece is from the true sweep. */
    private static double worst(List<Arc> arcs, List<ReadFigure> read) {
        assertThat(read).hasSize(COUNT);
        double worst = 0;
        for (int i = 0; i < COUNT; i++) {
            Arc arc = arcs.get(i);
            double sweep = 0;
            for (ReadPiece piece : read.get(i).pieces()) {
                sweep += piece.sweep();
                for (int k = 0; k <= 10; k++) {
                    double[] at = piece.at(k / 10.0);
                    double off = Math.hypot(
                                    at[0] - arc.centre().x(),
                                    at[1] - arc.centre().y())
                            - arc.radius();
                    worst = Math.max(worst, Math.abs(off));
                }
            }
            assertThat(Math.abs(sweep - arc.sweep()) * arc.radius())
                    .as("seed " + SEED + ", " + arc)
                    .isLessThan(1e-4);
        }
        return worst;
    }

    @Test
    void svgStaysWithinTwoNanometres() throws Exception {
        List<Arc> arcs = arcs();
        double worst = worst(arcs, new SvgReader(SvgWriter.write(drawing(arcs))).figures);
        assertThat(worst).as("seed " + SEED).isBetween(1e-8, 2e-6);
    }

    @Test
    void dxfStaysWithinAThousandthOfThat() {
        List<Arc> arcs = arcs();
        for (DxfVersion version : DxfVersion.values()) {
            double worst = worst(arcs, new DxfReader(DxfWriter.write(drawing(arcs), version)).figures);
            assertThat(worst).as("seed " + SEED).isBetween(1e-12, 2e-9);
        }
    }
}
