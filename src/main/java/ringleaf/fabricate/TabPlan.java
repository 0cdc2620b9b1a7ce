// SPDX-License-Identifier: Apache-2.0
package ringleaf.fabricate;

import java.util.ArrayList;
import java.util.List;
import ringleaf.geom.Path;
import ringleaf.geom.Region;
import ringleaf.part.Layer;
import ringleaf.part.Part;

/**
 * The tabs that the outlines of a part ask for.
 *
 * @param count on each outline; 0 for none
 * @param width of a tab, mm
 * @param kerf that the beam takes at either end of a cut together, mm
 * @param working regions in which nothing may be left standing
 */
public record TabPlan(int count, double width, double kerf, List<Region> working) {
    /** Widths to propose, mm, the strongest first. */
    private static final double[] WIDTHS = {3, 2, 1.5, 1, 0.8, 0.6, 0.5, 0.4, 0.3, 0.2, 0.1};

    static final TabPlan NONE = new TabPlan(0, 0, 0, List.of());

    public TabPlan {
        working = List.copyOf(working);
    }

    /** What is cut of the outer contour; empty where no tab is asked for or there is no room for one. */
    List<Path> cuts(Region outline) {
        List<Double> places = places(outline);
        return places.isEmpty() ? List.of() : Tabs.cuts(outline.outer(), places, width + kerf);
    }

    /** How many tabs there is room for on the outline of a part that has least. */
    int room(Part part) {
        int room = count;
        for (Layer layer : part.layers()) {
            for (Region region : layer.regions()) {
                room = Math.min(room, places(region).size());
            }
        }
        return room;
    }

    /** The widest tabs, narrower than these, of which there is room for all on a part; not a number where none are. */
    double narrower(Part part) {
        for (double less : WIDTHS) {
            if (less < width && new TabPlan(count, less, kerf, working).room(part) == count) {
                return less;
            }
        }
        return Double.NaN;
    }

    /** What is left standing of the outer contour. */
    public List<Path> bridges(Region outline) {
        List<Path> bridges = new ArrayList<>();
        double length = outline.outer().length();
        for (double place : places(outline)) {
            double open = width + kerf;
            List<Double> one = List.of((place + length / 2) % length);
            bridges.addAll(Tabs.cuts(outline.outer(), one, length - open));
        }
        return bridges;
    }

    private List<Double> places(Region outline) {
        return count == 0 ? List.of() : Tabs.places(outline.outer(), working, count, width + kerf);
    }
}
