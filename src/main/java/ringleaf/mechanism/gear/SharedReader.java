// SPDX-License-Identifier: Apache-2.0
package ringleaf.mechanism.gear;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.Set;
import ringleaf.mechanism.Material;
import ringleaf.mechanism.Request;
import ringleaf.part.Words;
import ringleaf.spec.Making;
import ringleaf.spec.field.Bound;
import ringleaf.spec.field.Field;
import ringleaf.spec.field.FieldSet;
import ringleaf.spec.field.Values;
import ringleaf.spec.shared.Servo;
import ringleaf.spec.text.Place;
import ringleaf.spec.text.Problems;
import ringleaf.tooth.BasicRack;

/** What the readers of all gear kinds share. */
final class SharedReader {
    /** Printed gears are this wide when nothing is said, mm. */
    private static final double PRINTED_WIDTH = 5;

    private static final double TWENTY = Math.toRadians(20);

    private final Request request;
    private final Values values;
    private final Problems problems;

    SharedReader(Request request) {
        this.request = request;
        this.values = request.values();
        this.problems = request.problems();
    }

    /** Process and stock of all gears; its thickness is that of a sheet, or the width. */
    Material material() {
        Optional<Double> asked = values.given(GearFields.WIDTH);
        Making making = request.fabrication().of("gear", asked.orElse(PRINTED_WIDTH));
        OptionalDouble sheet = making.given() ? making.stock().thickness() : OptionalDouble.empty();
        double thickness = sheet.orElse(asked.orElse(PRINTED_WIDTH));
        if (sheet.isPresent()) {
            double sheets = asked.orElse(thickness) / thickness;
            if (Math.abs(sheets - Math.rint(sheets)) > 1e-6) {
                problems.at(
                        values.where(GearFields.WIDTH),
                        Words.mm(asked.orElse(thickness)) + " is no whole number of sheets of the stock "
                                + making.stock().name() + " of " + Words.mm(thickness),
                        "the nearest that works is " + Words.number(Math.max(1, Math.rint(sheets)) * thickness, 3)
                                + "mm");
            }
        } else if (!making.process().makesThickness(thickness)) {
            problems.at(
                    values.where(GearFields.WIDTH),
                    Words.number(thickness, 3) + " mm is outside what "
                            + making.process().name() + " makes, "
                            + Words.number(making.process().thicknessFrom(), 3) + " to "
                            + Words.number(making.process().thicknessTo(), 3) + " mm",
                    "choose another process for gear under fabrication");
        }
        return Material.of(making.process(), making.stock(), thickness);
    }

    double width(Material material) {
        return values.given(GearFields.WIDTH).orElse(material.thickness());
    }

    DriveData drive() {
        Optional<Values> given = values.given(GearFields.DRIVE);
        if (given.isEmpty()) {
            return DriveData.NONE;
        }
        Values drive = given.get();
        Optional<Servo> servo = drive.get(GearFields.SERVO).flatMap(request.catalogues()::servo);
        OptionalDouble torque = open(drive, GearFields.TORQUE);
        if (torque.isEmpty() && servo.isPresent()) {
            torque = OptionalDouble.of(servo.get().torque());
        }
        return new DriveData(servo, torque, open(drive, GearFields.SPEED));
    }

    /** The values of a group, or empty ones. */
    static Values group(Values of, Field<Values> field, FieldSet fields) {
        return of.given(field).orElseGet(() -> fields.none(of.where(field)));
    }

    /**
     * The one value that several places may give; where they give different ones it is a problem of the later.
     *
     * @param what of the gears must be alike, for the message
     */
    double agreed(Field<Double> field, List<Values> places, String what, double otherwise) {
        double first = Double.NaN;
        for (Values place : places) {
            Optional<Double> given = place.given(field);
            if (given.isEmpty()) {
                continue;
            }
            if (Double.isNaN(first)) {
                first = given.get();
            } else if (Math.abs(given.get() - first) > 1e-9 * first) {
                boolean angle = field == GearFields.PRESSURE_ANGLE;
                String one = angle ? Words.degrees(first, 4) : Words.number(first, 6) + " mm";
                String other = angle ? Words.degrees(given.get(), 4) : Words.number(given.get(), 6) + " mm";
                problems.at(
                        place.where(field),
                        other + " and " + one + " do not mesh (the teeth of a pair have one " + what + ")",
                        "the nearest that works is "
                                + (angle ? Words.number(Math.toDegrees(first), 4) : Words.number(first, 6)));
            }
        }
        return Double.isNaN(first) ? otherwise : first;
    }

    /** Where a value stands that several places may give. */
    Place where(Field<?> field, List<Values> places) {
        for (Values place : places) {
            if (place.isGiven(field)) {
                return place.where(field);
            }
        }
        return places.get(0).where(field);
    }

    OptionalDouble module(List<Values> places) {
        double module = agreed(GearFields.MODULE, places, "module", Double.NaN);
        return Double.isNaN(module) ? OptionalDouble.empty() : OptionalDouble.of(module);
    }

    BasicRack rack(List<Values> places) {
        return BasicRack.ofAngle(agreed(GearFields.PRESSURE_ANGLE, places, "pressure angle", TWENTY));
    }

    /** The greatest length asked for: a bare value is the most, as whole teeth do not make up every length. */
    OptionalDouble overall() {
        Bound bound = values.bound(GearFields.OVERALL_LENGTH);
        if (bound.atLeast().isPresent()) {
            problems.at(
                    values.where(GearFields.OVERALL_LENGTH),
                    "only a greatest length has a meaning",
                    "leave at-least out");
        }
        return bound.isExact() ? bound.exactly() : bound.atMost();
    }

    static OptionalDouble open(Values values, Field<Double> field) {
        Optional<Double> value = values.given(field);
        return value.isPresent() ? OptionalDouble.of(value.get()) : OptionalDouble.empty();
    }

    static OptionalInt count(Values values, Field<Integer> field) {
        Optional<Integer> value = values.given(field);
        return value.isPresent() ? OptionalInt.of(value.get()) : OptionalInt.empty();
    }

    /** Paths of everything that was given, groups with their members, e.g. {@code driver.teeth}. */
    static Set<String> given(Values values) {
        return values.givenPaths();
    }
}
