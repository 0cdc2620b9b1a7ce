// SPDX-License-Identifier: Apache-2.0
package ringleaf.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A spec with the user's own bezel, from the file to the plates. */
class BezelRunTest {
    @TempDir
    Path folder;

    @BeforeEach
    void drawings() throws IOException {
        try (Stream<Path> files = Files.list(Path.of("src/test/resources/outlines"))) {
            for (Path file : (Iterable<Path>) files::iterator) {
                Files.copy(file, folder.resolve(file.getFileName()));
            }
        }
        spec("housing: {outline: bezel-mm.dxf, layers: cut}");
    }

    private void spec(String more) throws IOException {
        Files.writeString(folder.resolve("light.yaml"), """
                title: Light
                mechanisms:
                  shutter:
                    kind: leaf-aperture
                    full-opening: 64
                    least-opening: 20
                    blades: 14
                    blade-thickness: 0.15
                    %s
                """.formatted(more));
    }

    private Ran run(String... args) {
        Ran ran = Ran.in(folder, args);
        assertThat(ran.showsATrace()).as(ran.err()).isFalse();
        return ran;
    }

    @Test
    void platesTakeTheOutlineAndItsScrews() throws IOException {
        Ran made = run("make", "light.yaml");
        assertThat(made.exit()).as(made.err()).isZero();
        for (String part : new String[] {"base-plate", "spacer-ring", "retainer"}) {
            String svg = Files.readString(folder.resolve("out/light/parts/shutter-" + part + ".svg"));
            assertThat(svg).as(part).contains("width=\"134mm\"").contains("cx=\"56\" cy=\"-56\" r=\"1.2\"");
        }
        assertThat(Files.readString(folder.resolve("out/light/parts.csv"))).contains("screw,4,");
    }

    @Test
    void ownPlatesAreABezelAgain() throws IOException {
        String first = run("make", "light.yaml", "--details").err();
        int at = first.indexOf("pass  housing-fits");
        String wall = first.substring(at, first.indexOf('\n', at));
        for (String format : new String[] {"svg", "dxf"}) {
            spec("housing: {outline: out/light/parts/shutter-retainer." + format + ", layers: cut}");
            Ran again = run("check", "light.yaml", "--details");
            assertThat(again.exit()).as(again.err()).isZero();
            assertThat(again.err()).contains(wall);
        }
    }

    @Test
    void theHandMirrorsTheMechanismAndNotTheBezel() throws IOException {
        // A bezel with a corner cut away, so that a mirrored one would differ.
        Files.writeString(folder.resolve("odd.svg"), """
                <svg xmlns="http://www.w3.org/2000/svg" width="140mm" height="140mm" viewBox="-70 -70 140 140">
                  <path d="M-66,-66 H66 V40 L40,66 H-66 Z"/>
                  <circle cx="-60" cy="-60" r="1.2"/><circle cx="60" cy="-60" r="1.2"/><circle cx="-60" cy="60" r="1.2"/>
                </svg>
                """);
        for (String hand : new String[] {"left", "right"}) {
            spec("housing: {outline: odd.svg}\n    hand: " + hand);
            Ran made = run("make", "light.yaml", "-o", hand);
            assertThat(made.exit()).as(made.err()).isZero();
            // Inside y is up: the cut corner stays at the lower right, 66 across and 40 down as in the file.
            String svg = Files.readString(folder.resolve(hand + "/parts/shutter-retainer.svg"));
            assertThat(svg).as(hand).containsPattern("66[ ,]40\\b").containsPattern("40[ ,]66\\b");
            assertThat(svg).as(hand).doesNotContainPattern("66[ ,]-40\\b");
        }
    }

    @Test
    void whatDoesNotFitIsSaidWithHowMuchAndWhere() throws IOException {
        spec("housing: {outline: bezel-mm.dxf, layers: cut}\n    drive: {by: pinion, at: 270}");
        Ran made = run("make", "light.yaml");
        assertThat(made.exit()).isEqualTo(1);
        assertThat(made.err())
                .contains("fail  housing-fits")
                .contains("base-plate, at (0, -66)")
                .contains("to stand 17.56 mm further out there");
        assertThat(folder.resolve("out/light/parts")).doesNotExist();
        assertThat(folder.resolve("out/light/design.json")).exists();
    }

    @Test
    void nothingEntersAKeepOut() throws IOException {
        Files.writeString(folder.resolve("post.svg"), """
                <svg xmlns="http://www.w3.org/2000/svg" width="200mm" height="200mm" viewBox="0 0 200 200">
                  <rect x="150" y="-10" width="30" height="20" rx="2"/></svg>
                """);
        spec("keep-out: [{outline: post.svg}]");
        assertThat(run("check", "light.yaml", "--details").err()).contains("pass  keep-out");
        spec("keep-out: [{outline: post.svg, x: 115}]");
        Ran ran = run("check", "light.yaml");
        assertThat(ran.exit()).isEqualTo(1);
        assertThat(ran.err()).contains("fail  keep-out");
    }

