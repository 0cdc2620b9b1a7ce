// SPDX-License-Identifier: Apache-2.0
package ringleaf.mechanism.aperture;

import java.util.List;
import java.util.Optional;
import ringleaf.kinds.Kinds;
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

/** Apertures from the text of a spec, for tests. */
final class Apertures {
    private Apertures() {}

    /** A spec of one aperture whose fields are given, one a line. */
    static String spec(String... lines) {
        StringBuilder text = new StringBuilder("title: Test\nmechanisms:\n  shutter:\n    kind: leaf-aperture\n");
        for (String line : lines) {
            text.append("    ").append(line).append('\n');
        }
        return text.toString();
    }

    static Design design(String text) {
        return design(text, 61);
    }

    static Design design(String text, int states) {
        Request request = request(text);
        ringleaf.mechanism.Kind.Planned planned = new LeafAperture().read(request);
        request.problems().throwIfAny();
        return planned.design(states);
    }

    static Design trialPiece(String text, int states, int blades) {
        Request request = request(text);
        ringleaf.mechanism.Kind.Planned planned = new LeafAperture().read(request);
        request.problems().throwIfAny();
        return planned.trialPiece(states, blades);
    }

    /** The sizes alone, before anything is drawn. */
    static ApertureDesign sizes(String text) {
        Request request = request(text);
        ApertureSpec spec = new ApertureReader(request).read();
        request.problems().throwIfAny();
        return new ApertureDesigner(spec).candidates().get(0).design();
    }

    private static Request request(String text) {
        Problems problems = new Problems();
        Catalogues catalogues = new Catalogues(SharedFiles.NONE, problems);
        Optional<SpecDocument> document = new SpecReader(Kinds.REGISTERED.fields(), catalogues, problems)
                .read(SpecSource.of("test.yaml", text), List.of());
        problems.throwIfAny();
        MechanismSpec one = document.orElseThrow().mechanisms().get(0);
        return new Request(one.name(), one.values(), document.get().fabrication(), catalogues, problems);
    }

    /** What reading refuses, as a user sees it; empty when it refuses nothing. */
    static String refusal(String text) {
        try {
            design(text, 2);
            return "";
        } catch (ringleaf.spec.text.SpecRefused refused) {
            return refused.problems().text();
        }
    }

    static double dimension(Design design, String name) {
        for (Dimension dimension : design.dimensions()) {
            if (dimension.name().equals(name)) {
                return dimension.value();
            }
        }
        throw new AssertionError("no dimension " + name);
    }

    static String choice(Design design, String name) {
        return design.choices().stream()
                .filter(c -> c.name().equals(name))
                .findFirst()
                .orElseThrow()
                .value();
    }

    static List<Finding> failed(List<Finding> findings) {
        return findings.stream().filter(Finding::failed).toList();
    }
}
