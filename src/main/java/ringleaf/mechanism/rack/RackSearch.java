// SPDX-License-Identifier: Apache-2.0
package ringleaf.mechanism.rack;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
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

    /** Teeth tried beyond the fewest: what a tooth more moves can mend webs and plates. */
    private static final int MORE = 6;

    /** What more teeth relieve. */
    private static final Set<String> BY_TEETH = Set.of(
            "bending", "bore-web", "contact-ratio", "interference", "undercut", "tip-thickness", "servo-reaches");
    /** What other guide pins relieve. */
    private static final Set<String> BY_PIN = Set.of("jamming", "pin-engagement", "overall-length", "mesh-at-stops");

    private static final Finding NO_TEETH =
            Finding.of("tip-thickness").plain(false).says("rack.no-teeth");
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
        double[] modules =
                spec.module().isPresent() ? new double[] {spec.module().getAsDouble()} : MODULES;
        double[] pins = spec.pin().isPresent() ? new double[] {spec.pin().getAsDouble()} : DOWELS;
        for (double module : modules) {
            boolean byPin = true;
            for (int i = 0; i < pins.length && byPin; i++) {
                byPin = search.teeth(module, pins[i]);
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

    /** Looks at all teeth that may do; whether another pin could mend what the last of them breaks. */
    private boolean teeth(double module, double pin) {
        if (spec.teeth().isPresent()) {
            return breaks(look(module, spec.teeth().getAsInt(), pin), BY_PIN);
        }
        int fewest = fullStroke(module, fewest(module), pin);
        int sound = sound(module, fewest, pin);
        boolean byPin = look(fewest, sound == fewest ? fewest + MORE : fewest, module, pin);
        return sound == fewest ? byPin : look(sound, sound + MORE, module, pin);
    }

    private boolean look(int from, int to, double module, double pin) {
        boolean byPin = true;
        for (int teeth = from; teeth <= to && (failed > 0 || warned > 0); teeth++) {
            byPin = breaks(look(module, teeth, pin), BY_PIN);
        }
        return byPin;
    }

    /**
     * The fewest teeth from which on nothing is broken that more teeth relieve: stress, undercut, contact and the
     * servo's reach all get better with every tooth, so they are bracketed. The fewest where no number mends it.
     */
    private int sound(double module, int fewest, double pin) {
        int low = fewest - 1;
        int high = Math.max(fewest, MOST_TEETH);
        if (breaks(broken(module, high, pin), BY_TEETH)) {
            return fewest;
        }
        while (high - low > 1) {
            int middle = (low + high) >>> 1;
            boolean breaks = breaks(broken(module, middle, pin), BY_TEETH);
            low = breaks ? middle : low;
            high = breaks ? high : middle;
        }
        return high;
    }

    private static boolean breaks(List<Finding> broken, Set<String> checks) {
        return broken.stream().anyMatch(f -> checks.contains(f.check()));
    }

    /** The fewest teeth that hold the bore and, with a servo, reach the stroke within its travel. */
    private int fewest(double module) {
        double radius =
                spec.body().hubReach() + spec.gear().leastWeb() + spec.rack().dedendum() * module;
        if (spec.servo().isPresent() && spec.stroke().isPresent()) {
            radius = Math.max(
                    radius, spec.stroke().getAsDouble() / spec.servo().get().travel());
        }
        int fewest = Math.max(RackLayout.LEAST_TEETH, (int) Math.ceil(2 * radius / module - Finding.ROUNDING));
        // teeth that are solved obey the limit of those that are given; what they then do not reach fails its check
        return Math.min(fewest, (int) RackFields.TEETH.numeric().most());
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

    /** What a candidate breaks or is warned of; itself a finding that teeth mend where it cannot be made at all. */
    private List<Finding> broken(double module, int teeth, double pin) {
        Optional<RackLayout> layout = layout(module, teeth, pin);
        return layout.isEmpty() ? List.of(NO_TEETH) : broken(layout.get());
    }

    private static List<Finding> broken(RackLayout layout) {
        List<Finding> broken = new ArrayList<>(new RackChecks(layout).all());
        broken.removeIf(f -> f.status() == Finding.Status.PASS);
        return broken;
    }

    /** Judges a candidate and keeps it if it is the best so far; what it breaks. */
    private List<Finding> look(double module, int teeth, double pin) {
        Optional<RackLayout> layout = layout(module, teeth, pin);
        if (layout.isEmpty()) {
            return List.of(NO_TEETH);
        }
        List<Finding> broken = broken(layout.get());
        int fails = (int) broken.stream().filter(Finding::failed).count();
        int warns = broken.size() - fails;
        if ((fails < failed || fails == failed && warns < warned) && canBeDrawn(layout.get())) {
            best = layout.get();
            failed = fails;
            warned = warns;
        }
        return broken;
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
