// SPDX-License-Identifier: Apache-2.0
package ringleaf.mechanism.slide;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import ringleaf.machine.Fit;
import ringleaf.machine.Room;
import ringleaf.machine.Size;
import ringleaf.mechanism.Kind;
import ringleaf.mechanism.Material;
import ringleaf.mechanism.Request;
import ringleaf.mechanism.SizesOff;
import ringleaf.spec.Making;
import ringleaf.spec.field.Field;
import ringleaf.spec.field.FieldSet;
import ringleaf.spec.field.Values;
import ringleaf.spec.shared.FitName;
import ringleaf.spec.shared.LinearBearing;
import ringleaf.spec.shared.MakingProcess;
import ringleaf.spec.shared.Screw;
import ringleaf.spec.shared.Servo;

/** From the values of a spec to a {@link SlideSpec} and the design for it; what cannot be is reported. */
final class SlideReader {
    private static final double PRINTED = 4;
    private static final double STOP = 1;
    private static final double BESIDE = 0.8;
    /** Pins of the link. */
    private static final int PINS = 2;

    private final Request request;
    private final Values values;

    SlideReader(Request request) {
        this.request = request;
        this.values = request.values();
    }

    Kind.Planned read() {
        int earlier = request.problems().count();
        Material plate = plate();
        Values drive = group(SlideFields.DRIVE, SlideFields.DRIVE_SET);
        Optional<Servo> servo = drive.isGiven(SlideFields.SERVO)
                ? drive.get(SlideFields.SERVO).flatMap(request.catalogues()::servo)
                : request.catalogues().servos().get(Servo.STAND_IN);
        Optional<Screw> screw = request.screw(values.require(SlideFields.SCREW), values.where(SlideFields.SCREW));
        List<LinearBearing> bearings = bearings();
        if (request.problems().count() > earlier || servo.isEmpty() || screw.isEmpty() || bearings.isEmpty()) {
            return states -> null;
        }
        MakingProcess process = request.catalogues().processes().require(plate.process());
        Values fits = group(
                SlideFields.FITS, FieldSet.of(SlideFields.ROD_FIT, SlideFields.BEARING_FIT, Screw.THREAD_CLEARANCE));
        FitName rodFit = FitName.of(fits.require(SlideFields.ROD_FIT));
        FitName bearingFit = FitName.of(fits.require(SlideFields.BEARING_FIT));
        Values own = group(SlideFields.CLEARANCES, SlideFields.CLEARANCE_SET);
        double pin = values.require(SlideFields.PIN);
        double within = plate.repeatability();
        Size bore = plate.width("link-bore", "bores of the link", PINS);
        Size wire = new Size("pin", "diameter of the pins", PINS, SizesOff.WIRE, "drawn, common practice");
        Fit pivot = Fit.moving(
                FitName.RUNNING,
                pin,
                "pivot",
                own.given(SlideFields.PIVOT),
                process.runningClearance(),
                0,
                "",
                bore,
                wire);
        Fit set = Fit.still(FitName.PRESS, pin, pin + process.allowance(FitName.PRESS), "");
        SlideSpec spec = new SlideSpec(
                request.name(),
                values.require(SlideFields.STROKE),
                values.require(SlideFields.MASS),
                values.require(SlideFields.SLOPE),
                values.require(SlideFields.FORCE),
                bearings,
                open(values, SlideFields.ROD_SPACING),
                open(values, SlideFields.BEARING_SPREAD),
                servo.get(),
                open(drive, SlideFields.SWING),
                open(drive, SlideFields.LINK),
                plate,
                pivot,
                set,
                Room.of("stop", own.given(SlideFields.STOP), STOP, 2, within, within, within, within),
                Room.of("beside", own.given(SlideFields.BESIDE), BESIDE, 3, within, within),
                rodFit,
                process.allowance(rodFit),
                bearingFit,
                process.allowance(bearingFit),
                process.allowance(FitName.GLUE),
                screw.get(),
                request.hardware(),
                values.bound(SlideFields.LENGTH),
                values.bound(SlideFields.HEIGHT),
                values.givenPaths());
        return new PlannedSlide(SlideSearch.find(spec));
    }

    private List<LinearBearing> bearings() {
        var catalogue = request.catalogues().linearBearings();
        Optional<String> named = values.get(SlideFields.BEARING);
        if (named.isPresent()) {
            return catalogue
                    .find(named.get(), values.where(SlideFields.BEARING))
                    .map(List::of)
                    .orElse(List.of());
        }
        List<LinearBearing> all = new ArrayList<>();
        for (String name : catalogue.names()) {
            catalogue.get(name).ifPresent(all::add);
        }
        all.sort((a, b) -> Double.compare(a.outside(), b.outside()));
        return all;
    }

    /** Process and stock of the plates, in the thickness asked for, that of its sheet, or a usual one. */
    private Material plate() {
        Optional<Double> asked = values.given(SlideFields.PLATE_THICKNESS);
        Making making = request.fabrication().of("plate", asked.orElse(PRINTED));
        OptionalDouble sheet = making.given() ? making.stock().thickness() : OptionalDouble.empty();
        double thickness = asked.orElse(sheet.orElse(PRINTED));
        making.agrees(thickness, values.where(SlideFields.PLATE_THICKNESS), request.problems());
        return Material.of(making.process(), making.stock(), thickness);
    }

    private Values group(Field<Values> field, FieldSet fields) {
        return values.given(field).orElseGet(() -> fields.none(values.where(field)));
    }

    private static OptionalDouble open(Values of, Field<Double> field) {
        Optional<Double> value = of.given(field);
        return value.isPresent() ? OptionalDouble.of(value.get()) : OptionalDouble.empty();
    }
}
