package ringleaf.spec.shared;

import java.io.IOException;
import java.util.List;
import ringleaf.spec.text.Problems;
import ringleaf.spec.text.SpecSource;

/** Where a user's own catalogues come from; whoever knows the file system implements it. */
@FunctionalInterface
public interface SharedFiles {
    /** No own catalogues. */
    SharedFiles NONE = (fileName, problems) -> List.of();

    /**
     * The user's own files of this name, e.g. {@code stock.yaml}; later ones go over earlier ones.
     *
     * @throws IOException when a file exists and cannot be read
     */
    List<SpecSource> read(String fileName, Problems problems) throws IOException;
}
