// SPDX-License-Identifier: Apache-2.0
package ringleaf.outline;

import java.util.Optional;
import ringleaf.spec.text.Place;
import ringleaf.spec.text.Problems;
import ringleaf.spec.text.Shown;

/** Reads transforms (SVG 1.1, section 7.6) and lengths with real units. */
final class SvgTransform {
    private SvgTransform() {}

    /** The map of an attribute, which may be absent; no map after reporting. */
    static Affine of(String text, Place place, Problems problems) {
        Affine all = Affine.NONE;
        String rest = text == null ? "" : text.trim();
        while (!rest.isEmpty()) {
            int from = rest.indexOf('(');
            int to = rest.indexOf(')');
            boolean whole = from >= 0 && to > from;
            Affine one = whole ? one(rest.substring(0, from).trim(), rest.substring(from + 1, to)) : null;
            if (one == null) {
                problems.at(place, "its transform is not readable: " + Shown.quoted(rest));
                return Affine.NONE;
            }
            all = all.after(one);
            rest = rest.substring(to + 1).trim();
            rest = rest.startsWith(",") ? rest.substring(1).trim() : rest;
        }
        return all;
    }

    private static Affine one(String name, String arguments) {
        SvgNumbers numbers = new SvgNumbers(arguments);
        double[] n = new double[6];
        int count = 0;
        while (!numbers.isDone()) {
            double value = numbers.number();
            if (count == n.length || Double.isNaN(value)) {
                return null;
            }
            n[count++] = value;
        }
        String form = name + count;
        return switch (form) {
            case "matrix6" -> new Affine(n[0], n[1], n[2], n[3], n[4], n[5]);
            case "translate1", "translate2" -> Affine.shift(n[0], n[1]);
            case "scale1" -> new Affine(n[0], 0, 0, n[0], 0, 0);
            case "scale2" -> new Affine(n[0], 0, 0, n[1], 0, 0);
            case "rotate1" -> Affine.turn(Math.toRadians(n[0]));
            case "rotate3" ->
                Affine.shift(n[1], n[2])
                        .after(Affine.turn(Math.toRadians(n[0])))
                        .after(Affine.shift(-n[1], -n[2]));
            case "skewX1" -> new Affine(1, 0, Math.tan(Math.toRadians(n[0])), 1, 0, 0);
            case "skewY1" -> new Affine(1, Math.tan(Math.toRadians(n[0])), 0, 1, 0, 0);
            default -> null;
        };
    }

    /** A length in mm where it has a real unit; a bare number and px are none. */
    static Optional<Double> millimetres(String text) {
        if (text == null) {
            return Optional.empty();
        }
        String trimmed = text.trim();
        String[] units = {"mm", "cm", "in", "pt", "pc"};
        double[] sizes = {1, 10, 25.4, 25.4 / 72, 25.4 / 6};
        for (int i = 0; i < units.length; i++) {
            if (trimmed.endsWith(units[i])) {
                SvgNumbers numbers = new SvgNumbers(trimmed.substring(0, trimmed.length() - 2));
                double value = numbers.number();
                return numbers.isDone() && value > 0 ? Optional.of(value * sizes[i]) : Optional.empty();
            }
        }
        return Optional.empty();
    }
}
