// SPDX-License-Identifier: Apache-2.0
package ringleaf.draw.sheet;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import ringleaf.geom.Point;

/** What was found on a part: what is written beside it, what goes into the table of places, what is marked. */
final class Found {
    private static final String LETTERS = "ABCDEFGHJKLMNPQRSTUVWXYZ";

    /**
     * Lines of text with a leader.
     *
     * @param lines of text, the first one the size
     * @param targets the leader may point at, one of them
     */
    record Callout(List<String> lines, List<Target> targets) {}

    /** A row of the table of places before it has a label: the same {@code what} makes a group. */
    private record Loose(String what, Point at, Target target) {}

    /**
     * A row of the table of places.
     *
     * @param label as beside the feature, e.g. {@code A3}
     * @param at its place in the turned part, mm
     * @param target what the label stands beside
     * @param what it is
     */
    record Place(String label, Point at, Target target, String what) {}

    /** A cross of centre lines that reaches {@code radius} mm of the part and a little further. */
    record Mark(Point at, double radius) {}

    /** A circle of centre lines through a pattern. */
    record Ring(Point centre, double radius) {}

    private final Sizes sizes;
    private final List<Callout> callouts = new ArrayList<>();
    private final List<Loose> loose = new ArrayList<>();
    private final List<Mark> marks = new ArrayList<>();
    private final List<Ring> rings = new ArrayList<>();
    private boolean profile;
    private boolean boxed = true;

    /** Nothing found yet; what is found is told in these sizes. */
    Found(Sizes sizes) {
        this.sizes = sizes;
    }

    Sizes sizes() {
        return sizes;
    }

    void callout(List<String> lines, List<Target> targets) {
        callouts.add(new Callout(List.copyOf(lines), List.copyOf(targets)));
    }

    void place(String what, Point at, Target target) {
        loose.add(new Loose(what, at, target));
    }

    void mark(Point at, double radius) {
        marks.add(new Mark(at, radius));
    }

    void ring(Point centre, double radius) {
        for (Ring ring : rings) {
            if (ring.centre().equals(centre) && Math.abs(ring.radius() - radius) < 1e-3 * radius) {
                return;
            }
        }
        rings.add(new Ring(centre, radius));
    }

    /** Says that some curves are only given by the file. */
    void profile() {
        profile = true;
    }

    /** Says that the outline has its size from a diameter, so that no box is needed. */
    void sized() {
        boxed = false;
    }

    boolean hasProfile() {
        return profile;
    }

    boolean isBoxed() {
        return boxed;
    }

    List<Callout> callouts() {
        return callouts;
    }

    List<Mark> marks() {
        return marks;
    }

    List<Ring> rings() {
        return rings;
    }

    /** Whether something with its centre there is in the table or marked already. */
    boolean isMarked(Point at, double tolerance) {
        for (Mark mark : marks) {
            if (mark.at().distance(at) < tolerance) {
                return true;
            }
        }
        return false;
    }

    /** The rows with labels: a letter for what is alike, and a figure where there are several. */
    List<Place> places() {
        Map<String, List<Loose>> groups = new LinkedHashMap<>();
        for (Loose each : loose) {
            groups.computeIfAbsent(each.what(), key -> new ArrayList<>()).add(each);
        }
        List<Place> places = new ArrayList<>();
        int group = 0;
        for (List<Loose> alike : groups.values()) {
            String letter = LETTERS.substring(group % LETTERS.length(), group % LETTERS.length() + 1)
                    .repeat(1 + group / LETTERS.length());
            group++;
            for (int i = 0; i < alike.size(); i++) {
                Loose each = alike.get(i);
                String label = alike.size() == 1 ? letter : letter + (i + 1);
                places.add(new Place(label, each.at(), each.target(), each.what()));
            }
        }
        return places;
    }
}
