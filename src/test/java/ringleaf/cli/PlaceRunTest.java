// SPDX-License-Identifier: Apache-2.0
package ringleaf.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import ringleaf.kinds.Kinds;
import ringleaf.mechanism.BodyName;

/** Where mechanisms of a spec stand, from the text to the files. */
class PlaceRunTest {
    private static final String HEAD = "title: Two lamps\nmechanisms:\n";
    private static final String SHUTTER = "  shutter:\n    kind: leaf-aperture\n    full-opening: 30\n"
            + "    least-opening: 10\n    blades: 8\n    blade-thickness: 0.2\n";
    private static final String STOP = SHUTTER.replace("shutter", "stop");

    @TempDir
    Path folder;

    private Ran run(String spec, String command, String... more) throws IOException {
        Files.writeString(folder.resolve("two.yaml"), spec);
        String[] args = new String[2 + more.length];
        args[0] = command;
        args[1] = "two.yaml";
        System.arraycopy(more, 0, args, 2, more.length);
        return Ran.in(folder, args);
    }

    @Test
    void twoAperturesAtOnePlaceFailAndTheProposedPlaceWorks() throws IOException {
        Ran ran = run(HEAD + SHUTTER + STOP, "check");
        assertThat(ran.exit()).isEqualTo(1);
        String said = ran.err().replaceAll("\\s+", " ");
        assertThat(said).contains("mechanisms-apart").contains("shutter's").contains("for stop would stand clear");
        String place = said.replaceAll(".*place: (\\{at: \\{x: [0-9]+mm\\}\\}).*", "$1");
        assertThat(run(HEAD + SHUTTER + STOP + "    place: " + place + "\n", "check")
                        .exit())
                .isZero();
    }

    @Test
    void oneBehindTheOtherIsJudgedByHeights() throws IOException {
        assertThat(run(HEAD + SHUTTER + STOP + "    place: {at: {z: 1in}}\n", "check")
                        .exit())
                .isZero();
        Ran near = run(HEAD + SHUTTER + STOP + "    place: {at: {z: 2}}\n", "check");
        assertThat(near.exit()).isEqualTo(1);
    }

