package ringleaf.report;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.util.DefaultIndenter;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import com.fasterxml.jackson.core.util.Separators;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.Collection;
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

/**
 * design.json: everything resolved, for machines. Keys are stable; numbers have at most 12 significant digits and 9
 * decimals and no exponent; what was not measured is {@code null}.
 */
public final class DesignJson {
    private final JsonGenerator json;

    private DesignJson(JsonGenerator json) {
        this.json = json;
    }

    /** The file of a run that writes nothing else, UTF-8. */
    public static byte[] write(String version, String title, List<MechanismReport> mechanisms) {
        return write(version, title, mechanisms, List.of());
    }

    /**
     * The file, UTF-8.
     *
     * @param version of ringleaf
     * @param title of the spec
     * @param files all other files of the run, relative to the output folder
     */
    public static byte[] write(
            String version, String title, List<MechanismReport> mechanisms, Collection<String> files) {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream(16384);
        DefaultIndenter indenter = new DefaultIndenter("  ", "\n");
        Separators separators = Separators.createDefaultInstance()
                .withObjectFieldValueSpacing(Separators.Spacing.AFTER)
                .withObjectEmptySeparator("")
                .withArrayEmptySeparator("");
        DefaultPrettyPrinter printer = new DefaultPrettyPrinter(separators).withObjectIndenter(indenter);
        printer.indentArraysWith(indenter);
        try (JsonGenerator json = new JsonFactory().createGenerator(bytes)) {
            json.setPrettyPrinter(printer);
            new DesignJson(json).all(version, title, mechanisms, files);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        bytes.write('\n');
        return bytes.toByteArray();
    }

    private void all(String version, String title, List<MechanismReport> mechanisms, Collection<String> files)
            throws IOException {
        json.writeStartObject();
        text("ringleaf", version);
        text("title", title);
        text("units", "mm");
        json.writeObjectFieldStart("mechanisms");
        for (MechanismReport mechanism : mechanisms) {
            json.writeObjectFieldStart(PlainText.line(mechanism.design().name()));
            mechanism(mechanism);
            json.writeEndObject();
        }
        json.writeEndObject();
        lines("files", files);
        json.writeEndObject();
    }

    private void mechanism(MechanismReport report) throws IOException {
        Design design = report.design();
        text("kind", design.kind());
        json.writeObjectFieldStart("choices");
        for (Choice choice : design.choices()) {
            json.writeObjectFieldStart(choice.name());
            text("value", choice.value());
            origin(choice.origin(), choice.how());
            json.writeEndObject();
        }
        json.writeEndObject();
        json.writeObjectFieldStart("dimensions");
        for (Dimension dimension : design.dimensions()) {
            json.writeObjectFieldStart(dimension.name());
            number("value", dimension.value());
            text("unit", dimension.unit());
            origin(dimension.origin(), dimension.how());
            json.writeEndObject();
        }
        json.writeEndObject();
        json.writeArrayFieldStart("parts");
        for (Part part : design.parts()) {
            part(part, report.files().getOrDefault(part.name(), List.of()), report.kerfs().get(part.name()));
        }
        json.writeEndArray();
        fits(report.fits());
        findings(report.findings());
        json.writeObjectFieldStart("travel");
        for (Map.Entry<String, Double> figure : design.travel().entrySet()) {
            number(figure.getKey(), figure.getValue());
        }
        json.writeEndObject();
        lines("build-order", design.assembly() == null ? List.of() : design.assembly().buildOrder());
        lines("remedies", design.remedies());
    }

    private void fits(List<FitSize> fits) throws IOException {
        if (fits.isEmpty()) {
            return;
        }
        json.writeArrayFieldStart("fits");
        for (FitSize size : fits) {
            json.writeStartObject();
            text("name", size.joint().name());
            text("part", size.joint().part());
            text("shape", size.joint().shape().label());
            text("fit", size.joint().fit());
            json.writeNumberField("count", size.joint().count());
            number("nominal", size.joint().nominal());
            number("outline", size.joint().size());
            number("drawn", size.drawn());
            pair("expected", size.least(), size.most());
            pair("play", size.leastPlay(), size.mostPlay());
            text("unit", "mm");
            text("how", size.how());
            json.writeEndObject();
        }
        json.writeEndArray();
    }

    private void part(Part part, List<String> files, Double kerf) throws IOException {
        json.writeStartObject();
        text("name", part.name());
        text("family", part.family());
        json.writeNumberField("quantity", part.quantity());
        json.writeArrayFieldStart("files");
        for (String file : files) {
            json.writeString(file);
        }
        json.writeEndArray();
        text("process", part.source().process());
        text("stock", part.source().stock());
        json.writeArrayFieldStart("layers");
        for (Layer layer : part.layers()) {
            json.writeStartObject();
            pair("z", layer.zFrom(), layer.zTo());
            json.writeEndObject();
        }
        json.writeEndArray();
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
        json.writeEndObject();
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

    private void findings(List<Finding> findings) throws IOException {
        json.writeArrayFieldStart("findings");
        for (Finding finding : findings) {
            json.writeStartObject();
            text("check", finding.check());
            text("status", finding.status().label());
            number("measured", finding.measured());
            number("limit", finding.limit());
            text("unit", finding.unit());
            text("where", finding.where());
            text("message", finding.message());
            json.writeEndObject();
        }
        json.writeEndArray();
    }

    private void origin(Dimension.Origin origin, String how) throws IOException {
        text("from", origin.label());
        if (!how.isEmpty()) {
            text("how", how);
        }
    }

    private void lines(String key, Collection<String> lines) throws IOException {
        if (lines.isEmpty()) {
            return;
        }
        json.writeArrayFieldStart(key);
        for (String line : lines) {
            json.writeString(PlainText.line(line));
        }
        json.writeEndArray();
    }

    private void text(String key, String value) throws IOException {
        json.writeStringField(key, PlainText.line(value));
    }

    private void number(String key, double value) throws IOException {
        json.writeFieldName(key);
        number(value);
    }

    private void pair(String key, double first, double second) throws IOException {
        json.writeFieldName(key);
        json.writeRawValue("[" + Figures.full(first, "null") + ", " + Figures.full(second, "null") + "]");
    }

    private void number(double value) throws IOException {
        // "null" for what is no finite number, which JSON cannot say.
        json.writeNumber(Figures.full(value, "null"));
    }
}
