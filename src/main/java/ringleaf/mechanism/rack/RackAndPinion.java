// SPDX-License-Identifier: Apache-2.0
package ringleaf.mechanism.rack;

import java.util.List;
import ringleaf.mechanism.BodyName;
import ringleaf.mechanism.Decision;
import ringleaf.mechanism.Kind;
import ringleaf.mechanism.Request;
import ringleaf.spec.field.FieldSet;

/** The kind {@code rack}: a rack that slides between two plates, moved by a pinion. */
public final class RackAndPinion implements Kind {
    public static final String NAME = "rack";

    @Override
    public String name() {
        return NAME;
    }

    @Override
    public String summary() {
        return "a rack that slides in slotted plates, moved by a pinion on a servo or an axle, solved from the stroke";
    }

    @Override
    public FieldSet fields() {
        return RackFields.ALL;
    }

    @Override
    public List<String> headline() {
        return List.of(
                "stroke",
                "rack-length",
                "module",
                "pinion-teeth",
                "mounting-distance",
                "overall-length",
                "overall-width",
                "depth");
    }

    /** What costs only room; module, teeth and pins are searched with each of them. */
    @Override
    public List<Decision> decisions() {
        return List.of(
                Decision.mm("width", 4, 5, 6, 8, 10, 12, 3),
                Decision.mm("plate-thickness", 3, 4, 5, 2),
                Decision.numbers("spare-teeth", 2, 0, 3),
                Decision.among("screw", "M2.5", "M3", "M4", "M2"),
                Decision.numbers("pressure-angle", 25));
    }

    @Override
    public List<String> weighed() {
        return List.of("overall-length", "overall-width", "depth");
    }

    @Override
    public List<String> compared() {
        return List.of("stroke", "module", "pinion-teeth", "rack-force");
    }

    @Override
    public double[] sold(String field) {
        return field.equals("guide.pin-diameter") ? RackSearch.dowels() : new double[0];
    }

    @Override
    public List<BodyName> bodies() {
        return List.of(
                BodyName.frame("the plates"),
                new BodyName("rack", "the rack, which slides"),
                new BodyName("pinion", "the pinion"));
    }

    @Override
    public Planned read(Request request) {
        return new RackReader(request).read();
    }
}
