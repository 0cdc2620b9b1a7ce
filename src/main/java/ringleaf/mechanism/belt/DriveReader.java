// SPDX-License-Identifier: Apache-2.0
package ringleaf.mechanism.belt;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import ringleaf.geom.Point;
import ringleaf.mechanism.Material;
import ringleaf.mechanism.Request;
import ringleaf.mechanism.body.AxleFit;
import ringleaf.mechanism.body.Body;
import ringleaf.mechanism.body.BodyFields;
import ringleaf.mechanism.body.Bore;
import ringleaf.mechanism.body.Lightening;
import ringleaf.part.Words;
import ringleaf.spec.Making;
import ringleaf.spec.field.Bound;
import ringleaf.spec.field.Field;
import ringleaf.spec.field.Values;
import ringleaf.spec.shared.Belt;
import ringleaf.spec.shared.Screw;
import ringleaf.spec.shared.Servo;
import ringleaf.spec.text.Place;
import ringleaf.spec.text.Problems;

/** From the values of a spec to a {@link DriveSpec} and the belt for it; what cannot be is reported. */
final class DriveReader {
    /** Driver and driven. */
    private static final int PULLEYS = 2;

    private static final double PRINTED_PLATE = 3;

    private final Request request;
    private final Values values;
    private final Problems problems;
    /** Problems of mechanisms before this one, which do not keep its own from being told. */
    private final int earlier;

    DriveReader(Request request) {
        this.request = request;
        this.values = request.values();
        this.problems = request.problems();
        this.earlier = problems.count();
    }

    /** A drive and the belt that was found for it. */
    record Read(DriveSpec spec, BeltSearch search) {}

    /** The drive; null when it was refused. */
    Read read() {
        BeltReader beltReader = new BeltReader(request, PULLEYS);
        Optional<Belt> belt = beltReader.belt();
        if (belt.isEmpty()) {
            return null;
        }
        Material material = beltReader.material(belt.get());
        BeltChoice choice = beltReader.read(belt.get(), material);
        Bound distance = values.bound(DriveFields.CENTRE_DISTANCE);
        boolean fixed = values.require(DriveFields.CENTRES).equals("fixed");
        if (fixed && !distance.isExact()) {
            problems.at(
                    values.where(DriveFields.CENTRE_DISTANCE),
                    "pulleys that stand fast need their distance as one figure",
                    "e.g. centre-distance: 60, or centres: movable");
        }
        if (!fixed && values.isGiven(DriveFields.IDLER)) {
            problems.at(
                    values.where(DriveFields.IDLER),
                    "has no meaning where the centre distance takes up the slack",
                    "centres: fixed, or name the roller under further");
        }
        double asked = asked(distance);
        Optional<Servo> servo = values.given(DriveFields.SERVO).flatMap(request.catalogues()::servo);
        Optional<Pulleys> pulleys = TeethChoice.of(values, belt.get(), asked, problems)
                .map(fewest -> carrying(fewest, choice, material, asked, servo));
        Optional<PulleySpec> driver = pulleys.map(Pulleys::driver);
        Optional<PulleySpec> driven = pulleys.map(Pulleys::driven);
        Material plate = plate();
        Optional<Screw> screw = request.screw(values.require(DriveFields.SCREW), values.where(DriveFields.SCREW));
        List<DriveSpec.Roller> further = further(choice, material);
        DriveSpec.Roller idler = idler(choice, material);
        Optional<Axles> axles = driven.map(pulley -> new AxlesReader(request).read(plate, pulley));
        if (driver.isEmpty()
                || axles.isEmpty()
                || screw.isEmpty()
                || further == null
                || idler == null
                || problems.count() > earlier) {
            return null;
        }
        double wanted = Double.isNaN(asked)
                ? TeethChoice.usualDistance(
                        belt.get(),
                        pulleys.get().teeth().driver(),
                        pulleys.get().teeth().driven())
                : asked;
        return searched(spec(
                choice,
                driver.get(),
                driven.get(),
                distance,
                wanted,
                fixed,
                idler,
                further,
                servo,
                plate,
                screw.get(),
                axles.get()));
    }

