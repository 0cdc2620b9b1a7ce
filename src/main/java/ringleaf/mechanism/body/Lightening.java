// SPDX-License-Identifier: Apache-2.0
package ringleaf.mechanism.body;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import ringleaf.curve.Fillet;
import ringleaf.curve.Overlay;
import ringleaf.curve.Shapes;
import ringleaf.geom.Angles;
import ringleaf.geom.Box;
import ringleaf.geom.Contour;
import ringleaf.geom.Placement;
import ringleaf.geom.Point;
import ringleaf.geom.Region;
import ringleaf.part.Words;

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
    /** Lengths in mm, and shares, that differ by less count as the same. */
    private static final double HAIR = 1e-6;

    /**
     * The holes in the ring between two radii; none where {@link #misfit} says that they do not fit.
     *
     * @param hub radius up to which the hub stays whole, mm
     * @param rim radius from which the rim stays whole, mm
     * @param web least material between cuts, mm
     */
    public List<Contour> cuts(double hub, double rim, double web) {
        if (form == Form.NONE || misfit(hub, rim, web).isPresent()) {
            return List.of();
        }
        return form == Form.HOLES ? holes(hub, rim, web) : windows(hub, rim, web);
    }

    /** What of it does not fit. */
    public enum Blamed {
        FORM,
        COUNT,
        SPOKE_WIDTH
    }

    /**
     * Why nothing can be cut as asked.
     *
     * @param blamed what is wrong with it
     * @param reason for people
     * @param hint what would fit, the nearest there is
     */
    public record Misfit(Blamed blamed, String reason, String hint) {}

    /** Why it does not fit between two radii, mm, with a web, mm; empty where it does. */
    public Optional<Misfit> misfit(double hub, double rim, double web) {
        if (form == Form.NONE) {
            return Optional.empty();
        }
        double band = rim - hub;
        double least = LEAST_BAND * web;
        if (band < least - HAIR) {
            return Optional.of(new Misfit(
                    Blamed.FORM,
                    "between hub and rim there are " + Words.mm(Math.max(0, band)) + ", and openings are worth their"
                            + " cuts from " + Words.mm(least) + " on (one and a half webs)",
                    "form: none works, or a smaller bore, or more teeth"));
        }
        return form == Form.HOLES ? holesMisfit(hub, rim, web) : spokesMisfit(hub, web);
    }

    private Optional<Misfit> holesMisfit(double hub, double rim, double web) {
        int most = mostHoles(hub, rim, web);
        int n = holes(most);
        if (n >= FEWEST && holeDiameter(hub, rim, web, n) >= web - HAIR) {
            return Optional.empty();
        }
        int fit = n;
        while (fit >= FEWEST && holeDiameter(hub, rim, web, fit) < web - HAIR) {
            fit--;
        }
        return Optional.of(new Misfit(
                count > 0 ? Blamed.COUNT : Blamed.FORM,
                n + " holes of the least web of " + Words.mm(web) + " or more do not stand the web apart on"
                        + " a circle of "
                        + Words.mm(hub + rim),
                fit >= FEWEST ? "the nearest that works is " + fit : "form: none works, or a larger part"));
    }

    private Optional<Misfit> spokesMisfit(double hub, double web) {
        if (spokeWidth > 0 && spokeWidth < web - HAIR) {
            return Optional.of(new Misfit(
                    Blamed.SPOKE_WIDTH,
                    Words.mm(spokeWidth) + " is less than the least web of " + Words.mm(web),
                    "the nearest that works is " + Words.number(Math.ceil(100 * web - HAIR) / 100, 2) + "mm"));
        }
        int n = spokes();
        double width = spokeWidth(hub, web);
        double room = roomAt(hub, n);
        if (width + web <= room + HAIR) {
            return Optional.empty();
        }
        String reason = n + " spokes of " + Words.mm(width) + " leave windows of less than the least web of "
                + Words.mm(web) + " at a hub of " + Words.mm(2 * hub);
        double widest = Math.floor(100 * (room - web) + HAIR) / 100;
        int fewer = n;
        while (fewer >= FEWEST && width + web > roomAt(hub, fewer) + HAIR) {
            fewer--;
        }
        boolean narrower = widest >= web - HAIR;
        String hint = (narrower ? "the nearest that works is spoke-width: " + Words.number(widest, 2) + "mm" : "")
                + (narrower && fewer >= FEWEST ? ", or count: " + fewer : "")
                + (!narrower && fewer >= FEWEST ? "the nearest that works is count: " + fewer : "");
        return Optional.of(new Misfit(
                spokeWidth > 0 && narrower ? Blamed.SPOKE_WIDTH : count > 0 ? Blamed.COUNT : Blamed.FORM,
                reason,
                hint.isEmpty() ? "form: none works, or a larger hub" : hint));
    }

    /** Across a hub, from the middle of a spoke to that of the next. */
    private static double roomAt(double hub, int n) {
        return 2 * hub * Math.sin(Math.PI / n);
    }

    private int spokes() {
        return count > 0 ? count : USUAL_SPOKES;
    }

    private double spokeWidth(double hub, double web) {
        return spokeWidth > 0 ? spokeWidth : Math.max(web, hub / 6);
    }

    /** Holes as wide as the band that stand the web apart. */
    private static int mostHoles(double hub, double rim, double web) {
        double share = Math.min(1, (rim - hub + web) / (hub + rim));
        return (int) Math.floor(Math.PI / Math.asin(share) + HAIR);
    }

    private int holes(int most) {
        return count > 0 ? count : Math.max(FEWEST, Math.min(MOST_HOLES, most));
    }

    private static double holeDiameter(double hub, double rim, double web, int n) {
        return n <= mostHoles(hub, rim, web) ? rim - hub : (hub + rim) * Math.sin(Math.PI / n) - web;
    }

    private List<Contour> holes(double hub, double rim, double web) {
        int n = holes(mostHoles(hub, rim, web));
        return Bore.circle(n, (hub + rim) / 2, holeDiameter(hub, rim, web, n) / 2, Math.PI / n);
    }

    private List<Contour> windows(double hub, double rim, double web) {
        int n = spokes();
        double width = spokeWidth(hub, web);
        double pitch = Angles.TURN / n;
        Region sector = Region.of(Shapes.annulusSector(Point.ORIGIN, hub, rim, 0, pitch));
        Region first = bar(width, rim, 0);
        Region next = bar(width, rim, pitch);
        List<Region> left = Overlay.difference(List.of(sector), List.of(first, next));
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
