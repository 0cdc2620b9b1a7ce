// SPDX-License-Identifier: Apache-2.0
package ringleaf.mechanism.aperture;

import java.util.List;
import ringleaf.mechanism.Decision;

/**
 * What an aperture's spec may leave open, and what else may stand there: sizes of wire, screws and teeth that are sold,
 * heights and rooms that only cost depth, in the order in which a builder would try them (common practice, no source).
 */
final class ApertureDecisions {
    static final List<Decision> ALL = List.of(
            Decision.mm("pin-diameter", 2, 1.5, 1.2, 2.5, 1, 3, 0.8, 0.6, 4),
            Decision.mm("clearances.ring-axial", 0.3, 0.45, 0.6, 0.8, 1, 1.3, 1.6),
            Decision.mm("clearances.blade-play", 0.2, 0.5, 0.15, 0.8),
            Decision.mm("ring-thickness", 2.5, 3, 1.5, 4, 5, 1.2, 1, 6),
            Decision.mm("plate-thickness", 3, 4, 5, 2, 1.6, 6, 8),
            Decision.among("pin-style", "two-holes", "base-posts", "one-glued"),
            Decision.mm("ledge", 1.5, 2, 2.5, 3, 4, 0.8),
            Decision.among("screw", "M2.5", "M3", "M4", "M1.6"),
            Decision.numbers("drive.module", 0.8, 1, 0.6, 0.5, 1.25, 1.5, 2),
            Decision.among("drive.by", "step-up", "pinion"),
            Decision.numbers("drive.pinion-teeth", 12, 14, 16, 18, 20, 22, 24, 28, 30, 32, 36, 40, 48, 60),
            Decision.numbers("drive.spare-teeth", 2, 0, 3, 4),
            Decision.among("drive-pin", "far-end", "lever"),
            Decision.mm("lap", 0.5, 0.4, 0.8, 1, 0.3));

    private ApertureDecisions() {}
}