    /** Both pulleys and their teeth; a pulley that was refused is null. */
    private record Pulleys(TeethChoice teeth, PulleySpec driver, PulleySpec driven) {}

    /** Pulleys of the fewest teeth, or of more where they are left open and would not carry what they are bored for. */
    private Pulleys carrying(
            TeethChoice fewest, BeltChoice choice, Material material, double asked, Optional<Servo> servo) {
        for (Optional<TeethChoice> teeth = Optional.of(fewest);
                teeth.isPresent();
                teeth = teeth.get().larger(values, choice.belt(), asked)) {
            Problems tried = new Problems();
            Pulleys pulleys = new DriveReader(request.telling(tried)).pulleys(teeth.get(), choice, material, servo);
            if (tried.isEmpty()) {
                return pulleys;
            }
        }
        return pulleys(fewest, choice, material, servo);
    }

    private Pulleys pulleys(TeethChoice teeth, BeltChoice choice, Material material, Optional<Servo> servo) {
        PulleySpec driver = pulley(true, teeth, choice, material, servo);
        PulleySpec driven = pulley(false, teeth, choice, material, Optional.empty());
        if (driver != null) {
            held("driver", DriveFields.DRIVER, driver, servo);
        }
        if (driven != null) {
            held("driven pulley", DriveFields.DRIVEN, driven, Optional.empty());
        }
        return new Pulleys(teeth, driver, driven);
    }

    /** A pulley between plates sits on an axle, or on the servo that turns it. */
    private void held(String name, Field<Values> group, PulleySpec pulley, Optional<Servo> servo) {
        if (values.require(DriveFields.PLATES).equals("none")) {
            return;
        }
        Place place = values.given(group).isPresent()
                ? values.given(group).get().where(BodyFields.BORE)
                : values.where(group);
        Bore bore = pulley.body().bore();
        if (bore instanceof Bore.Solid) {
            problems.at(
                    place,
                    "nothing holds the " + name + ": it has no bore, and no usual axle leaves the web of "
                            + Words.mm(pulley.material().leastWeb()) + " below its grooves",
                    "more teeth, plates: none, or an axle of your own, e.g. bore: {axle: 1}");
        } else if (bore instanceof Bore.Horn && servo.isEmpty()) {
            problems.at(
                    place,
                    "the " + name + " is bored for a servo's horn, and no servo stands behind it",
                    name.equals("driver") ? "servo: micro-180, or a bore for an axle" : "a bore for an axle");
        }
    }

    private DriveSpec spec(
            BeltChoice choice,
            PulleySpec driver,
            PulleySpec driven,
            Bound distance,
            double wanted,
            boolean fixed,
            DriveSpec.Roller idler,
            List<DriveSpec.Roller> further,
            Optional<Servo> servo,
            Material plate,
            Screw screw,
            Axles axles) {
        Optional<Integer> beltTeeth = values.given(DriveFields.BELT_TEETH);
        String plates = values.require(DriveFields.PLATES);
        Values room = values.given(DriveFields.CLEARANCES).orElse(DriveFields.CLEARANCE_SET.none(values.where()));
        return new DriveSpec(
                request.name(),
                choice,
                driver,
                driven,
                distance,
                wanted,
                values.require(DriveFields.AT),
                fixed,
                beltTeeth.isPresent() ? OptionalInt.of(beltTeeth.get()) : OptionalInt.empty(),
                idler,
                further,
                new ObstacleReader(values, problems).read(driver.reach() + room.require(DriveFields.BELT_ROOM)),
                open(values.given(DriveFields.TRAVEL)),
                servo,
                open(values.given(DriveFields.LOAD)),
                values.require(DriveFields.SAFETY),
                plates.equals("two") ? 2 : plates.equals("one") ? 1 : 0,
                plate,
                screw,
                spacer(),
                request.hardware(),
                axles,
                room.require(DriveFields.PULLEY_ROOM),
                room.require(DriveFields.BELT_ROOM),
                axial(choice, driver, driven, room));
    }

