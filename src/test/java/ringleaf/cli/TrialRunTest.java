// SPDX-License-Identifier: Apache-2.0
package ringleaf.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Whole runs with a trial piece asked for, and what is refused. */
class TrialRunTest {
    @TempDir
    Path folder;

    @Test
    void aTrialPieceGoesIntoAFolderOfItsOwnAndSaysHowToUseIt() {
        Ran ran = Ran.in(folder, "make", "harbour-light", "--trial-blades", "3", "--states", "9");
        assertThat(ran.exit()).as(ran.err()).isZero();
        assertThat(Ran.listing(folder).keySet())
                .contains(
                        "out/harbour-light-trial/parts/shutter-trial-base.svg",
                        "out/harbour-light-trial/parts/shutter-trial-ring.dxf",
                        "out/harbour-light-trial/parts/shutter-blade.dxf",
                        "out/harbour-light-trial/views/shutter-half.svg",
                        "out/harbour-light-trial/design.json")
                .doesNotContain("out/harbour-light-trial/parts/shutter-retainer.svg", "out/harbour-light/");
        assertThat(ran.out()).contains("Friction: hold trial-base and swing trial-ring");
        assertThat(ran.out()).startsWith("PASS  ");
    }

    /** The web round the hole at the axis is that of process and stock, which grows with thick sheet. */
    @ParameterizedTest
    @ValueSource(strings = {"acrylic-4", "acrylic-5", "plywood-3"})
    void thickPlatesLeaveTheirOwnWebs(String stock) {
        Ran ran = Ran.in(
                folder,
                "make",
                "harbour-light",
                "--trial-blades",
                "3",
                "--states",
                "9",
                "--set",
                "fabrication.plate.stock=" + stock,
                "--set",
                "shutter.depth=30",
                "--set",
                "shutter.outer-diameter=130");
        assertThat(ran.exit()).as(ran.err()).isZero();
    }

    @Test
    void theFormerNameIsRefusedWithTheNewOne() {
        Ran ran = Ran.in(folder, "make", "harbour-light", "--slice", "3");
        assertThat(ran.exit()).isEqualTo(2);
        assertThat(ran.err()).contains("there is no option --slice; it is now called --trial-blades");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "harbour-light | 1 | --trial-blades: 1 is below the least of 2 (one blade lies over nothing); nearest: 2",
                "harbour-light | 15 | --trial-blades: 15 is above the 14 blades of shutter; nearest: 14",
                "harbour-light | three | --trial-blades: three is no whole number from 2 to 14",
                "lens-turntable-gears | 3 | a trial piece is cut out of a leaf-aperture, whose blades lie over one another",
                "semaphore-arm-belt | 3 | is a belt-drive; a trial piece is cut out of a leaf-aperture"
            })
    void trialPiecesThatCannotBeAreRefusedAndNothingIsWritten(String spec, String number, String message) {
        Ran ran = Ran.in(folder, "make", spec, "--trial-blades", number, "--states", "9");
        assertThat(ran.exit()).isEqualTo(2);
        assertThat(ran.err()).contains(message);
        assertThat(ran.showsATrace()).isFalse();
        assertThat(Ran.listing(folder)).containsOnlyKeys("/");
    }

    @Test
    void ofSeveralMechanismsOnlyTheAperturesAreTriedWithSolidsAndTwiceTheSame() throws IOException {
        Files.writeString(folder.resolve("two.yaml"), """
                title: Two
                mechanisms:
                  wheel: {kind: gear, teeth: 24}
                  vent: {kind: leaf-aperture, full-opening: 60, least-opening: 40, blades: 6, blade-thickness: 0.6}
                """);
        List<Object> listings = new ArrayList<>();
        for (String out : new String[] {"one", "two"}) {
            String[] args = {
                "make",
                "two.yaml",
                "--trial-blades",
                "2",
                "-o",
                out,
                "--formats",
                "svg,stl,3mf",
                "--states",
                "9",
                "--anyway"
            };
            Ran ran = Ran.in(folder, args);
            assertThat(ran.exit()).as(ran.err()).isZero();
            assertThat(ran.out()).contains("no trial piece of\n  wheel: a gear has no blades\n");
            listings.add(Ran.listing(folder.resolve(out)));
        }
        assertThat(listings.get(0)).isEqualTo(listings.get(1));
        assertThat(Ran.listing(folder.resolve("one")).keySet())
                .contains("solids/vent-trial-base.stl", "solids/vent-blade.stl")
                .noneMatch(path -> path.contains("wheel"));
    }
}
