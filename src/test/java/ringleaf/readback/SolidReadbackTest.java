// SPDX-License-Identifier: Apache-2.0
package ringleaf.readback;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import ringleaf.draw.mesh.PartMesh;
import ringleaf.draw.mesh.StlWriter;
import ringleaf.draw.mesh.ThreeMfWriter;
import ringleaf.geom.Arc;
import ringleaf.geom.Box;
import ringleaf.geom.Contour;
import ringleaf.geom.Point;
import ringleaf.geom.Region;
import ringleaf.geom.Segment;
import ringleaf.geom.Tolerance;
import ringleaf.part.Layer;
import ringleaf.part.Part;
import ringleaf.solid.Mesh;

/** Solids read back by readers that share no code with the writers, and by a public mesh checker. */
class SolidReadbackTest {
    private static final double[] CHORDS = {0.1, 0.01};
    /** What single precision of the heights and six decimals can change of a volume, as a share of it. */
    private static final double ROUNDING = 1e-5;

    @TempDir
    Path folder;

    private static List<Part> samples() {
        List<Part> parts = new ArrayList<>(SolidSamples.all());
        parts.addAll(Samples.all(11));
        return parts;
    }

    private static void assertSolid(ReadMesh read, Part part, double chord) {
        String what = part.name() + " at " + chord;
        assertThat(read.faults()).as(what).isZero();
        double volume = SolidSamples.volume(part);
        double bound = SolidSamples.bound(part, chord) + ROUNDING * volume + SolidSamples.rounding(part);
        assertThat(read.volume()).as(what).isPositive().isCloseTo(volume, within(bound));
        assertThat(read.least(2)).as(what).isZero();
        assertThat(read.greatest(2)).as(what).isCloseTo(part.zTo() - part.zFrom(), within(1e-5));
    }

    @Test
    void stlIsClosedOutwardAndOfTheRightVolume() {
        for (Part part : samples()) {
            for (double chord : CHORDS) {
                byte[] file = StlWriter.write(
                        PartMesh.onBed(part, new Tolerance(chord)).orElseThrow(), "mm; " + part.name());
                assertThat(StlReader.header(file)).isEqualTo("mm; " + part.name());
                assertSolid(StlReader.read(file), part, chord);
            }
        }
        Part finest = SolidSamples.all().get(2);
        byte[] file =
                StlWriter.write(PartMesh.onBed(finest, new Tolerance(0.0005)).orElseThrow(), "");
        assertSolid(StlReader.read(file), finest, 0.0005);
    }

    @Test
    void everyCornerLiesOnTheOutlineAndNoChordLeavesItByMoreThanTheTolerance() {
        double chord = 0.01;
        Part disc = SolidSamples.stack("disc", List.of(Layer.of(Region.disc(new Point(3, 4), 20), 0, 2)));
        ReadMesh read = StlReader.read(
                StlWriter.write(PartMesh.onBed(disc, new Tolerance(chord)).orElseThrow(), ""));
        double least = Double.POSITIVE_INFINITY;
        for (double[] t : read.triangles()) {
            for (int k = 0; k < 9; k += 3) {
                assertThat(Math.hypot(t[k] - 3, t[k + 1] - 4)).isCloseTo(20, within(1e-5));
                int next = (k + 3) % 9;
                boolean wall = t[2] != t[5] || t[5] != t[8];
                if (wall) {
                    double mx = (t[k] + t[next]) / 2 - 3;
                    double my = (t[k + 1] + t[next + 1]) / 2 - 4;
                    least = Math.min(least, Math.hypot(mx, my));
                }
            }
        }
        assertThat(least).isGreaterThan(20 - chord - 1e-5).isLessThan(20 - 0.9 * chord);
    }

    @Test
    void thrownStacksOfLevelsThatShareEdgesAreClosed() {
        for (long seed = 1; seed <= 60; seed++) {
            Part part = SolidSamples.thrown(seed);
            byte[] file =
                    StlWriter.write(PartMesh.onBed(part, new Tolerance(0.01)).orElseThrow(), "");
            assertSolid(StlReader.read(file), part, 0.01);
        }
    }

    @Test
    void plateHasNamesCountsAndRoomBetweenCopies() throws Exception {
        List<ThreeMfWriter.Item> items = new ArrayList<>();
        List<Part> parts = SolidSamples.all();
        int copies = 0;
        for (int i = 0; i < parts.size(); i++) {
            Mesh mesh = PartMesh.onBed(parts.get(i), new Tolerance(0.01)).orElseThrow();
            items.add(new ThreeMfWriter.Item("a <" + parts.get(i).name() + "> & \"b\"", mesh, 1 + 2 * i));
            copies += 1 + 2 * i;
        }
        byte[] file = ThreeMfWriter.write("T & <t>", "chords within 0.01 mm", "ringleaf 0", items);
        assertThat(ThreeMfWriter.write("T & <t>", "chords within 0.01 mm", "ringleaf 0", items))
                .isEqualTo(file);
        ThreeMfReader.Plate plate = ThreeMfReader.read(file);
        assertThat(plate.metadata())
                .containsEntry("Title", "T & <t>")
                .containsEntry("Description", "chords within 0.01 mm")
                .containsEntry("Application", "ringleaf 0");
        assertThat(plate.copies()).hasSize(copies);
        for (int i = 0; i < parts.size(); i++) {
            ThreeMfReader.Solid solid = plate.solids().get(i);
            assertThat(solid.name()).isEqualTo("a <" + parts.get(i).name() + "> & \"b\"");
            assertSolid(solid.mesh(), parts.get(i), 0.01);
            assertThat(plate.copies().stream().filter(c -> c.solid() == solid)).hasSize(1 + 2 * i);
        }
        List<Box> boxes = new ArrayList<>();
        for (ThreeMfReader.Copy copy : plate.copies()) {
            ReadMesh mesh = copy.solid().mesh();
            Box box = new Box(
                    mesh.least(0) + copy.dx(),
                    mesh.least(1) + copy.dy(),
                    mesh.greatest(0) + copy.dx(),
                    mesh.greatest(1) + copy.dy());
            assertThat(Math.min(box.minX(), box.minY())).isGreaterThan(-1e-5);
            for (Box other : boxes) {
                assertThat(box.grown(2).meets(other.grown(2))).isFalse();
            }
            boxes.add(box);
        }
        assertThat(plate.copies().stream().map(ThreeMfReader.Copy::number)).doesNotHaveDuplicates();
    }

