// SPDX-License-Identifier: Apache-2.0
package ringleaf.mechanism.slide;

import ringleaf.OneMechanism;
import ringleaf.spec.text.Problems;

/** Slides from the text of a spec, for tests. */
final class Slides {
    static final String ACRYLIC = "fabrication:\n  plate: {process: co2-laser, stock: acrylic-3}\n";

    private Slides() {}

    static PlannedSlide planned(String fabrication, String... lines) {
        return (PlannedSlide) OneMechanism.planned(new Problems(), fabrication, Slide.NAME, lines);
    }
}
