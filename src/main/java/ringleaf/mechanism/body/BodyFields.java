// SPDX-License-Identifier: Apache-2.0
package ringleaf.mechanism.body;

import ringleaf.mechanism.Request;
import ringleaf.spec.field.Field;
import ringleaf.spec.field.FieldSet;
import ringleaf.spec.field.Values;
import ringleaf.spec.shared.FitName;
import ringleaf.spec.shared.Screw;
import ringleaf.spec.shared.Servo;

/** The fields of a round part's body. */
public final class BodyFields {
    private BodyFields() {}

    static final Field<String> FORM = Field.choice("form")
            .help("shape of the bore")
            .option("round", "a plain hole")
            .option("d", "a hole with one flat")
            .option("keyway", "a hole with a slot for a key")
            .option("square", "a square hole")
            .option("servo-horn", "the screw pattern of a servo's horn")
            .option("bearing", "the seat of a ball bearing that runs on the axle")
            .option("none", "no hole")
            .byDefault("round");
    static final Field<Double> DIAMETER = Field.length("diameter")
            .help("diameter of the hole as cut; the side of a square one")
            .atLeast(0.3, "no axle is thinner")
            .atMost(500, "larger than any gear here")
            .byDefaultWords("that of the axle and what the fit adds");
    static final Field<Double> AXLE = Field.length("axle")
            .help("diameter of the axle, the side of a square one; across and key-width are then its own too")
            .atLeast(0.3, "no axle is thinner")
            .atMost(500, "larger than any gear here")
            .byDefaultWords("3 mm");
    static final Field<String> FIT = FitName.field(
                    "fit",
                    "how it sits on its axle, or its bearing in it",
                    FitName.RUNNING,
                    FitName.SLIDING,
                    FitName.PRESS,
                    FitName.GLUE)
            .byDefaultWords("running where it is round, press for a bearing; else as wide as the axle");
    static final Field<String> BEARING = Field.name("bearing", "bearings")
            .help("ball bearing in a bore of form bearing")
            .example("623")
            .byDefaultWords("none");
    static final Field<Double> ACROSS = Field.length("across")
            .help("from the flat of a D to the far side")
            .atLeast(0.2, "no axle is thinner")
            .atMost(500, "larger than any gear here")
            .byDefaultWords("five sixths of the diameter");
    static final Field<Double> KEY_WIDTH = Field.length("key-width")
            .help("width of the key")
            .atLeast(0.3, "no key is narrower")
            .atMost(100, "wider than any axle here")
            .byDefaultWords("a third of the diameter");
    static final Field<Double> KEY_DEPTH = Field.length("key-depth")
            .help("how far the keyway reaches beyond the hole")
            .atLeast(0.1, "a shallower slot holds no key")
            .atMost(100, "deeper than any gear here")
            .byDefaultWords("an eighth of the diameter");
    static final Field<String> SERVO = Field.name("servo", "servos")
            .help("servo whose horn is screwed on")
            .byDefaultWords("the drive's servo, or " + Servo.STAND_IN);
    static final Field<Integer> HORN_SCREWS = Field.count("horn-screws")
            .help("screws into the horn")
            .atLeast(2, "one screw lets it turn")
            .atMost(8, "horns have no more holes")
            .byDefault("4");
    static final FieldSet BORE_SET =
            FieldSet.of(FORM, DIAMETER, AXLE, FIT, ACROSS, KEY_WIDTH, KEY_DEPTH, BEARING, SERVO, HORN_SCREWS);
    public static final Field<Values> BORE = Field.group("bore", BORE_SET).help("hole for the axle");

    static final Field<String> SCREW =
            Field.name("screw", "screws").help("screws of the pattern").byDefault("M2");
    static final Field<Integer> COUNT = Field.count("count")
            .help("how many")
            .atLeast(1, "none is none")
            .atMost(24, "more than a hub holds")
            .byDefault("4");
    static final Field<Double> CIRCLE = Field.length("circle")
            .help("diameter of the circle they stand on")
            .atLeast(1, "they would meet in the middle")
            .atMost(2000, "larger than any gear here")
            .byDefaultWords("as near to the bore as the web allows");
    static final FieldSet SCREW_SET = FieldSet.of(SCREW, COUNT, CIRCLE);
    public static final Field<Values> HUB_SCREWS =
            Field.group("hub-screws", SCREW_SET).help("holes round the bore, for a hub or another part");

    /** The fits by name of a kind whose only fits beside its bores are screw holes. */
    public static final Field<Values> FITS = Field.group(Request.FITS, FieldSet.of(Screw.THREAD_CLEARANCE))
            .help("fits by name; those of bores stand beside their axles");

    static final Field<String> LIGHTENED = Field.choice("form")
            .help("how material is taken out between hub and rim")
            .option("holes", "round holes")
            .option("spokes", "windows between straight spokes")
            .option("none", "nothing is taken out")
            .byDefault("holes");
    static final Field<Integer> OPENINGS = Field.count("count")
            .help("number of holes or spokes")
            .atLeast(3, "fewer leave the rim without hold")
            .atMost(24, "more leave no material between them")
            .byDefaultWords("as many holes as fit, or five spokes");
    static final Field<Double> SPOKE_WIDTH = Field.length("spoke-width")
            .help("width of a spoke")
            .atLeast(0.3, "narrower spokes break")
            .atMost(200, "wider than any gear here")
            .byDefaultWords("the least web, or a sixth of the hub's radius");
    static final FieldSet LIGHTENING_SET = FieldSet.of(LIGHTENED, OPENINGS, SPOKE_WIDTH);
    public static final Field<Values> LIGHTENING =
            Field.group("lightening", LIGHTENING_SET).help("openings between hub and rim");
}
