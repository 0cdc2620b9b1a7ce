package ringleaf.mechanism.aperture;

import java.util.ArrayList;
import java.util.List;

/**
 * The best blades of each layout. The first layout is solved by the caller's thread, the others beside it; each solves
 * for itself, so the result does not depend on who is faster.
 */
final class LayoutPlans extends Thread {
    private final BladeNeeds needs;
    private final List<Layout> layouts;
    private final List<BladePlan> plans = new ArrayList<>();
    private RuntimeException failure;

    private LayoutPlans(BladeNeeds needs, List<Layout> layouts) {
        super("layouts");
        this.needs = needs;
        this.layouts = layouts;
        setDaemon(true);
    }

    /** A plan for each layout, in their order. */
    static List<BladePlan> of(BladeNeeds needs, List<Layout> layouts) {
        if (layouts.size() == 1) {
            return List.of(BladeSolver.solve(needs, layouts.get(0)));
        }
        LayoutPlans beside = new LayoutPlans(needs, layouts.subList(1, layouts.size()));
        beside.start();
        List<BladePlan> all = new ArrayList<>();
        all.add(BladeSolver.solve(needs, layouts.get(0)));
        try {
            beside.join();
        } catch (InterruptedException stopped) {
            Thread.currentThread().interrupt();
            throw new IllegalStateException("interrupted while solving", stopped);
        }
        if (beside.failure != null) {
            throw beside.failure;
        }
        all.addAll(beside.plans);
        return all;
    }

    @Override
    public void run() {
        try {
            for (Layout layout : layouts) {
                plans.add(BladeSolver.solve(needs, layout));
            }
        } catch (RuntimeException failed) {
            failure = failed;
        }
    }
}
