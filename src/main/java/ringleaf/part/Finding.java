// SPDX-License-Identifier: Apache-2.0
package ringleaf.part;

import java.util.List;
import java.util.Optional;
import ringleaf.geom.Point;

/**
 * What a check found, as data: who was judged, by whom, what was measured against which limit, and where.
 *
 * <p>{@code measured} is what was measured, never the limit told again and never with slack added to it; where nothing
 * was measured it is not a number.
 *
 * @param check name of the check, lower case with hyphens, e.g. {@code light-tight}
 * @param status whether it holds
 * @param judge who says so: formulas, or the outlines themselves
 * @param relation how measured and limit must stand to each other
 * @param subjects ids of what was judged: names of parts, members or features, e.g. {@code pivot-pin}
 * @param measured in {@code unit}; not a number where nothing was measured
 * @param limit what it is held against, in {@code unit}; not a number where there is none
 * @param slack by how much the limit may be missed and still counts as held, in {@code unit}: the judge's own stated
 *     tolerance, at least 0
 * @param unit mm, deg, mm2, Nmm, N or 1
 * @param place state, point and build step
 * @param message one plain sentence for the builder, before it is put in words
 */
public record Finding(
        String check,
        Status status,
        Judge judge,
        Relation relation,
        List<String> subjects,
        double measured,
        double limit,
        double slack,
        String unit,
        Place place,
        Saying message) {
    /** What double arithmetic may take from a figure that was designed to its limit: a nanometre, in any unit. */
    public static final double ROUNDING = 1e-6;

    public Finding {
        subjects = List.copyOf(subjects);
    }

    /** In order of weight. */
    public enum Status {
        PASS,
        WARN,
        FAIL;

        public String label() {
            return name().toLowerCase(java.util.Locale.ROOT);
        }
    }

    /** Who measured. */
    public enum Judge {
        /** The relations by which the design was made, or others of the handbooks. */
        CALCULATED,
        /** The finished outlines, moved through their travel. */
        OUTLINES;

        public String label() {
            return name().toLowerCase(java.util.Locale.ROOT);
        }
    }

    /** How a figure must stand to its limit. */
    public enum Relation {
        AT_LEAST,
        AT_MOST,
        ABOUT,
        /** There is no figure to hold against a limit. */
        NONE;

        public String label() {
            return name().toLowerCase(java.util.Locale.ROOT).replace('_', ' ');
        }
    }

    /**
     * Where.
     *
     * @param state index of the state, -1 where it is none in particular
     * @param label the state, nothing where it is none in particular
     * @param detail what of the subject, e.g. {@code hole 1 to hole 3}; nothing where it is the whole
     * @param at point in the mechanism's frame, mm, or in the part's own where there is no state
     * @param step number of the build step from 1, 0 where it is none
     */
    public record Place(int state, Saying label, Saying detail, Optional<Point> at, int step) {
        public static final Place NONE = new Place(-1, Saying.NONE, Saying.NONE, Optional.empty(), 0);

        /** In a named condition that is no state of the motion, e.g. {@code blade at its highest}. */
        public static Place when(String key, Object... arguments) {
            return new Place(-1, Saying.of(key, arguments), Saying.NONE, Optional.empty(), 0);
        }

        /** In a state, by its name. */
        public static Place state(int state, String name) {
            return state(state, Saying.plain(name));
        }

        public static Place state(int state, Saying label) {
            return new Place(state, label, Saying.NONE, Optional.empty(), 0);
        }

        public static Place step(int number) {
            return new Place(-1, Saying.NONE, Saying.NONE, Optional.empty(), number);
        }

        /** Of a place of the subject that has a name. */
        public Place withDetail(String name) {
            return withDetail(Saying.plain(name));
        }

        public Place withDetail(Saying what) {
            return new Place(state, label, what, at, step);
        }

        public Place withPoint(Point point) {
            return new Place(state, label, detail, Optional.ofNullable(point), step);
        }
    }

    /** A finding of formulas to begin with; {@link Draft} adds the rest. */
    public static Draft of(String check) {
        return new Draft(check);
    }

    public boolean failed() {
        return status == Status.FAIL;
    }

    /** A finding in the making; figures last, then {@link #says}. */
    public static final class Draft {
        private final String check;
        private Judge judge = Judge.CALCULATED;
        private Relation relation = Relation.NONE;
        private List<String> subjects = List.of();
        private Place place = Place.NONE;
        private double slack = ROUNDING;
        private double measured = Double.NaN;
        private double limit = Double.NaN;
        private String unit = "1";
        private boolean holds = true;
        private Status otherwise = Status.FAIL;

        private Draft(String check) {
            this.check = check;
        }

        /** Judged on the outlines, with the tolerance by which these are measured, in the figure's unit. */
        public Draft onOutlines(double tolerance) {
            judge = Judge.OUTLINES;
            slack = tolerance;
            return this;
        }

        /** Ids of what was judged. */
        public Draft about(String... ids) {
            subjects = List.of(ids);
            return this;
        }

        public Draft about(List<String> ids) {
            subjects = ids;
            return this;
        }

        public Draft at(Place where) {
            place = where;
            return this;
        }

        /** What is broken is a warning and no failure. */
        public Draft orWarn() {
            otherwise = Status.WARN;
            return this;
        }

        public Draft atLeast(double figure, double least, String in) {
            return figure(Relation.AT_LEAST, figure, least, in, figure >= least - slack);
        }

        /**
         * Room that must be there: at least the limit, and more than nought by more than the slack whatever the limit
         * says, as what only touches does not move.
         */
        public Draft room(double figure, double least, String in) {
            return room(figure, 0, least, in);
        }

        /** The same where there is room only beyond {@code taken}, which the figure counts as well. */
        public Draft room(double figure, double taken, double least, String in) {
            boolean moves = figure > taken + slack;
            return figure(Relation.AT_LEAST, figure, least, in, figure >= least - slack && moves);
        }

        public Draft atMost(double figure, double most, String in) {
            return figure(Relation.AT_MOST, figure, most, in, figure <= most + slack);
        }

        /** Within {@code within} of what is asked; beside it, the slack. */
        public Draft about(double figure, double asked, double within, String in) {
            return figure(Relation.ABOUT, figure, asked, in, Math.abs(figure - asked) <= within + slack);
        }

        /** Two limits to one side: below {@code fails} it fails, below {@code warns} it warns; the one missed is told. */
        public Draft atLeast(double figure, double fails, double warns, String in) {
            boolean bad = figure < fails - slack;
            otherwise = bad ? Status.FAIL : Status.WARN;
            return atLeast(figure, bad ? fails : warns, in);
        }

        /** Two limits to one side: over {@code fails} it fails, over {@code warns} it warns; the one missed is told. */
        public Draft atMost(double figure, double fails, double warns, String in) {
            boolean bad = figure > fails + slack;
            otherwise = bad ? Status.FAIL : Status.WARN;
            return atMost(figure, bad ? fails : warns, in);
        }

        /** Nothing was measured: a limit that a cheaper look, or the lack of anything to measure, shows to hold or not. */
        public Draft unmeasured(Relation asked, double held, String in, boolean isHeld) {
            return figure(asked, Double.NaN, held, in, isHeld);
        }

        /** Nothing that has a figure. */
        public Draft plain(boolean isHeld) {
            return figure(Relation.NONE, Double.NaN, Double.NaN, "1", isHeld);
        }

        private Draft figure(Relation asked, double figure, double held, String in, boolean isHeld) {
            relation = asked;
            measured = figure;
            limit = held;
            unit = in;
            holds = isHeld;
            return this;
        }

        /** What was broken, if the figures so far break anything. */
        public boolean isHeld() {
            return holds;
        }

        /** What a key of the package's words says, with its arguments as {@link Saying#of} takes them. */
        public Finding says(String key, Object... arguments) {
            return says(Saying.of(key, arguments));
        }

        public Finding says(Saying message) {
            Status status = holds ? Status.PASS : otherwise;
            return new Finding(check, status, judge, relation, subjects, measured, limit, slack, unit, place, message);
        }

        /** In words already. */
        public Finding inWords(String message) {
            return says(Saying.plain(message));
        }
    }
}
