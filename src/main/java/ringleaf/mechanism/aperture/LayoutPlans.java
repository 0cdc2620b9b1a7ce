package ringleaf.mechanism.aperture;

import java.util.ArrayList;
import java.util.List;

/**
 * The best blades of each layout. The second layout is solved beside the caller's thread, which solves the others; each
 * solves for itself, so the result does not depend on who is faster.
 */
final class LayoutPlans extends Thread {
    private final BladeNeeds needs;
    private final Layout layout;
    private BladePlan plan;
    private RuntimeException failure;

    private LayoutPlans(BladeNeeds needs, Layout layout) {
        super("layouts");
        this.needs = needs;
        this.layout = layout;
        setDaemon(true);
    }

    /** A plan for each layout, in their order. */
    static List<BladePlan> of(BladeNeeds needs, List<Layout> layouts) {
        if (layouts.size() == 1) {
            return List.of(BladeSolver.solve(needs, layouts.get(0)));
        }
        LayoutPlans beside = new LayoutPlans(needs, layouts.get(1));
        beside.start();
        List<BladePlan> all = new ArrayList<>();
        for (int i = 0; i < layouts.size(); i++) {
            all.add(i == 1 ? null : BladeSolver.solve(needs, layouts.get(i)));
        }
        try {
            beside.join();
        } catch (InterruptedException stopped) {
            Thread.currentThread().interrupt();
            throw new IllegalStateException("interrupted while solving", stopped);
        }
        if (beside.failure != null) {
            throw beside.failure;
        }
        all.set(1, beside.plan);
        return all;
    }

    @Override
    public void run() {
        try {
            plan = BladeSolver.solve(needs, layout);
        } catch (RuntimeException failed) {
            failure = failed;
        }
    }
}
