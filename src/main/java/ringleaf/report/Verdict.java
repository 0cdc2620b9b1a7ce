// SPDX-License-Identifier: Apache-2.0
package ringleaf.report;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import ringleaf.part.Finding;
import ringleaf.part.ShownUnit;

/** Whether a design may be cut, with the reason in a sentence. */
public final class Verdict {
    private final List<Finding> findings;
    private final ShownUnit unit;

    private Verdict(List<Finding> findings, ShownUnit unit) {
        this.findings = findings;
        this.unit = unit;
    }

    public static Verdict of(List<Finding> findings, ShownUnit unit) {
        return new Verdict(List.copyOf(findings), unit);
    }

    /** The worst of all. */
    public Finding.Status worst() {
        Finding.Status worst = Finding.Status.PASS;
        for (Finding finding : findings) {
            worst = finding.status().compareTo(worst) > 0 ? finding.status() : worst;
        }
        return worst;
    }

    public boolean failed() {
        return worst() == Finding.Status.FAIL;
    }

    int count(Finding.Status status) {
        return (int) findings.stream().filter(one -> one.status() == status).count();
    }

    /** What has this status, that which misses its limit by the largest share of it first. */
    public List<Finding> with(Finding.Status status) {
        List<Finding> all = new ArrayList<>(
                findings.stream().filter(one -> one.status() == status).toList());
        if (status != Finding.Status.PASS) {
            all.sort((a, b) -> Double.compare(missed(b), missed(a)));
        }
        return all;
    }

    private static double missed(Finding finding) {
        double missed = Math.abs(finding.measured() - finding.limit()) / Math.abs(finding.limit());
        // The same thing measured by two judges differs in its last bits.
        return Double.isNaN(missed) ? Double.POSITIVE_INFINITY : Math.rint(missed * 1e6);
    }

    /**
     * Why: of what fails the worst, and the names of the rest; else how many checks hold, and the names of those that
     * warn. Without a capital and a full stop.
     */
    public String reason() {
        if (failed()) {
            List<Finding> broken = with(Finding.Status.FAIL);
            Set<String> others = names(broken);
            others.remove(broken.get(0).check());
            return FindingWords.clause(broken.get(0), unit)
                    + (others.isEmpty()
                            ? ""
                            : "; " + listed(others) + (others.size() == 1 ? " fails too" : " fail too"));
        }
        int passed = count(Finding.Status.PASS);
        String held = worst() == Finding.Status.PASS
                ? "all " + passed + " checks hold"
                : passed + (passed == 1 ? " check holds" : " checks hold");
        Set<String> warned = names(with(Finding.Status.WARN));
        return held + (warned.isEmpty() ? "" : "; mind " + listed(warned));
    }

    private static Set<String> names(List<Finding> findings) {
        Set<String> names = new LinkedHashSet<>();
        for (Finding finding : findings) {
            names.add(finding.check());
        }
        return names;
    }

    private static String listed(Set<String> names) {
        List<String> all = List.copyOf(names);
        int last = all.size() - 1;
        return last == 0 ? all.get(0) : String.join(", ", all.subList(0, last)) + " and " + all.get(last);
    }
}
