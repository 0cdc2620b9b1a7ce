// SPDX-License-Identifier: Apache-2.0
package ringleaf.draw;

import java.util.List;
import ringleaf.geom.Arc;
import ringleaf.geom.Box;
import ringleaf.geom.Contour;
import ringleaf.geom.Path;
import ringleaf.geom.Point;

/** One thing on a layer of a drawing; mm, y up. */
public sealed interface Drawn {
    /** The box of its lines, without their width. */
    Box box();

    /** A closed contour of two pieces or more, in its own sense of travel. */
    record Closed(Contour contour) implements Drawn {
        public Closed {
            if (contour.isCircle()) {
                throw new IllegalArgumentException("a circle is drawn as a circle");
            }
        }

        @Override
        public Box box() {
            return contour.box();
        }
    }

    /** A full circle. */
    record Round(Point centre, double radius) implements Drawn {
        @Override
        public Box box() {
            return Box.of(centre, centre).grown(radius);
        }
    }

    /**
     * A chain of pieces with two ends.
     *
     * @param endsAtTabs whether it is cut and ends on purpose, at bridges that hold a piece in its sheet
     */
    record Open(Path path, boolean endsAtTabs) implements Drawn {
        public Open(Path path) {
            this(path, false);
        }

        @Override
        public Box box() {
            return path.box();
        }
    }

    /** A line of text as single strokes, for engraving and for reading; never on a layer that is cut. */
    record Lettering(String text, List<Path> strokes) implements Drawn {
        public Lettering {
            strokes = List.copyOf(strokes);
            if (strokes.isEmpty()) {
                throw new IllegalArgumentException("lettering without a stroke");
            }
        }

        @Override
        public Box box() {
            Box box = strokes.get(0).box();
            for (Path stroke : strokes) {
                box = box.union(stroke.box());
            }
            return box;
        }
    }

    /** A contour as what it is: a circle or a closed chain. */
    static Drawn of(Contour contour) {
        return contour.isCircle() ? round((Arc) contour.segments().get(0)) : new Closed(contour);
    }

    /** A path as what it is: a circle, a closed chain where it ends at its start, or an open one. */
    static Drawn of(Path path) {
        if (!path.start().equals(path.end())) {
            return new Open(path);
        }
        return of(new Contour(path.segments()));
    }

    private static Round round(Arc arc) {
        return new Round(arc.centre(), arc.radius());
    }
}
