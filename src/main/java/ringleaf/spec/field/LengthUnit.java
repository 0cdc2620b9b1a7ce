// SPDX-License-Identifier: Apache-2.0
package ringleaf.spec.field;

/** What a bare number means in a document's lengths. */
public enum LengthUnit {
    MM("mm", new Unit("mm", 1, 1)),
    CM("cm", new Unit("cm", 10, 1)),
    IN("in", new Unit("in", 25.4, 1)),
    THOU("thou", new Unit("thou", 25.4, 1000));

    private final String spelling;
    private final Unit unit;

    LengthUnit(String spelling, Unit unit) {
        this.spelling = spelling;
        this.unit = unit;
    }

    public String spelling() {
        return spelling;
    }

    public Unit unit() {
        return unit;
    }

    /** The unit of this spelling, or null. */
    public static LengthUnit of(String spelling) {
        for (LengthUnit unit : values()) {
            if (unit.spelling.equals(spelling)) {
                return unit;
            }
        }
        return null;
    }
}
