// SPDX-License-Identifier: Apache-2.0
package ringleaf.coupon;

import java.util.Locale;
import java.util.Optional;
import java.util.Random;
import ringleaf.spec.shared.Catalogues;
import ringleaf.spec.shared.MakingProcess;
import ringleaf.spec.shared.SharedFiles;
import ringleaf.spec.shared.Stock;
import ringleaf.spec.text.Problems;
import ringleaf.spec.text.SpecSource;

/** A machine of which everything is known, its piece measured with a caliper of which everything is known; mm. */
final class MadeUpMachine {
    static final Catalogues READY = new Catalogues(SharedFiles.NONE, new Problems());

    final Coupon coupon;
    final MakingProcess process;
    double kerf = 0.187;
    double hole = 0.02;
    double scaleX = 0.0004;
    double scaleY = -0.0007;
    /** Deviation of a feature's size, and of a reading. */
    double machine = 0.03;

    double reading = 0.012;
    /** Limits of the instrument's own error; the true one is drawn within them. */
    double outsideError;

    double insideError;
    double step = 0.01;
    int readings = 3;
    double pin = 3;
    double leastWeb = 0.7;
    double leastHole = 0.45;

    MadeUpMachine(String processName, String stockName) {
        process = READY.processes().require(processName);
        Stock stock = READY.stock().require(stockName);
        coupon = CouponPlan.of(process, stock);
    }

    /** The sheet as somebody fills it in, from a seed. */
    String sheet(long seed) {
        Random random = new Random(seed);
        double outside = outsideError * (2 * random.nextDouble() - 1);
        double inside = insideError * (2 * random.nextDouble() - 1);
        String text = CouponSheet.of(coupon)
                .replace("outside: {step: 0.01mm, error: 0.02mm}", instrument("outside", outsideError))
                .replace("inside: {step: 0.01mm, error: 0.03mm}", instrument("inside", insideError));
        text = text.replace(
                "pin: {drawn: 3mm, measured: []}", "pin: {drawn: 3mm, measured: [" + pin + ", " + pin + "]}");
        double tongue = made(coupon.pin(), -1, false, random);
        String enters = SheetReader.NONE;
        String slides = SheetReader.NONE;
        String held = SheetReader.NONE;
        String turns = SheetReader.NONE;
        for (Feature f : coupon.features()) {
            boolean out = f.kind().isOutside();
            double size = made(f.drawn(), out ? -1 : 1, f.isAlongY(), random)
                    + (f.kind() == Feature.Kind.HOLE || f.kind() == Feature.Kind.FIT ? hole : 0);
            if (f.kind().isMeasured()) {
                StringBuilder all = new StringBuilder();
                for (int i = 0; i < readings; i++) {
                    double value = size + (out ? outside : inside) + reading * random.nextGaussian();
                    all.append(i == 0 ? "" : ", ").append(shown(value));
                }
                text = line(text, f, "measured: []", "measured: [" + all + "]");
            } else if (f.kind() == Feature.Kind.WEB) {
                text = line(text, f, "whole: ", "whole: " + (f.drawn() - kerf >= leastWeb ? "yes" : "no"));
            } else if (f.kind() == Feature.Kind.DOT) {
                text = line(text, f, "open: ", "open: " + (f.drawn() + kerf >= leastHole ? "yes" : "no"));
            } else if (f.kind() == Feature.Kind.COMB) {
                enters = enters.equals("none") && f.drawn() + kerf >= tongue + 0.02 ? f.name() : enters;
                slides = slides.equals("none") && f.drawn() + kerf >= pin + 0.1 ? f.name() : slides;
            } else {
                held = f.drawn() + kerf <= pin - 0.01 ? f.name() : held;
                turns = turns.equals("none") && f.drawn() + kerf >= pin + 0.06 ? f.name() : turns;
            }
        }
        return answer(
                answer(answer(answer(text, "tongue-enters", enters), "pin-slides", slides), "pin-held", held),
                "pin-turns",
                turns);
    }

    private double made(double drawn, int sense, boolean y, Random random) {
        return drawn * (1 + (y ? scaleY : scaleX)) + sense * kerf + machine * random.nextGaussian();
    }

    private String instrument(String name, double error) {
        return name + ": {step: " + step + "mm, error: " + error + "mm}";
    }

    private String shown(double value) {
        return String.format(Locale.ROOT, "%.4f", Math.round(value / step) * step);
    }

    private static String line(String text, Feature f, String from, String to) {
        int at = text.indexOf("  " + f.name() + ": {");
        int end = text.indexOf('\n', at);
        return text.substring(0, at) + text.substring(at, end).replace(from, to) + text.substring(end);
    }

    private static String answer(String text, String key, String word) {
        return text.replaceFirst(key + ": +#", key + ": " + word + "   #");
    }

    Optional<Measured> measured(String sheet, Problems problems) {
        Optional<Filled> filled = SheetReader.read(SpecSource.of("coupon.yaml", sheet), problems);
        return filled.isEmpty() ? Optional.empty() : Measured.of(filled.get(), process, problems);
    }

    static Estimate value(Measured measured, String key) {
        for (Measured.Value value : measured.values()) {
            if (value.key().equals(key)) {
                return value.estimate();
            }
        }
        for (Measured.Value value : measured.told()) {
            if (value.key().equals(key)) {
                return value.estimate();
            }
        }
        throw new AssertionError(key + " is not among the values");
    }
}
