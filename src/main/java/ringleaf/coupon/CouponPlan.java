// SPDX-License-Identifier: Apache-2.0
package ringleaf.coupon;

import java.util.ArrayList;
import java.util.List;
import ringleaf.spec.shared.MakingProcess;
import ringleaf.spec.shared.Stock;

/**
 * Chooses the sizes of a coupon so that what the catalogue says of process and stock lies amid the steps. All sizes
 * are hundredths of a millimetre, so that they can be written down whole.
 */
public final class CouponPlan {
    /** Plate where the stock has no thickness of its own, mm. */
    public static final double USUAL_THICKNESS = 3;
    /** Diameter of the pin that is tried, mm: a common dowel pin and a common drill's shank. */
    static final double PIN = 3;

    static final double LENGTH = 120;
    private static final int TRIED = 10;
    private static final int RUNGS = 8;
    private static final double[] FINGERS = {3, 4, 6, 8, 12, 20};
    private static final double[] STANDING = {3, 4, 5, 6, 8, 12};
    private static final double[] HOLES = {4, 5, 6, 8, 10};
    private static final double[] SLOTS = {3, 4, 6, 8};
    /** Wider webs and holes than these need no ladder, mm. */
    private static final double WIDEST_WEB = 4;

    private static final double WIDEST_DOT = 2.4;
    private static final double HUNDREDTH = 100;

    private CouponPlan() {}

    /** The coupon for a process and a stock that it makes. */
    public static Coupon of(MakingProcess process, Stock stock) {
        double usual = Math.max(process.thicknessFrom(), Math.min(process.thicknessTo(), USUAL_THICKNESS));
        double thickness = stock.thickness().orElse(usual);
        boolean layers = process.makesLayers();
        double kerf = layers ? 0 : stock.kerf(process);
        List<Feature> features = new ArrayList<>();
        add(features, Feature.Kind.PIN, layers ? STANDING : FINGERS);
        features.add(new Feature(Feature.BAR_X, Feature.Kind.BAR, LENGTH));
        features.add(new Feature(Feature.BAR_Y, Feature.Kind.BAR, CouponOutline.height(layers)));
        add(features, Feature.Kind.HOLE, HOLES);
        add(features, Feature.Kind.SLOT, SLOTS);
        add(
                features,
                Feature.Kind.COMB,
                steps(PIN - 2.5 * kerf - 0.1, PIN + Math.max(0.1, 1.5 * process.slotClearance()), TRIED));
        add(
                features,
                Feature.Kind.FIT,
                steps(
                        PIN - 1.6 * kerf - process.pressAllowance() - 0.1,
                        PIN + Math.max(0.05, 1.6 * process.runningClearance() - 0.4 * kerf),
                        TRIED));
        double web = Math.min(WIDEST_WEB, Math.max(0.1, process.web(thickness)));
        add(features, Feature.Kind.WEB, steps(0.25 * web + kerf, 1.5 * web + kerf, RUNGS));
        double dot = Math.min(WIDEST_DOT, Math.max(0.1, process.hole(thickness)));
        add(
                features,
                Feature.Kind.DOT,
                steps(Math.max(0.05, 0.3 * dot - kerf), Math.max(0.4, 1.6 * dot - kerf), RUNGS));
        return new Coupon(process.name(), stock.name(), layers, thickness, PIN, features);
    }

    private static void add(List<Feature> features, Feature.Kind kind, double... sizes) {
        for (int i = 0; i < sizes.length; i++) {
            features.add(new Feature(kind.letter() + Integer.toString(i + 1), kind, sizes[i]));
        }
    }

    /** Even steps of whole hundredths from {@code low} to {@code high} or a little beyond. */
    private static double[] steps(double low, double high, int count) {
        long first = Math.max(2, Math.round(low * HUNDREDTH));
        long step = Math.max(1, (long) Math.ceil((high - low) * HUNDREDTH / (count - 1) - 1e-9));
        double[] sizes = new double[count];
        for (int i = 0; i < count; i++) {
            sizes[i] = (first + i * step) / HUNDREDTH;
        }
        return sizes;
    }
}
