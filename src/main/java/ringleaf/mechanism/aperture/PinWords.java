// SPDX-License-Identifier: Apache-2.0
package ringleaf.mechanism.aperture;

import java.util.ArrayList;
import java.util.List;
import ringleaf.part.Words;

/** How the pins of the blades are set, in words: in jigs where these are asked for, else by eye. */
final class PinWords {
    private final ApertureDesign design;
    private final ApertureSpec spec;

    PinWords(ApertureDesign design) {
        this.design = design;
        this.spec = design.spec();
    }

    /** All of it for so many blades. */
    List<String> all(int count) {
        List<String> words = new ArrayList<>();
        if (spec.pinStyle() == PinStyle.BASE_POSTS) {
            words.add(posts(count));
        }
        if (spec.jigs().isPresent()) {
            words.add(jigs().preparing());
            if (spec.pinStyle() == PinStyle.TWO_HOLES) {
                words.add(jigs().pivotPins());
            }
            words.add(jigs().drivePins());
        } else {
            words.add(spec.pinStyle() == PinStyle.TWO_HOLES ? both() : drivePins());
        }
        return words;
    }

    String posts(int count) {
        return "Set " + count + " posts into the base; each stands " + Words.mm(new BladeParts(design).postHeight())
                + " out of it.";
    }

    /** Drive pins of blades that need no other. */
    String drivePins() {
        if (spec.jigs().isPresent()) {
            return jigs().drivePins();
        }
        String printed = spec.pinStyle() == PinStyle.ONE_GLUED ? "printed " : "";
        return "Set one drive pin into each " + printed + "blade, square to it and flush on the lower face.";
    }

    String both() {
        return "Set both pins into each blade, square to it: the pivot pin below, "
                + Words.mm(design.stack().pivotPinDepth())
                + " long under the blade and flush on the upper face; the drive"
                + " pin above, " + Words.mm(design.stack().drivePinHeight()) + " tall and flush on the lower face.";
    }

    /** Of a spec that asks for jigs. */
    Jigs jigs() {
        return new Jigs(design, spec.jigs().orElseThrow());
    }
}
