// SPDX-License-Identifier: Apache-2.0
package ringleaf.spec.shared;

import java.util.ArrayList;
import java.util.List;
import ringleaf.spec.field.Field;
import ringleaf.spec.field.FieldSet;
import ringleaf.spec.field.Values;
import ringleaf.spec.text.Decimal;
import ringleaf.spec.text.Problems;

/**
 * A board or a round panel that is screwed down by its holes; mm, its middle in the origin, x along its width.
 *
 * @param name in the catalogue, or {@code own} when written out in a spec
 * @param width along x; the diameter of a round one
 * @param height along y; the diameter of a round one
 * @param round whether it is a disc
 * @param thickness of the board itself
 * @param above how far parts stand out of the side that looks away from the plate
 * @param below how far parts stand out towards the plate
 * @param holesAlong spacing of the holes along x, or the circle they stand on when it is round
 * @param holesAcross spacing of the holes along y; 0 for one row, or when it is round
 * @param holes how many there are on the circle of a round one
 * @param holesAt how far the middle of the holes lies beside the board's middle along x
 * @param hole diameter of the holes
 * @param view diameter, or side, of what is seen through the plate; 0 for none
 * @param entry values with their sources
 */
public record Board(
        String name,
        double width,
        double height,
        boolean round,
        double thickness,
        double above,
        double below,
        double holesAlong,
        double holesAcross,
        int holes,
        double holesAt,
        double hole,
        double view,
        Entry entry) {
    static final Field<Double> WIDTH =
            size(2, "width", "along its holes; the diameter of a round one").required();
    static final Field<Double> HEIGHT = size(2, "height", "across").byDefaultWords("the width");
    static final Field<Boolean> ROUND =
            Field.flag("round").help("whether it is a disc").byDefault("false");
    static final Field<Double> THICKNESS =
            size(0.2, "thickness", "of the board itself").byDefault("1.6mm");
    static final Field<Double> ABOVE = size(0, "above", "how far parts stand out of it, away from the plate")
            .byDefault("5mm");
    static final Field<Double> BELOW =
            size(0, "below", "how far parts stand out of it towards the plate").byDefault("2mm");
    static final Field<Double> HOLES_ALONG = size(
                    1, "holes-along", "spacing of the holes along its width, or the circle they stand on")
            .required();
    static final Field<Double> HOLES_ACROSS = size(0, "holes-across", "spacing of the holes across, 0 for one row")
            .byDefault("0");
    static final Field<Integer> HOLES = Field.count("holes")
            .help("holes on the circle of a round one")
            .atLeast(2, "one screw lets it turn")
            .atMost(12, "no panel has more")
            .byDefault("3");
    static final Field<Double> HOLES_AT = Field.length("holes-at")
            .help("how far the middle of its holes lies beside its own middle, along its width")
            .atLeast(-200, "no board is longer")
            .atMost(200, "no board is longer")
            .byDefault("0");
    static final Field<Double> HOLE = size(0.5, "hole-diameter", "of its holes").required();
    static final Field<Double> VIEW = size(0, "view", "diameter of what is seen through the plate, 0 for nothing")
            .byDefault("0");

    /** The fields of an entry. */
    public static final FieldSet FIELDS = FieldSet.of(
            WIDTH, HEIGHT, ROUND, THICKNESS, ABOVE, BELOW, HOLES_ALONG, HOLES_ACROSS, HOLES, HOLES_AT, HOLE, VIEW);

    private static Field<Double> size(double least, String name, String help) {
        return Field.length(name)
                .help(help)
                .atLeast(least, least == 0 ? "a size is not negative" : "no board has less")
                .atMost(400, "no model holds a larger one");
    }

    /** What to buy, for people. */
    public String words() {
        return round
                ? "round panel " + name + ", " + Decimal.of(width) + " mm"
                : "board " + name + ", " + Decimal.of(width) + " x " + Decimal.of(height) + " mm";
    }

    /** Places of its holes, x and y. */
    public List<double[]> places() {
        List<double[]> all = new ArrayList<>();
        if (round) {
            for (int i = 0; i < holes; i++) {
                double at = 2 * Math.PI * i / holes;
                all.add(new double[] {holesAlong / 2 * Math.cos(at), holesAlong / 2 * Math.sin(at)});
            }
            return all;
        }
        for (int side = -1; side <= 1; side += 2) {
            double x = holesAt + side * holesAlong / 2;
            for (double y : holesAcross > 0 ? new double[] {-holesAcross / 2, holesAcross / 2} : new double[] {0}) {
                all.add(new double[] {x, y});
            }
        }
        return all;
    }

    /** The board; null, after it was reported, when its holes lie outside it. */
    static Board of(Entry entry, Problems problems) {
        Values values = entry.values();
        double width = values.require(WIDTH);
        Board board = new Board(
                entry.name(),
                width,
                values.get(HEIGHT).orElse(width),
                values.require(ROUND),
                values.require(THICKNESS),
                values.require(ABOVE),
                values.require(BELOW),
                values.require(HOLES_ALONG),
                values.require(HOLES_ACROSS),
                values.require(HOLES),
                values.require(HOLES_AT),
                values.require(HOLE),
                values.require(VIEW),
                entry);
        double along = board.width / 2 - Math.abs(board.holesAt) - board.hole / 2;
        double across = board.height / 2 - board.hole / 2;
        if (board.holesAlong / 2 > along || board.holesAcross / 2 > across) {
            problems.at(
                    values.where(HOLES_ALONG),
                    "holes of " + Decimal.of(board.hole) + " mm so far apart lie outside a board of "
                            + Decimal.of(board.width) + " x " + Decimal.of(board.height) + " mm",
                    "see the board's drawing: spacing is measured from middle to middle");
            return null;
        }
        return board;
    }
}
