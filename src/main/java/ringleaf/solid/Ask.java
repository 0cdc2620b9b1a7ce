// SPDX-License-Identifier: Apache-2.0
package ringleaf.solid;

/**
 * What is to be proved of two bodies.
 *
 * @param least distance that they shall keep at every setting, mm
 * @param slack the judge's tolerance, mm, above 0: what is proved within it counts, and what is not farther apart than
 *     it touches
 * @param settle where they do not keep the distance: how exactly the least one is found, mm, at least the slack
 * @param budget poses that may be looked at
 */
public record Ask(double least, double slack, double settle, int budget) {
    public Ask {
        if (!(slack > 0) || !(least > 2 * slack) || !(settle >= slack) || budget < 1) {
            throw new IllegalArgumentException("a distance asked for is more than twice the tolerance of its proof: "
                    + least + ", tolerance " + slack + ", settled to " + settle + ", poses " + budget);
        }
    }
}
