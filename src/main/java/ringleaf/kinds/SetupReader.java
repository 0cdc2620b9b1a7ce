// SPDX-License-Identifier: Apache-2.0
package ringleaf.kinds;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import ringleaf.mechanism.BodyName;
import ringleaf.part.Apart;
import ringleaf.part.Design;
import ringleaf.part.Setup;
import ringleaf.part.Stand;
import ringleaf.spec.MechanismSpec;
import ringleaf.spec.PlaceFields;
import ringleaf.spec.PlaceSpec;
import ringleaf.spec.SetupFields;
import ringleaf.spec.SpecDocument;
import ringleaf.spec.field.Field;
import ringleaf.spec.field.Values;
import ringleaf.spec.text.Nearest;
import ringleaf.spec.text.Place;
import ringleaf.spec.text.Problems;
import ringleaf.spec.text.Shown;

/** Finds what every mechanism of a spec stands on. */
public final class SetupReader {
    private final Kinds kinds;
    private final List<MechanismSpec> mechanisms;
    private final Values together;
    private final Problems problems;

    /** A reader of the mechanisms of one spec; what is wrong goes to the problems. */
    public SetupReader(Kinds kinds, SpecDocument document, Problems problems) {
        this.kinds = kinds;
        this.mechanisms = document.mechanisms();
        this.together = document.together();
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
        apart();
        follows();
    }

    /** What is kept between which; names that nothing has become problems. */
    private Apart apart() {
        if (!together.isGiven(SetupFields.APART)) {
            return Apart.SOME;
        }
        Values given = together.require(SetupFields.APART);
        List<Apart.Pair> pairs = new ArrayList<>();
        for (Values pair : given.given(SetupFields.PAIRS).orElse(List.of())) {
            List<String> two = pair.get(SetupFields.BETWEEN).orElse(List.of());
            Place where = pair.where(SetupFields.BETWEEN);
            if (!pair.isComplete()) {
                continue;
            }
            List<String> known = things();
            for (String name : two) {
                if (!known.contains(name)) {
                    problems.at(
                            where,
                            "there is nothing called " + Shown.quoted(name) + " to keep apart",
                            Nearest.hint(name, known));
                }
            }
            if (two.size() != 2 || two.get(0).equals(two.get(1))) {
                problems.at(
                        where, "two different things are wanted", "e.g. [" + String.join(", ", mechanismNames()) + "]");
            } else {
                pairs.add(new Apart.Pair(two.get(0), two.get(1), pair.require(SetupFields.PAIR_LEAST)));
            }
        }
        return new Apart(given.require(SetupFields.LEAST), pairs);
    }

    /** What each mechanism goes along with; drives that are not there, and leaders that are led, become problems. */
    private List<Setup.Follow> follows() {
        List<Setup.Follow> all = new ArrayList<>(Setup.alone(mechanisms.size()));
        List<Values> given = together.given(SetupFields.FOLLOWS).orElse(List.of());
        List<Integer> led = new ArrayList<>();
        for (Values each : given) {
            if (!each.isComplete()) {
                continue;
            }
            int own = drive(each, SetupFields.DRIVE);
            int leader = drive(each, SetupFields.OF);
            if (own < 0 || leader < 0) {
                continue;
            }
            if (own == leader || led.contains(own)) {
                String reason = own == leader ? "goes along with itself" : "goes along with two at once";
                problems.at(each.where(SetupFields.DRIVE), reason, "one leader, and another one");
                continue;
            }
            led.add(own);
            all.set(own, new Setup.Follow(leader, each.require(SetupFields.BY)));
        }
        for (Values each : given) {
            int leader = each.isComplete() ? index(each.require(SetupFields.OF)) : -1;
            if (leader >= 0 && led.contains(leader)) {
                problems.at(
                        each.where(SetupFields.OF),
                        "goes along with another itself",
                        "let both go along with that one, "
                                + mechanisms.get(all.get(leader).leader()).name() + "." + SetupFields.TRAVEL);
            }
        }
        return all;
    }

    private int drive(Values of, Field<String> field) {
        String name = of.require(field);
        int found = index(name);
        if (found < 0) {
            List<String> known = mechanismNames().stream()
                    .map(n -> n + "." + SetupFields.TRAVEL)
                    .toList();
            problems.at(of.where(field), "there is no drive " + Shown.quoted(name), Nearest.hint(name, known));
        }
        return found;
    }

    /** Index of the mechanism whose drive is named; -1 for none. */
    private int index(String drive) {
        for (int i = 0; i < mechanisms.size(); i++) {
            if (drive.equals(mechanisms.get(i).name() + "." + SetupFields.TRAVEL)) {
                return i;
            }
        }
        return -1;
    }

    private List<String> mechanismNames() {
        return mechanisms.stream().map(MechanismSpec::name).toList();
    }

    /** Everything that can be kept apart: mechanisms, and their bodies. */
    private List<String> things() {
        List<String> all = new ArrayList<>(mechanismNames());
        for (int i = 0; i < mechanisms.size(); i++) {
            for (String body : bodies(i)) {
                all.add(mechanisms.get(i).name() + "." + body);
            }
        }
        return all;
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
                : Optional.of(new Setup(designs.stream().map(Design::assembly).toList(), stands, apart(), follows()));
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
