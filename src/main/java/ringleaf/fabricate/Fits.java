// SPDX-License-Identifier: Apache-2.0
package ringleaf.fabricate;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import ringleaf.part.Design;
import ringleaf.part.FitRow;
import ringleaf.part.FitSize;
import ringleaf.part.Part;
import ringleaf.part.Words;
import ringleaf.spec.Cutting;
import ringleaf.spec.Fabrication;
import ringleaf.spec.shared.Catalogues;
import ringleaf.spec.shared.FitName;
import ringleaf.spec.shared.MakingProcess;
import ringleaf.spec.shared.Stock;

/**
 * Sizes of joints from design to workshop. What is cut or printed follows the process's allowance and repeatability;
 * bought pins and axles are taken as ground to h6, bearings as of normal class, and metal holes are named the ISO 286
 * class that gives the fit with such a partner, so that they can be reamed where the process is too coarse.
 */
public final class Fits {
    private static final String PIN = "h6";

    private Fits() {}

    /** The sizes of all joints of a design, in its order; of parts whose process or stock is unknown there are none. */
    public static List<FitSize> of(Design design, Fabrication fabrication, Catalogues catalogues) {
        List<FitSize> sizes = new ArrayList<>();
        for (FitRow joint : design.joints()) {
            Part part = part(design, joint.part());
            if (part == null) {
                continue;
            }
            if (part.source().isBought()) {
                if (joint.shape().isInner()) {
                    sizes.add(bought(joint));
                }
                continue;
            }
            Optional<MakingProcess> process =
                    catalogues.processes().get(part.source().process());
            Optional<Stock> stock = catalogues.stock().get(part.source().stock());
            if (process.isPresent() && stock.isPresent()) {
                Cutting cutting = fabrication.cutting(
                        part.family().label(), process.get().name(), stock.get().name());
                boolean layers = process.get().makesLayers();
                double kerf = layers ? 0 : Preparation.kerf(cutting, process.get(), stock.get());
                sizes.add(made(joint, process.get(), stock.get(), kerf, cutting.kerf() && kerf > 0));
            }
        }
        return sizes;
    }

    private static Part part(Design design, String name) {
        for (Part part : design.parts()) {
            if (part.name().equals(name)) {
                return part;
            }
        }
        return null;
    }

    /**
     * The sizes of a hole, a slot, a seat, or of a shaft that is made.
     *
     * @param kerf mm that the process takes away
     * @param kerfIn whether the outlines in the files carry it
     */
    public static FitSize made(FitRow joint, MakingProcess process, Stock stock, double kerf, boolean kerfIn) {
        boolean inner = joint.shape().isInner();
        double sense = inner ? -1 : 1;
        double drawn = joint.size() - (kerfIn ? sense * kerf : 0);
        double expected = drawn + sense * kerf;
        double doubt = kerfDoubt(process, stock, kerf);
        double spread = doubt == 0 ? process.repeatability() : Math.hypot(process.repeatability(), doubt);
        double least = expected - spread;
        double most = expected + spread;
        FitName fit = FitName.of(joint.fit());
        Iso286.Limits partner = partner(joint, fit);
        StringBuilder how = new StringBuilder(process.name()).append(", ");
        if (joint.basis().isEmpty()) {
            how.append("allowance ")
                    .append(Words.number(joint.size() - joint.nominal(), 3))
                    .append(" mm");
        } else {
            how.append(joint.basis());
        }
        how.append(", ±").append(Words.number(process.repeatability(), 3)).append(" mm");
        if (doubt > 0) {
            how.append(" and ±").append(Words.number(doubt, 3)).append(" mm of the measured kerf");
        }
        if (kerf > 0) {
            how.append(kerfIn ? ", kerf in the file" : ", kerf not in the file: burnt " + (inner ? "off" : "away"));
        }
        double low = inner ? -most : least;
        double high = inner ? -least : most;
        double other = sense * joint.nominal();
        double leastPlay = low - other - partner.upper();
        double mostPlay = high - other - partner.lower();
        if (!inner) {
            how.append(outcome(fit, leastPlay, mostPlay, kerf > 0 && !kerfIn));
        }
        Optional<FitSize.IsoClass> wanted = isoClass(joint, fit);
        boolean kept = wanted.isPresent() && isKept(wanted.get(), least, most);
        if (wanted.isPresent() && !inner && isMetal(stock)) {
            how.append(metal(joint, wanted.get(), kept, most));
        }
        return new FitSize(
                joint, drawn, least, most, leastPlay, mostPlay, kept ? wanted : Optional.empty(), how.toString());
    }

