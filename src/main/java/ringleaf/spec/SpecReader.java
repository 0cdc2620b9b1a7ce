// SPDX-License-Identifier: Apache-2.0
package ringleaf.spec;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import ringleaf.spec.field.Field;
import ringleaf.spec.field.LengthUnit;
import ringleaf.spec.field.Reading;
import ringleaf.spec.field.Values;
import ringleaf.spec.shared.Catalogues;
import ringleaf.spec.text.Nearest;
import ringleaf.spec.text.Node;
import ringleaf.spec.text.Place;
import ringleaf.spec.text.Problems;
import ringleaf.spec.text.Shown;
import ringleaf.spec.text.SpecSource;
import ringleaf.spec.text.YamlReader;

/** Reads a whole spec: every problem of it in one run. */
public final class SpecReader {
    /** Mechanisms in one spec; more are better in files of their own. */
    public static final int MECHANISM_LIMIT = 50;

    /** In place of a title that was refused. */
    private static final String NAMELESS = "untitled";

    private final List<KindFields> kinds;
    private final Catalogues catalogues;
    private final Problems problems;

    /**
     * A reader.
     *
     * @param kinds that are registered
     * @param problems where all that is wrong goes; the same as the catalogues'
     */
    public SpecReader(List<KindFields> kinds, Catalogues catalogues, Problems problems) {
        this.kinds = List.copyOf(kinds);
        this.catalogues = catalogues;
        this.problems = problems;
    }

    /**
     * The document with the options laid over it.
     *
     * @return empty when anything is wrong, which is then among the problems
     */
    public Optional<SpecDocument> read(SpecSource source, List<SetOption> options) {
        Optional<Node.Mapping> root = root(source, options);
        return root.isPresent() ? read(source, root.get()) : Optional.empty();
    }

    /** The text's root with the options laid over it; empty when it is no map, which is then among the problems. */
    public Optional<Node.Mapping> root(SpecSource source, List<SetOption> options) {
        Optional<Node> node = YamlReader.read(source, problems);
        if (node.isEmpty()) {
            if (problems.isEmpty()) {
                problems.of(source, "holds only comments, and no spec", "`ringleaf new` writes one to start from");
            }
            return Optional.empty();
        }
        if (!(node.get() instanceof Node.Mapping written)) {
            problems.at(
                    node.get().place(),
                    "this is no spec: a map with mechanisms: is wanted, and not "
                            + node.get().shape(),
                    "`ringleaf new` writes a spec to start from");
            return Optional.empty();
        }
        Node.Mapping root = written;
        for (SetOption option : options) {
            root = option.over(root, RootFields.NAMES, problems);
        }
        return Optional.of(root);
    }

    /** The document of a root; empty when anything is wrong, which is then among the problems. */
    public Optional<SpecDocument> read(SpecSource source, Node.Mapping root) {
        Optional<SpecDocument> document = readOn(source, root);
        return problems.isEmpty() ? document : Optional.empty();
    }

