// SPDX-License-Identifier: Apache-2.0
package ringleaf.spec.shared;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import ringleaf.spec.field.Field;
import ringleaf.spec.field.FieldSet;
import ringleaf.spec.field.LengthUnit;
import ringleaf.spec.field.Reading;
import ringleaf.spec.text.Decimal;
import ringleaf.spec.text.Nearest;
import ringleaf.spec.text.Node;
import ringleaf.spec.text.Place;
import ringleaf.spec.text.Problems;
import ringleaf.spec.text.Shown;
import ringleaf.spec.text.SpecSource;
import ringleaf.spec.text.YamlReader;

/**
 * One catalogue, read when it is first asked, by whichever thread; bare lengths in it are millimetres.
 *
 * @param <T> what an entry becomes
 */
public final class Catalogue<T> {
    private final String fileName;
    private final String topKey;
    private final String one;
    private final FieldSet fields;
    private final Function<Entry, T> maker;
    private final SharedFiles own;
    private final Problems problems;
    private final Map<String, SourcedEntry> ownEntries = new LinkedHashMap<>();
    private ReadyFile ready;
    private final Map<String, Optional<T>> made = new LinkedHashMap<>();

    /**
     * A catalogue.
     *
     * @param topKey key of the file under which the entries stand, the file being {@code topKey.yaml}
     * @param one what one entry is called in messages
     * @param maker makes the entry's value; null when it finds it wrong, after reporting
     */
    Catalogue(
            String topKey, String one, FieldSet fields, Function<Entry, T> maker, SharedFiles own, Problems problems) {
        this.fileName = topKey + ".yaml";
        this.topKey = topKey;
        this.one = one;
        this.fields = fields;
        this.maker = maker;
        this.own = own;
        this.problems = problems;
    }

    /** All names, the ready ones first. */
    public synchronized Collection<String> names() {
        load();
        Set<String> names = new LinkedHashSet<>(ready.names());
        names.addAll(ownEntries.keySet());
        return Collections.unmodifiableSet(names);
    }

    /** An entry by its name; empty when there is none or it is wrong, which is then among the problems. */
    public synchronized Optional<T> get(String name) {
        load();
        Optional<T> known = made.get(name);
        if (known == null) {
            known = make(name);
            made.put(name, known);
        }
        return known;
    }

    /** An entry by the name a user wrote; an unknown name becomes a problem at its place, the nearest is read on with. */
    public synchronized Optional<T> find(String name, Place place) {
        load();
        if (!ready.names().contains(name) && !ownEntries.containsKey(name)) {
            String reason = "there is no " + one + " " + Shown.quoted(name) + " in " + fileName;
            Optional<String> nearest = Nearest.of(name, names());
            if (nearest.isEmpty()) {
                problems.at(place, reason, Nearest.hint(name, names()));
                return Optional.empty();
            }
            problems.nearest(place, reason, Nearest.hint(name, names()));
            return get(nearest.get());
        }
        return get(name);
    }

    /** What one entry is called. */
    public String one() {
        return one;
    }

    /** An entry with all its values as they were written, and their units; empty when there is none. */
    public synchronized Optional<Listing> listing(String name) {
        load();
        Optional<SourcedEntry> sourced = sourced(name);
        if (sourced.isEmpty()) {
            return Optional.empty();
        }
        List<Listing.Value> values = new ArrayList<>();
        for (Field<?> field : fields.fields()) {
            Node node = sourced.get().values().get(field.name());
            if (node != null) {
                boolean mine = ownEntries.containsKey(name)
                        && ownEntries.get(name).values().get(field.name()) != null;
                String source = sourced.get().sources().getOrDefault(field.name(), mine ? "your own" : "");
                Double within = sourced.get().within().get(field.name());
                String text = Written.of(node, field) + (within == null ? "" : " ±" + Decimal.of(within, 3));
                values.add(new Listing.Value(field.name(), text, source));
            }
        }
        Listing.Whose whose = !ownEntries.containsKey(name)
                ? Listing.Whose.READY
                : ready.names().contains(name) ? Listing.Whose.CHANGED : Listing.Whose.OWN;
        return Optional.of(new Listing(name, values, whose));
    }

    private Optional<SourcedEntry> sourced(String name) {
        SourcedEntry under = ready.entry(name);
        SourcedEntry over = ownEntries.get(name);
        return Optional.ofNullable(over == null ? under : under == null ? over : under.under(over));
    }

    /**
     * A ready entry that a default relies on.
     *
     * @throws ringleaf.spec.text.SpecRefused when a user's own file has spoilt it
     */
    public T require(String name) {
        Optional<T> entry = get(name);
        if (entry.isEmpty()) {
            problems.throwIfAny();
            throw new IllegalStateException("there is no " + name + " in " + fileName);
        }
        return entry.get();
    }

    private Optional<T> make(String name) {
        Optional<SourcedEntry> sourced = sourced(name);
        if (sourced.isEmpty()) {
            return Optional.empty();
        }
        int before = problems.count();
        Entry entry = sourced.get().read(fields, new Reading(LengthUnit.MM, problems));
        return problems.count() > before ? Optional.empty() : Optional.ofNullable(maker.apply(entry));
    }

    /** Reads the files; the user's own entries are all tried, so that a mistake in one shows in every run. */
    private void load() {
        if (ready != null) {
            return;
        }
        ready = ready();
        try {
            for (SpecSource source : own.read(fileName, problems)) {
                lay(source);
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        for (String name : List.copyOf(ownEntries.keySet())) {
            get(name);
        }
    }

    private ReadyFile ready() {
        String path = "/ringleaf/shared/" + fileName;
        try (InputStream in = Catalogue.class.getResourceAsStream(path)) {
            if (in == null) {
                throw new IllegalStateException(path + " is missing from the jar");
            }
            String text = new String(in.readAllBytes(), StandardCharsets.UTF_8).replace("\r\n", "\n");
            return new ReadyFile(fileName, topKey, text);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Lays the entries of a user's own file over those of earlier ones. */
    private void lay(SpecSource source) {
        Optional<Node> root = YamlReader.read(source, problems);
        if (root.isEmpty()) {
            return;
        }
        if (!(root.get() instanceof Node.Mapping file) || !(file.get(topKey) instanceof Node.Mapping list)) {
            problems.of(source, "holds no map " + topKey + ": with an entry under each name", "");
            return;
        }
        for (Map.Entry<String, Node.Entry> key : file.entries().entrySet()) {
            if (!key.getKey().equals(topKey) && !key.getKey().equals("sources")) {
                Place place = key.getValue().keyPlace().named(Shown.quoted(key.getKey()));
                problems.at(place, "unknown key", "known: sources, " + topKey);
            }
        }
        Map<String, String> sources = SourcedEntry.sources(file.get("sources"), problems);
        for (Map.Entry<String, Node.Entry> each : list.entries().entrySet()) {
            String name = each.getKey();
            Place place = each.getValue().keyPlace().named(Shown.quoted(name));
            if (!(each.getValue().value() instanceof Node.Mapping map)) {
                problems.at(place, "a map of values is wanted for a " + one);
                continue;
            }
            SourcedEntry entry = SourcedEntry.of(name, place, map, sources, true, problems);
            SourcedEntry below = ownEntries.get(name);
            ownEntries.put(name, below == null ? entry : below.under(entry));
        }
    }
}
