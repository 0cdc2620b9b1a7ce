// SPDX-License-Identifier: Apache-2.0
package ringleaf.coupon;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import ringleaf.spec.field.LengthUnit;
import ringleaf.spec.field.Reading;
import ringleaf.spec.field.Values;
import ringleaf.spec.text.Nearest;
import ringleaf.spec.text.Node;
import ringleaf.spec.text.Place;
import ringleaf.spec.text.Problems;
import ringleaf.spec.text.Shown;
import ringleaf.spec.text.SpecSource;
import ringleaf.spec.text.YamlReader;

/** Reads a sheet that was filled in: every gap and every slip of it in one run. */
public final class SheetReader {
    static final String TONGUE = "tongue-enters";
    static final String SLIDES = "pin-slides";
    static final String HELD = "pin-held";
    static final String TURNS = "pin-turns";
    static final String NONE = "none";
    private static final int FEWEST = 2;

    private final SpecSource source;
    private final Problems problems;
    private final Reading drawn;
    private final List<Feature> features = new ArrayList<>();
    private final Map<String, Filled.Reading> readings = new LinkedHashMap<>();
    private final Map<String, Filled.Answer> answers = new LinkedHashMap<>();
    private Reading written;

    private SheetReader(SpecSource source, Problems problems) {
        this.source = source;
        this.problems = problems;
        this.drawn = new Reading(LengthUnit.MM, problems);
    }

    /** The sheet; empty when it is none of ours or not whole, which is then among the problems. */
    public static Optional<Filled> read(SpecSource source, Problems problems) {
        int before = problems.count();
        Optional<Node> root = YamlReader.read(source, problems);
        if (root.isEmpty()) {
            if (problems.count() == before) {
                problems.of(source, "holds only comments, and no readings", "");
            }
            return Optional.empty();
        }
        if (!(root.get() instanceof Node.Mapping map) || map.get(SheetFields.FORM) == null) {
            problems.at(
                    root.get().place(),
                    "this is no sheet of a coupon: it has no line " + SheetFields.FORM + ":",
                    "`ringleaf coupon --process NAME` writes one to fill in");
            return Optional.empty();
        }
        return new SheetReader(source, problems).sheet(map, before);
    }

    private Optional<Filled> sheet(Node.Mapping map, int before) {
        Node form = map.get(SheetFields.FORM);
        String known = Integer.toString(Coupon.FORM);
        if (!(form instanceof Node.Scalar scalar) || !scalar.text().equals(known)) {
            String said = form instanceof Node.Scalar s ? Shown.quoted(s.text()) : form.shape();
            problems.at(
                    form.place().named(SheetFields.FORM),
                    "this sheet has the form " + said + ", and this version reads form " + known,
                    "read it with the version that wrote it, or make a new piece");
            return Optional.empty();
        }
        List<String> handled = new ArrayList<>(List.of(SheetFields.FORM, SheetFields.PIN_KEY));
        for (Feature.Kind kind : Feature.Kind.values()) {
            handled.add(kind.group());
        }
        Values head = SheetFields.HEAD.bind(map, source.whole(), drawn, handled);
        LengthUnit units = LengthUnit.of(head.given(SheetFields.UNITS).orElse("mm"));
        written = new Reading(units, problems);
        double pin = pin(map);
        for (Feature.Kind kind : Feature.Kind.values()) {
            group(map, kind);
        }
        if (!head.isComplete() || features.isEmpty()) {
            return Optional.empty();
        }
        Coupon coupon = new Coupon(
                head.require(SheetFields.PROCESS),
                head.require(SheetFields.STOCK),
                head.require(SheetFields.MAKES).equals("layers"),
                head.require(SheetFields.THICKNESS),
                pin,
                features);
        String piece = head.require(SheetFields.PIECE);
        if (!coupon.id().equals(piece) && problems.count() == before) {
            problems.at(
                    head.where(SheetFields.PIECE),
                    "the drawn sizes here are not those of piece " + Shown.quoted(piece),
                    "a line was changed, lost or copied from the sheet of another piece; take the sheet that"
                            + " was written"
                            + " with the piece");
        }
        if (problems.count() > before) {
            return Optional.empty();
        }
        Filled filled =
                new Filled(source, coupon, instrument(head, SheetFields.OUTSIDE), instrument(head, SheetFields.INSIDE));
        readings.forEach(filled::read);
        answers.forEach(filled::answer);
        return Optional.of(filled);
    }

    private Filled.Instrument instrument(Values head, ringleaf.spec.field.Field<Values> field) {
        Values values = head.require(field);
        return new Filled.Instrument(values.require(SheetFields.STEP), values.require(SheetFields.ERROR));
    }

    private double pin(Node.Mapping map) {
        Node.Entry entry = map.entries().get(SheetFields.PIN_KEY);
        if (entry == null) {
            problems.at(source.whole().named(SheetFields.PIN_KEY), "the line of the pin is missing");
            return 1;
        }
        return size(SheetFields.PIN_KEY, entry, true);
    }

    private void group(Node.Mapping map, Feature.Kind kind) {
        Node.Entry entry = map.entries().get(kind.group());
        if (entry == null) {
            problems.at(source.whole().named(kind.group()), "this part of the sheet is missing");
            return;
        }
        if (!(entry.value() instanceof Node.Mapping lines)) {
            problems.at(entry.keyPlace().named(kind.group()), "the lines of this part of the sheet are missing");
            return;
        }
        if (kind == Feature.Kind.COMB || kind == Feature.Kind.FIT) {
            tries(lines, entry.keyPlace(), kind);
            return;
        }
        for (Map.Entry<String, Node.Entry> line : lines.entries().entrySet()) {
            String name = line.getKey();
            double size = size(name, line.getValue(), kind.isMeasured());
            features.add(new Feature(name, kind, size));
            if (!kind.isMeasured()) {
                look(name, line.getValue(), kind == Feature.Kind.WEB ? "whole" : "open");
            }
        }
    }

