// SPDX-License-Identifier: Apache-2.0
package ringleaf.explore;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import ringleaf.kinds.Kinds;
import ringleaf.mechanism.Kind;
import ringleaf.mechanism.Request;
import ringleaf.spec.MechanismSpec;
import ringleaf.spec.SetOption;
import ringleaf.spec.SpecDocument;
import ringleaf.spec.SpecReader;
import ringleaf.spec.shared.Catalogues;
import ringleaf.spec.shared.SharedFiles;
import ringleaf.spec.shared.Stock;
import ringleaf.spec.text.Node;
import ringleaf.spec.text.Problem;
import ringleaf.spec.text.Problems;
import ringleaf.spec.text.SpecSource;

/**
 * A spec and everything that is one option away from it, read from the tree of the text so that the text is parsed
 * once. Each thread takes a reader of its own.
 *
 * @param kinds that it may name
 * @param source of the spec
 * @param root of its tree, options of the command line laid over it
 * @param shared the user's own catalogues
 */
public record Variants(Kinds kinds, SpecSource source, Node.Mapping root, SharedFiles shared) {

    /**
     * A variant that was read.
     *
     * @param document empty when it could not be read
     * @param kinds of its mechanisms, in their order
     * @param planned of each mechanism, in their order; of no use when there are problems
     * @param problems what is wrong with it
     */
    public record Variant(
            Optional<SpecDocument> document, List<Kind> kinds, List<Kind.Planned> planned, List<Problem> problems) {
        public boolean isGood() {
            return problems.isEmpty();
        }

        List<MechanismSpec> mechanisms() {
            return document.orElseThrow().mechanisms();
        }

        /** The place of a mechanism. */
        int indexOf(String name) {
            for (int i = 0; i < mechanisms().size(); i++) {
                if (mechanisms().get(i).name().equals(name)) {
                    return i;
                }
            }
            throw new IllegalArgumentException(name);
        }
    }

    /** A reader for one thread. */
    public Reader reader() {
        return new Reader(this);
    }

    /** Reads variants, one after another. */
    public static final class Reader {
        private final Variants of;
        private final Problems problems = new Problems();
        private final Catalogues catalogues;
        private final SpecReader reader;

        private Reader(Variants of) {
            this.of = of;
            this.catalogues = new Catalogues(of.shared(), problems);
            this.reader = new SpecReader(of.kinds().fields(), catalogues, problems);
        }

        /** The spec with these options laid over it. */
        public Variant read(List<SetOption> options) {
            Node.Mapping root = of.root();
            for (SetOption option : options) {
                root = option.over(root, problems);
            }
            return read(root);
        }

        /** Names of a catalogue, or none when there is no such. */
        List<String> names(String catalogue) {
            return Catalogues.NAMES.contains(catalogue)
                    ? List.copyOf(catalogues.named(catalogue).names())
                    : List.of();
        }

        private Variant read(Node.Mapping root) {
            Optional<SpecDocument> document = problems.isEmpty() ? reader.read(of.source(), root) : Optional.empty();
            List<Kind> kinds = new ArrayList<>();
            List<Kind.Planned> planned = new ArrayList<>();
            if (document.isPresent()) {
                for (MechanismSpec mechanism : document.get().mechanisms()) {
                    kinds.add(of.kinds().of(mechanism));
                    planned.add(plan(mechanism, document.get()));
                }
            }
            return new Variant(document, kinds, planned, problems.drain());
        }

        private Kind.Planned plan(MechanismSpec mechanism, SpecDocument document) {
            return of.kinds()
                    .of(mechanism)
                    .read(new Request(
                            mechanism.name(), mechanism.values(), document.fabrication(), catalogues, problems));
        }

        /** Stocks of the same material, made by the same process, that differ in thickness; in the catalogue's order. */
        List<Stock> thicker(Stock stock, String process) {
            List<Stock> others = new ArrayList<>();
            for (String name : catalogues.stock().names()) {
                catalogues
                        .stock()
                        .get(name)
                        .filter(other -> other.thickness().isPresent()
                                && !other.name().equals(stock.name())
                                && other.material().equals(stock.material())
                                && other.isMadeBy(process))
                        .ifPresent(others::add);
            }
            return others;
        }
    }
}
