// SPDX-License-Identifier: Apache-2.0
package ringleaf.report;

import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.Collection;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;
import ringleaf.draw.PlainText;
import ringleaf.geom.Box;
import ringleaf.geom.Region;
import ringleaf.part.Choice;
import ringleaf.part.Design;
import ringleaf.part.Dimension;
import ringleaf.part.Finding;
import ringleaf.part.FitSize;
import ringleaf.part.Layer;
import ringleaf.part.Part;
import ringleaf.part.Saying;
import ringleaf.part.ShownUnit;
import ringleaf.part.Stand;
import ringleaf.space.Vector;

/**
 * design.json: everything resolved, for machines. Keys are stable; numbers have at most 12 significant digits and 9
 * decimals and no exponent; what was not measured is {@code null}.
 */
public final class DesignJson {
    private final JsonText json;

    private DesignJson(JsonText json) {
        this.json = json;
    }

    /**
     * The file, UTF-8.
     *
     * @param version of ringleaf
     * @param title of the spec
     * @param cautions a line each
     * @param files all other files of the run by their paths within the output folder
     */
    public static byte[] write(
            String version,
            String title,
            List<MechanismReport> mechanisms,
            List<String> cautions,
            Map<String, byte[]> files) {
        JsonText json = new JsonText();
        new DesignJson(json).all(version, title, mechanisms, cautions, files);
        return json.toBytes();
    }

    private void all(
            String version,
            String title,
            List<MechanismReport> mechanisms,
            List<String> cautions,
            Map<String, byte[]> files) {
        json.beginObject();
        text("ringleaf", version);
        text("title", title);
        text("units", "mm");
        json.name("mechanisms").beginObject();
        for (MechanismReport mechanism : mechanisms) {
            json.name(PlainText.line(mechanism.design().name())).beginObject();
            mechanism(mechanism);
            json.endObject();
        }
        json.endObject();
        lines("cautions", cautions);
        lines("files", files.keySet());
        digests(files);
        json.endObject();
    }

    /** What tells whether the files beside this one are those of the same run. */
    private void digests(Map<String, byte[]> files) {
        if (files.isEmpty()) {
            return;
        }
        json.name("digests").beginObject();
        for (Map.Entry<String, byte[]> file : files.entrySet()) {
            text(file.getKey(), digest(file.getValue()));
        }
        json.endObject();
    }

