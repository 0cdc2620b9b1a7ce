// SPDX-License-Identifier: Apache-2.0
package ringleaf.coupon;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.math3.distribution.ChiSquaredDistribution;

/**
 * What the measured sizes say of the machine, as a linear model of each feature's mean reading less its drawn size d:
 * scale error times d, and an allowance for its kind. In the free model pins and bars, holes, and slots have an
 * allowance each; in the common one a kerf k makes pins k smaller, slots k wider and holes k + h wider.
 *
 * <p>Assumed: features come out independently of each other with one deviation; readings of a feature scatter about its
 * size with another; the instrument's own error is the same for all outside sizes and, apart from that, for all inside
 * ones, anywhere within the limits its maker gives (a rectangular distribution, GUM 4.3.7), and combines by GUM 5.1 and
 * the Welch-Satterthwaite formula (GUM G.4.1). Feature means count the same however often they were read.
 */
final class SizeModel {
    private final List<Feature> features;
    private final Filled filled;
    private final boolean common;
    private final LinearFit fit;
    private final double[] outside;
    private final double[] inside;
    private final double variance;

    private SizeModel(Filled filled, boolean common) {
        this.filled = filled;
        this.common = common;
        this.features = filled.measured();
        int count = features.size();
        double[][] rows = new double[count][];
        double[] y = new double[count];
        outside = new double[count];
        inside = new double[count];
        double floor = 0;
        for (int i = 0; i < count; i++) {
            Feature feature = features.get(i);
            rows[i] = row(feature);
            y[i] = filled.reading(feature.name()).mean() - feature.drawn();
            (feature.kind().isOutside() ? outside : inside)[i] = 1;
            double step = filled.instrument(feature).step();
            floor += step * step / 12 / count;
        }
        fit = LinearFit.of(rows, y);
        // Readings that agree to the last figure still hide what the figure rounds away.
        variance = Math.max(fit.variance(), floor);
    }

    /** Pins, holes and slots each by themselves. */
    static SizeModel free(Filled filled) {
        return new SizeModel(filled, false);
    }

    /** One kerf for all, and what holes have beyond it. */
    static SizeModel common(Filled filled) {
        return new SizeModel(filled, true);
    }

    private double[] row(Feature feature) {
        double x = feature.isAlongY() ? 0 : feature.drawn();
        double y = feature.isAlongY() ? feature.drawn() : 0;
        boolean hole = feature.kind() == Feature.Kind.HOLE;
        if (common) {
            return new double[] {x, y, feature.kind().isOutside() ? -1 : 1, hole ? 1 : 0};
        }
        boolean slot = feature.kind() == Feature.Kind.SLOT;
        return new double[] {x, y, feature.kind().isOutside() ? 1 : 0, hole ? 1 : 0, slot ? 1 : 0};
    }

    List<Feature> features() {
        return features;
    }

    LinearFit fit() {
        return fit;
    }

    /** How much larger than drawn the machine makes what lies along x, and along y; 0.001 is one part in a thousand. */
    Estimate scaleX() {
        return of(at(0, 1));
    }

    Estimate scaleY() {
        return of(at(1, 1));
    }

    /** The common kerf, mm. */
    Estimate kerf() {
        require(common);
        return of(at(2, 1));
    }

    /** How much wider than drawn and kerf a hole comes out, mm; in the free model, than drawn. */
    Estimate hole() {
        return of(at(3, 1));
    }

    /** How much wider than drawn pins come out, mm; below 0 where they are smaller. */
    Estimate pin() {
        require(!common);
        return of(at(2, 1));
    }

    /** How much wider than drawn slots come out, mm. */
    Estimate slot() {
        require(!common);
        return of(at(4, 1));
    }

    /** What slots say of the kerf less what pins say, mm. */
    Estimate slotsLessPins() {
        require(!common);
        return of(new double[] {0, 0, 1, 0, 1});
    }

