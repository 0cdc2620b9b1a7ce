// SPDX-License-Identifier: Apache-2.0
package ringleaf.outline;

import java.util.ArrayList;
import java.util.List;
import ringleaf.spec.text.Place;
import ringleaf.spec.text.Problems;
import ringleaf.spec.text.Shown;
import ringleaf.spec.text.SpecSource;

/**
 * A group code and its value, two lines of a DXF text.
 *
 * @param line of the code, counted from 1
 */
record DxfPair(int code, String value, int line) {
    boolean is(int otherCode, String otherValue) {
        return code == otherCode && value.equals(otherValue);
    }

    Place place(SpecSource source) {
        return source.at(line + 1, 1);
    }

    /** All pairs of a text; none after reporting a line that is no code. */
    static List<DxfPair> all(SpecSource source, Problems problems) {
        String[] lines = source.text().split("\r\n|\r|\n", -1);
        List<DxfPair> pairs = new ArrayList<>(lines.length / 2);
        for (int i = 0; i + 1 < lines.length; i += 2) {
            int code;
            try {
                code = Integer.parseInt(lines[i].trim());
            } catch (NumberFormatException e) {
                problems.at(
                        source.at(i + 1, 1),
                        "a group code is wanted here, and not " + Shown.quoted(lines[i].trim()),
                        "check that this is a DXF drawing in text form");
                return List.of();
            }
            // Comments may stand anywhere.
            if (code != 999) {
                pairs.add(new DxfPair(code, lines[i + 1].trim(), i + 1));
            }
        }
        return pairs;
    }
}
