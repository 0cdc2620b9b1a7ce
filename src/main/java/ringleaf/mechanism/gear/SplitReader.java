// SPDX-License-Identifier: Apache-2.0
package ringleaf.mechanism.gear;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.BiFunction;
import ringleaf.mechanism.Material;
import ringleaf.mechanism.Request;
import ringleaf.part.Words;
import ringleaf.spec.field.Values;
import ringleaf.spec.shared.Servo;
import ringleaf.spec.text.Place;
import ringleaf.spec.text.Problems;
import ringleaf.tooth.TeethRatio;

/** The stages of a train of which only the ratio is known: their teeth, and the largest module that fits. */
final class SplitReader {
    /** Ratio up to which one stage is taken; common practice, no source. */
    private static final double STAGE_RATIO = 5;

    private static final double USUAL_MODULE = 1;
    private static final int MOST_STAGES = 6;
    /** Share by which shifted teeth may be shorter than unshifted ones, at most. */
    private static final double SHORTER = 0.06;

    private final Request request;
    private final Values values;
    private final Material material;
    private final Optional<Servo> servo;
    private final OptionalDouble overall;
    /** What is asked of a stage of teeth and a module. */
    private final BiFunction<TeethRatio, Double, PairAsk> ask;

    /**
     * What was chosen.
     *
     * @param stages solved; none where problems were reported
     * @param others teeth of other trains, the next best first
     */
    record Split(List<StageSpec> stages, List<List<TeethRatio>> others) {
        static final Split NONE = new Split(List.of(), List.of());
    }

    SplitReader(
            Request request,
            Material material,
            Optional<Servo> servo,
            OptionalDouble overall,
            BiFunction<TeethRatio, Double, PairAsk> ask) {
        this.request = request;
        this.values = request.values();
        this.material = material;
        this.servo = servo;
        this.overall = overall;
        this.ask = ask;
    }

    Split read() {
        Optional<Double> ratio = values.given(GearFields.RATIO);
        Place place = values.where(GearFields.RATIO);
        if (ratio.isEmpty()) {
            request.problems()
                    .at(place, "is missing, and no stages are written out", "give ratio, e.g. ratio: 12, or stages");
            return Split.NONE;
        }
        double room = values.get(GearFields.RATIO_WITHIN).orElse(0.0);
        double size = Math.max(ratio.get(), 1 / ratio.get());
        int fewest = (int) Math.max(1, Math.ceil(Math.log(size) / Math.log(STAGE_RATIO) - 1e-9));
        int count = values.get(GearFields.STAGE_COUNT).orElse(fewest);
        List<List<TeethRatio>> trains = new StageSplit(ratio.get(), room, count).trains();
        if (trains.isEmpty()) {
            request.problems()
                    .at(
                            values.isGiven(GearFields.STAGE_COUNT) ? values.where(GearFields.STAGE_COUNT) : place,
                            "no " + count + (count == 1 ? " stage comes" : " stages come") + " near the ratio "
                                    + Words.number(ratio.get(), 4),
                            other(ratio.get(), room, count));
            return Split.NONE;
        }
        return taken(trains);
    }

    /** The number of stages nearest to what was asked that makes the ratio. */
    private static String other(double ratio, double room, int count) {
        for (int off = 1; off < MOST_STAGES; off++) {
            for (int way = 1; way >= -1; way -= 2) {
                int tried = count + way * off;
                if (tried >= 1
                        && tried <= MOST_STAGES
                        && !new StageSplit(ratio, room, tried).trains().isEmpty()) {
                    return "stage-count: " + tried + " works";
                }
            }
        }
        return "";
    }

    /** Trains whose axles clear go before a larger module, and that before the rest of what makes a train better. */
    private Split taken(List<List<TeethRatio>> trains) {
        List<double[]> order = new ArrayList<>();
        for (int clear = 1; clear >= 0; clear--) {
            for (double module : modules()) {
                for (int i = 0; i < trains.size(); i++) {
                    if (StageSplit.clearsAxles(trains.get(i)) == (clear == 1)) {
                        order.add(new double[] {i, module});
                    }
                }
            }
        }
        for (double[] one : order) {
            List<TeethRatio> train = trains.get((int) one[0]);
            double addenda = 2 * one[1];
            if (StageSplit.length(train) * one[1] * (1 - SHORTER) + addenda > most()) {
                continue;
            }
            Problems own = new Problems();
            List<StageSpec> stages = solved(train, one[1], own);
            if (own.isEmpty() && TrainSpec.length(stages) <= most() + Mesh.SAME) {
                return new Split(stages, without(trains, train));
            }
        }
        double[] modules = modules();
        List<StageSpec> nearest = solved(trains.get(0), modules[modules.length - 1], request.problems());
        return new Split(nearest, without(trains, trains.get(0)));
    }

    private double most() {
        return overall.orElse(Double.POSITIVE_INFINITY);
    }

    private static List<List<TeethRatio>> without(List<List<TeethRatio>> all, List<TeethRatio> one) {
        List<List<TeethRatio>> others = new ArrayList<>(all);
        others.remove(one);
        return others;
    }

    /** The module given, or those of the series, the largest first, where the length is limited. */
    private double[] modules() {
        Optional<Double> given = values.given(GearFields.MODULE);
        if (given.isPresent() || overall.isEmpty()) {
            return new double[] {given.orElse(USUAL_MODULE)};
        }
        double[] falling = TeethSearch.MODULES.clone();
        for (int i = 0; i < falling.length; i++) {
            falling[i] = TeethSearch.MODULES[falling.length - 1 - i];
        }
        return falling;
    }

    private List<StageSpec> solved(List<TeethRatio> train, double module, Problems problems) {
        Request own =
                new Request(request.name(), request.values(), request.fabrication(), request.catalogues(), problems);
        List<StageSpec> stages = new ArrayList<>();
        Place place = values.where(GearFields.RATIO);
        Values none = GearFields.WHEEL.none(values.where());
        for (TeethRatio one : train) {
            new StageReader(own, material, none, none)
                    .read(
                            ask.apply(one, module),
                            new StageReader.Where(
                                    place, place, values.where(GearFields.BACKLASH), values.where(GearFields.MODULE)),
                            values.require(GearFields.AT),
                            stages.isEmpty() ? servo : Optional.empty())
                    .ifPresent(stages::add);
        }
        return stages;
    }
}
