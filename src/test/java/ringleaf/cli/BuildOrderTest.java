// SPDX-License-Identifier: Apache-2.0
package ringleaf.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import ringleaf.Spoken;
import ringleaf.part.Assembly;
import ringleaf.part.BuildStep;
import ringleaf.part.Built;
import ringleaf.part.Design;
import ringleaf.part.Finding;
import ringleaf.part.Placing;
import ringleaf.verify.Judge;
import ringleaf.verify.Options;

/** The build orders that the kinds give: everything is put to its place, in one piece, and has room on its way. */
class BuildOrderTest {
    private static final String APERTURE = "title: S\nmechanisms:\n  shutter: {kind: leaf-aperture, full-opening: 64,"
            + " least-opening: 20, blades: 14, blade-thickness: %s, %s}\n";

    @TempDir
    Path folder;

    private List<Assembly> assemblies(String spec) {
        Asked asked = new Asked(spec, List.of(), 7, false, Optional.empty());
        List<Assembly> all = new ArrayList<>();
        for (Design design : Run.read(asked, new Surroundings(folder, false, false), InputStream.nullInputStream())
                .design()) {
            all.add(design.assembly());
        }
        return all;
    }

    private Assembly aperture(String thickness, String more) throws IOException {
        Files.writeString(folder.resolve("s.yaml"), APERTURE.formatted(thickness, more));
        return assemblies("s.yaml").get(0);
    }

    private static List<Finding> order(Assembly assembly) {
        List<Finding> found =
                new ArrayList<>(Judge.judge(assembly, Options.DEFAULT).findings());
        found.removeIf(f -> !f.check().equals("build-order"));
        return found;
    }

    private static void assertWhole(Assembly assembly) {
        Built built = new Built(assembly.members().size());
        for (BuildStep step : assembly.steps()) {
            for (Placing placing : step.placings()) {
                built.join(placing);
            }
        }
        assertThat(built.loose()).as(assembly.name()).isEmpty();
        assertThat(built.isOne()).as(assembly.name()).isTrue();
        assertThat(order(assembly))
                .singleElement()
                .satisfies(f -> assertThat(f.status()).as(Spoken.of(f)).isEqualTo(Finding.Status.PASS));
    }

    private static List<String> presets() {
        return Presets.names();
    }

    @ParameterizedTest
    @MethodSource("presets")
    void presetsGoTogether(String preset) {
        for (Assembly assembly : assemblies(preset)) {
            assertWhole(assembly);
        }
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "hand: right",
                "drive: {servo: micro-180}",
                "drive: {servo: micro-180}, hand: right",
                "drive-pin: far-end, drive: {by: step-up, module: 0.8}",
                "drive-pin: lever",
                "drive-pin: lever, drive: {servo: micro-180}, hand: right"
            })
    void aperturesGoTogether(String more) throws IOException {
        assertWhole(aperture("0.15", more));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "belt-drive, belt: T2.5, ratio: 5:2, centre-distance: 70",
                "belt-drive, belt: T2.5, ratio: 5:2, centre-distance: 70, plates: none",
                "belt-drive, belt: T2.5, ratio: 5:2, centre-distance: 70, plates: one, servo: micro-180",
                "belt-drive, belt: T2.5, driver: {teeth: 19}, driven: {teeth: 12}, centres: fixed, centre-distance: 125,"
                        + " idler: {side: inside, along: 0.6}, belt-teeth: 133",
                "belt-drive, belt: T2.5, driver: {teeth: 19}, driven: {teeth: 24}, centres: fixed, centre-distance: 70,"
                        + " idler: {side: outside}, plates: two",
                "gear-train, ratio: 12, module: 1"
            })
    void drivesGoTogether(String kind) throws IOException {
        Files.writeString(folder.resolve("d.yaml"), "title: D\nmechanisms:\n  drive: {kind: " + kind + "}\n");
        assertWhole(assemblies("d.yaml").get(0));
    }

    /** The servo plate hides the back of the base: a wheel behind it has to go in before. */
    @Test
    void aWheelBehindThePlateIsFoundWhenItComesTooLate() throws IOException {
        Assembly a = aperture("0.15", "drive-pin: far-end, drive: {by: step-up, module: 0.8}");
        List<BuildStep> late = new ArrayList<>(a.steps());
        int wheel = step(late, "Press and glue the step wheel");
        int servo = step(late, "Screw the servo by its ears");
        assertThat(wheel).isLessThan(servo);
        Collections.swap(late, wheel, servo);
        Assembly wrong = new Assembly(
                a.name(), a.members(), a.motion(), a.leaves(), a.requirements(), a.callouts(), late, a.views());
        assertThat(order(wrong)).singleElement().satisfies(f -> {
            assertThat(f.failed()).isTrue();
            assertThat(Spoken.of(f)).contains("cannot come up to its place past the");
        });
    }

    private static int step(List<BuildStep> steps, String begins) {
        for (int i = 0; i < steps.size(); i++) {
            if (steps.get(i).words().startsWith(begins)) {
                return i;
            }
        }
        throw new AssertionError(begins);
    }

    /** Other blades pass over a short lever's pin: by formulas, by outlines over the travel, and as it is built. */
    @Test
    void aLeverUnderOtherBladesCannotBeBuilt() throws IOException {
        Files.writeString(folder.resolve("s.yaml"), APERTURE.formatted("0.15", "lever: 5"));
        Ran ran = Ran.in(folder, "check", "s.yaml");
        assertThat(ran.exit()).isEqualTo(1);
        assertThat(ran.err().replaceAll("\\s+", " "))
                .contains("fail pin-clearance", "fail build-order", "cannot come down to its place past the drive-pin")
                .contains("drive-pin, on its lever, beside the other blades (calculated, and on the geometry)")
                .contains("one that points outward far enough would do: lever: 11.66 mm with lever-angle: -15.3°")
                .contains("lever: 11.7 mm would fit (now 5 mm)");
    }
}
