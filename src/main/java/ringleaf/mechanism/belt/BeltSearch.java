package ringleaf.mechanism.belt;

import java.util.ArrayList;
import java.util.List;
import ringleaf.part.Words;

/**
 * Stocked belts for a drive: every length of the series, its exact centre distance, and which comes nearest.
 *
 * @param best the layout that was taken; null when no belt will do
 * @param stocked whether its belt is in the series
 * @param others in words: the next shorter and the next longer belt and what they would give
 */
record BeltSearch(DriveLayout best, boolean stocked, String others) {
    /** A series that nobody stated is tried up to this many teeth over the length that is wanted. */
    private static final int SPREAD = 8;

    static BeltSearch of(DriveSpec spec) {
        BeltSearch found = search(spec);
        return found.best() == null
                ? found
                : new BeltSearch(found.best().withSlots(spec), found.stocked(), found.others());
    }

    private static BeltSearch search(DriveSpec spec) {
        if (spec.beltTeeth().isPresent()) {
            int teeth = spec.beltTeeth().getAsInt();
            DriveLayout layout = spec.fixed() ? settled(spec, teeth) : movable(spec, teeth);
            boolean stocked = spec.choice().belt().lengths().isEmpty()
                    || spec.choice().belt().lengths().contains(teeth);
            return new BeltSearch(layout, stocked, "");
        }
        return spec.fixed() ? fixed(spec) : movable(spec);
    }

    /** Lengths to try, rising. */
    private static List<Integer> series(DriveSpec spec) {
        List<Integer> stock = spec.choice().belt().lengths();
        if (!stock.isEmpty()) {
            return stock.stream().sorted().toList();
        }
        double length = DriveLayout.lengthAt(spec, spec.wanted());
        List<Integer> all = new ArrayList<>();
        if (Double.isNaN(length)) {
            return all;
        }
        int near = (int) Math.rint(length / spec.choice().belt().pitch());
        for (int n = Math.max(8, near - SPREAD); n <= near + 5 * SPREAD; n++) {
            all.add(n);
        }
        return all;
    }

    private static BeltSearch movable(DriveSpec spec) {
        List<DriveLayout> all = new ArrayList<>();
        int best = -1;
        double from = DriveLayout.leastDistance(spec);
        for (int teeth : series(spec)) {
            DriveLayout layout = DriveLayout.movable(spec, teeth, from);
            if (layout == null || !isFree(spec, layout.distance())) {
                continue;
            }
            all.add(layout);
            if (best < 0 || better(spec, layout.distance(), all.get(best).distance())) {
                best = all.size() - 1;
            }
        }
        if (best < 0) {
            return new BeltSearch(null, true, "");
        }
        StringBuilder others = new StringBuilder();
        for (int i = best - 1; i <= best + 1; i += 2) {
            if (i >= 0 && i < all.size()) {
                others.append(others.length() == 0 ? "" : ", ")
                        .append(all.get(i).beltTeeth()).append(" teeth would stand at ")
                        .append(Words.number(all.get(i).distance(), 4)).append(" mm");
            }
        }
        return new BeltSearch(all.get(best), true, others.toString());
    }

    /** Both pulleys fast and the idler in its place; null when that cannot be or the belt would run into itself. */
    static DriveLayout settled(DriveSpec spec, int teeth) {
        DriveLayout layout = DriveLayout.fixed(spec, teeth);
        return layout != null && isOpen(spec, layout) ? layout : null;
    }

    /** Whether the belt runs into neither itself nor a wheel that it passes. */
    static boolean isOpen(DriveSpec spec, DriveLayout layout) {
        return DriveRoom.of(new DrivePlan(spec, new BeltSearch(layout, true, ""))).belt() > 0;
    }

    /** The distance at which a stocked belt would fit without slack, the nearest above the wanted one, in words. */
    static String nearestFit(DriveSpec spec) {
        for (int teeth : series(spec)) {
            DriveLayout layout = movable(spec, teeth);
            if (layout != null && layout.distance() > spec.wanted()) {
                return "at " + Words.number(Math.floor(100 * layout.distance()) / 100, 2) + " mm a belt of " + teeth
                        + " teeth has next to no slack; a little less leaves an idler little to do";
            }
        }
        return "another belt, or belt-teeth for one that is made to order";
    }

    private static DriveLayout movable(DriveSpec spec, int teeth) {
        return DriveLayout.movable(spec, teeth, DriveLayout.leastDistance(spec));
    }

    private static boolean isFree(DriveSpec spec, double distance) {
        return distance > reach(spec.driver()) + reach(spec.driven());
    }

    /** How far a pulley or its flanges reach from its axis, mm. */
    static double reach(PulleySpec pulley) {
        return pulley.flanges() > 0
                ? Math.max(pulley.flangeDiameter() / 2, pulley.rim().outsideRadius())
                : pulley.rim().outsideRadius();
    }

    /** Within the limits first, then nearest to what is wanted. */
    private static boolean better(DriveSpec spec, double one, double other) {
        if (!spec.distance().isExact()) {
            boolean in = spec.distance().allows(one, 1e-9);
            boolean otherIn = spec.distance().allows(other, 1e-9);
            if (in != otherIn) {
                return in;
            }
        }
        return Math.abs(one - spec.wanted()) < Math.abs(other - spec.wanted());
    }

    private static BeltSearch fixed(DriveSpec spec) {
        DriveLayout first = null;
        StringBuilder others = new StringBuilder();
        for (int teeth : series(spec)) {
            DriveLayout layout = settled(spec, teeth);
            if (layout == null) {
                continue;
            }
            if (first != null) {
                others.append(teeth).append(" teeth would press the idler in by ")
                        .append(Words.number(layout.press().orElse(0), 2)).append(" mm");
                break;
            }
            first = layout;
        }
        return new BeltSearch(first, true, others.toString());
    }
}
