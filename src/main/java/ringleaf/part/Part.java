// SPDX-License-Identifier: Apache-2.0
package ringleaf.part;

import java.util.ArrayList;
import java.util.List;
import java.util.NoSuchElementException;
import ringleaf.geom.Box;
import ringleaf.geom.Mirror;
import ringleaf.geom.Path;
import ringleaf.geom.Region;

/**
 * A thing to make or to buy: a stack of layers in the mechanism's frame, in its open pose.
 *
 * @param name as in file names and tables, e.g. {@code drive-ring}
 * @param family what sort of thing it is
 * @param quantity pieces of it in one mechanism
 * @param source process and stock it is made by
 * @param layers from the bed up; several where the part is stepped, none for what is bought by its name alone
 * @param note what the builder should know of it, or empty
 * @param working places on whose edges nothing may be left standing: pin ends, flanks, edges that slide
 * @param onShow whether its upper face is seen in use, so that nothing is engraved there unasked
 * @param pieces what is made for each copy, and copies to spare
 */
public record Part(
        String name,
        Family family,
        int quantity,
        Source source,
        List<Layer> layers,
        String note,
        List<Region> working,
        boolean onShow,
        Pieces pieces) {

    /** What is made in one piece, with none to spare. */
    public Part(
            String name,
            Family family,
            int quantity,
            Source source,
            List<Layer> layers,
            String note,
            List<Region> working,
            boolean onShow) {
        this(name, family, quantity, source, layers, note, working, onShow, Pieces.SINGLE);
    }

    /**
     * How a part comes about.
     *
     * @param process name of a process of the catalogue, or {@code bought}
     * @param stock name of a stock of the catalogue, or kind and size in words for what is bought
     */
    public record Source(String process, String stock) {
        public boolean isBought() {
            return process.equals("bought");
        }
    }

    public Part {
        layers = List.copyOf(layers);
        working = List.copyOf(working);
    }

    /**
     * A part whose marks lie on its face as seen from above: each on the uppermost layer that has material there.
     *
     * @param marks lines to engrave or to score, never cut through
     */
    public Part(
            String name,
            Family family,
            int quantity,
            Source source,
            List<Layer> layers,
            List<Path> marks,
            String note,
            List<Region> working) {
        this(name, family, quantity, source, MarkedLayers.of(layers, marks), note, working, false);
    }

    /** A part without working edges. */
    public Part(
            String name,
            Family family,
            int quantity,
            Source source,
            List<Layer> layers,
            List<Path> marks,
            String note) {
        this(name, family, quantity, source, layers, marks, note, List.of());
    }

    /** What is bought by its name alone. */
    public static Part bought(String name, int quantity, String stock) {
        return new Part(name, Family.BOUGHT, quantity, new Source("bought", stock), List.of(), "", List.of(), false);
    }

    /** The same with working edges wherever its outline runs through one of these regions. */
    public Part withWorking(List<Region> regions) {
        return new Part(name, family, quantity, source, layers, note, regions, onShow, pieces);
    }

    /** So many of it. */
    public Part withQuantity(int other) {
        return new Part(name, family, other, source, layers, note, working, onShow, pieces);
    }

    /** The same with other layers. */
    public Part withLayers(List<Layer> other) {
        return new Part(name, family, quantity, source, other, note, working, onShow, pieces);
    }

    /** The same, of which so many pieces are made. */
    public Part withPieces(Pieces other) {
        return new Part(name, family, quantity, source, layers, note, working, onShow, other);
    }

    /** Copies that are made: those of a mechanism and the spare ones. */
    public int copies() {
        return quantity + pieces.spares();
    }

    /** Pieces that are cut or printed for all copies; of what is bought, the copies. */
    public int pieceCount() {
        if (pieces.plies().isEmpty()) {
            return copies();
        }
        int each = 0;
        for (int i = 0; i < layers.size(); i++) {
            each += pieces.plies(i) * layers.get(i).regions().size();
        }
        return copies() * each;
    }

    /** How many of it, for whoever makes them, e.g. {@code 12 and 2 spare}, {@code 1, cut as 2 pieces}. */
    public String quantityWords() {
        String words = quantity + (pieces.spares() > 0 ? " and " + pieces.spares() + " spare" : "");
        return pieceCount() == copies() ? words : words + ", cut as " + pieceCount() + " pieces";
    }

    /** The same with an upper face that is seen in use. */
    public Part shown() {
        return new Part(name, family, quantity, source, layers, note, working, true, pieces);
    }

    /** Lines to engrave or to score, of all layers from the bed up. */
    public List<Path> marks() {
        List<Path> marks = new ArrayList<>();
        for (Layer layer : layers) {
            marks.addAll(layer.marks());
        }
        return marks;
    }

    /** Whether there is an outline to make it by; what is bought by its name alone has none. */
    public boolean isDrawn() {
        return !layers.isEmpty();
    }

    /** Box of all layers seen from above; for drawn parts only. */
    public Box box() {
        Box box = null;
        for (Layer layer : layers) {
            for (Region region : layer.regions()) {
                box = box == null ? region.box() : box.union(region.box());
            }
        }
        if (box == null) {
            throw new NoSuchElementException(name + " has no outline");
        }
        return box;
    }

    public double zFrom() {
        double least = Double.POSITIVE_INFINITY;
        for (Layer layer : drawn()) {
            least = Math.min(least, layer.zFrom());
        }
        return least;
    }

    public double zTo() {
        double most = Double.NEGATIVE_INFINITY;
        for (Layer layer : drawn()) {
            most = Math.max(most, layer.zTo());
        }
        return most;
    }

    private List<Layer> drawn() {
        if (layers.isEmpty()) {
            throw new NoSuchElementException(name + " has no layers");
        }
        return layers;
    }

    public Part mirrored(Mirror mirror) {
        List<Layer> turned = new ArrayList<>(layers.size());
        for (Layer layer : layers) {
            turned.add(layer.mirrored(mirror));
        }
        List<Region> areas = new ArrayList<>(working.size());
        for (Region area : working) {
            areas.add(area.mirrored(mirror));
        }
        return new Part(name, family, quantity, source, turned, note, areas, onShow, pieces);
    }
}
