// SPDX-License-Identifier: Apache-2.0
package ringleaf.cli;

import java.util.List;
import ringleaf.part.Choice;
import ringleaf.part.Design;
import ringleaf.part.Dimension;
import ringleaf.part.ShownUnit;
import ringleaf.report.Wrap;
import ringleaf.spec.text.Shown;

/** Results in words for standard output. */
final class ResultText {
    private static final int LONGEST = 400;
    /** How far a step's further lines are set in. */
    private static final int STEP = 6;

    private final StringBuilder out = new StringBuilder(4096);
    private final ShownUnit unit;

    /** Of what has no unit of its own. */
    ResultText() {
        this(ShownUnit.MM);
    }

    ResultText(ShownUnit unit) {
        this.unit = unit;
    }

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
            value = Math.max(value, unit.size(dimension).length());
        }
        for (Choice choice : design.choices()) {
            row(choice.name(), name, choice.value(), value, choice.origin(), choice.how());
        }
        for (Dimension dimension : design.dimensions()) {
            row(dimension.name(), name, unit.size(dimension), value, dimension.origin(), dimension.how());
        }
        return this;
    }

    /** Steps with numbers. */
    ResultText buildOrder(Design design, boolean named) {
        List<String> steps = design.assembly().buildOrder();
        if (!steps.isEmpty()) {
            out.append("build order")
                    .append(named ? " of " + design.name() : "")
                    .append('\n');
            for (int i = 0; i < steps.size(); i++) {
                out.append(Wrap.of((i < 9 ? "   " : "  ") + (i + 1) + ". ", unit.text(steps.get(i)), STEP));
            }
        }
        return this;
    }

    /** Lines under a heading; nothing when there are none. */
    ResultText list(String heading, List<String> lines) {
        if (!lines.isEmpty()) {
            out.append(heading).append('\n');
            for (String line : lines) {
                out.append(Wrap.of("  ", line, STEP - 2));
            }
        }
        return this;
    }

    private void row(String name, int nameWidth, String value, int valueWidth, Dimension.Origin origin, String how) {
        String words = origin.label() + (how.isEmpty() ? "" : ": " + unit.text(Shown.cut(how, LONGEST)));
        String head = "  " + name + " ".repeat(nameWidth - name.length() + 2) + value
                + " ".repeat(valueWidth - value.length() + 2);
        out.append(Wrap.of(head, words, head.length()));
    }
}
