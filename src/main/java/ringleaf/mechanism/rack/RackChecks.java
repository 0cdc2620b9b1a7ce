// SPDX-License-Identifier: Apache-2.0
package ringleaf.mechanism.rack;

import java.util.ArrayList;
import java.util.List;
import ringleaf.mechanism.Room;
import ringleaf.part.Finding;
import ringleaf.part.Words;
import ringleaf.tooth.LewisFactor;
import ringleaf.tooth.ShiftChoice;
import ringleaf.tooth.ToothForm;

/** Checks of a rack and its pinion by the relations of the basic rack, of statics and of the stack of plates. */
final class RackChecks {
    /** Least contact ratio that runs on without a gap, and the one below which it is poor; common practice. */
    private static final double LEAST_RATIO = 1;

    private static final double GOOD_RATIO = 1.2;
    /** The standard's root radius of 0.38 modules takes this much of the involute, in modules: it is rounded itself. */
    private static final double ROUNDED = 5e-4;
    /** More axial play than this lets the rack tip, mm; common practice, no source. */
    private static final double MOST_AXIAL = 0.6;
    /** Share of the strength of a tooth that is to be kept in reserve; common practice, no source. */
    private static final double SAFETY = 2;
    /** Share of the teeth's width that has to lie beside each other; common practice, no source. */
    private static final double ENGAGED = 0.75;

    private final RackLayout layout;
    private final RackSpec spec;
    private final RackPlates plates;
    private final List<Finding> found = new ArrayList<>();

    RackChecks(RackLayout layout) {
        this.layout = layout;
        this.spec = layout.spec();
        this.plates = new RackPlates(layout);
    }

    List<Finding> all() {
        travel();
        teeth();
        mesh();
        guide();
        stack();
        bought();
        load();
        return found;
    }

    private void travel() {
        found.add(Finding.of("mesh-at-stops")
                .about(RackParts.RACK)
                .atLeast(layout.spareTeeth(), spec.spare(), "1")
                .inWords(
                        "teeth of the rack beyond all that can meet the pinion, with a guide pin at the end of its slot; a"
                                + " longer rack or a shorter stroke leaves more"));
        spec.servo().ifPresent(servo -> {
            double r = layout.pinion().referenceRadius();
            int teeth = (int) Math.ceil(2 * layout.stroke() / servo.travel() / layout.module() - Finding.ROUNDING);
            boolean beyond = layout.travel() > servo.travel();
            found.add(Finding.of("servo-reaches")
                    .about("servo", servo.name())
                    .atMost(Math.toDegrees(layout.travel()), Math.toDegrees(servo.travel()), "deg")
                    .inWords("turn of the pinion over the stroke, of the servo's travel"
                            + (beyond
                                    ? "; pinion.teeth: " + teeth + " would reach, or stroke: "
                                            + Words.number(Math.floor(10 * r * servo.travel()) / 10, 1) + "mm"
                                    : "")));
        });
        bound(
                "overall-length",
                plates.overallLength(),
                spec.overall().atMost().orElse(Double.NaN),
                "plates, and the rack out of them");
        bound("depth", plates.depth(), spec.depth().atMost().orElse(Double.NaN), "front to back of the plates");
    }

    private void bound(String check, double measured, double most, String message) {
        if (!Double.isNaN(most)) {
            found.add(Finding.of(check)
                    .about("plates")
                    .atMost(measured, most, "mm")
                    .inWords(message));
        }
    }

    private void teeth() {
        ToothForm form = layout.pinion();
        found.add(Finding.of("undercut")
                .about(RackParts.PINION)
                .orWarn()
                .atLeast(form.shift(), form.leastShift(), "1")
                .inWords("profile shift, of the least that keeps the roots from being undercut"));
        double tip = form.tipThickness() / form.module();
        found.add(Finding.of("tip-thickness")
                .about(RackParts.PINION)
                .atLeast(tip, 0, ShiftChoice.LEAST_TIP, "1")
                .inWords("width of a tooth's tip in modules"));
        double room = form.rootRadius() - spec.body().hubReach();
        found.add(Finding.of("bore-web")
                .about(RackParts.PINION)
                .room(room, spec.gear().leastWeb(), "mm")
                .inWords("material from bore or hub screws to the root circle"
                        + (room < spec.gear().leastWeb()
                                ? "; more teeth, a larger module or another bore leaves more"
                                : "")));
    }

