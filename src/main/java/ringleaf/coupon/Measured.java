// SPDX-License-Identifier: Apache-2.0
package ringleaf.coupon;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import ringleaf.spec.shared.MakingProcess;
import ringleaf.spec.text.Problems;

/**
 * What a filled sheet says of a machine.
 *
 * @param coupon that was measured
 * @param readings how many
 * @param values of the process, in the order of the catalogue
 * @param told what has no place in the catalogue: scale, allowances, what measuring adds
 */
public record Measured(Coupon coupon, int readings, List<Value> values, List<Value> told) {

    /**
     * A value that was found.
     *
     * @param key of the catalogue, or words
     * @param estimate mm, or a plain number where the key says so
     * @param note how it was found, or empty
     */
    public record Value(String key, Estimate estimate, String note) {}

    public static final String KERF = "kerf";

    public Measured {
        values = List.copyOf(values);
        told = List.copyOf(told);
    }

    /**
     * The values of a sheet; empty when its readings contradict each other, which is then among the problems.
     *
     * @param process as the catalogue has it, for what depends on the thickness
     */
    public static Optional<Measured> of(Filled filled, MakingProcess process, Problems problems) {
        int before = problems.count();
        for (String lacking : SizeModel.lacking(filled)) {
            problems.of(filled.source(), lacking, "make the piece again where too much of it was lost");
        }
        Slips slips = new Slips(filled, problems);
        if (!slips.near() || problems.count() > before) {
            return Optional.empty();
        }
        slips.scatter();
        if (problems.count() > before) {
            return Optional.empty();
        }
        SizeModel free = SizeModel.free(filled);
        slips.outlier(free);
        new Contradictions(filled, free, problems).find();
        return problems.count() > before ? Optional.empty() : Optional.of(new Finder(filled, free, process).find());
    }

    /** Works the values out of readings that go together. */
    private static final class Finder {
        private final Filled filled;
        private final Coupon coupon;
        private final SizeModel free;
        private final SizeModel model;
        private final MakingProcess process;
        private final Estimate kerf;
        private final List<Value> values = new ArrayList<>();
        private final List<Value> told = new ArrayList<>();

        Finder(Filled filled, SizeModel free, MakingProcess process) {
            this.filled = filled;
            this.coupon = filled.coupon();
            this.free = free;
            this.model = coupon.layers() ? free : SizeModel.common(filled);
            this.process = process;
            this.kerf = coupon.layers() ? new Estimate(0, 0, 0, 0) : notNegative(model.kerf());
        }

        Measured find() {
            if (!coupon.layers()) {
                values.add(new Value(KERF, kerf, "pins, bars and slots together"));
            }
            ladder(Feature.Kind.WEB, "least-web", "web-per-thickness", process.webPerThickness(), -1);
            ladder(Feature.Kind.DOT, "least-hole", "hole-per-thickness", process.holePerThickness(), 1);
            tried(SheetReader.TURNS, "running-clearance", 1, "smallest hole in which the pin turned");
            tried(SheetReader.HELD, "press-allowance", -1, "largest hole that held the pin");
            tried(SheetReader.SLIDES, "slot-clearance", 1, "narrowest slot in which the pin slid");
            Estimate repeatability = model.repeatability();
            values.add(new Value(
                    "repeatability",
                    repeatability,
                    repeatability.low() == 0
                            ? "hidden by what measuring adds, so it is at most about this"
                            : "95 % of sizes lie within it; what measuring adds is taken off"));
            tell();
            return new Measured(coupon, filled.count(), values, told);
        }

        private void tell() {
            if (coupon.layers()) {
                told.add(new Value("pins come out wider by", free.pin(), "below 0: narrower"));
                told.add(new Value("holes come out wider by", free.hole(), "below 0: narrower"));
                told.add(new Value("slots come out wider by", free.slot(), "below 0: narrower"));
            } else {
                told.add(new Value("holes come out wider by", model.hole(), "beyond the kerf"));
            }
            told.add(new Value("scale along x is off by", percent(model.scaleX()), "%"));
            told.add(new Value("scale along y is off by", percent(model.scaleY()), "%"));
            double measuring = model.measuring();
            told.add(new Value(
                    "readings of one size scatter by", new Estimate(measuring, 0, measuring, measuring), "deviation"));
        }

        private static Estimate percent(Estimate e) {
            return new Estimate(100 * e.value(), 100 * e.u(), 100 * e.low(), 100 * e.high());
        }

        /** A kerf below 0 is a slip of measuring: one that is surely below 0 was refused. */
        private static Estimate notNegative(Estimate e) {
            return new Estimate(Math.max(0, e.value()), e.u(), Math.max(0, e.low()), Math.max(0, e.high()));
        }

        /**
         * The narrowest that came out, as made: the drawn size and the kerf taken off webs or added to holes.
         *
         * @param sense of the kerf
         */
        private void ladder(Feature.Kind kind, String key, String perKey, double per, int sense) {
            Feature failed = null;
            Feature good = null;
            for (Feature rung : coupon.of(kind)) {
                boolean yes = filled.answer(rung.name()).word().equals("yes");
                if (!yes) {
                    failed = rung;
                } else if (good == null) {
                    good = rung;
                }
            }
            double from = failed == null ? good.drawn() : failed.drawn();
            Estimate drawn = Estimate.between(good.drawn(), from, good.drawn());
            Estimate made = notNegative(drawn.plus(sense * kerf.value(), kerf.u()));
            String note = failed == null
                    ? good.name() + ", the smallest there was"
                    : good.name() + " came out, " + failed.name() + " did not";
            values.add(new Value(key, made, note));
            double share = made.value() / coupon.thickness();
            if (per > share) {
                double by = 1 / coupon.thickness();
                values.add(new Value(
                        perKey,
                        new Estimate(share, made.u() * by, made.low() * by, made.high() * by),
                        "times the thickness"));
            }
        }

        /** What a fit adds to the pin, or takes away: the opening that was found right, kerf added, less the pin. */
        private void tried(String question, String key, int sense, String note) {
            Feature found = filled.chosen(question);
            Filled.Reading pin = filled.reading(SheetFields.PIN_KEY);
            if (found == null || pin == null) {
                return;
            }
            List<Feature> row = coupon.of(found.kind());
            double step = row.get(1).drawn() - row.get(0).drawn();
            double error = filled.outside().error() / Math.sqrt(3);
            double scatter =
                    pin.scatter() / (pin.values().size() - 1) / pin.values().size();
            double other = Math.sqrt(error * error + scatter + kerf.u() * kerf.u());
            double drawn = found.drawn() - pin.mean() + kerf.value();
            Estimate opening = Estimate.between(drawn, drawn - (sense > 0 ? step : 0), drawn + (sense > 0 ? 0 : step))
                    .plus(0, other);
            Estimate value =
                    sense > 0 ? opening : new Estimate(-opening.value(), opening.u(), -opening.high(), -opening.low());
            boolean below = value.value() < 0;
            values.add(new Value(key, notNegative(value), below ? note + "; none is needed" : note));
        }
    }
}
