// SPDX-License-Identifier: Apache-2.0
package ringleaf.mechanism.rack;

import java.util.List;
import java.util.Optional;
import ringleaf.kinds.Kinds;
import ringleaf.mechanism.Kind;
import ringleaf.mechanism.Request;
import ringleaf.part.Design;
import ringleaf.part.Dimension;
import ringleaf.part.Finding;
import ringleaf.spec.MechanismSpec;
import ringleaf.spec.SpecDocument;
import ringleaf.spec.SpecReader;
import ringleaf.spec.shared.Catalogues;
import ringleaf.spec.shared.SharedFiles;
import ringleaf.spec.text.Problems;
import ringleaf.spec.text.SpecSource;
import ringleaf.verify.Judge;
import ringleaf.verify.Options;

/** Racks from the text of a spec, for tests. */
final class Racks {
    private Racks() {}

    /** One mechanism of the kind whose fields are given, one a line; what is refused goes to the problems. */
    static Kind.Planned planned(Problems problems, String fabrication, String... lines) {
        StringBuilder text = new StringBuilder("title: Test\n" + fabrication + "mechanisms:\n  r:\n    kind: rack\n");
        for (String line : lines) {
            text.append("    ").append(line).append('\n');
        }
        Catalogues catalogues = new Catalogues(SharedFiles.NONE, problems);
        Optional<SpecDocument> document = new SpecReader(Kinds.REGISTERED.fields(), catalogues, problems)
                .read(SpecSource.of("test.yaml", text.toString()), List.of());
        problems.throwIfAny();
        MechanismSpec one = document.orElseThrow().mechanisms().get(0);
        Kind.Planned planned = new RackAndPinion()
                .read(new Request(one.name(), one.values(), document.get().fabrication(), catalogues, problems));
        problems.throwIfAny();
        return planned;
    }

    static Design design(String... lines) {
        return planned(new Problems(), "", lines).design(61);
    }

    static double value(Design design, String name) {
        for (Dimension dimension : design.dimensions()) {
            if (dimension.name().equals(name)) {
                return dimension.value();
            }
        }
        throw new AssertionError("no dimension " + name);
    }

    static List<Finding> judged(Design design) {
        return Judge.judge(design.assembly(), Options.DEFAULT).findings();
    }
}
