// SPDX-License-Identifier: Apache-2.0
package ringleaf.cli;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import ringleaf.spec.shared.Catalogues;
import ringleaf.spec.shared.SharedFiles;
import ringleaf.spec.text.Nearest;
import ringleaf.spec.text.Place;
import ringleaf.spec.text.Problems;
import ringleaf.spec.text.Shown;
import ringleaf.spec.text.SpecSource;

/** A user's own catalogues, laid over the ready ones: {@code shared/} beside the spec, then {@code --shared}. */
final class OwnCatalogues implements SharedFiles {
    /** Folder beside a spec. */
    static final String BESIDE = "shared";
    /** Files that may lie there. */
    static final List<String> NAMES =
            Catalogues.NAMES.stream().map(name -> name + ".yaml").toList();

    /** 16 MiB: a drawing of a bezel is some hundred lines, and a traced one some hundred thousand. */
    private static final int DRAWING_LIMIT = 1 << 24;

    private final List<Folder> folders;
    /** That paths of drawings are relative to: the spec's, or that of the run where the spec is no file. */
    private final Path base;

    private record Folder(Path path, String shown) {}

    private OwnCatalogues(List<Folder> folders, Path base) {
        this.folders = folders;
        this.base = base;
    }

    /** The catalogues beside the spec, where it is a file with such a folder, and those of {@code --shared}. */
    static SharedFiles of(String spec, Optional<String> typed, Surroundings surroundings) {
        List<Folder> folders = new ArrayList<>();
        Path base = surroundings.folder();
        if (!spec.equals("-")) {
            Path file = surroundings.place(spec, "SPEC");
            Path beside = file.resolveSibling(BESIDE);
            boolean isFile = Files.isRegularFile(file);
            base = isFile && file.getParent() != null ? file.getParent() : base;
            String shown = spec.substring(0, spec.lastIndexOf('/') + 1) + BESIDE;
            if (isFile && Files.isDirectory(beside)) {
                folders.add(known(new Folder(beside, shown)));
            } else if (isFile && Files.exists(beside, LinkOption.NOFOLLOW_LINKS)) {
                throw Stop.wrong(shown + " beside the spec is no folder, and catalogues stand in one; rename it");
            }
        }
        if (typed.isPresent()) {
            folders.add(asked(typed.get(), surroundings));
        }
        return new OwnCatalogues(folders, base);
    }

    /** Those of {@code --shared} alone. */
    static SharedFiles of(Optional<String> typed, Surroundings surroundings) {
        List<Folder> folders = typed.isEmpty() ? List.of() : List.of(asked(typed.get(), surroundings));
        return new OwnCatalogues(folders, surroundings.folder());
    }

    /** The folder, in which nothing stands that looks like a catalogue and would be passed over. */
    private static Folder known(Folder folder) {
        try (Stream<Path> entries = Files.list(folder.path())) {
            for (Path entry : entries.sorted().toList()) {
                String name = entry.getFileName().toString();
                int dot = name.lastIndexOf('.');
                String ending = dot < 0 ? "" : name.substring(dot).toLowerCase(Locale.ROOT);
                if (!NAMES.contains(name) && (ending.equals(".yaml") || ending.equals(".yml"))) {
                    Optional<String> meant =
                            Nearest.of(name.substring(0, dot).toLowerCase(Locale.ROOT) + ".yaml", NAMES);
                    if (meant.isPresent()) {
                        throw Stop.wrong(
                                folder.shown() + "/" + name + " is read by nothing; did you mean " + meant.get() + "?");
                    }
                }
            }
        } catch (IOException e) {
            throw Trouble.reading(folder.shown(), e);
        }
        return folder;
    }

    private static Folder asked(String shown, Surroundings surroundings) {
        Path folder = surroundings.place(shown, "the folder of --shared");
        if (!Files.isDirectory(folder)) {
            String reason =
                    Files.exists(folder, LinkOption.NOFOLLOW_LINKS) ? "it is not a folder" : "there is no such folder";
            throw Stop.trouble("cannot read " + shown + ": " + reason);
        }
        for (String name : NAMES) {
            if (Files.exists(folder.resolve(name), LinkOption.NOFOLLOW_LINKS)) {
                return known(new Folder(folder, shown));
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
                try (InputStream in = Trouble.open(file)) {
                    SpecSource.read(name, in, problems).ifPresent(sources::add);
                } catch (IOException e) {
                    throw Trouble.reading(name, e);
                }
            }
        }
        return sources;
    }

    @Override
    public Optional<SpecSource> drawing(String path, Place asked, Problems problems) {
        Path file;
        try {
            file = base.resolve(path);
        } catch (InvalidPathException e) {
            problems.at(asked, "is no path of a file: " + Shown.quoted(path));
            return Optional.empty();
        }
        if (Files.isDirectory(file)) {
            problems.at(asked, Shown.quoted(path) + " is a folder, and a drawing is a file");
            return Optional.empty();
        }
        try (InputStream in = Trouble.open(file)) {
            byte[] bytes = in.readNBytes(DRAWING_LIMIT + 1);
            SpecSource name = SpecSource.of(path, "");
            if (bytes.length > DRAWING_LIMIT) {
                problems.of(name, "is larger than 16 MiB, the most that is read of a drawing", "");
                return Optional.empty();
            }
            for (byte b : bytes) {
                if (b == 0) {
                    problems.of(name, "is a binary file", "save the drawing as DXF in text form, or as SVG");
                    return Optional.empty();
                }
            }
            // Old drawings have names of layers in one of many code pages; what is read of them is plain ASCII.
            return Optional.of(SpecSource.of(path, text(bytes)));
        } catch (IOException e) {
            throw Trouble.reading(path, e);
        }
    }

    private static String text(byte[] bytes) {
        String text = new String(bytes, StandardCharsets.UTF_8);
        text = text.indexOf('\uFFFD') >= 0 ? new String(bytes, StandardCharsets.ISO_8859_1) : text;
        return !text.isEmpty() && text.charAt(0) == '\uFEFF' ? text.substring(1) : text;
    }
}