    /** What will happen at the bench, where the fit does not come out as meant; empty where it does. */
    private static String outcome(FitName fit, double leastPlay, double mostPlay, boolean kerfMissing) {
        boolean loose = leastPlay >= 0;
        boolean tight = mostPlay <= 0;
        if (fit == FitName.PRESS && loose) {
            return "; comes out too wide to hold, and opening it makes it wider: "
                    + (kerfMissing ? "put the kerf in the file, or glue" : "glue");
        } else if (fit == FitName.PRESS && !tight) {
            return "; comes out tight or loose: open what is tight until it holds, glue what is loose";
        } else if (fit == FitName.PRESS) {
            return "; comes out tight: open it until what it holds goes in with a push";
        }
        return fit == FitName.THREAD_CLEARANCE || loose ? "" : "; may come out too tight: then open it";
    }

    private static boolean isKept(FitSize.IsoClass limits, double least, double most) {
        return least >= limits.least() - 1e-9 && most <= limits.most() + 1e-9;
    }

    /** The class that gives the fit; none for what only passes a screw, for rings, and for sizes that are not covered. */
    private static Optional<FitSize.IsoClass> isoClass(FitRow joint, FitName fit) {
        if (fit == FitName.THREAD_CLEARANCE || joint.shape() == FitRow.Shape.RING || !Iso286.covers(joint.nominal())) {
            return Optional.empty();
        }
        boolean seat = joint.shape() == FitRow.Shape.SEAT;
        String name = joint.shape().isInner() ? PIN : seat ? seatClass(fit) : holeClass(fit);
        Iso286.Limits limits = Iso286.of(name, joint.nominal());
        return Optional.of(
                new FitSize.IsoClass(name, joint.nominal() + limits.lower(), joint.nominal() + limits.upper()));
    }

    /** A metal hole's class: whether it comes out so, or can be reamed to it. */
    private static String metal(FitRow joint, FitSize.IsoClass limits, boolean kept, double most) {
        String name = limits.name() + (joint.shape() == FitRow.Shape.SEAT ? "" : "/" + PIN);
        return "; metal: " + name + " is " + Words.number(limits.least(), 3) + " to " + Words.number(limits.most(), 3)
                + " mm"
                + (kept
                        ? ""
                        : most <= limits.most() ? ", ream it" : ", finer than the process: cut it smaller and ream");
    }

    /** How far the true kerf may lie from this one (95 %), mm; 0 where nobody measured it. */
    private static double kerfDoubt(MakingProcess process, Stock stock, double kerf) {
        if (kerf > 0 && stock.kerf().isPresent() && stock.kerf().getAsDouble() == kerf) {
            return stock.kerfWithin();
        }
        return kerf > 0 && process.kerf() == kerf ? process.kerfWithin() : 0;
    }

    /** The sizes of a bought pin that is ground to h6, or of a bearing's outer ring. */
    public static FitSize bought(FitRow joint) {
        double d = joint.nominal();
        boolean ring = joint.shape() == FitRow.Shape.RING;
        if (!ring && !Iso286.covers(d)) {
            return new FitSize(joint, d, d, d, 0, 0, Optional.empty(), "bought by its nominal size");
        }
        Iso286.Limits limits = ring ? Iso492.outerRing(d) : Iso286.of(PIN, d);
        String how = ring ? "bought, outer ring of normal class" : "bought, ISO 286 " + PIN;
        return new FitSize(
                joint,
                joint.size(),
                joint.size() + limits.lower(),
                joint.size() + limits.upper(),
                0,
                -limits.lower(),
                isoClass(joint, FitName.of(joint.fit())),
                how);
    }

    /** The hole's class that gives the fit with a pin of h6. */
    public static String holeClass(FitName fit) {
        return switch (fit) {
            case RUNNING, GLUE -> "F8";
            case SLIDING -> "G7";
            case PRESS -> "P7";
            case THREAD_CLEARANCE -> throw new IllegalArgumentException("a thread's clearance has no class");
        };
    }

    /** The class of the seat that gives the fit with a bearing's outer ring (common practice, no source). */
    static String seatClass(FitName fit) {
        return switch (fit) {
            case PRESS -> "N7";
            case SLIDING -> "H7";
            case GLUE, RUNNING -> "G7";
            case THREAD_CLEARANCE -> throw new IllegalArgumentException("a thread's clearance has no class");
        };
    }

    private static Iso286.Limits partner(FitRow joint, FitName fit) {
        if (joint.shape() == FitRow.Shape.SEAT) {
            return Iso492.outerRing(joint.nominal());
        }
        boolean ground = fit != FitName.THREAD_CLEARANCE && !joint.shape().isInner() && Iso286.covers(joint.nominal());
        return ground ? Iso286.of(PIN, joint.nominal()) : new Iso286.Limits(0, 0);
    }

    /** Metals are far stiffer than any plastic or wood, MPa. */
    static boolean isMetal(Stock stock) {
        return stock.stiffness() > 40_000;
    }
}
