// SPDX-License-Identifier: Apache-2.0
package ringleaf.cli;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import ringleaf.spec.shared.Catalogue;
import ringleaf.spec.shared.Catalogues;
import ringleaf.spec.shared.Listing;

/** The catalogues as text for a terminal. */
final class CatalogueText {
    /** Longer cells are cut in a list; an entry by itself shows all. */
    private static final int WIDEST = 44;

    /**
     * How a catalogue is told.
     *
     * @param where an example of where its names stand in a spec
     * @param keys the values that tell one entry from another
     */
    private record Told(String where, List<String> keys) {}

    private static final Map<String, Told> TOLD = Map.ofEntries(
            Map.entry(
                    "processes",
                    new Told(
                            "fabrication: {blade: {process: NAME}}",
                            List.of("summary", "kerf", "least-web", "repeatability"))),
            Map.entry(
                    "stock",
                    new Told("fabrication: {blade: {stock: NAME}}", List.of("material", "thickness", "made-by"))),
            Map.entry(
                    "servos",
                    new Told("drive: {servo: NAME}", List.of("travel", "torque", "body-length", "body-width"))),
            Map.entry(
                    "screws",
                    new Told("screw: NAME", List.of("standard", "clearance-medium", "head-diameter", "lengths"))),
            Map.entry("rods", new Told("pin-diameter: NAME, or bore: {axle: NAME}", List.of("goods", "standard"))),
            Map.entry("dowels", new Told("guide: {pin-diameter: NAME}", List.of("standard", "lengths"))),
            Map.entry(
                    "bearings",
                    new Told(
                            "axle-bearing: \"NAME\", or bore: {form: bearing, bearing: \"NAME\"}",
                            List.of("bore", "outside", "width"))),
            Map.entry("linear-bearings", new Told("bearing: NAME", List.of("rod", "outside", "length"))),
            Map.entry("boards", new Told("board: NAME", List.of("width", "height", "holes-along", "holes-across"))),
            Map.entry("contacts", new Told("contact: NAME", List.of("body", "length", "flange", "circle"))),
            Map.entry("belts", new Told("belt: NAME", List.of("standard", "pitch", "widths"))));

    private CatalogueText() {}

    /** All catalogues, a line each. */
    static String all(Catalogues catalogues) {
        List<List<String>> rows = new ArrayList<>();
        rows.add(List.of("catalogue", "entries", "own", "where its names stand in a spec"));
        for (String name : Catalogues.NAMES) {
            List<Listing> listings = listings(catalogues.named(name));
            long own = listings.stream()
                    .filter(l -> l.whose() != Listing.Whose.READY)
                    .count();
            rows.add(List.of(
                    name,
                    Integer.toString(listings.size()),
                    own == 0 ? "" : Long.toString(own),
                    TOLD.get(name).where()));
        }
        return table(rows) + "\nringleaf catalogue stock lists one of them; --beside SPEC and --shared FOLDER take in"
                + " entries of your own.\n";
    }

    private static List<Listing> listings(Catalogue<?> catalogue) {
        List<Listing> all = new ArrayList<>();
        for (String name : catalogue.names()) {
            all.add(catalogue.listing(name).orElseThrow());
        }
        return all;
    }

    /** One catalogue, a line an entry. */
    static String of(String name, Catalogue<?> catalogue) {
        List<String> keys = TOLD.get(name).keys();
        List<Listing> listings = listings(catalogue);
        Set<String> sources = new LinkedHashSet<>();
        for (Listing listing : listings) {
            sources.addAll(sources(listing, keys));
        }
        List<String> numbered = List.copyOf(sources);
        List<List<String>> rows = new ArrayList<>();
        List<String> head = new ArrayList<>(List.of("name"));
        head.addAll(keys);
        head.addAll(List.of("", "source"));
        rows.add(head);
        for (Listing listing : listings) {
            List<String> row = new ArrayList<>(List.of(listing.name()));
            keys.forEach(key -> row.add(cut(listing.text(key))));
            row.add(listing.whose().label());
            List<String> numbers = new ArrayList<>();
            sources(listing, keys).forEach(s -> numbers.add(Integer.toString(numbered.indexOf(s) + 1)));
            row.add(String.join(" ", numbers));
            rows.add(row);
        }
        StringBuilder text =
                new StringBuilder(name + ": in a spec " + TOLD.get(name).where() + "\n\n");
        text.append(table(rows)).append("\nsources\n");
        for (int i = 0; i < numbered.size(); i++) {
            text.append("  ").append(i + 1).append("  ").append(numbered.get(i)).append('\n');
        }
        text.append("\nringleaf catalogue ")
                .append(name)
                .append(' ')
                .append(listings.get(0).name());
        return text.append(" shows every value of one with its source.\n").toString();
    }

    /** Where the values that are shown come from, each once; a value of the user's own needs no source. */
    private static Set<String> sources(Listing listing, List<String> keys) {
        Set<String> sources = new LinkedHashSet<>();
        for (Listing.Value value : listing.values()) {
            if (keys.contains(value.key()) && !value.source().isEmpty()) {
                sources.add(value.source());
            }
        }
        return sources;
    }

    /** One entry with all its values. */
    static String entry(String name, Listing listing) {
        List<List<String>> rows = new ArrayList<>();
        for (Listing.Value value : listing.values()) {
            rows.add(List.of("  " + value.key(), value.text(), value.source()));
        }
        String whose =
                switch (listing.whose()) {
                    case READY -> "";
                    case CHANGED -> ", with values of your own";
                    case OWN -> ", your own";
                };
        return listing.name() + " in " + name + ".yaml" + whose + "\n" + table(rows);
    }

    private static String cut(String text) {
        return text.length() <= WIDEST ? text : text.substring(0, WIDEST - 1).stripTrailing() + "…";
    }

    /** Columns side by side, two spaces between them. */
    private static String table(List<List<String>> rows) {
        int[] widths = new int[rows.get(0).size()];
        for (List<String> row : rows) {
            for (int i = 0; i < widths.length; i++) {
                // what is longer runs on, and nothing else is moved for it
                widths[i] = Math.max(
                        widths[i], row.get(i).length() > WIDEST ? 0 : row.get(i).length());
            }
        }
        StringBuilder text = new StringBuilder();
        for (List<String> row : rows) {
            StringBuilder line = new StringBuilder();
            for (int i = 0; i < widths.length; i++) {
                boolean gone = widths[i] == 0;
                int space = Math.max(0, widths[i] - row.get(i).length()) + 2;
                line.append(row.get(i)).append(gone ? "" : " ".repeat(space));
            }
            text.append(line.toString().stripTrailing()).append('\n');
        }
        return text.toString();
    }
}
