// SPDX-License-Identifier: Apache-2.0
package ringleaf.firmware;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import ringleaf.mechanism.ServoLaw;
import ringleaf.mechanism.ServoLaw.Build;

/** Made-up builds with a known zero and pin offset, measured with a known error, and files that are none. */
class ServoFitTest {
    private static final ServoLaw FAR = Laws.law(Laws.shutter("drive: {servo: micro-180}", "drive-pin: far-end"));
    private static final ServoLaw LEVER = Laws.law(Laws.shutter("drive: {servo: micro-180}", "drive-pin: lever"));

    private final List<String> problems = new ArrayList<>();

    private void problem(int line, String reason) {
        problems.add(line + ": " + reason);
    }

    private static List<MeasuredPoint> measured(ServoLaw law, Build build, double spread, int points, Random random) {
        List<MeasuredPoint> all = new ArrayList<>();
        for (int i = 0; i < points; i++) {
            double turn = law.travel() * (0.05 + 0.9 * i / (points - 1));
            all.add(new MeasuredPoint(i + 2, turn, law.output(turn, build) + spread * random.nextGaussian()));
        }
        return all;
    }

    @ParameterizedTest
    @CsvSource({"0.03, 0.1", "-0.06, -0.2", "0.01, 0", "0, 0.25"})
    void withoutErrorsTheyAreFoundExactly(double zero, double pin) {
        for (ServoLaw law : List.of(FAR, LEVER)) {
            Build build = new Build(zero, pin);
            Fitted fitted = new ServoFit(law).fit(measured(law, build, 0, 7, new Random(1)), this::problem);
            assertThat(problems).isEmpty();
            assertThat(fitted.pinFitted()).isTrue();
            assertThat(fitted.build().zero()).isCloseTo(zero, within(1e-6));
            assertThat(fitted.build().pinOffset()).isCloseTo(pin, within(1e-5));
        }
    }

    /** Of 200 builds measured to 0.03 mm the 95 % intervals hold zero and pin offset in most, as they say. */
    @Test
    void intervalsHoldWhatIsTrue() {
        Random random = new Random(20);
        int zeros = 0;
        int pins = 0;
        for (int k = 0; k < 200; k++) {
            Build build = new Build(0.05 * random.nextGaussian(), 0.1 * random.nextGaussian());
            Fitted fitted = new ServoFit(LEVER).fit(measured(LEVER, build, 0.03, 7, random), this::problem);
            assertThat(fitted).as("seed 20, build " + k + " " + problems).isNotNull();
            zeros += Math.abs(fitted.build().zero() - build.zero()) <= fitted.zeroWithin() ? 1 : 0;
            pins += Math.abs(fitted.build().pinOffset() - build.pinOffset()) <= fitted.pinWithin() ? 1 : 0;
        }
        assertThat(zeros).isBetween(178, 200);
        assertThat(pins).isBetween(178, 200);
    }

    /** The corrected table gives on the build as it is what it says, within what measuring allows. */
    @Test
    void theCorrectedTableHoldsOnTheBuild() {
        Random random = new Random(4);
        Build build = new Build(0.05, 0.15);
        Fitted fitted = new ServoFit(FAR).fit(measured(FAR, build, 0.02, 8, random), this::problem);
        ServoTable drawn = ServoTable.of(FAR, Build.AS_DRAWN, 0.02);
        ServoTable corrected = ServoTable.of(FAR, fitted.build(), 0.02);
        double before = 0;
        double after = 0;
        for (long opening = Math.max(drawn.least(), corrected.least()) + 20; opening < 6300; opening += 100) {
            before = Math.max(before, Math.abs(off(drawn, build, opening)));
            after = Math.max(after, Math.abs(off(corrected, build, opening)));
        }
        assertThat(before).isGreaterThan(0.3);
        assertThat(after).isLessThan(0.1);
        assertThat(fitted.spread()).isBetween(0.005, 0.05);
    }

    private static double off(ServoTable table, Build build, long opening) {
        return FAR.output(ServoTable.turnAt(FAR, table.pulse(opening) * 0.1), build) - opening * 0.01;
    }

