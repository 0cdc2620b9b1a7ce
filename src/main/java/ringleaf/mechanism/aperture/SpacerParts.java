package ringleaf.mechanism.aperture;

import java.util.ArrayList;
import java.util.List;
import ringleaf.curve.Fillet;
import ringleaf.curve.Overlay;
import ringleaf.curve.Shapes;
import ringleaf.geom.Contour;
import ringleaf.geom.Point;
import ringleaf.geom.Region;
import ringleaf.part.Layer;
import ringleaf.part.Part;

/** The spacer ring: below the ledge that carries the ring and walls the blades in, above the wall that centres it. */
final class SpacerParts {
    /** Width of the stop tab along the rim, mm. */
    static final double TAB_WIDTH = 4;
    /** The points between wall and pocket are rounded to this, mm, so that they neither prick nor break. */
    private static final double CUSP = 0.4;

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
                "spacer",
                1,
                spec.spacer().source(),
                List.of(ledge, new Layer(wallRegions, stack.ringBottom(), wallTop)),
                List.of(),
                note()));
        if (stack.shims() > 0) {
            Layer shim = new Layer(wallRegions, wallTop, wallTop + spec.thickness());
            parts.add(new Part(
                    "spacer-shim",
                    "spacer",
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
        List<Region> inner = new ArrayList<>();
        inner.add(Region.disc(Point.ORIGIN, rim.cavity()));
        design.pinionPlan().ifPresent(p -> inner.add(Region.disc(p.centre(), pocket(p))));
        return cut(inner);
    }

    /** The pocket holds the pinion and, where it is larger, what turns below it. */
    private double pocket(PinionPlan plan) {
        return Math.max(plan.pocketRadius(), design.mount().orElseThrow().throughRadius());
    }

    private List<Region> wallRegions() {
        if (design.drive() instanceof HandPlan plan) {
            List<Region> wall = cut(List.of(Region.disc(Point.ORIGIN, rim.wall())));
            return Overlay.difference(wall, List.of(Region.of(plan.window(rim))));
        }
        PinionPlan plan = (PinionPlan) design.drive();
        List<Region> inner = List.of(
                Region.disc(Point.ORIGIN, rim.wall()), Region.disc(plan.centre(), plan.pocketRadius()));
        List<Region> open = Overlay.difference(Overlay.union(inner), List.of(Region.of(tab())));
        return cut(open);
    }

    /** The outline less what is open inside it, with the points where two openings meet rounded. */
    private List<Region> cut(List<Region> open) {
        List<Contour> holes = new ArrayList<>();
        for (Region region : Overlay.union(open)) {
            holes.add(Fillet.rounded(region.outer(), CUSP, this::isCusp));
        }
        holes.addAll(design.housing().holes());
        return List.of(new Region(design.housing().outline(), holes));
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

    /** The tab on the wall, opposite the pinion, that stands in the ring's stop notch. */
    Contour tab() {
        double at = StopNotch.tabDirection(design);
        double half = StopNotch.tabHalfAngle(rim);
        return Shapes.annulusSector(Point.ORIGIN, rim.tabInner(), rim.wall() + 1, at - half, at + half);
    }
}
