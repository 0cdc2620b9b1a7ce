// SPDX-License-Identifier: Apache-2.0
package ringleaf.mechanism.body;

import java.util.Optional;
import ringleaf.mechanism.Material;
import ringleaf.mechanism.Request;
import ringleaf.part.Words;
import ringleaf.spec.field.Values;
import ringleaf.spec.shared.Screw;
import ringleaf.spec.shared.Servo;
import ringleaf.spec.text.Problems;

/** From the fields of a body to the body; what contradicts itself is reported. */
public final class BodyReader {
    /** Lengths that differ by less count as the same, mm. */
    private static final double HAIR = 1e-9;

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
        return read(driving, Double.POSITIVE_INFINITY);
    }

    /** The same where hub screws have to stay within a radius, mm. */
    public Body read(Optional<Servo> driving, double room) {
        BoreReader.Read bore = new BoreReader(request, values, material).read(driving);
        return around(bore.bore(), bore.axle(), room);
    }

    /** The body with a bore that whoever asks has chosen; hub screws stay within a radius, mm. */
    public Body around(Bore bore, AxleFit axle, double room) {
        return new Body(bore, axle, screws(bore, room), lightening());
    }

    /** Whether hub screws fit between a bore and a radius, mm; so they do where there are none. */
    public boolean fits(Bore bore, double room) {
        Optional<Values> given = values.given(BodyFields.HUB_SCREWS);
        Optional<Screw> screw = given.flatMap(v -> request.catalogues().screws().get(v.require(BodyFields.SCREW)));
        if (screw.isEmpty()) {
            return true;
        }
        double hole = request.sized(screw.get()).hole();
        double least = leastCircle(bore, hole, given.get().require(BodyFields.COUNT));
        double circle = given.get().get(BodyFields.CIRCLE).orElse(least);
        return circle >= least - HAIR && circle <= 2 * room - hole + HAIR;
    }

    /** The least circle on which holes stand clear of the bore and of each other, mm. */
    private double leastCircle(Bore bore, double hole, int count) {
        double web = material.leastWeb();
        double forBore = 2 * bore.reach() + hole + 2 * web;
        double forNeighbours = count > 1 ? (hole + web) / Math.sin(Math.PI / count) : 0;
        return Math.max(forBore, forNeighbours);
    }

    private Optional<HubScrews> screws(Bore bore, double room) {
        Optional<Values> given = values.given(BodyFields.HUB_SCREWS);
        if (given.isEmpty()) {
            return Optional.empty();
        }
        Values screws = given.get();
        Optional<Screw> screw = request.screw(screws.require(BodyFields.SCREW), screws.where(BodyFields.SCREW));
        if (screw.isEmpty()) {
            return Optional.empty();
        }
        int count = screws.require(BodyFields.COUNT);
        double hole = screw.get().hole();
        double least = leastCircle(bore, hole, count);
        double most = 2 * room - hole;
        double rounded = Math.ceil(10 * least - HAIR) / 10;
        double circle = screws.get(BodyFields.CIRCLE).orElse(rounded <= most ? rounded : least);
        if (least > most + HAIR) {
            problems.at(
                    screws.where(BodyFields.SCREW),
                    count + " screws " + screw.get().name()
                            + " stand clear of the bore and of each other on a circle of " + Words.mm(least)
                            + ", and there is room for one of " + Words.mm(Math.max(0, most)),
                    smaller(screw.get(), bore, count, room));
        } else if (circle < least - HAIR) {
            problems.at(
                    screws.where(BodyFields.CIRCLE),
                    "screws on a circle of " + Words.mm(circle) + " come nearer to the bore or to each other than the"
                            + " least web of " + Words.mm(material.leastWeb()),
                    "the nearest that works is " + Words.number(Math.min(rounded, most), 3) + "mm");
        } else if (circle > most + HAIR) {
            problems.at(
                    screws.where(BodyFields.CIRCLE),
                    "screws on a circle of " + Words.mm(circle) + " come nearer to the rim than the least web of "
                            + Words.mm(material.leastWeb()),
                    "the nearest that works is " + Words.number(Math.floor(1000 * most + HAIR) / 1000, 3) + "mm");
        }
        return Optional.of(new HubScrews(screw.get(), count, circle));
    }

    /** The largest screw of the catalogue that would fit, in words. */
    private String smaller(Screw asked, Bore bore, int count, double room) {
        String found = "";
        double widest = 0;
        for (String name : request.catalogues().screws().names()) {
            Optional<Screw> other = request.catalogues().screws().get(name);
            double hole = other.isPresent() ? request.sized(other.get()).hole() : Double.POSITIVE_INFINITY;
            if (hole < asked.hole() && hole > widest && leastCircle(bore, hole, count) <= 2 * room - hole) {
                widest = hole;
                found = name;
            }
        }
        return found.isEmpty()
                ? "a smaller bore, fewer screws or more teeth"
                : "the nearest that works is screw: " + found;
    }

    /** The screws in the rim of a ring, outside a radius, mm; their circle is as near to it as the web allows. */
    public Optional<HubScrews> screwsOutside(double radius) {
        Optional<Values> given = values.given(BodyFields.HUB_SCREWS);
        if (given.isEmpty()) {
            return Optional.empty();
        }
        Values screws = given.get();
        Optional<Screw> screw = request.screw(screws.require(BodyFields.SCREW), screws.where(BodyFields.SCREW));
        if (screw.isEmpty()) {
            return Optional.empty();
        }
        int count = screws.require(BodyFields.COUNT);
        double beside = 2 * (radius + material.leastWeb()) + screw.get().hole();
        double least =
                Math.max(beside, leastCircle(new Bore.Solid(), screw.get().hole(), count));
        double circle = screws.get(BodyFields.CIRCLE).orElse(Math.ceil(10 * least - HAIR) / 10);
        if (circle < least - 1e-9) {
            problems.at(
                    screws.where(BodyFields.CIRCLE),
                    "screws on a circle of " + Words.mm(circle) + " come nearer to the teeth or to each other than the"
                            + " least web of "
                            + Words.mm(material.leastWeb()),
                    "the nearest that works is " + Words.number(Math.ceil(10 * least) / 10, 1) + "mm");
        }
        return Optional.of(new HubScrews(screw.get(), count, circle));
    }

    /**
     * Reports what is to be taken out between hub and rim and does not fit there.
     *
     * @param hub radius up to which the hub stays whole, mm
     * @param rim radius from which the rim stays whole, mm
     */
    public void lightens(Lightening lightening, double hub, double rim) {
        Optional<Values> given = values.given(BodyFields.LIGHTENING);
        if (given.isEmpty()) {
            return;
        }
        lightening
                .misfit(hub, rim, material.leastWeb())
                .ifPresent(misfit -> problems.at(
                        given.get()
                                .where(
                                        switch (misfit.blamed()) {
                                            case FORM -> BodyFields.LIGHTENED;
                                            case COUNT -> BodyFields.OPENINGS;
                                            case SPOKE_WIDTH -> BodyFields.SPOKE_WIDTH;
                                        }),
                        misfit.reason(),
                        misfit.hint()));
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
