package ringleaf.mechanism.gear;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import ringleaf.geom.Point;
import ringleaf.part.Finding;
import ringleaf.part.Finding.Status;
import ringleaf.part.Words;

/** The checks of pairs and trains by the relations of involute teeth; the judge of outlines stands beside them. */
final class TrainChecks {
    private static final double HAIR = 1e-6;
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
            String prefix = spec.isPair() ? "" : "stage " + stage.number() + ", ";
            ToothChecks.add(found, prefix + "driver", stage.driver(), spec.material().leastWeb());
            ToothChecks.add(found, prefix + "driven", stage.driven(), spec.material().leastWeb());
            found.addAll(new MeshChecks(stage, prefix, spec).all());
            sectors(stage, prefix);
        }
        found.addAll(new LoadChecks(design).all());
        axles();
        error();
        return found;
    }

    private void ratio() {
        OptionalDouble asked = spec.ratio();
        if (asked.isEmpty()) {
            return;
        }
        double miss = Math.abs(spec.totalRatio() / asked.getAsDouble() - 1);
        boolean exact = miss <= spec.ratioWithin() + 1e-9;
        found.add(new Finding(
                "ratio",
                exact ? Status.PASS : Status.WARN,
                spec.totalRatio(),
                asked.getAsDouble(),
                "1",
                "driver to last gear",
                exact && miss < 1e-9
                        ? "the ratio asked for, exactly"
                        : "misses the ratio asked for by " + Words.number(100 * miss, 3) + " %"
                                + (exact ? ", within what may be missed" : ", the nearest that these teeth make")));
    }

    private void space() {
        double length = spec.length();
        if (spec.overall().isPresent()) {
            found.add(Finding.atMost(
                    "overall-length",
                    length - HAIR,
                    spec.overall().getAsDouble(),
                    "mm",
                    "over all gears",
                    "greatest length over all gears, tip to tip"));
        }
        for (Stage stage : design.stages()) {
            double distance = stage.mesh().centreDistance();
            var bound = stage.spec().ask().centreDistance();
            if (bound.isExact() || bound.atMost().isEmpty() && bound.atLeast().isEmpty()) {
                continue;
            }
            boolean most = bound.atMost().isPresent() && !(distance < bound.leastOr(0));
            double limit = most ? bound.mostOr(distance) : bound.leastOr(distance);
            found.add(new Finding(
                    "centre-distance",
                    bound.allows(distance, HAIR) ? Status.PASS : Status.FAIL,
                    distance,
                    limit,
                    "mm",
                    "stage " + stage.number(),
                    "distance of the axes against what was asked"));
        }
    }

    private void sectors(Stage stage, String prefix) {
        sector(stage, stage.driver(), true, prefix + "driver");
        sector(stage, stage.driven(), false, prefix + "driven");
    }

    private void sector(Stage stage, Wheel wheel, boolean driver, String which) {
        if (wheel.spec().sector().isEmpty()) {
            return;
        }
        SectorPlan plan = new SectorPlan(stage.mesh(), driver);
        double travel = Math.abs(spec.travel() * stage.turn());
        double spare = plan.spare(wheel.teethCut(), travel);
        found.add(new Finding(
                "mesh-at-stops",
                spare + HAIR >= SectorPlan.SPARE ? Status.PASS : spare >= 0 ? Status.WARN : Status.FAIL,
                spare,
                spare >= 0 ? SectorPlan.SPARE : 0,
                "1",
                which + ", both ends of the travel",
                "teeth left at each end beyond the mesh; a travel of "
                        + Words.degrees(plan.travel(wheel.teethCut(), SectorPlan.SPARE) / Math.abs(stage.turn()), 1)
                        + " of the driver leaves one"));
    }

    /** Gears of one stage may reach over the axles of another: then those axles must end below them. */
    private void axles() {
        double least = Double.POSITIVE_INFINITY;
        String where = "";
        for (Stage stage : design.stages()) {
            int shaft = stage.number() - 1;
            for (int axle = 0; axle <= design.stages().size(); axle++) {
                if (axle == stage.number() || axle == shaft) {
                    continue;
                }
                double room = axis(axle).distance(stage.drivenAxis()) - stage.driven().reach() - axleRadius(axle);
                if (room < least) {
                    least = room;
                    where = TrainParts.name(spec, stage.number()) + " over the axle of " + TrainParts.name(spec, axle);
                }
            }
        }
        if (!where.isEmpty()) {
            found.add(new Finding(
                    "axles-clear",
                    least >= AXLE_ROOM ? Status.PASS : Status.WARN,
                    least,
                    AXLE_ROOM,
                    "mm",
                    where,
                    least >= AXLE_ROOM
                            ? "axles may run through the whole height"
                            : "this axle has to end at the gear that reaches over it, or come from the other side"));
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
        found.add(Finding.atLeast(
                "gap-as-cut",
                rolling.gaps()[state],
                0,
                "mm",
                "driver at " + Words.degrees(rolling.angles()[state], 2),
                "least gap of the outlines over the travel, teeth in the middle of their play"));
        found.add(new Finding(
                "transmission-error",
                rolling.lost().isEmpty() ? Status.PASS : Status.FAIL,
                Math.toDegrees(rolling.errorSpan()),
                0,
                "deg",
                rolling.lost().isEmpty()
                        ? "over the travel"
                        : "driver at " + Words.degrees(rolling.angles()[rolling.lost().get(0)], 2),
                rolling.lost().isEmpty()
                        ? "from least to greatest, as the outlines are drawn; what is made adds its own"
                        : "the driver finds no tooth to push"));
    }
}
