// SPDX-License-Identifier: Apache-2.0
package ringleaf.spec.shared;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import ringleaf.spec.field.Field;
import ringleaf.spec.field.FieldSet;
import ringleaf.spec.field.LengthUnit;
import ringleaf.spec.field.Named;
import ringleaf.spec.field.Reading;
import ringleaf.spec.text.Node;
import ringleaf.spec.text.Place;
import ringleaf.spec.text.Problems;
import ringleaf.spec.text.SpecSource;
import ringleaf.spec.text.YamlReader;

class CataloguesTest {
    private final Problems problems = new Problems();
    private final Catalogues ready = new Catalogues(SharedFiles.NONE, problems);

    private Catalogues own(String fileName, String... texts) {
        return new Catalogues(
                (asked, own) -> asked.equals(fileName)
                        ? java.util.stream.Stream.of(texts)
                                .map(t -> SpecSource.of("mine/" + fileName, t))
                                .toList()
                        : List.of(),
                problems);
    }

    @Test
    void everyReadyEntryIsWholeAndEveryValueHasASource() {
        Map<Catalogue<?>, FieldSet> all = new java.util.LinkedHashMap<>();
        all.putAll(Map.of(
                ready.processes(), MakingProcess.FIELDS,
                ready.stock(), Stock.FIELDS,
                ready.servos(), Servo.FIELDS,
                ready.screws(), Screw.FIELDS,
                ready.bearings(), Bearing.FIELDS,
                ready.linearBearings(), LinearBearing.FIELDS,
                ready.belts(), Belt.FIELDS,
                ready.rods(), Rod.FIELDS,
                ready.dowels(), Dowel.FIELDS));
        all.put(ready.boards(), Board.FIELDS);
        all.put(ready.contacts(), Contact.FIELDS);
        assertThat(all).hasSameSizeAs(Catalogues.NAMES);
        for (Map.Entry<Catalogue<?>, FieldSet> each : all.entrySet()) {
            assertThat(each.getKey().names()).isNotEmpty();
            for (String name : each.getKey().names()) {
                Object entry = each.getKey().get(name).orElse(null);
                assertThat(entry).as(name + problems.text()).isNotNull();
                checkSources(entryOf(entry), each.getValue());
            }
        }
        assertThat(problems.text()).isEmpty();
    }

    /** The ready files are read in slices; read as a whole by the YAML library they give the same names and entries. */
    @Test
    void slicesOfTheReadyFilesSayWhatTheWholeFileSays() throws IOException {
        for (String top : Catalogues.NAMES) {
            String text;
            try (InputStream in = Catalogue.class.getResourceAsStream("/ringleaf/shared/" + top + ".yaml")) {
                text = new String(in.readAllBytes(), StandardCharsets.UTF_8);
            }
            Node.Mapping root = (Node.Mapping)
                    YamlReader.read(SpecSource.of(top, text), problems).orElseThrow();
            Node.Mapping whole = (Node.Mapping) root.get(top);
            ReadyFile sliced = new ReadyFile(top + ".yaml", top, text);
            assertThat(root.entries().keySet()).containsExactly("sources", top);
            assertThat(List.copyOf(sliced.names()))
                    .isEqualTo(List.copyOf(whole.entries().keySet()));
            for (String name : sliced.names()) {
                Map<String, String> sources = SourcedEntry.sources(root.get("sources"), problems);
                SourcedEntry expected =
                        SourcedEntry.of(name, root.place(), (Node.Mapping) whole.get(name), sources, false, problems);
                SourcedEntry actual = sliced.entry(name);
                assertThat(actual.sources()).isEqualTo(expected.sources());
                assertThat(plain(actual.values())).isEqualTo(plain(expected.values()));
            }
        }
        assertThat(problems.text()).isEmpty();
    }

