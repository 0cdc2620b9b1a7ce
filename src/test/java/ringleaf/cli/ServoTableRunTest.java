// SPDX-License-Identifier: Apache-2.0
package ringleaf.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The commands for what comes after making: servo tables and tolerances. */
class ServoTableRunTest {
    private static final String MEASURED =
            "servo_deg,opening_mm\n0,64.25\n30,55.70\n60,47.90\n90,40.45\n120,32.90\n150,25.35\n172,19.20\n";

    @TempDir
    Path folder;

    @Test
    void aTableIsWrittenAsDrawnAndAsMeasured() throws IOException {
        Ran drawn = Ran.in(folder, "servo-table", "harbour-light");
        assertThat(drawn.exit()).as(drawn.err()).isZero();
        Path at = folder.resolve("out/harbour-light/servo");
        assertThat(Ran.listing(at)).containsOnlyKeys("/", "shutter.csv", "shutter.h");
        String table = Files.readString(at.resolve("shutter.csv"));
        Files.writeString(folder.resolve("m.csv"), MEASURED);
        Ran corrected = Ran.in(folder, "servo-table", "harbour-light", "--measured", "m.csv");
        assertThat(corrected.exit()).as(corrected.err()).isZero();
        assertThat(corrected.out()).contains("zero ").contains("residual").contains("95 % intervals");
        assertThat(Files.readString(at.resolve("shutter.csv"))).isNotEqualTo(table);
        assertThat(Files.readString(at.resolve("shutter.h"))).contains("Corrected by 7 measured openings");
    }

    /** A table of its own does not go when everything is made anew beside it. */
    @Test
    void makingLeavesTheTable() {
        assertThat(Ran.in(folder, "servo-table", "harbour-light", "-o", "o").exit())
                .isZero();
        assertThat(Ran.in(folder, "make", "harbour-light", "-o", "o", "--formats", "svg")
                        .exit())
                .isZero();
        assertThat(folder.resolve("o/servo/shutter.h")).exists();
    }

    @Test
    void theSameBytesInAnyLocale() throws IOException {
        Ran.in(folder, "servo-table", "harbour-light", "-o", "a");
        Locale usual = Locale.getDefault();
        try {
            Locale.setDefault(Locale.GERMANY);
            Ran.in(folder, "servo-table", "harbour-light", "-o", "b");
        } finally {
            Locale.setDefault(usual);
        }
        for (String file : new String[] {"servo/shutter.csv", "servo/shutter.h"}) {
            assertThat(folder.resolve("b/" + file)).hasSameBinaryContentAs(folder.resolve("a/" + file));
        }
        String header = Files.readString(folder.resolve("a/servo/shutter.h"), StandardCharsets.US_ASCII);
        assertThat(header.lines()).allMatch(line -> line.length() <= 120);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "servo-table field-camera-stop | 2 | no servo drives it; drive: {servo: micro-180} does",
                "servo-table nowhere.yaml | 3 | cannot read nowhere.yaml",
                "servo-table harbour-light --within 0 | 2 | --within: 0 is no plain number",
                "servo-table harbour-light --within 0,5 | 2 | --within",
                "servo-table harbour-light --within 0.001 | 2 | works",
                "servo-table harbour-light --mechanism shuter | 2 | did you mean shutter?",
                "servo-table harbour-light --measured no.csv | 3 | cannot read no.csv",
                "servo-table harbour-light --measured bad.csv | 2 | bad.csv:3: 4x is no number",
                "servo-table harbour-light --measured few.csv | 2 | few.csv: 2 different turns",
                "servo-table harbour-light --measured bytes.csv | 2 | is no text in UTF-8",
                "servo-table harbour-light --set shutter.least-opening=8 --set shutter.outer-diameter=70 | 1 | no table is written",
                "tolerance harbour-light --builds 0 | 2 | --builds: 0 is no whole number from 1",
                "tolerance harbour-light --builds many | 2 | --builds",
                "tolerance harbour-light --seed -1 | 2 | --seed",
                "tolerance harbour-light --set shutter.outer-diameter=70 | 1 | has no room to drift",
            })
    void whatIsWrongIsSaidAndNothingWritten(String line, int exit, String said) throws IOException {
        Files.writeString(folder.resolve("bad.csv"), "servo_deg,opening_mm\n0,64\n60,4x\n");
        Files.writeString(folder.resolve("few.csv"), "servo_deg,opening_mm\n0,64\n60,48\n");
        Files.write(folder.resolve("bytes.csv"), new byte[] {(byte) 0xC3, 0x28, 0});
        Map<String, String> before = Ran.listing(folder);
        Ran ran = Ran.in(folder, line.split(" "));
        assertThat(ran.exit()).as(ran.err()).isEqualTo(exit);
        assertThat(ran.err()).contains(said);
        assertThat(ran.showsATrace()).isFalse();
        assertThat(Ran.listing(folder)).isEqualTo(before);
    }

    @Test
    void tolerancesOfEveryPresetAreToldAndWritten() throws IOException {
        for (String preset : Presets.names()) {
            Ran ran = Ran.in(folder, "tolerance", preset, "--builds", "20", "-o", preset);
            assertThat(ran.exit()).as(preset + ran.err()).isZero();
            assertThat(ran.out()).contains("of 20 random builds (seed 1) ").contains("gives way");
        }
        assertThat(Files.readString(folder.resolve("harbour-light/tolerance/shutter-drift.csv")))
                .startsWith("size,what,copies,")
                .contains("\nslot-width,width of the slot,14,one,mm,");
        assertThat(Files.readString(folder.resolve("harbour-light/tolerance/shutter-yield.csv")))
                .startsWith("check,builds,")
                .contains("\nlight-tight,20,");
    }
}
