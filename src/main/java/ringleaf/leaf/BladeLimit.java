// SPDX-License-Identifier: Apache-2.0
package ringleaf.leaf;

/** What a choice of blades is held against; the order is that in which they are looked at, cheap ones first. */
public enum BladeLimit {
    /** The blade is wide enough for its pin holes and their edges. */
    PIN_EDGE("mm", "the pin hole's edge in the blade"),
    /** A lever's pin keeps its hole clear of the pivot's hole. */
    LEVER_LENGTH("mm", "the web between pivot hole and drive hole"),
    /** A lever's ear stays out of the clear opening. */
    EAR("mm", "the drive pin's ear beside the clear opening"),
    /** A lever's pin stands clear of all other blades. */
    PIN_CLEAR("mm", "the drive pin's room beside the other blades"),
    /** A pivot's bore keeps a web to the plate's own opening. */
    BORE_EDGE("mm", "the web between a pivot bore and the plate's opening"),
    /** Bores of neighbouring pivots keep a web between them. */
    BORE_WEB("mm", "the web between neighbouring pivot bores"),
    /** The slot's inner end keeps a web to the ring's own opening. */
    DIP("mm", "the slot's inner end beside the ring's opening"),
    /** Neighbouring slots keep a web between them. */
    SLOT_WEB("mm", "the web between neighbouring slots"),
    /** The drive pin's radius runs one way only, which slots that make the opening linear need. */
    TURNS_BACK("deg", "the dip of the drive pin, where a linear slot has a dead point"),
    /** Pressure angle of the slot. */
    PRESSURE("deg", "the slot's pressure angle"),
    /** The cavity fits what is allowed. */
    CAVITY("mm", "the cavity's radius"),
    /** Overlap of the blades as drawn. */
    LAP("mm", "the lap"),
    /** Overlap less what play can take. */
    PLAY("mm", "the lap after play"),
    /** Not a limit that can break: the cavity holds the swing of the blade's end and not just the open pose. */
    SWING("mm", "the swing of the blade's end");

    private final String unit;
    private final String subject;

    BladeLimit(String unit, String subject) {
        this.unit = unit;
        this.subject = subject;
    }

    /** mm, or deg for what is kept in rad here. */
    public String unit() {
        return unit;
    }

    /**
     * Whether it asks the same of the band wherever the drive pin stands, or more where it stands on a lever, which
     * feels play more. The swing is that of the blade's end, which a lever leaves where it is.
     */
    boolean isOfTheBand() {
        return switch (this) {
            case PIN_EDGE, BORE_EDGE, BORE_WEB, LAP, PLAY, SWING -> true;
            default -> false;
        };
    }

    /** What is limited, in words. */
    public String subject() {
        return subject;
    }
}
