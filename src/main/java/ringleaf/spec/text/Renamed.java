// SPDX-License-Identifier: Apache-2.0
package ringleaf.spec.text;

import java.util.Collection;
import java.util.List;
import java.util.Optional;

/**
 * Names that a user may still know from an earlier version, each with what it is called now: of fields, of their ways to
 * choose, of options and figures. An old name is never taken; it is refused with the new one named.
 */
public final class Renamed {
    private record Name(String old, String now) {}

    /** One name may have become several, at different places. */
    private static final List<Name> ALL = List.of(
            new Name("--slice", "--trial-blades"),
            new Name("within", "overall-length"),
            new Name("length", "overall-length"));

    private Renamed() {}

    /** What an old name is called now; empty where it never was a name, or is none of those that are known here. */
    public static Optional<String> now(String typed, Collection<String> known) {
        for (Name name : ALL) {
            if (name.old.equals(typed) && known.contains(name.now) && !known.contains(typed)) {
                return Optional.of(name.now);
            }
        }
        return Optional.empty();
    }

    /** What a message says of it. */
    public static String hint(String now) {
        return "it is now called " + now;
    }
}
