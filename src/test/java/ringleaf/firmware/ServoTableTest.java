// SPDX-License-Identifier: Apache-2.0
package ringleaf.firmware;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import ringleaf.mechanism.Kind;
import ringleaf.mechanism.ServoLaw;
import ringleaf.mechanism.ServoLaw.Build;
import ringleaf.part.MotionTable;

/** Servo tables against the travel as swept, and their header against a compiler. */
class ServoTableTest {
    /** The law is the table of the travel: same servo angle, same opening, for every drive and hand. */
    @ParameterizedTest
    @ValueSource(
            strings = {
                "drive: {servo: micro-180}",
                "drive: {by: step-up, servo: micro-120}",
                "drive: {servo: standard-180, at: 250}"
            })
    void aperturesOpenAsSwept(String drive) {
        for (String more : List.of("hand: left", "hand: right", "drive-pin: lever")) {
            Kind.Planned planned = Laws.shutter(drive, more);
            ServoLaw law = Laws.law(planned);
            MotionTable motion = planned.design(41).motion();
            int servo = motion.columns().indexOf("servo_deg");
            int opening = motion.columns().indexOf("opening_diameter");
            for (double[] row : motion.rows()) {
                assertThat(law.output(Math.toRadians(row[servo]), Build.AS_DRAWN))
                        .as(more)
                        .isCloseTo(row[opening], within(1e-8));
            }
            assertThat(Math.toDegrees(law.travel())).isCloseTo(motion.rows().get(40)[servo], within(1e-9));
        }
    }

    @Test
    void gearsAndBeltsTurnByTheirRatio() {
        Kind.Planned gears = Laws.planned(
                "gear-train",
                "stages: [{driver: {teeth: 20}, driven: {teeth: 40}}, {driver: {teeth: 18}, driven: {teeth: 27}}]",
                "drive: {servo: micro-180}");
        assertThat(Laws.law(gears).output(1, Build.AS_DRAWN)).isCloseTo(Math.toDegrees(1) / 3, within(1e-12));
        assertThat(ServoTable.of(Laws.law(gears), Build.AS_DRAWN, 0.05).rows()).hasSize(2);
        Kind.Planned belt =
                Laws.planned("belt-drive", "belt: T2.5", "ratio: 5:2", "centre-distance: 70", "servo: micro-180");
        MotionTable motion = belt.design(5).motion();
        double[] last = motion.rows().get(4);
        assertThat(Laws.law(belt).output(Math.toRadians(last[0]), Build.AS_DRAWN))
                .isCloseTo(Math.abs(last[2]), within(1e-9));
    }

    /** What is said of the error holds between all rows, found here by other arithmetic and at other places. */
    @ParameterizedTest
    @ValueSource(doubles = {0.5, 0.05, 0.02, 0.005})
    void theErrorIsWithinWhatIsAskedAndWhatIsSaid(double within) {
        ServoLaw law = Laws.law(Laws.shutter("drive: {servo: micro-180}"));
        ServoTable table = ServoTable.of(law, Build.AS_DRAWN, within);
        assertThat(table.error()).isLessThanOrEqualTo(within).isPositive();
        double worst = 0;
        for (long opening = table.least(); opening <= table.most(); opening += 7) {
            double servo = ServoTable.turnAt(law, table.pulse(opening) * 0.1);
            worst = Math.max(worst, Math.abs(law.output(servo, Build.AS_DRAWN) - opening * 0.01));
        }
        assertThat(worst).isLessThanOrEqualTo(table.error());
        for (int i = 1; i < table.rows().size(); i++) {
            assertThat(table.rows().get(i).output())
                    .isGreaterThan(table.rows().get(i - 1).output());
            assertThat(table.rows().get(i).pulse())
                    .isLessThan(table.rows().get(i - 1).pulse());
        }
        assertThat(table.percent(table.rows().get(0))).isZero();
        assertThat(table.percent(table.rows().get(table.rows().size() - 1))).isEqualTo(100);
    }

    @Test
    void finerTablesHaveMoreRowsAndTooFineOnesAreRefused() {
        ServoLaw law = Laws.law(Laws.shutter("drive: {servo: micro-180}"));
        int coarse = ServoTable.of(law, Build.AS_DRAWN, 0.5).rows().size();
        assertThat(ServoTable.of(law, Build.AS_DRAWN, 0.005).rows().size()).isGreaterThan(coarse);
        assertThatThrownBy(() -> ServoTable.of(law, Build.AS_DRAWN, 1e-5)).hasMessageContaining(" works");
    }