    /** The drawn size of a line, and its readings where it is measured; 1 where it has none, which is reported. */
    private double size(String name, Node.Entry line, boolean measured) {
        Place place = line.keyPlace().named(Shown.quoted(name));
        if (!(line.value() instanceof Node.Mapping map)) {
            problems.at(place, "a map {drawn: …, …} is wanted");
            return 1;
        }
        String other = measured ? SheetFields.MEASURED_KEY : map.get("whole") != null ? "whole" : "open";
        Values values = SheetFields.SIZE.bind(map, place, drawn, List.of(other));
        if (measured) {
            Node.Entry entry = map.entries().get(SheetFields.MEASURED_KEY);
            if (entry == null) {
                problems.at(place, "has no measured: [ ]", "write the readings, or measured: none");
            } else {
                readings(name, entry);
            }
        }
        return values.given(SheetFields.DRAWN).orElse(1.0);
    }

    private void readings(String name, Node.Entry entry) {
        Node node = entry.value();
        Place place = entry.keyPlace().named(Shown.quoted(name));
        boolean blank = node instanceof Node.Scalar scalar && scalar.isNothing()
                || node instanceof Node.Sequence sequence && sequence.items().isEmpty();
        if (blank) {
            problems.at(
                    place,
                    "is not filled in",
                    "write two readings or more, or measured: none where it cannot be" + " measured");
            return;
        }
        if (node instanceof Node.Scalar scalar && scalar.text().equals(NONE)) {
            return;
        }
        Node.Mapping alone = new Node.Mapping(place, Map.of(SheetFields.MEASURED_KEY, new Node.Entry(place, node)));
        Values values = SheetFields.READINGS.bind(alone, place, written);
        Optional<List<Double>> all = values.given(SheetFields.MEASURED);
        if (all.isEmpty()) {
            return;
        }
        List<Place> places = new ArrayList<>();
        if (node instanceof Node.Sequence sequence) {
            for (Node each : sequence.items()) {
                places.add(each.place().named(Shown.quoted(name)));
            }
        } else {
            places.add(node.place().named(Shown.quoted(name)));
        }
        if (all.get().size() < FEWEST) {
            problems.at(
                    place,
                    "has one reading, and two are the least: only repeated readings part the scatter of the"
                            + " machine from that of measuring");
        }
        readings.put(name, new Filled.Reading(all.get(), places, place));
    }

    private void look(String name, Node.Entry line, String key) {
        Node.Entry entry =
                line.value() instanceof Node.Mapping map ? map.entries().get(key) : null;
        Place place = (entry == null ? line.keyPlace() : entry.keyPlace()).named(Shown.quoted(name));
        String word = entry != null && entry.value() instanceof Node.Scalar scalar && !scalar.isNothing()
                ? scalar.text()
                : "";
        switch (word) {
            case "yes", "true" -> answers.put(name, new Filled.Answer("yes", place));
            case "no", "false" -> answers.put(name, new Filled.Answer("no", place));
            case "" -> problems.at(place, "is not filled in", "write " + key + ": yes or no");
            default -> problems.at(place, Shown.quoted(word) + " is neither yes nor no");
        }
    }

    private void tries(Node.Mapping lines, Place owner, Feature.Kind kind) {
        List<String> names = new ArrayList<>();
        Node.Entry sizes = lines.entries().get(SheetFields.DRAWN_KEY);
        if (sizes == null || !(sizes.value() instanceof Node.Mapping map)) {
            problems.at(owner.named(kind.group()), "the line of the drawn sizes is missing");
            return;
        }
        for (Map.Entry<String, Node.Entry> each : map.entries().entrySet()) {
            Node.Mapping alone = new Node.Mapping(owner, Map.of(SheetFields.DRAWN_KEY, each.getValue()));
            Values values = SheetFields.SIZE.bind(alone, owner, drawn);
            features.add(new Feature(
                    each.getKey(), kind, values.given(SheetFields.DRAWN).orElse(1.0)));
            names.add(each.getKey());
        }
        List<String> questions = kind == Feature.Kind.COMB ? List.of(TONGUE, SLIDES) : List.of(HELD, TURNS);
        for (String key : lines.entries().keySet()) {
            if (!key.equals(SheetFields.DRAWN_KEY) && !questions.contains(key)) {
                Place place = lines.entries().get(key).keyPlace().named(Shown.quoted(key));
                problems.at(place, "unknown key", Nearest.hint(key, questions));
            }
        }
        for (String question : questions) {
            choice(question, lines.entries().get(question), owner, names);
        }
    }

    private void choice(String question, Node.Entry entry, Place owner, List<String> names) {
        if (entry == null) {
            problems.at(owner.named(question), "this line is missing");
            return;
        }
        Place place = entry.value().place().named(question);
        if (!(entry.value() instanceof Node.Scalar scalar) || scalar.isNothing()) {
            problems.at(
                    entry.keyPlace().named(question),
                    "is not filled in",
                    "write a name such as " + names.get(0) + ", or none");
        } else if (names.contains(scalar.text())) {
            answers.put(question, new Filled.Answer(scalar.text(), place));
        } else if (!scalar.text().equals(NONE)) {
            String known = names.get(0) + " to " + names.get(names.size() - 1);
            problems.at(place, Shown.quoted(scalar.text()) + " is none of " + known + ", and not none");
        }
    }
}
