// SPDX-License-Identifier: Apache-2.0
package ringleaf.mechanism.gear;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.UnaryOperator;
import ringleaf.mechanism.Request;
import ringleaf.part.Finding;
import ringleaf.spec.field.Field;
import ringleaf.spec.field.Values;
import ringleaf.spec.text.Problems;

/**
 * Tries a change of a spec as it would be typed, before anybody proposes it: the changed values are read, solved, made
 * and checked like any others.
 */
final class Tryout {
    /** States at which a trial is rolled; a proposal's own run rolls it at all of them. */
    private static final int STATES = 25;

    /** Proposes nothing: for what is a trial itself. */
    static final Tryout NONE = new Tryout(null, null);

    private final Request request;
    private final Function<Request, TrainSpec> reader;

    /**
     * @param request as it was typed
     * @param reader of the kind, that makes no proposals of its own; null where something is refused
     */
    Tryout(Request request, Function<Request, TrainSpec> reader) {
        this.request = request;
        this.reader = reader;
    }

    /** What the changed spec says; empty where it is refused, or where nothing may be tried. */
    Optional<TrainSpec> read(UnaryOperator<Values> change) {
        if (request == null) {
            return Optional.empty();
        }
        Problems problems = new Problems();
        Values changed = change.apply(request.values());
        TrainSpec spec = reader.apply(
                new Request(request.name(), changed, request.fabrication(), request.catalogues(), problems));
        return problems.isEmpty() ? Optional.ofNullable(spec) : Optional.empty();
    }

    /** The design of the changed spec; empty where it is refused or a check of it fails. */
    Optional<TrainDesign> design(UnaryOperator<Values> change) {
        Optional<TrainSpec> spec = read(change);
        if (spec.isEmpty()) {
            return Optional.empty();
        }
        TrainDesign design = TrainDesign.of(spec.get());
        Rolling rolling = Rolling.of(design, new TrainMotion(design, STATES));
        for (Finding finding : new TrainChecks(design, rolling).all()) {
            if (finding.failed()) {
                return Optional.empty();
            }
        }
        return Optional.of(design);
    }

    /** Whether the changed spec is read and passes every check. */
    boolean passes(UnaryOperator<Values> change) {
        return design(change).isPresent();
    }

    /** A value in one of the groups of a pair, {@code driver} or {@code driven}. */
    static <T> UnaryOperator<Values> of(Field<Values> group, Field<T> field, T value) {
        return values -> values.with(
                group, SharedReader.group(values, group, GearFields.WHEEL).with(field, value));
    }

    /** A value of a gear of a stage: of a pair's, or of one of the stages that are written out. */
    static <T> UnaryOperator<Values> of(Stage stage, boolean pair, Field<Values> group, Field<T> field, T value) {
        if (pair) {
            return of(group, field, value);
        }
        return values -> {
            List<Values> stages =
                    new ArrayList<>(values.given(GearFields.STAGES).orElse(List.of()));
            int n = stage.number() - 1;
            if (n < stages.size()) {
                stages.set(n, of(group, field, value).apply(stages.get(n)));
            }
            return values.with(GearFields.STAGES, stages);
        };
    }
}
