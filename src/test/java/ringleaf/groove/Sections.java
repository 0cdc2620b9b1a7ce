// SPDX-License-Identifier: Apache-2.0
package ringleaf.groove;

import java.util.LinkedHashMap;
import java.util.Map;

/** Sections of belts' teeth that the tests of grooves run through: plain numbers, as the catalogue has them. */
final class Sections {
    private Sections() {}

    static Map<String, BeltTooth> all() {
        Map<String, BeltTooth> all = new LinkedHashMap<>();
        double degree = Math.PI / 180;
        all.put("MXL", new BeltTooth(2.032, 0.254, 1.14, 0.51, 20 * degree, 0.13, 0.13));
        all.put("XL", new BeltTooth(5.08, 0.254, 2.57, 1.27, 25 * degree, 0.38, 0.38));
        all.put("L", new BeltTooth(9.525, 0.381, 4.65, 1.91, 20 * degree, 0.51, 0.51));
        all.put("T2.5", new BeltTooth(2.5, 0.3, 1.5, 0.7, 20 * degree, 0.2, 0.2));
        all.put("T5", new BeltTooth(5, 0.425, 2.65, 1.2, 20 * degree, 0.4, 0.4));
        all.put("T10", new BeltTooth(10, 1, 5.3, 2.5, 20 * degree, 0.6, 0.6));
        all.put("3 mm round", BeltTooth.round(3, 0.381, 1.78, 1.17, 5 * degree, 0.3));
        all.put("5 mm round", BeltTooth.round(5, 0.5715, 3.05, 2.06, 5 * degree, 0.4));
        all.put("8 mm round", BeltTooth.round(8, 0.686, 5.15, 3.36, 5 * degree, 0.8));
        all.put("2 mm round, square flanks", BeltTooth.round(2, 0.254, 1.2, 0.75, 0, 0.2));
        all.put("no root rounding", new BeltTooth(5, 0.5, 2.65, 1.2, 20 * degree, 0.4, 0));
        return all;
    }
}
