// SPDX-License-Identifier: Apache-2.0
package ringleaf.verify;

import java.util.List;
import ringleaf.part.Figure;

/** Figures and places as findings tell them. */
final class Words {
    private Words() {}

    static Figure mm(double value) {
        return Figure.mm(value, 3);
    }

    static Figure area(double value) {
        return Figure.area(value, value < 0.01 ? 6 : 4);
    }

    static Figure degrees(double radians) {
        return Figure.degrees(radians, 2);
    }

    static String and(List<String> names) {
        return String.join(" and ", names);
    }
}
