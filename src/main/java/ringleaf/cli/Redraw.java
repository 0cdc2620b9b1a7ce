// SPDX-License-Identifier: Apache-2.0
package ringleaf.cli;

import java.io.InputStream;
import java.io.OutputStream;
import java.io.PrintStream;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import ringleaf.part.Design;
import ringleaf.part.Finding;
import ringleaf.part.ShownUnit;
import ringleaf.report.MechanismReport;
import ringleaf.report.Verdict;
import ringleaf.report.page.MechanismPage;
import ringleaf.report.page.ReportPage;
import ringleaf.spec.text.SpecRefused;

/** Makes the page of a spec as it stands now, or says why there is none. */
final class Redraw {
    private static final PrintStream NOWHERE = new PrintStream(OutputStream.nullOutputStream());

    private final Asked asked;
    private final Surroundings surroundings;
    private final ReportPage.Live live;

    /**
     * What came of it.
     *
     * @param page the whole page, null where the spec could not be drawn
     * @param problem what is wrong, lines as they stand in a terminal; empty when nothing is
     * @param verdict whether it may be cut, and why; empty where there is no page
     */
    record Result(byte[] page, String problem, String verdict) {}

    Redraw(Asked asked, Surroundings surroundings, ReportPage.Live live) {
        this.asked = asked;
        this.surroundings = surroundings;
        this.live = live;
    }

    /** Reads, designs and judges anew; whatever is wrong is said and never thrown. */
    Result now() {
        try {
            return drawn();
        } catch (SpecRefused | Stop e) {
            return new Result(null, e.getMessage().stripTrailing(), "");
        } catch (RuntimeException | StackOverflowError | OutOfMemoryError e) {
            return new Result(null, CommandRun.ownFault(e), "");
        }
    }

    private Result drawn() {
        Run run = Run.read(asked, surroundings, InputStream.nullInputStream());
        List<Design> designs = run.design();
        ShownUnit unit = Told.unit(run.document());
        List<Beside<MechanismPage>> drawn = new ArrayList<>();
        for (int i = 0; i < designs.size(); i++) {
            int number = i;
            drawn.add(Beside.start(() -> MechanismPage.of(number, designs.get(number), unit)));
        }
        List<Judged> all = run.judge(designs, run.prepare(designs), surroundings, NOWHERE);
        List<MechanismPage> pages = new ArrayList<>();
        List<MechanismReport> reports = new ArrayList<>();
        List<Finding> findings = new ArrayList<>();
        for (int i = 0; i < all.size(); i++) {
            pages.add(drawn.get(i).result());
            reports.add(new MechanismReport(
                    designs.get(i),
                    all.get(i).findings(),
                    Map.of(),
                    List.of(),
                    Map.of(),
                    run.stands(designs).get(i)));
            findings.addAll(all.get(i).findings());
        }
        List<String> cautions = Cautions.of(all, run.document().catalogues());
        byte[] page = ReportPage.write(
                new ReportPage.About(Version.text(), run.document().title(), unit),
                pages,
                reports,
                cautions,
                Optional.of(live));
        Verdict verdict = Verdict.of(findings, unit);
        String said = (verdict.failed() ? "FAIL, do not cut: " : "PASS: ") + verdict.reason();
        return new Result(page, "", said);
    }

    /** A page for a spec that could not be drawn so far; it shows the design as soon as there is one. */
    byte[] waiting() {
        return ReportPage.write(
                new ReportPage.About(Version.text(), asked.spec(), ShownUnit.MM),
                List.of(),
                List.of(),
                List.of(),
                Optional.of(live));
    }
}
