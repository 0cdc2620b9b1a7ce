// SPDX-License-Identifier: Apache-2.0
package ringleaf.solid;

/** Is told now and then how far a search has come, and may stop it. */
@FunctionalInterface
public interface Watch {
    /** Neither listens nor stops. */
    Watch NONE = (share, least, bound) -> true;

    /**
     * How far it has come.
     *
     * @param share of the box of drives for which it is done, 0 to 1
     * @param least distance found so far, mm
     * @param bound nowhere are they nearer, as far as is proved, mm
     * @return whether to go on
     */
    boolean goesOn(double share, double least, double bound);
}
