// SPDX-License-Identifier: Apache-2.0
package ringleaf.linkage;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SliderCrankTest {
    /** Offset example of Norton, Design of Machinery, chapter on position analysis (40, 120, -20, 60 deg); others computed. */
    @ParameterizedTest
    @CsvSource({
        "40,120,0,0,160",
        "40,120,0,30,152.9626118134",
        "40,120,0,90,113.1370849898",
        "40,120,0,180,80",
        "10,40,0,30,48.3465237038",
        "40,120,-20,0,158.3215956620",
        "40,120,-20,60,126.8380051945",
        "40,120,20,30,154.6410161514",
        "40,120,20,90,118.3215956620",
        "9,32,2,30,39.696422916",
        "9,32,2,150,24.107965648"
    })
    void standsWhereTheTableSays(double r, double l, double e, double deg, double x) {
        assertEquals(x, new SliderCrank(r, l, e).position(Math.toRadians(deg)), 1e-9);
    }

    @Test
    void theSpeedIsTheSlopeOfThePosition() {
        Random random = new Random(7);
        for (int i = 0; i < 2000; i++) {
            double r = 5 + 20 * random.nextDouble();
            SliderCrank crank = new SliderCrank(r, r * (2 + 3 * random.nextDouble()), r * (random.nextDouble() - 0.5));
            double q = Math.PI * (2 * random.nextDouble() - 1);
            double h = 1e-6;
            assertEquals(
                    (crank.position(q + h) - crank.position(q - h)) / 2 / h, crank.speed(q), 1e-5 * r, "case " + i);
        }
    }

    @Test
    void slantIsNoughtWhereTheRodIsParallel() {
        assertEquals(0, new SliderCrank(40, 120, 20).slant(Math.toRadians(30)), 1e-12);
        assertTrue(Double.isNaN(new SliderCrank(40, 30, 0).position(Math.PI / 2)));
    }
}
