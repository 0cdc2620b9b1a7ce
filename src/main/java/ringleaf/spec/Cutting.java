// SPDX-License-Identifier: Apache-2.0
package ringleaf.spec;

import java.util.Optional;
import java.util.OptionalDouble;
import ringleaf.spec.field.Field;
import ringleaf.spec.field.Values;
import ringleaf.spec.text.Place;

/**
 * How the files of a family are made ready for the machine.
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
     * @param own whether a family says it for itself
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
            boolean own,
            Place place) {
        /** The same with a margin that is wide enough for a frame, unless another was asked for. */
        public SheetSize withFrame(double frame) {
            double wide = marginGiven ? margin : Math.max(margin, frame);
            return new SheetSize(width, height, gap, wide, marginGiven, turn, effort, own, place);
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

    /** What a family says over what is said for all; {@code family} may be null. */
    static Cutting of(Values general, Values family, Place place) {
        Optional<Values> tabs = pick(FabricationFields.TABS, general, family);
        Optional<Values> sheet = pick(FabricationFields.SHEET, general, family);
        Optional<Double> width = family == null ? Optional.empty() : family.given(FabricationFields.KERF_WIDTH);
        boolean own = family != null && family.isGiven(FabricationFields.SHEET);
        Place sheetPlace = own ? family.where(FabricationFields.SHEET) : general.where(FabricationFields.SHEET);
        return new Cutting(
                pick(FabricationFields.KERF, general, family).orElse(false),
                optional(width),
                tabs.isEmpty() ? Optional.empty() : Optional.of(tabs(tabs.get())),
                pick(FabricationFields.LEAD_IN, general, family).orElse(0.0),
                pick(FabricationFields.SPARES, general, family).orElse(0.0),
                sheet.isEmpty() ? Optional.empty() : Optional.of(sheet(sheet.get(), own, sheetPlace)),
                general.require(FabricationFields.LINE),
                general.require(FabricationFields.NAMES),
                general.require(FabricationFields.SCALE_BAR),
                place);
    }

    private static Tabs tabs(Values values) {
        return new Tabs(
                values.require(FabricationFields.TAB_COUNT), optional(values.given(FabricationFields.TAB_WIDTH)));
    }

    private static SheetSize sheet(Values values, boolean own, Place place) {
        double gap = values.require(FabricationFields.GAP);
        return new SheetSize(
                values.get(FabricationFields.SHEET_WIDTH).orElse(0.0),
                values.get(FabricationFields.SHEET_HEIGHT).orElse(0.0),
                gap,
                values.given(FabricationFields.MARGIN).orElse(gap),
                values.isGiven(FabricationFields.MARGIN),
                values.require(FabricationFields.TURN),
                values.require(FabricationFields.EFFORT),
                own,
                place);
    }

    private static <T> Optional<T> pick(Field<T> field, Values general, Values family) {
        Optional<T> own = family == null ? Optional.empty() : family.given(field);
        return own.isPresent() ? own : general.given(field);
    }

    private static OptionalDouble optional(Optional<Double> value) {
        return value.isPresent() ? OptionalDouble.of(value.get()) : OptionalDouble.empty();
    }
}
