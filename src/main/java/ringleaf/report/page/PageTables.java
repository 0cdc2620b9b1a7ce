// SPDX-License-Identifier: Apache-2.0
package ringleaf.report.page;

import java.util.List;
import java.util.Map;
import ringleaf.draw.view.MovingView;
import ringleaf.geom.Box;
import ringleaf.part.Choice;
import ringleaf.part.Design;
import ringleaf.part.Dimension;
import ringleaf.part.FitSize;
import ringleaf.part.Part;
import ringleaf.part.ShownUnit;
import ringleaf.report.Headline;
import ringleaf.report.MechanismReport;

/** Sizes, parts and build order of a mechanism as markup. */
final class PageTables {
    private static final String HEAD = "<th scope=\"col\">";

    private final StringBuilder out;
    private final MechanismPage page;
    private final MechanismReport report;
    private final ShownUnit unit;

    PageTables(StringBuilder out, MechanismPage page, MechanismReport report) {
        this.out = out;
        this.page = page;
        this.report = report;
        this.unit = page.unit();
    }

    private Design design() {
        return page.design();
    }

    /** Resolved sizes and choices, each with how it was found. */
    void sizes() {
        begin("sizes", "Sizes, and how each was found");
        if (!design().dimensions().isEmpty()) {
            head("Size", "Value", "From", "How");
            for (Dimension size : design().dimensions()) {
                row(size.name(), unit.size(size), size.origin().label(), unit.text(size.how()));
            }
            foot();
        }
        if (!design().choices().isEmpty()) {
            out.append("<h4>Choices</h4>\n");
            head("Choice", "Taken", "From", "Why");
            for (Choice choice : design().choices()) {
                row(choice.name(), choice.value(), choice.origin().label(), unit.text(choice.how()));
            }
            foot();
        }
        fits(report.fits());
        end();
    }

    private void fits(List<FitSize> fits) {
        if (fits.isEmpty()) {
            return;
        }
        out.append("<h4>Fits</h4>\n");
        head("Feature", "Drawn", "Expected", "How");
        for (FitSize fit : fits) {
            // Fits are told a decimal finer than other lengths.
            String expected = fine(fit.least()) + " to " + fine(fit.most()) + ", play " + fine(fit.leastPlay()) + " to "
                    + fine(fit.mostPlay());
            String name = fit.joint().name() + " of " + fit.joint().part() + ", "
                    + fit.joint().fit();
            row(name, fine(fit.drawn()), expected, unit.text(fit.how()));
        }
        foot();
    }

    private String fine(double mm) {
        return unit.figure(mm, "mm", 1);
    }

    /** What a maker asks for first. */
    void headline() {
        List<Headline.Figure> figures = Headline.of(design(), unit);
        if (figures.isEmpty()) {
            return;
        }
        out.append("<dl class=\"headline\">");
        for (Headline.Figure figure : figures) {
            PageText.html(out.append("<div><dt>"), figure.name());
            PageText.html(out.append("</dt><dd>"), figure.value()).append("</dd></div>");
        }
        out.append("</dl>\n");
    }

    /** The parts list, with a picture of everything that has an outline. */
    void parts() {
        begin("parts", "Parts list");
        head("Part", "Picture", "Quantity", "Made of", "Size, " + unit.spelling(), "Note and files");
        for (Part part : design().parts()) {
            part(part);
        }
        foot();
        end();
    }

