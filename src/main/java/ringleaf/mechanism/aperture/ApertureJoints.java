// SPDX-License-Identifier: Apache-2.0
package ringleaf.mechanism.aperture;

import java.util.ArrayList;
import java.util.List;
import ringleaf.part.Joint;
import ringleaf.part.Part;
import ringleaf.spec.shared.FitName;

/** Pins, bores, slots and screw holes of an aperture, with the fits they are meant to have. */
final class ApertureJoints {
    private final ApertureDesign design;
    private final ApertureSpec spec;
    private final List<Joint> joints = new ArrayList<>();

    private ApertureJoints(ApertureDesign design) {
        this.design = design;
        this.spec = design.spec();
    }

    static List<Joint> of(ApertureDesign design, List<Part> parts) {
        ApertureJoints all = new ApertureJoints(design);
        for (Part part : parts) {
            all.add(part.name());
        }
        return all.joints;
    }

    private void add(String part) {
        double pin = spec.pinDiameter();
        boolean posts = spec.pinStyle() == PinStyle.BASE_POSTS;
        switch (part) {
            case "base-plate" -> {
                String fit = posts ? FitName.GLUE.label() : spec.fitting().pivotBore();
                hole("pivot-bore", part, fit, pin, 2 * new PlateParts(design).boreRadius(), spec.blades());
                screws(part);
            }
            case "blade" -> {
                if (posts) {
                    String fit = spec.fitting().pivotBore();
                    hole("pivot-bore", part, fit, pin, pin + spec.clearances().bore(), 1);
                } else if (spec.pinStyle() == PinStyle.TWO_HOLES) {
                    hole("pivot-pin-hole", part, spec.fitting().pinHole(), pin, spec.pinHole(), 1);
                }
                hole("drive-pin-hole", part, spec.fitting().pinHole(), pin, spec.pinHole(), 1);
            }
            case "drive-ring" ->
                joints.add(new Joint(
                        "slot",
                        part,
                        Joint.Shape.SLOT,
                        spec.fitting().slot(),
                        pin,
                        pin + spec.clearances().slot(),
                        spec.blades(),
                        ""));
            case "pivot-pin", "drive-pin" ->
                joints.add(
                        new Joint(part, part, Joint.Shape.SHAFT, spec.fitting().pinHole(), pin, pin, 1, ""));
            case "pinion" -> pinion(part);
            case "cover", "retainer", "spacer-ring", "spacer-shim" -> screws(part);
            default -> {
                // bought parts bring their own sizes
            }
        }
    }

    private void pinion(String part) {
        ServoMount mount = design.mount().orElseThrow();
        double spline = design.pinionPlan().orElseThrow().servo().splineDiameter();
        if (!mount.horn()) {
            hole("output-bore", part, FitName.PRESS.label(), spline, spline, 1);
        }
    }

    private void screws(String part) {
        joints.add(new Joint(
                "screw-hole",
                part,
                Joint.Shape.HOLE,
                FitName.THREAD_CLEARANCE.label(),
                spec.screw().thread(),
                2 * design.housing().screwHole(),
                design.housing().screws().size(),
                spec.screw().holeBasis()));
    }

    private void hole(String name, String part, String fit, double nominal, double size, int count) {
        boolean grips = fit.equals(FitName.PRESS.label()) && size == nominal;
        String basis = grips ? "as wide as the pin" : "";
        joints.add(new Joint(name, part, Joint.Shape.HOLE, fit, nominal, size, count, basis));
    }
}
