// SPDX-License-Identifier: Apache-2.0
package ringleaf.readback;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.MethodSource;
import ringleaf.draw.Drawing;
import ringleaf.draw.DrawingLayer;
import ringleaf.draw.Drawings;
import ringleaf.draw.Drawn;
import ringleaf.draw.LayerStyle;
import ringleaf.draw.dxf.DxfVersion;
import ringleaf.draw.dxf.DxfWriter;
import ringleaf.geom.Arc;
import ringleaf.geom.Box;
import ringleaf.geom.Path;
import ringleaf.geom.Point;
import ringleaf.part.Part;

/** What readers do not notice, but what a file must hold: handles, owners, layers, view, kinds of entities. */
class DxfStructureTest {
    static Stream<Part> parts() {
        return Samples.all(3).stream();
    }

    @ParameterizedTest
    @MethodSource("parts")
    void fullFileHangsTogether(Part part) {
        DxfReader read = new DxfReader(DxfWriter.write(Drawings.of(part), DxfVersion.AC1015));
        assertThat(read.sections)
                .containsExactly("HEADER", "CLASSES", "TABLES", "BLOCKS", "ENTITIES", "OBJECTS", "EOF");
        assertThat(read.header.get("$ACADVER").get(0).value()).isEqualTo("AC1015");
        Set<String> tables = new TreeSet<>();
        Map<String, DxfReader.Item> byHandle = new HashMap<>();
        long greatest = 0;
        for (DxfReader.Item item : read.items) {
            if (item.type().equals("TABLE")) {
                tables.add(item.first(2));
            }
            if (item.section().equals("CLASSES") || item.type().equals("ENDTAB")) {
                continue;
            }
            String handle = item.type().equals("DIMSTYLE") ? item.first(105) : item.first(5);
            assertThat(handle).as(item.type() + " has a handle").isNotNull();
            assertThat(byHandle.put(handle, item))
                    .as("handle " + handle + " once")
                    .isNull();
            greatest = Math.max(greatest, Long.parseLong(handle, 16));
        }
        assertThat(tables)
                .containsExactly(
                        "APPID", "BLOCK_RECORD", "DIMSTYLE", "LAYER", "LTYPE", "STYLE", "UCS", "VIEW", "VPORT");
        String seed = read.header.get("$HANDSEED").get(0).value();
        assertThat(Long.parseLong(seed, 16)).isGreaterThan(greatest);
        for (DxfReader.Item item : byHandle.values()) {
            for (DxfReader.Pair pair : item.pairs()) {
                boolean refers = pair.code() == 330 || pair.code() == 340 || pair.code() == 350 || pair.code() == 390;
                if (refers && !pair.value().equals("0")) {
                    assertThat(byHandle).as(item.type() + " refers to").containsKey(pair.value());
                }
            }
        }
        DxfReader.Item model = byHandle.values().stream()
                .filter(i -> i.type().equals("BLOCK_RECORD") && i.first(2).equals("*Model_Space"))
                .findFirst()
                .orElseThrow();
        assertThat(read.itemsOf("ENTITIES")).allMatch(e -> e.first(330).equals(model.first(5)));
        assertThat(read.itemsOf("ENTITIES"))
                .allMatch(e -> Set.of("CIRCLE", "LWPOLYLINE").contains(e.type()));
    }

    @ParameterizedTest
    @MethodSource("parts")
    void layersAreDeclaredAndTheViewShowsThePart(Part part) {
        for (DxfVersion version : DxfVersion.values()) {
            DxfReader read = new DxfReader(DxfWriter.write(Drawings.of(part), version));
            Set<String> layers = new HashSet<>();
            for (DxfReader.Item item : read.items) {
                if (item.type().equals("LAYER")) {
                    layers.add(item.first(2));
                }
            }
            assertThat(read.itemsOf("ENTITIES")).allMatch(e -> layers.contains(e.first(8)));
            DxfReader.Item port = read.items.stream()
                    .filter(i -> i.type().equals("VPORT") && "*ACTIVE".equalsIgnoreCase(i.first(2)))
                    .findFirst()
                    .orElseThrow();
            Box box = part.box();
            assertThat(port.number(12)).isEqualTo(box.centre().x(), within(1e-6));
            assertThat(port.number(22)).isEqualTo(box.centre().y(), within(1e-6));
            assertThat(port.number(40)).isGreaterThan(box.height());
            assertThat(port.number(40) * port.number(41)).isGreaterThan(box.width());
        }
    }

    @ParameterizedTest
    @MethodSource("parts")
    void oldVersionHasOnlyWhatItKnows(Part part) {
        DxfReader read = new DxfReader(DxfWriter.write(Drawings.of(part), DxfVersion.R12));
        assertThat(read.sections).containsExactly("HEADER", "TABLES", "BLOCKS", "ENTITIES", "EOF");
        assertThat(read.header.get("$ACADVER").get(0).value()).isEqualTo("AC1009");
        assertThat(read.pairs).noneMatch(p -> p.code() == 100 || p.code() == 330 || p.code() == 5);
        assertThat(read.itemsOf("ENTITIES"))
                .allMatch(e -> List.of("CIRCLE", "POLYLINE", "VERTEX", "SEQEND").contains(e.type()));
    }

    @ParameterizedTest
    @CsvFileSource(resources = "/reference/dxf-bulge-angles.csv", numLinesToSkip = 2)
    void bulgesAreThePublishedOnes(double angleDeg, double bulge) {
        for (int sense = -1; sense <= 1; sense += 2) {
            Arc arc = Arc.of(new Point(3, 4), 5, 0.7, sense * Math.toRadians(angleDeg));
            Drawing drawing = new Drawing(
                    "arc",
                    List.of(),
                    List.of(new DrawingLayer("mark", LayerStyle.black(0.1), "", List.of(Drawn.of(Path.of(arc))))));
            DxfReader read = new DxfReader(DxfWriter.write(drawing, DxfVersion.AC1015));
            // Over 180 degrees an arc is split in two, whose bulges are those of half the angle.
            double expected = angleDeg > 180 ? Math.tan(Math.toRadians(angleDeg) / 8) : bulge;
            List<DxfReader.Pair> bulges = read.itemsOf("ENTITIES").get(0).pairs().stream()
                    .filter(p -> p.code() == 42)
                    .toList();
            assertThat(bulges).hasSize(angleDeg > 180 ? 2 : 1);
            for (DxfReader.Pair pair : bulges) {
                assertThat(pair.number()).isEqualTo(sense * expected, within(1e-12));
            }
        }
    }
}
