// SPDX-License-Identifier: Apache-2.0
package ringleaf.mechanism.rack;

import java.util.ArrayList;
import java.util.List;
import ringleaf.geom.Tolerance;
import ringleaf.machine.Room;
import ringleaf.part.Figure;
import ringleaf.part.Finding;
import ringleaf.part.Saying;
import ringleaf.tooth.GearOutline;
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
                .says("rack.mesh-at-stops"));
        spec.servo().ifPresent(servo -> {
            double r = layout.pinion().referenceRadius();
            int teeth = (int) Math.ceil(2 * layout.stroke() / servo.travel() / layout.module() - Finding.ROUNDING);
            boolean beyond = layout.travel() > servo.travel();
            found.add(Finding.of("servo-reaches")
                    .about("servo", servo.name())
                    .atMost(Math.toDegrees(layout.travel()), Math.toDegrees(servo.travel()), "deg")
                    .says(
                            "rack.servo-reaches",
                            beyond,
                            teeth,
                            Figure.number(Math.floor(10 * r * servo.travel()) / 10, 1)));
        });
        bound(
                "overall-length",
                plates.overallLength(),
                spec.overall().atMost().orElse(Double.NaN),
                Saying.of("rack.overall-length"));
        bound("depth", plates.depth(), spec.depth().atMost().orElse(Double.NaN), Saying.of("rack.depth"));
    }

    private void bound(String check, double measured, double most, Saying message) {
        if (!Double.isNaN(most)) {
            found.add(Finding.of(check)
                    .about("plates")
                    .atMost(measured, most, "mm")
                    .says(message));
        }
    }

    private void teeth() {
        ToothForm form = layout.pinion();
        found.add(Finding.of("undercut")
                .about(RackParts.PINION)
                .orWarn()
                .atLeast(form.shift(), form.leastShift(), "1")
                .says("rack.undercut"));
        double tip = form.tipThickness() / form.module();
        found.add(Finding.of("tip-thickness")
                .about(RackParts.PINION)
                .atLeast(tip, 0, ShiftChoice.LEAST_TIP, "1")
                .says("rack.tip-thickness"));
        double room = spec.body()
                .web(form.rootRadius(), GearOutline.of(form, Tolerance.CURVE).external());
        found.add(Finding.of("bore-web")
                .about(RackParts.PINION)
                .room(room, spec.gear().leastWeb(), "mm")
                .says("rack.bore-web", room < spec.gear().leastWeb()));
    }

    private void mesh() {
        double ratio = layout.pair().ratio();
        found.add(Finding.of("contact-ratio")
                .about(RackParts.PINION, RackParts.RACK)
                .atLeast(ratio, LEAST_RATIO, GOOD_RATIO, "1")
                .says("rack.contact-ratio"));
        double past = layout.pair().interference();
        found.add(Finding.of("interference")
                .about(RackParts.PINION, RackParts.RACK)
                .orWarn()
                .atMost(past, ROUNDED * layout.module(), "mm")
                .says("rack.interference", past > ROUNDED * layout.module()));
        Room tips = spec.rooms().tips(layout.module(), spec.rack());
        found.add(Finding.of("tip-clearance")
                .about(RackParts.PINION, RackParts.RACK)
                .room(layout.tipClearance(), tips.asked(), "mm")
                .says("rack.tip-clearance", Saying.plain(tips.how())));
        double taken = 2 * spec.rooms().lean() * Math.tan(spec.rack().pressureAngle());
        found.add(Finding.of("backlash")
                .about(RackParts.PINION, RackParts.RACK)
                .room(layout.backlash() - taken, 0, "mm")
                .says("rack.backlash", Figure.mm(taken)));
    }

    private void guide() {
        found.add(Finding.of("jamming")
                .about(RackParts.PIN)
                .at(Finding.Place.when("rack.wedged"))
                .atMost(layout.wedging(), 1, 0.5, "1")
                .says(
                        "rack.jamming",
                        Figure.number(spec.plate().friction(), 2),
                        Figure.mm(2 * layout.pinAt()),
                        Figure.mm(layout.arm())));
        double hold = plates.pinHold();
        found.add(Finding.of("pin-engagement")
                .about(RackParts.PIN)
                .room(hold, Math.min(layout.pin() / 2, plates.thickness() / 2), "mm")
                .says("rack.pin-engagement"));
    }

    private void stack() {
        double play = plates.between() - spec.width();
        found.add(Finding.of("axial-play")
                .about(RackParts.RACK)
                .room(play, spec.rooms().axial().mm(), "mm")
                .says("rack.axial-play"));
        if (play > MOST_AXIAL) {
            found.add(Finding.of("axial-play")
                    .about(RackParts.RACK)
                    .at(Finding.Place.when("rack.at-most"))
                    .orWarn()
                    .atMost(play, MOST_AXIAL, "mm")
                    .says("rack.tips"));
        }
        found.add(Finding.of("mesh-width")
                .about(RackParts.PINION, RackParts.RACK)
                .atLeast(plates.engaged() / spec.width(), ENGAGED, "1")
                .says("rack.mesh-width"));
        if (spec.servo().isPresent()) {
            found.add(Finding.of("servo-seat")
                    .about("servo", spec.servo().get().name())
                    .room(plates.belowPinion(), 0, "mm")
                    .says("rack.servo-seat"));
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
        spec.force()
                .ifPresent(asked -> found.add(Finding.of("rack-force")
                        .about(RackParts.RACK)
                        .atLeast(layout.rackForce(), asked, "N")
                        .says("rack.rack-force", spec.torque().isEmpty())));
        double stall = spec.torque().isPresent()
                ? layout.toothForce()
                : spec.servo().orElseThrow().torque() / layout.pinion().referenceRadius();
        LewisFactor lewis = LewisFactor.of(layout.pinion());
        double stress = lewis.stress(stall, plates.engaged(), layout.module());
        double strength = spec.gear().stiffness() * spec.gear().elasticStrain();
        found.add(Finding.of("bending")
                .about(RackParts.PINION)
                .atMost(stress / strength, 1, 1 / SAFETY, "1")
                .says(
                        "rack.bending",
                        spec.gear().stock(),
                        Figure.number(stress, 1),
                        Figure.number(strength, 1),
                        Figure.number(stall, 1)));
    }
}
