// SPDX-License-Identifier: Apache-2.0
package ringleaf.mechanism.belt;

import java.util.ArrayList;
import java.util.List;
import ringleaf.part.Requirement;

/**
 * Which members of an assembly are the belt.
 *
 * @param band index of what runs all round
 * @param teeth indices of its teeth
 */
record Rubber(int band, List<Integer> teeth) {
    /** All of it, the band first. */
    List<Integer> members() {
        List<Integer> all = new ArrayList<>(List.of(band));
        all.addAll(teeth);
        return all;
    }

    /** Band and teeth are one piece of rubber and overlap on purpose; nothing is asked of their distance. */
    List<Requirement.Pair> onePiece() {
        List<Requirement.Pair> pairs = new ArrayList<>();
        for (int tooth : teeth) {
            pairs.add(new Requirement.Pair(band, tooth, Double.NEGATIVE_INFINITY));
        }
        return pairs;
    }

    /** Teeth follow one another and may touch. */
    List<Requirement.Pair> oneAfterAnother() {
        List<Requirement.Pair> pairs = new ArrayList<>();
        for (int i = 0; i < teeth.size(); i++) {
            for (int j = i + 1; j < teeth.size(); j++) {
                pairs.add(Requirement.Pair.touching(teeth.get(i), teeth.get(j)));
            }
        }
        return pairs;
    }
}
