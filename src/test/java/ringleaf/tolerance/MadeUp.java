// SPDX-License-Identifier: Apache-2.0
package ringleaf.tolerance;

import java.util.List;
import java.util.function.Function;
import ringleaf.mechanism.AsBuilt;

/** A thing with closed forms, for tests: its sizes and margins are given. */
record MadeUp(List<Deviation> deviations, List<Limit> limits, Function<double[][], double[]> judge) implements AsBuilt {
    /** One size kept within 0.2 and one limit above it. */
    static MadeUp oneLimit(double limit) {
        return new MadeUp(
                List.of(new Deviation("pin", "pin", "mm", 1, 1, 0.2, "test", 5)),
                List.of(new Limit("fits", "mm", "it fits")),
                off -> new double[] {limit - off[0][0]});
    }

    @Override
    public Bench bench() {
        return judge::apply;
    }

    @Override
    public List<String> assumptions() {
        return List.of();
    }
}
