// SPDX-License-Identifier: Apache-2.0
package ringleaf.fabricate;

import java.util.ArrayList;
import java.util.List;
import ringleaf.curve.Offset;
import ringleaf.curve.Sound;
import ringleaf.geom.Point;
import ringleaf.geom.Region;
import ringleaf.part.Finding;
import ringleaf.part.Layer;
import ringleaf.part.Part;

/**
 * Outlines for a beam that follows the drawn line and burns half of its width away on either side: outer contours
 * grow and holes shrink by half the kerf. Arcs stay arcs about the same centres, so an involute's arcs become arcs of
 * the involute shifted square to itself, which is an involute of the same base circle; the error stays that of the
 * nominal arcs, 0.5 µm (proved: a parallel curve of an arc that is within d of a curve is within d of the curve's).
 */
public final class Kerf {
    static final String SLITS = "kerf-slits";
    static final String CORNERS = "kerf-corners";

    /**
     * A part with its kerf.
     *
     * @param part with the outlines to follow; where something is too narrow, the rest of it
     * @param findings what the beam cannot cut, with its place
     */
    public record Result(Part part, List<Finding> findings) {
        public Result {
            findings = List.copyOf(findings);
        }
    }

    private Kerf() {}

    /**
     * The part to be drawn for a kerf.
     *
     * @param kerf mm, 0 or more; 0 changes nothing
     */
    public static Result of(Part part, double kerf) {
        if (!(kerf >= 0) || kerf == Double.POSITIVE_INFINITY) {
            throw new IllegalArgumentException("no kerf of " + kerf);
        }
        if (kerf == 0 || !part.isDrawn()) {
            return new Result(part, List.of());
        }
        List<Layer> layers = new ArrayList<>();
        BeamReach reach = new BeamReach(kerf);
        for (Layer layer : part.layers()) {
            List<Region> grown = new ArrayList<>();
            for (Region region : layer.regions()) {
                for (Region sound : Sound.of(region)) {
                    grown.addAll(Offset.of(sound, kerf / 2));
                    reach.look(sound);
                }
            }
            layers.add(layer.withRegions(grown));
        }
        return new Result(part.withLayers(layers), findings(part, kerf, reach));
    }

    private static List<Finding> findings(Part part, double kerf, BeamReach reach) {
        List<Finding> findings = new ArrayList<>();
        if (!reach.slits().isEmpty()) {
            BeamReach.Slit narrowest = reach.slits().get(0);
            for (BeamReach.Slit slit : reach.slits()) {
                narrowest = slit.width() < narrowest.width() || Double.isNaN(narrowest.width()) ? slit : narrowest;
            }
            int more = reach.slits().size() - 1;
            Finding.Draft draft = draft(SLITS, part, kerf, narrowest.place());
            findings.add((Double.isNaN(narrowest.width())
                            ? draft.unmeasured(Finding.Relation.AT_LEAST, kerf, "mm", false)
                            : draft.atLeast(narrowest.width(), kerf, "mm"))
                    .says("fabricate.slits", more > 0, more));
        }
        if (reach.corners() > 0) {
            findings.add(draft(CORNERS, part, kerf, reach.firstCorner())
                    .orWarn()
                    .atLeast(reach.sharpest(), kerf / 2, "mm")
                    .says("fabricate.corners", reach.corners()));
        }
        return findings;
    }

    private static Finding.Draft draft(String check, Part part, double kerf, Point place) {
        return Finding.of(check)
                .onOutlines(BeamReach.tolerance(kerf))
                .about(part.name())
                .at(Finding.Place.NONE.withPoint(place));
    }

    /** That none of these parts, which share a kerf, has a slit that is too narrow. */
    static Finding noSlits(List<String> parts, double kerf) {
        return Finding.of(SLITS)
                .onOutlines(BeamReach.tolerance(kerf))
                .about(parts)
                .unmeasured(Finding.Relation.AT_LEAST, kerf, "mm", true)
                .says("fabricate.no-slits");
    }
}
