// SPDX-License-Identifier: Apache-2.0
package ringleaf.mechanism.gear;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.DoublePredicate;
import ringleaf.geom.Path;
import ringleaf.geom.Placement;
import ringleaf.geom.Point;
import ringleaf.machine.Joints;
import ringleaf.machine.Members;
import ringleaf.mechanism.BodyName;
import ringleaf.mechanism.Material;
import ringleaf.mechanism.body.Bought;
import ringleaf.part.Assembly;
import ringleaf.part.BuildStep;
import ringleaf.part.Callout;
import ringleaf.part.Callout.Form;
import ringleaf.part.Choice;
import ringleaf.part.Design;
import ringleaf.part.Dimension;
import ringleaf.part.Dimension.Origin;
import ringleaf.part.Family;
import ringleaf.part.Finding;
import ringleaf.part.FitRow;
import ringleaf.part.Layer;
import ringleaf.part.Member;
import ringleaf.part.Motion;
import ringleaf.part.MotionTable;
import ringleaf.part.Part;
import ringleaf.part.Requirement;
import ringleaf.part.View;
import ringleaf.part.Words;

/**
 * One gear, made; its axis in the origin.
 *
 * @param name of the mechanism
 * @param wheel its teeth and body
 * @param material it is made of
 * @param width along the axis, mm
 * @param marks whether tooth 0 is marked
 * @param backlash that half was taken for, mm
 * @param given paths of the fields that were given
 * @param reshaped whether another profile shift was tried, typed in place of this one, and makes a gear
 */
record SingleDesign(
        String name,
        Wheel wheel,
        Material material,
        double width,
        boolean marks,
        double backlash,
        Set<String> given,
        DoublePredicate reshaped) {
    private static final String PART = "gear";
    private static final String VIEW = "whole";

    Design design(int states) {
        Rim rim = wheel.rim();
        Part part = part();
        List<Part> parts = new ArrayList<>(List.of(part));
        parts.addAll(wheel.spec().body().axle().bought(""));
        List<Finding> findings = new ArrayList<>(wheel.spec().body().axle().findings(""));
        ToothChecks.add(
                findings, PART, Finding.Place.NONE, wheel, material.leastWeb(), PrintedTeeth.of(material), reshaped);
        Turning turning = new Turning(states);
        Assembly assembly = new Assembly(
                name,
                List.of(new Member(PART, part, 1, Placement.IDENTITY)),
                turning,
                Optional.empty(),
                List.of(new Requirement.LeastWeb("minimum-web", PART, material.leastWeb())),
                callouts(),
                List.of(BuildStep.of("Deburr it; pull no more off the flanks than the burr.")),
                List.of(View.of(VIEW, 0)),
                BodyName.numbered("gear"));
        List<Choice> choices = List.of(new Choice(
                "teeth-are",
                rim instanceof Rim.Inner ? "internal" : "external",
                given.contains("internal") ? Origin.GIVEN : Origin.DEFAULT,
                ""));
        Map<String, Double> travel = new LinkedHashMap<>();
        travel.put("states", (double) states);
        return new Design(
                name,
                SingleGear.NAME,
                choices,
                dimensions(),
                parts,
                assembly,
                table(turning),
                findings,
                travel,
                List.of(),
                fits());
    }

    private Part part() {
        List<Path> lines = marks ? wheel.mark(0, wheel.region()).stream().toList() : List.of();
        return new Part(
                PART,
                Family.GEAR,
                1,
                material.source(),
                List.of(Layer.of(wheel.region(), 0, width)),
                lines,
                wheel.rim() instanceof Rim.Inner
                        ? "internal teeth"
                        : wheel.spec().body().bore().words());
    }

    private List<FitRow> fits() {
        Members members = new Members();
        Shaft shaft = new Shaft(0, PART);
        members.add(shaft, part(), 1);
        return new Joints(wheel.spec().body().joints(shaft, Bought.AXLE, Placement.IDENTITY), members).rows();
    }

    private List<Dimension> dimensions() {
        Rim rim = wheel.rim();
        List<Dimension> all = new ArrayList<>();
        all.add(dimension("teeth", rim.teeth(), "1", Origin.GIVEN, ""));
        if (wheel.spec().sector().isPresent()) {
            all.add(dimension("teeth-cut", wheel.teethCut(), "1", Origin.GIVEN, ""));
        }
        all.add(dimension("module", rim.module(), "mm", origin("module"), ""));
        all.add(dimension(
                "pressure-angle", Math.toDegrees(rim.rack().pressureAngle()), "deg", origin("pressure-angle"), ""));
        boolean shifted = given.contains("profile-shift");
        all.add(dimension(
                "profile-shift", rim.shift(), "1", shifted ? Origin.GIVEN : Origin.SOLVED, "least without undercut"));
        all.add(dimension("backlash", backlash, "mm", origin("backlash"), ""));
        TrainDimensions.measures(all, PART, rim);
        wheel.spec()
                .ringRadius()
                .ifPresent(r -> all.add(dimension("ring-diameter", 2 * r, "mm", origin("ring-diameter"), "")));
        all.add(dimension("width", width, "mm", origin("width"), ""));
        all.add(dimension(
                "outline-deviation",
                wheel.cut().deviation(),
                "mm",
                Origin.SOLVED,
                "worst distance of any smooth curve's arcs from the curve"));
        return all;
    }

    private Origin origin(String field) {
        return given.contains(field) ? Origin.GIVEN : Origin.DEFAULT;
    }

    private static Dimension dimension(String name, double value, String unit, Origin origin, String how) {
        return new Dimension(name, value, unit, origin, how);
    }

    private List<Callout> callouts() {
        List<Callout> all = new ArrayList<>();
        all.add(diameter(wheel.reach(), "outside "));
        all.add(diameter(wheel.rim().rootRadius(), "root "));
        if (wheel.rim() instanceof Rim.Inner) {
            all.add(diameter(wheel.rim().tipRadius(), "tips "));
        }
        return all;
    }

    private static Callout diameter(double radius, String what) {
        return new Callout(
                Form.DIAMETER,
                VIEW,
                Point.ORIGIN,
                Point.polar(radius, Math.PI / 4),
                what + "Ø" + Words.number(2 * radius, 2));
    }

    private MotionTable table(Turning turning) {
        List<double[]> rows = new ArrayList<>();
        for (int i = 0; i < turning.states(); i++) {
            rows.add(new double[] {Math.toDegrees(turning.angle(i))});
        }
        return new MotionTable(List.of("angle_in_deg"), rows, "", List.of());
    }

    /** One pitch, evenly. */
    private final class Turning implements Motion {
        private final int states;

        Turning(int states) {
            this.states = states;
        }

        @Override
        public int states() {
            return states;
        }

        double angle(int state) {
            return wheel.rim().pitchAngle() * state / (states - 1);
        }

        @Override
        public Placement pose(int body, int state) {
            return body == 0 ? Placement.IDENTITY : Placement.turn(angle(state));
        }

        @Override
        public boolean isEndless() {
            return true;
        }
    }
}
