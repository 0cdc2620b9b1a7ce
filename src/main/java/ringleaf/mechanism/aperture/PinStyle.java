// SPDX-License-Identifier: Apache-2.0
package ringleaf.mechanism.aperture;

/** Ways to make a blade's pins. */
public enum PinStyle {
    /** A printed blade that carries its pivot pin; the drive pin is a piece of its own, set into a hole. */
    ONE_GLUED("one-glued"),
    /** A blade cut from sheet with two holes; both pins are wire, dowel or rivet, flush on the far face. */
    TWO_HOLES("two-holes"),
    /** The base carries posts, the blade has a running hole there and only its drive pin is fixed to it. */
    BASE_POSTS("base-posts");

    private final String label;

    PinStyle(String label) {
        this.label = label;
    }

    public String label() {
        return label;
    }
}