    private void part(Part part) {
        int index = index(part.name());
        out.append("<tr")
                .append(index < 0 ? "" : " data-part=\"" + index + "\"")
                .append("><th scope=\"row\">");
        if (index >= 0) {
            out.append("<button type=\"button\" class=\"name\" aria-pressed=\"false\">");
        }
        PageText.html(out, part.name()).append(index < 0 ? "" : "</button>").append("</th><td class=\"thumb\">");
        if (index >= 0) {
            thumb(index);
        }
        out.append("</td><td class=\"figure\" data-l=\"quantity\">")
                .append(part.quantityWords())
                .append("</td><td>");
        PageText.html(out, part.source().process());
        PageText.html(
                out.append(part.source().stock().isEmpty() ? "" : ", "),
                part.source().stock());
        out.append("</td><td>");
        PageText.html(out, part.isDrawn() ? size(part) : "").append("</td><td>");
        PageText.html(out, unit.text(part.note()));
        for (String file : report.files().getOrDefault(part.name(), List.of())) {
            PageText.html(out.append(" <a href=\""), file).append("\">");
            PageText.html(out, file.substring(file.lastIndexOf('.') + 1)).append("</a>");
        }
        out.append("</td></tr>\n");
    }

    private String size(Part part) {
        Box box = part.box();
        return unit.number(box.width()) + " x " + unit.number(box.height()) + " x "
                + unit.number(part.zTo() - part.zFrom());
    }

    private void thumb(int index) {
        Box box = page.view().parts().get(index).box();
        out.append("<svg class=\"thumb\" aria-hidden=\"true\" viewBox=\"");
        out.append(MechanismPage.viewBox(box, 0.03)).append("\">");
        List<MovingView.Sheaf> sheaves = page.view().sheaves();
        for (int i = 0; i < sheaves.size(); i++) {
            if (sheaves.get(i).part() == index) {
                out.append("<use class=\"p")
                        .append(index)
                        .append(" solid\" href=\"#")
                        .append(page.id());
                out.append("-o").append(i).append("\"/>");
            }
        }
        out.append("</svg>");
    }

    /** The build order, where there is one. */
    void build() {
        if (!design().assembly().steps().isEmpty()) {
            begin("build", "Build order");
            new PageSteps(out, design().assembly(), report.findings(), unit).list();
            end();
        }
    }

    /** Figures of the whole travel. */
    void travel() {
        if (design().travel().isEmpty()) {
            return;
        }
        out.append("<p class=\"travel\">Travel: ");
        boolean begun = false;
        for (Map.Entry<String, Double> figure : design().travel().entrySet()) {
            PageText.html(out.append(begun ? ", " : ""), figure.getKey()).append(' ');
            PageText.html(out, unit.figure(figure.getValue(), unitOf(figure.getKey())));
            begun = true;
        }
        out.append("</p>\n");
    }

    /** Unit of a figure of the travel: mm where the table follows it in a column of lengths, else degrees. */
    private String unitOf(String figure) {
        if (figure.equals("states")) {
            return "1";
        }
        List<String> columns = design().motion().columns();
        return columns.contains(figure + "_mm") || columns.contains(figure + "_travel") ? "mm" : "deg";
    }

    private int index(String part) {
        for (int i = 0; i < page.view().parts().size(); i++) {
            if (page.view().parts().get(i).name().equals(part)) {
                return i;
            }
        }
        return -1;
    }

    private void begin(String name, String title) {
        out.append("<section class=\"")
                .append(name)
                .append("\" aria-labelledby=\"")
                .append(page.id())
                .append('-');
        out.append(name)
                .append("\">\n<h3 id=\"")
                .append(page.id())
                .append('-')
                .append(name)
                .append("\">");
        out.append(title).append("</h3>\n");
    }

    private void end() {
        out.append("</section>\n");
    }

    private void head(String... columns) {
        out.append("<div class=\"scroll\" tabindex=\"0\" role=\"region\" aria-label=\"")
                .append(columns[0]);
        out.append(" table\"><table>\n<thead><tr>");
        for (String column : columns) {
            out.append(HEAD).append(column).append("</th>");
        }
        out.append("</tr></thead>\n<tbody>\n");
    }

    private void foot() {
        out.append("</tbody></table></div>\n");
    }

    private void row(String name, String value, String from, String how) {
        PageText.html(out.append("<tr><th scope=\"row\">"), name).append("</th><td class=\"figure\">");
        PageText.html(out, value).append("</td><td>");
        PageText.html(out, from).append("</td><td>");
        PageText.html(out, how).append("</td></tr>\n");
    }
}
