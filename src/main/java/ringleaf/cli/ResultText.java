package ringleaf.cli;

import java.util.List;
import ringleaf.draw.Decimals;
import ringleaf.part.Choice;
import ringleaf.part.Design;
import ringleaf.part.Dimension;
import ringleaf.spec.text.Shown;

/** Results in words for standard output. */
final class ResultText {
    private static final int DIGITS = 6;
    private static final int DECIMALS = 5;

    private final StringBuilder out = new StringBuilder(4096);

    @Override
    public String toString() {
        return out.toString();
    }

    /** What was resolved: choices with why, dimensions with where they come from. */
    ResultText design(Design design) {
        out.append(design.name()).append(" (").append(design.kind()).append(")\n");
        int name = 0;
        int value = 0;
        for (Choice choice : design.choices()) {
            name = Math.max(name, choice.name().length());
            value = Math.max(value, choice.value().length());
        }
        for (Dimension dimension : design.dimensions()) {
            name = Math.max(name, dimension.name().length());
            value = Math.max(value, value(dimension).length());
        }
        for (Choice choice : design.choices()) {
            row(choice.name(), name, choice.value(), value, choice.origin(), choice.how());
        }
        for (Dimension dimension : design.dimensions()) {
            row(dimension.name(), name, value(dimension), value, dimension.origin(), dimension.how());
        }
        return this;
    }

    /** Steps with numbers. */
    ResultText buildOrder(Design design, boolean named) {
        List<String> steps = design.assembly().buildOrder();
        if (!steps.isEmpty()) {
            out.append("build order").append(named ? " of " + design.name() : "").append('\n');
            for (int i = 0; i < steps.size(); i++) {
                out.append(i < 9 ? "   " : "  ").append(i + 1).append(". ").append(steps.get(i)).append('\n');
            }
        }
        return this;
    }

    /** Lines under a heading; nothing when there are none. */
    ResultText list(String heading, List<String> lines) {
        if (!lines.isEmpty()) {
            out.append(heading).append('\n');
            for (String line : lines) {
                out.append("  ").append(line).append('\n');
            }
        }
        return this;
    }

    private void row(String name, int nameWidth, String value, int valueWidth, Dimension.Origin origin, String how) {
        out.append("  ").append(name).append(" ".repeat(nameWidth - name.length() + 2));
        out.append(value).append(" ".repeat(valueWidth - value.length() + 2)).append(origin.label());
        if (!how.isEmpty()) {
            out.append(": ").append(Shown.cut(how, 400));
        }
        out.append('\n');
    }

    private static String value(Dimension dimension) {
        String number = Decimals.significant(dimension.value(), DIGITS, DECIMALS);
        return switch (dimension.unit()) {
            case "1" -> number;
            case "deg" -> number + "°";
            case "mm2" -> number + " mm²";
            default -> number + " " + dimension.unit();
        };
    }
}
