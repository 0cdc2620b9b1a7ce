// SPDX-License-Identifier: Apache-2.0
package ringleaf.leaf;

/** The few states at which trials are looked at, the likeliest to fail first. */
final class TrialStates {
    /** Looked at from the start, as shares of the blade's travel. */
    private static final double[] FIRST = {1, 0.95, 0.88, 0.8, 0.7, 0.6, 0.45, 0.3, 0.15};

    private final double[] shares;
    private final int[] aparts;
    private int count;

    /** The first states, with room for {@code more}. */
    TrialStates(int more) {
        shares = new double[FIRST.length + more];
        aparts = new int[FIRST.length + more];
        for (double share : FIRST) {
            add(share, 1);
        }
    }

    int count() {
        return count;
    }

    double share(int i) {
        return shares[i];
    }

    /** Steps between the two blades whose play is looked at in this state. */
    int apart(int i) {
        return aparts[i];
    }

    void add(double share, int apart) {
        shares[count] = share;
        aparts[count++] = apart;
    }

    /** Whether this state is held already for blades so far apart, or farther. */
    boolean has(double share, int apart) {
        boolean found = false;
        for (int i = 0; i < count; i++) {
            found |= shares[i] == share && aparts[i] >= apart;
        }
        return found;
    }

    void toFront(int i) {
        double share = shares[i];
        int apart = aparts[i];
        System.arraycopy(shares, 0, shares, 1, i);
        System.arraycopy(aparts, 0, aparts, 1, i);
        shares[0] = share;
        aparts[0] = apart;
    }
}
