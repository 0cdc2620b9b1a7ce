// SPDX-License-Identifier: Apache-2.0
package ringleaf.leaf;

/** Where the drive pin stands, in the ways the solver tries. */
public enum Layout {
    /** On the band's far end: long leverage, little felt of play, but the pin dips and the end swings out. */
    FAR_END("far end"),
    /** On a short lever that points away from the axis and carries the pin out of the reach of the other blades. */
    LEVER("lever");

    private final String label;

    Layout(String label) {
        this.label = label;
    }

    /** In words for a report. */
    public String label() {
        return label;
    }

    public boolean isLever() {
        return this != FAR_END;
    }
}