    @Test
    void whereThingsStandIsToldInEveryFile() throws IOException {
        String turned = "    place: {on: shutter.ring, at: {x: 1in, z: 40}, turn: {z: 90, x: 180}}\n";
        Ran ran = run(HEAD + SHUTTER + STOP + turned, "make", "--states", "5", "-o", "out");
        assertThat(ran.exit()).as(ran.err()).isZero();
        JsonNode design = new ObjectMapper().readTree(Files.readString(folder.resolve("out/design.json")));
        JsonNode place = design.get("mechanisms").get("stop").get("place");
        assertThat(place.get("on").textValue()).isEqualTo("shutter.ring");
        assertThat(place.get("at").get(0).doubleValue()).isEqualTo(25.4);
        // First a quarter about z takes x to y, then half a turn about x takes y to -y.
        assertThat(place.get("x").get(1).doubleValue()).isCloseTo(-1, within(1e-9));
        assertThat(place.get("z").get(2).doubleValue()).isCloseTo(-1, within(1e-9));
        String page = Files.readString(folder.resolve("out/report.html"));
        assertThat(page)
                .contains("Stands on shutter.ring at (25.4, 0, 40) mm")
                .contains("Stands on the ground at (0, 0, 0) mm");
        assertThat(Files.readString(folder.resolve("out/views/stop-open.svg")))
                .contains("on shutter.ring at (25.4, 0, 40) mm");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "{on: shuter.ring}           | 15:17 | did you mean shutter.ring?",
                "{on: shutter.rnig}          | 15:17 | did you mean shutter.ring?",
                "{on: shutter}               | 15:17 | does not say which body of shutter carries",
                "{on: shutter.pinion}        | 15:17 | it has frame, ring",
                "{on: stop.ring}             | 15:17 | one of them must stand on ground",
                "{at: {x: 6m}}               | 15:22 | m is not a unit of a length",
                "{at: {x: 5001}}             | 15:21 | 5 m is as far as anything here reaches",
                "{turn: {w: 5}}              | 15:20 | unknown key",
                "{turn: {x: .nan}}           | 15:23 | angle",
                "{upon: ground}              | 15:13 | unknown key",
                "[1, 2]                      | 15:12 | a map of keys and values is wanted",
            })
    void whatCannotStandIsRefusedWhereItIsWritten(String place, String where, String words) throws IOException {
        Ran ran = run(HEAD + SHUTTER + STOP + "    place: " + place.strip() + "\n", "check");
        assertThat(ran.exit()).as(ran.err()).isEqualTo(2);
        assertThat(ran.err()).contains("two.yaml:" + where.strip()).contains(words.strip());
    }

    @Test
    void aCircleOfCarriersIsRefused() throws IOException {
        Ran ran = run(
                HEAD + SHUTTER + "    place: {on: stop.ring}\n" + STOP + "    place: {on: shutter.frame}\n", "check");
        assertThat(ran.exit()).isEqualTo(2);
        assertThat(ran.err()).contains("two.yaml:9:17").contains("shutter on stop on shutter");
    }

    @Test
    void everyKindListsItsBodiesInItsHelpAndItsDesignsHaveNoOthers() {
        for (var kind : Kinds.REGISTERED.all()) {
            List<String> names = kind.bodies().stream().map(BodyName::name).toList();
            assertThat(names).startsWith(BodyName.FRAME).doesNotHaveDuplicates();
            String help = Ran.in(folder, "help", kind.name()).out();
            assertThat(help).contains("place.turn.x");
            for (String name : names) {
                assertThat(help).contains("\n  " + name + ": ");
            }
        }
        for (String preset : Presets.names()) {
            Run run = Run.read(
                    new Asked(preset, List.of(), 5, false, Optional.empty()),
                    new Surroundings(folder, false, false),
                    java.io.InputStream.nullInputStream());
            for (var design : run.design()) {
                List<String> names = Kinds.REGISTERED.named(design.kind()).bodies().stream()
                        .map(BodyName::name)
                        .toList();
                assertThat(design.assembly().bodies().keySet()).isNotEmpty().isSubsetOf(names);
                int most = design.assembly().members().stream()
                        .mapToInt(m -> m.body())
                        .max()
                        .orElseThrow();
                assertThat(design.assembly().bodies().values()).allMatch(body -> body <= most);
            }
        }
    }

    private static final String BEHIND = HEAD + SHUTTER + STOP + "    place: {on: shutter.ring, at: {z: 40}}\n";

    /** What is found between the two is some 30 mm; more than that cannot be asked. */
    @Test
    void moreRoomIsAskedForByApart() throws IOException {
        Ran ran = run(BEHIND + "apart: {least: 1in}\n", "make", "--states", "5", "-o", "out");
        assertThat(ran.exit()).as(ran.err()).isZero();
        List<String> rows = Files.readAllLines(folder.resolve("out/clearances.csv"));
        assertThat(rows).hasSize(2);
        String[] row = rows.get(1).split(",");
        assertThat(row[2]).isEqualTo("25.4");
        double found = Double.parseDouble(row[3]);
        assertThat(found).isGreaterThan(25.4);
        assertThat(Double.parseDouble(row[4])).isLessThanOrEqualTo(found);
        assertThat(row[5]).isEqualTo("proved");
        String more = "apart: {least: 1mm, pairs: [{between: [stop, shutter], least: " + (found + 0.1) + "mm}]}\n";
        assertThat(run(BEHIND + more, "check").exit()).isEqualTo(1);
        String other = "apart: {least: 1mm, pairs: [{between: [stop, shutter], least: " + (found - 0.1) + "mm}]}\n";
        assertThat(run(BEHIND + other, "check").exit()).isZero();
        assertThat(run(HEAD + SHUTTER, "make", "-o", "alone").exit()).isZero();
        assertThat(folder.resolve("alone/clearances.csv")).doesNotExist();
    }

    /** The bars of two racks come out towards each other in one line: both out, they meet; with one of them in, they do not. */
    @Test
    void whatFollowsIsJudgedOnlyWhereItCanBe() throws IOException {
        String rack = ": {kind: rack, stroke: 40, drive: {servo: standard-180}, eye: 3";
        String both = HEAD + "  one" + rack + "}\n  other" + rack
                + ", place: {at: {x: %dmm, y: -48mm}, turn: {z: 180deg}}}\n";
        assertThat(run(String.format(Locale.ROOT, both, 220), "check").exit()).isZero();
        String near = String.format(Locale.ROOT, both, 190);
        assertThat(run(near, "check").exit()).isEqualTo(1);
        String led = near + "follows: [{drive: other.travel, of: one.travel, by: 0.001}]\n";
        assertThat(run(led, "check").exit()).isZero();
        assertThat(run(led.replace("0.001", "1"), "check").exit()).isEqualTo(1);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "apart: {least: -1}|below the least of 0 mm",
                "apart: {pairs: [{between: [stop, shuter], least: 1}]}|did you mean shutter?",
                "apart: {pairs: [{between: [stop, stop], least: 1}]}|two different things",
                "apart: {pairs: [{between: [stop, shutter.blade], least: 1}]}|nothing called",
                "follows: [{drive: stop.travel, of: shutter.opening}]|there is no drive shutter.opening",
                "follows: [{drive: stop.travel, of: stop.travel}]|goes along with itself",
                "follows: [{drive: stop.travel}]|follows.of: is missing",
                "follows: [{drive: stop.travel, of: shutter.travel, by: 2}]|above the most of 1",
                "follows: [{drive: stop.travel, of: shutter.travel}, {drive: shutter.travel, of: stop.travel}]|itself"
            })
    void mistakesInBothAreToldInTheirPlaces(String line, String told) throws IOException {
        Ran ran = run(BEHIND + line + "\n", "check");
        assertThat(ran.exit()).as(ran.err()).isEqualTo(2);
        assertThat(ran.err()).contains("two.yaml:").contains(told);
    }
}
