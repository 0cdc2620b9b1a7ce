// SPDX-License-Identifier: Apache-2.0
package ringleaf.mechanism.belt;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import ringleaf.mechanism.BodyName;
import ringleaf.mechanism.Decision;
import ringleaf.mechanism.Kind;
import ringleaf.mechanism.Request;
import ringleaf.mechanism.Trial;
import ringleaf.part.Choice;
import ringleaf.part.Design;
import ringleaf.part.Dimension;
import ringleaf.part.Finding;
import ringleaf.part.MotionTable;
import ringleaf.part.Part;
import ringleaf.spec.field.FieldSet;
import ringleaf.spec.field.Values;

/** The kind {@code belt-drive}: two timing pulleys or more, the belt round them, and the plates that hold them. */
public final class BeltDrive implements Kind {
    public static final String NAME = "belt-drive";

    @Override
    public String name() {
        return NAME;
    }

    @Override
    public String summary() {
        return "a timing belt round two pulleys or more, with a stocked belt and its exact centre distance";
    }

    @Override
    public FieldSet fields() {
        return DriveFields.ALL;
    }

    @Override
    public List<String> headline() {
        return List.of(
                "belt",
                "belt-teeth",
                "belt-length",
                "belt-width",
                "ratio",
                "centre-distance",
                "driver-teeth",
                "driven-teeth",
                "driver-outside-diameter",
                "driven-outside-diameter",
                "depth");
    }

    /** What can be moved or made wider. */
    @Override
    public List<Decision> decisions() {
        return List.of(
                Decision.numbers("idler.along", 0.5, 0.4, 0.6, 0.3),
                Decision.among("idler.side", "inside", "outside"),
                Decision.mm("belt-width", 6, 9, 10, 15, 16),
                Decision.mm("plate-thickness", 3, 4, 5, 2),
                Decision.among("screw", "M3", "M2.5", "M4", "M2"),
                Decision.mm("clearances.axial", 0.5, 0.8));
    }

    @Override
    public List<String> weighed() {
        return List.of("centre-distance", "depth", "ratio-error", "parts");
    }

    @Override
    public List<String> compared() {
        return List.of("belt-teeth", "shaft-pull", "driver-teeth-in-mesh");
    }

    @Override
    public List<BodyName> bodies() {
        return List.of(
                BodyName.frame("the plates"),
                new BodyName("driver", "the driving pulley"),
                new BodyName("driven", "the driven pulley"));
    }

    @Override
    public Planned read(Request request) {
        DriveReader.Read read = new DriveReader(request).read();
        if (read == null) {
            return states -> {
                throw new IllegalStateException("a refused drive is not designed");
            };
        }
        DrivePlan plan = new DrivePlan(read.spec(), read.search());
        return new PlannedBelt(plan, request.values());
    }

    static Design design(DrivePlan plan, Values values, int states) {
        DriveAssembly assembly = new DriveAssembly(plan, states);
        DriveRoom room = DriveRoom.of(plan.spec(), plan.layout());
        DriveDimensions dimensions = new DriveDimensions(plan, assembly.plates(), values);
        List<Finding> findings = DriveChecks.of(plan, room, assembly.plates());
        List<Part> parts = assembly.parts();
        return new Design(
                plan.spec().name(),
                NAME,
                dimensions.choices(),
                dimensions.all(),
                parts,
                assembly.assembly(),
                table(plan, assembly.motion(), room),
                findings,
                travel(plan, assembly.motion()),
                DriveRemedies.of(plan, findings),
                assembly.fits());
    }

    /** The same design tried, with further figures behind its own. */
    static Trial trial(DrivePlan plan, Values values, List<Dimension> more) {
        DriveAssembly assembly = new DriveAssembly(plan, 2);
        DriveDimensions dimensions = new DriveDimensions(plan, assembly.plates(), values);
        DriveRoom room = DriveRoom.of(plan.spec(), plan.layout());
        List<Choice> choices = dimensions.choices();
        List<Dimension> all = new ArrayList<>(dimensions.all());
        all.addAll(more);
        return new TriedBelt(choices, all, DriveChecks.of(plan, room, assembly.plates()), assembly);
    }

    private static MotionTable table(DrivePlan plan, BeltMotion motion, DriveRoom room) {
        List<double[]> rows = new ArrayList<>();
        List<String> places = new ArrayList<>();
        double torque = plan.driverTorque() * plan.spec().ratio() * DrivePlan.EFFICIENCY;
        List<String> columns =
                new ArrayList<>(List.of("driver_deg", "driven_deg", "belt_travel", "driven_torque", "clearance"));
        boolean servo = plan.spec().servo().isPresent();
        if (servo) {
            columns.add(0, "servo_deg");
        }
        for (int i = 0; i < motion.states(); i++) {
            double driver = Math.toDegrees(motion.turn(0, i));
            double driven = Math.toDegrees(motion.turn(plan.layout().driven(), i));
            double clearance = room.least().distance();
            rows.add(
                    servo
                            ? new double[] {Math.abs(driver), driver, driven, motion.run(i), torque, clearance}
                            : new double[] {driver, driven, motion.run(i), torque, clearance});
            places.add(room.least().words());
        }
        return new MotionTable(columns, rows, "clearance_at", places);
    }

    private static Map<String, Double> travel(DrivePlan plan, BeltMotion motion) {
        Map<String, Double> travel = new LinkedHashMap<>();
        travel.put("states", (double) motion.states());
        travel.put("driven", Math.toDegrees(plan.travel()));
        travel.put("driver", Math.toDegrees(plan.driverTravel()));
        travel.put("belt", motion.travel());
        plan.spec().servo().ifPresent(servo -> travel.put("servo", Math.toDegrees(servo.travel())));
        return travel;
    }
}
