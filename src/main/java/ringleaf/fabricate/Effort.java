// SPDX-License-Identifier: Apache-2.0
package ringleaf.fabricate;

/**
 * What a search for places has looked at, so that many orders of many pieces end in some seconds: counted and not timed,
 * as the same spec is to give the same sheets everywhere.
 */
final class Effort {
    /** Cells that are looked at before no more orders are tried; some 2 s for the sheets of one stock. */
    static final long MOST = 800_000_000;

    private long cells;

    void spend(int looked) {
        cells += looked;
    }

    boolean isSpent() {
        return cells >= MOST;
    }
}
