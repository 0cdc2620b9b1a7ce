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

/** Whole runs with a test slice asked for, and what is refused. */
class SliceRunTest {
    @TempDir
    Path folder;

    @Test
    void aSliceGoesIntoAFolderOfItsOwnAndSaysHowToUseIt() {
        Ran ran = Ran.in(folder, "make", "harbour-light", "--slice", "3", "--states", "9");
        assertThat(ran.exit()).as(ran.err()).isZero();
        assertThat(Ran.listing(folder).keySet())
                .contains(
                        "out/harbour-light-slice/parts/shutter-slice-base.svg",
                        "out/harbour-light-slice/parts/shutter-slice-ring.dxf",
                        "out/harbour-light-slice/parts/shutter-blade.dxf",
                        "out/harbour-light-slice/views/shutter-half.svg",
                        "out/harbour-light-slice/design.json")
                .doesNotContain("out/harbour-light-slice/parts/shutter-retainer.svg", "out/harbour-light/");
        assertThat(ran.out()).contains("Friction: hold slice-base and swing slice-ring");
        assertThat(ran.err()).contains("0 failed");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "harbour-light | 1 | --slice: 1 is below the least of 2 (one blade lies over nothing); nearest: 2",
                "harbour-light | 15 | --slice: 15 is above the 14 blades of shutter; nearest: 14",
                "harbour-light | three | --slice: three is no whole number from 2 to 14",
                "lens-turntable-gears | 3 | a test slice is cut out of a leaf-aperture, whose blades lie over one another",
                "semaphore-arm-belt | 3 | is a belt-drive; a test slice is cut out of a leaf-aperture"
            })
    void slicesThatCannotBeAreRefusedAndNothingIsWritten(String spec, String number, String message) {
        Ran ran = Ran.in(folder, "make", spec, "--slice", number, "--states", "9");
        assertThat(ran.exit()).isEqualTo(2);
        assertThat(ran.err()).contains(message);
        assertThat(ran.showsATrace()).isFalse();
        assertThat(Ran.listing(folder)).containsOnlyKeys("/");
    }

    @Test
    void ofSeveralMechanismsOnlyTheAperturesAreSlicedWithSolidsAndTwiceTheSame() throws IOException {
        Files.writeString(
                folder.resolve("two.yaml"),
                """
                title: Two
                mechanisms:
                  wheel: {kind: gear, teeth: 24}
                  vent: {kind: leaf-aperture, full-opening: 60, least-opening: 40, blades: 6, blade-thickness: 0.6}
                """);
        List<Object> listings = new ArrayList<>();
        for (String out : new String[] {"one", "two"}) {
            String[] args = {
                "make", "two.yaml", "--slice", "2", "-o", out, "--formats", "svg,stl,3mf", "--states", "9", "--anyway"
            };
            Ran ran = Ran.in(folder, args);
            assertThat(ran.exit()).as(ran.err()).isZero();
            assertThat(ran.out()).contains("no slice of\n  wheel: a gear has no blades\n");
            listings.add(Ran.listing(folder.resolve(out)));
        }
        assertThat(listings.get(0)).isEqualTo(listings.get(1));
        assertThat(Ran.listing(folder.resolve("one")).keySet())
                .contains("solids/vent-slice-base.stl", "solids/vent-blade.stl")
                .noneMatch(path -> path.contains("wheel"));
    }
}
