// SPDX-License-Identifier: Apache-2.0
package ringleaf.spec;

import ringleaf.spec.field.Field;
import ringleaf.spec.field.FieldSet;
import ringleaf.spec.field.Values;

/** What may be said of cutting: for all families at once, or for one. Everything is off unless it is asked for. */
public final class FabricationFields {
    private static final String NO_SHEET = "no sheet is larger";

    static final Field<Boolean> KERF = Field.flag("kerf")
            .help("whether outlines carry the kerf: outer contours grown, holes shrunk by half of it")
            .byDefault("false");
    static final Field<Double> KERF_WIDTH = Field.length("kerf-width")
            .help("width that is burnt or cut away, as measured on your own machine")
            .atLeast(0, "a cut takes nothing less than nothing away")
            .atMost(2, "a process this coarse makes no mechanism")
            .byDefaultWords("that of the stock or the process");

    static final Field<Integer> TAB_COUNT = Field.count("count")
            .help("tabs on each piece")
            .atLeast(1, "fewer hold nothing")
            .atMost(12, "more only cost filing")
            .byDefault("2");
    static final Field<Double> TAB_WIDTH = Field.length("width")
            .help("width of a tab")
            .atLeast(0.05, "a finer tab breaks in the machine")
            .atMost(20, "a wider tab is no tab")
            .byDefaultWords("the narrowest web of the process");
    static final FieldSet TAB_SET = FieldSet.of(TAB_COUNT, TAB_WIDTH);
    static final Field<Values> TABS = Field.group("tabs", TAB_SET)
            .help("bridges that hold each piece in its sheet, away from working edges; part files show their places");

    static final Field<Double> SPARES = Field.percent("spares")
            .help("spare copies of parts of which there are several, at least one")
            .atLeast(0, "there are no fewer than none")
            .atMost(100, "that is a second set; make it twice")
            .byDefault("0");

    static final Field<Double> SHEET_WIDTH = Field.length("width")
            .help("width of a sheet")
            .atLeast(5, "nothing is cut from less")
            .atMost(3000, NO_SHEET)
            .required()
            .example("300");
    static final Field<Double> SHEET_HEIGHT = Field.length("height")
            .help("height of a sheet")
            .atLeast(5, "nothing is cut from less")
            .atMost(3000, NO_SHEET)
            .required()
            .example("200");
    static final Field<Double> GAP = Field.length("gap")
            .help("least distance between drawn outlines")
            .atLeast(0, "parts on a sheet do not overlap")
            .atMost(100, "a gap this wide wastes the sheet")
            .byDefault("2");
    static final Field<Double> MARGIN = Field.length("margin")
            .help("least distance from the edge of the sheet")
            .atLeast(0, "parts lie on the sheet")
            .atMost(200, "a margin this wide wastes the sheet")
            .byDefaultWords("the gap");
    static final Field<String> TURN = Field.choice("turn")
            .help("how parts may be turned on the sheet")
            .option("free", "in steps of 15 degrees, and to their slimmest box")
            .option("quarter", "in steps of 90 degrees, for stock with a grain")
            .option("half", "by 180 degrees only, for stock that bends one way")
            .option("none", "not at all")
            .byDefault("free");
    static final Field<Integer> EFFORT = Field.count("effort")
            .help(
                    "orders of laying that are tried, while they take no more than seconds; more never gives a worse result")
            .atLeast(1, "one order is needed")
            .atMost(2000, "more find nothing new")
            .byDefault("12");
    static final FieldSet SHEET_SET = FieldSet.of(SHEET_WIDTH, SHEET_HEIGHT, GAP, MARGIN, TURN, EFFORT);
    static final Field<Values> SHEET = Field.group("sheet", SHEET_SET)
            .help("size of the sheets, or of the printer's bed, on which all parts of one stock are laid out");

    static final Field<Double> LEAD_IN = Field.length("lead-in")
            .help("length of the leads by which a beam runs into each contour from the scrap, off working edges; drawn"
                    + " on guide, and contours begin there")
            .atLeast(0, "nothing is shorter than nothing")
            .atMost(20, "a longer lead only wastes the sheet")
            .byDefaultWords("no leads");

    static final Field<String> LINE = Field.choice("line")
            .help("lines of the cut files")
            .option("usual", "dark for cut, blue for mark, grey for guide, another colour for each level; 0.1 mm")
            .option("by-process", "what is cut has a colour of its own for each process, 0.1 mm")
            .option("hairline", "colours as usual, 0.01 mm, for machines that cut only the finest lines")
            .byDefault("usual");
    static final Field<String> NAMES = Field.choice("names")
            .help("where names are engraved on parts of which there is one")
            .option("where-hidden", "on faces that are not seen in use")
            .option("everywhere", "also on a face that is seen, as the front of an aperture's retainer")
            .option("none", "nowhere; on sheets they stand on guide")
            .byDefault("where-hidden");
    static final Field<Boolean> SCALE_BAR = Field.flag("scale-bar")
            .help("whether part files carry a bar of 50 mm on guide; sheets always do")
            .byDefault("false");

    /** What a family may say for itself. */
    static final FieldSet FAMILY = FieldSet.of(KERF, KERF_WIDTH, TABS, LEAD_IN, SPARES, SHEET);

    /** What holds for every family that says nothing else. */
    public static final FieldSet GENERAL = FieldSet.of(KERF, TABS, LEAD_IN, SPARES, SHEET, LINE, NAMES, SCALE_BAR);

    /** Everything that may stand under the name of a family. */
    public static FieldSet ofFamily() {
        return RootFields.MAKING;
    }

    private FabricationFields() {}
}
