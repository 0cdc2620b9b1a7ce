// SPDX-License-Identifier: Apache-2.0
package ringleaf.spec.field;

import java.util.Map;
import ringleaf.spec.text.Node;
import ringleaf.spec.text.Place;

/**
 * How the values of a field are read and described.
 *
 * @param <T> what comes out
 */
interface FieldType<T> {
    /** The value; null when it is refused, after it was reported. {@code place} is the value's, with its path. */
    T read(Node node, Place place, Reading reading);

    /** JSON Schema of the value; {@code inMillimetres} when bare lengths are surely millimetres. */
    Map<String, Object> schema(boolean inMillimetres);

    /** What it takes, in a word or two, for tables. */
    String takes();

    /** The range in words, or empty. */
    default String limits() {
        return "";
    }

    /** The reasons of the range, or empty. */
    default String reasons() {
        return "";
    }

    /** Whether a range is missing that must be stated. */
    default boolean lacksRange() {
        return false;
    }

    /** The same with another least value. A type that knows none refuses such a declaration. */
    default FieldType<T> withLeast(double least, String why) {
        throw new IllegalArgumentException(takes() + " has no least value");
    }

    /** The same with another greatest value. A type that knows none refuses such a declaration. */
    default FieldType<T> withMost(double most, String why) {
        throw new IllegalArgumentException(takes() + " has no greatest value");
    }

    /** The same with one more way to choose from. A type that knows none refuses such a declaration. */
    default FieldType<T> withOption(String name, String meaning) {
        throw new IllegalArgumentException(takes() + " has no options");
    }

    /** The same taking limits as well as an exact value. A type that knows none refuses such a declaration. */
    default FieldType<Bound> bound() {
        throw new IllegalArgumentException(takes() + " cannot be bounded");
    }

    /** The ways to choose from with their meanings, or none. */
    default Map<String, String> options() {
        return Map.of();
    }

    /** The fields inside, or null. */
    default FieldSet inner() {
        return null;
    }

    /** What kind of number it takes, alone or within limits; null when it takes none. */
    default Numeric numeric() {
        return null;
    }

    /** The catalogue whose names it takes, without its ending; empty when it takes none. */
    default String catalogueOfNames() {
        return "";
    }

    /** Reports what is no single value, nothing included; the scalar, or null after reporting. */
    static Node.Scalar scalar(Node node, Place place, String wanted, Reading reading) {
        if (!(node instanceof Node.Scalar scalar)) {
            reading.problems().at(place, wanted + " is wanted, and not " + node.shape());
            return null;
        }
        if (scalar.isNothing()) {
            reading.problems().at(place, "has no value; " + wanted + " is wanted", "leave the key out for its default");
            return null;
        }
        return scalar;
    }
}
