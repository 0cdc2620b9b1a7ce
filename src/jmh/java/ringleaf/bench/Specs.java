// SPDX-License-Identifier: Apache-2.0
package ringleaf.bench;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import ringleaf.fabricate.Preparation;
import ringleaf.fabricate.Sheets;
import ringleaf.kinds.Kinds;
import ringleaf.mechanism.Kind;
import ringleaf.mechanism.Request;
import ringleaf.part.Design;
import ringleaf.spec.MechanismSpec;
import ringleaf.spec.SetOption;
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
    static final String SMALLEST = """
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
        SpecDocument document = read(text, List.of());
        return planned(document, document.mechanisms().get(0));
    }

    /** What is to be laid on sheets of a spec's parts, after setting one field of the spec. */
    static Sheets sheets(String text, String set) {
        Problems problems = new Problems();
        SpecDocument document =
                read(text, List.of(SetOption.parse(set, problems).orElseThrow()));
        List<Design> designs = new ArrayList<>();
        List<Preparation> prepared = new ArrayList<>();
        for (MechanismSpec mechanism : document.mechanisms()) {
            Design design = planned(document, mechanism).design(STATES);
            designs.add(design);
            prepared.add(Preparation.of(design, document.fabrication(), document.catalogues()));
        }
        Sheets sheets = Sheets.of(designs, prepared, problems);
        problems.throwIfAny();
        return sheets;
    }

    private static SpecDocument read(String text, List<SetOption> options) {
        Problems problems = new Problems();
        Catalogues catalogues = new Catalogues(SharedFiles.NONE, problems);
        return new SpecReader(Kinds.REGISTERED.fields(), catalogues, problems)
                .read(SpecSource.of("benchmark", text), options)
                .orElseThrow();
    }

    private static Kind.Planned planned(SpecDocument document, MechanismSpec mechanism) {
        Problems problems = new Problems();
        Kind.Planned planned = Kinds.REGISTERED
                .named(mechanism.kind().name())
                .read(new Request(
                        mechanism.name(), mechanism.values(), document.fabrication(), document.catalogues(), problems));
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
