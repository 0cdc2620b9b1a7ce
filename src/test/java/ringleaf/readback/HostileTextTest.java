// SPDX-License-Identifier: Apache-2.0
package ringleaf.readback;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.api.Test;
import ringleaf.draw.Drawings;
import ringleaf.draw.dxf.DxfVersion;
import ringleaf.draw.dxf.DxfWriter;
import ringleaf.draw.format.Formats;
import ringleaf.draw.svg.SvgWriter;
import ringleaf.geom.Point;
import ringleaf.geom.Region;
import ringleaf.part.Design;
import ringleaf.part.Family;
import ringleaf.part.Layer;
import ringleaf.part.MotionTable;
import ringleaf.part.Part;
import ringleaf.report.DesignJson;
import ringleaf.report.FileSet;
import ringleaf.report.MechanismReport;
import ringleaf.report.PartFiles;
import ringleaf.report.PartsCsv;

/** Names and notes with markup, line breaks and worse leave every file readable and its drawing as it was. */
class HostileTextTest {
    private static final List<String> BAD = List.of(
            "</title><script>alert(1)</script>",
            "a]]><!-- -- & \" ' <",
            "line\n0\nEOF\n0\nSECTION",
            "\u0000\u0001\u001b[2J\u0085\u2028",
            "\ud800 lone \udc00",
            "../../etc/passwd",
            "=1+1,\"x\"\r\ny",
            "%%d \\U+00D8 Ø \uD83D\uDCA1");

    private static Part part(String text) {
        Region ring = Region.ring(Point.ORIGIN, 10, 30);
        return new Part(
                text, Family.PLATE, 1, new Part.Source(text, text), List.of(Layer.of(ring, 0, 3)), List.of(), text);
    }

    private static String random(Random random) {
        StringBuilder out = new StringBuilder();
        for (int i = 0; i < 30; i++) {
            out.append((char) (random.nextInt(4) == 0 ? random.nextInt(0x10000) : random.nextInt(0x100)));
        }
        return out.toString();
    }

    @Test
    void drawingsStayReadable() throws Exception {
        long seed = 99;
        Random random = new Random(seed);
        for (int i = 0; i < 60; i++) {
            String text = i < BAD.size() ? BAD.get(i) : random(random);
            Part part = part(text);
            SvgReader svg = new SvgReader(SvgWriter.write(Drawings.of(part)));
            assertThat(svg.root().getElementsByTagName("script").getLength()).isZero();
            assertThat(svg.figures.stream().filter(f -> f.layer().equals("cut")))
                    .as("seed " + seed)
                    .hasSize(2);
            for (DxfVersion version : DxfVersion.values()) {
                byte[] file = DxfWriter.write(Drawings.of(part), version);
                boolean plain = true;
                for (byte b : file) {
                    plain &= b == '\n' || b >= ' ' && b < 127;
                }
                assertThat(plain).as("ASCII only").isTrue();
                DxfReader dxf = new DxfReader(file);
                assertThat(dxf.figures.stream().filter(f -> f.layer().equals("cut")))
                        .hasSize(2);
            }
        }
    }

    @Test
    void reportsStayReadable() throws Exception {
        Random random = new Random(100);
        for (int i = 0; i < 60; i++) {
            String text = i < BAD.size() ? BAD.get(i) : random(random);
            MotionTable motion = new MotionTable(List.of(), List.of(), "", List.of());
            Design design = new Design(
                    text,
                    "k",
                    List.of(),
                    List.of(),
                    List.of(part(text)),
                    null,
                    motion,
                    List.of(),
                    Map.of(),
                    List.of(text));
            FileSet files = new FileSet();
            Map<String, List<String>> paths =
                    PartFiles.add(design, new PartFiles.Wanted(Formats.outlines(), Map.of()), files);
            assertThat(files.files().keySet()).allMatch(p -> p.matches("parts/[a-z0-9-]+\\.(svg|dxf)"));
            byte[] json = DesignJson.write(
                    "1", text, List.of(new MechanismReport(design, List.of(), paths)), List.of(), Map.of());
            JsonNode node = new ObjectMapper().readTree(json);
            assertThat(node.get("mechanisms").size()).isEqualTo(1);
            String csv = new String(PartsCsv.write(List.of(design)), StandardCharsets.UTF_8);
            assertThat(csv.lines().toList()).hasSize(2);
            assertThat(csv.lines().toList().get(1)).doesNotStartWith("=").doesNotStartWith("\"=");
        }
    }
}
