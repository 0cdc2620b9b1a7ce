// SPDX-License-Identifier: Apache-2.0
package ringleaf.mechanism.gear;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.function.DoublePredicate;
import ringleaf.curve.Roots;
import ringleaf.mechanism.Material;
import ringleaf.mechanism.Request;
import ringleaf.mechanism.body.AxleFit;
import ringleaf.mechanism.body.Body;
import ringleaf.mechanism.body.BodyFields;
import ringleaf.mechanism.body.BodyReader;
import ringleaf.mechanism.body.Bore;
import ringleaf.mechanism.body.HubScrews;
import ringleaf.mechanism.body.Lightening;
import ringleaf.part.Words;
import ringleaf.spec.field.Field;
import ringleaf.spec.field.Values;
import ringleaf.spec.shared.Servo;
import ringleaf.spec.text.Problems;
import ringleaf.tooth.TipFinish;

/** From the fields of one gear, once its teeth are known, to its body. */
final class WheelReader {
    /** Axles that a small gear of which nothing is said gets in turn, mm; common practice, no source. */
    private static final double[] AXLES = {3, 2, 1.5, 1, 0.5};
    /** Material outside a ring's root circle, in modules; common practice, no source. */
    private static final double RING_BACK = 2;
    /** Halvings by which the largest value that works is found, to a thousandth of any here. */
    private static final int HALVINGS = 13;

    private final Request request;
    private final Values values;
    private final Material material;
    private final Problems problems;

    /** {@code values} may be those of a group that was left out: then they are empty. */
    WheelReader(Request request, Values values, Material material) {
        this.request = request;
        this.values = values;
        this.material = material;
        this.problems = request.problems();
    }

    WheelSpec read(Rim rim, Optional<Servo> servo) {
        size(rim);
        return rim instanceof Rim.Inner ? ring(rim) : outer(rim, servo);
    }

    /** Teeth and module may each be within their limits and make a gear that is not. */
    private void size(Rim rim) {
        double diameter = 2 * Math.max(rim.tipRadius(), rim.rootRadius());
        double most = GearFields.RING_DIAMETER.numeric().most();
        if (diameter > most) {
            int nearest = (int) Math.floor((most - (diameter - rim.module() * rim.teeth())) / rim.module());
            problems.at(
                    values.where(GearFields.TEETH),
                    rim.teeth() + " teeth of module " + Words.number(rim.module(), 4) + " make a gear of "
                            + Words.mm(diameter) + ", and no stock is larger than " + Words.mm(most),
                    "the nearest that works is " + nearest + ", or a finer module");
        }
    }

    private WheelSpec outer(Rim rim, Optional<Servo> servo) {
        if (values.isGiven(GearFields.RING_DIAMETER)) {
            problems.at(
                    values.where(GearFields.RING_DIAMETER),
                    "has no meaning for teeth on the outside",
                    "leave it out, or set internal: true");
        }
        BodyReader reader = new BodyReader(request, values, material);
        double room = rim.rootRadius() - material.leastWeb();
        Body body = values.isGiven(BodyFields.BORE) ? reader.read(servo, room) : usual(reader, servo, room);
        bore(rim, body, room);
        Optional<WheelSpec.Sector> sector = sector(rim);
        if (sector.isPresent() && sector.get().segment() && values.isGiven(BodyFields.LIGHTENING)) {
            problems.at(
                    values.where(BodyFields.LIGHTENING),
                    "has no meaning for a segment, which has no body round its hub",
                    "leave it out, or sector.shape: disc");
        } else {
            double web = material.leastWeb();
            reader.lightens(body.lightening(), body.hub(web), Wheel.whole(rim, web));
        }
        return new WheelSpec(body, finish(rim), OptionalDouble.empty(), sector);
    }

    /** A servo's horn, or its own output in place of it; else the thickest usual axle that leaves the web. */
    private Body usual(BodyReader reader, Optional<Servo> servo, double room) {
        if (servo.isPresent()) {
            Bore horn = new Bore.Horn(servo.get(), 4);
            double output = servo.get().splineDiameter();
            return horn.reach() <= room && reader.fits(horn, room)
                    ? reader.around(horn, AxleFit.NONE, room)
                    : reader.around(new Bore.Round(output), AxleFit.gripping(output), room);
        }
        for (double axle : AXLES) {
            Bore bore = new Bore.Round(axle + material.runningClearance());
            if (bore.reach() <= room && reader.fits(bore, room)) {
                return reader.around(bore, AxleFit.running(axle), room);
            }
        }
        return reader.around(new Bore.Solid(), AxleFit.NONE, room);
    }

    private void bore(Rim rim, Body body, double room) {
        String web = "the root circle of " + Words.mm(2 * rim.rootRadius()) + " with the least web of "
                + Words.mm(material.leastWeb()) + " leaves " + Words.mm(Math.max(0, 2 * room));
        if (body.bore().reach() > room + 1e-9) {
            problems.at(
                    values.where(BodyFields.BORE),
                    body.bore().words() + " of " + Words.mm(2 * body.bore().reach()) + " across eats the root: " + web,
                    largest(body.bore(), room));
        }
    }

    private static String largest(Bore bore, double room) {
        if (!(room > 0.15)) {
            return "more teeth, a larger module, or form: none";
        }
        if (bore instanceof Bore.Horn) {
            return "more teeth, a larger module, or form: round";
        }
        if (bore instanceof Bore.Seat) {
            return "more teeth, a larger module, or a smaller bearing";
        }
        double scale = room / bore.reach();
        double size = bore instanceof Bore.Square square ? square.side() : diameter(bore);
        return "the nearest that works is diameter: " + Words.number(Math.floor(100 * size * scale) / 100, 2) + "mm";
    }

