// SPDX-License-Identifier: Apache-2.0
package ringleaf.verify;

import java.util.Optional;
import ringleaf.part.Finding;
import ringleaf.part.Saying;
import ringleaf.space.Vector;

/**
 * How near two mechanisms, or things beside them, come over all settings of the drives between them.
 *
 * @param second index of the later one in the setup
 * @param firstBody names of the first one and of the piece of it that comes nearest
 * @param secondBody names of the second one and of the piece of it that comes nearest
 * @param asked distance that is asked for, mm; 0 for some room
 * @param found the least distance that was found, mm; negative where they overlap, by how much at least; not a number
 *     where nothing moves and nothing is in the way
 * @param bound below which they are nowhere, as proved, mm
 * @param state what follows
 * @param joined whether the two pieces never move against each other
 * @param when the drives' settings there, in words
 * @param at place there, in the second one's own frame
 * @param stateOfSecond its state there, -1 for none
 * @param mend a place that would do, in words, or empty
 */
public record Clearance(
        int second,
        Body firstBody,
        Body secondBody,
        double asked,
        double found,
        double bound,
        State state,
        boolean joined,
        Saying when,
        Optional<Vector> at,
        int stateOfSecond,
        Saying mend) {
    static final String CHECK = "mechanisms-apart";

    /** What is known. */
    public enum State {
        /** Everywhere at least as far apart as was asked. */
        PROVED,
        /** A setting is known where they are nearer than was asked. */
        NEARER,
        /** A setting is known where they touch or overlap. */
        TOUCHING,
        /** Neither, before the looks that were granted ran out. */
        OPEN
    }

    /**
     * One of two.
     *
     * @param owner the mechanism or thing
     * @param piece of it; empty where none is meant
     */
    public record Body(String owner, String piece) {
        /** {@code shutter's blade 3}, or the owner alone. */
        public String words() {
            return piece.isEmpty() || piece.equals(owner) ? owner : owner + "'s " + piece;
        }

        private String own() {
            return piece.isEmpty() ? owner : piece;
        }
    }

    /**
     * As a finding on the second.
     *
     * @param tolerance to which it was measured, mm
     */
    public Finding finding(double tolerance) {
        Finding.Draft draft = Finding.of(CHECK).onOutlines(tolerance).about(secondBody.own(), firstBody.words());
        if (Double.isNaN(found)) {
            return draft.unmeasured(Finding.Relation.AT_LEAST, asked, "mm", true)
                    .says("verify.setup-still", secondBody.owner, firstBody.owner);
        }
        Finding.Place place = Finding.Place.state(stateOfSecond, when);
        draft = draft.at(at.map(v -> place.withPoint(new ringleaf.geom.Point(v.x(), v.y())))
                .orElse(place));
        draft = state == State.OPEN
                ? draft.unmeasured(Finding.Relation.AT_LEAST, asked, "mm", false)
                : draft.room(found, asked, "mm");
        return draft.says("verify.setup-judged", message(tolerance), mend);
    }

    private Saying message(double tolerance) {
        Saying both = Saying.of("verify.both", secondBody.words(), firstBody.words());
        return switch (state) {
            case PROVED -> Saying.of("verify.setup-clear", both, Words.mm(found), Words.mm(bound));
            case NEARER -> Saying.of("verify.setup-nearer", both, Words.mm(found), Words.mm(asked));
            case TOUCHING ->
                found < -tolerance
                        ? Saying.of("verify.setup-collide", both, joined, Words.mm(-found))
                        : joined ? Saying.of("verify.setup-joined", both) : Saying.of("verify.touch", both);
            case OPEN -> Saying.of("verify.setup-unproved", both, Words.mm(found));
        };
    }
}
