// SPDX-License-Identifier: Apache-2.0
package ringleaf.draw.format;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import ringleaf.draw.mesh.StlWriter;
import ringleaf.solid.Mesh;

final class StlFormat extends SolidFormat {
    @Override
    public String name() {
        return "stl";
    }

    @Override
    public String writes() {
        return "a closed mesh of each printed part";
    }

    @Override
    public List<FormatOption> options() {
        return List.of(PARTS, CHORD);
    }

    @Override
    public List<FormatFile> write(Solids solids) {
        List<FormatFile> files = new ArrayList<>();
        for (int i = 0; i < solids.items().size(); i++) {
            Solids.Item item = solids.items().get(i);
            Optional<Mesh> mesh = item.mesh(solids.chord());
            if (mesh.isPresent()) {
                String words = "mm, " + solids.exactness() + "; " + item.stem() + "; " + solids.program();
                files.add(new FormatFile(path(item.stem()), StlWriter.write(mesh.get(), words), List.of(i)));
            }
        }
        return files;
    }
}
