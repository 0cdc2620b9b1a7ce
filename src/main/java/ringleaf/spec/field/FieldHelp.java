// SPDX-License-Identifier: Apache-2.0
package ringleaf.spec.field;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/** Writes what a set of fields takes: a table for a terminal, and a page for a document. */
public final class FieldHelp {
    private FieldHelp() {}

    private record Row(String path, Field<?> field) {}

    /** A table in plain text: every field with its line of help, its values and its default. */
    public static String text(FieldSet fields) {
        List<Row> rows = rows(fields, "");
        int width = 0;
        for (Row row : rows) {
            width = Math.max(width, row.path.length());
        }
        StringBuilder out = new StringBuilder();
        String indent = " ".repeat(width + 4);
        for (Row row : rows) {
            Field<?> field = row.field;
            out.append("  ").append(row.path).append(" ".repeat(width - row.path.length() + 2));
            out.append(field.help()).append('\n');
            out.append(indent).append(values(field));
            String left = left(field);
            out.append(left.isEmpty() ? "" : "; " + left).append('\n');
            for (Map.Entry<String, String> option : field.type().options().entrySet()) {
                out.append(indent).append("  ").append(option.getKey()).append(": ");
                out.append(option.getValue()).append('\n');
            }
        }
        return out.toString();
    }

    /** The page of defaults: a table in Markdown, a row for each field. */
    public static String markdown(FieldSet fields) {
        StringBuilder out = new StringBuilder("| field | what it is | takes | when left out |\n|---|---|---|---|\n");
        for (Row row : rows(fields, "")) {
            Field<?> field = row.field;
            String reasons = field.reasons().isEmpty() ? "" : " (" + field.reasons() + ")";
            out.append("| `").append(row.path).append("` | ");
            out.append(cell(field.help())).append(" | ");
            out.append(cell(values(field) + reasons)).append(" | ");
            out.append(cell(field.isRequired() ? "must be given" : field.defaultText()))
                    .append(" |\n");
        }
        return out.toString();
    }

    private static List<Row> rows(FieldSet fields, String prefix) {
        List<Row> rows = new ArrayList<>();
        for (Field<?> field : fields.fields()) {
            rows.add(new Row(prefix + field.name(), field));
            FieldSet inner = field.type().inner();
            if (inner != null) {
                rows.addAll(rows(inner, prefix + field.name() + '.'));
            }
        }
        return rows;
    }

    private static String values(Field<?> field) {
        return field.limits().isEmpty() ? field.takes() : field.takes() + ", " + field.limits();
    }

    private static String left(Field<?> field) {
        if (field.isRequired()) {
            return "must be given";
        }
        return field.defaultText().isEmpty() ? "" : "default: " + field.defaultText();
    }

    /** A bar ends a cell in Markdown, and a mark opens HTML. */
    private static String cell(String text) {
        return text.replace("|", "\\|").replace("<", "&lt;");
    }
}
