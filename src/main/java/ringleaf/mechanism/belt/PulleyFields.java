// SPDX-License-Identifier: Apache-2.0
package ringleaf.mechanism.belt;

import ringleaf.mechanism.body.BodyFields;
import ringleaf.spec.field.Field;
import ringleaf.spec.field.FieldSet;
import ringleaf.spec.field.Named;
import ringleaf.spec.field.Values;
import ringleaf.spec.shared.Belt;

/** Fields of belts and pulleys, declared once for both kinds. */
final class PulleyFields {
    private PulleyFields() {}

    static final Field<Named> BELT = Field.named("belt", "belts", Belt.FIELDS)
            .help("belt that runs in the grooves")
            .example("T2.5", "MXL")
            .required();
    static final Field<Double> BELT_WIDTH = Field.length("belt-width")
            .help("width of the belt")
            .atLeast(1, "narrower belts tear")
            .atMost(200, "wider than any belt here")
            .byDefaultWords("the narrowest that is stocked, 6 mm where no stock is known");
    static final Field<String> GROOVE = Field.choice("groove")
            .help("how the groove's form is found")
            .option("generated", "what the belt's tooth sweeps as it enters and leaves, and room")
            .option("trapezoid", "straight flanks as tabulated; for straight-sided belts only")
            .byDefault("generated");
    static final Field<Double> BACKLASH = Field.length("backlash")
            .help("play of a seated tooth along the pitch line, in all")
            .atLeast(0, "teeth that overlap do not seat")
            .atMost(5, "more than a tooth is wide")
            .byDefaultWords(
                    "the process's slot clearance, at most 0.08 of the pitch; or what the process asks for, at most 0.13");
    static final Field<Double> CLEARANCE = Field.length("clearance")
            .help("room below the tip of a seated tooth")
            .atLeast(0, "a tooth that stands on its tip does not seat")
            .atMost(5, "more than a tooth is high")
            .byDefaultWords("half the backlash, or what the process asks for");

    static final Field<Integer> TEETH = Field.count("teeth")
            .help("teeth of the pulley")
            .atLeast(6, "no belt bends round fewer")
            .atMost(400, "larger than any pulley here")
            .example("20");
    static final Field<Integer> TEETH_GIVEN = TEETH.required();
    static final Field<Double> OUTSIDE = Field.length("outside-diameter")
            .help("diameter over the pulley's rim, without flanges")
            .atLeast(2, "no pulley is smaller")
            .atMost(2000, "no pulley here is larger")
            .byDefaultWords("as tabulated for the belt; else pitch diameter less twice the pitch line's height");
    static final Field<Double> FACE = Field.length("face-width")
            .help("width of the toothed rim between the flanges")
            .atLeast(1, "no belt is narrower")
            .atMost(250, "wider than any belt here")
            .byDefaultWords(
                    "belt width and 1 mm, or what both may be off by, in whole sheets where it is cut from sheet");
    static final Field<String> FLANGES = Field.choice("flanges")
            .help("plates that keep the belt on")
            .option("both", "one on either side")
            .option("one", "one on the lower side")
            .option("none", "no flanges")
            .byDefault("both");
    static final Field<Double> FLANGE_DIAMETER = Field.length("flange-diameter")
            .help("diameter of the flanges")
            .atLeast(2, "no flange is smaller")
            .atMost(2000, "no flange here is larger")
            .byDefaultWords("as tabulated; else 0.5 mm higher than the belt's back, or the belt's least flange height");
    static final Field<Double> FLANGE_THICKNESS = Field.length("flange-thickness")
            .help("thickness of a flange")
            .atLeast(0.2, "thinner flanges bend away")
            .atMost(10, "thicker than any flange needs")
            .byDefaultWords("1.2 mm printed; that of the sheet where it is cut");
    static final Field<Double> HUB_DIAMETER = Field.length("hub-diameter")
            .help("diameter of a hub above the rim, printed with it")
            .atLeast(2, "no hub is smaller")
            .atMost(500, "larger than any pulley here")
            .byDefaultWords("no hub, or with a hub-height what bore and two webs need");
    static final Field<Double> HUB_HEIGHT = Field.length("hub-height")
            .help("height of the hub above the rim and its flange")
            .atLeast(0, "no hub is no height")
            .atMost(100, "longer than any shaft here")
            .byDefault("0");

    static final Field<String> JOIN_BY = Field.choice("by")
            .help("what holds plates and flanges together")
            .option("screws", "screws through all of them")
            .option("glue", "no holes; the bore lines them up")
            .byDefaultWords("screws where they fit");
    static final Field<String> JOIN_SCREW =
            Field.name("screw", "screws").help("screws that join").byDefault("M2");
    static final Field<Integer> JOIN_COUNT = Field.count("count")
            .help("number of joining screws")
            .atLeast(2, "one lets the plates turn")
            .atMost(12, "more than a pulley holds")
            .byDefault("3");
    static final Field<Double> JOIN_CIRCLE = Field.length("circle")
            .help("diameter of the circle they stand on")
            .atLeast(2, "they would meet in the middle")
            .atMost(2000, "larger than any pulley here")
            .byDefaultWords("midway between bore and grooves");
    static final FieldSet JOIN_SET = FieldSet.of(JOIN_BY, JOIN_SCREW, JOIN_COUNT, JOIN_CIRCLE);
    static final Field<Values> JOINING = Field.group("joining", JOIN_SET).help("holes that join plates and flanges");

    private static final Field<?>[] BODY = {
        OUTSIDE,
        FLANGES,
        FLANGE_DIAMETER,
        FLANGE_THICKNESS,
        HUB_DIAMETER,
        HUB_HEIGHT,
        JOINING,
        BodyFields.BORE,
        BodyFields.HUB_SCREWS,
        BodyFields.LIGHTENING
    };

    static final FieldSet BELT_SET = FieldSet.of(BELT, BELT_WIDTH, GROOVE, BACKLASH, CLEARANCE, FACE);

    /** One pulley by itself. */
    static final FieldSet ALONE = BELT_SET.and(TEETH_GIVEN).and(BODY).and(BodyFields.FITS);

    /** One pulley of a drive. */
    static final FieldSet OF_DRIVE = FieldSet.of(TEETH).and(BODY);
}
