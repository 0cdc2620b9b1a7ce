// SPDX-License-Identifier: Apache-2.0
package ringleaf.mechanism.belt;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import ringleaf.part.Finding;
import ringleaf.part.Words;

/**
 * Stocked belts for a drive: every length of the series, its exact centre distance, and which comes nearest to what is
 * wanted of those that keep their room and can be put on and tightened; where none does, the nearest of all.
 *
 * @param best the layout that was taken; null when no belt will do
 * @param stocked whether its belt is in the series
 * @param others in words: the next shorter and the next longer belt and what they would give
 */
record BeltSearch(DriveLayout best, boolean stocked, String others) {
    /** A series that nobody stated is tried up to this many teeth over the length that is wanted. */
    private static final int SPREAD = 8;
    /** Belts that are solved obey the limit of those that are given. */
    private static final int MOST = (int) DriveFields.BELT_TEETH.numeric().most();
    /** Belts whose room is looked at before the search gives in, the nearest first. */
    private static final int LOOKED_AT = 12;

    static BeltSearch of(DriveSpec spec) {
        if (spec.beltTeeth().isPresent()) {
            int teeth = spec.beltTeeth().getAsInt();
            DriveLayout layout = spec.fixed() ? settled(spec, teeth) : movable(spec, teeth);
            boolean stocked = spec.choice().belt().lengths().isEmpty()
                    || spec.choice().belt().lengths().contains(teeth);
            return new BeltSearch(layout == null ? null : layout.withSlot(spec), stocked, "");
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
        for (int n = Math.max(8, near - SPREAD); n <= Math.min(near + 5 * SPREAD, MOST); n++) {
            all.add(n);
        }
        return all;
    }

    private static BeltSearch movable(DriveSpec spec) {
        List<DriveLayout> all = new ArrayList<>();
        double from = DriveLayout.leastDistance(spec);
        for (int teeth : series(spec)) {
            DriveLayout layout = DriveLayout.movable(spec, teeth, from);
            if (layout != null && isFree(spec, layout.distance())) {
                all.add(layout);
            }
        }
        if (all.isEmpty()) {
            return new BeltSearch(null, true, "");
        }
        List<DriveLayout> nearest = new ArrayList<>(all);
        nearest.sort(Comparator.comparing((DriveLayout l) -> !isWithin(spec, l.distance()))
                .thenComparing(l -> Math.abs(l.distance() - spec.wanted())));
        List<DriveLayout> asked = new ArrayList<>(nearest);
        asked.removeIf(layout -> !isAsked(spec, layout.distance()));
        DriveLayout best = firstSound(spec, asked.isEmpty() ? nearest.subList(0, 1) : asked);
        int at = 0;
        while (all.get(at).beltTeeth() != best.beltTeeth()) {
            at++;
        }
        StringBuilder others = new StringBuilder();
        for (int i = at - 1; i <= at + 1; i += 2) {
            if (i >= 0 && i < all.size()) {
                others.append(others.length() == 0 ? "" : ", ")
                        .append(all.get(i).beltTeeth())
                        .append(" teeth would stand at ")
                        .append(Words.number(all.get(i).distance(), 4))
                        .append(" mm");
            }
        }
        return new BeltSearch(best, true, others.toString());
    }

    /** The first that keeps its room and can be put on and tightened, with its slot; the first of all without one. */
    private static DriveLayout firstSound(DriveSpec spec, List<DriveLayout> layouts) {
        DriveLayout first = null;
        for (DriveLayout layout : layouts.subList(0, Math.min(LOOKED_AT, layouts.size()))) {
            DriveLayout whole = layout.withSlot(spec);
            if (isSound(spec, whole)) {
                return whole;
            }
            first = first == null ? whole : first;
        }
        return first;
    }

    /** Whether the belt that would be taken keeps its room and can be put on and tightened. */
    static boolean isSound(DriveSpec spec) {
        DriveLayout best = of(spec).best();
        return best != null && isSound(spec, best);
    }

    /** The same of a layout with its slot. */
    static boolean isSound(DriveSpec spec, DriveLayout layout) {
        DriveRoom room = DriveRoom.of(spec, layout);
        DriveSlot slot = layout.slot();
        double take = BeltRooms.takeUp(layout.beltTeeth() * spec.choice().belt().pitch(), spec.plate())
                .mm();
        return DriveChecks.leaves(room.pulleys(), spec.pulleyRoom())
                && DriveChecks.leaves(room.belt(), spec.beltRoom())
                && DriveChecks.leaves(room.obstacle(), spec.beltRoom())
                && (!slot.moves()
                        || DriveChecks.holds(slot.free(), slot.needed()) && DriveChecks.holds(slot.taken(), take));
    }

    /** Both pulleys fast and the idler in its place; null when that cannot be or the belt would run into itself. */
    static DriveLayout settled(DriveSpec spec, int teeth) {
        DriveLayout layout = DriveLayout.fixed(spec, teeth);
        return layout != null && isOpen(spec, layout) ? layout : null;
    }

    /** Whether the belt runs into neither itself nor a wheel that it passes. */
    static boolean isOpen(DriveSpec spec, DriveLayout layout) {
        return DriveRoom.of(spec, layout.withoutSlot()).belt().distance() > 0;
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
        return distance > spec.driver().reach() + spec.driven().reach();
    }

    /** Whether a distance is within the limits that were given; one figure is wanted as near as it comes. */
    private static boolean isWithin(DriveSpec spec, double distance) {
        return spec.distance().isExact() || spec.distance().allows(distance, Finding.ROUNDING);
    }

    /** Whether a distance can still pass for what was asked for. */
    private static boolean isAsked(DriveSpec spec, double distance) {
        return spec.distance().isExact()
                ? Math.abs(distance - spec.wanted()) <= DriveChecks.FAR * spec.wanted()
                : isWithin(spec, distance);
    }

    private static BeltSearch fixed(DriveSpec spec) {
        List<DriveLayout> all = new ArrayList<>();
        for (int teeth : series(spec)) {
            DriveLayout layout = settled(spec, teeth);
            if (layout != null) {
                all.add(layout);
            }
        }
        if (all.isEmpty()) {
            return new BeltSearch(null, true, "");
        }
        DriveLayout best = firstSound(spec, all);
        String others = "";
        for (DriveLayout layout : all) {
            if (layout.beltTeeth() > best.beltTeeth()) {
                others = layout.beltTeeth() + " teeth would press the idler in by "
                        + Words.number(layout.press().orElse(0), 2) + " mm";
                break;
            }
        }
        return new BeltSearch(best, true, others);
    }
}
