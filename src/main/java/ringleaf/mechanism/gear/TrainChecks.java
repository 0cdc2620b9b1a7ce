// SPDX-License-Identifier: Apache-2.0
package ringleaf.mechanism.gear;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import ringleaf.geom.Point;
import ringleaf.geom.Tolerance;
import ringleaf.part.Figure;
import ringleaf.part.Finding;
import ringleaf.part.Finding.Draft;
import ringleaf.part.Finding.Place;
import ringleaf.part.Saying;
import ringleaf.spec.field.Bound;
import ringleaf.spec.field.Field;
import ringleaf.spec.field.Values;

/** The checks of pairs and trains by the relations of involute teeth; the judge of outlines stands beside them. */
final class TrainChecks {
    /** Axles pass gears of other stages at this distance at least, mm; common practice, no source. */
    private static final double AXLE_ROOM = 0.3;

    private final TrainDesign design;
    private final TrainSpec spec;
    private final Rolling rolling;
    private final List<Finding> found = new ArrayList<>();

    TrainChecks(TrainDesign design, Rolling rolling) {
        this.design = design;
        this.spec = design.spec();
        this.rolling = rolling;
    }

    List<Finding> all() {
        ratio();
        space();
        for (Stage stage : design.stages()) {
            teeth(stage, stage.number() - 1, stage.driver(), GearFields.DRIVER);
            teeth(stage, stage.number(), stage.driven(), GearFields.DRIVEN);
            found.addAll(new MeshChecks(stage, spec).all());
            sector(stage, stage.driver(), true);
            sector(stage, stage.driven(), false);
        }
        found.addAll(new LoadChecks(design).all());
        axles();
        found.addAll(new TrainParts(design).axles());
        error();
        return found;
    }

    private void teeth(Stage stage, int shaft, Wheel wheel, Field<Values> group) {
        ToothChecks.add(
                found,
                TrainParts.name(spec, shaft),
                place(stage),
                wheel,
                spec.material().leastWeb(),
                PrintedTeeth.of(spec.material()),
                shift -> spec.tryout().passes(Tryout.of(stage, spec.isPair(), group, GearFields.PROFILE_SHIFT, shift)));
    }

    private Place place(Stage stage) {
        return spec.isPair() ? Place.NONE : Place.NONE.withDetail(Saying.of("gear.stage", stage.number()));
    }

    private void ratio() {
        OptionalDouble asked = spec.ratio();
        if (asked.isEmpty()) {
            return;
        }
        double miss = Math.abs(spec.totalRatio() / asked.getAsDouble() - 1);
        found.add(Finding.of("ratio")
                .about(
                        TrainParts.name(spec, 0),
                        TrainParts.name(spec, spec.stages().size()))
                .orWarn()
                .about(spec.totalRatio(), asked.getAsDouble(), spec.ratioWithin() * asked.getAsDouble(), "1")
                .says(
                        "gear.ratio",
                        miss < 1e-9,
                        Figure.number(100 * miss, miss < 1e-5 ? 5 : 3),
                        miss <= spec.ratioWithin() + 1e-9));
    }

    private void space() {
        spec.overall()
                .ifPresent(most -> found.add(Finding.of("overall-length")
                        .about(ids())
                        .atMost(spec.length(), most, "mm")
                        .says("gear.overall-length")));
        for (Stage stage : design.stages()) {
            double distance = stage.mesh().centreDistance();
            Bound bound = stage.spec().ask().centreDistance();
            Draft draft = Finding.of("centre-distance")
                    .about(TrainParts.name(spec, stage.number() - 1), TrainParts.name(spec, stage.number()))
                    .at(place(stage));
            if (!bound.isExact() && bound.atMost().isPresent()) {
                found.add(draft.atMost(distance, bound.mostOr(distance), "mm").says("gear.centre-distance"));
            }
            if (!bound.isExact() && bound.atLeast().isPresent()) {
                found.add(draft.atLeast(distance, bound.leastOr(distance), "mm").says("gear.centre-distance"));
            }
        }
    }

    private List<String> ids() {
        List<String> ids = new ArrayList<>();
        for (int shaft = 0; shaft <= spec.stages().size(); shaft++) {
            ids.add(TrainParts.name(spec, shaft));
        }
        return ids;
    }

