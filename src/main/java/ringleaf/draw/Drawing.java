// SPDX-License-Identifier: Apache-2.0
package ringleaf.draw;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import ringleaf.geom.Box;

/**
 * What a drawing file holds, whatever its format: mm, true scale, y up.
 *
 * @param title a line for people; any text, each writer makes it safe
 * @param notes further lines for people
 * @param layers in the order in which they are written, names without doubles, at least one with something on it
 */
public record Drawing(String title, List<String> notes, List<DrawingLayer> layers) {
    public Drawing {
        notes = List.copyOf(notes);
        layers = List.copyOf(layers);
        Set<String> names = new HashSet<>();
        boolean empty = true;
        for (DrawingLayer layer : layers) {
            if (!names.add(layer.name())) {
                throw new IllegalArgumentException("two layers are called " + layer.name());
            }
            empty &= layer.things().isEmpty();
        }
        if (empty) {
            throw new IllegalArgumentException("a drawing needs something on it");
        }
    }

    /** The box of all that is drawn, without the width of lines. */
    public Box box() {
        Box box = null;
        for (DrawingLayer layer : layers) {
            for (Drawn thing : layer.things()) {
                box = box == null ? thing.box() : box.union(thing.box());
            }
        }
        return box;
    }
}
