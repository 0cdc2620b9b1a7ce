// SPDX-License-Identifier: Apache-2.0
package ringleaf.spec.field;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import ringleaf.spec.text.Node;
import ringleaf.spec.text.Place;
import ringleaf.spec.text.Problems;
import ringleaf.spec.text.SpecSource;

/**
 * One key of a spec, declared once: what it takes, what it may be and why, what it is when left out, and a line of
 * help. Immutable; every method that changes something gives a copy, so keep the last one.
 *
 * @param <T> what reading gives
 */
public final class Field<T> {
    private final String name;
    private final FieldType<T> type;
    private final String help;
    private final boolean required;
    private final String defaultText;
    private final String defaultWords;
    private final List<String> examples;
    /** Read once and kept; values do not change, so two threads that both read it do no harm. */
    private T readDefault;

    private Field(
            String name,
            FieldType<T> type,
            String help,
            boolean required,
            String defaultText,
            String defaultWords,
            List<String> examples) {
        this.name = name;
        this.type = type;
        this.help = help;
        this.required = required;
        this.defaultText = defaultText;
        this.defaultWords = defaultWords;
        this.examples = examples;
    }

    private static <T> Field<T> of(String name, FieldType<T> type) {
        return new Field<>(name, type, "", false, "", "", List.of());
    }

    /** A length, mm inside; 0.01 mm to 5 m unless said otherwise. */
    public static Field<Double> length(String name) {
        return of(name, new QuantityType(Quantity.LENGTH, false, Range.LENGTHS));
    }

    /** A length whose bare number is in mm whatever the document's units, as a gear's module is. */
    public static Field<Double> millimetres(String name) {
        return of(name, new QuantityType(Quantity.LENGTH, true, Range.LENGTHS));
    }

    /** A module of teeth in mm, or a diametral pitch such as {@code 24dp}. */
    public static Field<Double> module(String name) {
        return of(name, new ModuleType(new QuantityType(Quantity.LENGTH, true, Range.LENGTHS)));
    }

    /** A ratio such as {@code 5:3}; state its range. */
    public static Field<Double> ratio(String name) {
        return of(name, new RatioType(null));
    }

    /** An angle, radians inside; a bare number and the range are in degrees, a full turn either way unless stated. */
    public static Field<Double> angle(String name) {
        return of(name, new QuantityType(Quantity.ANGLE, false, Range.ANGLES));
    }

    /** A number of another quantity, in its inner unit; state its range. */
    public static Field<Double> quantity(String name, Quantity quantity) {
        return of(name, new QuantityType(quantity, false, null));
    }

    /** A torque, N mm inside; state its range in N mm. */
    public static Field<Double> torque(String name) {
        return quantity(name, Quantity.TORQUE);
    }

    /** A plain number; state its range. */
    public static Field<Double> number(String name) {
        return quantity(name, Quantity.NUMBER);
    }

    /** A percentage, a fraction of 1 inside; state its range in percent. */
    public static Field<Double> percent(String name) {
        return quantity(name, Quantity.PERCENT);
    }

    /** A whole number; state its range. */
    public static Field<Integer> count(String name) {
        return of(name, new CountType(null));
    }

    /** One of named ways; add them with {@link #option}. */
    public static Field<String> choice(String name) {
        return of(name, new ChoiceType(new LinkedHashMap<>()));
    }

    /** A line of text. */
    public static Field<String> text(String name, int longest) {
        return of(name, new TextType(longest));
    }

    /** Yes or no. */
    public static Field<Boolean> flag(String name) {
        return of(name, new FlagType());
    }

    /** The name of an entry of a catalogue, e.g. of {@code screws.yaml}. */
    public static Field<String> name(String name, String catalogue) {
        return of(name, new NameType(catalogue));
    }

    /** The name of an entry of a catalogue, or a map with the same fields. */
    public static Field<Named> named(String name, String catalogue, FieldSet fields) {
        return of(name, new NamedType(new NameType(catalogue), fields));
    }

    /** Fields under a key of their own. */
    public static Field<Values> group(String name, FieldSet fields) {
        return of(name, new GroupType(fields));
    }

