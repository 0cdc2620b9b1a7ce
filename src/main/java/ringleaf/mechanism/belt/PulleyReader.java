// SPDX-License-Identifier: Apache-2.0
package ringleaf.mechanism.belt;

import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.DoublePredicate;
import ringleaf.groove.Groove;
import ringleaf.mechanism.Material;
import ringleaf.mechanism.Request;
import ringleaf.mechanism.body.AxleFit;
import ringleaf.mechanism.body.Body;
import ringleaf.mechanism.body.BodyFields;
import ringleaf.mechanism.body.BodyReader;
import ringleaf.mechanism.body.Bore;
import ringleaf.mechanism.body.HubScrews;
import ringleaf.part.Words;
import ringleaf.spec.Making;
import ringleaf.spec.field.Field;
import ringleaf.spec.field.Values;
import ringleaf.spec.shared.Screw;
import ringleaf.spec.shared.Servo;
import ringleaf.spec.text.Place;
import ringleaf.spec.text.Problems;

/** From the fields of one pulley, once its teeth are known, to what is to be made. */
final class PulleyReader {
    private static final double PRINTED_FLANGE = 1.2;
    private static final int MOST_TEETH = 400;
    /** Lengths that differ by less count as the same, mm. */
    private static final double HAIR = 1e-9;
    /** Axles of a small pulley of which nothing is said, mm, the thickest that fits; common practice, no source. */
    private static final double[] AXLES = {5, 3, 2, 1.5, 1};

    private final Request request;
    private final Values values;
    private final BeltChoice choice;
    private final Material material;
    private final Problems problems;

    PulleyReader(Request request, Values values, BeltChoice choice, Material material) {
        this.request = request;
        this.values = values;
        this.choice = choice;
        this.material = material;
        this.problems = request.problems();
    }

    /** Process and stock of the family {@code pulley}; {@code face} is the height of a printed one. */
    static Material material(Request request, double face) {
        Making making = request.fabrication().of("pulley", face);
        double thickness = thickness(making, face);
        if (!making.process().makesThickness(thickness)) {
            making.agrees(thickness, making.place(), request.problems());
        }
        return Material.of(making.process(), making.stock(), thickness);
    }

    /** The same before the height is decided, which is not judged. */
    static Material undecided(Request request, double face) {
        Making making = request.fabrication().of("pulley", face);
        return Material.of(making.process(), making.stock(), thickness(making, face));
    }

    private static double thickness(Making making, double face) {
        return making.given() ? making.stock().thickness().orElse(face) : face;
    }

    /**
     * The pulley; null when its rim cannot be, which is then among the problems.
     *
     * @param where the count of teeth stands
     * @param servo that drives its axle, if one does
     */
    PulleySpec read(String name, int teeth, Place where, Optional<Servo> servo) {
        PulleyRim rim = rim(teeth, where);
        if (rim == null) {
            return null;
        }
        double room = rim.rootRadius() - material.leastWeb();
        BodyReader reader = new BodyReader(request, values, material);
        Body body = values.isGiven(BodyFields.BORE) ? reader.read(servo, room) : bored(reader, servo, room);
        if (body.bore().reach() > room + HAIR) {
            problems.at(
                    values.where(BodyFields.BORE),
                    "reaches out to " + Words.mm(2 * body.bore().reach()) + " across and leaves less than the web of "
                            + Words.mm(material.leastWeb()) + " below the grooves, which end at "
                            + Words.mm(2 * rim.rootRadius()),
                    room > 0.3
                            ? "at most " + Words.number(Math.floor(20 * room) / 10, 1) + "mm across works"
                            : "more teeth");
        }
        String flanges = values.require(PulleyFields.FLANGES);
        int count = flanges.equals("both") ? 2 : flanges.equals("one") ? 1 : 0;
        if (count == 0) {
            refuse(PulleyFields.FLANGE_DIAMETER, "there are no flanges", "flanges: both");
            refuse(PulleyFields.FLANGE_THICKNESS, "there are no flanges", "flanges: both");
        }
        double flange = flange(rim);
        double height = values.require(PulleyFields.HUB_HEIGHT);
        if (material.sheet()) {
            refuse(PulleyFields.HUB_HEIGHT, material.process() + " cuts flat sheet", "a printed pulley");
            refuse(PulleyFields.HUB_DIAMETER, material.process() + " cuts flat sheet", "a printed pulley");
            height = 0;
        }
        Optional<HubScrews> joining = joining(body, rim, count);
        PulleySpec spec = new PulleySpec(
                name,
                choice,
                rim,
                body,
                joining,
                count,
                flange,
                thickness(),
                open(PulleyFields.HUB_DIAMETER),
                height,
                material);
        hub(spec);
        PulleyStack stack = new PulleyStack(spec, 0);
        reader.lightens(body.lightening(), stack.lighterFrom(), stack.lighterTo());
        return spec;
    }

