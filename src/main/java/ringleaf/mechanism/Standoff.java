// SPDX-License-Identifier: Apache-2.0
package ringleaf.mechanism;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import ringleaf.geom.Point;
import ringleaf.geom.Region;
import ringleaf.part.Family;
import ringleaf.part.Finding;
import ringleaf.part.Layer;
import ringleaf.part.Part;
import ringleaf.part.Words;
import ringleaf.spec.shared.Screw;
import ringleaf.spec.shared.Sold;

/**
 * A round spacer over a screw: bought where its length is sold, else printed to its exact length, else told to be
 * neither.
 *
 * @param name of the part, e.g. {@code standoff}
 * @param length mm
 * @param screw that goes through it
 * @param making how spacers are made, when they are made at all
 */
public record Standoff(String name, double length, Screw screw, Material making) {
    /** Wall of a printed spacer, mm; common practice, no source. */
    private static final double WALL = 1.5;

    /** The shortest spacer that is sold and no shorter than {@code least}, mm, where what it holds may stand further off. */
    public static Standoff from(String name, double least, Screw screw, Material making) {
        OptionalDouble sold = screw.sold().spacer().isPresent()
                ? Sold.nextUp(screw.sold().spacer().get().lengths(), least)
                : OptionalDouble.empty();
        return new Standoff(name, sold.orElse(least), screw, making);
    }

    public boolean isSold() {
        Optional<Screw.Spacer> spacer = screw.sold().spacer();
        return spacer.isPresent() && Sold.has(spacer.get().lengths(), length);
    }

    private boolean isPrinted() {
        return !isSold() && !making.sheet();
    }

    public double outerRadius() {
        return isPrinted()
                ? screw.hole() / 2 + Math.max(WALL, making.leastWeb())
                : screw.sold().spacer().map(s -> s.outside() / 2).orElse(screw.hole() / 2 + WALL);
    }

    /** Its ring about a screw, seen from above. */
    public Region ring(Point at) {
        boolean tube = isSold();
        double bore = tube ? screw.sold().spacer().orElseThrow().bore() : screw.hole();
        return Region.ring(at, bore / 2, outerRadius());
    }

    /** The spacers, drawn about one of their screws where they are printed. */
    public Part part(Point first, double bottom, int quantity) {
        if (isPrinted()) {
            Layer layer = Layer.of(ring(first), bottom, bottom + length);
            String note = "exactly as long as drawn: none of this length is sold";
            return new Part(name, Family.SPACER, quantity, making.source(), List.of(layer), List.of(), note);
        }
        return Part.bought(name, quantity, words());
    }

    private String words() {
        if (isSold()) {
            Screw.Spacer spacer = screw.sold().spacer().orElseThrow();
            return "round spacer for " + screw.name() + ", " + Words.number(spacer.outside(), 2) + " x "
                    + Words.mm(length) + " long";
        }
        return "tube for " + screw.name() + ", cut and filed to " + Words.mm(length);
    }

    /** Whether it can be had: sold in this length, or printed. */
    public Finding isHad() {
        String message = isSold()
                ? "is sold: " + words()
                : isPrinted()
                        ? "is printed " + Words.mm(length) + " long"
                        : "none is sold " + Words.mm(length) + " long" + soldBeside()
                                + ": print it (fabrication: spacer), file a tube to length, or lay washers under a shorter one";
        return Finding.of("standoff-length")
                .about(name)
                .orWarn()
                .plain(isSold() || isPrinted())
                .inWords(message);
    }

    private String soldBeside() {
        return screw.sold()
                .spacer()
                .map(s -> " (" + Sold.beside(s.lengths(), length) + ")")
                .orElse("");
    }
}
