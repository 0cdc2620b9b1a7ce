// SPDX-License-Identifier: Apache-2.0
package ringleaf.part;

import java.util.ArrayList;
import java.util.List;

/** What is joined to what while a mechanism is put together, step by step. */
public final class Built {
    /** For each member the first of those it is joined to. */
    private final int[] first;

    private final boolean[] placed;

    /** Nothing is joined yet. */
    public Built(int members) {
        first = new int[members];
        for (int i = 0; i < members; i++) {
            first[i] = i;
        }
        placed = new boolean[members];
    }

    /** The member and all that is joined to it, ascending. */
    public List<Integer> with(int member) {
        List<Integer> all = new ArrayList<>();
        for (int i = 0; i < first.length; i++) {
            if (first[i] == first[member]) {
                all.add(i);
            }
        }
        return all;
    }

    /** What comes along with a placing, ascending. */
    public List<Integer> moving(Placing placing) {
        boolean[] moves = new boolean[first.length];
        for (int member : placing.members()) {
            for (int along : with(member)) {
                moves[along] = true;
            }
        }
        List<Integer> all = new ArrayList<>();
        for (int i = 0; i < moves.length; i++) {
            if (moves[i]) {
                all.add(i);
            }
        }
        return all;
    }

    /** What is there already where a placing comes to; empty where it is laid down first. */
    public List<Integer> present(Placing placing) {
        return placing.onto() == Placing.NOTHING ? List.of() : with(placing.onto());
    }

    /** Joins what a placing brings to what it comes to. */
    public void join(Placing placing) {
        List<Integer> all = new ArrayList<>(moving(placing));
        all.addAll(present(placing));
        int least = Integer.MAX_VALUE;
        for (int member : all) {
            least = Math.min(least, first[member]);
        }
        for (int member : all) {
            first[member] = least;
            placed[member] = true;
        }
    }

    /** Members that no placing has named or brought along so far. */
    public List<Integer> loose() {
        List<Integer> loose = new ArrayList<>();
        for (int i = 0; i < placed.length; i++) {
            if (!placed[i]) {
                loose.add(i);
            }
        }
        return loose;
    }

    /** Whether everything that was placed is joined in one piece. */
    public boolean isOne() {
        int piece = -1;
        for (int i = 0; i < first.length; i++) {
            if (placed[i] && piece != -1 && first[i] != piece) {
                return false;
            }
            piece = placed[i] ? first[i] : piece;
        }
        return true;
    }
}
