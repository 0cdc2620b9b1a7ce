// SPDX-License-Identifier: Apache-2.0
package ringleaf.mechanism.aperture;

import java.util.ArrayList;
import java.util.List;
import ringleaf.curve.Fillet;
import ringleaf.curve.Overlay;
import ringleaf.curve.Shapes;
import ringleaf.geom.Angles;
import ringleaf.geom.Arc;
import ringleaf.geom.Contour;
import ringleaf.geom.Point;
import ringleaf.geom.Region;
import ringleaf.part.Family;
import ringleaf.part.Layer;
import ringleaf.part.Part;

/** The spacer ring: below the ledge that carries the ring and walls the blades in, above the wall that centres it. */
final class SpacerParts {
    /** Width of the stop tab along the rim, mm. */
    static final double TAB_WIDTH = 4;
    /** The points between wall and pocket are rounded to this, mm, so that they neither prick nor break. */
    private static final double CUSP = 0.4;

    /** A throat between two openings is this share of the pocket wide, and reaches so far into the round one, mm. */
    private static final double THROAT = 0.7;

    private static final double THROAT_OVERLAP = 1;

    private final ApertureDesign design;
    private final ApertureSpec spec;
    private final Rim rim;
    private final Stack stack;

    SpacerParts(ApertureDesign design) {
        this.design = design;
        this.spec = design.spec();
        this.rim = design.rim();
        this.stack = design.stack();
    }

    List<Part> parts() {
        double wallTop = stack.retainerBottom() - stack.shims() * spec.thickness();
        Layer ledge = new Layer(ledgeRegions(), stack.baseTop(), stack.ringBottom());
        List<Region> wallRegions = wallRegions();
        List<Part> parts = new ArrayList<>();
        parts.add(new Part(
                "spacer-ring",
                Family.SPACER,
                1,
                spec.spacer().source(),
                List.of(ledge, new Layer(wallRegions, stack.ringBottom(), wallTop)),
                List.of(),
                note()));
        if (stack.shims() > 0) {
            Layer shim = new Layer(wallRegions, wallTop, wallTop + spec.thickness());
            parts.add(new Part(
                    "spacer-shim",
                    Family.SPACER,
                    stack.shims(),
                    spec.blade().source(),
                    List.of(shim),
                    List.of(),
                    "lies under the retainer and gives the ring its axial play"));
        }
        return parts;
    }

    private String note() {
        if (stack.ledgeSheets() == 0) {
            return "ledge and wall in one piece";
        }
        return stack.ledgeSheets() + " x level-1 and " + stack.wallSheets() + " x level-2, each cut from one sheet";
    }

    private List<Region> ledgeRegions() {
        return List.of(around(open(rim.cavity(), false)));
    }

    private List<Region> wallRegions() {
        List<Region> wall = List.of(around(open(rim.wall(), design.pinionPlan().isPresent())));
        if (design.drive() instanceof HandPlan plan) {
            return Overlay.difference(wall, List.of(Region.of(plan.window(rim))));
        }
        return wall;
    }

    /** The outline of the plates with these openings and the screws' holes. */
    private Region around(List<Contour> open) {
        List<Contour> holes = new ArrayList<>(open);
        holes.addAll(design.housing().holes());
        return new Region(design.housing().outline(), holes);
    }

    /**
     * The round opening of a level, with the tab standing into it where there is one, and the pinion's pocket: joined
     * to it where the two circles cross, which they do when the pinion reaches in. Strung together directly.
     */
    private List<Contour> open(double radius, boolean tab) {
        Arc round = Arc.circle(Point.ORIGIN, radius);
        if (design.pinionPlan().isEmpty()) {
            return List.of(Contour.of(round));
        }
        PinionPlan plan = design.pinionPlan().orElseThrow();
        double pocket = tab ? plan.pocketRadius() : pocket(plan);
        double apart = plan.centreDistance();
        double cosine = (apart * apart + radius * radius - pocket * pocket) / (2 * apart * radius);
        if (cosine >= 1) {
            return apart(plan, round, pocket, tab);
        }
        double half = Math.acos(cosine);
        Point first = Point.polar(radius, plan.at() + half);
        Point last = Point.polar(radius, plan.at() - half);
        Arc wall = new Arc(Point.ORIGIN, radius, Angles.signed(plan.at() + half), Angles.TURN - 2 * half, first, last);
        Contour joined = Contour.of(wall, Arc.around(plan.centre(), last, first, true));
        return List.of(Fillet.rounded(tabbed(wall, joined, tab), CUSP, this::isCusp));
    }

    /** Two openings that do not cross: apart where a web stands between them, else joined by a throat. */
    private List<Contour> apart(PinionPlan plan, Arc round, double pocket, boolean tab) {
        double radius = round.radius();
        if (plan.centreDistance() - pocket - radius >= spec.spacer().leastWeb()) {
            return List.of(tabbed(round, Contour.of(round), tab), Contour.circle(plan.centre(), pocket));
        }
        double throat = THROAT * pocket;
        Point inner = Point.polar(radius - THROAT_OVERLAP + throat, plan.at());
        Region joined = Overlay.union(List.of(
                        Region.of(tabbed(round, Contour.of(round), tab)),
                        Region.of(Shapes.hull(plan.centre(), pocket, inner, throat))))
                .get(0);
        return List.of(joined.outer());
    }

    private Contour tabbed(Arc round, Contour outline, boolean tab) {
        if (!tab) {
            return outline;
        }
        double at = StopNotch.tabDirection(design);
        double half = StopNotch.tabHalfAngle(rim);
        return new RimCuts(round).notch(at - half, at + half, rim.tabInner()).in(outline);
    }

    /** The pocket holds the pinion and, where it is larger, what turns below it. */
    private double pocket(PinionPlan plan) {
        return Math.max(plan.pocketRadius(), design.mount().orElseThrow().throughRadius());
    }

    /** Where the pinion's pocket breaks into the cavity or the wall; the tab's corners stay as they are. */
    private boolean isCusp(Point corner) {
        return design.pinionPlan()
                .map(p -> Math.min(
                                Math.abs(corner.distance(p.centre()) - p.pocketRadius()),
                                Math.abs(corner.distance(p.centre()) - pocket(p)))
                        < 1e-6)
                .orElse(false);
    }
}
