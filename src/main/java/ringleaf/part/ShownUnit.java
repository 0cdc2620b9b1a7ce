// SPDX-License-Identifier: Apache-2.0
package ringleaf.part;

import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The unit in which lengths are told to people. Inside and in design.json they are millimetres; torques, forces and
 * modules stay what they are.
 *
 * <p>Lengths are rounded to what can be made and measured, 0.01 mm or 0.0005 in, and small ones to two significant
 * figures; what was typed with one decimal more stays as it was typed.
 */
public enum ShownUnit {
    MM("mm", 1, 0.01, "mm²", 1),
    CM("cm", 10, 0.001, "mm²", 1),
    IN("in", 25.4, 0.0005, "in²", 25.4 * 25.4),
    THOU("thou", 0.0254, 0.5, "in²", 25.4 * 25.4);

    private static final int DIGITS = 4;
    private static final int MOST_DECIMALS = 9;
    private static final double ANGLE_STEP = 0.01;
    /** Binary fractions of typed decimals. */
    private static final double EXACT = 1e-6;

    private static final String NUMBER = "[-−]?\\d+(?:\\.\\d+)?";
    /** One length in mm, or several with their unit at the end; a module's is left alone. */
    private static final Pattern LENGTHS =
            Pattern.compile("(?<![\\w.,-])(?<!odule )(?<!odule of )(?<!odule: )(?<!odules )("
                    + NUMBER + "(?:(?:, " + NUMBER + ")* (?:and|to|or|by|x|×) " + NUMBER
                    + ")?) (mm²?)(?![³\\w/])|(?<=Ø)("
                    + NUMBER + ")(?! mm)(?![\\d.])");

    private static final Pattern ONE = Pattern.compile(NUMBER);

    private final String name;
    private final double mm;
    private final double step;
    private final String areaName;
    private final double mm2;

    ShownUnit(String name, double mm, double step, String areaName, double mm2) {
        this.name = name;
        this.mm = mm;
        this.step = step;
        this.areaName = areaName;
        this.mm2 = mm2;
    }

    /** As it stands behind a number. */
    public String spelling() {
        return name;
    }

    /** Millimetres in one. */
    public double millimetres() {
        return mm;
    }

    /** The unit of areas as it stands behind a number. */
    public String areaSpelling() {
        return areaName;
    }

    /** Square millimetres in one unit of areas. */
    public double squareMillimetres() {
        return mm2;
    }

    /** Steps in which lengths are told, in this unit. */
    public double step() {
        return step;
    }

    /** A length of so many mm, without its unit. */
    public String number(double length) {
        return number(length, "mm", 0);
    }

    /** The same by so many decimals finer. */
    public String number(double length, int finer) {
        return number(length, "mm", finer);
    }

    /** A value with its unit as people write it: 0.6 mm, 30°, 12. */
    public String figure(double value, String unit) {
        return figure(value, unit, 0);
    }

    /**
     * A value with its unit.
     *
     * @param unit that of {@code value}: mm, mm2, deg, 1 or another that stays what it is
     * @param finer by how many decimals finer than usual it is told
     */
    public String figure(double value, String unit, int finer) {
        String number = number(value, unit, finer);
        if (!Double.isFinite(value)) {
            return number;
        }
        return switch (unit) {
            case "1" -> number;
            case "deg" -> number + "°";
            case "mm" -> number + " " + name;
            case "mm2" -> number + " " + areaName;
            default -> number + " " + unit;
        };
    }

    /** A resolved size; modules are in mm whatever the unit. */
    public String size(Dimension size) {
        boolean module = size.name().equals("module") || size.name().endsWith("-module");
        return module ? number(size.value(), "1", 0) + " mm" : figure(size.value(), size.unit());
    }

    /** A sentence with every length of it in this unit. */
    public String text(String sentence) {
        if (this == MM || sentence.indexOf("mm") < 0 && sentence.indexOf('Ø') < 0) {
            return sentence;
        }
        Matcher found = LENGTHS.matcher(sentence);
        StringBuilder out = new StringBuilder();
        while (found.find()) {
            boolean diameter = found.group(3) != null;
            boolean area = !diameter && found.group(2).endsWith("²");
            String told = ONE.matcher(diameter ? found.group(3) : found.group(1))
                    .replaceAll(one -> number(parsed(one.group()), area ? "mm2" : "mm", 0));
            found.appendReplacement(out, Matcher.quoteReplacement(told + " " + (area ? areaName : name)));
        }
        return found.appendTail(out).toString();
    }

    private static double parsed(String number) {
        return Double.parseDouble(number.replace('−', '-'));
    }

    private String number(double value, String unit, int finer) {
        if (!Double.isFinite(value)) {
            return Double.isNaN(value) ? "none" : value > 0 ? "without limit" : "below every limit";
        }
        double fine = Math.pow(10, -finer);
        return switch (unit) {
            case "mm" -> stepped(value / mm, step * fine);
            case "deg" -> stepped(value, ANGLE_STEP * fine);
            case "mm2" -> significant(value / mm2, DIGITS + finer);
            default -> significant(value, DIGITS + finer);
        };
    }

    private static String stepped(double value, double step) {
        double size = Math.abs(value);
        int decimals = decimals(step);
        if (size < 10 * step) {
            return significant(value, 2);
        }
        double typed = value * Math.pow(10, decimals + 1);
        if (Math.abs(typed - Math.rint(typed)) < EXACT) {
            return Words.number(value, decimals + 1);
        }
        return Words.number(Math.rint(value / step) * step, decimals);
    }

    /** Decimals that a whole number of steps has. */
    private static int decimals(double step) {
        int decimals = 0;
        for (double left = step; left < 1 - EXACT && decimals < MOST_DECIMALS; left *= 10) {
            decimals++;
        }
        return decimals;
    }

    /** So many significant figures; whole numbers stay whole. */
    private static String significant(double value, int digits) {
        double size = Math.abs(value);
        if (size == 0 || size < Math.pow(10, -MOST_DECIMALS)) {
            return "0";
        }
        int before = (int) Math.floor(Math.log10(size)) + 1;
        return Words.number(value, Math.min(MOST_DECIMALS, Math.max(0, digits - before)));
    }
}
