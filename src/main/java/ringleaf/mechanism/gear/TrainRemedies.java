package ringleaf.mechanism.gear;

import java.util.ArrayList;
import java.util.List;
import ringleaf.part.Finding;
import ringleaf.part.Words;

/** What would fit when something does not: the nearest changes, each tried by solving it. */
final class TrainRemedies {
    private final TrainDesign design;
    private final List<Finding> findings;

    TrainRemedies(TrainDesign design, List<Finding> findings) {
        this.design = design;
        this.findings = findings;
    }

    /** A line a remedy; none when nothing fails. */
    List<String> lines() {
        List<String> lines = new ArrayList<>();
        TrainSpec spec = design.spec();
        if (failed("within")) {
            double length = TrainChecks.length(design);
            lines.add("within: " + Words.mm(Math.ceil(100 * length) / 100) + " would fit these teeth");
        }
        if (failed("centre-distance")) {
            double distance = design.stages().get(0).mesh().centreDistance();
            lines.add("centre-distance: " + Words.mm(distance) + " would fit these teeth");
        }
        if (failed("within") || failed("centre-distance")) {
            if (spec.given().contains("module")) {
                lines.add("a smaller module, or none given, would be fitted to the room");
            }
        }
        if (failed("bending")) {
            double worst = worst("bending");
            lines.add("width: " + Words.mm(Math.ceil(10 * spec.width() * worst) / 10)
                    + " would carry the load; so would a larger module or a stronger stock");
        }
        if (failed("mesh-at-stops")) {
            lines.add("sector.teeth: left out, the sector is cut for the travel");
        }
        if (failed("interference") || failed("involute-interference")) {
            lines.add("tips: shortened would clear the interference");
        }
        return lines;
    }

    private boolean failed(String check) {
        return !Double.isNaN(worst(check));
    }

    private double worst(String check) {
        double worst = Double.NaN;
        for (Finding finding : findings) {
            if (finding.failed() && finding.check().equals(check)) {
                worst = Double.isNaN(worst) ? finding.measured() : Math.max(worst, finding.measured());
            }
        }
        return worst;
    }
}
