package ringleaf.mechanism.aperture;

import java.util.ArrayList;
import java.util.List;
import ringleaf.mechanism.Memo;

/** Where solved blades come from: the solver itself, or what it found for the same needs before. */
interface BladePlans {
    /** The solver, with the layouts beside one another. */
    BladePlans SOLVED = new BladePlans() {
        @Override
        public List<BladePlan> of(BladeNeeds needs, List<Layout> layouts) {
            return LayoutPlans.of(needs, layouts);
        }

        @Override
        public BladePlan of(BladeNeeds needs, Layout layout) {
            return BladeSolver.solve(needs, layout);
        }
    };

    /** A plan for each layout, in their order. */
    List<BladePlan> of(BladeNeeds needs, List<Layout> layouts);

    /** The plan of one layout. */
    BladePlan of(BladeNeeds needs, Layout layout);

    /** The solver behind a memo, on the caller's thread: whoever tries many has all threads busy. */
    record Remembered(Memo memo) implements BladePlans {
        private record Key(BladeNeeds needs, Layout layout) {}

        @Override
        public List<BladePlan> of(BladeNeeds needs, List<Layout> layouts) {
            List<BladePlan> plans = new ArrayList<>();
            for (Layout layout : layouts) {
                plans.add(of(needs, layout));
            }
            return plans;
        }

        @Override
        public BladePlan of(BladeNeeds needs, Layout layout) {
            return memo.get(new Key(needs, layout), () -> BladeSolver.solve(needs, layout));
        }
    }
}
