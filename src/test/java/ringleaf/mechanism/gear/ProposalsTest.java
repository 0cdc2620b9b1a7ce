// SPDX-License-Identifier: Apache-2.0
package ringleaf.mechanism.gear;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import ringleaf.part.Choice;
import ringleaf.part.Design;
import ringleaf.part.Finding;

/** Whatever is proposed is typed as it is told, and does what was promised. */
class ProposalsTest {
    private static final Pattern OTHER = Pattern.compile("(\\d+)/(\\d+) of module ([0-9.]+)");
    private static final Pattern NEAREST =
            Pattern.compile("test.yaml:[0-9:]+ (\\S+): .*the nearest that works is (?:([a-z-]+): )?([-0-9.:]+)(mm)?");

    private static String random(Random random) {
        List<String> lines = new ArrayList<>();
        boolean internal = random.nextInt(4) == 0;
        lines.add("internal: " + internal);
        lines.add("module: " + new double[] {0.5, 0.8, 1, 1.5}[random.nextInt(4)]);
        int driver = 8 + random.nextInt(24);
        int driven = driver + random.nextInt(internal ? 40 : 30);
        if (random.nextBoolean()) {
            lines.add("backlash: " + random.nextInt(20) / 10.0);
        }
        switch (random.nextInt(4)) {
            case 0 -> lines.add("centre-distance: " + (5 + random.nextInt(30)));
            case 1 -> lines.add("overall-length: " + (15 + random.nextInt(40)));
            case 2 -> lines.add("drive: {torque: " + (10 + random.nextInt(400)) + "mNm}");
            default -> lines.add("tips: full");
        }
        String shift = random.nextInt(3) == 0 ? ", profile-shift: " + (random.nextInt(30) - 10) / 10.0 : "";
        String bore = random.nextInt(3) == 0 ? ", bore: {diameter: " + (2 + random.nextInt(20)) + "}" : "";
        String screws = random.nextInt(4) == 0
                ? ", hub-screws: {screw: M2, count: 4, circle: " + (4 + random.nextInt(20)) + "}"
                : "";
        lines.add("driver: {teeth: " + driver + shift + bore + screws + "}");
        lines.add("driven: {teeth: " + driven + "}");
        return Gears.spec("gear-pair", lines.toArray(String[]::new));
    }

    @ParameterizedTest
    @ValueSource(ints = {1, 2, 3, 4})
    void whatIsNearestWorks(int seed) {
        Random random = new Random(seed);
        for (int i = 0; i < 8; i++) {
            String spec = random(random);
            for (String line : Gears.refused(spec).split("\n")) {
                Matcher told = NEAREST.matcher(line);
                if (told.find()) {
                    String path = told.group(1);
                    String key = told.group(2) == null ? path.substring(path.lastIndexOf('.') + 1) : told.group(2);
                    String typed = retyped(spec, path, key, told.group(3));
                    assertThat(Gears.refused(typed)).as(line + "\nin\n" + spec).doesNotContain(" " + path + ": ");
                }
            }
        }
    }

