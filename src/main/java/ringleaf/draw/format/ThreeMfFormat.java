// SPDX-License-Identifier: Apache-2.0
package ringleaf.draw.format;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import ringleaf.draw.mesh.ThreeMfWriter;
import ringleaf.part.Part;
import ringleaf.solid.Mesh;

/** 3MF: a plate for all parts of one process and stock, by name and in the number that is needed. */
final class ThreeMfFormat extends SolidFormat {
    @Override
    public String name() {
        return "3mf";
    }

    @Override
    public String writes() {
        return "a plate of all printed parts of one stock";
    }

    @Override
    public List<FormatOption> options() {
        return List.of(PARTS, CHORD);
    }

    private record Plate(List<ThreeMfWriter.Item> items, List<Integer> of) {}

    @Override
    public List<FormatFile> write(Solids solids) {
        Map<String, Plate> plates = new LinkedHashMap<>();
        for (int i = 0; i < solids.items().size(); i++) {
            Solids.Item item = solids.items().get(i);
            Optional<Mesh> mesh = item.mesh(solids.chord());
            if (mesh.isPresent()) {
                Plate plate =
                        plates.computeIfAbsent(item.plate(), p -> new Plate(new ArrayList<>(), new ArrayList<>()));
                int copies = item.part().copies();
                plate.items.add(new ThreeMfWriter.Item(item.stem(), mesh.get(), copies));
                plate.of.add(i);
            }
        }
        List<FormatFile> files = new ArrayList<>();
        for (Map.Entry<String, Plate> plate : plates.entrySet()) {
            List<Integer> of = plate.getValue().of;
            Part.Source source = solids.items().get(of.get(0)).part().source();
            String words = source.process() + ", " + source.stock() + "; true size in mm, " + solids.exactness();
            byte[] bytes = ThreeMfWriter.write(solids.title(), words, solids.program(), plate.getValue().items);
            files.add(new FormatFile(path(plate.getKey()), bytes, of));
        }
        return files;
    }
}
