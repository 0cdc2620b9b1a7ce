// SPDX-License-Identifier: Apache-2.0
package ringleaf.cli;

import java.util.List;
import java.util.Optional;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParseResult;
import ringleaf.spec.shared.Catalogue;
import ringleaf.spec.shared.Catalogues;
import ringleaf.spec.shared.SharedFiles;
import ringleaf.spec.text.Nearest;
import ringleaf.spec.text.Problems;
import ringleaf.spec.text.Shown;

/** {@code catalogue}: what can be named in a spec, with sizes and where they come from. */
final class CatalogueCommand implements Command {
    private static final String NAME = "catalogue";
    private static final String BESIDE = "--beside";

    @Override
    public String name() {
        return NAME;
    }

    @Override
    public CommandSpec syntax() {
        CommandSpec catalogue = Syntax.command(
                name(),
                "Lists the catalogues of stock, processes, servos, screws and the like, with sources.",
                "Examples:%n  ringleaf catalogue%n  ringleaf catalogue stock%n  ringleaf catalogue servos micro-180%n"
                        + "  ringleaf catalogue stock --beside my-light.yaml%n");
        catalogue.addPositional(Syntax.positional(0, "NAME", false, "one of " + String.join(", ", Catalogues.NAMES)));
        catalogue.addPositional(Syntax.positional(1, "ENTRY", false, "one entry, with the source of every value"));
        catalogue.addOption(Syntax.option("SPEC", "takes in what lies in shared/ beside this spec", BESIDE));
        Syntax.shared(catalogue);
        return catalogue;
    }

    @Override
    public int run(ParseResult given, Console console) {
        Problems problems = new Problems();
        Optional<String> folder = Optional.ofNullable(given.matchedOptionValue(Syntax.SHARED, null));
        String spec = given.matchedOptionValue(BESIDE, "");
        SharedFiles own = spec.isEmpty()
                ? OwnCatalogues.of(folder, console.surroundings())
                : OwnCatalogues.of(spec, folder, console.surroundings());
        Catalogues catalogues = new Catalogues(own, problems);
        String name = given.matchedPositionalValue(0, null);
        String entry = given.matchedPositionalValue(1, null);
        String text;
        if (name == null) {
            text = CatalogueText.all(catalogues);
        } else if (!Catalogues.NAMES.contains(name)) {
            throw Stop.wrong(
                    "there is no catalogue " + Shown.quoted(name) + "; " + Nearest.hint(name, Catalogues.NAMES));
        } else if (entry == null) {
            text = CatalogueText.of(name, catalogues.named(name));
        } else {
            text = one(name, entry, catalogues.named(name));
        }
        problems.throwIfAny();
        console.out().print(text);
        return Exit.FINE;
    }

    private static String one(String name, String entry, Catalogue<?> catalogue) {
        List<String> names = List.copyOf(catalogue.names());
        return catalogue
                .listing(entry)
                .map(listing -> CatalogueText.entry(name, listing))
                .orElseThrow(() -> Stop.wrong("there is no " + catalogue.one() + " " + Shown.quoted(entry) + " in "
                        + name + ".yaml; " + Nearest.hint(entry, names)));
    }
}
