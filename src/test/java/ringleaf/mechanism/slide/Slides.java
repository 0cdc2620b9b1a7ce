// SPDX-License-Identifier: Apache-2.0
package ringleaf.mechanism.slide;

import java.util.List;
import java.util.Optional;
import ringleaf.kinds.Kinds;
import ringleaf.mechanism.Request;
import ringleaf.part.Design;
import ringleaf.part.Dimension;
import ringleaf.spec.MechanismSpec;
import ringleaf.spec.SpecDocument;
import ringleaf.spec.SpecReader;
import ringleaf.spec.shared.Catalogues;
import ringleaf.spec.shared.SharedFiles;
import ringleaf.spec.text.Problems;
import ringleaf.spec.text.SpecSource;

/** Slides from the text of a spec, for tests. */
final class Slides {
    static final String ACRYLIC = "fabrication:\n  plate: {process: co2-laser, stock: acrylic-3}\n";

    private Slides() {}

    static PlannedSlide planned(String fabrication, String... lines) {
        StringBuilder text = new StringBuilder("title: Test\n" + fabrication + "mechanisms:\n  s:\n    kind: slide\n");
        for (String line : lines) {
            text.append("    ").append(line).append('\n');
        }
        Problems problems = new Problems();
        Catalogues catalogues = new Catalogues(SharedFiles.NONE, problems);
        Optional<SpecDocument> document = new SpecReader(Kinds.REGISTERED.fields(), catalogues, problems)
                .read(SpecSource.of("test.yaml", text.toString()), List.of());
        problems.throwIfAny();
        MechanismSpec one = document.orElseThrow().mechanisms().get(0);
        var planned = new Slide()
                .read(new Request(one.name(), one.values(), document.get().fabrication(), catalogues, problems));
        problems.throwIfAny();
        return (PlannedSlide) planned;
    }

    static double value(Design design, String name) {
        return design.dimensions().stream()
                .filter(d -> d.name().equals(name))
                .mapToDouble(Dimension::value)
                .findFirst()
                .orElseThrow();
    }
}
