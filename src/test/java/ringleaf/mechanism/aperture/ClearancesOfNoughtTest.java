// SPDX-License-Identifier: Apache-2.0
package ringleaf.mechanism.aperture;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import ringleaf.part.Design;
import ringleaf.part.Finding;
import ringleaf.spec.field.Field;
import ringleaf.verify.Judge;
import ringleaf.verify.Options;

/** What has to move needs room: a clearance of nought never passes, alone or with others. */
class ClearancesOfNoughtTest {
    private static List<Finding> failed(String preset, String... lines) throws IOException {
        String text = Files.readString(Path.of("presets", preset + ".yaml"));
        String inserted = text.stripTrailing() + "\n" + String.join("\n", lines) + "\n";
        Design design = Apertures.design(inserted, 31);
        List<Finding> all = new ArrayList<>(design.findings());
        all.addAll(Judge.judge(design.assembly(), Options.DEFAULT).findings());
        return Apertures.failed(all);
    }

    /** The clearances of a preset, none of which gives any, are added at its end. */
    private static List<Finding> with(String preset, String... clearances) throws IOException {
        return failed(preset, "    clearances: {" + String.join(", ", clearances) + "}");
    }

    @ParameterizedTest
    @CsvSource({"harbour-light, true", "cold-frame-vent, true", "field-camera-stop, false"})
    void eachByItselfFailsButThatBesideTheView(String preset, boolean pinion) throws IOException {
        assertThat(with(preset, "bore: 0.2")).isEmpty();
        for (Field<?> field : ApertureFields.CLEARANCE_SET.fields()) {
            boolean idle = !pinion && field.name().startsWith("pinion");
            boolean beside = field == ApertureFields.OPENING_ROOM;
            List<Finding> failed = with(preset, field.name() + ": 0");
            if (idle || beside) {
                assertThat(failed).as(preset + " " + field.name()).isEmpty();
            } else {
                assertThat(failed).as(preset + " " + field.name()).isNotEmpty();
            }
        }
    }

    /** The outlines tell of it as well, whatever is calculated. */
    @ParameterizedTest
    @CsvSource({
        "slot, pin-in-slot",
        "slot-end, pin-in-slot",
        "bore, pin-clearance",
        "ring-radial, clearance",
        "ring-axial, axial-clearance",
        "blade-play, cavity-depth",
        "pinion, clearance",
        "pinion-axial, axial-clearance",
        "drive-end, axial-clearance",
        "stop, clearance"
    })
    void onTheOutlines(String clearance, String check) throws IOException {
        assertThat(with("harbour-light", clearance + ": 0")).anySatisfy(f -> {
            assertThat(f.judge()).isEqualTo(Finding.Judge.OUTLINES);
            assertThat(f.check()).isEqualTo(check);
        });
    }

    @Test
    void noneHelpsAnother() throws IOException {
        assertThat(with("harbour-light", "slot: 0", "bore: 0.1"))
                .extracting(Finding::check)
                .contains("pin-in-slot");
        assertThat(with("harbour-light", "slot: 0.0005"))
                .extracting(Finding::check)
                .contains("pin-in-slot");
        assertThat(with("harbour-light", "ring-radial: 0", "stop: 1"))
                .extracting(Finding::check)
                .contains("clearance");
    }

    @Test
    void teethWithoutPlayFail() throws IOException {
        assertThat(failed("harbour-light", "      backlash: 0", "    clearances: {ring-radial: 0.0001}"))
                .extracting(Finding::check)
                .contains("backlash");
        assertThat(failed("harbour-light", "      tip-clearance: 0"))
                .extracting(Finding::check)
                .contains("tip-clearance");
    }

    @Test
    void lessThanTheProcessesNeedIsToldAndPasses() throws IOException {
        String text = Files.readString(Path.of("presets", "harbour-light.yaml")) + "    clearances: {blade: 0.1}\n";
        Design design = Apertures.design(text, 13);
        assertThat(design.findings()).anySatisfy(f -> {
            assertThat(f.check()).isEqualTo("process-room");
            assertThat(f.status()).isEqualTo(Finding.Status.WARN);
            assertThat(f.measured()).isEqualTo(0.1);
            assertThat(f.limit()).isEqualTo(0.39);
            assertThat(f.subjects()).containsExactly("clearances.blade");
        });
    }
}
