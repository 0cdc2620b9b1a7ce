// SPDX-License-Identifier: Apache-2.0
package ringleaf.mechanism.gear;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import ringleaf.part.Design;
import ringleaf.part.Finding;

/** The preset passes every check, without a warning. */
class LensGearsPresetTest {
    @Test
    void passesAll() throws IOException {
        List<Design> designs = Gears.designs(Files.readString(Path.of("presets/lens-turntable-gears.yaml")), 181);
        assertThat(designs).hasSize(2);
        for (Design design : designs) {
            assertThat(design.findings()).allMatch(f -> f.status() == Finding.Status.PASS);
            assertThat(Gears.judged(design)).allMatch(f -> f.status() == Finding.Status.PASS);
        }
        assertThat(Gears.choice(designs.get(0), "teeth").value()).isEqualTo("17/28");
        assertThat(Gears.choice(designs.get(1), "mesh").value()).isEqualTo("internal");
    }
}