    /** SHA-256 of a file's bytes as hexadecimal digits, the digest that is listed for it. */
    public static String digest(byte[] bytes) {
        try {
            return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(bytes));
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java platform has SHA-256", e);
        }
    }

    private void mechanism(MechanismReport report) {
        Design design = report.design();
        text("kind", design.kind());
        report.stand().ifPresent(this::stand);
        json.name("choices").beginObject();
        for (Choice choice : design.choices()) {
            json.name(choice.name()).beginObject();
            text("value", choice.value());
            origin(choice.origin(), choice.how());
            json.endObject();
        }
        json.endObject();
        json.name("dimensions").beginObject();
        for (Dimension dimension : design.dimensions()) {
            json.name(dimension.name()).beginObject();
            number("value", dimension.value());
            text("unit", dimension.unit());
            origin(dimension.origin(), dimension.how());
            json.endObject();
        }
        json.endObject();
        json.name("parts").beginArray();
        for (Part part : design.parts()) {
            part(
                    part,
                    report.files().getOrDefault(part.name(), List.of()),
                    report.kerfs().get(part.name()));
        }
        json.endArray();
        fits(report.fits());
        findings(report.findings());
        json.name("travel").beginObject();
        for (Map.Entry<String, Double> figure : design.travel().entrySet()) {
            number(figure.getKey(), figure.getValue());
        }
        json.endObject();
        lines(
                "build-order",
                design.assembly() == null ? List.of() : design.assembly().buildOrder());
        lines("remedies", design.remedies());
        decisions(design.decisions());
    }

    /** What the spec left open and whose first guess did not work; nothing where all first guesses hold. */
    private void decisions(List<Choice> taken) {
        if (taken.isEmpty()) {
            return;
        }
        json.name("decisions").beginArray();
        for (Choice each : taken) {
            json.beginObject();
            text("field", each.name());
            text("value", each.value());
            text("how", each.how());
            json.endObject();
        }
        json.endArray();
    }

    /** Where its origin is, and where its axes point, in the carrier's frame. */
    private void stand(Stand stand) {
        json.name("place").beginObject();
        text("on", stand.carrier());
        vector("at", stand.pose().shift());
        vector("x", stand.pose().turn().apply(Vector.X));
        vector("y", stand.pose().turn().apply(Vector.Y));
        vector("z", stand.pose().turn().apply(Vector.Z));
        json.endObject();
    }

    private void vector(String key, Vector v) {
        json.name(key).beginArray();
        number(v.x());
        number(v.y());
        number(v.z());
        json.endArray();
    }

    private void fits(List<FitSize> fits) {
        if (fits.isEmpty()) {
            return;
        }
        json.name("fits").beginArray();
        for (FitSize size : fits) {
            json.beginObject();
            text("name", size.joint().name());
            text("part", size.joint().part());
            text("shape", size.joint().shape().label());
            text("fit", size.joint().fit());
            json.name("count").raw(Integer.toString(size.joint().count()));
            number("nominal", size.joint().nominal());
            number("outline", size.joint().size());
            number("drawn", size.drawn());
            pair("expected", size.least(), size.most());
            pair("play", size.leastPlay(), size.mostPlay());
            text("unit", "mm");
            text("how", size.how());
            json.endObject();
        }
        json.endArray();
    }

    private void part(Part part, List<String> files, Double kerf) {
        json.beginObject();
        text("name", part.name());
        text("family", part.family().label());
        json.name("quantity").raw(Integer.toString(part.quantity()));
        json.name("spares").raw(Integer.toString(part.pieces().spares()));
        json.name("pieces").raw(Integer.toString(part.pieceCount()));
        json.name("files").beginArray();
        for (String file : files) {
            json.text(file);
        }
        json.endArray();
        text("process", part.source().process());
        text("stock", part.source().stock());
        json.name("layers").beginArray();
        for (Layer layer : part.layers()) {
            json.beginObject();
            pair("z", layer.zFrom(), layer.zTo());
            json.endObject();
        }
        json.endArray();
        if (!part.layers().isEmpty()) {
            Layer widest = widest(part);
            double perimeter = 0;
            for (Region region : widest.regions()) {
                perimeter += region.perimeter();
            }
            number("area", area(widest));
            number("perimeter", perimeter);
            Box box = part.box();
            pair("box", box.width(), box.height());
        }
        if (kerf != null) {
            number("kerf", kerf);
        }
        if (!part.note().isEmpty()) {
            text("note", part.note());
        }
        json.endObject();
    }

    /** The layer that is the part's outline as cut: the one with the most material; the others are steps on it. */
    private static Layer widest(Part part) {
        Layer widest = part.layers().get(0);
        for (Layer layer : part.layers()) {
            if (area(layer) > area(widest)) {
                widest = layer;
            }
        }
        return widest;
    }

    private static double area(Layer layer) {
        double area = 0;
        for (Region region : layer.regions()) {
            area += region.area();
        }
        return area;
    }

    private void findings(List<Finding> findings) {
        json.name("findings").beginArray();
        for (Finding finding : findings) {
            json.beginObject();
            text("check", finding.check());
            text("status", finding.status().label());
            number("measured", finding.measured());
            number("limit", finding.limit());
            text("unit", finding.unit());
            text("relation", finding.relation().label());
            text("judge", finding.judge().label());
            number("slack", finding.slack());
            subjects(finding.subjects());
            place(finding.place());
            text("where", FindingWords.where(finding));
            text("message", FindingWords.message(finding, ShownUnit.MM));
            if (!finding.message().key().equals(Saying.PLAIN)) {
                json.name("says");
                SayingJson.write(json, finding.message());
            }
            json.endObject();
        }
        json.endArray();
    }

    private void subjects(List<String> subjects) {
        json.name("subjects").beginArray();
        for (String subject : subjects) {
            json.text(PlainText.line(subject));
        }
        json.endArray();
    }

    private void place(Finding.Place place) {
        if (place.state() >= 0) {
            json.name("state").raw(Integer.toString(place.state()));
        }
        if (place.step() > 0) {
            json.name("step").raw(Integer.toString(place.step()));
        }
        place.at().ifPresent(p -> pair("at", p.x(), p.y()));
    }

    private void origin(Dimension.Origin origin, String how) {
        text("from", origin.label());
        if (!how.isEmpty()) {
            text("how", how);
        }
    }

    private void lines(String key, Collection<String> lines) {
        if (lines.isEmpty()) {
            return;
        }
        json.name(key).beginArray();
        for (String line : lines) {
            json.text(PlainText.line(line));
        }
        json.endArray();
    }

    private void text(String key, String value) {
        json.name(key).text(PlainText.line(value));
    }

    private void number(String key, double value) {
        json.name(key).raw(Figures.full(value, "null"));
    }

    private void pair(String key, double first, double second) {
        json.name(key).raw("[" + Figures.full(first, "null") + ", " + Figures.full(second, "null") + "]");
    }

    private void number(double value) {
        // "null" for what is no finite number, which JSON cannot say.
        json.raw(Figures.full(value, "null"));
    }
}
