// SPDX-License-Identifier: Apache-2.0
package ringleaf.report;

import java.util.ArrayList;
import java.util.List;
import ringleaf.draw.PlainText;
import ringleaf.part.Choice;
import ringleaf.part.Design;
import ringleaf.part.Dimension;
import ringleaf.part.ShownUnit;

/** The few figures of a design that a maker asks for first, in words. */
public final class Headline {
    private Headline() {}

    /**
     * One of them.
     *
     * @param name in words
     * @param value with its unit
     */
    public record Figure(String name, String value) {}

    /** In the design's own order; what it names and has not is left out. */
    public static List<Figure> of(Design design, ShownUnit unit) {
        List<Figure> figures = new ArrayList<>();
        for (String name : design.headline()) {
            for (Choice choice : design.choices()) {
                if (choice.name().equals(name)) {
                    figures.add(figure(name, choice.value()));
                }
            }
            for (Dimension size : design.dimensions()) {
                if (size.name().equals(name)) {
                    figures.add(figure(name, unit.size(size)));
                }
            }
        }
        return figures;
    }

    /** What was decided where first guesses did not work, a line each. */
    public static List<String> decided(Design design, ShownUnit unit) {
        List<String> lines = new ArrayList<>();
        for (Choice each : design.decisions()) {
            lines.add("decided: " + PlainText.line(each.name()) + ' ' + PlainText.line(each.value()) + "; "
                    + unit.text(PlainText.line(each.how())));
        }
        return lines;
    }

    private static Figure figure(String name, String value) {
        return new Figure(PlainText.line(name).replace('-', ' '), PlainText.line(value));
    }
}
