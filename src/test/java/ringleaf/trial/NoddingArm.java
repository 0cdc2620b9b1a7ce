// SPDX-License-Identifier: Apache-2.0
package ringleaf.trial;

import java.util.List;
import java.util.Optional;
import ringleaf.mechanism.BodyName;
import ringleaf.mechanism.Kind;
import ringleaf.mechanism.Material;
import ringleaf.mechanism.Request;
import ringleaf.spec.Making;
import ringleaf.spec.field.Field;
import ringleaf.spec.field.FieldSet;
import ringleaf.spec.field.Named;
import ringleaf.spec.shared.Servo;

/** A kind on trial: an arm that nods on a pin in a plate. Main code does not know it. */
public final class NoddingArm implements Kind {
    static final String NAME = "nodding-arm";
    static final Field<Double> LENGTH = Field.length("length")
            .help("from the pin's axis to the end of the arm")
            .required()
            .atLeast(10, "the pin needs room")
            .atMost(500, "longer arms bend")
            .example("60");
    static final Field<Double> SWING = Field.angle("swing")
            .help("how far it nods")
            .atLeast(1, "less is no nod")
            .atMost(120, "more lands on the stand")
            .byDefault("60");
    static final Field<Named> SERVO = Field.named("servo", "servos", Servo.FIELDS)
            .help("servo that nods the arm")
            .byDefaultWords("none");
    private static final double PRINTED = 4;

    @Override
    public String name() {
        return NAME;
    }

    @Override
    public String summary() {
        return "an arm that nods on a pin in a plate";
    }

    @Override
    public FieldSet fields() {
        return FieldSet.of(LENGTH, SWING, SERVO);
    }

    @Override
    public List<String> weighed() {
        return List.of("reach");
    }

    @Override
    public List<String> headline() {
        return List.of("length", "swing");
    }

    @Override
    public List<BodyName> bodies() {
        return List.of(BodyName.frame("the plate"), new BodyName("arm", "the arm, which nods"));
    }

    @Override
    public Planned read(Request request) {
        Optional<Servo> servo = request.values().get(SERVO).flatMap(request.catalogues()::servo);
        return new NoddingPlan(
                request.name(),
                request.values().get(LENGTH).orElse(Double.NaN),
                request.values().require(SWING),
                material(request, "plate"),
                servo);
    }

    private static Material material(Request request, String family) {
        Making making = request.fabrication().of(family, PRINTED);
        return Material.of(
                making.process(), making.stock(), making.stock().thickness().orElse(PRINTED));
    }
}