    private static double diameter(Bore bore) {
        if (bore instanceof Bore.Flatted flatted) {
            return flatted.diameter();
        }
        return bore instanceof Bore.Keyed keyed ? keyed.diameter() : 2 * bore.reach();
    }

    /** Radius of a ring of which nothing is said, or that is given, mm. */
    static double ringRadius(double root, double module, PairAsk ask) {
        return ask.ringDiameter().isPresent()
                ? ask.ringDiameter().getAsDouble() / 2
                : usualRing(root + Math.max(RING_BACK * module, ask.web()));
    }

    private static double usualRing(double least) {
        return Math.ceil(10 * least - 1e-6) / 10;
    }

    private WheelSpec ring(Rim rim) {
        for (Field<?> field :
                List.of(BodyFields.BORE, BodyFields.LIGHTENING, GearFields.TIP_RELIEF, GearFields.TIP_ROUNDING)) {
            if (values.isGiven(field)) {
                problems.at(values.where(field), "has no meaning for a ring with teeth inside", "leave it out");
            }
        }
        BodyReader reader = new BodyReader(request, values, material);
        double web = material.leastWeb();
        Optional<HubScrews> screws = reader.screwsOutside(rim.rootRadius());
        double back = Math.max(RING_BACK * rim.module(), web);
        double least = rim.rootRadius() + web;
        double usual = rim.rootRadius() + back;
        if (screws.isPresent()) {
            least = Math.max(least, screws.get().reach() + web);
            usual = Math.max(usual, least);
        }
        double radius = values.given(GearFields.RING_DIAMETER).map(d -> d / 2).orElse(usualRing(usual));
        if (radius < least - 1e-9) {
            problems.at(
                    values.where(GearFields.RING_DIAMETER),
                    "a ring of " + Words.mm(2 * radius) + " leaves less than the web of " + Words.mm(web)
                            + " outside its teeth" + (screws.isPresent() ? " and screws" : ""),
                    "the nearest that works is " + Words.number(Math.ceil(20 * least) / 10, 1) + "mm");
        }
        Body body = new Body(new Bore.Solid(), AxleFit.NONE, screws, Lightening.NONE);
        return new WheelSpec(body, TipFinish.NONE, OptionalDouble.of(radius), sector(rim));
    }

    private TipFinish finish(Rim rim) {
        double depth = values.get(GearFields.TIP_RELIEF_DEPTH).orElse(rim.module() / 2);
        double relief = values.require(GearFields.TIP_RELIEF);
        double rounding = values.require(GearFields.TIP_ROUNDING);
        String trouble = trouble(rim, relief, depth, rounding);
        if (trouble.isEmpty()) {
            return new TipFinish(relief, depth, rounding);
        }
        boolean relieved = relief > 0 && trouble(rim, 0, depth, rounding).isEmpty();
        boolean deep = relieved && values.isGiven(GearFields.TIP_RELIEF_DEPTH) && relief < depth;
        Field<Double> blamed =
                deep ? GearFields.TIP_RELIEF_DEPTH : relieved ? GearFields.TIP_RELIEF : GearFields.TIP_ROUNDING;
        double largest = deep
                ? largest(depth, x -> trouble(rim, relief, x, rounding).isEmpty())
                : relieved
                        ? largest(relief, x -> trouble(rim, x, depth, rounding).isEmpty())
                        : largest(rounding, x -> trouble(rim, relief, depth, x).isEmpty());
        double typed = Math.floor(1000 * largest) / 1000;
        problems.at(
                values.where(blamed),
                trouble,
                typed > 0 ? "the nearest that works is " + Words.number(typed, 3) + "mm" : "leave it out");
        return TipFinish.NONE;
    }

    private static String trouble(Rim rim, double relief, double depth, double rounding) {
        if (relief > 0 && relief >= depth) {
            return Words.mm(relief) + " is not below its depth of " + Words.mm(depth);
        }
        try {
            rim.look(new TipFinish(relief, depth, rounding));
            return "";
        } catch (IllegalArgumentException e) {
            return Unmeshable.words(e);
        }
    }

    /** The largest value below one that does not, with which the tips can be cut; 0 where none is. */
    private static double largest(double from, DoublePredicate works) {
        return Roots.last(works, 0, from, HALVINGS);
    }

    private Optional<WheelSpec.Sector> sector(Rim rim) {
        Optional<Values> given = values.given(GearFields.SECTOR);
        if (given.isEmpty()) {
            return Optional.empty();
        }
        Values v = given.get();
        Optional<Integer> teeth = v.get(GearFields.SECTOR_TEETH);
        int most = rim.teeth() - 2;
        if (teeth.isPresent() && teeth.get() > most) {
            problems.at(
                    v.where(GearFields.SECTOR_TEETH),
                    teeth.get() + " teeth of " + rim.teeth() + " are no sector",
                    "the nearest that works is " + most);
        }
        boolean segment = v.require(GearFields.SECTOR_SHAPE).equals("segment") || rim instanceof Rim.Inner;
        OptionalInt count = teeth.isPresent() ? OptionalInt.of(Math.min(most, teeth.get())) : OptionalInt.empty();
        return Optional.of(new WheelSpec.Sector(count, segment));
    }
}
