package ringleaf.report;

import java.util.ArrayList;
import java.util.List;
import ringleaf.draw.PlainText;
import ringleaf.part.Finding;
import ringleaf.part.Words;

/** A finding's data in words, the same in tables, on the page and in design.json. */
public final class FindingWords {
    private FindingWords() {}

    /** State, subjects, what of them and coordinates: {@code closed, blade 1 and blade 2, at (3, 4)}. */
    public static String where(Finding finding) {
        Finding.Place place = finding.place();
        List<String> words = new ArrayList<>();
        if (place.step() > 0) {
            words.add("step " + place.step());
        }
        words.add(place.label());
        words.add(String.join(" and ", finding.subjects()));
        words.add(place.detail());
        place.at().ifPresent(p -> words.add("at (" + Words.number(p.x(), 3) + ", " + Words.number(p.y(), 3) + ")"));
        words.removeIf(String::isEmpty);
        return PlainText.line(String.join(", ", words));
    }

    /** What was measured with its unit; {@code -} where nothing was. */
    public static String measured(Finding finding) {
        return Double.isNaN(finding.measured()) ? "-" : Figures.withUnit(finding.measured(), finding.unit());
    }

    /** Relation and limit: {@code at least 0.6 mm}; {@code -} where there is none. */
    public static String limit(Finding finding) {
        if (Double.isNaN(finding.limit())) {
            return "-";
        }
        String limit = Figures.withUnit(finding.limit(), finding.unit());
        return finding.relation() == Finding.Relation.NONE ? limit : finding.relation().label() + " " + limit;
    }

    /** Who judged, and to what tolerance: {@code calculated} or {@code on the outlines, to 2 µm}. */
    public static String judge(Finding finding) {
        if (finding.judge() == Finding.Judge.CALCULATED) {
            return "calculated";
        }
        boolean length = finding.unit().equals("mm") && finding.slack() > 0;
        return "on the outlines" + (length ? ", to " + Words.number(finding.slack() * 1000, 1) + " µm" : "");
    }
}
