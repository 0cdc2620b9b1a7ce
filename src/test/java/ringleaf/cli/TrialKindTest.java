// SPDX-License-Identifier: Apache-2.0
package ringleaf.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import ringleaf.draw.format.Formats;
import ringleaf.kinds.Kinds;
import ringleaf.mechanism.Kind;
import ringleaf.trial.NoddingArm;

/**
 * A kind is a package and a line in the registry: one that only the tests have is read, made in every format, judged,
 * explored, built at random and described like those that are registered.
 */
class TrialKindTest {
    private static final String SPEC =
            "title: Searchlight\nfabrication:\n  plate: {process: co2-laser, stock: acrylic-3,"
                    + " kerf: true}\nmechanisms:\n  nod:\n    kind: nodding-arm\n    length: 60\n    servo: micro-180\n"
                    + "  upper:\n    kind: nodding-arm\n    length: 40\n    place: {on: nod.arm, at: {x: 40mm, z: 20mm}}\n";

    private static final String NAME = "nodding-arm";

    @TempDir
    Path folder;

    @BeforeEach
    void write() throws IOException {
        Files.writeString(folder.resolve("s.yaml"), SPEC);
    }

    private Ran ran(String... args) {
        List<Kind> kinds = new ArrayList<>(Kinds.REGISTERED.all());
        kinds.add(new NoddingArm());
        return Ran.with(new Surroundings(folder, false, false, new Kinds(kinds)), "", args);
    }

    @Test
    void isMadeInEveryFormatAndJudged() throws IOException {
        Ran ran = ran(
                "make",
                "s.yaml",
                "-o",
                "o",
                "--formats",
                String.join(",", Formats.names(Formats.ALL)),
                "--solids",
                "all");
        assertThat(ran.exit()).as(ran.out() + ran.err()).isZero();
        Map<String, String> files = Ran.listing(folder.resolve("o"));
        assertThat(files.keySet())
                .anyMatch(f -> f.endsWith("nod-arm-kerf.dxf"))
                .anyMatch(f -> f.endsWith("report.html"));
        String design = Files.readString(folder.resolve("o/design.json"));
        assertThat(design).contains("pin-in-bore", "arm-bore", "Press the pin into the stand.", "\"running\"");
        assertThat(Files.readString(folder.resolve("o/report.html")))
                .contains("Put the arm on the pin.", "pin-in-bore");
    }

    @Test
    void isDescribedExploredAndBuiltAtRandom() {
        assertThat(ran("help", NAME).out()).contains("how far it nods", "the arm, which nods");
        assertThat(ran("schema").out()).contains(NAME);
        assertThat(ran("check", "s.yaml").exit()).isZero();
        Ran explored = ran("explore", "s.yaml", "--vary", "nod.length=40..60*3");
        assertThat(explored.exit()).as(explored.err()).isZero();
        assertThat(explored.out()).contains("reach");
        Ran yield = ran("tolerance", "s.yaml");
        assertThat(yield.exit()).as(yield.err()).isZero();
        assertThat(yield.out()).contains("arm-bore", "pin-in-bore");
        Ran table = ran("servo-table", "s.yaml", "-o", "t");
        assertThat(table.exit()).as(table.err()).isZero();
        assertThat(Ran.listing(folder.resolve("t")).keySet()).anyMatch(f -> f.endsWith("nod.csv"));
    }

    @Test
    void whatIsWrongIsToldAsOfAnyKind() {
        Ran wrong = ran("check", "s.yaml", "--set", "nod.swing=500");
        assertThat(wrong.exit()).isEqualTo(2);
        assertThat(wrong.err()).contains("nod.swing", "120");
        assertThat(Ran.in(folder, "check", "s.yaml").err()).contains("nodding-arm");
    }
}
