// SPDX-License-Identifier: Apache-2.0
package ringleaf.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The coupon from the command line: piece, sheet, own values, and a later run that takes them. */
class CouponRunTest {
    private static final Path FILLED = Path.of("src/test/resources/golden/coupon-read/coupon.yaml");

    @TempDir
    Path folder;

    @BeforeEach
    void sheet() throws IOException {
        Files.copy(FILLED, folder.resolve("coupon.yaml"));
    }

    private Ran run(String... args) {
        Ran ran = Ran.in(folder, args);
        assertThat(ran.showsATrace()).as(ran.err()).isFalse();
        return ran;
    }

    @Test
    void laterRunsTakeWhatWasMeasured() throws IOException {
        assertThat(run("coupon", "--read", "coupon.yaml").exit()).isZero();
        Files.writeString(folder.resolve("light.yaml"), """
                title: Light
                fabrication:
                  kerf: true
                  plate: {process: co2-laser, stock: acrylic-3}
                mechanisms:
                  shutter: {kind: leaf-aperture, full-opening: 64, least-opening: 20, blades: 14, blade-thickness: 0.15}
                """);
        assertThat(run("make", "light.yaml", "--anyway").exit()).isLessThan(2);
        String kerf = Files.readString(folder.resolve("shared/stock.yaml"))
                .replaceAll("(?s).*kerf: \\{is: ([0-9.]+),.*", "$1");
        String drawing = Files.readString(folder.resolve("out/light/parts/shutter-base-plate-kerf.svg"));
        assertThat(Double.parseDouble(kerf)).isBetween(0.15, 0.22);
        assertThat(drawing).contains(kerf.substring(0, 5));
        String design = Files.readString(folder.resolve("out/light/design.json"));
        assertThat(design).contains("mm of the measured kerf");
    }

    @Test
    void nothingIsOverwrittenUnasked() throws IOException {
        assertThat(run("coupon", "--read", "coupon.yaml").exit()).isZero();
        var before = Ran.listing(folder);
        Ran again = run("coupon", "--read", "coupon.yaml");
        assertThat(again.exit()).isEqualTo(3);
        assertThat(again.err())
                .contains("shared/processes.yaml")
                .contains("left as they are")
                .contains("--replace");
        assertThat(Ran.listing(folder)).isEqualTo(before);
        Ran replaced = run("coupon", "--read", "coupon.yaml", "--replace");
        assertThat(replaced.exit()).isZero();
        assertThat(replaced.out()).contains("measured values of co2-laser replaced");
        assertThat(Ran.listing(folder)).isEqualTo(before);
    }

    @Test
    void ownEntriesOfOthersStayAsTheyAre() throws IOException {
        Files.createDirectory(folder.resolve("shared"));
        Path own = folder.resolve("shared/processes.yaml");
        Files.writeString(own, """
                # mine
                processes:
                  fibre-laser:   # the old one
                    kerf: 0.07

                sources: {me: measured long ago}
                """);
        assertThat(run("coupon", "--read", "coupon.yaml").exit()).isZero();
        String text = Files.readString(own);
        assertThat(text)
                .startsWith("# mine\nprocesses:\n  fibre-laser:   # the old one\n    kerf: 0.07\n\n  co2-laser:\n");
        assertThat(text).endsWith("sources: {me: measured long ago}\n");
        Files.writeString(own, "processes: {co2-laser: {kerf: 0.25}}\n");
        assertThat(run("coupon", "--read", "coupon.yaml").exit()).isEqualTo(3);
        Ran unclear = run("coupon", "--read", "coupon.yaml", "--replace");
        assertThat(unclear.exit()).isEqualTo(3);
        assertThat(unclear.err()).contains("laid out so that");
        assertThat(Files.readString(own)).isEqualTo("processes: {co2-laser: {kerf: 0.25}}\n");
        Files.writeString(
                own, "processes:\n  co2-laser:\n    kerf: 0.25  # guessed\n    least-web: 1.4\n    thickness-to: 6\n");
        Files.delete(folder.resolve("coupon.yaml"));
        Files.copy(FILLED, folder.resolve("again.yaml"));
        assertThat(run("coupon", "--read", "again.yaml", "--replace").exit()).isZero();
        assertThat(Files.readString(own))
                .doesNotContain("guessed")
                .contains("thickness-to: 6")
                .contains("standard uncertainty");
    }

    @Test
    void aSheetWithReadingsIsNotWrittenOver() throws IOException {
        assertThat(run("coupon", "--process", "co2-laser", "-o", "p").exit()).isZero();
        Ran again = run("coupon", "--process", "co2-laser", "-o", "p");
        assertThat(again.exit()).isEqualTo(3);
        assertThat(again.err()).contains("p/coupon.yaml").contains("may hold readings");
    }

    @Test
    void wrongCommandLinesAreRefused() {
        assertThat(run("coupon").err()).contains("either --process NAME");
        assertThat(run("coupon", "--process", "co2-laser", "--read", "coupon.yaml")
                        .exit())
                .isEqualTo(2);
        assertThat(run("coupon", "--process", "co2-lazer").err()).contains("did you mean co2-laser?");
        assertThat(run("coupon", "--process", "co2-laser", "--stock", "brass-0.1")
                        .err())
                .contains("what it makes: ");
        assertThat(run("coupon", "--read", "coupon.yaml", "--stock", "pla").err())
                .contains("--stock has no meaning");
        assertThat(run("coupon", "--process", "co2-laser", "--replace").err()).contains("--replace has no meaning");
        assertThat(run("coupon", "--read", "no.yaml").exit()).isEqualTo(3);
        assertThat(run("coupon", "--read", "").exit()).isEqualTo(2);
        var before = Ran.listing(folder);
        for (String text : new String[] {"", "a: [", "title: x\n", "\0"}) {
            try {
                Files.writeString(folder.resolve("coupon.yaml"), text);
            } catch (IOException e) {
                throw new AssertionError(e);
            }
            assertThat(run("coupon", "--read", "coupon.yaml").exit()).as(text).isEqualTo(2);
        }
        assertThat(Ran.listing(folder).keySet()).isEqualTo(before.keySet());
    }

    @Test
    void printedPiecesHaveLevelsAndEveryProcessHasAPiece() throws IOException {
        for (String process :
                new String[] {"fibre-laser", "co2-laser", "photo-etch", "drag-knife", "filament-print", "resin-print"
                }) {
            Ran ran = run("coupon", "--process", process, "-o", process);
            assertThat(ran.exit()).as(process + ran.err()).isZero();
        }
        assertThat(Files.readString(folder.resolve("resin-print/coupon.svg"))).contains("id=\"level-3\"");
        assertThat(Files.readString(folder.resolve("co2-laser/coupon.svg")))
                .contains("id=\"mark\"")
                .contains("id=\"cut\"");
    }
}
