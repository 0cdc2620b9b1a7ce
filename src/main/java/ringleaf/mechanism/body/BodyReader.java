package ringleaf.mechanism.body;

import java.util.List;
import java.util.Optional;
import ringleaf.mechanism.Material;
import ringleaf.mechanism.Request;
import ringleaf.part.Words;
import ringleaf.spec.field.Field;
import ringleaf.spec.field.Values;
import ringleaf.spec.shared.Screw;
import ringleaf.spec.shared.Servo;
import ringleaf.spec.text.Problems;

/** From the fields of a body to the body; what contradicts itself is reported. */
public final class BodyReader {
    /** Axle of a part of which nothing is said, mm; common practice, no source. */
    public static final double USUAL_AXLE = 3;

    private final Request request;
    private final Values values;
    private final Material material;
    private final Problems problems;

    /** For a part whose fields, {@link BodyFields} among them, are in {@code values}. */
    public BodyReader(Request request, Values values, Material material) {
        this.request = request;
        this.values = values;
        this.material = material;
        this.problems = request.problems();
    }

    /** The body; {@code driving} is the servo that sits on this part's axle, if one does. */
    public Body read(Optional<Servo> driving) {
        Bore bore = bore(driving);
        return new Body(bore, screws(bore), lightening());
    }

    private Bore bore(Optional<Servo> driving) {
        Optional<Values> given = values.given(BodyFields.BORE);
        double usual = USUAL_AXLE + material.runningClearance();
        if (given.isEmpty()) {
            return driving.isPresent() ? new Bore.Horn(driving.get(), 4) : new Bore.Round(usual);
        }
        Values bore = given.get();
        String form = bore.require(BodyFields.FORM);
        refuse(bore, form);
        double diameter = bore.get(BodyFields.DIAMETER).orElse(usual);
        return switch (form) {
            case "d" -> flatted(bore, diameter);
            case "keyway" -> keyed(bore, diameter);
            case "square" -> new Bore.Square(diameter);
            case "servo-horn" -> horn(bore, driving);
            case "none" -> new Bore.Solid();
            default -> new Bore.Round(diameter);
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
        boolean hasDiameter = !form.equals("servo-horn") && !form.equals("none");
        refuse(bore, List.of(BodyFields.DIAMETER), form, hasDiameter, "form: round");
    }

    private void refuse(Values bore, List<Field<?>> fields, String form, boolean belongs, String instead) {
        for (Field<?> field : fields) {
            if (!belongs && bore.isGiven(field)) {
                problems.at(
                        bore.where(field),
                        "has no meaning for a bore of form " + form,
                        "leave it out, or " + instead);
            }
        }
    }

    private Bore flatted(Values bore, double diameter) {
        double across = bore.get(BodyFields.ACROSS).orElse(diameter * 5 / 6);
        if (across <= diameter / 2 || across >= diameter) {
            problems.at(
                    bore.where(BodyFields.ACROSS),
                    Words.mm(across) + " is not between half the diameter and all of it",
                    "the nearest that works lies between " + Words.mm(diameter / 2) + " and " + Words.mm(diameter));
            return new Bore.Round(diameter);
        }
        return new Bore.Flatted(diameter, across);
    }

    private Bore keyed(Values bore, double diameter) {
        double width = bore.get(BodyFields.KEY_WIDTH).orElse(diameter / 3);
        double depth = bore.get(BodyFields.KEY_DEPTH).orElse(diameter / 8);
        if (width >= diameter) {
            problems.at(
                    bore.where(BodyFields.KEY_WIDTH),
                    "a key of " + Words.mm(width) + " is not narrower than its bore of " + Words.mm(diameter),
                    "the usual width is " + Words.mm(diameter / 3));
            return new Bore.Round(diameter);
        }
        return new Bore.Keyed(diameter, width, depth);
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

    private Optional<HubScrews> screws(Bore bore) {
        Optional<Values> given = values.given(BodyFields.HUB_SCREWS);
        if (given.isEmpty()) {
            return Optional.empty();
        }
        Values screws = given.get();
        Optional<Screw> screw = request.catalogues()
                .screws()
                .find(screws.require(BodyFields.SCREW), screws.where(BodyFields.SCREW));
        if (screw.isEmpty()) {
            return Optional.empty();
        }
        int count = screws.require(BodyFields.COUNT);
        double hole = screw.get().clearanceMedium();
        double web = material.leastWeb();
        double forBore = 2 * bore.reach() + hole + 2 * web;
        double forNeighbours = count > 1 ? (hole + web) / Math.sin(Math.PI / count) : 0;
        double least = Math.max(forBore, forNeighbours);
        double circle = screws.get(BodyFields.CIRCLE).orElse(Math.ceil(10 * least) / 10);
        if (circle < least - 1e-9) {
            problems.at(
                    screws.where(BodyFields.CIRCLE),
                    "screws on a circle of " + Words.mm(circle) + " come nearer to the bore or to each other than the"
                            + " least web of " + Words.mm(web),
                    "the nearest that works is " + Words.number(Math.ceil(10 * least) / 10, 1) + "mm");
        }
        return Optional.of(new HubScrews(screw.get(), count, circle));
    }

    /** The screws in the rim of a ring, outside a radius, mm; their circle is as near to it as the web allows. */
    public Optional<HubScrews> screwsOutside(double radius) {
        Optional<Values> given = values.given(BodyFields.HUB_SCREWS);
        if (given.isEmpty()) {
            return Optional.empty();
        }
        Values screws = given.get();
        Optional<Screw> screw = request.catalogues()
                .screws()
                .find(screws.require(BodyFields.SCREW), screws.where(BodyFields.SCREW));
        if (screw.isEmpty()) {
            return Optional.empty();
        }
        double least = 2 * (radius + material.leastWeb()) + screw.get().clearanceMedium();
        double circle = screws.get(BodyFields.CIRCLE).orElse(Math.ceil(10 * least) / 10);
        if (circle < least - 1e-9) {
            problems.at(
                    screws.where(BodyFields.CIRCLE),
                    "screws on a circle of " + Words.mm(circle) + " come nearer to the teeth than the least web of "
                            + Words.mm(material.leastWeb()),
                    "the nearest that works is " + Words.number(Math.ceil(10 * least) / 10, 1) + "mm");
        }
        return Optional.of(new HubScrews(screw.get(), screws.require(BodyFields.COUNT), circle));
    }

    private Lightening lightening() {
        Optional<Values> given = values.given(BodyFields.LIGHTENING);
        if (given.isEmpty()) {
            return Lightening.NONE;
        }
        Values v = given.get();
        String form = v.require(BodyFields.LIGHTENED);
        for (Lightening.Form one : Lightening.Form.values()) {
            if (one.label().equals(form)) {
                return new Lightening(
                        one,
                        v.get(BodyFields.OPENINGS).orElse(0),
                        v.get(BodyFields.SPOKE_WIDTH).orElse(0.0));
            }
        }
        throw new IllegalStateException(form);
    }
}
