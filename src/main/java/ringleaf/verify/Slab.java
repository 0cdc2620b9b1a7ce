// SPDX-License-Identifier: Apache-2.0
package ringleaf.verify;

/** One region of one layer of one member, as drawn, with the heights at which it can meet others. */
final class Slab {
    final int member;
    final int body;
    final Shape drawn;
    /** Heights as drawn, mm. */
    final double zFrom;

    final double zTo;
    /** Heights at which others may meet it, mm; equal when none can. */
    final double meetsFrom;

    final double meetsTo;
    /** Whether this lies in the leaves' room as a leaf does, anywhere between floor and ceiling. */
    final boolean leafy;

    Slab(int member, int body, Shape drawn, double[] z, double[] meets, boolean leafy) {
        this.member = member;
        this.body = body;
        this.drawn = drawn;
        this.zFrom = z[0];
        this.zTo = z[1];
        this.meetsFrom = meets[0];
        this.meetsTo = meets[1];
        this.leafy = leafy;
    }

    /** Whether the two share a height, so that they must not meet seen from above; leaves never do by height. */
    boolean shares(Slab other, double hair) {
        return !(leafy && other.leafy)
                && Math.min(meetsTo, other.meetsTo) - Math.max(meetsFrom, other.meetsFrom) > hair;
    }
}
