// SPDX-License-Identifier: Apache-2.0
package ringleaf.part;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * A mechanism put together: members, how they move, and what is required of them. Whoever judges or draws it needs
 * to know nothing else.
 *
 * @param name of the mechanism
 * @param members every piece in its place
 * @param motion of the bodies
 * @param leaves the leafed family, if there is one
 * @param requirements what must hold
 * @param callouts what views should point out
 * @param steps how it is put together, in order
 * @param views pictures seen from above, in order
 * @param bodies by the names that a spec has for them: bodies on which other mechanisms may stand
 */
public record Assembly(
        String name,
        List<Member> members,
        Motion motion,
        Optional<LeafFamily> leaves,
        List<Requirement> requirements,
        List<Callout> callouts,
        List<BuildStep> steps,
        List<View> views,
        Map<String, Integer> bodies) {
    public Assembly {
        members = List.copyOf(members);
        requirements = List.copyOf(requirements);
        callouts = List.copyOf(callouts);
        steps = List.copyOf(steps);
        views = List.copyOf(views);
        bodies = Collections.unmodifiableMap(new LinkedHashMap<>(bodies));
    }

    /** On which nothing stands. */
    public Assembly(
            String name,
            List<Member> members,
            Motion motion,
            Optional<LeafFamily> leaves,
            List<Requirement> requirements,
            List<Callout> callouts,
            List<BuildStep> steps,
            List<View> views) {
        this(name, members, motion, leaves, requirements, callouts, steps, views, Map.of());
    }

    /** With the usual views. */
    public Assembly(
            String name,
            List<Member> members,
            Motion motion,
            Optional<LeafFamily> leaves,
            List<Requirement> requirements,
            List<Callout> callouts,
            List<BuildStep> steps) {
        this(name, members, motion, leaves, requirements, callouts, steps, View.usual(motion));
    }

    /** The same with names for some of its bodies. */
    public Assembly withBodies(Map<String, Integer> named) {
        return new Assembly(name, members, motion, leaves, requirements, callouts, steps, views, named);
    }

    /** As it is drawn when seen along its axis: what is stood up across its plane is shown by the box that holds it. */
    public Assembly seen() {
        if (members.stream().allMatch(Member::isFlat)) {
            return this;
        }
        List<Member> flat = members.stream().map(Member::seen).toList();
        return new Assembly(name, flat, motion, leaves, requirements, callouts, steps, views, bodies);
    }

    /** What goes on when, a sentence a step. */
    public List<String> buildOrder() {
        List<String> words = new ArrayList<>(steps.size());
        for (BuildStep step : steps) {
            words.add(step.words());
        }
        return words;
    }
}
