// SPDX-License-Identifier: Apache-2.0
package ringleaf.draw.format;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import ringleaf.draw.step.StepWriter;
import ringleaf.part.Part;

final class StepFormat extends SolidFormat {
    @Override
    public String name() {
        return "step";
    }

    @Override
    public String writes() {
        return "an exact solid of each part, for modelling packages";
    }

    @Override
    public boolean isPrinted() {
        return false;
    }

    @Override
    public List<FormatOption> options() {
        return List.of(PARTS);
    }

    @Override
    public List<FormatFile> write(Solids solids) {
        List<FormatFile> files = new ArrayList<>();
        for (int i = 0; i < solids.items().size(); i++) {
            Solids.Item item = solids.items().get(i);
            Part.Source source = item.part().source();
            String words = source.process() + ", " + source.stock() + "; mm, lines and arcs exact";
            Optional<byte[]> bytes = StepWriter.part(item.part(), item.stem(), words, solids.program());
            if (bytes.isPresent()) {
                files.add(new FormatFile(path(item.stem()), bytes.get(), List.of(i)));
            }
        }
        return files;
    }
}
