// SPDX-License-Identifier: Apache-2.0
package ringleaf.mechanism.gear;

import java.util.List;
import java.util.Optional;
import ringleaf.mechanism.Material;
import ringleaf.mechanism.Request;
import ringleaf.spec.field.Values;
import ringleaf.spec.text.Problems;

/** From the values of a {@code gear-pair} to a train of one stage. */
final class PairReader {
    private final Request request;
    private final Values values;
    private final Problems problems;
    /** Problems of mechanisms before this one, which do not keep its own from being told. */
    private final int earlier;

    private final SharedReader shared;
    private final boolean proposes;

    PairReader(Request request) {
        this(request, true);
    }

    /** For a trial, which proposes nothing itself. */
    private PairReader(Request request, boolean proposes) {
        this.proposes = proposes;
        this.request = request;
        this.values = request.values();
        this.problems = request.problems();
        this.earlier = problems.count();
        this.shared = new SharedReader(request);
    }

    /** The pair; null when problems were found. */
    TrainSpec read() {
        Material material = shared.material();
        DriveData drive = shared.drive();
        Values driver = SharedReader.group(values, GearFields.DRIVER, GearFields.WHEEL);
        Values driven = SharedReader.group(values, GearFields.DRIVEN, GearFields.WHEEL);
        List<Values> places = List.of(values, driver, driven);
        PairAsk ask = ask(driver, driven, places, material);
        // What follows is looked at whatever is wrong so far, so that one run tells it all.
        Optional<StageSpec> stage = new StageReader(request, material, driver, driven)
                .read(
                        ask,
                        new StageReader.Where(
                                values.where(GearFields.RATIO),
                                values.where(GearFields.CENTRE_DISTANCE),
                                values.where(GearFields.BACKLASH),
                                shared.where(GearFields.MODULE, places)),
                        values.require(GearFields.AT),
                        drive.servo());
        if (stage.isEmpty()) {
            return null;
        }
        double travel = travel(stage.get(), drive);
        if (problems.count() > earlier) {
            return null;
        }
        StageSpec decided = stage.get()
                .withDriver(SectorPlan.decided(
                        stage.get().driver(), new SectorPlan(stage.get().mesh(), true), travel))
                .withDriven(SectorPlan.decided(
                        stage.get().driven(), new SectorPlan(stage.get().mesh(), false), travel));
        return new TrainSpec(
                request.name(),
                PairOfGears.NAME,
                List.of(decided),
                material,
                shared.width(material),
                0,
                travel,
                values.require(GearFields.MARKS),
                drive,
                SharedReader.open(values, GearFields.RATIO),
                values.get(GearFields.RATIO_WITHIN).orElse(0.0),
                ask.overall(),
                SharedReader.given(values),
                List.of(),
                proposes ? new Tryout(request, changed -> new PairReader(changed, false).read()) : Tryout.NONE);
    }

    private PairAsk ask(Values driver, Values driven, List<Values> places, Material material) {
        return new PairAsk(
                SharedReader.open(values, GearFields.RATIO),
                values.get(GearFields.RATIO_WITHIN).orElse(0.0),
                SharedReader.count(driver, GearFields.TEETH),
                SharedReader.count(driven, GearFields.TEETH),
                shared.module(places),
                values.bound(GearFields.CENTRE_DISTANCE),
                shared.overall(),
                values.require(GearFields.INTERNAL),
                shared.rack(places),
                SharedReader.open(driver, GearFields.PROFILE_SHIFT),
                SharedReader.open(driven, GearFields.PROFILE_SHIFT),
                SharedReader.open(values, GearFields.BACKLASH),
                new MeshRoom(material),
                values.require(GearFields.TIPS).equals("full"),
                material.leastWeb(),
                SharedReader.open(driven, GearFields.RING_DIAMETER));
    }

    private double travel(StageSpec stage, DriveData drive) {
        Optional<Double> given = values.given(GearFields.TRAVEL);
        if (given.isPresent()) {
            return given.get();
        }
        double bySector = Double.POSITIVE_INFINITY;
        if (stage.driver().sector().isPresent()) {
            bySector = bySector(stage.driver(), new SectorPlan(stage.mesh(), true));
        }
        if (stage.driven().sector().isPresent()) {
            bySector = Math.min(bySector, bySector(stage.driven(), new SectorPlan(stage.mesh(), false)));
        }
        if (drive.servo().isPresent()) {
            return drive.servo().get().travel();
        }
        return Double.isInfinite(bySector) ? stage.mesh().driver().pitchAngle() : bySector;
    }

    private double bySector(WheelSpec wheel, SectorPlan plan) {
        if (wheel.sector().orElseThrow().teeth().isPresent()) {
            return plan.travel(wheel.sector().get().teeth().getAsInt(), SectorPlan.SPARE);
        }
        if (!values.isGiven(GearFields.DRIVE)) {
            problems.at(
                    values.where(GearFields.TRAVEL),
                    "is missing: a sector whose teeth are open is cut for a travel",
                    "give travel, the sector's teeth, or a servo");
        }
        return plan.mesh().driver().pitchAngle();
    }
}
