// SPDX-License-Identifier: Apache-2.0
package ringleaf.mechanism.slide;

import java.util.List;
import ringleaf.linkage.SliderCrank;
import ringleaf.mechanism.AsBuilt;
import ringleaf.mechanism.SizesOff;

/** A slide as it comes from the workshop: horn, link, bridge, side plate and pins off. */
final class SlideBuilt implements AsBuilt {
    private final SlideLayout layout;
    private final SlideSpec spec;
    private final SizesOff sizes = new SizesOff();
    private final int arm;
    private final int link;
    private final int tongue;
    private final int axis;
    private final int side;
    private final int bore;
    private final int pin;

    SlideBuilt(SlideLayout layout) {
        this.layout = layout;
        this.spec = layout.spec();
        arm = sizes.width("arm", "horn's axis to its pin", layout.arm(), 1, spec.plate());
        link = sizes.width("link", "between both bores of the link", layout.link(), 1, spec.plate());
        tongue = sizes.width(
                "bridge", "pin of the bridge to the carriage's ends", layout.carriage() / 2, 1, spec.plate());
        axis = sizes.width(
                "servo-place", "servo's axis to the rear end plate", layout.axisAt() - layout.rear(), 1, spec.plate());
        side = sizes.width(
                "side-length", "side plate between the end plates", layout.front() - layout.rear(), 1, spec.plate());
        bore = sizes.add(spec.pivot().hole().orElseThrow(), spec.pivot().width());
        pin = sizes.add(spec.pivot().pin().orElseThrow(), spec.pin());
    }

    @Override
    public List<Deviation> deviations() {
        return sizes.all();
    }

    @Override
    public List<Limit> limits() {
        List<Relief> stop = List.of(Relief.larger("clearances.stop", spec.stop().mm(), 50));
        return List.of(
                Limit.of("stop-in", "mm", "the carriage is drawn in without meeting the rear plate", spec.stop(), stop),
                Limit.of("stop-out", "mm", "it comes out without meeting the front plate", spec.stop(), stop),
                Limit.of(
                        "pin-clearance",
                        "mm",
                        "both pins turn in the link",
                        spec.pivot().room(),
                        List.of(Relief.larger(
                                "clearances.pivot", spec.pivot().room().mm(), 3))));
    }

    @Override
    public Bench bench() {
        return this::margins;
    }

    private double[] margins(double[][] off) {
        double from = layout.axisAt() + off[axis][0];
        SliderCrank made = new SliderCrank(
                layout.arm() + off[arm][0],
                layout.link() + off[link][0],
                layout.crank().offset());
        double play = Math.min(
                spec.pivot().play(off[bore][0], off[pin][0]), spec.pivot().play(off[bore][1], off[pin][1]));
        double half = layout.carriage() / 2 + off[tongue][0];
        double in = from + made.position(layout.startAngle()) - half - layout.rear();
        double out = layout.front() + off[side][0] - (from + made.position(layout.angle(1)) + half);
        return new double[] {in, out, play};
    }

    @Override
    public List<String> assumptions() {
        return List.of(
                "The rods are glued or pressed in while the carriage stands on them, so that they run parallel.",
                "The servo stands at both ends of its swing as its table says; set its zero on the finished slide.",
                "Not modelled: bent rods, plates that are not square, wear.");
    }
}