    /** Several values like those of this field, at most so many. */
    public Field<List<T>> list(int most) {
        return new Field<>(name, new ListType<>(type, most), help, required, defaultText, defaultWords, examples);
    }

    /** The same, taking {@code {at-least: …, at-most: …}} as well as an exact number. */
    public Field<Bound> bound() {
        return new Field<>(name, type.bound(), help, required, defaultText, defaultWords, examples);
    }

    /** One line that says what it is. */
    public Field<T> help(String line) {
        return new Field<>(name, type, line, required, defaultText, defaultWords, examples);
    }

    /** The least value, in mm, degrees, N mm or the quantity's shown unit, and what goes wrong below it. */
    public Field<T> atLeast(double least, String why) {
        return withType(type.withLeast(least, why));
    }

    /** The greatest value, in mm, degrees, N mm or the quantity's shown unit, and what goes wrong above it. */
    public Field<T> atMost(double most, String why) {
        return withType(type.withMost(most, why));
    }

    /** One more way to choose, with a line that says what it means. */
    public Field<T> option(String option, String meaning) {
        return withType(type.withOption(option, meaning));
    }

    /** It must be given. */
    public Field<T> required() {
        return new Field<>(name, type, help, true, defaultText, defaultWords, examples);
    }

    /** What holds when it is left out, written as in a spec; a bare length is in mm. */
    public Field<T> byDefault(String text) {
        return new Field<>(name, type, help, required, text, "", examples);
    }

    /** What happens when it is left out, in words; reading it then gives nothing. */
    public Field<T> byDefaultWords(String words) {
        return new Field<>(name, type, help, required, "", words, examples);
    }

    /** Values as they could stand in a spec. */
    public Field<T> example(String... values) {
        return new Field<>(name, type, help, required, defaultText, defaultWords, List.of(values));
    }

    private Field<T> withType(FieldType<T> newType) {
        return new Field<>(name, newType, help, required, defaultText, defaultWords, examples);
    }

    public String name() {
        return name;
    }

    /** One line that says what it is. */
    public String help() {
        return help;
    }

    public boolean isRequired() {
        return required;
    }

    public List<String> examples() {
        return examples;
    }

    /** What holds when it is left out: a value as written in a spec, or words; empty when nothing is said. */
    public String defaultText() {
        return defaultText.isEmpty() ? defaultWords : defaultText;
    }

    /** Whether the default is a value and not only words. */
    public boolean hasDefaultValue() {
        return !defaultText.isEmpty();
    }

    /** What it takes, in a word or two. */
    public String takes() {
        return type.takes();
    }

    /** The range in words, or empty. */
    public String limits() {
        return type.limits();
    }

    /** Why the range is what it is, or what the options mean; or empty. */
    public String reasons() {
        return type.reasons();
    }

    FieldType<T> type() {
        return type;
    }

    /** What kind of number it takes, alone or within limits; null when it takes none. */
    public Numeric numeric() {
        return type.numeric();
    }

    /** Whether it takes limits as well as a value. */
    public boolean isBound() {
        return type instanceof BoundType;
    }

    /** The fields inside it, or null. */
    public FieldSet inner() {
        return type.inner();
    }

    /** The named ways it takes, or none. */
    public List<String> options() {
        return List.copyOf(type.options().keySet());
    }

    /** The catalogue whose names it takes, without its ending; empty when it takes none. */
    public String catalogue() {
        return type.catalogueOfNames();
    }

    /** The default read as a value; null when there is none. A default that cannot be read is an error of the code. */
    public T defaultValue() {
        if (readDefault == null && !defaultText.isEmpty()) {
            readDefault = readDefault();
        }
        return readDefault;
    }

    private T readDefault() {
        Problems problems = new Problems();
        Place place = SpecSource.ofOption("default of " + name, defaultText).whole();
        T value = type.read(new Node.Scalar(place, defaultText, true), place, new Reading(LengthUnit.MM, problems));
        if (value == null || !problems.isEmpty()) {
            throw new IllegalStateException(problems.text());
        }
        return value;
    }

    /** JSON Schema of the value; {@code inMillimetres} when bare lengths are surely millimetres. */
    public Map<String, Object> schema(boolean inMillimetres) {
        return FieldSchema.of(this, inMillimetres);
    }
}