    @Test
    void gearsHaveAZeroAndNoPin() {
        ServoLaw law = Laws.law(Laws.planned("gear-pair", "ratio: 5:3", "module: 1", "drive: {servo: micro-180}"));
        Fitted fitted = new ServoFit(law).fit(measured(law, new Build(0.02, 0), 0, 5, new Random(1)), this::problem);
        assertThat(fitted.pinFitted()).isFalse();
        assertThat(fitted.build().zero()).isCloseTo(0.02, within(1e-9));
    }

    /** One opening misread by 1.5 mm is named by its line; the rest alone would pass. */
    @Test
    void anOutlierIsNamed() {
        List<MeasuredPoint> points = measured(FAR, new Build(0.02, 0.05), 0.02, 8, new Random(9));
        assertThat(new ServoFit(FAR).fit(points, this::problem)).isNotNull();
        MeasuredPoint bad = points.get(3);
        points.set(3, new MeasuredPoint(bad.line(), bad.turn(), bad.output() + 1.5));
        assertThat(new ServoFit(FAR).fit(points, this::problem)).isNull();
        assertThat(problems).singleElement().asString().startsWith("5: ").contains("off what all other lines say");
    }

    @Test
    void whatIsTooLittleOrTooWildIsRefused() {
        List<MeasuredPoint> points = measured(FAR, Build.AS_DRAWN, 0, 8, new Random(1));
        assertThat(new ServoFit(FAR).fit(points.subList(0, 3), this::problem)).isNull();
        assertThat(new ServoFit(FAR).fit(points.subList(0, 0), this::problem)).isNull();
        List<MeasuredPoint> near = new ArrayList<>();
        for (int i = 0; i < 5; i++) {
            near.add(new MeasuredPoint(i, 0.02 * i, FAR.output(0.02 * i, Build.AS_DRAWN)));
        }
        assertThat(new ServoFit(FAR).fit(near, this::problem)).isNull();
        List<MeasuredPoint> other = new ArrayList<>();
        for (MeasuredPoint point : points) {
            other.add(new MeasuredPoint(point.line(), point.turn(), 30 + point.output() / 3));
        }
        assertThat(new ServoFit(FAR).fit(other, this::problem)).isNull();
        assertThat(problems).hasSize(4);
        assertThat(problems.get(0)).contains("3 different turns").contains("too few");
        assertThat(problems.get(2)).contains("a third of the travel");
    }

    private List<MeasuredPoint> read(String text) {
        return new MeasuredReader(FAR, this::problem).read(text);
    }

    @Test
    void filesAreReadInTheirUnits() {
        double pulse = ServoTable.pulseAt(FAR, 1);
        List<MeasuredPoint> points = read("\uFEFF# mine\r\n\r\nOpening_in , pulse_us\r\n1.5,\"" + pulse + "\"\r\n");
        assertThat(problems).isEmpty();
        assertThat(points).singleElement().satisfies(point -> {
            assertThat(point.line()).isEqualTo(4);
            assertThat(point.output()).isCloseTo(38.1, within(1e-9));
            assertThat(point.turn()).isCloseTo(1, within(1e-9));
        });
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                "# nothing\n",
                "servo,opening_mm\n1,2\n",
                "servo_deg\n1\n",
                "opening_mm\n1\n",
                "servo_deg,pulse_us,opening_mm\n",
                "servo_deg,opening_mm\n1\n",
                "servo_deg,opening_mm\n1,2,3\n",
                "servo_deg,opening_mm\n1,41,5\n",
                "servo_deg,opening_mm\n1,NaN\n",
                "servo_deg,opening_mm\n1,1e3\n",
                "servo_deg,opening_mm\n1,\n",
                "servo_deg,opening_mm\n200,30\n",
                "servo_deg,opening_mm\n-30,30\n",
                "servo_deg,opening_mm\n1,-3\n",
                "servo_deg,opening_mm\n1,900\n",
                "servo_deg,angle_deg\n1,9\n",
                "{\"servo\": 1}",
                "servo_deg;opening_mm\n1;9\n",
                "servo_deg,opening_mm\n1,99999999999999999999999999999999999\n"
            })
    void whatIsNoSuchFileIsToldByLine(String text) {
        read(text);
        assertThat(problems).isNotEmpty().allMatch(problem -> problem.matches("(?s)[0-9]+: .+"));
    }
}
