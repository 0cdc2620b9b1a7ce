// SPDX-License-Identifier: Apache-2.0
package ringleaf.mechanism.belt;

import java.util.List;
import java.util.Optional;
import ringleaf.mechanism.Kind;
import ringleaf.mechanism.Request;
import ringleaf.part.Design;
import ringleaf.part.Dimension;
import ringleaf.part.Finding;
import ringleaf.spec.KindFields;
import ringleaf.spec.MechanismSpec;
import ringleaf.spec.SpecDocument;
import ringleaf.spec.SpecReader;
import ringleaf.spec.shared.Catalogues;
import ringleaf.spec.shared.SharedFiles;
import ringleaf.spec.text.Problems;
import ringleaf.spec.text.SpecSource;

/** Reads and designs a spec of one mechanism, as a run does. */
final class Designs {
    private static final List<Kind> KINDS = List.of(new Pulley(), new BeltDrive());

    private Designs() {}

    /** The design of the only mechanism; what is wrong with it is thrown as text. */
    static Design of(String spec) {
        Problems problems = new Problems();
        Optional<Design> design = read(spec, problems, SharedFiles.NONE);
        if (!problems.isEmpty()) {
            throw new AssertionError(problems.text());
        }
        return design.orElseThrow();
    }

    /** All messages about a spec that is refused. */
    static String refusal(String spec) {
        Problems problems = new Problems();
        read(spec, problems, SharedFiles.NONE);
        return problems.text();
    }

    static Optional<Design> read(String spec, Problems problems, SharedFiles own) {
        Catalogues catalogues = new Catalogues(own, problems);
        List<KindFields> fields = KINDS.stream()
                .map(k -> new KindFields(k.name(), k.summary(), k::fields))
                .toList();
        Optional<SpecDocument> document =
                new SpecReader(fields, catalogues, problems).read(SpecSource.of("arm.yaml", spec), List.of());
        if (document.isEmpty()) {
            return Optional.empty();
        }
        MechanismSpec mechanism = document.get().mechanisms().get(0);
        for (Kind kind : KINDS) {
            if (kind.name().equals(mechanism.kind().name())) {
                Kind.Planned planned = kind.read(new Request(
                        mechanism.name(), mechanism.values(), document.get().fabrication(), catalogues, problems));
                return problems.isEmpty() ? Optional.of(planned.design(13)) : Optional.empty();
            }
        }
        throw new AssertionError(mechanism.kind().name());
    }

    static double value(Design design, String name) {
        for (Dimension dimension : design.dimensions()) {
            if (dimension.name().equals(name)) {
                return dimension.value();
            }
        }
        throw new AssertionError("no dimension " + name);
    }

    static String how(Design design, String name) {
        for (Dimension dimension : design.dimensions()) {
            if (dimension.name().equals(name)) {
                return dimension.how();
            }
        }
        throw new AssertionError("no dimension " + name);
    }

    static Finding finding(Design design, String check) {
        for (Finding finding : design.findings()) {
            if (finding.check().equals(check)) {
                return finding;
            }
        }
        throw new AssertionError("no finding " + check);
    }

    static String pulley(String belt, int teeth, String... more) {
        StringBuilder text = new StringBuilder(
                "mechanisms:\n  p:\n    kind: pulley\n    belt: \"" + belt + "\"\n    teeth: " + teeth + "\n");
        for (String line : more) {
            text.append("    ").append(line).append('\n');
        }
        return text.toString();
    }

    static String drive(String belt, String... more) {
        StringBuilder text = new StringBuilder("mechanisms:\n  d:\n    kind: belt-drive\n    belt: \"" + belt + "\"\n");
        for (String line : more) {
            text.append("    ").append(line).append('\n');
        }
        return text.toString();
    }
}
