package ringleaf.mechanism.body;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;
import ringleaf.curve.Fillet;
import ringleaf.curve.Overlay;
import ringleaf.geom.Angles;
import ringleaf.geom.Box;
import ringleaf.geom.Contour;
import ringleaf.geom.Placement;
import ringleaf.geom.Point;
import ringleaf.geom.Region;
import ringleaf.curve.Shapes;

/**
 * Material taken out between hub and rim, by round holes or by windows between spokes; what stays is nowhere thinner
 * than the web.
 *
 * @param form what is cut
 * @param count of holes or spokes; 0 for as many holes as fit, or five spokes
 * @param spokeWidth of a spoke, mm; 0 for the web or a sixth of the hub's radius, whichever is more
 */
public record Lightening(Form form, int count, double spokeWidth) {
    /** What can be cut. */
    public enum Form {
        NONE,
        HOLES,
        SPOKES;

        public String label() {
            return name().toLowerCase(java.util.Locale.ROOT);
        }
    }

    public static final Lightening NONE = new Lightening(Form.NONE, 0, 0);

    private static final int USUAL_SPOKES = 5;
    private static final int MOST_HOLES = 12;
    private static final int FEWEST = 3;
    /** Holes or windows narrower than this many webs take out too little to be worth their cuts. */
    private static final double LEAST_BAND = 1.5;

    /**
     * The holes in the ring between two radii; none where it is too narrow to be worth it.
     *
     * @param hub radius up to which the hub stays whole, mm
     * @param rim radius from which the rim stays whole, mm
     * @param web least material between cuts, mm
     */
    public List<Contour> cuts(double hub, double rim, double web) {
        double band = rim - hub;
        if (form == Form.NONE || band < LEAST_BAND * web || hub <= 0) {
            return List.of();
        }
        return form == Form.HOLES ? holes(hub, rim, web) : windows(hub, rim, web);
    }

    private List<Contour> holes(double hub, double rim, double web) {
        double middle = (hub + rim) / 2;
        double diameter = rim - hub;
        int most = (int) Math.floor(Math.PI / Math.asin(Math.min(1, (diameter + web) / (2 * middle))) + 1e-9);
        int n = count > 0 ? count : Math.min(MOST_HOLES, most);
        if (n > most) {
            diameter = 2 * middle * Math.sin(Math.PI / n) - web;
        }
        if (n < FEWEST || diameter < web) {
            return List.of();
        }
        return Bore.circle(n, middle, diameter / 2, Math.PI / n);
    }

    private List<Contour> windows(double hub, double rim, double web) {
        int n = count > 0 ? count : USUAL_SPOKES;
        double width = Math.max(web, spokeWidth > 0 ? spokeWidth : hub / 6);
        double pitch = Angles.TURN / n;
        if (2 * hub * Math.sin(Math.min(pitch / 2, Math.PI / 2)) < width + web) {
            return List.of();
        }
        Region sector = Region.of(Shapes.annulusSector(Point.ORIGIN, hub, rim, 0, pitch));
        Region first = bar(width, rim, 0);
        Region next = bar(width, rim, pitch);
        List<Region> left = Overlay.difference(List.of(sector), List.of(first, next));
        if (left.isEmpty()) {
            return List.of();
        }
        double corner = Math.min(web, Math.min(rim - hub, 2 * hub * Math.sin(pitch / 2) - width) / 4);
        Predicate<Point> all = p -> true;
        Contour window = Fillet.rounded(left.get(0).outer(), corner, all);
        List<Contour> windows = new ArrayList<>();
        for (int i = 0; i < n; i++) {
            windows.add(window.placed(Placement.turn(i * pitch)));
        }
        return windows;
    }

    /** A straight spoke from the axis outwards. */
    private static Region bar(double width, double rim, double direction) {
        Box box = new Box(0, -width / 2, 2 * rim, width / 2);
        return Region.of(Contour.rectangle(box).placed(Placement.turn(direction)));
    }
}
