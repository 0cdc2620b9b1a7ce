// SPDX-License-Identifier: Apache-2.0
package ringleaf.mechanism.gear;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import ringleaf.mechanism.Material;
import ringleaf.mechanism.Request;
import ringleaf.mechanism.body.BodyFields;
import ringleaf.mechanism.body.BodyReader;
import ringleaf.part.Words;
import ringleaf.spec.field.Bound;
import ringleaf.spec.field.Values;
import ringleaf.spec.shared.Servo;
import ringleaf.spec.text.Problems;
import ringleaf.tooth.BasicRack;

/** From the values of a {@code gear-train} to its stages, written out or shared out evenly. */
final class TrainReader {
    private final Request request;
    private final Values values;
    private final Problems problems;
    /** Problems of mechanisms before this one, which do not keep its own from being told. */
    private final int earlier;

    private final SharedReader shared;
    private final boolean proposes;

    TrainReader(Request request) {
        this(request, true);
    }

    /** For a trial, which proposes nothing itself. */
    private TrainReader(Request request, boolean proposes) {
        this.proposes = proposes;
        this.request = request;
        this.values = request.values();
        this.problems = request.problems();
        this.earlier = problems.count();
        this.shared = new SharedReader(request);
    }

    /** The train; null when problems were found. */
    TrainSpec read() {
        Material material = shared.material();
        DriveData drive = shared.drive();
        Optional<List<Values>> written = values.given(GearFields.STAGES);
        OptionalDouble overall = shared.overall();
        SplitReader.Split split = written.isPresent()
                ? new SplitReader.Split(written(written.get(), material, drive.servo()), List.of())
                : split(material, drive.servo(), overall);
        List<StageSpec> stages = split.stages();
        if (problems.count() > earlier || stages.isEmpty()) {
            return null;
        }
        // A sheet is stacked in whole sheets, so the gap between two stages is one of them.
        double usualGap = material.sheet() ? material.thickness() : values.require(GearFields.GAP);
        double pitch = stages.get(0).mesh().driver().pitchAngle();
        double travel = values.given(GearFields.TRAVEL)
                .orElse(drive.servo().map(Servo::travel).orElse(pitch));
        return new TrainSpec(
                request.name(),
                TrainOfGears.NAME,
                decided(stages, travel),
                material,
                shared.width(material),
                values.isGiven(GearFields.GAP) ? values.require(GearFields.GAP) : usualGap,
                travel,
                values.require(GearFields.MARKS),
                drive,
                SharedReader.open(values, GearFields.RATIO),
                values.get(GearFields.RATIO_WITHIN).orElse(0.0),
                overall,
                SharedReader.given(values),
                split.others(),
                proposes ? new Tryout(request, changed -> new TrainReader(changed, false).read()) : Tryout.NONE);
    }

    private SplitReader.Split split(Material material, Optional<Servo> servo, OptionalDouble overall) {
        BasicRack rack = shared.rack(List.of(values));
        return new SplitReader(
                        request,
                        material,
                        servo,
                        overall,
                        (teeth, module) -> ask(
                                OptionalDouble.empty(),
                                OptionalInt.of(teeth.driver()),
                                OptionalInt.of(teeth.driven()),
                                OptionalDouble.of(module),
                                rack,
                                material))
                .read();
    }

    private static List<StageSpec> decided(List<StageSpec> stages, double travel) {
        List<StageSpec> decided = new ArrayList<>();
        double turn = travel;
        for (StageSpec stage : stages) {
            decided.add(stage.withDriver(SectorPlan.decided(stage.driver(), new SectorPlan(stage.mesh(), true), turn))
                    .withDriven(SectorPlan.decided(stage.driven(), new SectorPlan(stage.mesh(), false), turn)));
            turn /= stage.mesh().ratio();
        }
        return decided;
    }

