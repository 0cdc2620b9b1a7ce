package ringleaf.mechanism.gear;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import ringleaf.mechanism.Material;
import ringleaf.mechanism.Request;
import ringleaf.part.Words;
import ringleaf.spec.field.Bound;
import ringleaf.spec.field.Values;
import ringleaf.spec.shared.Servo;
import ringleaf.spec.text.Place;
import ringleaf.spec.text.Problems;
import ringleaf.tooth.BasicRack;
import ringleaf.tooth.TeethRatio;

/** From the values of a {@code gear-train} to its stages, written out or shared out evenly. */
final class TrainReader {
    /** Largest ratio of a stage of its own choice; common practice, no source. */
    private static final double STAGE_RATIO = 5;

    private static final double USUAL_MODULE = 1;

    private final Request request;
    private final Values values;
    private final Problems problems;
    /** Problems of mechanisms before this one, which do not keep its own from being told. */
    private final int earlier;
    private final SharedReader shared;

    TrainReader(Request request) {
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
        List<StageSpec> stages = written.isPresent()
                ? written(written.get(), material, drive.servo())
                : shared(material, drive.servo());
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
                SharedReader.open(values, GearFields.WITHIN),
                SharedReader.given(values));
    }

    private static List<StageSpec> decided(List<StageSpec> stages, double travel) {
        List<StageSpec> decided = new ArrayList<>();
        double turn = travel;
        for (StageSpec stage : stages) {
            decided.add(stage.withDriver(
                            SectorPlan.decided(stage.driver(), new SectorPlan(stage.mesh(), true), turn))
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
        for (Values stage : written) {
            Values driver = SharedReader.group(stage, GearFields.DRIVER, GearFields.WHEEL);
            Values driven = SharedReader.group(stage, GearFields.DRIVEN, GearFields.WHEEL);
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
            if (problems.count() > earlier) {
                return List.of();
            }
            new StageReader(request, material, driver, driven)
                    .read(
                            ask,
                            stage.where(GearFields.RATIO),
                            stage.where(GearFields.CENTRE_DISTANCE),
                            at,
                            stages.isEmpty() ? servo : Optional.empty())
                    .ifPresent(stages::add);
        }
        total(stages);
        return stages;
    }

    /** A total ratio beside stages that are written out must be theirs. */
    private void total(List<StageSpec> stages) {
        Optional<Double> asked = values.given(GearFields.RATIO);
        if (asked.isEmpty() || problems.count() > earlier) {
            return;
        }
        double total = 1;
        for (StageSpec stage : stages) {
            total *= stage.mesh().ratio();
        }
        double within = values.get(GearFields.RATIO_WITHIN).orElse(0.0);
        if (Math.abs(total / asked.get() - 1) > within + 1e-9) {
            problems.at(
                    values.where(GearFields.RATIO),
                    Words.number(asked.get(), 4) + " contradicts the stages, which make " + Words.number(total, 4),
                    "leave it out, or leave a stage's teeth open");
        }
    }

    private List<StageSpec> shared(Material material, Optional<Servo> servo) {
        Optional<Double> ratio = values.given(GearFields.RATIO);
        if (ratio.isEmpty()) {
            problems.at(
                    values.where(GearFields.RATIO),
                    "is missing, and no stages are written out",
                    "give ratio, e.g. ratio: 12, or stages");
            return List.of();
        }
        double size = Math.max(ratio.get(), 1 / ratio.get());
        int fewest = (int) Math.max(1, Math.ceil(Math.log(size) / Math.log(STAGE_RATIO) - 1e-9));
        int count = values.get(GearFields.STAGE_COUNT).orElse(fewest);
        BasicRack rack = shared.rack(List.of(values));
        double within = values.get(GearFields.RATIO_WITHIN).orElse(0.0);
        List<TeethRatio> teeth = new StageSplit(ratio.get(), within, count).best();
        if (teeth.isEmpty()) {
            problems.at(
                    values.where(GearFields.RATIO),
                    "no " + count + (count == 1 ? " stage comes" : " stages come") + " near the ratio "
                            + Words.number(ratio.get(), 4),
                    "stage-count: " + fewest + " works");
            return List.of();
        }
        double module = module(teeth, rack);
        List<StageSpec> stages = new ArrayList<>();
        for (TeethRatio one : teeth) {
            PairAsk ask = ask(
                    OptionalDouble.empty(),
                    OptionalInt.of(one.driver()),
                    OptionalInt.of(one.driven()),
                    OptionalDouble.of(module),
                    rack,
                    material);
            Place place = values.where(GearFields.RATIO);
            Values none = GearFields.WHEEL.none(values.where());
            new StageReader(request, material, none, none)
                    .read(ask, place, place, values.require(GearFields.AT), stages.isEmpty() ? servo : Optional.empty())
                    .ifPresent(stages::add);
        }
        return stages;
    }

    /** The module asked for, or the largest of the series with which the train keeps within its length. */
    private double module(List<TeethRatio> teeth, BasicRack rack) {
        Optional<Double> given = values.given(GearFields.MODULE);
        Optional<Double> within = values.given(GearFields.WITHIN);
        if (given.isPresent() || within.isEmpty()) {
            return given.orElse(USUAL_MODULE);
        }
        double[] series = TeethSearch.MODULES;
        for (int i = series.length - 1; i > 0; i--) {
            if (series[i] * StageSplit.length(teeth, rack.addendum()) <= within.get() + 1e-9) {
                return series[i];
            }
        }
        return series[0];
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
                2 * material.repeatability(),
                values.require(GearFields.TIPS).equals("full"));
    }
}
