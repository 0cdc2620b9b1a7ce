// SPDX-License-Identifier: Apache-2.0
package ringleaf.spec.shared;

import java.util.Optional;
import ringleaf.spec.field.Field;
import ringleaf.spec.field.Values;

/**
 * The tabulated trapezoid of a pulley's groove; mm, rad.
 *
 * @param width of the groove
 * @param atRim whether the width is measured at the rim; else at the bottom
 * @param depth from the rim to the bottom
 * @param flank angle of one flank to the groove's axis
 * @param bottomRadius of the rounding at the bottom
 * @param rimRadius of the rounding at the rim
 * @param widthFew the width for pulleys of few teeth
 * @param depthFew the depth for pulleys of few teeth
 */
public record BeltGroove(
        double width,
        boolean atRim,
        double depth,
        double flank,
        double bottomRadius,
        double rimRadius,
        double widthFew,
        double depthFew) {
    /** Pulleys up to this many teeth count as having few. */
    public static final int FEW = 20;

    private static final Field<Double> WIDTH =
            Belt.size("groove-width", "width of the trapezoid groove").byDefaultWords("no trapezoid groove is known");
    private static final Field<String> WIDTH_AT = Field.choice("groove-width-at")
            .help("where the groove's width is measured")
            .option("rim", "at the outside")
            .option("bottom", "at the bottom")
            .byDefault("rim");
    private static final Field<Double> DEPTH =
            Belt.size("groove-depth", "depth of the trapezoid groove").byDefaultWords("no trapezoid groove is known");
    private static final Field<Double> ANGLE = Field.angle("groove-angle")
            .help("angle between both flanks of the groove")
            .atLeast(0, "a groove that narrows to its rim lets no tooth in")
            .atMost(90, "flatter flanks let the belt climb out")
            .byDefault("50");
    private static final Field<Double> BOTTOM =
            Belt.zero("groove-bottom-radius", "rounding at the groove's bottom").byDefault("0");
    private static final Field<Double> RIM =
            Belt.zero("groove-rim-radius", "rounding at the groove's rim").byDefault("0");
    private static final Field<Double> WIDTH_FEW =
            Belt.size("groove-width-few", "width up to 20 teeth").byDefaultWords("as for more teeth");
    private static final Field<Double> DEPTH_FEW =
            Belt.size("groove-depth-few", "depth up to 20 teeth").byDefaultWords("as for more teeth");
    static final Field<?>[] FIELDS = {WIDTH, WIDTH_AT, DEPTH, ANGLE, BOTTOM, RIM, WIDTH_FEW, DEPTH_FEW};

    static Optional<BeltGroove> of(Values v) {
        Optional<Double> width = v.get(WIDTH);
        Optional<Double> depth = v.get(DEPTH);
        if (width.isEmpty() || depth.isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(new BeltGroove(
                width.get(),
                v.require(WIDTH_AT).equals("rim"),
                depth.get(),
                v.require(ANGLE) / 2,
                v.require(BOTTOM),
                v.require(RIM),
                v.get(WIDTH_FEW).orElse(width.get()),
                v.get(DEPTH_FEW).orElse(depth.get())));
    }
}
