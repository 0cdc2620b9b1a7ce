package ringleaf.mechanism.aperture;

import java.util.ArrayList;
import java.util.List;
import ringleaf.part.Part;
import ringleaf.part.Words;

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
        boolean servoPlate = design.mount().map(ServoMount::hasPlate).orElse(false);
        if (servoPlate) {
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
        screws(design, servoPlate, parts);
        return parts;
    }

    private static void screws(ApertureDesign design, boolean servoPlate, List<Part> parts) {
        int longOnes = servoPlate ? new PlateParts(design).servoScrews().size() : 0;
        int all = design.housing().screws().size();
        double depth = design.stack().depth();
        parts.add(screw(design, "screw", all - longOnes, depth));
        if (servoPlate) {
            double back = design.mount().orElseThrow().earFace();
            parts.add(screw(design, "screw-long", longOnes, design.stack().retainerTop() - back));
        }
        parts.add(new Part(
                "nut",
                "bought",
                all,
                new Part.Source("bought", design.spec().screw().name() + " nut"),
                List.of(),
                List.of(),
                ""));
    }

    /** A screw reaches through what it holds and through a nut about as thick as the thread. */
    private static Part screw(ApertureDesign design, String name, int quantity, double through) {
        double diameter = design.spec().screw().thread();
        double length = Math.ceil(through + 1.2 * diameter);
        String size = design.spec().screw().name() + " x " + Words.number(length, 0) + " mm";
        return new Part(name, "bought", quantity, new Part.Source("bought", size), List.of(), List.of(), "");
    }
}
