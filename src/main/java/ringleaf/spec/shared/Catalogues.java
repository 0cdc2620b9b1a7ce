// SPDX-License-Identifier: Apache-2.0
package ringleaf.spec.shared;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import ringleaf.spec.field.Named;
import ringleaf.spec.text.Place;
import ringleaf.spec.text.Problems;
import ringleaf.spec.text.SpecSource;

/** All catalogues, each read when it is first asked for. */
public final class Catalogues {
    /** Names of all, each that of its file without {@code .yaml}. */
    public static final List<String> NAMES = List.of(
            "processes",
            "stock",
            "servos",
            "screws",
            "rods",
            "dowels",
            "bearings",
            "linear-bearings",
            "boards",
            "contacts",
            "belts");

    private final SharedFiles own;
    private final Problems problems;
    private Catalogue<MakingProcess> processes;
    private Catalogue<Stock> stock;
    private Catalogue<Servo> servos;
    private Catalogue<Screw> screws;
    private Catalogue<Bearing> bearings;
    private Catalogue<LinearBearing> linearBearings;
    private Catalogue<Board> boards;
    private Catalogue<Contact> contacts;
    private Catalogue<Belt> belts;
    private Catalogue<Rod> rods;
    private Catalogue<Dowel> dowels;

    /**
     * The ready catalogues under a user's own ones.
     *
     * @param problems where what is wrong in the user's own ones goes, and names that are not found
     */
    public Catalogues(SharedFiles own, Problems problems) {
        this.own = own;
        this.problems = problems;
    }

    /** The text of a drawing that the spec names; empty after reporting at the field that asks for it. */
    public Optional<SpecSource> drawing(String path, Place asked) {
        try {
            return own.drawing(path, asked, problems);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    public synchronized Catalogue<MakingProcess> processes() {
        if (processes == null) {
            processes = new Catalogue<>(
                    "processes", "process", MakingProcess.FIELDS, e -> MakingProcess.of(e, problems), own, problems);
        }
        return processes;
    }

    public synchronized Catalogue<Stock> stock() {
        if (stock == null) {
            stock = new Catalogue<>("stock", "stock", Stock.FIELDS, e -> Stock.of(e, problems), own, problems);
        }
        return stock;
    }

    public synchronized Catalogue<Servo> servos() {
        if (servos == null) {
            servos = new Catalogue<>("servos", "servo", Servo.FIELDS, this::servo, own, problems);
        }
        return servos;
    }

    public synchronized Catalogue<Screw> screws() {
        if (screws == null) {
            screws = new Catalogue<>("screws", "screw", Screw.FIELDS, e -> Screw.of(e, problems), own, problems);
        }
        return screws;
    }

    public synchronized Catalogue<Bearing> bearings() {
        if (bearings == null) {
            bearings =
                    new Catalogue<>("bearings", "bearing", Bearing.FIELDS, e -> Bearing.of(e, problems), own, problems);
        }
        return bearings;
    }

    public synchronized Catalogue<LinearBearing> linearBearings() {
        if (linearBearings == null) {
            linearBearings = new Catalogue<>(
                    "linear-bearings",
                    "linear bearing",
                    LinearBearing.FIELDS,
                    e -> LinearBearing.of(e, problems),
                    own,
                    problems);
        }
        return linearBearings;
    }

    public synchronized Catalogue<Board> boards() {
        if (boards == null) {
            boards = new Catalogue<>("boards", "board", Board.FIELDS, e -> Board.of(e, problems), own, problems);
        }
        return boards;
    }

    /** A board by name or written out. */
    public Optional<Board> board(Named named) {
        return named.name().isPresent()
                ? boards().find(named.name().get(), named.place())
                : written(named).flatMap(e -> Optional.ofNullable(Board.of(e, problems)));
    }

    public synchronized Catalogue<Contact> contacts() {
        if (contacts == null) {
            contacts =
                    new Catalogue<>("contacts", "contact", Contact.FIELDS, e -> Contact.of(e, problems), own, problems);
        }
        return contacts;
    }

    /** A rotating contact by name or written out. */
    public Optional<Contact> contact(Named named) {
        return named.name().isPresent()
                ? contacts().find(named.name().get(), named.place())
                : written(named).flatMap(e -> Optional.ofNullable(Contact.of(e, problems)));
    }

    /** What a spec writes out itself; empty where something that it must say is missing, which is reported already. */
    private static Optional<Entry> written(Named named) {
        Entry entry = new Entry("own", named.own().orElseThrow(), Map.of());
        return entry.values().isComplete() ? Optional.of(entry) : Optional.empty();
    }

    public synchronized Catalogue<Belt> belts() {
        if (belts == null) {
            belts = new Catalogue<>("belts", "belt", Belt.FIELDS, this::belt, own, problems);
        }
        return belts;
    }

    public synchronized Catalogue<Rod> rods() {
        if (rods == null) {
            rods = new Catalogue<>("rods", "rod", Rod.FIELDS, e -> Rod.of(e, problems), own, problems);
        }
        return rods;
    }

    /**
     * One of them by its name.
     *
     * @throws IllegalArgumentException when {@link #NAMES} has none of the name
     */
    public Catalogue<?> named(String name) {
        return switch (name) {
            case "processes" -> processes();
            case "stock" -> stock();
            case "servos" -> servos();
            case "screws" -> screws();
            case "rods" -> rods();
            case "dowels" -> dowels();
            case "bearings" -> bearings();
            case "linear-bearings" -> linearBearings();
            case "boards" -> boards();
            case "contacts" -> contacts();
            case "belts" -> belts();
            default -> throw new IllegalArgumentException(name);
        };
    }

    /** Wire and rod by their diameters. */
    public Diameters<Rod> soldRods() {
        return new Diameters<>(rods());
    }

    public synchronized Catalogue<Dowel> dowels() {
        if (dowels == null) {
            dowels = new Catalogue<>("dowels", "dowel", Dowel.FIELDS, e -> Dowel.of(e, problems), own, problems);
        }
        return dowels;
    }

    /** Dowel pins by their diameters. */
    public Diameters<Dowel> soldDowels() {
        return new Diameters<>(dowels());
    }

    /** A belt by name or written out. */
    public Optional<Belt> belt(Named named) {
        if (named.name().isPresent()) {
            return belts().find(named.name().get(), named.place());
        }
        Entry entry = new Entry("own", named.own().orElseThrow(), Map.of());
        return entry.values().isComplete()
                ? Optional.ofNullable(Belt.of(entry, named.place(), problems))
                : Optional.empty();
    }

    private Belt belt(Entry entry) {
        return Belt.of(entry, entry.values().where(), problems);
    }

    /** A servo by name or written out; what is left open then comes from the micro class. */
    public Optional<Servo> servo(Named named) {
        if (named.name().isPresent()) {
            return servos().find(named.name().get(), named.place());
        }
        return Optional.ofNullable(servo(new Entry("own", named.own().orElseThrow(), Map.of())));
    }

    /** A servo, or null when its sizes contradict one another, or those of the class that stands in for what it leaves open. */
    private Servo servo(Entry entry) {
        if (entry.name().equals(Servo.STAND_IN)) {
            return Servo.of(entry, null, problems);
        }
        Optional<Servo> standIn = servos().get(Servo.STAND_IN);
        return standIn.isEmpty() ? null : Servo.of(entry, standIn.get(), problems);
    }
}