    private static String plain(Node node) {
        StringBuilder out = new StringBuilder();
        if (node instanceof Node.Scalar scalar) {
            return scalar.text();
        }
        if (node instanceof Node.Sequence sequence) {
            sequence.items().forEach(item -> out.append(plain(item)).append(','));
            return "[" + out + "]";
        }
        ((Node.Mapping) node).entries().forEach((key, value) -> out.append(key + ':' + plain(value.value()) + ','));
        return "{" + out + "}";
    }

    private static Entry entryOf(Object made) {
        if (made instanceof MakingProcess process) {
            return process.entry();
        }
        if (made instanceof Stock stock) {
            return stock.entry();
        }
        if (made instanceof Servo servo) {
            return servo.entry();
        }
        if (made instanceof Belt belt) {
            return belt.entry();
        }
        if (made instanceof Dowel dowel) {
            return dowel.entry();
        }
        if (made instanceof Rod rod) {
            return rod.entry();
        }
        if (made instanceof LinearBearing bearing) {
            return bearing.entry();
        }
        if (made instanceof Board board) {
            return board.entry();
        }
        if (made instanceof Contact contact) {
            return contact.entry();
        }
        return made instanceof Screw screw ? screw.entry() : ((Bearing) made).entry();
    }

    private static void checkSources(Entry entry, FieldSet fields) {
        List<String> words = List.of("cautions", "summary", "material", "standard", "nut-standard");
        for (Field<?> field : fields.fields()) {
            if (entry.values().isGiven(field) && !words.contains(field.name())) {
                assertThat(entry.source(field))
                        .as(entry.name() + "." + field.name())
                        .isNotEqualTo("given by the user")
                        .as("a short name that the table of sources does not explain")
                        .contains(" ");
            }
        }
    }

    @Test
    void stockIsMadeByProcessesThatExistAndTakeItsThickness() {
        for (String name : ready.stock().names()) {
            Stock stock = ready.stock().get(name).orElseThrow();
            assertThat(stock.processes()).isNotEmpty();
            for (String process : stock.processes()) {
                MakingProcess making = ready.processes().get(process).orElseThrow();
                stock.thickness()
                        .ifPresent(t ->
                                assertThat(making.makesThickness(t)).as(name).isTrue());
                assertThat(making.makesLayers())
                        .as(name)
                        .isEqualTo(List.of("pla", "petg", "resin").contains(name));
            }
            assertThat(stock.slopeLimit())
                    .isEqualTo((name.startsWith("brass")
                                            || name.startsWith("steel")
                                            || name.startsWith("poly")
                                            || name.startsWith("card")
                                            || name.startsWith("plain")
                                    ? 6
                                    : 3)
                            * Math.PI
                            / 180);
            assertThat(stock.yieldStrain()).as(name).isBetween(0.001, 0.05);
        }
    }

    @Test
    void nothingThatTurnsToPoisonInALaserIsListed() {
        for (String name : ready.stock().names()) {
            Stock stock = ready.stock().get(name).orElseThrow();
            assertThat(name + ' ' + stock.material())
                    .doesNotContainIgnoringCase("pvc")
                    .doesNotContain("vinyl")
                    .doesNotContain("polycarbonate")
                    .doesNotContain("chlor");
        }
        assertThat(ready.processes().get("co2-laser").orElseThrow().cautions())
                .anyMatch(c -> c.contains("PVC") && c.contains("polycarbonate"));
    }

    /** Yield over stiffness as printed in the table of check values (ecoursesbook.com material appendix). */
    @ParameterizedTest
    @CsvSource({"brass-0.15, 0.0039, 0.00005", "steel-0.1, 0.0027, 0.00005", "polyester-0.1, 0.02, 0.0005"})
    void yieldStrainFollowsFromTheSources(String name, double strain, double error) {
        assertThat(ready.stock().get(name).orElseThrow().yieldStrain()).isCloseTo(strain, within(error));
    }

