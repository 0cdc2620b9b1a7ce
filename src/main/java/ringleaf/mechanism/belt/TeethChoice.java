// SPDX-License-Identifier: Apache-2.0
package ringleaf.mechanism.belt;

import java.util.Optional;
import ringleaf.part.Words;
import ringleaf.spec.field.Values;
import ringleaf.spec.shared.Belt;
import ringleaf.spec.text.Place;
import ringleaf.spec.text.Problems;

/**
 * Teeth of driver and driven pulley, from what was given of them and of the ratio.
 *
 * @param driver teeth
 * @param driven teeth
 * @param driverPlace for messages
 * @param drivenPlace for messages
 */
record TeethChoice(int driver, int driven, Place driverPlace, Place drivenPlace) {
    /** Teeth in mesh for a belt's full rating; common practice, a seller's page repeats it. */
    static final int FULL_MESH = 6;

    /** Teeth that are solved obey the limit of those that are given. */
    private static final int MOST = (int) PulleyFields.TEETH.numeric().most();
    /** Teeth of the driver up to which room for its bore is looked for. */
    private static final int GROWN = 80;

    private static final double SAME = 1e-9;
    private static final String HOW = "fewest teeth with the ratio, six in mesh and room for the bores";

    /**
     * The teeth; empty when they contradict the ratio or cannot be found, which is then among the problems.
     *
     * @param distance centre distance that is wanted, or not a number
     */
    static Optional<TeethChoice> of(Values values, Belt belt, double distance, Problems problems) {
        Optional<Integer> driver = values.given(DriveFields.DRIVER).flatMap(v -> v.given(PulleyFields.TEETH));
        Optional<Integer> driven = values.given(DriveFields.DRIVEN).flatMap(v -> v.given(PulleyFields.TEETH));
        Place driverPlace = place(values, true);
        Place drivenPlace = place(values, false);
        Optional<Double> ratio = values.given(DriveFields.RATIO);
        if (ratio.isEmpty()) {
            if (driver.isEmpty() || driven.isEmpty()) {
                problems.at(
                        values.where(DriveFields.RATIO),
                        "is missing (without it both pulleys' teeth must be given)",
                        "e.g. ratio: 5:2, or driver: {teeth: 16} and driven: {teeth: 40}");
                return Optional.empty();
            }
            return Optional.of(new TeethChoice(driver.get(), driven.get(), driverPlace, drivenPlace));
        }
        double wanted = ratio.get();
        int a = driver.orElse(0);
        int b = driven.orElse(0);
        if (a == 0 && b == 0) {
            int[] found = fewest(belt, wanted, distance, belt.leastTeeth());
            a = found[0];
            b = found[1];
        } else if (b == 0) {
            b = (int) Math.rint(a * wanted);
        } else if (a == 0) {
            a = (int) Math.rint(b / wanted);
        }
        if (a < 1 || Math.abs(b / (double) a - wanted) > SAME * wanted) {
            problems.at(
                    values.where(DriveFields.RATIO),
                    Words.number(wanted, 5) + " is not what " + a + " and " + b + " teeth give, "
                            + Words.number(b / (double) Math.max(1, a), 5),
                    "the nearest that works is " + b + ":" + a);
            return Optional.empty();
        }
        if (Math.max(a, b) > MOST) {
            problems.at(
                    values.where(DriveFields.RATIO),
                    Words.number(wanted, 5) + " takes " + a + " and " + b + " teeth, and " + MOST
                            + " are the most of one pulley",
                    "the nearest that works is " + (driver.isPresent() ? MOST : b) + ":"
                            + (driver.isPresent() ? a : MOST));
            return Optional.empty();
        }
        return Optional.of(new TeethChoice(a, b, driverPlace, drivenPlace));
    }

    /**
     * The next larger pair with the ratio where both counts were left open, so that more is left below the grooves; empty
     * where there is none, or nothing is open.
     */
    Optional<TeethChoice> larger(Values values, Belt belt, double distance) {
        boolean open = values.given(DriveFields.DRIVER)
                        .flatMap(v -> v.given(PulleyFields.TEETH))
                        .isEmpty()
                && values.given(DriveFields.DRIVEN)
                        .flatMap(v -> v.given(PulleyFields.TEETH))
                        .isEmpty();
        if (!open) {
            return Optional.empty();
        }
        double ratio = values.given(DriveFields.RATIO).orElseThrow();
        int[] found = fewest(belt, ratio, distance, driver + 1);
        boolean exact = Math.abs(found[1] / (found[0] * ratio) - 1) <= SAME;
        return exact && found[0] > driver && found[0] <= GROWN
                ? Optional.of(new TeethChoice(found[0], found[1], driverPlace, drivenPlace))
                : Optional.empty();
    }

    static String how() {
        return HOW;
    }

    private static Place place(Values values, boolean driver) {
        Optional<Values> own = values.given(driver ? DriveFields.DRIVER : DriveFields.DRIVEN);
        if (own.isPresent() && own.get().isGiven(PulleyFields.TEETH)) {
            return own.get().where(PulleyFields.TEETH);
        }
        return values.where(DriveFields.RATIO);
    }

    /**
     * The pair with the fewest teeth that has the ratio exactly and six teeth in mesh at the wanted distance; without
     * six in mesh the fewest of all, and where nothing has the ratio exactly what comes nearest.
     */
    private static int[] fewest(Belt belt, double ratio, double distance, int least) {
        int[] near = {least, (int) Math.rint(least * ratio)};
        double miss = Double.POSITIVE_INFINITY;
        int[] exact = null;
        for (int a = least; a <= MOST; a++) {
            int b = (int) Math.rint(a * ratio);
            if (b < belt.leastTeeth() || b > MOST) {
                continue;
            }
            double off = Math.abs(b / (a * ratio) - 1);
            if (off < miss - SAME) {
                miss = off;
                near = new int[] {a, b};
            }
            if (off <= SAME) {
                exact = exact == null ? new int[] {a, b} : exact;
                if (mesh(belt, a, b, distance) >= FULL_MESH) {
                    return new int[] {a, b};
                }
            }
        }
        return exact == null ? near : exact;
    }

    /** Teeth in mesh of the smaller pulley; at the default distance where none is wanted. */
    private static double mesh(Belt belt, int a, int b, double distance) {
        double small = belt.pitchDiameter(Math.min(a, b));
        double large = belt.pitchDiameter(Math.max(a, b));
        double c = Double.isNaN(distance) ? usualDistance(belt, a, b) : distance;
        double cos = Math.min(1, (large - small) / (2 * c));
        return Math.min(a, b) * Math.acos(cos) / Math.PI;
    }

    /** Centre distance when none is wanted: one and a half times the larger pulley, and never so near as to touch. */
    static double usualDistance(Belt belt, int a, int b) {
        double sum = (belt.pitchDiameter(a) + belt.pitchDiameter(b)) / 2;
        return Math.max(1.5 * belt.pitchDiameter(Math.max(a, b)), sum + 10);
    }
}
