// SPDX-License-Identifier: Apache-2.0
package ringleaf.mechanism.body;

import java.util.List;
import java.util.Optional;
import ringleaf.mechanism.Material;
import ringleaf.mechanism.Request;
import ringleaf.part.Words;
import ringleaf.spec.field.Field;
import ringleaf.spec.field.Values;
import ringleaf.spec.shared.Bearing;
import ringleaf.spec.shared.FitName;
import ringleaf.spec.shared.MakingProcess;
import ringleaf.spec.shared.Servo;
import ringleaf.spec.text.Problems;

/**
 * From the fields of a bore to the bore and what goes through it. Its size is given as cut ({@code diameter}), or as
 * that of the axle, and the fit adds what the process allows for it.
 */
final class BoreReader {
    /** Axle of a part of which nothing is said, mm; common practice, no source. */
    private static final double USUAL_AXLE = 3;

    private final Request request;
    private final Values values;
    private final Material material;
    private final Problems problems;

    /** A bore and what goes through it. */
    record Read(Bore bore, AxleFit axle) {}

    BoreReader(Request request, Values values, Material material) {
        this.request = request;
        this.values = values;
        this.material = material;
        this.problems = request.problems();
    }

    Read read(Optional<Servo> driving) {
        Read read = bore(driving);
        boolean round = !(read.bore() instanceof Bore.Square) && read.axle().axle() > 0;
        return round
                ? new Read(
                        read.bore(),
                        read.axle()
                                .from(request.hardware().rod("axle", read.axle().axle())))
                : read;
    }

    private Read bore(Optional<Servo> driving) {
        Optional<Values> given = values.given(BodyFields.BORE);
        if (given.isEmpty()) {
            return driving.isPresent()
                    ? new Read(new Bore.Horn(driving.get(), 4), AxleFit.NONE)
                    : new Read(new Bore.Round(USUAL_AXLE + material.runningClearance()), AxleFit.running(USUAL_AXLE));
        }
        Values bore = given.get();
        String form = bore.require(BodyFields.FORM);
        refuse(bore, form);
        return switch (form) {
            case "servo-horn" -> new Read(horn(bore, driving), AxleFit.NONE);
            case "none" -> new Read(new Bore.Solid(), AxleFit.NONE);
            case "bearing" -> seat(bore);
            default -> onAxle(bore, form);
        };
    }

    /** Fields that mean nothing for the form of the bore. */
    private void refuse(Values bore, String form) {
        refuse(bore, List.of(BodyFields.ACROSS), form, form.equals("d"), "form: d");
        refuse(bore, List.of(BodyFields.KEY_WIDTH, BodyFields.KEY_DEPTH), form, form.equals("keyway"), "form: keyway");
        refuse(
                bore,
                List.of(BodyFields.SERVO, BodyFields.HORN_SCREWS),
                form,
                form.equals("servo-horn"),
                "form: servo-horn");
        boolean bearing = form.equals("bearing");
        refuse(bore, List.of(BodyFields.BEARING), form, bearing, "form: bearing");
        boolean hasDiameter = !form.equals("servo-horn") && !form.equals("none");
        refuse(bore, List.of(BodyFields.DIAMETER, BodyFields.AXLE), form, hasDiameter && !bearing, "form: round");
        refuse(bore, List.of(BodyFields.FIT), form, hasDiameter, "form: round");
        if (bore.isGiven(BodyFields.DIAMETER) && bore.isGiven(BodyFields.AXLE)) {
            problems.at(
                    bore.where(BodyFields.DIAMETER),
                    "contradicts axle, from which the hole's size follows",
                    "leave one of them out");
        }
    }

    private void refuse(Values bore, List<Field<?>> fields, String form, boolean belongs, String instead) {
        for (Field<?> field : fields) {
            if (!belongs && bore.isGiven(field)) {
                problems.at(
                        bore.where(field), "has no meaning for a bore of form " + form, "leave it out, or " + instead);
            }
        }
    }

