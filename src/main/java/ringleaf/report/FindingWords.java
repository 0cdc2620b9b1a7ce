// SPDX-License-Identifier: Apache-2.0
package ringleaf.report;

import java.util.ArrayList;
import java.util.List;
import ringleaf.draw.PlainText;
import ringleaf.part.Finding;
import ringleaf.part.ShownUnit;
import ringleaf.part.Words;

/** A finding's data in words, the same in tables, on the page and, in millimetres, in design.json. */
public final class FindingWords {
    /** Decimals of millimetres in coordinates of design.json. */
    private static final int DECIMALS = 3;
    /** How much finer figures are told, at most, until one that fails differs from its limit. */
    private static final int FINEST = 6;

    private FindingWords() {}

    /** State, subjects, what of them and coordinates in mm: {@code closed, blade 1 and blade 2, at (3, 4)}. */
    public static String where(Finding finding) {
        List<String> words = places(finding, ShownUnit.MM);
        finding.place()
                .at()
                .ifPresent(p ->
                        words.add("at (" + Words.number(p.x(), DECIMALS) + ", " + Words.number(p.y(), DECIMALS) + ")"));
        return PlainText.line(String.join(", ", words));
    }

    /** The same in a unit. */
    public static String where(Finding finding, ShownUnit unit) {
        List<String> words = places(finding, unit);
        finding.place().at().ifPresent(p -> words.add("at (" + unit.number(p.x()) + ", " + unit.number(p.y()) + ")"));
        return PlainText.line(String.join(", ", words));
    }

    /** State, subjects and what of them, without coordinates. */
    static String place(Finding finding, ShownUnit unit) {
        return PlainText.line(String.join(", ", places(finding, unit)));
    }

    private static List<String> places(Finding finding, ShownUnit unit) {
        Finding.Place place = finding.place();
        List<String> words = new ArrayList<>();
        if (place.step() > 0) {
            words.add("step " + place.step());
        }
        words.add(Sentences.of(place.label(), unit));
        words.add(String.join(" and ", finding.subjects()));
        words.add(Sentences.of(place.detail(), unit));
        words.removeIf(String::isEmpty);
        return words;
    }

    /** What was measured with its unit; {@code -} where nothing was. */
    public static String measured(Finding finding, ShownUnit unit) {
        return Double.isNaN(finding.measured())
                ? "-"
                : unit.figure(finding.measured(), finding.unit(), finer(finding, unit));
    }

    /** Relation and limit: {@code at least 0.6 mm}; {@code -} where there is none. */
    public static String limit(Finding finding, ShownUnit unit) {
        if (Double.isNaN(finding.limit())) {
            return "-";
        }
        String limit = bareLimit(finding, unit);
        return finding.relation() == Finding.Relation.NONE
                ? limit
                : finding.relation().label() + " " + limit;
    }

    private static String bareLimit(Finding finding, ShownUnit unit) {
        return unit.figure(finding.limit(), finding.unit(), finer(finding, unit));
    }

    /** What fails by little is told so finely that one sees by how much. */
    private static int finer(Finding finding, ShownUnit unit) {
        if (finding.status() == Finding.Status.PASS
                || Double.isNaN(finding.measured())
                || Double.isNaN(finding.limit())) {
            return 0;
        }
        int finer = 0;
        while (finer < FINEST
                && unit.figure(finding.measured(), finding.unit(), finer)
                        .equals(unit.figure(finding.limit(), finding.unit(), finer))) {
            finer++;
        }
        return finer;
    }

    /** Who judged, and to what tolerance: {@code calculated} or {@code on the geometry, to 2 µm}. */
    public static String judge(Finding finding) {
        if (finding.judge() == Finding.Judge.CALCULATED) {
            return "calculated";
        }
        boolean length = finding.unit().equals("mm") && finding.slack() > 0;
        return "on the geometry" + (length ? ", to " + Words.number(finding.slack() * 1000, 1) + " µm" : "");
    }

    /** What it says, with its lengths in a unit. */
    public static String message(Finding finding, ShownUnit unit) {
        return PlainText.line(Sentences.of(finding.message(), unit));
    }

    /** A clause: what was found of which, and what is wanted; what has no figures is told by its own words. */
    static String clause(Finding finding, ShownUnit unit) {
        String name = PlainText.line(finding.check());
        if (Double.isNaN(finding.measured()) || Double.isNaN(finding.limit())) {
            String message = message(finding, unit);
            return name + ": " + (message.endsWith(".") ? message.substring(0, message.length() - 1) : message);
        }
        String limit = bareLimit(finding, unit);
        String wanted =
                switch (finding.relation()) {
                    case AT_LEAST -> " where at least " + limit + " is needed";
                    case AT_MOST -> " where at most " + limit + " is allowed";
                    case ABOUT -> " where about " + limit + " is wanted";
                    case NONE -> " against " + limit;
                };
        String place = place(finding, unit);
        return name + " " + measured(finding, unit) + wanted + (place.isEmpty() ? "" : " (" + place + ")");
    }
}
