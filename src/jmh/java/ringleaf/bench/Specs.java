package ringleaf.bench;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import ringleaf.mechanism.Kind;
import ringleaf.mechanism.Kinds;
import ringleaf.mechanism.Request;
import ringleaf.part.Design;
import ringleaf.spec.MechanismSpec;
import ringleaf.spec.SpecDocument;
import ringleaf.spec.SpecReader;
import ringleaf.spec.shared.Catalogues;
import ringleaf.spec.shared.SharedFiles;
import ringleaf.spec.text.Problems;
import ringleaf.spec.text.SpecSource;

/** Designs from specs, as a run of the tool makes them. */
final class Specs {
    private static final int STATES = 181;

    /** The five fields without which nothing can be designed. */
    static final String SMALLEST =
            """
            mechanisms:
              light:
                kind: leaf-aperture
                full-opening: 64
                least-opening: 20
                blades: 14
                blade-thickness: 0.15
            """;

    private Specs() {}

    /** Reads and designs the only mechanism of a spec. */
    static Design design(String text) {
        return planned(text).design(STATES);
    }

    /** Reads the only mechanism of a spec. */
    static Kind.Planned planned(String text) {
        Problems problems = new Problems();
        Catalogues catalogues = new Catalogues(SharedFiles.NONE, problems);
        SpecDocument document = new SpecReader(Kinds.fields(), catalogues, problems)
                .read(SpecSource.of("benchmark", text), List.of())
                .orElseThrow();
        MechanismSpec mechanism = document.mechanisms().get(0);
        Kind.Planned planned = Kinds.named(mechanism.kind().name())
                .read(new Request(
                        mechanism.name(), mechanism.values(), document.fabrication(), catalogues, problems));
        problems.throwIfAny();
        return planned;
    }

    /** The text of a preset; the project's folder must be the working folder. */
    static String text(String name) throws IOException {
        return Files.readString(Path.of("presets", name + ".yaml"));
    }

    /** Designs a preset; the project's folder must be the working folder. */
    static Design preset(String name) throws IOException {
        return design(text(name));
    }
}