    /** The hub stands between the bore with its web and what it stands on. */
    private void hub(PulleySpec spec) {
        Optional<Double> given = values.given(PulleyFields.HUB_DIAMETER);
        if (spec.hubHeight() <= 0) {
            if (given.isPresent() && !material.sheet()) {
                problems.at(
                        values.where(PulleyFields.HUB_DIAMETER),
                        "has no meaning without a hub",
                        "leave it out, or hub-height: 5");
            }
            return;
        }
        double least = 2 * (spec.body().hubReach() + material.leastWeb());
        double most = 2 * new PulleyStack(spec, 0).mostHub();
        if (least > most + HAIR) {
            problems.at(
                    values.where(PulleyFields.HUB_HEIGHT),
                    "there is no room for a hub: round the bore it is " + Words.mm(least) + " across at least, and "
                            + Words.mm(most) + " is what it could stand on",
                    "hub-height: 0, a smaller bore, or more teeth");
        } else if (given.isPresent() && given.get() < least - HAIR) {
            problems.at(
                    values.where(PulleyFields.HUB_DIAMETER),
                    Words.mm(given.get()) + " leaves less than the web of " + Words.mm(material.leastWeb())
                            + " round a bore that reaches out to "
                            + Words.mm(2 * spec.body().hubReach()),
                    "the nearest that works is " + Words.number(Math.ceil(1000 * least - HAIR) / 1000, 3) + "mm");
        } else if (given.isPresent() && given.get() > most + HAIR) {
            problems.at(
                    values.where(PulleyFields.HUB_DIAMETER),
                    Words.mm(given.get()) + " is wider than what it stands on",
                    "the nearest that works is " + Words.number(Math.floor(1000 * most + HAIR) / 1000, 3) + "mm");
        }
    }

    private PulleyRim rim(int teeth, Place where) {
        int least = choice.belt().leastTeeth();
        if (teeth < least) {
            problems.at(
                    where,
                    teeth + " is below the least of " + least + " for a belt "
                            + choice.belt().name() + " (bent tighter, its cords break)",
                    "the nearest that works is " + least);
            return null;
        }
        OptionalDouble outside = open(PulleyFields.OUTSIDE);
        double pitchDiameter = choice.belt().pitchDiameter(teeth);
        if (outside.isPresent()) {
            double gap = (pitchDiameter - outside.getAsDouble()) / 2;
            double most = 2 * choice.belt().pitchLine();
            if (gap < 0.2 * choice.belt().pitchLine() || gap > most) {
                problems.at(
                        values.where(PulleyFields.OUTSIDE),
                        Words.mm(outside.getAsDouble())
                                + " does not let the belt's pitch line run near the pitch circle"
                                + " of " + Words.mm(pitchDiameter),
                        "the nominal is "
                                + Words.number(pitchDiameter - 2 * choice.belt().pitchLine(), 3) + "mm");
                return null;
            }
        }
        if (!choice.generated() && choice.belt().trapezoid().isEmpty()) {
            return null;
        }
        try {
            return PulleyRim.of(choice, teeth, outside);
        } catch (Groove.NoRim e) {
            noRim(teeth, where, outside, e.getMessage());
            return null;
        }
    }

    /** Tells what leaves no rim: play or room that was given where less would do, else the teeth. */
    private void noRim(int teeth, Place where, OptionalDouble outside, String why) {
        Values belt = request.values();
        if (choice.generated() && belt.isGiven(PulleyFields.BACKLASH)) {
            double most =
                    mostRoom(choice.backlash(), x -> makes(choice.withRoom(x, choice.clearance()), teeth, outside));
            if (most >= 0) {
                problems.at(
                        belt.where(PulleyFields.BACKLASH),
                        Words.mm(choice.backlash()) + " of play leaves no pulley of " + teeth + " teeth: " + why,
                        "the nearest that works is " + Words.number(most, 2) + "mm");
                return;
            }
        }
        if (choice.generated() && belt.isGiven(PulleyFields.CLEARANCE)) {
            double most =
                    mostRoom(choice.clearance(), x -> makes(choice.withRoom(choice.backlash(), x), teeth, outside));
            if (most >= 0) {
                problems.at(
                        belt.where(PulleyFields.CLEARANCE),
                        Words.mm(choice.clearance()) + " below the tips leaves no pulley of " + teeth + " teeth: "
                                + why,
                        "the nearest that works is " + Words.number(most, 2) + "mm");
                return;
            }
        }
        int more = teeth;
        while (more < MOST_TEETH && !makes(choice, more, OptionalDouble.empty())) {
            more++;
        }
        problems.at(
                where,
                teeth + " teeth leave no pulley: " + why,
                more < MOST_TEETH ? "the nearest that works is " + more : "another belt");
    }

    /** The greatest room, in hundredths of a millimetre below what was asked for, that makes a pulley; else -1. */
    private static double mostRoom(double asked, DoublePredicate makes) {
        for (double room = Math.ceil(100 * asked) / 100 - 0.01; room >= -HAIR; room -= 0.01) {
            if (makes.test(Math.max(0, room))) {
                return Math.max(0, room);
            }
        }
        return -1;
    }

    private static boolean makes(BeltChoice choice, int teeth, OptionalDouble outside) {
        try {
            PulleyRim.of(choice, teeth, outside);
            return true;
        } catch (Groove.NoRim e) {
            return false;
        }
    }

