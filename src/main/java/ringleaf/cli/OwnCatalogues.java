package ringleaf.cli;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import ringleaf.spec.shared.SharedFiles;
import ringleaf.spec.text.Problems;
import ringleaf.spec.text.SpecSource;

/** A user's own catalogues in a folder, laid over the ready ones. */
final class OwnCatalogues implements SharedFiles {
    private static final List<String> NAMES =
            List.of("processes.yaml", "stock.yaml", "servos.yaml", "screws.yaml", "bearings.yaml");

    private final Path folder;
    private final String shown;

    private OwnCatalogues(Path folder, String shown) {
        this.folder = folder;
        this.shown = shown;
    }

    /** The catalogues of {@code --shared}, or none when it was not given. */
    static SharedFiles of(Optional<String> typed, Surroundings surroundings) {
        if (typed.isEmpty()) {
            return NONE;
        }
        String shown = typed.get();
        Path folder = surroundings.place(shown, "the folder of --shared");
        if (!Files.isDirectory(folder)) {
            String reason = Files.exists(folder, LinkOption.NOFOLLOW_LINKS) ? "it is not a folder" : "there is no such folder";
            throw Stop.trouble("cannot read " + shown + ": " + reason);
        }
        for (String name : NAMES) {
            if (Files.exists(folder.resolve(name), LinkOption.NOFOLLOW_LINKS)) {
                return new OwnCatalogues(folder, shown);
            }
        }
        throw Stop.wrong("--shared " + shown + ": the folder holds no catalogue; known: " + String.join(", ", NAMES));
    }

    @Override
    public List<SpecSource> read(String fileName, Problems problems) {
        Path file = folder.resolve(fileName);
        if (!Files.exists(file, LinkOption.NOFOLLOW_LINKS)) {
            return List.of();
        }
        String name = shown.endsWith("/") ? shown + fileName : shown + "/" + fileName;
        try (InputStream in = Files.newInputStream(file)) {
            Optional<SpecSource> source = SpecSource.read(name, in, problems);
            return source.isPresent() ? List.of(source.get()) : List.of();
        } catch (IOException e) {
            throw Trouble.reading(name, e);
        }
    }
}