    /** The travel lies in the middle of the servo's own; the play is taken up against the table's direction. */
    @Test
    void pulsesAndPlay() {
        ServoLaw law = Laws.law(Laws.shutter("drive: {servo: micro-180}"));
        double from = ServoTable.pulseAt(law, 0);
        double to = ServoTable.pulseAt(law, law.travel());
        assertThat((from + to) / 2).isCloseTo(1500, within(1e-9));
        assertThat(to - from).isCloseTo(2000 * law.travel() / Math.PI, within(1e-9));
        assertThat(ServoTable.turnAt(law, from)).isCloseTo(0, within(1e-12));
        ServoTable table = ServoTable.of(law, Build.AS_DRAWN, 0.02);
        assertThat(table.takeUp() * 0.1).isCloseTo(-2000 * law.lostMotion() / Math.PI, within(0.051));
        assertThat(table.clamped(10)).isEqualTo(5000);
        assertThat(table.clamped(99_999)).isEqualTo(25_000);
        ServoLaw reversed = Laws.law(
                Laws.shutter("drive: {servo: {travel: 180, torque: 1.5kgcm, pulse-from: 2400, pulse-to: 600}}"));
        ServoTable other = ServoTable.of(reversed, Build.AS_DRAWN, 0.02);
        assertThat(other.takeUp()).isPositive();
        assertThat(other.leastPulse()).isEqualTo(6000);
        assertThat(other.rows().get(0).pulse()).isLessThan(other.rows().get(1).pulse());
    }

    /** The header compiles without a warning, and its functions give the pulses that were measured here. */
    @Test
    void theHeaderCompilesAndComputesTheSame(@TempDir Path folder) throws IOException, InterruptedException {
        ServoLaw shutter = Laws.law(Laws.shutter("drive: {servo: micro-180}"));
        ServoLaw arm = Laws.law(
                Laws.planned("belt-drive", "belt: T2.5", "ratio: 5:2", "centre-distance: 70", "servo: micro-180"));
        ServoTable table = ServoTable.of(shutter, Build.AS_DRAWN, 0.02);
        ServoTable line = ServoTable.of(arm, Build.AS_DRAWN, 0.05);
        Files.write(folder.resolve("a.h"), ServoHeader.write("1", "Tit*/le ??/ \\ µ", "1-Shutter", table, null));
        Files.write(folder.resolve("b.h"), ServoHeader.write("1", "", "arm", line, null));
        String program = "#include \"a.h\"\n#include \"b.h\"\n#include \"a.h\"\n#include <stdio.h>\n"
                + "int main(void)\n{\n    uint32_t i;\n    for (i = 0; i < 7000; i += 3)\n"
                + "        printf(\"%lu %lu\\n\", (unsigned long)m_1_shutter_pulse(i),\n"
                + "               (unsigned long)m_1_shutter_pulse_other_way(i));\n"
                + "    printf(\"%lu %lu %lu\\n\", (unsigned long)m_1_shutter_opening_at(0),\n"
                + "           (unsigned long)m_1_shutter_opening_at(500), (unsigned long)m_1_shutter_opening_at(2000));\n"
                + "    return (int)(arm_pulse(0) + arm_angle_at(0)) == 0 ? 1 : 0;\n}\n";
        Files.writeString(folder.resolve("t.c"), program);
        String compiled = run(
                folder,
                "gcc",
                "-std=c99",
                "-Wall",
                "-Wextra",
                "-Wconversion",
                "-pedantic",
                "-Werror",
                "t.c",
                "-o",
                "t");
        Assumptions.assumeTrue(compiled != null, "no gcc here");
        assertThat(compiled).isEmpty();
        List<String> lines = run(folder, folder.resolve("t").toString()).lines().toList();
        int at = 0;
        for (long i = 0; i < 7000; i += 3) {
            int pulse = table.pulse(i);
            assertThat(lines.get(at++))
                    .as("opening " + i)
                    .isEqualTo(pulse + " " + table.clamped(pulse + table.takeUp()));
        }
        long half = table.least() + ((table.most() - table.least()) * 500 + 500) / 1000;
        assertThat(lines.get(at)).isEqualTo(table.least() + " " + half + " " + table.most());
    }

    /** What it printed; null where there is no such program. */
    private static String run(Path folder, String... command) throws IOException, InterruptedException {
        Process process;
        try {
            process = new ProcessBuilder(command)
                    .directory(folder.toFile())
                    .redirectErrorStream(true)
                    .start();
        } catch (IOException e) {
            return null;
        }
        String said = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        assertThat(process.waitFor(60, TimeUnit.SECONDS)).isTrue();
        assertThat(process.exitValue()).as(said).isZero();
        return said;
    }

    @Test
    void csvHasARowForEachRow() {
        ServoTable table = ServoTable.of(Laws.law(Laws.shutter("drive: {servo: micro-180}")), Build.AS_DRAWN, 0.02);
        List<String> lines = new String(ServoCsv.write(table), StandardCharsets.UTF_8)
                .lines()
                .toList();
        assertThat(lines.get(0))
                .isEqualTo("opening_mm,opening_percent,servo_deg,pulse_us,pulse_us_other_way,interpolation_error_mm");
        assertThat(lines).hasSize(table.rows().size() + 1);
        assertThat(lines.get(1)).startsWith("20,0,");
    }
}
