// SPDX-License-Identifier: Apache-2.0
package ringleaf.mechanism.slide;

import java.util.List;
import ringleaf.mechanism.BodyName;
import ringleaf.mechanism.Decision;
import ringleaf.mechanism.Kind;
import ringleaf.mechanism.Request;
import ringleaf.spec.field.FieldSet;

/** The kind {@code slide}: a carriage on two rods, pushed by a servo's horn. */
public final class Slide implements Kind {
    public static final String NAME = "slide";

    @Override
    public String name() {
        return NAME;
    }

    @Override
    public String summary() {
        return "a carriage that slides on two rods, pushed by a servo's horn and a link, solved from the stroke";
    }

    @Override
    public FieldSet fields() {
        return SlideFields.ALL;
    }

    @Override
    public List<String> headline() {
        return List.of(
                "stroke",
                "swing",
                "arm-length",
                "link-length",
                "rod-length",
                "overall-length",
                "overall-height",
                "torque");
    }

    /** Bearing and swing are searched with each of them. */
    @Override
    public List<Decision> decisions() {
        return List.of(
                Decision.mm("plate-thickness", 3, 4, 5, 2),
                Decision.mm("pin-diameter", 1.5, 2.5, 3),
                Decision.among("screw", "M2.5", "M2", "M4"),
                Decision.numbers("clearances.beside", 0.5, 1));
    }

    @Override
    public List<String> weighed() {
        return List.of("overall-length", "overall-height", "torque");
    }

    @Override
    public List<String> compared() {
        return List.of("stroke", "arm-length", "rod-diameter");
    }

    @Override
    public List<BodyName> bodies() {
        return List.of(
                BodyName.frame("end plates, side plate and rods"),
                new BodyName("carriage", "the carriage, which slides"),
                new BodyName("horn", "the horn's arm, which turns"),
                new BodyName("link", "the link between both"));
    }

    @Override
    public Planned read(Request request) {
        return new SlideReader(request).read();
    }
}
