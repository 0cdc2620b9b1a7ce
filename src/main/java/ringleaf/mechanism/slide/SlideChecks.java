// SPDX-License-Identifier: Apache-2.0
package ringleaf.mechanism.slide;

import java.util.ArrayList;
import java.util.List;
import ringleaf.part.Figure;
import ringleaf.part.Finding;

/** Checks of a slide by kinematics, statics and the table of a beam. */
final class SlideChecks {
    /** Young's modulus of steel rod, MPa; from memory of handbook tables. */
    static final double STEEL = 210_000;
    /** Angle between the link and the way of a pin: beyond the first it fails, beyond the second it is poor; common practice. */
    private static final double CROSS = Math.toRadians(60);

    private static final double STEEP = Math.toRadians(45);
    /** Share of the rods' free length that they may bend by; common practice, no source. */
    private static final double SAG = 1 / 500.0;
    /** Turn of the servo that is kept free at either end of its own travel, rad; common practice, no source. */
    private static final double RESERVE = Math.toRadians(5);

    private final SlideLayout layout;
    private final SlideSpec spec;
    private final List<Finding> found = new ArrayList<>();

    SlideChecks(SlideLayout layout) {
        this.layout = layout;
        this.spec = layout.spec();
    }

    List<Finding> all() {
        sizes();
        found.add(spec.hardware()
                .rod(SlideRole.ROD.label(), layout.bearing().rod())
                .isSold());
        found.add(spec.hardware().rod(SlideRole.HORN_PIN.label(), spec.pin()).isSold());
        return found;
    }

    /** What can fail. */
    List<Finding> sizes() {
        drive();
        guide();
        room();
        return found;
    }

    private void drive() {
        double most = spec.servo().travel() - 2 * RESERVE;
        found.add(Finding.of("servo-reaches")
                .about("servo", spec.servo().name())
                .atMost(Math.toDegrees(layout.swing()), Math.toDegrees(most), "deg")
                .says("slide.servo-reaches", Figure.degrees(RESERVE, 0)));
        found.add(Finding.of("link-angle")
                .about(SlideRole.LINK.label())
                .atMost(Math.toDegrees(layout.steepest()), Math.toDegrees(CROSS), Math.toDegrees(STEEP), "deg")
                .says("slide.link-angle"));
        double swept = layout.way(layout.angle(1));
        found.add(Finding.of("stroke")
                .about("carriage")
                .about(swept, spec.stroke(), Finding.ROUNDING, "mm")
                .says("slide.stroke"));
        found.add(Finding.of("torque")
                .about("servo", spec.servo().name())
                .atMost(layout.torque(), layout.working(), "Nmm")
                .says("slide.torque", Figure.number(spec.push(), 2), Figure.mm(layout.arm())));
        found.add(Finding.of("link-length")
                .about(SlideRole.LINK.label())
                .room(layout.armToBridge(), spec.beside().mm(), "mm")
                .says("slide.link-length"));
    }

    private void guide() {
        double offset = layout.pushOffset();
        found.add(Finding.of("jamming")
                .about("carriage")
                .atMost(layout.guide().jamming(offset), 1, SlideLayout.FREE + Finding.ROUNDING, "1")
                .says(
                        "slide.jamming",
                        Figure.number(SlideSpec.FRICTION, 2),
                        Figure.mm(layout.carriage()),
                        Figure.mm(offset),
                        Figure.mm(layout.guide().jamsBeyond())));
        double spread = layout.carriage() - 2 * layout.bearing().length();
        found.add(Finding.of("bearings-apart")
                .about(SlideRole.BEARING.label())
                .room(spread, 0, "mm")
                .says("slide.bearings-apart"));
        found.add(Finding.of("bearings-on-rods")
                .about(SlideRole.BEARING.label(), SlideRole.ROD.label())
                .room(layout.beyondBearing(), 0, "mm")
                .says("slide.bearings-on-rods"));
        double free = layout.overall() - 2 * layout.thickness();
        found.add(Finding.of("rod-sag")
                .about(SlideRole.ROD.label())
                .atMost(layout.sag(), SAG * free, "mm")
                .says("slide.rod-sag", Figure.number(spec.load(), 2), Figure.mm(free)));
    }

    private void room() {
        found.add(Finding.of("arm-clear")
                .about(SlideRole.ARM.label(), SlideRole.SIDE.label())
                .room(layout.belowArm(), spec.beside().mm(), "mm")
                .says("slide.arm-clear"));
        found.add(Finding.of("arm-web")
                .about(SlideRole.ARM.label())
                .room(layout.armWeb(), layout.web(), "mm")
                .says("slide.arm-web"));
        found.add(Finding.of("mount-web")
                .about(SlideRole.CARRIAGE.label())
                .room(layout.mountWeb(), layout.web(), "mm")
                .says("slide.mount-web"));
        spec.length()
                .atMost()
                .ifPresent(most -> found.add(Finding.of("overall-length")
                        .about(SlideRole.END.label())
                        .atMost(layout.overall(), most, "mm")
                        .says("slide.overall-length")));
        spec.height()
                .atMost()
                .ifPresent(most -> found.add(Finding.of("overall-height")
                        .about(SlideRole.END.label())
                        .atMost(layout.height(), most, "mm")
                        .says("slide.overall-height")));
        found.add(spec.hardware()
                .rod(SlideRole.ROD.label(), layout.bearing().rod())
                .isSold());
        found.add(spec.hardware().rod(SlideRole.HORN_PIN.label(), spec.pin()).isSold());
    }
}
