// SPDX-License-Identifier: Apache-2.0
package ringleaf.mechanism.aperture;

import java.util.Optional;
import ringleaf.leaf.BladeNeeds;
import ringleaf.leaf.BladePlan;
import ringleaf.leaf.BladeSolver;
import ringleaf.leaf.Layout;
import ringleaf.mechanism.Memo;

/** Where solved blades come from: the solver itself, or what it found for the same needs before. */
interface BladePlans {
    /** The solver. */
    BladePlans SOLVED = new BladePlans() {
        @Override
        public BladePlan of(BladeNeeds needs, Layout layout) {
            return BladeSolver.solve(needs, layout);
        }

        @Override
        public Optional<BladePlan> below(BladeNeeds needs, Layout layout, double cavity) {
            return Optional.ofNullable(BladeSolver.below(needs, layout, cavity));
        }
    };

    /** The plan of one layout; it holds, or breaks the fewest limits by the least. */
    BladePlan of(BladeNeeds needs, Layout layout);

    /** The plan of one layout that holds, where there is one with a smaller cavity radius than {@code cavity} mm. */
    Optional<BladePlan> below(BladeNeeds needs, Layout layout, double cavity);

    /** The solver behind a memo. */
    record Remembered(Memo memo) implements BladePlans {
        private record Key(BladeNeeds needs, Layout layout) {}

        private record BelowKey(BladeNeeds needs, Layout layout, double cavity) {}

        @Override
        public BladePlan of(BladeNeeds needs, Layout layout) {
            return memo.get(new Key(needs, layout), () -> SOLVED.of(needs, layout));
        }

        @Override
        public Optional<BladePlan> below(BladeNeeds needs, Layout layout, double cavity) {
            return memo.get(new BelowKey(needs, layout, cavity), () -> SOLVED.below(needs, layout, cavity));
        }
    }
}
