// SPDX-License-Identifier: Apache-2.0
package ringleaf.explore;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import ringleaf.kinds.Kinds;
import ringleaf.mechanism.Kind;
import ringleaf.mechanism.Request;
import ringleaf.part.Design;
import ringleaf.part.Dimension;
import ringleaf.part.Finding;
import ringleaf.spec.MechanismSpec;
import ringleaf.spec.SetOption;
import ringleaf.spec.SpecDocument;
import ringleaf.spec.SpecReader;
import ringleaf.spec.shared.Catalogues;
import ringleaf.spec.shared.SharedFiles;
import ringleaf.spec.text.Node;
import ringleaf.spec.text.Problems;
import ringleaf.spec.text.SpecSource;
import ringleaf.verify.Judge;
import ringleaf.verify.Options;

/** Explores specs in tests, and designs them by the ordinary way to compare. */
final class Explored {
    static final String SHUTTER = """
            title: Lamp
            mechanisms:
              shutter:
                kind: leaf-aperture
                full-opening: 48      # clear
                least-opening: 16
                blades: 10
                blade-thickness: 0.1  # shim
                drive-pin: far-end
            """;

    private Explored() {}

    static Variants variants(String text, String... sets) {
        Problems problems = new Problems();
        List<SetOption> options = new ArrayList<>();
        for (String set : sets) {
            SetOption.parse(set, problems).ifPresent(options::add);
        }
        SpecSource source = SpecSource.of("lamp.yaml", text);
        Node.Mapping root = new SpecReader(
                        Kinds.REGISTERED.fields(), new Catalogues(SharedFiles.NONE, problems), problems)
                .root(source, options)
                .orElseThrow();
        problems.throwIfAny();
        return new Variants(Kinds.REGISTERED, source, root, SharedFiles.NONE);
    }

    static Grid grid(Variants variants, String... vary) {
        Problems problems = new Problems();
        Optional<Grid> grid = Grid.read(List.of(vary), variants, false, problems);
        assertThat(problems.text()).isEmpty();
        return grid.orElseThrow();
    }

    private static final Exploration.Patience ENDLESS = new Exploration.Patience() {
        @Override
        public boolean isOver() {
            return false;
        }

        @Override
        public boolean isOutEvenForJudging() {
            return false;
        }
    };

    static Exploration.Result run(String text, String minimise, int keep, int threads, String... vary) {
        Variants variants = variants(text);
        return new Exploration(variants, grid(variants, vary), 61, threads)
                .run(new Exploration.Asked(Optional.ofNullable(minimise), keep, 0), (d, t) -> {}, ENDLESS)
                .orElseThrow();
    }

    /** The first mechanism of a spec, by the way that a run of {@code make} goes. */
    static Design design(String text, String... sets) {
        Problems problems = new Problems();
        List<SetOption> options = new ArrayList<>();
        for (String set : sets) {
            SetOption.parse(set, problems).ifPresent(options::add);
        }
        Catalogues catalogues = new Catalogues(SharedFiles.NONE, problems);
        Optional<SpecDocument> document = new SpecReader(Kinds.REGISTERED.fields(), catalogues, problems)
                .read(SpecSource.of("lamp.yaml", text), options);
        problems.throwIfAny();
        MechanismSpec mechanism = document.orElseThrow().mechanisms().get(0);
        Kind.Planned planned = Kinds.REGISTERED
                .named(mechanism.kind().name())
                .read(new Request(
                        mechanism.name(), mechanism.values(), document.get().fabrication(), catalogues, problems));
        problems.throwIfAny();
        return planned.design(61);
    }

    static boolean fails(List<Finding> findings) {
        return findings.stream().anyMatch(Finding::failed);
    }

    /** Whether closed forms and the judge of outlines find nothing wrong. */
    static boolean works(Design design) {
        return !fails(design.findings())
                && !fails(Judge.judge(design.assembly(), Options.DEFAULT).findings());
    }

    static double dimension(Design design, String name) {
        for (Dimension dimension : design.dimensions()) {
            if (dimension.name().equals(name)) {
                return dimension.value();
            }
        }
        throw new AssertionError("no " + name);
    }

    /** The figure of a row by the heading of its column. */
    static double figure(Exploration.Result result, Row row, String name) {
        for (int c = 0; c < result.columns().all().size(); c++) {
            if (result.columns().all().get(c).shown().equals(name)) {
                return row.figures()[c];
            }
        }
        throw new AssertionError("no column " + name);
    }
}