    /** Between pulleys and plates; the higher of both stacks counts. */
    private static double axial(BeltChoice choice, PulleySpec driver, PulleySpec driven, Values room) {
        double height = Math.max(new PulleyStack(driver, 0).top(), new PulleyStack(driven, 0).top());
        return new BeltRooms(driven.material(), PULLEYS)
                .axial(room.given(DriveFields.AXIAL_ROOM), height)
                .mm();
    }

    private static OptionalDouble open(Optional<Double> value) {
        return value.isPresent() ? OptionalDouble.of(value.get()) : OptionalDouble.empty();
    }

    /** The distance asked for as one figure: exact, the middle of both limits, a little inside one; else none. */
    private static double asked(Bound distance) {
        if (distance.isExact()) {
            return distance.exactly().getAsDouble();
        }
        boolean least = distance.atLeast().isPresent();
        boolean most = distance.atMost().isPresent();
        if (least && most) {
            return (distance.atLeast().getAsDouble() + distance.atMost().getAsDouble()) / 2;
        }
        return least
                ? distance.atLeast().getAsDouble()
                : most ? distance.atMost().getAsDouble() : Double.NaN;
    }

    /** A pulley; null when it was refused. */
    private PulleySpec pulley(
            boolean driving, TeethChoice teeth, BeltChoice choice, Material material, Optional<Servo> servo) {
        var group = driving ? DriveFields.DRIVER : DriveFields.DRIVEN;
        Values own = values.given(group).orElse(PulleyFields.OF_DRIVE.none(values.where(group)));
        return new PulleyReader(request, own, choice, material)
                .read(
                        driving ? "driver" : "driven",
                        driving ? teeth.driver() : teeth.driven(),
                        driving ? teeth.driverPlace() : teeth.drivenPlace(),
                        servo);
    }

    private Material plate() {
        Optional<Double> asked = values.given(DriveFields.PLATE_THICKNESS);
        Making making = request.fabrication().of("plate", asked.orElse(PRINTED_PLATE));
        double stock = making.given() ? making.stock().thickness().orElse(PRINTED_PLATE) : PRINTED_PLATE;
        double thickness = asked.orElse(stock);
        making.agrees(thickness, values.where(DriveFields.PLATE_THICKNESS), problems);
        return Material.of(making.process(), making.stock(), thickness);
    }

    /** How what is printed beside the plates is made. */
    private Material spacer() {
        Making making = request.fabrication().of("spacer", PRINTED_PLATE);
        return Material.of(
                making.process(), making.stock(), making.stock().thickness().orElse(PRINTED_PLATE));
    }

    private DriveSpec.Roller idler(BeltChoice choice, Material material) {
        Values own = values.given(DriveFields.IDLER).orElse(DriveFields.IDLER_SET.none(values.where()));
        boolean inside = own.require(DriveFields.SIDE).equals("inside");
        return roller("idler", own, inside, choice, material, Optional.empty(), own.require(DriveFields.ALONG));
    }

    private List<DriveSpec.Roller> further(BeltChoice choice, Material material) {
        List<DriveSpec.Roller> all = new ArrayList<>();
        for (Values one : values.given(DriveFields.FURTHER).orElse(List.of())) {
            if (!one.isComplete()) {
                return null;
            }
            boolean inside = one.require(DriveFields.FURTHER_SIDE).equals("inside");
            Point centre = new Point(one.require(DriveFields.X), one.require(DriveFields.Y));
            String name = "wheel-" + (all.size() + 3);
            DriveSpec.Roller roller = roller(name, one, inside, choice, material, Optional.of(centre), 0.5);
            if (roller == null) {
                return null;
            }
            all.add(roller);
        }
        return all;
    }

