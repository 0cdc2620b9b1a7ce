// SPDX-License-Identifier: Apache-2.0
package ringleaf.cli;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.ClosedWatchServiceException;
import java.nio.file.FileSystems;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.nio.file.StandardWatchEventKinds;
import java.nio.file.WatchEvent;
import java.nio.file.WatchKey;
import java.nio.file.WatchService;
import java.nio.file.attribute.BasicFileAttributes;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.TimeUnit;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Watches a spec, the catalogues laid over the ready ones and the drawings that the spec names. It is told of changes by the system; as that fails on
 * some file systems, for links and for folders that come and go, it also looks by itself now and then.
 */
final class SpecWatch implements AutoCloseable {
    /** Editors write in several strokes; so long must nothing have changed, ms. */
    private static final long QUIET_MS = 30;
    /** But one who never stops writing is not waited for longer than this, ms. */
    private static final long MOST_QUIET_MS = 200;

    private static final long LOOK_MS = 400;

    /** A drawing that a spec names, in quotes or plain; looked for in its text, which may be half written. */
    private static final Pattern DRAWING =
            Pattern.compile("\\boutline[\"']?\\s*[:=]\\s*(?:\"([^\"\\n]+)\"|'([^'\\n]+)'|([^\"'\\s,}#][^,}#\\r\\n]*))");

    private static final int LONGEST_SPEC = 1 << 20;

    private final List<Path> files = new ArrayList<>();
    private final int own;
    private final String sets;
    private final WatchService service;
    private final Map<Path, WatchKey> keys = new LinkedHashMap<>();
    private final Set<String> names = new HashSet<>();
    private String seen;

    /**
     * @param files the spec first
     * @param sets what {@code --set} overrides
     */
    private SpecWatch(List<Path> files, List<String> sets, WatchService service) {
        this.files.addAll(files);
        this.own = files.size();
        this.sets = String.join("\n", sets);
        this.service = service;
        names.add(OwnCatalogues.BESIDE);
        for (Path file : files) {
            names.add(file.getFileName().toString());
        }
        drawings();
        watch();
        seen = looks();
    }

    /** Watches what {@code asked} reads. */
    static SpecWatch of(Asked asked, Surroundings surroundings) {
        List<Path> files = new ArrayList<>();
        Path spec = surroundings.place(asked.spec(), "SPEC").toAbsolutePath();
        files.add(spec);
        Path beside = spec.resolveSibling(OwnCatalogues.BESIDE);
        Optional<Path> shared = asked.shared()
                .map(typed -> surroundings.place(typed, "--shared").toAbsolutePath());
        for (String name : OwnCatalogues.NAMES) {
            files.add(beside.resolve(name));
            shared.ifPresent(folder -> files.add(folder.resolve(name)));
        }
        try {
            return new SpecWatch(files, asked.sets(), FileSystems.getDefault().newWatchService());
        } catch (IOException e) {
            throw Stop.trouble("cannot watch " + asked.spec() + ": " + Trouble.reason(e));
        }
    }

    /**
     * Waits until something has been saved and nothing changes for a moment.
     *
     * @throws InterruptedException when it is over
     */
    void await() throws InterruptedException {
        boolean changed = false;
        while (!changed) {
            changed = changesWithin(LOOK_MS);
        }
    }

    /** Waits for at most so many ms; whether anything was saved meanwhile, which is then waited out. */
    boolean changesWithin(long millis) throws InterruptedException {
        boolean told = told(millis);
        for (long quiet = 0; told && quiet < MOST_QUIET_MS && told(QUIET_MS); quiet += QUIET_MS) {
            // One more stroke of the editor.
        }
        boolean changed = told || !looks().equals(seen);
        if (changed) {
            drawings();
        }
        watch();
        seen = looks();
        return changed;
    }

    /** Takes up the drawings that the spec names now, whose paths are relative to it. */
    private void drawings() {
        files.subList(own, files.size()).clear();
        String text;
        try {
            Path spec = files.get(0);
            boolean readable = Files.isRegularFile(spec) && Files.size(spec) <= LONGEST_SPEC;
            text = readable ? new String(Files.readAllBytes(spec), StandardCharsets.UTF_8) : "";
        } catch (IOException e) {
            // It is being written, or gone for a moment; its next change brings it back.
            text = "";
        }
        Matcher found = DRAWING.matcher(text + "\n" + sets);
        while (found.find()) {
            String path =
                    found.group(1) != null ? found.group(1) : found.group(2) != null ? found.group(2) : found.group(3);
            try {
                Path file = files.get(0).resolveSibling(path.strip());
                if (!files.contains(file) && file.getFileName() != null) {
                    files.add(file);
                    names.add(file.getFileName().toString());
                }
            } catch (InvalidPathException e) {
                // The drawing of the page says what is wrong with it.
                continue;
            }
        }
    }

    /** Whether the system tells of the files, or of the folders they may come to lie in, within so many ms. */
    private boolean told(long millis) throws InterruptedException {
        try {
            boolean told = false;
            long end = System.nanoTime() + millis * 1_000_000;
            while (!told) {
                long left = end - System.nanoTime();
                WatchKey key = left <= 0 ? service.poll() : service.poll(left, TimeUnit.NANOSECONDS);
                if (key == null) {
                    return false;
                }
                for (WatchEvent<?> event : key.pollEvents()) {
                    told |= event.context() == null
                            || names.contains(event.context().toString());
                }
                if (!key.reset()) {
                    keys.values().remove(key);
                }
            }
            return true;
        } catch (ClosedWatchServiceException e) {
            throw new InterruptedException("closed");
        }
    }

    /** Watches every folder that is there, and where a file is a link the folder it leads to. */
    private void watch() {
        List<Path> folders = new ArrayList<>();
        for (Path file : files) {
            add(folders, file.getParent());
            if (Files.isSymbolicLink(file)) {
                try {
                    Path real = file.toRealPath();
                    names.add(real.getFileName().toString());
                    add(folders, real.getParent());
                } catch (IOException e) {
                    // It leads nowhere at the moment; looking now and then will show when it does again.
                    continue;
                }
            }
        }
        for (Path folder : folders) {
            WatchKey key = keys.get(folder);
            if (key == null || !key.isValid()) {
                register(folder);
            }
        }
    }

    private static void add(List<Path> folders, Path folder) {
        if (folder != null && !folders.contains(folder) && Files.isDirectory(folder)) {
            folders.add(folder);
        }
    }

    private void register(Path folder) {
        try {
            keys.put(
                    folder,
                    folder.register(
                            service,
                            StandardWatchEventKinds.ENTRY_CREATE,
                            StandardWatchEventKinds.ENTRY_MODIFY,
                            StandardWatchEventKinds.ENTRY_DELETE));
        } catch (IOException e) {
            // Then looking now and then has to do.
            keys.remove(folder);
        }
    }

    /** How the files look: when and how large they were last written, and which file it is. */
    private String looks() {
        StringBuilder looks = new StringBuilder();
        for (Path file : files) {
            try {
                BasicFileAttributes is = Files.readAttributes(file, BasicFileAttributes.class);
                looks.append(is.lastModifiedTime().to(TimeUnit.NANOSECONDS))
                        .append(' ')
                        .append(is.size());
                looks.append(' ').append(is.fileKey());
            } catch (IOException e) {
                looks.append('-');
            }
            looks.append('\n');
        }
        return looks.toString();
    }

    @Override
    public void close() {
        try {
            service.close();
        } catch (IOException e) {
            // Nothing of it is left to be lost.
            keys.clear();
        }
    }
}
