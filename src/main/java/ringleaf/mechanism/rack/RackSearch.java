package ringleaf.mechanism.rack;

import java.util.Arrays;
import java.util.Comparator;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import ringleaf.geom.Tolerance;
import ringleaf.part.Finding;
import ringleaf.tooth.GearOutline;

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
    /** Larger pinions are wheels. */
    private static final int MOST_TEETH = 150;

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

    /** The nearest usual module with which a spec whose own cannot be made can; none where no module does. */
    static OptionalDouble module(RackSpec spec) {
        double own = spec.module().orElseThrow();
        double[] nearest = Arrays.stream(MODULES)
                .boxed()
                .sorted(Comparator.comparingDouble(m -> Math.abs(m - own)))
                .mapToDouble(m -> m)
                .toArray();
        for (double module : nearest) {
            if (find(spec.withModule(module)).isPresent()) {
                return OptionalDouble.of(module);
            }
        }
        return OptionalDouble.empty();
    }

    private void teeth(double module, double pin) {
        if (spec.teeth().isPresent()) {
            look(module, spec.teeth(), pin);
            return;
        }
        int fewest = fullStroke(module, fewest(module), pin);
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

    /**
     * Teeth of which a servo's travel takes a rack of given length as far as its teeth go: from the fewest on, until
     * more of them do not lengthen the stroke. The fewest where nothing is left to gain.
     */
    private int fullStroke(double module, int fewest, double pin) {
        if (spec.stroke().isPresent() || spec.length().isEmpty() || spec.servo().isEmpty()) {
            return fewest;
        }
        int best = fewest;
        double longest = 0;
        for (int teeth = fewest; teeth <= MOST_TEETH; teeth++) {
            double stroke = layout(module, teeth, pin).map(RackLayout::stroke).orElse(0.0);
            if (stroke > longest) {
                longest = stroke;
                best = teeth;
            }
        }
        return best;
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
        if ((fails < failed || fails == failed && warns < warned) && canBeDrawn(layout.get())) {
            best = layout.get();
            failed = fails;
            warned = warns;
        }
    }

    /** Drawing a pinion is dear, so it is tried only where its figures are the best so far. */
    private static boolean canBeDrawn(RackLayout layout) {
        try {
            GearOutline.of(layout.pinion(), Tolerance.CURVE);
            return true;
        } catch (IllegalArgumentException e) {
            return false;
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