    @Test
    void wrongDrawingsWriteNothing() throws IOException {
        String[][] cases = {
            {"housing: {outline: bezel-no-unit.dxf, layers: cut}", "housing.units: bezel-no-unit.dxf does not say"},
            {"housing: {outline: bezel-mm.dxf}", "TEXT: is a TEXT"},
            {"housing: {outline: bezel-mm.dxf, layers: cut, x: 300}", "the aperture's axis lies outside of the outline"
            },
            {"housing: {outline: bezel-mm.dxf, layers: cut, x: 9}", "leaves 48 mm, and full-opening is 64 mm"},
            {"housing: {outline: bezel-mm.dxf, layers: cut}\n    screw: M4", "0 holes of 4 mm to 6.4 mm for screws M4"},
            {
                "housing: {outline: bezel-mm.dxf, layers: cut}\n    outer-diameter: 120",
                "contradicts the outline under housing"
            },
            {"housing: {units: mm}", "housing.outline: is missing"},
            {"housing: {outline: light.yaml}", "a group code is wanted here"},
            {"housing: {outline: bezel-mm.dxf, laiers: cut}", "did you mean layers?"},
            {"housing: {outline: .}", "is a folder"},
        };
        for (String[] each : cases) {
            spec(each[0]);
            var before = Ran.listing(folder);
            Ran ran = run("make", "light.yaml");
            assertThat(ran.exit()).as(each[0]).isEqualTo(2);
            assertThat(ran.err()).as(each[0]).contains(each[1]);
            assertThat(Ran.listing(folder)).isEqualTo(before);
        }
        spec("housing: {outline: nowhere.dxf}");
        Ran missing = run("make", "light.yaml");
        assertThat(missing.exit()).isEqualTo(3);
        assertThat(missing.err()).contains("cannot read nowhere.dxf: there is no such file or folder");
        Files.write(folder.resolve("b.dxf"), new byte[] {65, 0, 66});
        spec("housing: {outline: b.dxf}");
        assertThat(run("make", "light.yaml").err()).contains("b.dxf: is a binary file");
    }

    /** Holes of two sizes that would both take the screw: the usual one does, the other is a hole for a wire. */
    @Test
    void holesStayAsTheyAreDrawnAndAreListedSo() throws IOException {
        StringBuilder holes = new StringBuilder();
        for (int[] at : new int[][] {{-60, -60}, {60, -60}, {-60, 60}, {60, 60}, {-64, 0}, {64, 0}}) {
            holes.append("<circle cx='" + at[0] + "' cy='" + at[1] + "' r='1.1'/>");
        }
        Files.writeString(folder.resolve("wire.svg"), """
                <svg xmlns="http://www.w3.org/2000/svg" width="140mm" height="140mm" viewBox="-70 -70 140 140">
                  <path d="M-67,-67 H67 V67 H-67 Z"/>%s<circle cx="0" cy="63" r="1.6"/>
                </svg>
                """.formatted(holes));
        spec("housing: {outline: wire.svg}");
        Ran made = run("make", "light.yaml", "--details");
        assertThat(made.exit()).as(made.err()).isZero();
        assertThat(Files.readString(folder.resolve("out/light/design.json")))
                .containsPattern("6 holes of 2.2 mm take screws M2[^;\"]*; as drawn and open stay 1 of 3.2 mm");
        String svg = Files.readString(folder.resolve("out/light/parts/shutter-retainer.svg"));
        assertThat(svg.split("r=\"1.1\"", -1)).hasSize(7);
        assertThat(svg.split("r=\"1.6\"", -1)).hasSize(2);
        assertThat(Files.readString(folder.resolve("out/light/parts.csv"))).contains("screw,6,");
    }

    /** A pinion that stands beyond an edge of the bezel has room in a corner of it: nothing else need change. */
    @Test
    void anotherPlaceForTheDriveIsAmongTheRemedies() throws IOException {
        String preset = Files.readString(Path.of("presets/harbour-light.yaml"));
        String own = preset.replaceFirst(
                " {4}outer-diameter:.*",
                "    housing: {outline: bezel-mm.dxf, layers: cut}\n    clearances: {ring-axial: 0.3}");
        assertThat(own).isNotEqualTo(preset);
        Files.writeString(folder.resolve("light.yaml"), own);
        String told = run("check", "light.yaml").err();
        Matcher at = Pattern.compile("drive\\.at: (-?[0-9]+)").matcher(told);
        assertThat(at.find()).as(told).isTrue();
        assertThat(run("check", "light.yaml", "--set", "shutter.drive.at=" + at.group(1))
                        .exit())
                .isZero();
    }
}
