// SPDX-License-Identifier: Apache-2.0
package ringleaf.mechanism.aperture;

import java.util.ArrayList;
import java.util.List;
import ringleaf.part.Part;

/** All parts of an aperture, made and bought, unmirrored, from the back to the front. */
final class ApertureParts {
    private final List<Part> parts;
    private final double deviation;

    ApertureParts(ApertureDesign design) {
        RingPart ring = new RingPart(design);
        this.deviation = ring.deviation();
        this.parts = all(design, ring);
    }

    List<Part> parts() {
        return parts;
    }

    /** Worst distance of any smooth curve's arcs from the curve, mm; 0 when everything is lines and circles anyway. */
    double deviation() {
        return deviation;
    }

    Part named(String name) {
        for (Part part : parts) {
            if (part.name().equals(name)) {
                return part;
            }
        }
        throw new IllegalArgumentException(name);
    }

    private static List<Part> all(ApertureDesign design, RingPart ring) {
        PlateParts plates = new PlateParts(design);
        List<Part> parts = new ArrayList<>();
        if (design.mount().map(ServoMount::hasPlate).orElse(false)) {
            parts.add(plates.servoPlate());
        }
        if (design.stack().hasCover()) {
            parts.add(plates.cover());
        }
        parts.add(plates.base());
        parts.addAll(new SpacerParts(design).parts());
        BladeParts blades = new BladeParts(design);
        parts.add(blades.blade());
        parts.addAll(blades.pins());
        parts.add(ring.part());
        if (design.pinionPlan().isPresent()) {
            parts.addAll(new PinionParts(design, ring.teeth()).parts());
        }
        parts.add(plates.retainer());
        parts.addAll(new Fasteners(design).parts());
        return parts;
    }
}