    private Read onAxle(Values bore, String form) {
        boolean round = form.equals("round");
        Optional<String> fit = bore.given(BodyFields.FIT);
        FitName name = fit.isPresent() ? FitName.of(fit.get()) : round ? FitName.RUNNING : FitName.PRESS;
        // without a fit by name what is not round grips its axle in a hole as wide, as the pins of leaves are gripped
        double allowance = name == FitName.RUNNING
                ? material.runningClearance()
                : fit.isPresent() || round ? process().allowance(name) : 0;
        boolean asCut = bore.isGiven(BodyFields.DIAMETER);
        double axle = asCut
                ? bore.require(BodyFields.DIAMETER) - allowance
                : bore.get(BodyFields.AXLE).orElse(USUAL_AXLE);
        double grown = asCut ? 0 : allowance;
        double diameter = asCut ? bore.require(BodyFields.DIAMETER) : axle + allowance;
        Bore made =
                switch (form) {
                    case "d" -> flatted(bore, diameter, grown);
                    case "keyway" -> keyed(bore, diameter, grown);
                    case "square" -> new Bore.Square(diameter);
                    default -> new Bore.Round(diameter);
                };
        AxleFit on = fit.isPresent() || round
                ? new AxleFit(name, axle, "", Optional.empty(), Optional.empty())
                : AxleFit.gripping(axle);
        return new Read(made, on);
    }

    private Bore flatted(Values bore, double diameter, double grown) {
        Optional<Double> given = bore.get(BodyFields.ACROSS);
        double across = given.isPresent() ? given.get() + grown : (diameter - grown) * 5 / 6 + grown;
        if (across <= diameter / 2 || across >= diameter) {
            problems.at(
                    bore.where(BodyFields.ACROSS),
                    Words.mm(across - grown) + " is not between half the diameter and all of it",
                    "the nearest that works lies between " + Words.mm((diameter - grown) / 2) + " and "
                            + Words.mm(diameter - grown));
            return new Bore.Round(diameter);
        }
        return new Bore.Flatted(diameter, across);
    }

    private Bore keyed(Values bore, double diameter, double grown) {
        double width = bore.get(BodyFields.KEY_WIDTH).orElse((diameter - grown) / 3) + grown;
        double depth = bore.get(BodyFields.KEY_DEPTH).orElse(diameter / 8);
        if (width >= diameter) {
            problems.at(
                    bore.where(BodyFields.KEY_WIDTH),
                    "a key of " + Words.mm(width - grown) + " is not narrower than its bore of " + Words.mm(diameter),
                    "the usual width is " + Words.mm((diameter - grown) / 3));
            return new Bore.Round(diameter);
        }
        return new Bore.Keyed(diameter, width, depth);
    }

    private Read seat(Values bore) {
        if (!bore.isGiven(BodyFields.BEARING)) {
            problems.at(
                    bore.where(BodyFields.BEARING),
                    "is missing (" + BodyFields.BEARING.help() + ")",
                    "e.g. bearing: \"623\"");
            return new Read(new Bore.Solid(), AxleFit.NONE);
        }
        Optional<Bearing> bearing =
                request.catalogues().bearings().find(bore.require(BodyFields.BEARING), bore.where(BodyFields.BEARING));
        if (bearing.isEmpty()) {
            return new Read(new Bore.Solid(), AxleFit.NONE);
        }
        FitName fit = FitName.of(bore.get(BodyFields.FIT).orElse(FitName.PRESS.label()));
        if (fit == FitName.RUNNING) {
            problems.at(
                    bore.where(BodyFields.FIT),
                    "a bearing's outer ring does not turn in its seat",
                    "press, glue, or sliding");
        }
        double outside = bearing.get().outside();
        return new Read(
                new Bore.Seat(bearing.get(), outside + process().allowance(fit)),
                new AxleFit(fit, outside, "", bearing, Optional.empty()));
    }

    private MakingProcess process() {
        return request.catalogues().processes().require(material.process());
    }

    private Bore horn(Values bore, Optional<Servo> driving) {
        Optional<String> named = bore.get(BodyFields.SERVO);
        String name = named.orElse(Servo.STAND_IN);
        Optional<Servo> servo = named.isEmpty() && driving.isPresent()
                ? driving
                : request.catalogues().servos().find(name, bore.where(BodyFields.SERVO));
        if (servo.isEmpty()) {
            return new Bore.Solid();
        }
        return new Bore.Horn(servo.get(), bore.require(BodyFields.HORN_SCREWS));
    }
}
