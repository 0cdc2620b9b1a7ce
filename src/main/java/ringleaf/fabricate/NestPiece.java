package ringleaf.fabricate;

import java.util.List;
import ringleaf.geom.Path;
import ringleaf.geom.Region;

/**
 * An outline to be laid on sheets.
 *
 * @param name for people
 * @param outline to cut
 * @param marks that go with it
 * @param cuts what is cut of the outer contour between its tabs; empty where it is cut all round
 * @param count of copies
 * @param single whether it is the only one of its kind, so that it may carry its name
 */
public record NestPiece(String name, Region outline, List<Path> marks, List<Path> cuts, int count, boolean single) {
    public NestPiece {
        marks = List.copyOf(marks);
        cuts = List.copyOf(cuts);
    }
}
