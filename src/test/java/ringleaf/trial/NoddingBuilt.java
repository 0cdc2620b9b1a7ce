// SPDX-License-Identifier: Apache-2.0
package ringleaf.trial;

import java.util.List;
import ringleaf.mechanism.AsBuilt;
import ringleaf.mechanism.Material;
import ringleaf.mechanism.SizesOff;

/** Pin and bore as they come from the workshop, mm. */
final class NoddingBuilt implements AsBuilt {
    private final double play;
    private final SizesOff sizes = new SizesOff();
    private final int pin;
    private final int bore;

    NoddingBuilt(double pin, double bore, Material material) {
        this.play = bore - pin;
        this.pin = sizes.add("pin-diameter", "diameter of the pin", pin, 1, SizesOff.WIRE, "drawn, common practice");
        this.bore = sizes.width("arm-bore", "bore of the arm", bore, 1, material);
    }

    @Override
    public List<Deviation> deviations() {
        return sizes.all();
    }

    @Override
    public List<Limit> limits() {
        return List.of(new Limit("pin-in-bore", "mm", "the arm turns on its pin"));
    }

    @Override
    public Bench bench() {
        return off -> new double[] {play + off[bore][0] - off[pin][0]};
    }

    @Override
    public List<String> assumptions() {
        return List.of("Not modelled: wear.");
    }
}
