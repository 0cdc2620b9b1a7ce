// SPDX-License-Identifier: Apache-2.0
package ringleaf.mechanism.aperture;

import java.util.Optional;
import ringleaf.leaf.Band;
import ringleaf.machine.Fit;
import ringleaf.mechanism.Material;
import ringleaf.mechanism.MeshOff;
import ringleaf.mechanism.SizesOff;

/** The sizes of an aperture that can be off, by their numbers. Blades, bores and slots are each off by themselves. */
final class ApertureSizes {
    final SizesOff all = new SizesOff();
    final int innerEdge;
    final int outerEdge;
    final int farEnd;
    final int pinAlong;
    final int pinAcross;
    final int boreRadial;
    final int boreAcross;
    final int bore;
    final int slotPlace;
    final int slotWidth;
    final int slotInner;
    final int slotOuter;
    final int pivotPin;
    final int drivePin;
    final int plateOpening;
    final int ringOpening;
    final int cavity;
    final int wall;
    final int rim;
    final int thickness;
    final int cavityHeight;
    final int wallHeight;
    final int ringThickness;
    final int pivotLength;
    final int driveLength;
    final Optional<MeshOff> mesh;
    final Optional<MeshOff> stepMesh;

    ApertureSizes(ApertureDesign design) {
        ApertureSpec spec = design.spec();
        Band band = design.band();
        int n = spec.blades();
        Material blade = spec.blade();
        Material plate = spec.plate();
        Material ring = spec.ring();
        Material spacer = spec.spacer();
        innerEdge = all.edge("blade-inner-radius", "inner edge of the blade", band.innerRadius(), n, blade);
        outerEdge = all.edge("blade-outer-radius", "outer edge of the blade", band.outerRadius(), n, blade);
        farEnd = all.edge("blade-far-end", "far end of the blade, along it", 0, n, blade);
        pinAlong = all.edge(
                "drive-pin-along", "drive pin from its pivot", design.pin().length(band), n, blade);
        pinAcross = all.edge("drive-pin-across", "drive pin, square to that", 0, n, blade);
        boreRadial = all.edge("pivot-bore-radius", "pivot bore from the axis", band.pivotRadius(), n, plate);
        boreAcross = all.edge("pivot-bore-across", "pivot bore, square to that", 0, n, plate);
        Fit pivot = spec.clearances().pivot();
        Fit drive = spec.clearances().drive();
        bore = all.add(pivot.hole().orElseThrow(), pivot.width());
        slotPlace = all.edge("slot-across", "slot, square to its length", 0, n, ring);
        slotWidth = all.add(drive.hole().orElseThrow(), drive.width());
        slotInner =
                all.edge("slot-inner-end", "inner end of the slot", design.rim().slotInner(), n, ring);
        slotOuter =
                all.edge("slot-outer-end", "outer end of the slot", design.rim().slotOuter(), n, ring);
        pivotPin = all.add(pivot.pin().orElseThrow(), pivot.nominal());
        drivePin = all.add(drive.pin().orElseThrow(), drive.nominal());
        double opening = design.rim().opening();
        plateOpening = all.edge("plate-opening-radius", "opening of base and retainer", opening, 2, plate);
        ringOpening = all.edge("ring-opening-radius", "opening of the ring", opening, 1, ring);
        cavity = all.edge(
                "cavity-radius", "wall of the blades' cavity", design.rim().cavity(), 1, spacer);
        wall = all.edge(
                "wall-radius", "wall in which the ring turns", design.rim().wall(), 1, spacer);
        Optional<PinionPlan> pinion = design.pinionPlan();
        rim = pinion.isPresent()
                ? -1
                : all.edge("rim-radius", "rim of the ring", design.rim().rim(), 1, ring);
        thickness = all.height("blade-thickness", "thickness of the blades", spec.thickness(), blade);
        cavityHeight = all.height(
                "cavity-height", "height of the cavity", design.stack().cavity(), spacer);
        double walls = design.stack().retainerBottom() - design.stack().ringBottom();
        wallHeight = all.height("wall-height", "height of the wall round the ring", walls, spacer);
        ringThickness = all.height(
                "ring-thickness", "thickness of the ring", design.stack().ringThickness(), ring);
        pivotLength = all.add(
                "pivot-pin-length",
                "pivot pins below their blades",
                design.stack().pivotPinDepth(),
                1,
                SizesOff.FILED,
                "filed to one gauge, common practice");
        driveLength = all.add(
                "drive-pin-length",
                "drive pins above their blades",
                design.stack().drivePinHeight(),
                1,
                SizesOff.FILED,
                "filed to one gauge, common practice");
        mesh = pinion.map(p -> MeshOff.outer(p.pair(), "", "pinion", "sector", plate, spec.gear(), ring, all));
        stepMesh = pinion.flatMap(PinionPlan::stepUp)
                .map(s -> MeshOff.outer(s.pair(), "step-", "gear", "wheel", plate, spec.gear(), spec.gear(), all));
    }
}
