// SPDX-License-Identifier: Apache-2.0
package ringleaf.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * The pictures of README and chapters are the tool's own, of presets: {@code mvn -q test -Dtest=DocumentPicturesTest
 * -Dringleaf.docs=write} draws them anew as it draws today; look at them before you keep them.
 */
class DocumentPicturesTest {
    private static final Path PICTURES = Path.of("src/doc/pictures");
    private static final boolean WRITE = "write".equals(System.getProperty("ringleaf.docs"));

    @TempDir
    Path folder;

    /**
     * A picture.
     *
     * @param name of its file
     * @param made path of it among what the run writes into its folder {@code out}
     * @param args of the run
     */
    record Picture(String name, String made, List<String> args) {
        static Picture of(String name, String made, String... args) {
            return new Picture(name, made, List.of(args));
        }
    }

    static List<Picture> pictures() {
        return List.of(
                Picture.of("harbour-light-half.svg", "views/shutter-half.svg", "make", "harbour-light"),
                Picture.of(
                        "harbour-light-trial.svg",
                        "views/shutter-half.svg",
                        "make",
                        "harbour-light",
                        "--trial-blades",
                        "3"),
                Picture.of("lens-gears.svg", "views/lens-pair-mesh-1.svg", "make", "lens-turntable-gears"),
                Picture.of("cage-ring.svg", "views/cage-ring-exploded.svg", "make", "lens-turntable-gears"),
                Picture.of("semaphore-arm.svg", "views/arm-start.svg", "make", "semaphore-arm-belt"),
                Picture.of("instrument-plate.svg", "views/instruments-front.svg", "make", "instrument-plate"),
                Picture.of("lens-slide.svg", "views/slide-end.svg", "make", "lens-slide"),
                Picture.of("lamp-carriage.svg", "views/carriage-start.svg", "make", "lamp-carriage-rack"),
                Picture.of(
                        "coupon-acrylic.svg", "coupon.svg", "coupon", "--process", "co2-laser", "--stock", "acrylic-3"),
                Picture.of(
                        "explored.svg",
                        "explore.svg",
                        "explore",
                        "harbour-light",
                        "--vary",
                        "shutter.blades=8..20",
                        "--vary",
                        "shutter.least-opening=16,24,32"));
    }

    @ParameterizedTest
    @MethodSource("pictures")
    void isAPictureOfTheTool(Picture picture) throws IOException {
        Path kept = PICTURES.resolve(picture.name());
        if (WRITE) {
            String[] args = Stream.concat(picture.args().stream(), Stream.of("-o", "out"))
                    .toArray(String[]::new);
            Ran ran = Ran.in(folder, args);
            assertThat(ran.exit()).as(ran.err()).isZero();
            Files.write(kept, Files.readAllBytes(folder.resolve("out").resolve(picture.made())));
        }
        assertThat(Files.readString(kept))
                .startsWith("<?xml")
                .contains("<title>")
                .endsWith("</svg>\n");
    }

    @Test
    void noOtherPictureIsKept() throws IOException {
        try (Stream<Path> files = Files.list(PICTURES)) {
            assertThat(files.map(f -> f.getFileName().toString()))
                    .containsExactlyInAnyOrderElementsOf(
                            pictures().stream().map(Picture::name).toList());
        }
    }
}