    /** The spec with the value of a path replaced, which is the last of its name after that of its group. */
    private static String retyped(String spec, String path, String key, String value) {
        String field = path;
        int group = field.startsWith("driver.")
                ? spec.indexOf("driver:")
                : field.startsWith("driven.") ? spec.indexOf("driven:") : 0;
        String part = field.contains("hub-screws") ? "hub-screws: {" : field.contains("bore") ? "bore: {" : "";
        int inside = part.isEmpty() ? group : spec.indexOf(part, group);
        int at = spec.indexOf(key + ": ", inside);
        if (at < 0) {
            return spec;
        }
        int from = at + key.length() + 2;
        int to = from;
        while (to < spec.length() && ",}\n".indexOf(spec.charAt(to)) < 0) {
            to++;
        }
        return spec.substring(0, from) + value + spec.substring(to);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "ratio: 5:3|overall-length: 40",
                "ratio: 2|centre-distance: 40",
                "ratio: 1:3|centre-distance: {at-most: 26}",
                "ratio: 4|internal: true|overall-length: 60",
                "ratio: 3|ratio-within: 2%|overall-length: 55|drive: {torque: 50mNm}"
            })
    void otherTeethWorkAsTheyAreTold(String lines) {
        Design taken = Gears.design("gear-pair", lines.split("\\|"));
        Matcher told = OTHER.matcher(choice(taken).how());
        int found = 0;
        while (told.find()) {
            List<String> typed = new ArrayList<>(List.of(lines.split("\\|")));
            typed.add("driver: {teeth: " + told.group(1) + "}");
            typed.add("driven: {teeth: " + told.group(2) + "}");
            typed.add("module: " + told.group(3));
            Design other = Gears.design("gear-pair", typed.toArray(String[]::new));
            assertThat(Gears.failed(other)).as(typed.toString()).isEmpty();
            found++;
        }
        assertThat(found).isPositive();
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "module: 2|ratio: 5:3|overall-length: 40",
                "module: 1|ratio: 2|centre-distance: {at-most: 20}|driver: {teeth: 18}",
                "module: 0.8|ratio: 3|drive: {torque: 3Nm}",
                "internal: true|driver: {teeth: 20}|driven: {teeth: 24}",
                "tips: full|driver: {teeth: 12, profile-shift: 0}|driven: {teeth: 60}",
                "module: 0.4|ratio: 2"
            })
    void remediesWorkAsTheyAreTold(String lines) {
        Design failing = Gears.design("gear-pair", lines.split("\\|"));
        assertThat(Gears.failed(failing)).isNotEmpty();
        assertThat(failing.remedies()).isNotEmpty();
        for (String told : failing.remedies()) {
            String line = told.replace(" would pass", "").replace("driven.teeth: ", "driven: {teeth: ");
            line += line.startsWith("driven: {") ? "}" : "";
            String key = line.substring(0, line.indexOf(':'));
            List<String> typed = new ArrayList<>();
            for (String one : lines.split("\\|")) {
                if (!one.startsWith(key + ":")) {
                    typed.add(one);
                }
            }
            typed.add(line.replace(" mm}", "mm}"));
            List<Finding> failed = Gears.failed(Gears.design("gear-pair", typed.toArray(String[]::new)));
            assertThat(failed).as(typed.toString()).isEmpty();
        }
    }

    /** "The largest of the usual series that fits with these teeth": with the next one the length is not kept. */
    @ParameterizedTest
    @ValueSource(
            strings = {
                "ratio: 5:3|overall-length: 40",
                "ratio: 2|overall-length: 66|driver: {teeth: 12}",
                "internal: true|ratio: 3|overall-length: 80",
                "internal: true|ratio: 3|overall-length: 60|driver: {teeth: 20}",
                "ratio: 1|overall-length: 35.9"
            })
    void noLargerModuleFits(String lines) {
        String[] asked = lines.split("\\|");
        Design taken = Gears.design("gear-pair", asked);
        assertThat(Gears.finding(taken, "overall-length").failed()).isFalse();
        double module = Gears.dimension(taken, "module");
        double next = Double.NaN;
        for (double one : TeethSearch.MODULES) {
            next = Double.isNaN(next) && one > module ? one : next;
        }
        List<String> typed = new ArrayList<>();
        for (String one : asked) {
            if (!one.startsWith("driver")) {
                typed.add(one);
            }
        }
        typed.add("driver: {teeth: " + (int) Gears.dimension(taken, "driver-teeth") + "}");
        typed.add("driven: {teeth: " + (int) Gears.dimension(taken, "driven-teeth") + "}");
        typed.add("module: " + next);
        Design larger = Gears.design("gear-pair", typed.toArray(String[]::new));
        assertThat(Gears.finding(larger, "overall-length").failed())
                .as(typed.toString())
                .isTrue();
    }

    /** The rim of a ring is the outside of the pair. */
    @Test
    void theRimOfARingCounts() {
        Design ring = Gears.design(
                "gear-pair",
                "internal: true",
                "module: 1",
                "driver: {teeth: 18}",
                "driven: {teeth: 60, ring-diameter: 70}");
        assertThat(Gears.dimension(ring, "overall-length")).isEqualTo(70);
    }

    private static Choice choice(Design design) {
        return Gears.choice(design, "teeth");
    }
}