    @Test
    void largerFaceLiesOnTheBedAndNothingIsMirrored() {
        Part pinned = SolidSamples.all().get(1);
        ReadMesh read = StlReader.read(
                StlWriter.write(PartMesh.onBed(pinned, new Tolerance(0.01)).orElseThrow(), ""));
        double onBed = 0;
        double pinX = 0;
        int pinCorners = 0;
        for (double[] t : read.triangles()) {
            if (t[2] == 0 && t[5] == 0 && t[8] == 0) {
                onBed += Math.abs((t[3] - t[0]) * (t[7] - t[1]) - (t[4] - t[1]) * (t[6] - t[0])) / 2;
            }
            for (int k = 0; k < 9; k += 3) {
                if (t[k + 2] > 1) {
                    pinX += t[k];
                    pinCorners++;
                    assertThat(Math.hypot(t[k] - 37.4, t[k + 1])).isCloseTo(0.75, within(1e-5));
                }
            }
        }
        double blade = pinned.layers().get(1).regions().get(0).area();
        assertThat(onBed).isCloseTo(blade, within(SolidSamples.bound(pinned, 0.01)));
        // the band lies at y > 0 as drawn; turned over about x it lies at y < 0, with its pin still on +x
        assertThat(read.least(1)).isLessThan(-40);
        assertThat(pinX / pinCorners).isCloseTo(37.4, within(0.2));
    }

    @Test
    void moreToleranceGivesFewerTrianglesAndTheFewestPossible() {
        Part disc = SolidSamples.stack("disc", List.of(Layer.of(Region.disc(Point.ORIGIN, 30), 0, 2)));
        // n chords: sagitta 30 (1 - cos(pi/n)) within the tolerance; 2 n walls and 2 (n - 2) faces
        for (double[] known : new double[][] {{0.1, 39}, {0.01, 122}, {0.001, 385}}) {
            assertThat(PartMesh.of(disc, new Tolerance(known[0])).orElseThrow().triangleCount())
                    .isEqualTo((int) (4 * known[1] - 4));
        }
    }

    @Test
    void partsOfOneLevelHaveTheFewestTrianglesThatChordsWithinTheToleranceAllow() {
        Tolerance chord = new Tolerance(0.01);
        for (Part part : Samples.all(3)) {
            if (part.layers().size() > 1) {
                continue;
            }
            int corners = 0;
            int holes = -1;
            for (Contour contour : part.layers().get(0).regions().get(0).contours()) {
                holes++;
                for (Segment segment : contour.segments()) {
                    // a chord of sagitta 0.01 spans 2 acos(1 - 0.01 / r)
                    corners += segment instanceof Arc arc
                            ? (int) Math.max(
                                    arc.isCircle() ? 3 : 1,
                                    Math.ceil(Math.abs(arc.sweep())
                                                    / (2 * Math.acos(Math.max(-1, 1 - 0.01 / arc.radius())))
                                            - 1e-7))
                            : 1;
                }
            }
            // two triangles for each wall, and n + 2 h - 2 for each of two faces of n corners with h holes
            assertThat(PartMesh.of(part, chord).orElseThrow().triangleCount())
                    .as(part.name())
                    .isEqualTo(2 * corners + 2 * (corners + 2 * holes - 2));
        }
    }

    @Test
    void whatTouchesItselfAlongAnEdgeHasNoSolid() {
        Region one = Region.of(Contour.rectangle(new Box(0, 0, 5, 5)));
        Region next = Region.of(Contour.rectangle(new Box(5, 0, 9, 5)));
        Part stair = SolidSamples.stack("stair", List.of(Layer.of(one, 0, 1), Layer.of(next, 1, 2)));
        assertThat(PartMesh.of(stair, new Tolerance(0.01))).isEmpty();
    }

    @Test
    void publicCheckerFindsNoFault() throws Exception {
        assumeTrue(MeshChecker.isThere(), "no admesh");
        List<Part> parts = samples();
        for (long seed = 200; seed < 220; seed++) {
            parts.add(SolidSamples.thrown(seed));
        }
        for (Part part : parts) {
            Path file = folder.resolve(part.name() + ".stl");
            Files.write(
                    file,
                    StlWriter.write(PartMesh.onBed(part, new Tolerance(0.01)).orElseThrow(), "mm"));
            double volume = SolidSamples.volume(part);
            // hollows inside a thrown stack count as bodies of their own
            assertThat(MeshChecker.volume(file, part.name().startsWith("thrown") ? 0 : 1))
                    .as(part.name())
                    .isCloseTo(volume, within(SolidSamples.bound(part, 0.01) + 1e-4 * volume));
        }
    }
}
