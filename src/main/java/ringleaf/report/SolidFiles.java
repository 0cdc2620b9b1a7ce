// SPDX-License-Identifier: Apache-2.0
package ringleaf.report;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import ringleaf.draw.mesh.Mesh;
import ringleaf.draw.mesh.PartMesh;
import ringleaf.draw.mesh.StlWriter;
import ringleaf.draw.mesh.ThreeMfWriter;
import ringleaf.geom.Tolerance;
import ringleaf.part.Part;
import ringleaf.part.Words;

/** Solids of parts: an STL for each, and a 3MF plate for all parts of one process and stock. */
public final class SolidFiles {
    private static final String FOLDER = "solids/";

    /**
     * What is to be written.
     *
     * @param stl whether as STL
     * @param threeMf whether as 3MF
     * @param chord how far chords may leave the arcs
     */
    public record Wanted(boolean stl, boolean threeMf, Tolerance chord) {}

    /** A part with an outline, and the mechanism that it belongs to. */
    public record Item(String mechanism, Part part) {}

    private SolidFiles() {}

    /**
     * Adds {@code solids/<mechanism>-<part>.stl} and {@code solids/<process>-<stock>.3mf}.
     *
     * @param program the program with its version, for the files to say
     * @return the paths of each item's files, in order; none where no closed surface bounds the part
     */
    public static List<List<String>> add(List<Item> items, Wanted wanted, String title, String program, FileSet files) {
        List<List<String>> paths = new ArrayList<>();
        Map<String, List<Integer>> plates = new LinkedHashMap<>();
        Map<Integer, Mesh> meshes = new LinkedHashMap<>();
        for (int i = 0; i < items.size(); i++) {
            Part part = items.get(i).part();
            List<String> own = new ArrayList<>();
            paths.add(own);
            Optional<Mesh> made = PartMesh.onBed(part, wanted.chord());
            if (made.isEmpty()) {
                continue;
            }
            Mesh mesh = made.get();
            meshes.put(i, mesh);
            if (wanted.stl()) {
                String name = name(items.get(i));
                String words = "mm, " + exactness(wanted.chord()) + "; " + name + "; " + program;
                own.add(files.add(FOLDER + name + ".stl", StlWriter.write(mesh, words)));
            }
            String plate = FileNames.of(part.source().process()) + "-"
                    + FileNames.of(part.source().stock());
            plates.computeIfAbsent(plate, p -> new ArrayList<>()).add(i);
        }
        if (wanted.threeMf()) {
            for (Map.Entry<String, List<Integer>> plate : plates.entrySet()) {
                List<ThreeMfWriter.Item> on = new ArrayList<>();
                for (int i : plate.getValue()) {
                    Part part = items.get(i).part();
                    on.add(new ThreeMfWriter.Item(name(items.get(i)), meshes.get(i), part.copies()));
                }
                Part.Source source = items.get(plate.getValue().get(0)).part().source();
                String description =
                        source.process() + ", " + source.stock() + "; true size in mm, " + exactness(wanted.chord());
                byte[] bytes = ThreeMfWriter.write(title, description, program, on);
                String path = files.add(FOLDER + plate.getKey() + ".3mf", bytes);
                for (int i : plate.getValue()) {
                    paths.get(i).add(path);
                }
            }
        }
        return paths;
    }

    private static String name(Item item) {
        return FileNames.of(item.mechanism()) + "-" + FileNames.of(item.part().name());
    }

    private static String exactness(Tolerance chord) {
        return "chords within " + Words.number(chord.length(), 4) + " mm of the arcs";
    }
}
