// SPDX-License-Identifier: Apache-2.0
package ringleaf.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.zip.ZipFile;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Tables, notes, sheets and plates say the same of how many pieces are made. */
class BillTest {
    @TempDir
    Path folder;

    private List<Map<String, String>> rows(String csv) throws IOException {
        List<String> lines = Files.readAllLines(folder.resolve("o").resolve(csv));
        String[] head = lines.get(0).split(",");
        List<Map<String, String>> rows = new ArrayList<>();
        for (String line : lines.subList(1, lines.size())) {
            String[] cells = line.split(",(?=(?:[^\"]*\"[^\"]*\")*[^\"]*$)", -1);
            Map<String, String> row = new TreeMap<>();
            for (int i = 0; i < head.length; i++) {
                row.put(head[i], cells[i]);
            }
            rows.add(row);
        }
        return rows;
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "lens-turntable-gears",
                "harbour-light",
                "semaphore-arm-belt",
                "instrument-plate",
                "lamp-carriage-rack",
                "lens-slide"
            })
    void piecesInTheTableAreThoseOnTheSheets(String preset) throws IOException {
        Ran ran = Ran.in(
                folder,
                "make",
                preset,
                "-o",
                "o",
                "--set",
                "fabrication.spares=20%",
                "--set",
                "fabrication.sheet.width=600",
                "--set",
                "fabrication.sheet.height=400",
                "--set",
                "fabrication.sheet.effort=1");
        assertThat(ran.exit()).as(ran.err()).isZero();
        Map<String, Integer> made = new TreeMap<>();
        for (Map<String, String> row : rows("parts.csv")) {
            if (!row.get("process").equals("bought")) {
                made.merge(
                        row.get("process") + " " + row.get("stock"), Integer.parseInt(row.get("pieces")), Integer::sum);
                int quantity = Integer.parseInt(row.get("quantity"));
                int spares = Integer.parseInt(row.get("spares"));
                assertThat(spares).isEqualTo(quantity > 1 ? (int) Math.ceil(quantity * 0.2) : 0);
                String file = "o/parts/" + row.get("mechanism") + "-" + row.get("name") + ".svg";
                String words = "quantity: " + quantity + (spares > 0 ? " and " + spares + " spare" : "");
                boolean several = Integer.parseInt(row.get("pieces")) != quantity + spares;
                assertThat(Files.readString(folder.resolve(file)))
                        .contains(words + (several ? ", cut as " + row.get("pieces") + " pieces;" : ";"));
            }
        }
        Map<String, Integer> laid = new TreeMap<>();
        for (Map<String, String> row : rows("sheets.csv")) {
            laid.put(row.get("process") + " " + row.get("stock"), Integer.parseInt(row.get("quantity")));
        }
        assertThat(laid).isEqualTo(made).isNotEmpty();
    }

    @Test
    void gearsOfTwoSheetsAreCutTwice() throws IOException {
        assertThat(Ran.in(folder, "make", "lens-turntable-gears", "-o", "o").exit())
                .isZero();
        int pieces = 0;
        for (Map<String, String> row : rows("parts.csv")) {
            pieces += row.get("process").equals("bought") ? 0 : Integer.parseInt(row.get("pieces"));
        }
        assertThat(pieces).as("four gears of 6 mm from sheet of 3 mm").isEqualTo(8);
    }

    @Test
    void aPlateForThePrinterHasTheSpares() throws IOException {
        Ran ran = Ran.in(
                folder,
                "make",
                "cold-frame-vent",
                "-o",
                "o",
                "--formats",
                "3mf",
                "--solids",
                "blade",
                "--set",
                "fabrication.spares=25%");
        assertThat(ran.exit()).as(ran.err()).isZero();
        Map<String, String> blade = rows("parts.csv").stream()
                .filter(row -> row.get("name").equals("blade"))
                .findFirst()
                .orElseThrow();
        int copies = Integer.parseInt(blade.get("quantity")) + Integer.parseInt(blade.get("spares"));
        try (var files = Files.list(folder.resolve("o/solids"));
                ZipFile zip = new ZipFile(files.filter(f -> f.toString().endsWith(".3mf"))
                        .findFirst()
                        .orElseThrow()
                        .toFile())) {
            String model = new String(
                    zip.getInputStream(zip.getEntry("3D/3dmodel.model")).readAllBytes(), StandardCharsets.UTF_8);
            assertThat(model.split("<item ", -1)).hasSize(1 + copies);
            assertThat(Integer.parseInt(blade.get("spares"))).isPositive();
        }
    }
}
