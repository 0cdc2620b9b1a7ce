// SPDX-License-Identifier: Apache-2.0
package ringleaf.explore;

import java.util.List;

/**
 * A figure by which designs are compared.
 *
 * @param mechanism whose figure it is; empty for one over all that vary
 * @param name of a dimension, or of one of {@link #WORK}
 */
public record Column(String mechanism, String name) {
    static final String PARTS = "parts";
    static final String LENGTH = "cutting-length";
    static final String TIME = "cutting-time";
    /** Figures of the parts, which have to be drawn for them. */
    static final List<String> WORK = List.of(PARTS, LENGTH, TIME);

    boolean isWork() {
        return WORK.contains(name);
    }

    /** The heading of its column. */
    public String shown() {
        return mechanism.isEmpty() ? name : mechanism + '.' + name;
    }
}