    /** What holes say of the kerf less what slots say, mm. */
    Estimate holesLessSlots() {
        require(!common);
        return of(new double[] {0, 0, 0, 1, -1});
    }

    private static void require(boolean holds) {
        if (!holds) {
            throw new IllegalStateException("the other model knows this");
        }
    }

    private double[] at(int i, double value) {
        double[] w = new double[common ? 4 : 5];
        w[i] = value;
        return w;
    }

    private Estimate of(double[] w) {
        double value = 0;
        for (int i = 0; i < w.length; i++) {
            value += w[i] * fit.parameter(i);
        }
        double random = variance * fit.spread(w);
        double byOutside = fit.moved(w, outside) * filled.outside().error();
        double byInside = fit.moved(w, inside) * filled.inside().error();
        double systematic = (byOutside * byOutside + byInside * byInside) / 3;
        double total = random + systematic;
        double dof = fit.dof() * (total / random) * (total / random);
        return Estimate.of(value, Math.sqrt(total), dof);
    }

    /** Deviation of readings of one and the same size, mm: what measuring adds. */
    double measuring() {
        double sum = 0;
        for (Feature feature : features) {
            sum += filled.reading(feature.name()).scatter();
        }
        return Math.sqrt(sum / readingDof());
    }

    private int readingDof() {
        int dof = 0;
        for (Feature feature : features) {
            dof += filled.reading(feature.name()).values().size() - 1;
        }
        return dof;
    }

    /**
     * Half the width that holds 95 % of the sizes the machine makes of one drawn size, mm: 1.96 deviations, what
     * measuring adds taken off. Its interval follows the chi-squared distribution (Satterthwaite 1946; from memory).
     * Where measuring hides it, the value is what both have together, and the interval begins at 0.
     */
    Estimate repeatability() {
        double inverse = 0;
        for (Feature feature : features) {
            inverse += 1.0 / filled.reading(feature.name()).values().size() / features.size();
        }
        double measured = measuring() * measuring() * inverse;
        double own = variance - measured;
        double a = variance * variance / fit.dof();
        double b = measured * measured / readingDof();
        double factor = Estimate.student(Double.MAX_VALUE);
        double uOfSquare = Math.sqrt(2 * (a + b));
        if (own < 2 * Math.sqrt(2 * b) || own <= 0.1 * variance) {
            double high = factor * Math.sqrt(variance * fit.dof() / chi(fit.dof(), 0.05));
            double value = factor * Math.sqrt(variance);
            return new Estimate(value, uOfSquare * factor / (2 * Math.sqrt(variance)), 0, high);
        }
        double deviation = Math.sqrt(own);
        double dof = Math.max(1, own * own / (a + b));
        return new Estimate(
                factor * deviation,
                factor * uOfSquare / (2 * deviation),
                factor * deviation * Math.sqrt(dof / chi(dof, 0.975)),
                factor * deviation * Math.sqrt(dof / chi(dof, 0.025)));
    }

    private static double chi(double dof, double share) {
        return new ChiSquaredDistribution(null, dof).inverseCumulativeProbability(share);
    }

    /** The features' kinds that were measured too seldom for this model, with how many are needed. */
    static List<String> lacking(Filled filled) {
        List<String> lacking = new ArrayList<>();
        need(filled, Feature.Kind.PIN, 3, lacking);
        need(filled, Feature.Kind.BAR, 2, lacking);
        need(filled, Feature.Kind.HOLE, 3, lacking);
        need(filled, Feature.Kind.SLOT, 2, lacking);
        return lacking;
    }

    private static void need(Filled filled, Feature.Kind kind, int fewest, List<String> lacking) {
        int count = 0;
        for (Feature feature : filled.measured()) {
            count += feature.kind() == kind ? 1 : 0;
        }
        if (count < fewest) {
            lacking.add(count + " of " + kind.group() + " were measured, and " + fewest + " are the least");
        }
    }
}
