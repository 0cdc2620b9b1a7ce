// SPDX-License-Identifier: Apache-2.0
package ringleaf.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import ringleaf.explore.Variants;
import ringleaf.spec.SetOption;
import ringleaf.spec.SpecReader;
import ringleaf.spec.shared.Catalogues;
import ringleaf.spec.shared.SharedFiles;
import ringleaf.spec.text.Node;
import ringleaf.spec.text.Problems;
import ringleaf.spec.text.SpecSource;

/**
 * The spec that was asked for, ready to be varied.
 *
 * @param variants of its tree, with the options laid over it
 * @param sets these options
 */
record AskedVariants(Variants variants, List<SetOption> sets) {

    /** Finds and parses it; what is wrong with it by itself is told at once. */
    static AskedVariants of(Asked asked, Console console, Problems problems) {
        List<SetOption> sets = new ArrayList<>();
        for (String set : asked.sets()) {
            SetOption.parse(set, problems).ifPresent(sets::add);
        }
        SharedFiles shared = OwnCatalogues.of(asked.spec(), asked.shared(), console.surroundings());
        Optional<SpecSource> source = new SpecFinder(console.surroundings(), console.in()).find(asked.spec(), problems);
        Optional<Node.Mapping> root = source.isPresent()
                ? new SpecReader(console.surroundings().kinds().fields(), new Catalogues(shared, problems), problems)
                        .root(source.get(), sets)
                : Optional.empty();
        problems.throwIfAny();
        return new AskedVariants(
                new Variants(console.surroundings().kinds(), source.orElseThrow(), root.orElseThrow(), shared), sets);
    }
}
