// SPDX-License-Identifier: Apache-2.0
package ringleaf.mechanism.aperture;

import java.util.ArrayList;
import java.util.List;
import ringleaf.part.Part;
import ringleaf.part.Words;

/** The jigs that a spec asks for, and what the build order says of them. */
final class Jigs {
    private final ApertureDesign design;
    private final JigSpec jig;

    Jigs(ApertureDesign design, JigSpec jig) {
        this.design = design;
        this.jig = jig;
    }

    /** The jigs, unmirrored. */
    List<Part> parts(List<Part> others) {
        List<Part> parts = new ArrayList<>(gluing());
        if (jig.stacking()) {
            parts.add(new StackingJig(design, jig, others).part());
        }
        return parts;
    }

    /** Those that hold blades while glue sets. */
    List<Part> gluing() {
        List<Part> parts = new ArrayList<>();
        for (boolean drive : new boolean[] {false, true}) {
            if (GlueJig.isWanted(design.spec(), drive)) {
                parts.add(new GlueJig(design, jig, drive).part());
            }
        }
        return parts;
    }

    /** What is done before the first pin is set. */
    String preparing() {
        return "Rub the jigs with a candle so that glue does not hold on them, and try a pin in each socket: where it does"
                + " not fall to the bottom, open the socket with a drill of the pin's size. They are for glue, not for"
                + " solder.";
    }

    String pivotPins() {
        return "Pivot jig (one notch in its edge), " + some()
                + " at a time: lay each blade in with its arrow up, push a"
                + " pivot pin through its hole down to the bottom of the socket, flush with the upper face, and glue on"
                + " top. Lift the blade at the notch when the glue has set.";
    }

    String drivePins() {
        return "Drive jig (two notches), " + some() + " at a time: lay each blade in turned over, arrow down"
                + (design.spec().pinStyle() == PinStyle.BASE_POSTS
                        ? ", its tighter hole over the socket"
                        : " and its pivot pin up")
                + ", push a drive pin down to the bottom of the socket, flush with the face that is up now, and glue on"
                + " top. It stands " + Words.mm(design.stack().drivePinHeight()) + " tall on the other face.";
    }

    private String some() {
        return jig.pockets() == 1 ? "one blade" : jig.pockets() + " blades";
    }
}
