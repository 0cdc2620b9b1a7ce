// SPDX-License-Identifier: Apache-2.0
package ringleaf.spec;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import ringleaf.spec.field.Field;
import ringleaf.spec.field.Values;
import ringleaf.spec.text.Place;

/**
 * How the files of what is made by one process from one stock are made ready for the machine.
 *
 * @param kerf whether outlines carry the kerf
 * @param kerfWidth mm, when the user measured it
 * @param tabs bridges to the sheet, when asked for
 * @param leadIn length of the leads into contours, mm; 0 for none
 * @param spares share of spare copies, 0 for none
 * @param sheet to lay parts out on, when asked for
 * @param line {@code usual}, {@code by-process} or {@code hairline}
 * @param names which single parts have their names engraved: {@code where-hidden}, {@code everywhere} or {@code none}
 * @param scaleBar whether part files carry a scale bar
 * @param place of what the user said, for messages
 */
public record Cutting(
        boolean kerf,
        OptionalDouble kerfWidth,
        Optional<Tabs> tabs,
        double leadIn,
        double spares,
        Optional<SheetSize> sheet,
        String line,
        String names,
        boolean scaleBar,
        Place place) {

    /**
     * Bridges that hold a piece in its sheet.
     *
     * @param width mm, when given
     */
    public record Tabs(int count, OptionalDouble width) {}

    /**
     * The sheets of a stock.
     *
     * @param width mm
     * @param height mm
     * @param gap least distance between drawn outlines, mm
     * @param margin least distance from the edge, mm; the gap where it was not given
     * @param marginGiven whether the margin was given
     * @param turn {@code free}, {@code quarter}, {@code half} or {@code none}
     * @param effort orders that are tried
     * @param place of what the user said
     */
    public record SheetSize(
            double width,
            double height,
            double gap,
            double margin,
            boolean marginGiven,
            String turn,
            int effort,
            Place place) {
        /** The same with a margin that is wide enough for a frame, unless another was asked for. */
        public SheetSize withFrame(double frame) {
            double wide = marginGiven ? margin : Math.max(margin, frame);
            return new SheetSize(width, height, gap, wide, marginGiven, turn, effort, place);
        }

        /** Whether it asks for the same; where it was said does not matter. */
        public boolean agrees(SheetSize other) {
            return width == other.width
                    && height == other.height
                    && gap == other.gap
                    && margin == other.margin
                    && turn.equals(other.turn)
                    && effort == other.effort;
        }
    }

    /**
     * Whether a part of which there is one has its name engraved.
     *
     * @param onShow whether that face is seen in use
     */
    public boolean engravesName(boolean onShow) {
        return names.equals("everywhere") || names.equals("where-hidden") && !onShow;
    }

    /**
     * What is said of a process and stock over what is said for all.
     *
     * @param said under the families that are made so
     * @param family the part's own, for its spares
     */
    static Cutting of(Values general, List<Values> said, Optional<Values> family, Place place) {
        Optional<Values> tabs = pick(FabricationFields.TABS, general, said);
        Values sizing = sayer(FabricationFields.SHEET, said).orElse(general);
        Optional<Double> width =
                sayer(FabricationFields.KERF_WIDTH, said).flatMap(values -> values.given(FabricationFields.KERF_WIDTH));
        return new Cutting(
                pick(FabricationFields.KERF, general, said).orElse(false),
                optional(width),
                tabs.isEmpty() ? Optional.empty() : Optional.of(tabs(tabs.get())),
                pick(FabricationFields.LEAD_IN, general, said).orElse(0.0),
                pick(FabricationFields.SPARES, general, family.stream().toList())
                        .orElse(0.0),
                sizing.given(FabricationFields.SHEET).map(sheet -> sheet(sheet, sizing.where(FabricationFields.SHEET))),
                general.require(FabricationFields.LINE),
                general.require(FabricationFields.NAMES),
                general.require(FabricationFields.SCALE_BAR),
                place);
    }

    /** The first of the machine's fields of which two families that are made so say different things. */
    static Optional<Field<?>> contradicted(Values one, Values other) {
        for (Field<?> field : FabricationFields.FAMILY.fields()) {
            boolean both = one.isGiven(field) && other.isGiven(field);
            if (both && field != FabricationFields.SPARES && !same(field, one, other)) {
                return Optional.of(field);
            }
        }
        return Optional.empty();
    }

    private static boolean same(Field<?> field, Values one, Values other) {
        if (field == FabricationFields.TABS) {
            return tabs(one.given(FabricationFields.TABS).orElseThrow())
                    .equals(tabs(other.given(FabricationFields.TABS).orElseThrow()));
        }
        if (field == FabricationFields.SHEET) {
            return sheet(one.given(FabricationFields.SHEET).orElseThrow(), one.where())
                    .agrees(sheet(other.given(FabricationFields.SHEET).orElseThrow(), other.where()));
        }
        return one.given(field).equals(other.given(field));
    }

    private static Tabs tabs(Values values) {
        return new Tabs(
                values.require(FabricationFields.TAB_COUNT), optional(values.given(FabricationFields.TAB_WIDTH)));
    }

    private static SheetSize sheet(Values values, Place place) {
        double gap = values.require(FabricationFields.GAP);
        return new SheetSize(
                values.get(FabricationFields.SHEET_WIDTH).orElse(0.0),
                values.get(FabricationFields.SHEET_HEIGHT).orElse(0.0),
                gap,
                values.given(FabricationFields.MARGIN).orElse(gap),
                values.isGiven(FabricationFields.MARGIN),
                values.require(FabricationFields.TURN),
                values.require(FabricationFields.EFFORT),
                place);
    }

    private static Optional<Values> sayer(Field<?> field, List<Values> said) {
        return said.stream().filter(values -> values.isGiven(field)).findFirst();
    }

    private static <T> Optional<T> pick(Field<T> field, Values general, List<Values> said) {
        return sayer(field, said).orElse(general).given(field);
    }

    private static OptionalDouble optional(Optional<Double> value) {
        return value.isPresent() ? OptionalDouble.of(value.get()) : OptionalDouble.empty();
    }
}