    /** ISO 273 as a supplier's table prints it. */
    @ParameterizedTest
    @CsvSource({
        "M1.6, 1.7, 1.8, 2.0",
        "M2, 2.2, 2.4, 2.6",
        "M2.5, 2.7, 2.9, 3.1",
        "M3, 3.2, 3.4, 3.6",
        "M3.5, 3.7, 3.9, 4.2",
        "M4, 4.3, 4.5, 4.8",
        "M5, 5.3, 5.5, 5.8",
        "M6, 6.4, 6.6, 7.0"
    })
    void screwsPassTheirClearanceHoles(String name, double fine, double medium, double coarse) {
        Screw screw = ready.screws().get(name).orElseThrow();
        assertThat(new double[] {screw.clearanceFine(), screw.clearanceMedium(), screw.clearanceCoarse()})
                .containsExactly(fine, medium, coarse);
        assertThat(screw.thread())
                .isEqualTo(Double.parseDouble(name.substring(1)))
                .isGreaterThan(screw.tapDrill());
        assertThat(screw.headDiameter()).isGreaterThan(coarse);
    }

    /** Bore code: 00 to 03 are 10, 12, 15, 17 mm, from 04 up the code times five (a bearing-marking guide). */
    @Test
    void bearingsFollowTheBoreCode() {
        int[] first = {10, 12, 15, 17};
        int checked = 0;
        for (String name : ready.bearings().names()) {
            Bearing bearing = ready.bearings().get(name).orElseThrow();
            String digits = name.replace("z", "");
            assertThat(bearing.outside()).as(name).isGreaterThan(bearing.bore() + bearing.width() / 2);
            if (digits.length() == 4) {
                int code = Integer.parseInt(digits.substring(2));
                assertThat(bearing.bore()).as(name).isEqualTo(code < 4 ? first[code] : 5 * code);
            } else {
                assertThat(bearing.bore()).as(name).isEqualTo(digits.charAt(2) - '0');
            }
            checked++;
        }
        assertThat(checked).isGreaterThan(50);
        assertThat(ready.bearings().get("608").orElseThrow().outside()).isEqualTo(22);
    }

    @Test
    void servosHoldTogether() {
        for (String name : ready.servos().names()) {
            Servo servo = ready.servos().get(name).orElseThrow();
            assertThat(servo.earLength()).as(name).isGreaterThan(servo.holesAlong());
            assertThat(servo.holesAlong()).as(name).isGreaterThan(servo.bodyLength());
            assertThat(servo.axisOffset()).as(name).isLessThan(servo.bodyLength() / 2);
            assertThat(servo.hornHeight()).as(name).isGreaterThan(servo.caseHeight());
            assertThat(servo.hornDiameter()).as(name).isGreaterThan(servo.hornScrewCircle());
            assertThat(Math.round(Math.toDegrees(servo.travel())))
                    .as(name)
                    .isEqualTo(Long.parseLong(name.substring(name.lastIndexOf('-') + 1)));
        }
    }

    @Test
    void anOwnFileGoesOverTheReadyOneValueByValue() {
        Catalogues mine = own(
                "processes.yaml",
                "processes: {fibre-laser: {kerf: {is: 0.045mm, source: measured on my machine}, least-web: 0.7}}");
        MakingProcess process = mine.processes().get("fibre-laser").orElseThrow();
        assertThat(problems.text()).isEmpty();
        assertThat(process.kerf()).isEqualTo(0.045);
        assertThat(process.entry().source(MakingProcess.KERF)).isEqualTo("measured on my machine");
        assertThat(process.leastWeb()).isEqualTo(0.7);
        assertThat(process.entry().source(MakingProcess.LEAST_WEB)).isEqualTo("given by the user");
        assertThat(process.repeatability()).as("stays").isEqualTo(0.03);
        assertThat(mine.processes().names()).contains("co2-laser");
    }