    private void mesh() {
        double ratio = layout.pair().ratio();
        found.add(Finding.of("contact-ratio")
                .about(RackParts.PINION, RackParts.RACK)
                .atLeast(ratio, LEAST_RATIO, GOOD_RATIO, "1")
                .inWords("pairs of teeth in contact on average"));
        double past = layout.pair().interference();
        found.add(Finding.of("interference")
                .about(RackParts.PINION, RackParts.RACK)
                .orWarn()
                .atMost(past, ROUNDED * layout.module(), "mm")
                .inWords(
                        past > ROUNDED * layout.module()
                                ? "the rack's tips reach below the involute; more teeth or profile shift clear it"
                                : "how far the rack's tips reach past the end of the involute"));
        Room tips = spec.rooms().tips(layout.module(), spec.rack());
        found.add(Finding.of("tip-clearance")
                .about(RackParts.PINION, RackParts.RACK)
                .room(layout.tipClearance(), tips.asked(), "mm")
                .inWords("room between tips and roots, of what the rack's lean takes and the processes ask for: "
                        + tips.how()));
        double taken = 2 * spec.rooms().lean() * Math.tan(spec.rack().pressureAngle());
        found.add(Finding.of("backlash")
                .about(RackParts.PINION, RackParts.RACK)
                .room(layout.backlash() - taken, 0, "mm")
                .inWords("play of the teeth that is left when the rack leans towards the pinion, which takes "
                        + Words.mm(taken)));
    }

    private void guide() {
        found.add(Finding.of("jamming")
                .about(RackParts.PIN)
                .at(Finding.Place.state(-1, "both pins wedged by the push of the teeth"))
                .atMost(layout.wedging(), 1, 0.5, "1")
                .inWords("2 mu e / L with " + Words.number(spec.plate().friction(), 2) + " for the friction, pins "
                        + Words.mm(2 * layout.pinAt()) + " apart and teeth that push " + Words.mm(layout.arm())
                        + " beside them; at 1 the rack cannot be moved, pins further apart help"));
        double hold = plates.pinHold();
        found.add(Finding.of("pin-engagement")
                .about(RackParts.PIN)
                .room(hold, Math.min(layout.pin() / 2, plates.thickness() / 2), "mm")
                .inWords("length of a guide pin within either plate"));
    }

    private void stack() {
        double play = plates.between() - spec.width();
        found.add(Finding.of("axial-play")
                .about(RackParts.RACK)
                .room(play, spec.rooms().axial().mm(), "mm")
                .inWords("room of the rack between both plates"));
        if (play > MOST_AXIAL) {
            found.add(Finding.of("axial-play")
                    .about(RackParts.RACK)
                    .at(Finding.Place.state(-1, "at most"))
                    .orWarn()
                    .atMost(play, MOST_AXIAL, "mm")
                    .inWords("a rack with more play tips; spacers printed to height, or of another sheet, leave less"));
        }
        found.add(Finding.of("mesh-width")
                .about(RackParts.PINION, RackParts.RACK)
                .atLeast(plates.engaged() / spec.width(), ENGAGED, "1")
                .inWords("share of the teeth's width that lies beside each other"));
        if (spec.servo().isPresent()) {
            found.add(Finding.of("servo-seat")
                    .about("servo", spec.servo().get().name())
                    .room(plates.belowPinion(), 0, "mm")
                    .inWords("room between the base and the pinion on the servo's horn; a thinner base makes more"));
        }
    }

    /** Whether pins, axle and screws can be bought, and these reach. */
    private void bought() {
        if (plates.dowel().isEmpty()) {
            found.add(spec.hardware().rod(RackParts.PIN, layout.pin()).isSold());
        }
        if (spec.axle() > 0) {
            found.add(spec.hardware().rod(RackParts.AXLE, spec.axle()).isSold());
        }
        found.add(plates.screw().reaches());
        plates.servoScrew().ifPresent(bolt -> found.add(bolt.reaches()));
    }

    private void load() {
        if (spec.working().isEmpty()) {
            return;
        }
        String share = spec.torque().isPresent() ? "" : ", half of what stalls the servo at work";
        spec.force()
                .ifPresent(
                        asked -> found.add(
                                Finding.of("rack-force")
                                        .about(RackParts.RACK)
                                        .atLeast(layout.rackForce(), asked, "N")
                                        .inWords(
                                                "push of the rack from the torque at the pinion" + share
                                                        + ", less the friction of both pins; friction figures differ by half, weight is not counted")));
        double stall = spec.torque().isPresent()
                ? layout.toothForce()
                : spec.servo().orElseThrow().torque() / layout.pinion().referenceRadius();
        LewisFactor lewis = LewisFactor.of(layout.pinion());
        double stress = lewis.stress(stall, plates.engaged(), layout.module());
        double strength = spec.gear().stiffness() * spec.gear().elasticStrain();
        found.add(Finding.of("bending")
                .about(RackParts.PINION)
                .atMost(stress / strength, 1, 1 / SAFETY, "1")
                .inWords("bending stress of a tooth as a share of the strength of "
                        + spec.gear().stock() + ": "
                        + Words.number(stress, 1) + " of " + Words.number(strength, 1) + " MPa under "
                        + Words.number(stall, 1) + " N on its tip (Lewis, from the outline), with the drive at stall"));
    }
}