    /**
     * The document of a root, as far as it can be looked at whatever is wrong: where something is, the nearest value
     * that works stands in its place, and mechanisms are left out of which something could not be read at all. So the
     * kinds can tell what they find wrong in the same run. The problems tell whether it may be used for more.
     *
     * @return empty when nothing can be looked at
     */
    public Optional<SpecDocument> readOn(SpecSource source, Node.Mapping root) {
        Place place = source.whole();
        Values values =
                RootFields.SCALARS.bind(known(root), place, new Reading(LengthUnit.MM, problems), RootFields.MAPS);
        LengthUnit units = LengthUnit.of(values.require(RootFields.UNITS));
        String title = title(source, values);
        int before = problems.gaps();
        Fabrication fabrication =
                new FabricationReader(catalogues, problems, units).read(root.get(RootFields.FABRICATION), place);
        boolean good = problems.gaps() == before && !values.isRefused(RootFields.UNITS);
        List<MechanismSpec> mechanisms = mechanisms(root, place, new Reading(units, problems));
        if (!good || mechanisms.isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(new SpecDocument(
                title,
                Slug.of(title).orElse(NAMELESS),
                units,
                fabrication,
                mechanisms,
                together(root, place, new Reading(units, problems)),
                catalogues));
    }

    /** What is said of all mechanisms together; problems tell of what is wrong. */
    private static Values together(Node.Mapping root, Place place, Reading reading) {
        Map<String, Node.Entry> own = new LinkedHashMap<>();
        for (Field<?> field : SetupFields.ALL.fields()) {
            Node.Entry entry = root.entries().get(field.name());
            if (entry != null) {
                own.put(field.name(), entry);
            }
        }
        return SetupFields.ALL.bind(new Node.Mapping(root.place(), own), place, reading);
    }

    /** The root without keys that belong to a mechanism, which are reported: a spec without indentation is common. */
    private Node.Mapping known(Node.Mapping root) {
        Map<String, Node.Entry> kept = new LinkedHashMap<>();
        for (Map.Entry<String, Node.Entry> each : root.entries().entrySet()) {
            if (RootFields.NAMES.contains(each.getKey()) || !isOfMechanism(each.getKey())) {
                kept.put(each.getKey(), each.getValue());
            } else {
                Place place = each.getValue().keyPlace().named(each.getKey());
                problems.at(place, "belongs to a mechanism", "put it under its name within mechanisms:, indented");
            }
        }
        return new Node.Mapping(root.place(), kept);
    }

    private boolean isOfMechanism(String key) {
        boolean found = RootFields.OF_EVERY_KIND.contains(key);
        for (KindFields kind : kinds) {
            found |= kind.fields().find(key) != null;
        }
        return found;
    }

    private String title(SpecSource source, Values values) {
        Optional<String> given = values.given(RootFields.TITLE);
        String title = given.isPresent() ? given.get() : RootFields.titleFrom(source.name());
        String refusal = Slug.refusal(title);
        if (!refusal.isEmpty() && given.isPresent()) {
            problems.at(values.where(RootFields.TITLE), refusal);
        } else if (!refusal.isEmpty() && problems.isEmpty()) {
            problems.at(values.where(RootFields.TITLE), "is missing, and the file's name " + refusal, "give a title");
        }
        return title;
    }

    private List<MechanismSpec> mechanisms(Node.Mapping root, Place document, Reading reading) {
        List<MechanismSpec> read = new ArrayList<>();
        Node.Entry entry = root.entries().get(RootFields.MECHANISMS);
        if (entry == null) {
            problems.at(
                    document.named(RootFields.MECHANISMS),
                    "is missing (a map of the mechanisms to make, each under a name)",
                    "known kinds: " + String.join(", ", byName().keySet()));
            return read;
        }
        if (!(entry.value() instanceof Node.Mapping list) || list.entries().isEmpty()) {
            Place place = entry.keyPlace().named(RootFields.MECHANISMS);
            problems.at(place, "a map of mechanisms, each under a name, is wanted", "");
            return read;
        }
        int count = list.entries().size();
        if (count > MECHANISM_LIMIT) {
            Place place = entry.keyPlace().named(RootFields.MECHANISMS);
            String most = " mechanisms stand here, and " + MECHANISM_LIMIT + " are the most";
            problems.at(place, count + most + " (more are better in files of their own)");
            return read;
        }
        for (Map.Entry<String, Node.Entry> each : list.entries().entrySet()) {
            mechanism(each.getKey(), each.getValue(), reading).ifPresent(read::add);
        }
        return read;
    }

    private Optional<MechanismSpec> mechanism(String name, Node.Entry entry, Reading reading) {
        Place place = entry.keyPlace();
        String refusal = Slug.nameRefusal(name);
        if (!refusal.isEmpty()) {
            problems.at(place.named(RootFields.MECHANISMS), refusal);
        }
        if (!(entry.value() instanceof Node.Mapping map)) {
            String reason =
                    "a map with a kind: is wanted, and not " + entry.value().shape();
            problems.at(place.named(Shown.quoted(name)), reason);
            return Optional.empty();
        }
        KindFields kind = kind(name, map, place);
        if (kind == null) {
            return Optional.empty();
        }
        int before = problems.gaps();
        Values values = kind.fields().bind(map, place, reading, RootFields.OF_EVERY_KIND);
        PlaceSpec standing = standing(map, place, reading);
        return problems.gaps() > before
                ? Optional.empty()
                : Optional.of(new MechanismSpec(name, kind, values, standing, place));
    }

    /** Where a mechanism stands; problems tell of what is wrong. */
    private PlaceSpec standing(Node.Mapping map, Place place, Reading reading) {
        String key = PlaceFields.PLACE.name();
        Node.Entry entry = map.entries().get(key);
        if (entry == null) {
            return PlaceSpec.none(place);
        }
        Values around = PlaceFields.ALL.bind(new Node.Mapping(map.place(), Map.of(key, entry)), place, reading);
        return around.given(PlaceFields.PLACE).map(PlaceSpec::of).orElse(PlaceSpec.none(place));
    }

    private KindFields kind(String name, Node.Mapping map, Place place) {
        Map<String, KindFields> known = byName();
        Node node = map.get(RootFields.KIND);
        if (node == null) {
            String all = "known: " + String.join(", ", known.keySet());
            problems.at(place.named(RootFields.KIND), "is missing in " + Shown.quoted(name), all);
            return null;
        }
        Place at = node.place().named(RootFields.KIND);
        if (!(node instanceof Node.Scalar scalar)) {
            problems.at(at, "the name of a kind is wanted, and not " + node.shape());
            return null;
        }
        KindFields kind = known.get(scalar.text());
        if (kind == null) {
            String reason = "there is no kind " + Shown.quoted(scalar.text());
            String hint = Nearest.hint(scalar.text(), known.keySet());
            Optional<String> nearest = Nearest.of(scalar.text(), known.keySet());
            if (nearest.isPresent()) {
                problems.nearest(at, reason, hint);
                return known.get(nearest.get());
            }
            problems.at(at, reason, hint);
        }
        return kind;
    }

    private Map<String, KindFields> byName() {
        Map<String, KindFields> byName = new LinkedHashMap<>();
        for (KindFields kind : kinds) {
            byName.put(kind.name(), kind);
        }
        return byName;
    }
}
