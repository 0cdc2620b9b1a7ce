// SPDX-License-Identifier: Apache-2.0
package ringleaf.mechanism.rack;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import ringleaf.machine.Joints;
import ringleaf.machine.Members;
import ringleaf.mechanism.AsBuilt;
import ringleaf.mechanism.Kind;
import ringleaf.mechanism.Memo;
import ringleaf.mechanism.ServoLaw;
import ringleaf.mechanism.Trial;
import ringleaf.part.Assembly;
import ringleaf.part.Design;

/** A rack that was read and solved, and what can be asked of it. */
record PlannedRack(RackLayout layout) implements Kind.Planned {
    @Override
    public Design design(int states) {
        RackSpec spec = layout.spec();
        RackPlates plates = new RackPlates(layout);
        RackParts parts = new RackParts(layout, plates);
        RackMotion motion = new RackMotion(layout, states);
        Members members = parts.members();
        Joints joints = RackJoints.of(layout, plates, members);
        Assembly assembly = new RackAssembly(layout, plates, members, joints, motion).assemble();
        RackDimensions dimensions = new RackDimensions(layout, plates);
        return new Design(
                spec.name(),
                RackAndPinion.NAME,
                dimensions.choices(),
                dimensions.withDeviation(parts.deviation()),
                parts.parts(members),
                assembly,
                motion.table(),
                new RackChecks(layout).all(),
                travel(states),
                List.of(),
                joints.rows());
    }

    @Override
    public Trial trial(int states, Memo memo) {
        return new RackTrial(layout);
    }

    private Map<String, Double> travel(int states) {
        Map<String, Double> travel = new LinkedHashMap<>();
        travel.put("states", (double) states);
        travel.put("rack", layout.stroke());
        travel.put("pinion", Math.toDegrees(layout.travel()));
        layout.spec().servo().ifPresent(servo -> travel.put("servo", Math.toDegrees(servo.travel())));
        return travel;
    }

    @Override
    public Optional<ServoLaw> servoLaw() {
        return layout.spec().servo().map(servo -> new RackLaw(layout, servo));
    }

    @Override
    public String servoHint() {
        return "drive: {servo: micro-180}";
    }

    @Override
    public Optional<AsBuilt> asBuilt() {
        return Optional.of(new RackBuilt(layout));
    }
}
