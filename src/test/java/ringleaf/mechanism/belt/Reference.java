// SPDX-License-Identifier: Apache-2.0
package ringleaf.mechanism.belt;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;

/** Rows of a file of reference values: a line with its source, a line of names, then the rows. */
final class Reference {
    private Reference() {}

    static List<String[]> rows(String name) {
        List<String[]> rows = new ArrayList<>();
        try (BufferedReader in = new BufferedReader(new InputStreamReader(
                Reference.class.getResourceAsStream("/reference/" + name), StandardCharsets.UTF_8))) {
            if (!in.readLine().startsWith("# ")) {
                throw new IllegalStateException(name + " names no source");
            }
            in.readLine();
            for (String line = in.readLine(); line != null; line = in.readLine()) {
                rows.add(line.split(","));
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        if (rows.isEmpty()) {
            throw new IllegalStateException(name + " is empty");
        }
        return rows;
    }

    static double number(String[] row, int column) {
        return Double.parseDouble(row[column]);
    }
}