    @Test
    void laterOwnFilesGoOverEarlierOnes() {
        Catalogues mine = own(
                "servos.yaml",
                "servos: {quick: {travel: 90, torque: 2kgcm}}",
                "servos: {quick: {torque: 3kgcm}, micro-180: {travel: 160}}");
        Servo quick = mine.servos().get("quick").orElseThrow();
        assertThat(problems.text()).isEmpty();
        assertThat(quick.torque()).isCloseTo(294.1995, within(1e-9));
        assertThat(quick.travel()).isEqualTo(Math.PI / 2);
        assertThat(quick.bodyLength()).as("from the class that stands in").isEqualTo(22.8);
        assertThat(mine.servos().get("micro-180").orElseThrow().travel()).isCloseTo(Math.toRadians(160), within(1e-12));
    }

    @Test
    void mistakesInAnOwnFileAreToldLikeThoseOfASpec() {
        Catalogues mine = own("stock.yaml", """
                stocks: {}
                stock:
                  brass-0.15: {thikness: 0.2}
                  mine: {material: foil, flatness: -1, made-by: co2-laser}
                  flat: {material: foil, flatness: 0, density: 1g/cm3, stiffness: 3GPa, friction: 1, made-by: co2-laser}
                  odd: 5
                """);
        assertThat(mine.stock().get("mine")).isEmpty();
        assertThat(mine.stock().get("flat")).isEmpty();
        assertThat(problems.text())
                .contains("mine/stock.yaml:1:1: stocks: unknown key")
                .contains("mine/stock.yaml:3:16: brass-0.15.thikness: unknown key; did you mean thickness?")
                .contains("mine/stock.yaml:4:36: mine.flatness: -1 is below the least of 0 mm")
                .contains("mine/stock.yaml:4:3: mine.density: is missing")
                .contains("mine/stock.yaml:5:3: flat.yield-strain: is missing, and so is yield-stress")
                .contains("mine/stock.yaml:6:3: odd: a map of values is wanted");
        Problems other = new Problems();
        new Catalogues((f, p) -> List.of(SpecSource.of("x/" + f, "- 1")), other)
                .screws()
                .names();
        assertThat(other.text()).startsWith("x/screws.yaml: holds no map screws:");
    }

    @Test
    void readsNothingThatIsNotAskedFor() {
        Catalogues broken = new Catalogues(
                (fileName, p) -> {
                    throw new IOException("disk: " + fileName);
                },
                problems);
        assertThatThrownBy(() -> broken.screws().names())
                .isInstanceOf(UncheckedIOException.class)
                .hasMessageContaining("screws.yaml");
    }

    @Test
    void aServoWrittenOutTakesTheRestFromTheMicroClass() {
        FieldSet fields =
                FieldSet.of(Field.named("servo", "servos.yaml", Servo.FIELDS).help("servo"));
        Field<?> field = fields.find("servo");
        SpecSource source = SpecSource.of("a.yaml", "servo: {travel: 120, torque: 1.8kgcm}");
        Node.Mapping map = (Node.Mapping) YamlReader.read(source, problems).orElseThrow();
        Named named = (Named) fields.bind(map, source.whole(), new Reading(LengthUnit.IN, problems))
                .get(field)
                .orElseThrow();
        Servo servo = ready.servo(named).orElseThrow();
        assertThat(servo.travel()).isCloseTo(Math.toRadians(120), within(1e-12));
        assertThat(servo.torque()).isCloseTo(176.5197, within(1e-9));
        assertThat(servo.holesAlong()).isEqualTo(27.8);
        Place place = source.at(1, 8).named("drive.servo");
        assertThat(ready.servo(new Named(Optional.of("mikro-180"), Optional.empty(), place))
                        .orElseThrow()
                        .name())
                .as("the nearest, for the rest of the reading")
                .isEqualTo("micro-180");
        assertThat(problems.text())
                .startsWith("a.yaml:1:8: drive.servo: there is no servo mikro-180 in servos.yaml; "
                        + "did you mean micro-180?");
    }
}
