// SPDX-License-Identifier: Apache-2.0
package ringleaf.report.page;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import ringleaf.draw.view.MovingView;
import ringleaf.geom.Box;
import ringleaf.part.Part;
import ringleaf.part.ShownUnit;
import ringleaf.report.MechanismReport;
import ringleaf.report.StandWords;

/**
 * report.html: one file that needs nothing but itself, from a disk or from a server. Its frame, style and script are
 * resources; markers {@code <!--name-->} in the frame are where the run's own text goes. The page allows itself one
 * script, by the digest that stands in the frame, and no connection to anywhere.
 */
public final class ReportPage {
    /** File name at the top of the output folder. */
    public static final String FILE = "report.html";

    /**
     * What the page is about.
     *
     * @param version of ringleaf
     * @param title of the spec
     * @param unit in which lengths are told
     */
    public record About(String version, String title, ShownUnit unit) {}

    /**
     * What a live preview adds to the page.
     *
     * @param script a small program, run after the page's own; it finds the element {@code banner} (role alert, hidden
     *     and empty) for what is wrong with the spec, and {@code window.ringleaf.show(text)}, which puts a newer page
     *     in place of this one and keeps drive, layers and scroll position
     * @param digest of the script's text, as it stands in a content security policy: {@code sha256-...}
     */
    public record Live(String script, String digest) {}

    private final StringBuilder out = new StringBuilder(1 << 18);

    private ReportPage() {}

    /**
     * The page, UTF-8.
     *
     * @param pages one a mechanism
     * @param reports of the same mechanisms, in the same order, with their findings
     * @param cautions a line each
     * @param live for a preview; absent in a file
     */
    public static byte[] write(
            About about,
            List<MechanismPage> pages,
            List<MechanismReport> reports,
            List<String> cautions,
            Optional<Live> live) {
        ReportPage page = new ReportPage();
        String frame = resource("page.html");
        int at = 0;
        for (int open = frame.indexOf("<!--"); open >= 0; open = frame.indexOf("<!--", at)) {
            int close = frame.indexOf("-->", open);
            page.out.append(frame, at, open);
            String name = frame.substring(open + 4, close);
            switch (name) {
                case "title" -> PageText.html(page.out, about.title());
                case "version" -> PageText.html(page.out, about.version());
                case "unit" -> PageText.html(page.out, about.unit().spelling());
                case "live-digest" ->
                    page.out.append(live.isPresent() ? " '" + live.get().digest() + "'" : "");
                case "live-connect" -> page.out.append(live.isPresent() ? "; connect-src 'self'" : "");
                case "live-script" ->
                    page.out.append(live.isPresent() ? "<script>" + live.get().script() + "</script>" : "");
                case "style" -> page.out.append(resource("page.css"));
                case "colours" -> page.colours(pages);
                case "script" -> page.out.append(resource("page.js"));
                case "contents" -> page.contents(pages);
                case "mechanisms" -> page.mechanisms(pages, reports);
                case "cautions" -> page.cautions(cautions);
                case "data" -> page.data(pages);
                default -> throw new IllegalStateException("page.html has an unknown marker " + name);
            }
            at = close + 3;
        }
        page.out.append(frame, at, frame.length());
        return page.out.toString().getBytes(StandardCharsets.UTF_8);
    }

    private static String resource(String name) {
        try (InputStream in = ReportPage.class.getResourceAsStream("/ringleaf/report/" + name)) {
            if (in == null) {
                throw new IllegalStateException(name + " is missing from the jar");
            }
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Colours of the parts; on dark paper the outline takes the tint of the face. */
    private void colours(List<MechanismPage> pages) {
        for (MechanismPage page : pages) {
            for (int i = 0; i < page.view().parts().size(); i++) {
                MovingView.Tints tints = page.view().tints(i);
                out.append('#')
                        .append(page.id())
                        .append(" .p")
                        .append(i)
                        .append("{--f:")
                        .append(tints.fill());
                out.append(";--g:").append(tints.second()).append(";--h:").append(tints.third());
                out.append(";--l:")
                        .append(tints.line())
                        .append(";--s:")
                        .append(tints.side())
                        .append("}\n");
            }
        }
    }

    private void contents(List<MechanismPage> pages) {
        if (pages.size() < 2) {
            return;
        }
        out.append("<nav aria-label=\"Mechanisms\"><ul>");
        for (MechanismPage page : pages) {
            out.append("<li><a href=\"#").append(page.id()).append("\">");
            PageText.html(out, page.design().name()).append("</a></li>");
        }
        out.append("</ul></nav>\n");
    }

    private void mechanisms(List<MechanismPage> pages, List<MechanismReport> reports) {
        for (int i = 0; i < pages.size(); i++) {
            mechanism(pages.get(i), reports.get(i));
        }
    }

    private void mechanism(MechanismPage page, MechanismReport report) {
        String id = page.id();
        out.append("<section class=\"mechanism\" id=\"")
                .append(id)
                .append("\" aria-labelledby=\"")
                .append(id);
        out.append("-name\">\n<h2 id=\"").append(id).append("-name\">");
        PageText.html(out, page.design().name()).append(" <small>");
        PageText.html(out, page.design().kind()).append("</small></h2>\n");
        report.stand().ifPresent(stand -> {
            out.append("<p class=\"stand\">Stands ");
            PageText.html(out, StandWords.of(stand, page.unit())).append(".</p>\n");
        });
        PageFindings findings = new PageFindings(out, report.findings(), page);
        PageTables tables = new PageTables(out, page, report);
        findings.verdict();
        tables.headline();
        Box box = page.view().box();
        out.append("<div class=\"stage\">\n<div class=\"frame\" data-width=\"");
        PageText.number(out, box.width(), 3).append("\">").append(page.picture());
        out.append("\n<div class=\"scale\" aria-hidden=\"true\"></div></div>\n<div class=\"panel\">\n");
        layers(page);
        out.append("</div>\n</div>\n");
        findings.tables(id, page.design().remedies());
        out.append("<section class=\"charts\" aria-labelledby=\"").append(id).append("-charts\">\n<h3 id=\"");
        out.append(id).append("-charts\">Over the travel</h3>\n");
        tables.travel();
        out.append("<div class=\"plots\"></div>\n</section>\n");
        tables.sizes();
        tables.parts();
        tables.build();
        out.append("</section>\n");
    }

    /** The list of layers, which is the picture's legend too. */
    private void layers(MechanismPage page) {
        out.append("<fieldset class=\"layers\"><legend>Layers</legend>\n");
        for (int i : page.view().fromTheTop()) {
            Part part = page.view().parts().get(i);
            out.append("<label data-part=\"").append(i).append("\"><input type=\"checkbox\" checked>");
            out.append("<span class=\"swatch p").append(i).append("\" aria-hidden=\"true\"></span> ");
            PageText.html(out.append(part.quantity()).append(" &#215; "), part.name())
                    .append("</label>\n");
        }
        out.append("</fieldset>\n");
    }

    private void cautions(List<String> cautions) {
        for (String caution : cautions) {
            PageText.html(out.append("<li>"), caution).append("</li>\n");
        }
    }

    private void data(List<MechanismPage> pages) {
        out.append('[');
        for (int i = 0; i < pages.size(); i++) {
            out.append(i == 0 ? "" : ",\n").append(pages.get(i).data());
        }
        out.append(']');
    }
}
