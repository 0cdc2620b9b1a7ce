// SPDX-License-Identifier: Apache-2.0
package ringleaf.explore;

import java.util.Locale;
import java.util.Random;

/** Specs as people come with them, by a seed: what they must say, and little else. */
final class RandomSpecs {
    private RandomSpecs() {}

    /** An aperture called {@code stop}. */
    static String aperture(long seed) {
        Random random = new Random(seed);
        double full = Math.rint(20 + 120 * Math.pow(random.nextDouble(), 1.3));
        double least = Math.rint(full * (0.1 + 0.5 * random.nextDouble()));
        int blades = 6 + random.nextInt(15);
        StringBuilder text = new StringBuilder("title: Seed " + seed + "\nfabrication:\n");
        String[][] sheets = {
            {"0.1", "brass-0.1"},
            {"0.15", "brass-0.15"},
            {"0.2", "steel-0.2"},
            {"0.15", ""},
            {"0.25", ""},
            {"0.6", "pla"},
            {"0.8", "pla"}
        };
        String[] blade = sheets[random.nextInt(sheets.length)];
        if (!blade[1].isEmpty()) {
            text.append("  blade: {stock: ").append(blade[1]).append("}\n");
        }
        String[] plates = {"", "acrylic-3", "acrylic-2", "petg", "pla"};
        for (String family : new String[] {"plate", "ring", "spacer", "gear"}) {
            String stock = plates[random.nextInt(plates.length)];
            if (!stock.isEmpty() && random.nextInt(3) > 0) {
                text.append("  ")
                        .append(family)
                        .append(": {stock: ")
                        .append(stock)
                        .append("}\n");
            }
        }
        text.append("  jig: {stock: pla}\nmechanisms:\n  stop:\n    kind: leaf-aperture\n");
        text.append("    full-opening: ").append((long) full).append('\n');
        text.append("    least-opening: ").append((long) least).append('\n');
        text.append("    blades: ").append(blades).append('\n');
        text.append("    blade-thickness: ").append(blade[0]).append('\n');
        if (random.nextInt(3) == 0) {
            text.append(String.format(
                    Locale.ROOT,
                    "    outer-diameter: {at-most: %.0f}%n",
                    full * (1.35 + 0.4 * random.nextDouble()) + 8));
        }
        if (random.nextInt(5) == 0) {
            text.append(String.format(Locale.ROOT, "    depth: {at-most: %.1f}%n", 8 + 12 * random.nextDouble()));
        }
        switch (random.nextInt(4)) {
            case 0 -> text.append("    drive: {servo: micro-180}\n");
            case 1 -> text.append("    drive: {servo: standard-180}\n");
            case 2 -> text.append("    drive: {servo: micro-180, by: step-up}\n");
            default -> {
                // by hand
            }
        }
        return text.toString();
    }
}
