// SPDX-License-Identifier: Apache-2.0
package ringleaf.mechanism;

import java.util.LinkedHashMap;
import java.util.Map;

/**
 * A body of a kind on which other mechanisms may stand.
 *
 * @param name as in {@code on: shutter.ring}
 * @param help how it moves, in a line
 */
public record BodyName(String name, String help) {
    /** The body that every kind has. */
    public static final String FRAME = "frame";

    /** The frame with the number 0, and these with the numbers after it. */
    public static Map<String, Integer> numbered(String... others) {
        Map<String, Integer> numbered = new LinkedHashMap<>();
        numbered.put(FRAME, 0);
        for (String name : others) {
            numbered.put(name, numbered.size());
        }
        return numbered;
    }

    /** What stands still of a mechanism. */
    public static BodyName frame(String what) {
        return new BodyName(FRAME, what + ", which stands still");
    }
}
