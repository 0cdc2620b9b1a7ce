// SPDX-License-Identifier: Apache-2.0
package ringleaf.mechanism;

import java.util.List;
import java.util.OptionalDouble;
import ringleaf.part.Finding;
import ringleaf.part.Part;
import ringleaf.part.Words;
import ringleaf.spec.shared.Screw;

/**
 * A screw through parts that lie on one another, with nuts behind them, in the shortest length that is sold and holds.
 *
 * @param name of the part, e.g. {@code screw-long}
 * @param screw its size
 * @param grip height of what lies between head and nut, mm
 * @param nuts behind it, one on the other
 */
public record Bolt(String name, Screw screw, double grip, int nuts) {
    /** A screw with one nut. */
    public static Bolt of(String name, Screw screw, double grip) {
        return new Bolt(name, screw, grip, 1);
    }

    /** Length that it must have under its head so that all threads of its nuts hold, mm. */
    public double need() {
        return grip + nuts * screw.nutHeight() + screw.pitch();
    }

    /** Length under its head, mm: the next one up that is sold, else the longest, else what it must have. */
    public double length() {
        OptionalDouble sold = screw.length(need());
        if (sold.isPresent()) {
            return sold.getAsDouble();
        }
        List<Double> lengths = screw.sold().lengths();
        return lengths.isEmpty()
                ? need()
                : lengths.stream().mapToDouble(Double::doubleValue).max().orElseThrow();
    }

    /** How far its tip stands out of the last part that it goes through, mm. */
    public double tail() {
        return length() - grip;
    }

    /** The screws, as they are ordered. */
    public Part part(int quantity) {
        String what = screw.sold().lengths().isEmpty()
                ? screw.name() + ", at least " + Words.mm(need()) + " long"
                : screw.order(length());
        return Part.bought(name, quantity, what);
    }

    /** So many screws' nuts. */
    public Part nuts(String nut, int quantity) {
        return Part.bought(nut, quantity * nuts, screw.nutOrder());
    }

    /**
     * Whether a length is sold in which a whole turn of thread stands out behind its nuts, so that these hold with all
     * of theirs (EN 1090-2, 8.2.2, from memory).
     */
    public Finding reaches() {
        double beyond = length() - grip - nuts * screw.nutHeight();
        boolean known = !screw.sold().lengths().isEmpty();
        String message = "thread that stands out behind the nut of " + (known ? screw.order(length()) : screw.name())
                + " through " + Words.mm(grip);
        if (known && screw.length(need()).isEmpty()) {
            message += "; " + Words.mm(need())
                    + " are needed and it is not sold longer: take a thicker screw, thinner plates, or name a longer one in a"
                    + " screws.yaml of your own";
        }
        return Finding.of("screw-length")
                .about(name)
                .atLeast(beyond, screw.pitch(), "mm")
                .inWords(message);
    }

    /** Whether its tip, and the nut, stay clear of what stands behind, mm away from the last part it goes through. */
    public Finding clears(String behind, double room, double least) {
        return Finding.of("screw-end")
                .about(name, behind)
                .room(room - Math.max(tail(), nuts * screw.nutHeight()), least, "mm")
                .inWords("room behind the end of " + screw.order(length()) + ", which stands out by "
                        + Words.mm(tail()));
    }
}
