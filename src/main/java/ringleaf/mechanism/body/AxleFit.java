// SPDX-License-Identifier: Apache-2.0
package ringleaf.mechanism.body;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import ringleaf.mechanism.CutRod;
import ringleaf.part.Finding;
import ringleaf.part.Part;
import ringleaf.spec.shared.Bearing;
import ringleaf.spec.shared.FitName;

/**
 * What goes through the bore of a round part, and how the part sits on it.
 *
 * @param fit by name
 * @param nominal diameter of the axle or the bearing's outer ring, side of a square one, mm; 0 where there is none
 * @param basis where the bore's size comes from, for people; empty where it is the process's allowance
 * @param bearing that sits in the bore, if one does
 * @param rod that the axle is cut from, where it is round and not of a servo
 */
public record AxleFit(FitName fit, double nominal, String basis, Optional<Bearing> bearing, Optional<CutRod> rod) {
    private static final String AS_WIDE = "as wide as the axle";

    /** No bore, or one that nothing goes through with a fit. */
    public static final AxleFit NONE = new AxleFit(FitName.RUNNING, 0, "", Optional.empty(), Optional.empty());

    /** A part that turns on its axle. */
    public static AxleFit running(double axle) {
        return new AxleFit(FitName.RUNNING, axle, "", Optional.empty(), Optional.empty());
    }

    /** A part that holds its axle in a bore that is nominally as wide. */
    public static AxleFit gripping(double axle) {
        return new AxleFit(FitName.PRESS, axle, AS_WIDE, Optional.empty(), Optional.empty());
    }

    /** The same on an axle that is cut from a rod. */
    AxleFit from(CutRod cut) {
        return new AxleFit(fit, nominal, basis, bearing, Optional.of(cut));
    }

    /** The bearing in the bore, and the axle, of a part whose names begin so, e.g. {@code driven-}. */
    public List<Part> bought(String prefix) {
        List<Part> parts = new ArrayList<>();
        bearing.ifPresent(b -> parts.add(Part.bought(prefix + "bearing", 1, b.words())));
        rod.ifPresent(r -> parts.add(r.named(prefix + "axle").open()));
        return parts;
    }

    /** Whether rod is sold for the axle of such a part. */
    public List<Finding> findings(String prefix) {
        return rod.map(r -> List.of(r.named(prefix + "axle").isSold())).orElse(List.of());
    }

    /** Diameter of the axle that the part turns on or holds, mm; 0 where there is none. */
    public double axle() {
        return bearing.isPresent() ? bearing.get().bore() : nominal;
    }
}
