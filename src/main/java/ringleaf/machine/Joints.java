// SPDX-License-Identifier: Apache-2.0
package ringleaf.machine;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import ringleaf.geom.Contour;
import ringleaf.geom.Placement;
import ringleaf.geom.Point;
import ringleaf.machine.Joint.Mover;
import ringleaf.part.FitRow;
import ringleaf.part.FitRow.Shape;
import ringleaf.part.Requirement;

/** What follows from the joints of a mechanism whose parts are in their places. */
public final class Joints {
    private final List<Joint> all;
    private final Members members;
    private final List<Role> bought;

    public Joints(List<Joint> all, Members members) {
        this(all, members, List.of());
    }

    /** @param bought parts that are told in the table of fits although they have no outline among the members */
    public Joints(List<Joint> all, Members members, List<Role> bought) {
        this.all = List.copyOf(all);
        this.members = members;
        this.bought = List.copyOf(bought);
    }

    /** Joints of pins in holes. */
    private List<Joint.InHole> held() {
        return all.stream()
                .filter(Joint.InHole.class::isInstance)
                .map(Joint.InHole.class::cast)
                .toList();
    }

    private List<Joint.Rolling> rolling() {
        return all.stream()
                .filter(Joint.Rolling.class::isInstance)
                .map(Joint.Rolling.class::cast)
                .toList();
    }

    /**
     * Rows of the table of fits, part by part: holes, pins that are set into something, and those that are bought and
     * turn or slide. A pin that does both is told as it is set in.
     */
    public List<FitRow> rows() {
        List<Role> told = new ArrayList<>(members.roles());
        told.addAll(bought);
        Set<FitRow> rows = new LinkedHashSet<>();
        for (Role role : told) {
            Set<String> pins = new HashSet<>();
            for (Joint.InHole joint : held()) {
                if (joint.hole().role().equals(role)) {
                    rows.add(row(joint, joint.hole(), joint.fit().basis()));
                }
                if (joint instanceof Joint.Fixed && joint.pin().role().equals(role)) {
                    rows.add(row(joint, joint.pin(), ""));
                    pins.add(joint.pin().feature().id());
                }
            }
            for (Joint.InHole joint : held()) {
                boolean screw = joint instanceof Joint.Screwed;
                if (!screw
                        && joint.pin().role().equals(role)
                        && isBought(role)
                        && pins.add(joint.pin().feature().id())) {
                    rows.add(row(joint, joint.pin(), ""));
                }
            }
        }
        return List.copyOf(rows);
    }

    private boolean isBought(Role role) {
        return bought.contains(role)
                || members.all().get(members.one(role)).part().source().isBought();
    }

    private static FitRow row(Joint.InHole joint, Joint.Held<?> held, String basis) {
        Feature feature = held.feature();
        Fit fit = joint.fit();
        Shape shape = feature.shape();
        String part = held.role().label();
        return new FitRow(
                feature.id(),
                part,
                shape,
                fit.name().label(),
                fit.nominal(),
                feature.size(),
                feature.count(),
                basis,
                feature.centres());
    }

    /** What the judge of outlines asks: meshes, then pins in their holes, those of one check and one room together. */
    public List<Requirement> requirements() {
        List<Requirement> asked = new ArrayList<>();
        rolling().forEach(joint -> joint.mesh().ifPresent(mesh -> asked.add(meshes(joint, mesh))));
        Map<Joint.Asked, List<Requirement.Fit>> fits = new LinkedHashMap<>();
        for (Joint.InHole joint : held()) {
            if (joint.asked().check().isPresent() && !fits(joint).isEmpty()) {
                fits.computeIfAbsent(joint.asked(), a -> new ArrayList<>()).addAll(fits(joint));
            }
        }
        fits.forEach(
                (a, each) -> asked.add(new Requirement.PinInHole(a.check().orElseThrow(), each, a.least(), a.snug())));
        return asked;
    }

    private Requirement meshes(Joint.Rolling joint, Joint.Mesh mesh) {
        int one = members.one(joint.first().role());
        Requirement.Moving first;
        if (joint.first() instanceof Mover.Turns turns) {
            first = new Requirement.Turning(one, turns.axis());
        } else if (joint.first() instanceof Mover.Slides slides) {
            first = new Requirement.Sliding(one, slides.direction());
        } else {
            throw new IllegalArgumentException("what runs along a line has no teeth that roll as one piece");
        }
        Requirement.Turning second = new Requirement.Turning(
                members.one(joint.second().role()), joint.second().axis());
        return new Requirement.Meshes(
                first, second, joint.ratio(), mesh.rolled(), mesh.gap(), mesh.play(), mesh.tolerance());
    }

    /** The pairs of members that have a figure of their own by their joints. */
    public List<Requirement.Pair> pairs() {
        List<Requirement.Pair> pairs = new ArrayList<>();
        for (Joint.Rolling joint : rolling()) {
            for (int first : members.of(joint.first().role())) {
                for (int second : members.of(joint.second().role())) {
                    pairs.add(new Requirement.Pair(first, second, 0, joint.touches()));
                }
            }
        }
        for (Joint.InHole joint : held()) {
            Joint.Asked asked = joint.asked();
            for (Requirement.Fit fit : asked.pair() ? fits(joint) : List.<Requirement.Fit>of()) {
                pairs.add(new Requirement.Pair(
                        fit.pinMember(),
                        fit.holeMember(),
                        asked.least(),
                        asked.check().isEmpty()));
            }
        }
        return pairs;
    }

    /** Each pin and its hole, in the mechanism's frame in state 0; none where either part is no member. */
    public List<Requirement.Fit> fits(Joint.InHole joint) {
        record Pin(int member, Point at) {}
        record Hole(int member, Contour edge) {}
        List<Pin> pins = new ArrayList<>();
        for (int member : members.of(joint.pin().role())) {
            for (Point place : joint.pin().feature().places()) {
                pins.add(new Pin(member, home(member).apply(place)));
            }
        }
        List<Hole> holes = new ArrayList<>();
        for (int member : members.of(joint.hole().role())) {
            for (Contour cut : joint.hole().feature().cuts()) {
                holes.add(new Hole(member, cut.placed(home(member))));
            }
        }
        List<Requirement.Fit> fits = new ArrayList<>();
        double radius = joint.pin().feature().size() / 2;
        for (int i = 0; i < pins.size() && !holes.isEmpty(); i++) {
            Hole hole = holes.get(i * holes.size() / pins.size());
            fits.add(new Requirement.Fit(pins.get(i).member, pins.get(i).at, radius, hole.member, hole.edge));
        }
        return fits;
    }

    private Placement home(int member) {
        return members.all().get(member).home();
    }
}
