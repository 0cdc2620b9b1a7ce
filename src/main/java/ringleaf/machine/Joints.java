// SPDX-License-Identifier: Apache-2.0
package ringleaf.machine;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import ringleaf.geom.Contour;
import ringleaf.geom.Placement;
import ringleaf.geom.Point;
import ringleaf.part.Joint.Shape;
import ringleaf.part.Requirement;

/** What follows from the joints of a mechanism whose parts are in their places. */
public final class Joints {
    private final List<Joint> all;
    private final Members members;

    public Joints(List<Joint> all, Members members) {
        this.all = List.copyOf(all);
        this.members = members;
    }

    /** Rows of the table of fits, part by part: holes, and pins that are set into something. */
    public List<ringleaf.part.Joint> rows() {
        List<ringleaf.part.Joint> rows = new ArrayList<>();
        for (Role role : members.roles()) {
            for (Joint joint : all) {
                if (joint.hole().role() == role) {
                    rows.add(row(joint, joint.hole(), joint.fit().basis()));
                }
                if (joint instanceof Joint.Fixed && joint.pin().role() == role) {
                    rows.add(row(joint, joint.pin(), ""));
                }
            }
        }
        return rows;
    }

    private static ringleaf.part.Joint row(Joint joint, Joint.Held<?> held, String basis) {
        Feature feature = held.feature();
        Fit fit = joint.fit();
        Shape shape = feature.shape();
        String part = held.role().label();
        return new ringleaf.part.Joint(
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

    /** What the judge of outlines asks, joints of one check and one room together. */
    public List<Requirement> requirements() {
        Map<Joint.Asked, List<Requirement.Fit>> fits = new LinkedHashMap<>();
        for (Joint joint : all) {
            if (joint.asked().check().isPresent() && !fits(joint).isEmpty()) {
                fits.computeIfAbsent(joint.asked(), a -> new ArrayList<>()).addAll(fits(joint));
            }
        }
        List<Requirement> asked = new ArrayList<>();
        fits.forEach(
                (a, each) -> asked.add(new Requirement.PinInHole(a.check().orElseThrow(), each, a.least(), a.snug())));
        return asked;
    }

    /** The pairs of members that have a figure of their own by their joints. */
    public List<Requirement.Pair> pairs() {
        List<Requirement.Pair> pairs = new ArrayList<>();
        for (Joint joint : all) {
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
    public List<Requirement.Fit> fits(Joint joint) {
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
