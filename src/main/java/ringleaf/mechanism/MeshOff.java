// SPDX-License-Identifier: Apache-2.0
package ringleaf.mechanism;

import java.util.List;
import ringleaf.machine.RoomLaw;
import ringleaf.tooth.GearPair;
import ringleaf.tooth.InternalPair;
import ringleaf.tooth.ToothForm;

/**
 * A mesh whose centre distance, tooth thicknesses, tips and roots are off. Sizes are added in this order: distance,
 * thickness and tip and root of the first gear, then of the second.
 */
public final class MeshOff {
    /** Distance, then thickness, tip and root of either gear. */
    private static final int SIZES = 7;

    private final GearPair outer;
    private final InternalPair inner;
    private final int first;

    private MeshOff(GearPair outer, InternalPair inner, int first) {
        this.outer = outer;
        this.inner = inner;
        this.first = first;
    }

    /**
     * Adds the sizes of two gears outside each other.
     *
     * @param prefix of the names, with its hyphen, or empty
     * @param axes what places the axes
     */
    public static MeshOff outer(
            GearPair pair,
            String prefix,
            String one,
            String other,
            Material axes,
            Material a,
            Material b,
            SizesOff to) {
        int first = distance(prefix, pair.centreDistance(), axes, to);
        gear(
                prefix,
                one,
                pair.pinion().thickness(),
                pair.pinion().tipRadius(),
                pair.pinion().rootRadius(),
                a,
                to);
        gear(
                prefix,
                other,
                pair.gear().thickness(),
                pair.gear().tipRadius(),
                pair.gear().rootRadius(),
                b,
                to);
        return new MeshOff(pair, null, first);
    }

    /** Adds the sizes of a gear in a ring. */
    public static MeshOff inner(InternalPair pair, String prefix, Material made, SizesOff to) {
        int first = distance(prefix, pair.centreDistance(), made, to);
        gear(
                prefix,
                "driver",
                pair.pinion().thickness(),
                pair.pinion().tipRadius(),
                pair.pinion().rootRadius(),
                made,
                to);
        double tooth = pair.ring().module() * Math.PI / 2;
        gear(prefix, "ring", tooth, pair.ring().tipRadius(), pair.ring().rootRadius(), made, to);
        return new MeshOff(null, pair, first);
    }

    private static int distance(String prefix, double distance, Material axes, SizesOff to) {
        return to.width(prefix + "centre-distance", "distance of the axes", distance, 1, axes);
    }

    private static void gear(
            String prefix, String name, double thickness, double tip, double root, Material made, SizesOff to) {
        to.width(prefix + name + "-tooth", "thickness of the teeth of the " + name, thickness, 1, made);
        to.edge(prefix + name + "-tip", "tip radius of the " + name, tip, 1, made);
        to.edge(prefix + name + "-root", "root radius of the " + name, root, 1, made);
    }

    /** Number of the second gear's tip radius among the sizes. */
    public int secondTip() {
        return first + 5;
    }

    /**
     * What the contact ratio has to lie above 1 for the teeth to carry on when the sizes are off, as far as
     * {@link RoomLaw} goes: each size that is off by what it is made within takes some of it.
     *
     * @param sizes that the mesh was added to
     */
    public double contactRoom(List<AsBuilt.Deviation> sizes) {
        double[][] off = new double[sizes.size()][1];
        double drawn = margins(off, 0).contact();
        double[] taken = new double[SIZES];
        for (int i = 0; i < SIZES; i++) {
            for (int way = -1; way <= 1; way += 2) {
                off[first + i][0] = way * sizes.get(first + i).within();
                taken[i] = Math.max(taken[i], drawn - margins(off, 0).contact());
            }
            off[first + i][0] = 0;
        }
        return RoomLaw.room(1, taken);
    }

    /**
     * The mesh as built.
     *
     * @param off all sizes' deviations, the first copy of each counting
     * @param nearer how far the axes may come together besides, mm
     */
    public Margins margins(double[][] off, double nearer) {
        double distance = off[first][0];
        double[] thicker = {off[first + 1][0], off[first + 4][0]};
        double[] tip = {off[first + 2][0], off[first + 5][0]};
        double[] root = {off[first + 3][0], off[first + 6][0]};
        try {
            return outer != null
                    ? outer(distance, nearer, thicker, tip, root)
                    : inner(distance, nearer, thicker, tip, root);
        } catch (IllegalArgumentException e) {
            // No line of action or no tooth is left.
            return new Margins(-1, -1, -1);
        }
    }

    /** Teeth that are off; where they come to a point they are as much lower. */
    private static ToothForm made(ToothForm teeth, double thicker, double higher) {
        ToothForm made = teeth.withThinning(teeth.thinning() - thicker);
        return made.withTipRadius(Math.min(teeth.tipRadius() + higher, made.peakRadius()));
    }

    private Margins outer(double distance, double nearer, double[] thicker, double[] tip, double[] root) {
        GearPair made = new GearPair(
                made(outer.pinion(), thicker[0], tip[0]),
                made(outer.gear(), thicker[1], tip[1]),
                outer.centreDistance() + distance);
        double apart = made.centreDistance() - nearer;
        double clearance = apart
                - Math.max(
                        made.pinion().tipRadius() + made.gear().rootRadius() + root[1],
                        made.gear().tipRadius() + made.pinion().rootRadius() + root[0]);
        double play = nearer > 0 ? made.withCentreDistance(apart).backlash() : made.backlash();
        return new Margins(play, clearance, made.contact().usableRatio() - 1);
    }

    private Margins inner(double distance, double nearer, double[] thicker, double[] tip, double[] root) {
        InternalPair made = new InternalPair(
                made(inner.pinion(), thicker[0], tip[0]),
                inner.ring()
                        .withThinning(inner.ring().thinning() - thicker[1])
                        .withTipRadius(inner.ring().tipRadius() + tip[1]),
                inner.centreDistance() + distance);
        // The deeper a gear lies in its ring, the further the axes stand apart.
        InternalPair deeper = made.withCentreDistance(made.centreDistance() + nearer);
        double clearance = Math.min(deeper.pinionTipClearance() + root[1], deeper.ringTipClearance() - root[0]);
        return new Margins(deeper.backlash(), clearance, made.contactRatio() - 1);
    }

    /**
     * What is left of a mesh, below 0 where it is gone.
     *
     * @param backlash along the rolling circles, mm
     * @param tips least room from tip to root, mm
     * @param contact contact ratio beyond 1
     */
    public record Margins(double backlash, double tips, double contact) {}
}