    private void refuse(Field<?> field, String why, String instead) {
        if (values.isGiven(field) && !isNought(field)) {
            problems.at(values.where(field), "has no meaning here: " + why, "leave it out, or " + instead);
        }
    }

    private boolean isNought(Field<?> field) {
        return field == PulleyFields.HUB_HEIGHT && values.require(PulleyFields.HUB_HEIGHT) == 0;
    }

    /**
     * The servo's horn, or its output where the horn is too large, else the thickest usual axle round which hub screws
     * find room.
     */
    private Body bored(BodyReader reader, Optional<Servo> servo, double room) {
        if (servo.isPresent()) {
            Bore horn = new Bore.Horn(servo.get(), 4);
            double output = servo.get().splineDiameter();
            return horn.reach() <= room && reader.fits(horn, room)
                    ? reader.around(horn, AxleFit.NONE, room)
                    : reader.around(new Bore.Round(output), AxleFit.gripping(output), room);
        }
        Bore thinnest = new Bore.Solid();
        AxleFit fit = AxleFit.NONE;
        for (double axle : AXLES) {
            Bore bore = new Bore.Round(axle + material.runningClearance());
            if (bore.reach() <= Math.min(room, 0.6 * (room + material.leastWeb()))) {
                thinnest = bore;
                fit = AxleFit.running(axle);
                if (reader.fits(bore, room)) {
                    break;
                }
            }
        }
        return reader.around(thinnest, fit, room);
    }

    private double flange(PulleyRim rim) {
        double flange = values.given(PulleyFields.FLANGE_DIAMETER).orElse(rim.usualFlange());
        if (flange <= rim.outside()) {
            problems.at(
                    values.where(PulleyFields.FLANGE_DIAMETER),
                    Words.mm(flange) + " does not stand over the rim of " + Words.mm(rim.outside()),
                    "the usual is " + Words.number(rim.usualFlange(), 2) + "mm");
        }
        return flange;
    }

    private double thickness() {
        double usual = material.sheet() ? material.thickness() : PRINTED_FLANGE;
        double asked = values.given(PulleyFields.FLANGE_THICKNESS).orElse(usual);
        if (material.sheet() && Math.abs(asked - usual) > 1e-9) {
            problems.at(
                    values.where(PulleyFields.FLANGE_THICKNESS),
                    Words.mm(asked) + " contradicts the stock " + material.stock() + " of " + Words.mm(usual),
                    "leave one of them out, or make them agree");
        }
        return asked;
    }

    /** Screws through plates and flanges; none where nothing is to be joined or nothing fits. */
    private Optional<HubScrews> joining(Body body, PulleyRim rim, int flanges) {
        Optional<Values> given = values.given(PulleyFields.JOINING);
        Optional<String> by = given.flatMap(v -> v.get(PulleyFields.JOIN_BY));
        boolean asked = given.isPresent();
        boolean wanted = asked || material.sheet() && (flanges > 0 || choice.face() > 0);
        if (!wanted || by.isPresent() && by.get().equals("glue")) {
            return Optional.empty();
        }
        String name = given.isPresent()
                ? given.get().require(PulleyFields.JOIN_SCREW)
                : PulleyFields.JOIN_SCREW.defaultValue();
        int count = given.isPresent()
                ? given.get().require(PulleyFields.JOIN_COUNT)
                : PulleyFields.JOIN_COUNT.defaultValue();
        Place place =
                given.isPresent() ? given.get().where(PulleyFields.JOIN_SCREW) : values.where(PulleyFields.JOINING);
        Optional<Screw> screw = request.screw(name, place);
        if (screw.isEmpty()) {
            return Optional.empty();
        }
        double hole = screw.get().hole();
        double web = material.leastWeb();
        double from = body.hubReach() + web + hole / 2;
        double to = rim.rootRadius() - web - hole / 2;
        double apart = (hole + web) / (2 * Math.sin(Math.PI / count));
        double least = Math.max(from, apart);
        Optional<Double> circle = given.flatMap(v -> v.given(PulleyFields.JOIN_CIRCLE));
        double radius = circle.isPresent() ? circle.get() / 2 : (least + to) / 2;
        boolean fits = least <= to && radius >= least - 1e-9 && radius <= to + 1e-9;
        if (!fits && asked) {
            problems.at(
                    given.get()
                            .where(
                                    circle.isPresent() && least <= to
                                            ? PulleyFields.JOIN_CIRCLE
                                            : PulleyFields.JOIN_SCREW),
                    count + " screws " + name + " do not fit between bore and grooves with the web of " + Words.mm(web),
                    least <= to
                            ? "a circle of " + Words.number(Math.ceil(20 * least) / 10, 1) + " to "
                                    + Words.number(Math.floor(20 * to) / 10, 1) + "mm works"
                            : "by: glue, smaller screws, or more teeth");
        }
        return fits ? Optional.of(new HubScrews(screw.get(), count, 2 * radius)) : Optional.empty();
    }

    private OptionalDouble open(Field<Double> field) {
        Optional<Double> value = values.given(field);
        return value.isPresent() ? OptionalDouble.of(value.get()) : OptionalDouble.empty();
    }
}
