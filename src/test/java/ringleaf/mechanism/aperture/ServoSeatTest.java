// SPDX-License-Identifier: Apache-2.0
package ringleaf.mechanism.aperture;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import ringleaf.geom.Region;
import ringleaf.part.Design;
import ringleaf.part.Finding;
import ringleaf.part.Part;
import ringleaf.part.Requirement;
import ringleaf.verify.Judge;
import ringleaf.verify.Options;

/** How servos of the catalogue sit in plates of 3 mm acrylic, in which 3 mm have to stand everywhere. */
class ServoSeatTest {
    private static final String[] PLATES = {"servo-plate", "pinion", "servo-gear", "step-wheel", "base-plate"};

    private static Design design(String servo) throws IOException {
        String text = Files.readString(Path.of("presets", "harbour-light.yaml"));
        return Apertures.design(
                text.replace("servo: micro-180", "servo: " + servo)
                        .replace("outer-diameter: {at-most: 115}", "outer-diameter: {at-most: 400}")
                        .replace("depth: {at-most: 16}", "depth: {at-most: 100}"),
                5);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "sub-micro-180",
                "micro-120",
                "micro-180",
                "micro-270",
                "mini-180",
                "standard-180",
                "standard-270"
            })
    void theProcessSaysWhatMustStandAndNotTheServo(String servo) throws IOException {
        Design design = design(servo);
        int asked = 0;
        for (Requirement requirement : design.assembly().requirements()) {
            if (requirement instanceof Requirement.LeastWeb web
                    && java.util.List.of(PLATES).contains(web.part())) {
                assertThat(web.web()).as(servo + " " + web.part()).isEqualTo(3);
                asked++;
            }
        }
        assertThat(asked).isEqualTo(3);
        for (Finding finding : Judge.judge(design.assembly(), Options.DEFAULT).findings()) {
            assertThat(finding.failed()).as(finding.toString()).isFalse();
        }
    }

    /** Ears on the base itself would have a screw where the horn turns: pinion and servo go so far back that a plate fits. */
    @ParameterizedTest
    @CsvSource({"140, 90, 9, 0.7, micro-180", "120, 80, 8, 0.6, micro-180", "140, 95, 10, 0.6, micro-270"})
    void aPrintedHousingHasRoomForAServoPlate(int full, int least, int blades, double thickness, String servo) {
        Design design = Apertures.design(
                "mechanisms:\n  stop: {kind: leaf-aperture, full-opening: " + full + ", least-opening: " + least
                        + ", blades: " + blades + ", blade-thickness: " + thickness + ", drive: {servo: " + servo
                        + "}}\n",
                31);
        assertThat(design.parts()).extracting(Part::name).contains("servo-plate", "standoff");
        for (Finding finding : design.findings()) {
            assertThat(finding.failed()).as(finding.toString()).isFalse();
        }
        for (Finding finding : Judge.judge(design.assembly(), Options.DEFAULT).findings()) {
            assertThat(finding.failed()).as(finding.toString()).isFalse();
        }
    }

    /** Between hole and window of a micro servo 1.25 mm would stand: the window is opened to the holes instead. */
    @ParameterizedTest
    @ValueSource(strings = {"micro-180", "standard-180"})
    void theWindowIsOpenedToTheHolesWhereTooLittleWouldStand(String servo) throws IOException {
        Design design = design(servo);
        ApertureDesign sizes = Apertures.sizes(Files.readString(Path.of("presets", "harbour-light.yaml"))
                .replace("servo: micro-180", "servo: " + servo));
        int screws = sizes.housing().servoScrews().size();
        Region plate = part(design, "servo-plate").layers().get(0).regions().get(0);
        assertThat(plate.holes()).hasSize(screws + 1);
        String text = Files.readString(Path.of("presets", "cold-frame-vent.yaml"));
        Design printed = Apertures.design(text, 5);
        Region whole = part(printed, "servo-plate").layers().get(0).regions().get(0);
        int own = Apertures.sizes(text).housing().servoScrews().size();
        assertThat(whole.holes())
                .as("1.9 mm are enough where 0.8 mm must stand")
                .hasSize(own + 1 + 4);
    }

    private static Part part(Design design, String name) {
        return design.parts().stream()
                .filter(p -> p.name().equals(name))
                .findFirst()
                .orElseThrow();
    }
}
