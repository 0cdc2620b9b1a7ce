// SPDX-License-Identifier: Apache-2.0
package ringleaf.draw.format;

import java.util.List;
import java.util.Optional;
import ringleaf.draw.mesh.PartMesh;
import ringleaf.geom.Tolerance;
import ringleaf.part.Part;
import ringleaf.part.Words;
import ringleaf.solid.Mesh;

/**
 * Parts of which solids are made.
 *
 * @param items the parts
 * @param chord how far chords may leave the arcs
 * @param title of the spec
 * @param program the program with its version, for the files to say
 */
public record Solids(List<Item> items, Tolerance chord, String title, String program) {
    /** A part, with the meshes that formats share made once. */
    public static final class Item {
        private final String stem;
        private final String plate;
        private final Part part;
        private Optional<Mesh> mesh;

        /**
         * A part with an outline.
         *
         * @param stem of the name of a file of its own
         * @param plate stem of a file for all that is made as it is, of the same stock
         */
        public Item(String stem, String plate, Part part) {
            this.stem = stem;
            this.plate = plate;
            this.part = part;
        }

        /** The part, exact. */
        public Part part() {
            return part;
        }

        String stem() {
            return stem;
        }

        String plate() {
            return plate;
        }

        /** The part as a mesh on the bed; empty where no closed surface bounds it. */
        Optional<Mesh> mesh(Tolerance chord) {
            if (mesh == null) {
                mesh = PartMesh.onBed(part, chord);
            }
            return mesh;
        }
    }

    /** How exact a mesh is, in words. */
    String exactness() {
        return "chords within " + Words.number(chord.length(), 4) + " mm of the arcs";
    }
}