    private List<StageSpec> written(List<Values> written, Material material, Optional<Servo> servo) {
        List<StageSpec> stages = new ArrayList<>();
        double at = values.require(GearFields.AT);
        if (values.isGiven(GearFields.STAGE_COUNT)) {
            problems.at(
                    values.where(GearFields.STAGE_COUNT),
                    "has no meaning where the stages are written out",
                    "leave it out");
        }
        List<Values[]> wheels = wheels(written);
        for (int i = 0; i < written.size(); i++) {
            Values stage = written.get(i);
            Values driver = wheels.get(i)[0];
            Values driven = wheels.get(i)[1];
            List<Values> own = List.of(stage, driver, driven);
            OptionalDouble module = shared.module(own);
            at = stage.given(GearFields.STAGE_AT).orElse(at);
            boolean ownAngle = false;
            for (Values place : own) {
                ownAngle |= place.isGiven(GearFields.PRESSURE_ANGLE);
            }
            PairAsk ask = ask(
                    SharedReader.open(stage, GearFields.RATIO),
                    SharedReader.count(driver, GearFields.TEETH),
                    SharedReader.count(driven, GearFields.TEETH),
                    module.isPresent() ? module : SharedReader.open(values, GearFields.MODULE),
                    shared.rack(ownAngle ? own : List.of(values)),
                    material);
            ask = ask.withCentreDistance(stage.bound(GearFields.CENTRE_DISTANCE))
                    .withShifts(
                            SharedReader.open(driver, GearFields.PROFILE_SHIFT),
                            SharedReader.open(driven, GearFields.PROFILE_SHIFT));
            if (stage.isGiven(GearFields.BACKLASH)) {
                ask = ask.withBacklash(stage.require(GearFields.BACKLASH));
            }
            new StageReader(request, material, driver, driven)
                    .read(
                            ask,
                            new StageReader.Where(
                                    stage.where(GearFields.RATIO),
                                    stage.where(GearFields.CENTRE_DISTANCE),
                                    (stage.isGiven(GearFields.BACKLASH) ? stage : values).where(GearFields.BACKLASH),
                                    module.isPresent()
                                            ? shared.where(GearFields.MODULE, own)
                                            : values.where(GearFields.MODULE)),
                            at,
                            stages.isEmpty() ? servo : Optional.empty())
                    .ifPresent(stages::add);
        }
        if (stages.size() == written.size()) {
            lightened(wheels, stages, material);
        }
        if (stages.size() == written.size()) {
            total(stages);
        }
        return stages;
    }

    /** Driver and driven gear of every stage; the two gears of a shaft have one bore, whichever of them states it. */
    private List<Values[]> wheels(List<Values> written) {
        List<Values[]> wheels = new ArrayList<>();
        for (Values stage : written) {
            wheels.add(new Values[] {
                SharedReader.group(stage, GearFields.DRIVER, GearFields.WHEEL),
                SharedReader.group(stage, GearFields.DRIVEN, GearFields.WHEEL)
            });
        }
        for (int i = 1; i < wheels.size(); i++) {
            Optional<Values> below = wheels.get(i - 1)[1].given(BodyFields.BORE);
            Optional<Values> above = wheels.get(i)[0].given(BodyFields.BORE);
            if (below.isPresent() && above.isPresent()) {
                problems.at(
                        wheels.get(i)[0].where(BodyFields.BORE),
                        "the shaft's bore stands with the driven gear of stage " + i + " already",
                        "leave one of them out");
            } else if (below.isPresent()) {
                wheels.get(i)[0] = wheels.get(i)[0].with(BodyFields.BORE, below.get());
            } else if (above.isPresent()) {
                wheels.get(i - 1)[1] = wheels.get(i - 1)[1].with(BodyFields.BORE, above.get());
            }
        }
        return wheels;
    }

    /** Openings of a gear keep clear of the next stage's driver that stands on it. */
    private void lightened(List<Values[]> wheels, List<StageSpec> stages, Material material) {
        double web = material.leastWeb();
        for (int i = 1; i < stages.size(); i++) {
            StageSpec below = stages.get(i - 1);
            if (below.driven().ringRadius().isEmpty() && below.driven().sector().isEmpty()) {
                new BodyReader(request, wheels.get(i - 1)[1], material)
                        .lightens(
                                below.driven().body().lightening(),
                                stages.get(i).driverReach() + web,
                                Wheel.whole(below.mesh().drivenRim(), web));
            }
        }
    }

    /** A total ratio beside stages that are written out must be theirs. */
    private void total(List<StageSpec> stages) {
        Optional<Double> asked = values.given(GearFields.RATIO);
        if (asked.isEmpty() || problems.count() > earlier) {
            return;
        }
        double total = 1;
        long driven = 1;
        long driver = 1;
        for (StageSpec stage : stages) {
            total *= stage.mesh().ratio();
            driven *= stage.mesh().drivenTeeth();
            driver *= stage.mesh().driver().teeth();
        }
        double within = values.get(GearFields.RATIO_WITHIN).orElse(0.0);
        if (Math.abs(total / asked.get() - 1) > within + 1e-9) {
            problems.at(
                    values.where(GearFields.RATIO),
                    Words.number(asked.get(), 4) + " contradicts the stages, which make " + Words.number(total, 4),
                    "leave it out; the nearest that works is " + driven + ":" + driver);
        }
    }

    private PairAsk ask(
            OptionalDouble ratio,
            OptionalInt driver,
            OptionalInt driven,
            OptionalDouble module,
            BasicRack rack,
            Material material) {
        return new PairAsk(
                ratio,
                values.get(GearFields.RATIO_WITHIN).orElse(0.0),
                driver,
                driven,
                module,
                Bound.open(),
                OptionalDouble.empty(),
                false,
                rack,
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                SharedReader.open(values, GearFields.BACKLASH),
                new MeshRoom(material),
                values.require(GearFields.TIPS).equals("full"),
                material.leastWeb(),
                OptionalDouble.empty());
    }
}
