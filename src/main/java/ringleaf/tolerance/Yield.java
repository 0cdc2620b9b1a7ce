// SPDX-License-Identifier: Apache-2.0
package ringleaf.tolerance;

import java.util.List;

/**
 * The share of random builds in which everything holds.
 *
 * @param builds how many were made up
 * @param seed of the random numbers
 * @param good in how many everything holds
 * @param low lower end of the 95 % interval of the share
 * @param high upper end
 * @param failures what gave way, the commonest first
 */
public record Yield(int builds, long seed, int good, double low, double high, List<Failure> failures) {
    public Yield {
        failures = List.copyOf(failures);
    }

    public double share() {
        return (double) good / builds;
    }

    /**
     * One check that gave way.
     *
     * @param check its name
     * @param builds in how many builds
     * @param alone in how many of those nothing else did
     */
    public record Failure(String check, int builds, int alone) {}
}
