package ringleaf.fabricate;

import java.util.ArrayList;
import java.util.List;
import ringleaf.geom.Path;
import ringleaf.geom.Region;

/**
 * The tabs that the outlines of a part ask for.
 *
 * @param count on each outline; 0 for none
 * @param width of a tab, mm
 * @param kerf that the beam takes at either end of a cut together, mm
 * @param working regions in which nothing may be left standing
 */
public record TabPlan(int count, double width, double kerf, List<Region> working) {
    static final TabPlan NONE = new TabPlan(0, 0, 0, List.of());

    public TabPlan {
        working = List.copyOf(working);
    }

    /** What is cut of the outer contour; empty where no tab is asked for or there is no room for one. */
    List<Path> cuts(Region outline) {
        List<Double> places = places(outline);
        return places.isEmpty() ? List.of() : Tabs.cuts(outline.outer(), places, width + kerf);
    }

    /** How many tabs there is room for. */
    int room(Region outline) {
        return places(outline).size();
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
