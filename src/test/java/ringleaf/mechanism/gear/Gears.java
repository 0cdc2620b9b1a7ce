// SPDX-License-Identifier: Apache-2.0
package ringleaf.mechanism.gear;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import ringleaf.kinds.Kinds;
import ringleaf.mechanism.Kind;
import ringleaf.mechanism.Request;
import ringleaf.part.Choice;
import ringleaf.part.Design;
import ringleaf.part.Dimension;
import ringleaf.part.Finding;
import ringleaf.spec.MechanismSpec;
import ringleaf.spec.SpecDocument;
import ringleaf.spec.SpecReader;
import ringleaf.spec.shared.Catalogues;
import ringleaf.spec.shared.SharedFiles;
import ringleaf.spec.text.Problems;
import ringleaf.spec.text.SpecRefused;
import ringleaf.spec.text.SpecSource;
import ringleaf.verify.Judge;
import ringleaf.verify.Options;

/** Gears from the text of a spec, for tests. */
final class Gears {
    private Gears() {}

    /** A spec of one mechanism whose fields are given, one a line. */
    static String spec(String kind, String... lines) {
        StringBuilder text = new StringBuilder("title: Test\nmechanisms:\n  g:\n    kind: " + kind + "\n");
        for (String line : lines) {
            text.append("    ").append(line).append('\n');
        }
        return text.toString();
    }

    static Design design(String kind, String... lines) {
        return designs(spec(kind, lines), 61).get(0);
    }

    static List<Design> designs(String text, int states) {
        Problems problems = new Problems();
        Catalogues catalogues = new Catalogues(SharedFiles.NONE, problems);
        SpecSource source = SpecSource.of("test.yaml", text);
        SpecReader reader = new SpecReader(Kinds.REGISTERED.fields(), catalogues, problems);
        Optional<SpecDocument> document = reader.root(source, List.of()).flatMap(root -> reader.readOn(source, root));
        problems.settle();
        List<Kind.Planned> planned = new ArrayList<>();
        if (document.isPresent()) {
            for (MechanismSpec one : document.get().mechanisms()) {
                planned.add(Kinds.REGISTERED
                        .named(one.kind().name())
                        .read(new Request(
                                one.name(), one.values(), document.get().fabrication(), catalogues, problems)));
            }
        }
        problems.throwIfAny();
        List<Design> designs = new ArrayList<>();
        for (Kind.Planned one : planned) {
            designs.add(one.design(states));
        }
        return designs;
    }

    /** What reading refuses, as a user sees it; empty when it refuses nothing. */
    static String refusal(String kind, String... lines) {
        return refused(spec(kind, lines));
    }

    /** The same of a whole spec. */
    static String refused(String spec) {
        try {
            designs(spec, 2);
            return "";
        } catch (SpecRefused refused) {
            return refused.problems().text();
        }
    }

    static double dimension(Design design, String name) {
        return found(design, name).value();
    }

    static Dimension found(Design design, String name) {
        for (Dimension dimension : design.dimensions()) {
            if (dimension.name().equals(name)) {
                return dimension;
            }
        }
        throw new AssertionError("no dimension " + name);
    }

    static Choice choice(Design design, String name) {
        for (Choice choice : design.choices()) {
            if (choice.name().equals(name)) {
                return choice;
            }
        }
        throw new AssertionError("no choice " + name);
    }

    static Finding finding(Design design, String check) {
        for (Finding finding : design.findings()) {
            if (finding.check().equals(check)) {
                return finding;
            }
        }
        throw new AssertionError("no finding " + check);
    }

    /** The judge's findings. */
    static List<Finding> judged(Design design) {
        return Judge.judge(design.assembly(), Options.DEFAULT).findings();
    }

    /** Everything that fails, the kind's own checks and the judge's. */
    static List<Finding> failed(Design design) {
        List<Finding> failed = new ArrayList<>();
        for (Finding finding : design.findings()) {
            if (finding.failed()) {
                failed.add(finding);
            }
        }
        for (Finding finding : judged(design)) {
            if (finding.failed()) {
                failed.add(finding);
            }
        }
        return failed;
    }
}
