// SPDX-License-Identifier: Apache-2.0
package ringleaf.report;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.util.DefaultIndenter;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import com.fasterxml.jackson.core.util.Separators;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;

/** JSON text under construction (RFC 8259), an item a line, indented by two blanks. Who calls it keeps to the grammar. */
final class JsonText {
    private final StringWriter out = new StringWriter();
    private final JsonGenerator json;

    JsonText() {
        DefaultIndenter lines = new DefaultIndenter("  ", "\n");
        DefaultPrettyPrinter printer = new DefaultPrettyPrinter(Separators.createDefaultInstance()
                .withObjectFieldValueSpacing(Separators.Spacing.AFTER)
                .withObjectEmptySeparator("")
                .withArrayEmptySeparator(""));
        printer.indentObjectsWith(lines);
        printer.indentArraysWith(lines);
        try {
            json = new JsonFactory().createGenerator(out).setPrettyPrinter(printer);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private interface Writing {
        void run() throws IOException;
    }

    JsonText beginObject() {
        return done(json::writeStartObject);
    }

    JsonText endObject() {
        return done(json::writeEndObject);
    }

    JsonText beginArray() {
        return done(json::writeStartArray);
    }

    JsonText endArray() {
        return done(json::writeEndArray);
    }

    JsonText name(String name) {
        return done(() -> json.writeFieldName(name));
    }

    JsonText text(String value) {
        return done(() -> json.writeString(value));
    }

    /** What is JSON already: a number, null, or a short array in one line. */
    JsonText raw(String value) {
        return done(() -> json.writeRawValue(value));
    }

    /** The file, UTF-8, with a line's end at its end. */
    byte[] toBytes() {
        done(json::close);
        return out.append('\n').toString().getBytes(StandardCharsets.UTF_8);
    }

    private JsonText done(Writing writing) {
        try {
            writing.run();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return this;
    }
}
