package ringleaf.mechanism.rack;

import java.util.Arrays;
import java.util.Optional;
import java.util.OptionalInt;
import ringleaf.part.Finding;

/**
 * Finds module, teeth and guide pins where they are left open: of all usual ones the design that breaks the fewest of
 * its calculated checks, warns the least, and among these the first in the order of preference. Every candidate is a
 * whole layout, judged by the very checks that the finished design is told by.
 */
final class RackSearch {
    /** Modules of ISO 54, series 1 and 2 up to 3 mm (from memory), those that builders take first in front. */
    private static final double[] MODULES = {1, 0.8, 1.25, 1.5, 0.7, 0.6, 2, 0.5, 2.5, 3, 0.4};
    /** Dowels as sold, ISO 2338 and ISO 8734 (from memory), those that builders take first in front, mm. */
    private static final double[] DOWELS = {3, 2.5, 2, 4, 1.5, 5, 6};

    /** Teeth tried beyond the fewest: a tooth more can mend webs beside the servo. */
    private static final int MORE = 6;

    private final RackSpec spec;
    private RackLayout best;
    private int failed = Integer.MAX_VALUE;
    private int warned = Integer.MAX_VALUE;

    private RackSearch(RackSpec spec) {
        this.spec = spec;
    }

    static double[] dowels() {
        double[] sold = DOWELS.clone();
        Arrays.sort(sold);
        return sold;
    }

    /** The design, or none where no teeth can be made at all. */
    static Optional<RackLayout> find(RackSpec spec) {
        RackSearch search = new RackSearch(spec);
        double[] modules = spec.module().isPresent() ? new double[] {spec.module().getAsDouble()} : MODULES;
        double[] pins = spec.pin().isPresent() ? new double[] {spec.pin().getAsDouble()} : DOWELS;
        for (double module : modules) {
            for (double pin : pins) {
                search.teeth(module, pin);
                if (search.failed == 0 && search.warned == 0) {
                    return Optional.of(search.best);
                }
            }
        }
        return Optional.ofNullable(search.best);
    }

    private void teeth(double module, double pin) {
        if (spec.teeth().isPresent()) {
            look(module, spec.teeth(), pin);
            return;
        }
        int fewest = fewest(module);
        for (int more = 0; more <= MORE && (failed > 0 || warned > 0); more++) {
            look(module, OptionalInt.of(fewest + more), pin);
        }
    }

    /** The fewest teeth that hold the bore and, with a servo, reach the stroke within its travel. */
    private int fewest(double module) {
        double room = spec.body().hubReach() + spec.gear().leastWeb() + spec.rack().dedendum() * module;
        double radius = room;
        if (spec.servo().isPresent() && spec.stroke().isPresent()) {
            radius = Math.max(radius, spec.stroke().getAsDouble() / spec.servo().get().travel());
        }
        int teeth = (int) Math.ceil(2 * radius / module - 1e-9);
        return Math.max(RackLayout.LEAST_TEETH, teeth);
    }

    private void look(double module, OptionalInt teeth, double pin) {
        Optional<RackLayout> layout = layout(module, teeth.getAsInt(), pin);
        if (layout.isEmpty()) {
            return;
        }
        int fails = 0;
        int warns = 0;
        for (Finding finding : new RackChecks(layout.get()).all()) {
            fails += finding.failed() ? 1 : 0;
            warns += finding.status() == Finding.Status.WARN ? 1 : 0;
        }
        if (fails < failed || fails == failed && warns < warned) {
            best = layout.get();
            failed = fails;
            warned = warns;
        }
    }

    private Optional<RackLayout> layout(double module, int teeth, double pin) {
        try {
            return Optional.of(RackLayout.of(spec, module, teeth, pin));
        } catch (IllegalArgumentException e) {
            // such teeth cannot be made: pointed, cut off by undercut, or thinned away
            return Optional.empty();
        }
    }
}
