// SPDX-License-Identifier: Apache-2.0
package ringleaf.geom;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Worst error allowed: 1e-12 relative, but the angles given in degrees to ten decimals, 1e-10 degrees. */
class BulgeTest {
    private static List<double[]> rows(String file) throws IOException {
        List<double[]> rows = new ArrayList<>();
        try (BufferedReader reader = new BufferedReader(new InputStreamReader(
                BulgeTest.class.getResourceAsStream("/reference/" + file), StandardCharsets.UTF_8))) {
            assertThat(reader.readLine()).startsWith("#");
            reader.readLine();
            for (String line = reader.readLine(); line != null; line = reader.readLine()) {
                String[] cells = line.split(",");
                double[] row = new double[cells.length];
                for (int i = 0; i < row.length; i++) {
                    row[i] = Double.parseDouble(cells[i]);
                }
                rows.add(row);
            }
        }
        assertThat(rows).isNotEmpty();
        return rows;
    }

    @Test
    void bulgeIsTheTangentOfAQuarterOfTheSweep() throws IOException {
        for (double[] row : rows("bulge-angles.csv")) {
            double sweep = Math.toRadians(row[0]);
            assertThat(Arc.of(new Point(1, 2), 3, 0.4, sweep).bulge()).isCloseTo(row[1], within(2e-12 * (1 + row[1])));
            assertThat(Arc.of(new Point(1, 2), 3, 0.4, -sweep).bulge())
                    .isCloseTo(-row[1], within(2e-12 * (1 + row[1])));
            Arc arc = Arc.ofBulge(new Point(0, 0), new Point(7, 1), row[1]);
            assertThat(Math.toDegrees(arc.sweep())).isCloseTo(row[0], within(1e-10));
        }
    }

    @Test
    void arcOfABulgeHasItsRadiusAndCentre() throws IOException {
        for (double[] row : rows("bulge-arcs.csv")) {
            Point start = new Point(row[0], row[1]);
            Point end = new Point(row[2], row[3]);
            Arc arc = Arc.ofBulge(start, end, row[4]);
            assertThat(arc.radius()).isCloseTo(row[5], within(1e-12));
            assertThat(arc.centre().x()).isCloseTo(row[6], within(1e-12));
            assertThat(arc.centre().y()).isCloseTo(row[7], within(1e-12));
            assertThat(arc.bulge()).isCloseTo(row[4], within(1e-12));
            assertThat(arc.isCounterClockwise()).isEqualTo(row[4] > 0);
            // sagitta: a counter-clockwise arc bulges to the right of its chord
            Point mid = start.towards(end, 0.5);
            Point right = end.minus(start).unit().left().times(-1);
            double sagitta = row[4] * start.distance(end) / 2;
            assertThat(arc.pointAt(0.5).distance(mid.plus(right.times(sagitta))))
                    .isLessThan(1e-12);
        }
    }
}