    private DriveSpec.Roller roller(
            String name,
            Values own,
            boolean inside,
            BeltChoice choice,
            Material material,
            Optional<Point> centre,
            double along) {
        Optional<Integer> teeth = own.given(DriveFields.IDLER_TEETH);
        boolean smooth = own.isGiven(DriveFields.IDLER_DIAMETER);
        if (teeth.isPresent() && (!inside || smooth)) {
            problems.at(
                    own.where(DriveFields.IDLER_TEETH),
                    inside
                            ? "teeth and the diameter of a smooth roller stand side by side"
                            : "the belt's back has no teeth to run on",
                    inside ? "leave one of them out" : "side: inside, or a diameter");
            return null;
        }
        double axle = own.require(DriveFields.IDLER_AXLE);
        double usual = choice.belt().pitchDiameter(choice.belt().leastTeeth());
        double diameter = own.given(DriveFields.IDLER_DIAMETER).orElse(usual);
        double least = axle + material.runningClearance() + 2 * material.leastWeb();
        if (smooth && diameter < least) {
            problems.at(
                    own.where(DriveFields.IDLER_DIAMETER),
                    Words.mm(diameter) + " leaves no wall round an axle of " + Words.mm(axle),
                    "the nearest that works is " + Words.number(least, 3) + "mm");
            return null;
        }
        if (!inside || smooth) {
            return new DriveSpec.Roller(name, inside, Optional.empty(), Math.max(diameter, least), axle, centre, along);
        }
        Place where = own.where(DriveFields.IDLER_TEETH);
        Values body = PulleyFields.OF_DRIVE.none(where);
        PulleySpec toothed = new PulleyReader(request, body, choice, material)
                .read(name, teeth.orElse(usualTeeth(choice, material, axle)), where, Optional.empty());
        if (toothed == null) {
            return null;
        }
        double bore = axle + material.runningClearance();
        double room = 2 * (toothed.rim().rootRadius() - material.leastWeb());
        if (bore > room) {
            problems.at(
                    own.where(DriveFields.IDLER_AXLE),
                    "an axle of " + Words.mm(axle) + " leaves less than the web of " + Words.mm(material.leastWeb())
                            + " below the grooves",
                    "at most " + Words.number(Math.floor(10 * (room - material.runningClearance())) / 10, 1)
                            + "mm works");
            return null;
        }
        PulleySpec bored = toothed.withBody(
                new Body(new Bore.Round(bore), AxleFit.running(axle), Optional.empty(), Lightening.NONE));
        return new DriveSpec.Roller(name, true, Optional.of(bored), 0, axle, centre, along);
    }

    /** The belt's least teeth, or so many more that an axle fits below the grooves. */
    private static int usualTeeth(BeltChoice choice, Material material, double axle) {
        Belt belt = choice.belt();
        double below = 1.2 * belt.pitchLine() + belt.toothHeight() + choice.clearance() + material.leastWeb();
        double least = axle + material.runningClearance() + 2 * below;
        return Math.max(belt.leastTeeth(), (int) Math.ceil(least * Math.PI / belt.pitch()));
    }

    /** Finds the belt; pulleys that touch and belts that cannot span are the spec's fault. */
    private Read searched(DriveSpec spec) {
        double touching = spec.driver().reach() + spec.driven().reach();
        if (spec.distance().isExact() && spec.wanted() <= touching) {
            problems.at(
                    values.where(DriveFields.CENTRE_DISTANCE),
                    Words.mm(spec.wanted()) + " lets the pulleys touch, which reach out to " + Words.mm(touching)
                            + " together, flanges included",
                    "the nearest that works is " + Words.number(Math.ceil(10 * (touching + spec.pulleyRoom())) / 10, 1)
                            + "mm");
            return null;
        }
        BeltSearch search = BeltSearch.of(spec);
        if (search.best() != null && search.best().distance() <= touching) {
            problems.at(
                    values.where(DriveFields.BELT_TEETH),
                    "a belt of " + search.best().beltTeeth() + " teeth pulls the pulleys together until they touch, at "
                            + Words.number(search.best().distance(), 3) + " mm",
                    leastBelt(spec, touching + spec.pulleyRoom()));
            return null;
        }
        if (search.best() == null) {
            refuse(spec, touching);
            return null;
        }
        if (!BeltSearch.isOpen(spec, search.best())) {
            DriveRoom.Nearest room =
                    DriveRoom.of(spec, search.best().withoutSlot()).belt();
            problems.at(
                    wheelsPlace(),
                    "the belt runs into itself or a wheel at the " + room.words() + ", " + Words.mm(-room.distance())
                            + " deep",
                    order(spec));
            return null;
        }
        return new Read(spec, search);
    }

