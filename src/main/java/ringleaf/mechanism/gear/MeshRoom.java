// SPDX-License-Identifier: Apache-2.0
package ringleaf.mechanism.gear;

import java.util.Optional;
import java.util.OptionalDouble;
import ringleaf.machine.Room;
import ringleaf.mechanism.Material;
import ringleaf.mechanism.MeshOff;
import ringleaf.mechanism.SizesOff;
import ringleaf.mechanism.TipRoom;
import ringleaf.part.Words;
import ringleaf.tooth.BasicRack;

/**
 * Room that a mesh has so that it still works when gears and axes are off: the usual, or what the process asks for. The
 * sizes that count are those that are off in the study of yield; see {@link TrainBuilt}. Lengths in mm.
 *
 * @param made how both gears are made, and what holds their axes
 */
record MeshRoom(Material made) {
    /** Backlash where nothing is said, in modules beside what misplaces both edges; common practice, no source. */
    private static final double BACKLASH_SHARE = 0.03;

    /** Play along the rolling circles: both teeth may be thicker, and axes that are nearer take 2 tan a of it. */
    Room backlash(OptionalDouble given, double module, double pressureAngle) {
        double off = made.repeatability();
        Optional<Double> own = given.isPresent() ? Optional.of(given.getAsDouble()) : Optional.empty();
        return Room.of(
                "backlash", own, 2 * off + BACKLASH_SHARE * module, 1, off, off, 2 * Math.tan(pressureAngle) * off);
    }

    /** From tips to the roots they dip into: axes may be nearer, tips and roots further out, on either gear. */
    Room tips(double module, BasicRack rack) {
        double off = made.repeatability();
        return Room.of("tip-clearance", Optional.empty(), module * rack.clearance(), TipRoom.TIPS, off, off, off);
    }

    /** The sizes of a mesh that are off in the study of yield. */
    static MeshOff off(Mesh mesh, String prefix, Material made, SizesOff to) {
        return mesh instanceof Mesh.Outer outer
                ? MeshOff.outer(outer.pair(), prefix, "driver", "driven", made, made, made, to)
                : MeshOff.inner(((Mesh.Inner) mesh).pair(), prefix, made, to);
    }

    /** What the contact has and needs, in words. */
    String contact(Mesh mesh) {
        return Words.number(mesh.contactRatio(), 2) + "; " + made.process() + " takes up to "
                + Words.number(contactAsked(mesh), 2) + " of it beyond 1";
    }

    private double contactAsked(Mesh mesh) {
        SizesOff sizes = new SizesOff();
        return off(mesh, "", made, sizes).contactRoom(sizes.all());
    }

    /** The same as a mesh has it, whose teeth may not be lowered so far. */
    Room tips(Mesh mesh) {
        return tips(mesh.module(), mesh.rack().withDeeper(0))
                .atMost(mesh.tipClearance(), "deeper roots would leave teeth of this module too narrow a foot");
    }
}
