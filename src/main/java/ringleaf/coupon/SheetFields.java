// SPDX-License-Identifier: Apache-2.0
package ringleaf.coupon;

import java.util.List;
import ringleaf.spec.field.Field;
import ringleaf.spec.field.FieldSet;
import ringleaf.spec.field.Values;

/** The keys of a sheet that are read as fields. */
final class SheetFields {
    static final String FORM = "ringleaf-coupon";
    static final String MEASURED_KEY = "measured";
    static final String DRAWN_KEY = "drawn";
    static final String PIN_KEY = "pin";

    private static final String FINEST = "no caliper shows less";
    private static final String COARSEST = "that is no instrument for such sizes";

    static final Field<String> PIECE =
            Field.text("piece", 20).help("what is engraved on the piece").required();
    static final Field<String> PROCESS =
            Field.text("process", 100).help("process that made it").required();
    static final Field<String> STOCK =
            Field.text("stock", 100).help("stock it is made of").required();
    static final Field<String> MAKES = Field.choice("makes")
            .help("how it is made")
            .option("sheet", "cut from sheet")
            .option("layers", "built up in layers")
            .required();
    static final Field<Double> THICKNESS =
            Field.millimetres("thickness").help("thickness of the plate").required();
    static final Field<String> UNITS = Field.choice("units")
            .help("what bare readings are in")
            .option("mm", "millimetres")
            .option("cm", "centimetres")
            .option("in", "inches")
            .option("thou", "thousandths of an inch")
            .required();
    static final Field<Double> STEP = Field.length("step")
            .help("smallest step the instrument shows")
            .atLeast(0.0001, FINEST)
            .atMost(1, COARSEST)
            .required();
    static final Field<Double> ERROR = Field.length("error")
            .help("error its maker allows, either way")
            .atLeast(0, "an error is not negative")
            .atMost(1, COARSEST)
            .required();
    static final FieldSet INSTRUMENT = FieldSet.of(STEP, ERROR);
    static final Field<Values> OUTSIDE = Field.group("outside", INSTRUMENT)
            .help("what sizes are measured with from outside")
            .required();
    static final Field<Values> INSIDE = Field.group("inside", INSTRUMENT)
            .help("what sizes are measured with from inside")
            .required();

    /** The head of a sheet. */
    static final FieldSet HEAD = FieldSet.of(PIECE, PROCESS, STOCK, MAKES, THICKNESS, UNITS, OUTSIDE, INSIDE);

    static final Field<Double> DRAWN =
            Field.millimetres(DRAWN_KEY).help("size in the file").required();
    static final FieldSet SIZE = FieldSet.of(DRAWN);

    static final Field<List<Double>> MEASURED =
            Field.length(MEASURED_KEY).help("readings").list(50);
    static final FieldSet READINGS = FieldSet.of(MEASURED);

    private SheetFields() {}
}