    /** Where it stands how the wheels stand. */
    private Place wheelsPlace() {
        return values.where(values.isGiven(DriveFields.FURTHER) ? DriveFields.FURTHER : DriveFields.CENTRE_DISTANCE);
    }

    /** What would part belt and wheels: another order of the further wheels where one does, else more room. */
    private static String order(DriveSpec spec) {
        List<DriveSpec.Roller> turned = new ArrayList<>(spec.further());
        Collections.reverse(turned);
        for (int first = 0; first < turned.size(); first++) {
            for (List<DriveSpec.Roller> order : List.of(rotated(turned, first), rotated(spec.further(), first))) {
                DriveSpec other = spec.withFurther(order);
                BeltSearch search = BeltSearch.of(other);
                if (!order.equals(spec.further()) && search.best() != null && BeltSearch.isOpen(other, search.best())) {
                    StringBuilder names = new StringBuilder();
                    for (DriveSpec.Roller roller : order) {
                        names.append(names.length() == 0 ? "" : ", ")
                                .append(spec.further().indexOf(roller) + 1);
                    }
                    return "further lists the wheels as the belt meets them after the driven pulley, counter-clockwise:"
                            + " in the order " + names + " it works";
                }
            }
        }
        return "move the wheels apart";
    }

    private static List<DriveSpec.Roller> rotated(List<DriveSpec.Roller> all, int first) {
        List<DriveSpec.Roller> order = new ArrayList<>(all);
        Collections.rotate(order, first);
        return order;
    }

    private void refuse(DriveSpec spec, double touching) {
        double at = spec.fixed() ? spec.wanted() : Math.max(touching, spec.wanted());
        double length = DriveLayout.lengthAt(spec, at);
        double pitch = spec.choice().belt().pitch();
        if (Double.isNaN(length)) {
            String order = order(spec);
            problems.at(
                    wheelsPlace(),
                    "the wheels stand so that no belt touches them all in this order",
                    order.startsWith("move") ? "move a wheel that the belt passes by, or change its side" : order);
            return;
        }
        String need = Words.number(length / pitch, 2) + " teeth";
        if (spec.beltTeeth().isPresent()) {
            problems.at(
                    values.where(DriveFields.BELT_TEETH),
                    spec.beltTeeth().getAsInt() + " teeth cannot span the wheels at " + Words.mm(at) + ", which takes "
                            + need + (spec.fixed() ? " and what the idler takes up" : ""),
                    leastBelt(spec, at));
        } else {
            problems.at(
                    values.where(DriveFields.CENTRE_DISTANCE),
                    "no stocked belt " + spec.choice().belt().name() + " spans the wheels at " + Words.mm(at)
                            + ", which takes " + need
                            + (spec.fixed() ? ", and leaves no more slack than an idler can take up" : ""),
                    spec.fixed()
                            ? BeltSearch.nearestFit(spec)
                            : "another belt, another distance, or belt-teeth for one that is made to order");
        }
    }

    private String leastBelt(DriveSpec spec, double distance) {
        double length = DriveLayout.lengthAt(spec, distance);
        if (Double.isNaN(length)) {
            return "";
        }
        int teeth = (int) Math.ceil(length / spec.choice().belt().pitch());
        for (int more = 0; spec.fixed() && more < 20; more++) {
            if (BeltSearch.settled(spec, teeth + more) != null) {
                return "the nearest that works is " + (teeth + more);
            }
        }
        return "the nearest that works is " + teeth;
    }
}
