package ringleaf.mechanism.gear;

import ringleaf.part.Words;
import ringleaf.tooth.TeethRatio;

/**
 * Teeth and module that could make a pair.
 *
 * @param teeth of both gears
 * @param module mm
 * @param distance centre distance, mm: the one asked for, or that of unshifted teeth
 * @param length over both gears, mm
 */
record PairCandidate(TeethRatio teeth, double module, double distance, double length) {
    /** {@code 17/28 of module 0.8: ratio 1.647, centres 18, length 37.6 mm, no common factor}. */
    String words() {
        return teeth.driver() + "/" + teeth.driven() + " of module " + Words.number(module, 4) + ": ratio "
                + Words.number(teeth.ratio(), 4) + ", centres " + Words.mm(distance) + ", length " + Words.mm(length)
                + (teeth.isHunting() ? ", no common factor" : "");
    }
}
