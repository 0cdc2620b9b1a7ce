package ringleaf.mechanism.body;

import java.util.Optional;
import ringleaf.spec.shared.Bearing;
import ringleaf.spec.shared.FitName;

/**
 * What goes through the bore of a round part, and how the part sits on it.
 *
 * @param fit by name
 * @param nominal diameter of the axle or the bearing's outer ring, side of a square one, mm; 0 where there is none
 * @param basis where the bore's size comes from, for people; empty where it is the process's allowance
 * @param bearing that sits in the bore, if one does
 */
public record AxleFit(FitName fit, double nominal, String basis, Optional<Bearing> bearing) {
    private static final String AS_WIDE = "as wide as the axle, to be opened until it holds";

    /** No bore, or one that nothing goes through with a fit. */
    public static final AxleFit NONE = new AxleFit(FitName.RUNNING, 0, "", Optional.empty());

    /** A part that turns on its axle. */
    public static AxleFit running(double axle) {
        return new AxleFit(FitName.RUNNING, axle, "", Optional.empty());
    }

    /** A part that holds its axle in a bore that is nominally as wide. */
    public static AxleFit gripping(double axle) {
        return new AxleFit(FitName.PRESS, axle, AS_WIDE, Optional.empty());
    }

    /** Diameter of the axle that the part turns on or holds, mm; 0 where there is none. */
    public double axle() {
        return bearing.isPresent() ? bearing.get().bore() : nominal;
    }
}
