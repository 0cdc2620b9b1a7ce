package ringleaf.fabricate;

import ringleaf.part.FitSize;
import ringleaf.part.Joint;
import ringleaf.part.Words;
import ringleaf.spec.shared.FitName;
import ringleaf.spec.shared.MakingProcess;
import ringleaf.spec.shared.Stock;

/**
 * Sizes of joints from design to workshop. What is cut or printed follows the process's allowance and repeatability;
 * bought pins are taken as ground to h6, and metal holes are named the ISO 286 class that gives the fit with such a
 * pin, so that they can be reamed where the process is too coarse.
 */
public final class Fits {
    private static final String PIN = "h6";

    private Fits() {}

    /**
     * The sizes of a hole or a slot.
     *
     * @param kerf mm that the process takes away
     * @param kerfIn whether the outlines in the files carry it
     */
    public static FitSize made(Joint joint, MakingProcess process, Stock stock, double kerf, boolean kerfIn) {
        boolean shaft = joint.shape() == Joint.Shape.SHAFT;
        double sense = shaft ? -1 : 1;
        double drawn = joint.size() - (kerfIn ? sense * kerf : 0);
        double expected = drawn + sense * kerf;
        double doubt = kerfDoubt(process, stock, kerf);
        double spread = doubt == 0 ? process.repeatability() : Math.hypot(process.repeatability(), doubt);
        double least = expected - spread;
        double most = expected + spread;
        FitName fit = FitName.of(joint.fit());
        Iso286.Limits pin = pin(joint, fit);
        StringBuilder how = new StringBuilder(process.name());
        if (fit == FitName.THREAD_CLEARANCE) {
            how.append(", hole of ISO 273 medium");
        } else {
            how.append(", allowance ").append(Words.number(joint.size() - joint.nominal(), 3)).append(" mm");
        }
        how.append(", ±").append(Words.number(process.repeatability(), 3)).append(" mm");
        if (doubt > 0) {
            how.append(" and ±").append(Words.number(doubt, 3)).append(" mm of the measured kerf");
        }
        if (kerf > 0) {
            how.append(kerfIn ? ", kerf in the file" : ", kerf not in the file: burnt " + (shaft ? "off" : "away"));
        }
        if (!shaft && isMetal(stock) && fit != FitName.THREAD_CLEARANCE && Iso286.covers(joint.nominal())) {
            how.append(reamed(joint, fit, process));
        }
        double low = shaft ? -most : least;
        double high = shaft ? -least : most;
        double partner = sense * joint.nominal();
        return new FitSize(
                joint, drawn, least, most, low - partner - pin.upper(), high - partner - pin.lower(), how.toString());
    }

    /** How far the true kerf may lie from this one (95 %), mm; 0 where nobody measured it. */
    private static double kerfDoubt(MakingProcess process, Stock stock, double kerf) {
        if (kerf > 0 && stock.kerf().isPresent() && stock.kerf().getAsDouble() == kerf) {
            return stock.kerfWithin();
        }
        return kerf > 0 && process.kerf() == kerf ? process.kerfWithin() : 0;
    }

    /** The sizes of a bought pin that is ground to h6. */
    public static FitSize bought(Joint joint) {
        if (!Iso286.covers(joint.nominal())) {
            double d = joint.nominal();
            return new FitSize(joint, d, d, d, 0, 0, "bought by its nominal size");
        }
        Iso286.Limits limits = Iso286.of(PIN, joint.nominal());
        return new FitSize(
                joint,
                joint.size(),
                joint.size() + limits.lower(),
                joint.size() + limits.upper(),
                0,
                -limits.lower(),
                "bought, ISO 286 " + PIN);
    }

    /** The hole's class that gives the fit with a pin of h6. */
    static String holeClass(FitName fit) {
        return switch (fit) {
            case RUNNING, GLUE -> "F8";
            case SLIDING -> "G7";
            case PRESS -> "P7";
            case THREAD_CLEARANCE -> throw new IllegalArgumentException("a thread's clearance has no class");
        };
    }

    private static String reamed(Joint joint, FitName fit, MakingProcess process) {
        String name = holeClass(fit);
        Iso286.Limits limits = Iso286.of(name, joint.nominal());
        boolean holds = process.repeatability() <= (limits.upper() - limits.lower()) / 2;
        return "; metal: " + name + "/" + PIN + " is " + Words.number(joint.nominal() + limits.lower(), 3) + " to "
                + Words.number(joint.nominal() + limits.upper(), 3) + " mm"
                + (holds ? "" : ", finer than the process: ream where it matters");
    }

    private static Iso286.Limits pin(Joint joint, FitName fit) {
        boolean ground = fit != FitName.THREAD_CLEARANCE && Iso286.covers(joint.nominal());
        return ground ? Iso286.of(PIN, joint.nominal()) : new Iso286.Limits(0, 0);
    }

    /** Metals are far stiffer than any plastic or wood, MPa. */
    static boolean isMetal(Stock stock) {
        return stock.stiffness() > 40_000;
    }
}