    private void sector(Stage stage, Wheel wheel, boolean driver) {
        if (wheel.spec().sector().isEmpty()) {
            return;
        }
        SectorPlan plan = new SectorPlan(stage.mesh(), driver);
        double travel = Math.abs(spec.travel() * stage.turn());
        double most = plan.travel(wheel.teethCut(), SectorPlan.SPARE) / Math.abs(stage.turn());
        double typed = Math.floor(10 * Math.toDegrees(most) + 1e-6) / 10;
        double spare = plan.spare(wheel.teethCut(), travel);
        boolean advised = spare < SectorPlan.SPARE - Finding.ROUNDING
                && spec.tryout().passes(v -> v.with(GearFields.TRAVEL, Math.toRadians(typed)));
        found.add(Finding.of("mesh-at-stops")
                .about(TrainParts.name(spec, driver ? stage.number() - 1 : stage.number()))
                .at(Place.when("gear.both-ends"))
                .atLeast(spare, 0, SectorPlan.SPARE, "1")
                .says("gear.mesh-at-stops", advised, Figure.number(typed, 1)));
    }

    /**
     * Gears of one stage may reach over the axles of another: then those axles must end below them, or come from the
     * other side.
     */
    private void axles() {
        double least = Double.POSITIVE_INFINITY;
        String[] who = {};
        for (Stage stage : design.stages()) {
            int shaft = stage.number() - 1;
            for (int axle = 0; axle <= design.stages().size(); axle++) {
                if (axle == stage.number() || axle == shaft) {
                    continue;
                }
                for (int end = 0; end < 2; end++) {
                    Wheel wheel = end == 0 ? stage.driver() : stage.driven();
                    double room = axis(axle).distance(axis(shaft + end)) - wheel.reach() - axleRadius(axle);
                    if (room < least - Mesh.SAME) {
                        least = room;
                        who = new String[] {TrainParts.name(spec, shaft + end), TrainParts.name(spec, axle)};
                    }
                }
            }
        }
        if (who.length > 0) {
            found.add(Finding.of("axle-clearance")
                    .about(who)
                    .orWarn()
                    .atLeast(least, AXLE_ROOM, "mm")
                    .says("gear.axle-clearance", least >= AXLE_ROOM, who[1], who[0]));
        }
    }

    private Point axis(int shaft) {
        return shaft == 0 ? Point.ORIGIN : design.stages().get(shaft - 1).drivenAxis();
    }

    /** Radius of a shaft's bore, or of what turns in it, mm. */
    private double axleRadius(int shaft) {
        Wheel wheel = shaft == 0
                ? design.stages().get(0).driver()
                : design.stages().get(shaft - 1).driven();
        return wheel.spec().body().bore().reach();
    }

    private void error() {
        int state = rolling.leastGap();
        found.add(Finding.of("mesh-clearance")
                .onOutlines(Tolerance.JUDGE.length())
                .about(ids())
                .at(driverAt(state))
                .atLeast(rolling.gaps()[state], 0, "mm")
                .says("gear.mesh-clearance"));
        Draft draft = Finding.of("transmission-error").onOutlines(0).about(ids());
        if (!rolling.lost().isEmpty()) {
            found.add(draft.at(driverAt(rolling.lost().get(0))).plain(false).says("gear.no-tooth"));
            return;
        }
        found.add(draft.at(Place.when("gear.over-travel"))
                .atMost(Math.toDegrees(rolling.errorSpan()), Math.toDegrees(explained()), "deg")
                .says("gear.transmission-error"));
    }

    /** By how much arcs in place of true flanks, and their relief, may turn the last gear off its place, rad. */
    private double explained() {
        double all = 0;
        double last = design.last().drivenTurn();
        for (Stage stage : design.stages()) {
            double relief = stage.driver().spec().finish().relief()
                    + stage.driven().spec().finish().relief();
            double base =
                    stage.mesh().drivenWorkingRadius() * Math.cos(stage.mesh().workingAngle());
            all += (TrainJoints.PLAY_SLACK + relief) / base * Math.abs(last / stage.drivenTurn());
        }
        return all;
    }

    private Place driverAt(int state) {
        return Place.when("gear.driver-at", Figure.degrees(rolling.angles()[state], 2));
    }
}
