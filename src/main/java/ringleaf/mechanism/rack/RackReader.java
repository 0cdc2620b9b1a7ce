// SPDX-License-Identifier: Apache-2.0
package ringleaf.mechanism.rack;

import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import ringleaf.mechanism.Kind;
import ringleaf.mechanism.Material;
import ringleaf.mechanism.Request;
import ringleaf.mechanism.body.Body;
import ringleaf.mechanism.body.BodyReader;
import ringleaf.part.Words;
import ringleaf.spec.Making;
import ringleaf.spec.field.Field;
import ringleaf.spec.field.FieldSet;
import ringleaf.spec.field.Values;
import ringleaf.spec.shared.FitName;
import ringleaf.spec.shared.Screw;
import ringleaf.spec.shared.Servo;
import ringleaf.spec.text.Problems;
import ringleaf.tooth.BasicRack;

/** From the values of a spec to a {@link RackSpec} and the design for it; what cannot be is reported. */
final class RackReader {
    private static final double PRINTED_WIDTH = 4;
    private static final double PRINTED_PLATE = 3;

    private final Request request;
    private final Values values;
    private final Problems problems;

    RackReader(Request request) {
        this.request = request;
        this.values = request.values();
        this.problems = request.problems();
    }

    Kind.Planned read() {
        int earlier = problems.count();
        Material gear = material("gear", RackFields.WIDTH, PRINTED_WIDTH, true);
        Material plate = material("plate", RackFields.PLATE_THICKNESS, PRINTED_PLATE, false);
        double width = values.given(RackFields.WIDTH).orElse(gear.thickness());
        Material spacer = spacer(width);
        Values pinion = group(values, RackFields.PINION, RackFields.PINION_SET);
        Values drive = group(values, RackFields.DRIVE, RackFields.DRIVE_SET);
        Optional<Servo> servo = drive.get(RackFields.SERVO).flatMap(request.catalogues()::servo);
        Body body = new BodyReader(request, pinion, gear).read(servo);
        Optional<Screw> screw = request.screw(values.require(RackFields.SCREW), values.where(RackFields.SCREW));
        way(drive);
        if (problems.count() > earlier || screw.isEmpty()) {
            return states -> null;
        }
        Values fits = group(values, RackFields.FITS, FieldSet.of(RackFields.PIN_FIT, Screw.THREAD_CLEARANCE));
        FitName pinFit = FitName.of(fits.require(RackFields.PIN_FIT));
        RackSpec spec = new RackSpec(
                request.name(),
                open(values, RackFields.STROKE),
                open(values, RackFields.LENGTH),
                open(values, RackFields.MODULE),
                BasicRack.ofAngle(values.require(RackFields.PRESSURE_ANGLE)),
                teeth(pinion),
                open(pinion, RackFields.PROFILE_SHIFT),
                open(values, RackFields.BACKLASH),
                gear,
                width,
                plate,
                spacer,
                body,
                servo,
                open(drive, RackFields.TORQUE),
                open(values, RackFields.FORCE),
                open(group(values, RackFields.GUIDE, RackFields.GUIDE_SET), RackFields.PIN_DIAMETER),
                pinFit,
                request.catalogues().processes().require(gear.process()).allowance(pinFit),
                open(values, RackFields.EYE),
                RackRooms.of(
                        group(values, RackFields.CLEARANCES, RackFields.CLEARANCE_SET), gear, plate, spacer, width),
                screw.get(),
                request.hardware(),
                values.require(RackFields.SPARE_TEETH),
                values.bound(RackFields.DEPTH),
                values.bound(RackFields.OVERALL_LENGTH),
                values.require(RackFields.MARKS),
                values.givenPaths());
        return planned(spec, pinion);
    }

    /** Something has to say how far the rack goes. */
    private void way(Values drive) {
        if (!values.isGiven(RackFields.STROKE)
                && !values.isGiven(RackFields.LENGTH)
                && !drive.isGiven(RackFields.SERVO)) {
            problems.at(
                    values.where(RackFields.STROKE),
                    "is missing (" + RackFields.STROKE.help() + ")",
                    "e.g. stroke: 40, or rack-length: 80, or a servo whose travel says it");
        }
    }

    private Kind.Planned planned(RackSpec spec, Values pinion) {
        Optional<RackLayout> layout = RackSearch.find(spec);
        if (layout.isEmpty()) {
            refuse(spec, pinion);
            return states -> null;
        }
        return new PlannedRack(layout.get());
    }

    /** Names the module or the teeth that stand in the way, with what works instead: tried, not guessed. */
    private void refuse(RackSpec spec, Values pinion) {
        if (spec.module().isPresent()) {
            OptionalDouble works = RackSearch.module(spec);
            if (works.isPresent()) {
                problems.at(
                        values.where(RackFields.MODULE),
                        "teeth of module " + Words.number(spec.module().getAsDouble(), 3)
                                + " cannot be made with the play and the room at the tips that guide and process need",
                        "module: " + Words.number(works.getAsDouble(), 3) + " works");
                return;
            }
        }
        boolean teeth = pinion.isGiven(RackFields.TEETH) || pinion.isGiven(RackFields.PROFILE_SHIFT);
        problems.at(
                teeth ? pinion.where(RackFields.TEETH) : values.where(RackFields.BACKLASH),
                teeth ? "no such teeth can be made" : "no teeth can be made with this much play, or no stroke is left",
                teeth
                        ? (int) Math.ceil(spec.rack().leastTeeth())
                                + " teeth and more need no profile shift; leave both" + " out and they are chosen"
                        : "less backlash, a longer rack or a process that keeps closer sizes");
    }

    private static OptionalInt teeth(Values pinion) {
        Optional<Integer> teeth = pinion.get(RackFields.TEETH);
        return teeth.isPresent() ? OptionalInt.of(teeth.get()) : OptionalInt.empty();
    }

    /** Process and stock of a family, in the thickness asked for, that of its sheet, or a usual one. */
    private Material material(String family, Field<Double> field, double usual, boolean stacked) {
        Optional<Double> asked = values.given(field);
        Making making = request.fabrication().of(family, asked.orElse(usual));
        OptionalDouble sheet = making.given() ? making.stock().thickness() : OptionalDouble.empty();
        double thickness = sheet.orElse(asked.orElse(usual));
        if (stacked && sheet.isPresent() && asked.isPresent()) {
            double sheets = asked.get() / thickness;
            if (Math.abs(sheets - Math.rint(sheets)) > 1e-6) {
                problems.at(
                        values.where(field),
                        Words.mm(asked.get()) + " is no whole number of sheets of the stock "
                                + making.stock().name() + " of " + Words.mm(thickness),
                        "the nearest that works is " + Words.number(Math.max(1, Math.rint(sheets)) * thickness, 3)
                                + "mm");
            }
        } else {
            making.agrees(asked.orElse(thickness), values.where(field), problems);
        }
        return Material.of(making.process(), making.stock(), thickness);
    }

    private Material spacer(double width) {
        Making making = request.fabrication().of("spacer", width);
        return Material.of(
                making.process(), making.stock(), making.stock().thickness().orElse(width));
    }

    private static Values group(Values of, Field<Values> field, FieldSet fields) {
        return of.given(field).orElseGet(() -> fields.none(of.where(field)));
    }

    private static OptionalDouble open(Values of, Field<Double> field) {
        Optional<Double> value = of.given(field);
        return value.isPresent() ? OptionalDouble.of(value.get()) : OptionalDouble.empty();
    }
}
