// SPDX-License-Identifier: Apache-2.0
package ringleaf.mechanism.rack;

import java.util.List;
import ringleaf.machine.Fit;
import ringleaf.mechanism.AsBuilt;
import ringleaf.mechanism.SizesOff;
import ringleaf.tooth.RackPair;
import ringleaf.tooth.ToothForm;

/** A rack and its pinion as they come from the workshop: places, teeth, slots, pins and heights off. */
final class RackBuilt implements AsBuilt {
    private static final int PLATES = 2;

    private final RackLayout layout;
    private final RackSpec spec;
    private final SizesOff sizes = new SizesOff();
    private final int distance;
    private final int pinRow;
    private final int slotWidth;
    private final int slotPlace;
    private final int pin;
    private final int pinionTooth;
    private final int rackTooth;
    private final int pinionTip;
    private final int pinionRoot;
    private final int rackTip;
    private final int rackRoot;
    private final int spacer;
    private final int width;

    RackBuilt(RackLayout layout) {
        this.layout = layout;
        this.spec = layout.spec();
        ToothForm form = layout.pinion();
        double half = layout.pitch() / 2;
        distance = sizes.width(
                "slot-distance",
                "pinion's axis to the slots",
                layout.pair().mountingDistance() + layout.pinDepth(),
                1,
                spec.plate());
        pinRow = sizes.width("pin-row", "guide pins to the rack's teeth", layout.pinDepth(), 1, spec.gear());
        Fit guide = layout.guide();
        slotWidth = sizes.add(guide.hole().orElseThrow(), guide.width());
        slotPlace = sizes.edge("slot-place", "slots of one plate beside those of the other", 0, PLATES, spec.plate());
        pin = sizes.add(guide.pin().orElseThrow(), guide.nominal());
        pinionTooth = sizes.width("pinion-tooth", "thickness of the pinion's teeth", form.thickness(), 1, spec.gear());
        rackTooth = sizes.width(
                "rack-tooth", "thickness of the rack's teeth", half - layout.backlash() / 2, 1, spec.gear());
        pinionTip = sizes.edge("pinion-tip", "tip radius of the pinion", form.tipRadius(), 1, spec.gear());
        pinionRoot = sizes.edge("pinion-root", "root radius of the pinion", form.rootRadius(), 1, spec.gear());
        rackTip = sizes.edge("rack-tip", "tips of the rack", layout.pair().rackAddendum(), 1, spec.gear());
        rackRoot = sizes.edge("rack-root", "roots of the rack", layout.rootDepth(), 1, spec.gear());
        spacer =
                sizes.height("spacer-length", "length of the spacers", new RackPlates(layout).between(), spec.spacer());
        width = sizes.height("width", "thickness of the rack", spec.width(), spec.gear());
    }

    @Override
    public List<Deviation> deviations() {
        return sizes.all();
    }

    @Override
    public List<Limit> limits() {
        RackRooms rooms = spec.rooms();
        List<Relief> module = List.of(Relief.larger("module", layout.module(), 2.5 * layout.module()));
        return List.of(
                Limit.of(
                        "backlash",
                        "mm",
                        "the teeth have play, wherever the rack leans",
                        spec.backlashRoom(),
                        larger("backlash", layout.backlash())),
                Limit.of(
                        "tip-clearance",
                        "mm",
                        "tips stay off the roots, wherever the rack leans",
                        rooms.tips(layout.module(), spec.rack()),
                        module),
                new Limit("contact-ratio", "1", "a pair of teeth is always in contact", "", module),
                Limit.of(
                        "pin-in-slot",
                        "mm",
                        "both pins slide in the slots of both plates at once",
                        rooms.slot(),
                        larger("clearances.slot", rooms.slot().mm())),
                Limit.of(
                        "axial-play",
                        "mm",
                        "the plates do not press on the rack",
                        rooms.axial(),
                        larger("clearances.axial", rooms.axial().mm())));
    }

    private static List<Relief> larger(String field, double mm) {
        return List.of(Relief.larger(field, mm, 5));
    }

    @Override
    public Bench bench() {
        return this::margins;
    }

    private double[] margins(double[][] off) {
        double slide = slide(off);
        double lean = Math.max(
                0,
                spec.rooms().lean()
                        + Math.min(off[slotWidth][0], off[slotWidth][1]) / 2
                        - Math.max(off[pin][0], off[pin][1]) / 2);
        // How much nearer to the pinion the rack comes: places off, and its lean.
        double nearer = lean - off[distance][0] - off[pinRow][0];
        double slant = 2 * Math.tan(spec.rack().pressureAngle());
        double play = layout.backlash() - off[pinionTooth][0] - off[rackTooth][0] - slant * nearer;
        ToothForm form = layout.pinion();
        double apart = layout.pair().mountingDistance() - nearer;
        double tips = apart + layout.rootDepth() + off[rackRoot][0] - form.tipRadius() - off[pinionTip][0];
        double roots = apart - layout.pair().rackAddendum() - off[rackTip][0] - form.rootRadius() - off[pinionRoot][0];
        return new double[] {play, Math.min(tips, roots), contact(off, nearer - 2 * lean) - 1, slide, axial(off)};
    }

    /** Room of the tighter pin in the slots of both plates, which are one slot as seen along the axis. */
    private double slide(double[][] off) {
        double beside = Math.abs(off[slotPlace][0] - off[slotPlace][1]);
        return layout.guide()
                .play(Math.min(off[slotWidth][0], off[slotWidth][1]) - beside, Math.max(off[pin][0], off[pin][1]));
    }

    private double axial(double[][] off) {
        return new RackPlates(layout).between() - spec.width() + off[spacer][0] - off[width][0];
    }

    private double contact(double[][] off, double nearer) {
        ToothForm form = layout.pinion();
        try {
            ToothForm made = form.withTipRadius(form.tipRadius() + off[pinionTip][0]);
            // A rack that stands further off is as one with lower teeth.
            return new RackPair(made, layout.pair().rackAddendum() + off[rackTip][0] + nearer).ratio();
        } catch (IllegalArgumentException e) {
            return 0;
        }
    }

    @Override
    public List<String> assumptions() {
        return List.of(
                "All teeth of one part are off alike; the rack leans in its slots as far as they let it, at its worst for"
                        + " each limit.",
                "Guide pins that are not in line with the teeth turn the rack by so little that they do not notice.",
                "Not modelled: single teeth, bent bars, axles that are not square, wear.");
    }
}
