// SPDX-License-Identifier: Apache-2.0
package ringleaf.verify;

import java.util.List;

/** Figures and places as they stand in messages, the same in every locale. */
final class Words {
    private Words() {}

    static String number(double value, int decimals) {
        return ringleaf.part.Words.number(value, decimals);
    }

    static String mm(double value) {
        return number(value, 3) + " mm";
    }

    static String area(double value) {
        return number(value, value < 0.01 ? 6 : 4) + " mm²";
    }

    static String degrees(double radians) {
        return ringleaf.part.Words.degrees(radians, 2);
    }

    static String and(List<String> names) {
        return String.join(" and ", names);
    }
}
