package ringleaf.cli;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import ringleaf.spec.shared.SharedFiles;
import ringleaf.spec.text.Problems;
import ringleaf.spec.text.SpecSource;

/** A user's own catalogues, laid over the ready ones: those in {@code shared/} beside the spec, then {@code --shared}. */
final class OwnCatalogues implements SharedFiles {
    private static final String BESIDE = "shared";
    private static final List<String> NAMES =
            List.of("processes.yaml", "stock.yaml", "servos.yaml", "screws.yaml", "bearings.yaml", "belts.yaml");

    private final List<Folder> folders;

    private record Folder(Path path, String shown) {}

    private OwnCatalogues(List<Folder> folders) {
        this.folders = folders;
    }

    /** The catalogues beside the spec, where it is a file with such a folder beside it, and those of {@code --shared}. */
    static SharedFiles of(String spec, Optional<String> typed, Surroundings surroundings) {
        List<Folder> folders = new ArrayList<>();
        if (!spec.equals("-")) {
            Path file = surroundings.place(spec, "SPEC");
            Path beside = file.resolveSibling(BESIDE);
            if (Files.isRegularFile(file) && Files.isDirectory(beside)) {
                int slash = spec.lastIndexOf('/');
                folders.add(new Folder(beside, spec.substring(0, slash + 1) + BESIDE));
            }
        }
        if (typed.isPresent()) {
            folders.add(asked(typed.get(), surroundings));
        }
        return folders.isEmpty() ? NONE : new OwnCatalogues(folders);
    }

    /** Those of {@code --shared} alone. */
    static SharedFiles of(Optional<String> typed, Surroundings surroundings) {
        return typed.isEmpty() ? NONE : new OwnCatalogues(List.of(asked(typed.get(), surroundings)));
    }

    private static Folder asked(String shown, Surroundings surroundings) {
        Path folder = surroundings.place(shown, "the folder of --shared");
        if (!Files.isDirectory(folder)) {
            String reason = Files.exists(folder, LinkOption.NOFOLLOW_LINKS) ? "it is not a folder" : "there is no such folder";
            throw Stop.trouble("cannot read " + shown + ": " + reason);
        }
        for (String name : NAMES) {
            if (Files.exists(folder.resolve(name), LinkOption.NOFOLLOW_LINKS)) {
                return new Folder(folder, shown);
            }
        }
        throw Stop.wrong("--shared " + shown + ": the folder holds no catalogue; known: " + String.join(", ", NAMES));
    }

    @Override
    public List<SpecSource> read(String fileName, Problems problems) {
        List<SpecSource> sources = new ArrayList<>();
        for (Folder folder : folders) {
            Path file = folder.path().resolve(fileName);
            if (Files.exists(file, LinkOption.NOFOLLOW_LINKS)) {
                String shown = folder.shown();
                String name = shown.endsWith("/") ? shown + fileName : shown + "/" + fileName;
                try (InputStream in = Files.newInputStream(file)) {
                    SpecSource.read(name, in, problems).ifPresent(sources::add);
                } catch (IOException e) {
                    throw Trouble.reading(name, e);
                }
            }
        }
        return sources;
    }
}
