// SPDX-License-Identifier: Apache-2.0
package ringleaf;

import java.util.List;
import java.util.Optional;
import ringleaf.kinds.Kinds;
import ringleaf.mechanism.Kind;
import ringleaf.mechanism.Request;
import ringleaf.spec.MechanismSpec;
import ringleaf.spec.SpecDocument;
import ringleaf.spec.SpecReader;
import ringleaf.spec.shared.Catalogues;
import ringleaf.spec.shared.SharedFiles;
import ringleaf.spec.text.Problems;
import ringleaf.spec.text.SpecSource;

/** A mechanism from the text of a spec that holds it alone, read with the ready catalogues, for tests. */
public final class OneMechanism {
    private OneMechanism() {}

    /**
     * One of a kind.
     *
     * @param problems what is refused goes there as well
     * @param before lines of the spec before its mechanisms, each with its end
     * @param lines of the mechanism, without the indent that all of them have
     */
    public static Kind.Planned planned(Problems problems, String before, String kind, String... lines) {
        StringBuilder text =
                new StringBuilder("title: Test\n" + before + "mechanisms:\n  m:\n    kind: " + kind + "\n");
        for (String line : lines) {
            text.append("    ").append(line).append('\n');
        }
        Catalogues catalogues = new Catalogues(SharedFiles.NONE, problems);
        Optional<SpecDocument> document = new SpecReader(Kinds.REGISTERED.fields(), catalogues, problems)
                .read(SpecSource.of("test.yaml", text.toString()), List.of());
        problems.throwIfAny();
        MechanismSpec one = document.orElseThrow().mechanisms().get(0);
        Kind.Planned planned = Kinds.REGISTERED
                .named(kind)
                .read(new Request(one.name(), one.values(), document.get().fabrication(), catalogues, problems));
        problems.throwIfAny();
        return planned;
    }
}
