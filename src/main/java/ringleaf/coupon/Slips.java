// SPDX-License-Identifier: Apache-2.0
package ringleaf.coupon;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.math3.distribution.FDistribution;
import org.apache.commons.math3.distribution.TDistribution;
import ringleaf.coupon.Filled.Reading;
import ringleaf.part.Words;
import ringleaf.spec.text.Place;
import ringleaf.spec.text.Problems;

/**
 * Finds readings that cannot be meant: far from what was drawn, as in another unit or with a comma for a dot, or out of
 * line with all others. What chance alone would show once in a thousand sheets is refused, if it is also larger than
 * the instrument's step and error explain.
 */
final class Slips {
    private static final double RISK = 0.001;
    /** A size further than this and this share of it from what was drawn is no size of this machine, mm. */
    private static final double FAR = 1;

    private static final double FAR_SHARE = 0.05;

    private final Filled filled;
    private final Problems problems;

    private record Unit(String words, double factor) {}

    private static final List<Unit> UNITS = List.of(
            new Unit("inches", 25.4),
            new Unit("centimetres", 10),
            new Unit("thousandths of an inch", 0.0254),
            new Unit("millimetres", 1 / 25.4),
            new Unit("millimetres", 0.1));

    Slips(Filled filled, Problems problems) {
        this.filled = filled;
        this.problems = problems;
    }

    /** Reports readings that are far from what was drawn; whether there were none. */
    boolean near() {
        int before = problems.count();
        Unit all = unitOfMost();
        if (all != null) {
            problems.at(
                    filled.source().whole().named("units"),
                    "most readings look as if they were in " + all.words,
                    "say so under units:, or write the unit behind each reading");
            return false;
        }
        for (Feature feature : filled.measured()) {
            far(feature.drawn(), filled.reading(feature.name()));
        }
        if (filled.reading(SheetFields.PIN_KEY) != null) {
            far(filled.coupon().pin(), filled.reading(SheetFields.PIN_KEY));
        }
        return problems.count() == before;
    }

    private void far(double drawn, Reading reading) {
        for (int i = 0; i < reading.values().size(); i++) {
            double value = reading.values().get(i);
            if (!isNear(value, drawn)) {
                Unit unit = unit(value, drawn);
                String hint = unit != null
                        ? "in " + unit.words + " it would be " + mm(value * unit.factor)
                        : "a dot parts decimals, a comma readings; else look which line this belongs to";
                problems.at(reading.places().get(i), mm(value) + " was read where " + mm(drawn) + " was drawn", hint);
            }
        }
    }

    private static boolean isNear(double value, double drawn) {
        return Math.abs(value - drawn) <= FAR + FAR_SHARE * drawn;
    }

    private static Unit unit(double value, double drawn) {
        for (Unit unit : UNITS) {
            if (Math.abs(value * unit.factor - drawn) <= 0.5 + FAR_SHARE * drawn) {
                return unit;
            }
        }
        return null;
    }

    /** The unit in which most readings would be near, when more than half are far. */
    private Unit unitOfMost() {
        int count = 0;
        int[] would = new int[UNITS.size()];
        for (Feature feature : filled.measured()) {
            for (double value : filled.reading(feature.name()).values()) {
                count++;
                Unit unit = isNear(value, feature.drawn()) ? null : unit(value, feature.drawn());
                if (unit != null) {
                    would[UNITS.indexOf(unit)]++;
                }
            }
        }
        for (int i = 0; i < would.length; i++) {
            if (2 * would[i] > count) {
                return UNITS.get(i);
            }
        }
        return null;
    }

    /** Reports a feature whose readings scatter unlike those of all others. */
    void scatter() {
        List<Feature> features = filled.measured();
        double total = 0;
        int dof = 0;
        for (Feature feature : features) {
            total += filled.reading(feature.name()).scatter();
            dof += filled.reading(feature.name()).values().size() - 1;
        }
        for (Feature feature : features) {
            Reading reading = filled.reading(feature.name());
            int own = reading.values().size() - 1;
            double step = filled.instrument(feature).step();
            double others = Math.max((total - reading.scatter()) / Math.max(1, dof - own), step * step / 12);
            double ratio = reading.scatter() / own / others;
            double chance = 1 - new FDistribution(null, own, Math.max(1, dof - own)).cumulativeProbability(ratio);
            if (chance * features.size() < RISK && range(reading) > 3 * step) {
                int worst = furthest(reading);
                problems.at(
                        reading.places().get(worst),
                        mm(reading.values().get(worst)) + " does not go with the other readings of this line, which"
                                + " otherwise scatter by " + mm(Math.sqrt(others)),
                        "measure it again");
            }
        }
    }

    private static double range(Reading reading) {
        double least = Double.POSITIVE_INFINITY;
        double most = Double.NEGATIVE_INFINITY;
        for (double value : reading.values()) {
            least = Math.min(least, value);
            most = Math.max(most, value);
        }
        return most - least;
    }

    /** The reading that lies furthest from the middle one. */
    private static int furthest(Reading reading) {
        List<Double> sorted = new ArrayList<>(reading.values());
        sorted.sort(null);
        double middle = sorted.get((sorted.size() - 1) / 2);
        if (sorted.size() % 2 == 0) {
            middle = (middle + sorted.get(sorted.size() / 2)) / 2;
        }
        int worst = 0;
        for (int i = 0; i < reading.values().size(); i++) {
            if (Math.abs(reading.values().get(i) - middle)
                    > Math.abs(reading.values().get(worst) - middle)) {
                worst = i;
            }
        }
        return worst;
    }

    /** Reports the feature that fits least to what all others say, when it is too far off. */
    void outlier(SizeModel free) {
        List<Feature> features = free.features();
        int worst = 0;
        for (int i = 0; i < features.size(); i++) {
            double t = Math.abs(free.fit().studentized(i));
            worst = t > Math.abs(free.fit().studentized(worst)) ? i : worst;
        }
        double t = Math.abs(free.fit().studentized(worst));
        TDistribution student = new TDistribution(null, free.fit().dof() - 1);
        double chance = 2 * (1 - student.cumulativeProbability(t));
        Feature feature = features.get(worst);
        Filled.Instrument with = filled.instrument(feature);
        double off = free.fit().residual(worst);
        if (chance * features.size() < RISK && Math.abs(off) > 2 * with.step() + with.error()) {
            Place place = filled.reading(feature.name()).place();
            problems.at(
                    place,
                    "its mean " + mm(filled.reading(feature.name()).mean()) + " is " + mm(Math.abs(off))
                            + (off > 0 ? " larger" : " smaller") + " than all other lines say",
                    "measure it again; if it stays so, look for burr or damage, or write measured: none");
        }
    }

    private static String mm(double value) {
        return Words.number(value, 3) + " mm";
    }
}
