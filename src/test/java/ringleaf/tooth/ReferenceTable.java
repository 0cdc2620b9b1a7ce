// SPDX-License-Identifier: Apache-2.0
package ringleaf.tooth;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;

/** Rows of numbers from a file of reference values: a line with its source, a line of names, then the rows. */
final class ReferenceTable {
    private ReferenceTable() {}

    static List<double[]> rows(String name) {
        List<double[]> rows = new ArrayList<>();
        try (BufferedReader in = new BufferedReader(new InputStreamReader(
                ReferenceTable.class.getResourceAsStream("/reference/" + name), StandardCharsets.UTF_8))) {
            if (!in.readLine().startsWith("# ")) {
                throw new IllegalStateException(name + " names no source");
            }
            int columns = in.readLine().split(",").length;
            for (String line = in.readLine(); line != null; line = in.readLine()) {
                String[] cells = line.split(",");
                double[] row = new double[columns];
                for (int i = 0; i < columns; i++) {
                    row[i] = Double.parseDouble(cells[i]);
                }
                rows.add(row);
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        if (rows.isEmpty()) {
            throw new IllegalStateException(name + " is empty");
        }
        return rows;
    }
}
