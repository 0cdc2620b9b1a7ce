// SPDX-License-Identifier: Apache-2.0
package ringleaf.firmware;

import java.util.List;
import java.util.Optional;
import ringleaf.kinds.Kinds;
import ringleaf.mechanism.Kind;
import ringleaf.mechanism.Request;
import ringleaf.mechanism.ServoLaw;
import ringleaf.spec.MechanismSpec;
import ringleaf.spec.SpecDocument;
import ringleaf.spec.SpecReader;
import ringleaf.spec.shared.Catalogues;
import ringleaf.spec.shared.SharedFiles;
import ringleaf.spec.text.Problems;
import ringleaf.spec.text.SpecSource;

/** Mechanisms with a servo from the text of a spec, for tests. */
final class Laws {
    private Laws() {}

    static Kind.Planned planned(String kind, String... lines) {
        StringBuilder text = new StringBuilder("title: Test\nmechanisms:\n  m:\n    kind: " + kind + "\n");
        for (String line : lines) {
            text.append("    ").append(line).append('\n');
        }
        Problems problems = new Problems();
        Catalogues catalogues = new Catalogues(SharedFiles.NONE, problems);
        Optional<SpecDocument> document = new SpecReader(Kinds.REGISTERED.fields(), catalogues, problems)
                .read(SpecSource.of("test.yaml", text.toString()), List.of());
        problems.throwIfAny();
        MechanismSpec one = document.orElseThrow().mechanisms().get(0);
        Kind.Planned planned = Kinds.REGISTERED
                .named(one.kind().name())
                .read(new Request(one.name(), one.values(), document.get().fabrication(), catalogues, problems));
        problems.throwIfAny();
        return planned;
    }

    static Kind.Planned shutter(String... more) {
        String[] lines = {"full-opening: 64", "least-opening: 20", "blades: 14", "blade-thickness: 0.15"};
        String[] all = java.util.Arrays.copyOf(lines, lines.length + more.length);
        System.arraycopy(more, 0, all, lines.length, more.length);
        return planned("leaf-aperture", all);
    }

    static ServoLaw law(Kind.Planned planned) {
        return planned.servoLaw().orElseThrow();
    }
}
