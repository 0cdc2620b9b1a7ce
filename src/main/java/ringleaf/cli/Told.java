// SPDX-License-Identifier: Apache-2.0
package ringleaf.cli;

import java.io.PrintStream;
import java.util.ArrayList;
import java.util.List;
import ringleaf.part.Design;
import ringleaf.part.Finding;
import ringleaf.part.ShownUnit;
import ringleaf.report.FindingsText;
import ringleaf.report.Headline;
import ringleaf.report.Verdict;
import ringleaf.report.Wrap;
import ringleaf.spec.SpecDocument;
import ringleaf.spec.text.Shown;

/**
 * What a run says of its designs, the verdict first: whether to cut and why, what does not pass with the nearest changes,
 * and the figures that a maker asks for first. All else is told where details are asked for.
 *
 * <p>Verdict and figures are results and go to standard output; findings go to standard error.
 */
final class Told {
    private static final int TITLE = 60;
    private static final int INDENT = 6;

    private final List<Judged> all;
    private final String title;
    private final ShownUnit unit;
    private final Console console;

    Told(SpecDocument document, List<Judged> all, Console console) {
        this.all = all;
        this.title = Shown.cut(document.title(), TITLE);
        this.unit = unit(document);
        this.console = console;
    }

    /** The unit in which people read the lengths of a spec. */
    static ShownUnit unit(SpecDocument document) {
        return ShownUnit.valueOf(document.units().name());
    }

    boolean failed() {
        for (Judged judged : all) {
            if (judged.failed()) {
                return true;
            }
        }
        return false;
    }

    /** Verdict, what does not pass, figures. */
    void briefly() {
        PrintStream out = console.out();
        out.print(verdict());
        out.flush();
        findings();
        for (Judged judged : all) {
            out.print(figures(judged.design()));
        }
        out.flush();
    }

    /** What does not pass, and the nearest changes that would mend it, on standard error. */
    void findings() {
        PrintStream err = console.err();
        for (Judged judged : all) {
            String text = FindingsText.brief(
                    judged.findings(), unit, console.surroundings().colour());
            if (all.size() > 1 && !text.isEmpty()) {
                err.print(judged.design().name() + "\n");
            }
            err.print(text);
            List<String> remedies = judged.failed() ? judged.design().remedies() : List.of();
            if (!remedies.isEmpty()) {
                err.print("what would mend it\n");
            }
            for (String remedy : remedies) {
                err.print(Wrap.of("  ", remedy, INDENT));
            }
        }
        err.flush();
    }

    private String verdict() {
        String word = failed() ? "FAIL" : "PASS";
        String said = failed() ? "Do not cut " + title + ": " + failing() : title + " may be cut: " + holding();
        return Wrap.of(word + "  ", said + ".", INDENT);
    }

    private String failing() {
        List<String> names = new ArrayList<>();
        String reason = "";
        for (Judged judged : all) {
            if (judged.failed()) {
                reason = names.isEmpty() ? Verdict.of(judged.findings(), unit).reason() : reason;
                names.add(judged.design().name());
            }
        }
        List<String> others = names.subList(1, names.size());
        return (all.size() > 1 ? names.get(0) + ": " : "")
                + reason
                + (others.isEmpty()
                        ? ""
                        : "; " + String.join(", ", others) + (others.size() == 1 ? " fails too" : " fail too"));
    }

    private String holding() {
        List<Finding> findings = new ArrayList<>();
        for (Judged judged : all) {
            findings.addAll(judged.findings());
        }
        return Verdict.of(findings, unit).reason();
    }

    private String figures(Design design) {
        List<Headline.Figure> figures = Headline.of(design, unit);
        StringBuilder text = new StringBuilder();
        if (all.size() > 1) {
            text.append(design.name()).append(" (").append(design.kind()).append(")\n");
        }
        int wide = 0;
        for (Headline.Figure figure : figures) {
            wide = Math.max(wide, figure.name().length());
        }
        for (Headline.Figure figure : figures) {
            text.append("  ")
                    .append(figure.name())
                    .append(" ".repeat(wide - figure.name().length() + 2));
            text.append(figure.value()).append('\n');
        }
        for (String decided : Headline.decided(design, unit)) {
            text.append(Wrap.of("  ", decided, INDENT + 2));
        }
        return text.toString();
    }

    /** Every choice and size with how it was found, and every finding. */
    void inDetail() {
        ResultText text = new ResultText(unit);
        for (Judged judged : all) {
            text.design(judged.design());
        }
        console.out().print(text);
        console.out().flush();
        for (Judged judged : all) {
            if (all.size() > 1) {
                console.err().print(judged.design().name() + "\n");
            }
            console.err()
                    .print(FindingsText.of(
                            judged.findings(), unit, console.surroundings().colour()));
        }
        console.err().flush();
    }
}
