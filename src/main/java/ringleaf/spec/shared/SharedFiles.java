// SPDX-License-Identifier: Apache-2.0
package ringleaf.spec.shared;

import java.io.IOException;
import java.util.List;
import java.util.Optional;
import ringleaf.spec.text.Place;
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

    /**
     * The text of a drawing that a spec names, by its path from the spec.
     *
     * @param asked the field that names it
     * @return empty when it is no text or there are no files, which is then among the problems
     * @throws IOException when it cannot be read
     */
    default Optional<SpecSource> drawing(String path, Place asked, Problems problems) throws IOException {
        problems.at(asked, "no drawing can be read here");
        return Optional.empty();
    }
}
