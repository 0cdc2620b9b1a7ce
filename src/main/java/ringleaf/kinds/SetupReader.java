// SPDX-License-Identifier: Apache-2.0
package ringleaf.kinds;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import ringleaf.mechanism.BodyName;
import ringleaf.part.Design;
import ringleaf.part.Setup;
import ringleaf.part.Stand;
import ringleaf.spec.MechanismSpec;
import ringleaf.spec.PlaceFields;
import ringleaf.spec.PlaceSpec;
import ringleaf.spec.text.Nearest;
import ringleaf.spec.text.Problems;
import ringleaf.spec.text.Shown;

/** Finds what every mechanism of a spec stands on. */
public final class SetupReader {
    private final Kinds kinds;
    private final List<MechanismSpec> mechanisms;
    private final Problems problems;

    /** A reader of the mechanisms of one spec; what is wrong goes to the problems. */
    public SetupReader(Kinds kinds, List<MechanismSpec> mechanisms, Problems problems) {
        this.kinds = kinds;
        this.mechanisms = List.copyOf(mechanisms);
        this.problems = problems;
    }

    /** Finds carriers that are not there and circles, before anything is designed. */
    public void check() {
        int found = problems.count();
        for (MechanismSpec each : mechanisms) {
            checkCarrier(each);
        }
        if (problems.count() == found) {
            checkCircles();
        }
    }

    /** Every mechanism in its place, after {@link #check}; a body that a design lacks becomes a problem. */
    public Optional<Setup> setup(List<Design> designs) {
        List<Stand> stands = new ArrayList<>();
        int found = problems.count();
        for (MechanismSpec each : mechanisms) {
            PlaceSpec standing = each.standing();
            int on = carrier(standing);
            if (on < 0) {
                stands.add(Stand.ground(standing.pose()));
                continue;
            }
            var bodies = designs.get(on).assembly().bodies();
            Integer body = bodies.get(body(standing));
            if (body == null) {
                problems.at(
                        standing.where(),
                        mechanisms.get(on).name() + " has no " + body(standing) + " as it is designed",
                        "it has " + String.join(", ", bodies.keySet()));
            } else {
                stands.add(new Stand(on, body, standing.on(), standing.pose()));
            }
        }
        return problems.count() > found
                ? Optional.empty()
                : Optional.of(new Setup(designs.stream().map(Design::assembly).toList(), stands));
    }

    private void checkCarrier(MechanismSpec mechanism) {
        PlaceSpec standing = mechanism.standing();
        if (standing.on().equals(PlaceFields.GROUND)) {
            return;
        }
        int on = carrier(standing);
        if (on < 0) {
            String reason = "there is nothing called " + Shown.quoted(standing.on()) + " to stand on";
            problems.at(standing.where(), reason, Nearest.hint(standing.on(), carriers(mechanism)));
            return;
        }
        String name = mechanisms.get(on).name();
        List<String> bodies = bodies(on);
        if (!bodies.contains(body(standing))) {
            String hint = Nearest.hint(
                    standing.on(), bodies.stream().map(b -> name + "." + b).toList());
            String reason = body(standing).isEmpty()
                    ? "does not say which body of " + name + " carries"
                    : "a " + mechanisms.get(on).kind().name() + " has no body " + Shown.quoted(body(standing));
            problems.at(standing.where(), reason, hint);
        }
    }

    private void checkCircles() {
        for (MechanismSpec each : mechanisms) {
            Set<String> met = new LinkedHashSet<>();
            MechanismSpec at = each;
            while (at != null && met.add(at.name())) {
                int on = carrier(at.standing());
                at = on < 0 ? null : mechanisms.get(on);
            }
            if (at == each) {
                problems.at(
                        each.standing().where(),
                        "what carries what goes round in a circle: " + String.join(" on ", met) + " on " + each.name(),
                        "one of them must stand on " + PlaceFields.GROUND);
                return;
            }
        }
    }

    /** What a mechanism may stand on. */
    private List<String> carriers(MechanismSpec mechanism) {
        List<String> all = new ArrayList<>(List.of(PlaceFields.GROUND));
        for (int i = 0; i < mechanisms.size(); i++) {
            if (mechanisms.get(i) != mechanism) {
                for (String body : bodies(i)) {
                    all.add(mechanisms.get(i).name() + "." + body);
                }
            }
        }
        return all;
    }

    private List<String> bodies(int mechanism) {
        return kinds.of(mechanisms.get(mechanism)).bodies().stream()
                .map(BodyName::name)
                .toList();
    }

    /** Index of the mechanism that is named; -1 for none. */
    private int carrier(PlaceSpec standing) {
        int dot = standing.on().indexOf('.');
        String name = dot < 0 ? standing.on() : standing.on().substring(0, dot);
        for (int i = 0; i < mechanisms.size(); i++) {
            if (mechanisms.get(i).name().equals(name)) {
                return standing.on().equals(PlaceFields.GROUND) ? -1 : i;
            }
        }
        return -1;
    }

    private static String body(PlaceSpec standing) {
        int dot = standing.on().indexOf('.');
        return dot < 0 ? "" : standing.on().substring(dot + 1);
    }
}
