// SPDX-License-Identifier: Apache-2.0
package ringleaf.mechanism.belt;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import ringleaf.geom.Box;
import ringleaf.geom.Path;
import ringleaf.geom.Placement;
import ringleaf.geom.Point;
import ringleaf.machine.Joints;
import ringleaf.machine.Members;
import ringleaf.mechanism.BodyName;
import ringleaf.mechanism.Kind;
import ringleaf.mechanism.Material;
import ringleaf.mechanism.Request;
import ringleaf.mechanism.body.Bought;
import ringleaf.part.Assembly;
import ringleaf.part.BuildStep;
import ringleaf.part.Callout;
import ringleaf.part.Choice;
import ringleaf.part.Design;
import ringleaf.part.Dimension.Origin;
import ringleaf.part.Finding;
import ringleaf.part.Member;
import ringleaf.part.MotionTable;
import ringleaf.part.Part;
import ringleaf.part.Placing;
import ringleaf.part.Requirement;
import ringleaf.part.View;
import ringleaf.part.Words;
import ringleaf.spec.field.FieldSet;
import ringleaf.spec.field.Values;
import ringleaf.spec.shared.Belt;

/** The kind {@code pulley}: one timing pulley by itself, and a piece of belt that rolls over it. */
public final class Pulley implements Kind {
    public static final String NAME = "pulley";

    /** Teeth of the belt that are shown on either side before they meet the pulley. */
    private static final int BESIDE = 4;
    /** A pulley by itself is the only wheel. */
    private static final int WHEEL = 0;

    @Override
    public String name() {
        return NAME;
    }

    @Override
    public String summary() {
        return "a pulley for a timing belt, its grooves generated from the belt's tooth";
    }

    @Override
    public FieldSet fields() {
        return PulleyFields.ALONE;
    }

    @Override
    public List<String> headline() {
        return List.of("belt", "teeth", "pitch-diameter", "outside-diameter", "flange-diameter", "face-width");
    }

    @Override
    public List<String> weighed() {
        return List.of("outside-diameter", "flange-diameter", "face-width");
    }

    @Override
    public List<String> compared() {
        return List.of("pitch-diameter");
    }

    @Override
    public List<BodyName> bodies() {
        return List.of(
                BodyName.frame("what holds its axle"), new BodyName("pulley", "the pulley, which turns without end"));
    }

    @Override
    public Planned read(Request request) {
        BeltReader reader = new BeltReader(request, 1);
        Optional<Belt> belt = reader.belt();
        Values values = request.values();
        Optional<Integer> teeth = values.given(PulleyFields.TEETH_GIVEN);
        if (belt.isEmpty() || teeth.isEmpty()) {
            return states -> {
                throw new IllegalStateException("refused");
            };
        }
        Material material = reader.material(belt.get());
        BeltChoice choice = reader.read(belt.get(), material);
        PulleySpec spec = new PulleyReader(request, values, choice, material)
                .read("", teeth.get(), values.where(PulleyFields.TEETH_GIVEN), Optional.empty());
        return new PlannedPulley(request.name(), spec, values);
    }

    static Design design(String name, PulleySpec spec, Values values, int states) {
        PulleyStack stack = new PulleyStack(spec, 0);
        double pitch = spec.choice().belt().pitch();
        BeltRun run = run(spec);
        BeltMotion motion = new BeltMotion(run, 1, pitch, states, true);
        Figures figures = new Figures();
        PulleyDimensions.belt(figures, spec.choice(), values);
        PulleyDimensions.pulley(figures, spec, stack, Origin.GIVEN, "", values);
        List<Part> parts = new ArrayList<>(stack.parts(Point.ORIGIN, phase()));
        parts.addAll(spec.body().axle().bought(""));
        DriveFasteners.addJoining(spec, stack, parts);
        List<Choice> choices =
                PulleyDimensions.choices(spec.choice(), values, spec.material().sheet());
        Map<String, Double> travel = new LinkedHashMap<>();
        travel.put("states", (double) states);
        travel.put("belt", pitch);
        travel.put("pulley", 360.0 / spec.rim().teeth());
        Members members = new Members();
        stack.addTo(members, WHEEL, 1, Point.ORIGIN, phase());
        Joints joints = new Joints(stack.joints(WHEEL, Bought.AXLE, new Placement(phase(), Point.ORIGIN)), members);
        return new Design(
                name,
                NAME,
                choices,
                figures.all(),
                parts,
                assembly(name, spec, stack, members, motion),
                table(motion),
                findings(spec, stack),
                travel,
                List.of(),
                joints.rows());
    }

    private static List<Finding> findings(PulleySpec spec, PulleyStack stack) {
        List<Finding> findings = new ArrayList<>(PulleyChecks.of(spec, stack));
        findings.addAll(spec.body().axle().findings(""));
        DriveFasteners.joining(spec, stack).ifPresent(bolt -> findings.add(bolt.reaches()));
        return findings;
    }

    /** The first groove lies on +x, where the belt leaves the pulley's upper half. */
    private static double phase() {
        return 0;
    }

    private static BeltRun run(PulleySpec spec) {
        PulleyRim rim = spec.rim();
        double pitch = spec.choice().belt().pitch();
        Wheel wheel = new Wheel("pulley", Point.ORIGIN, rim.pitchRadius(), true, rim.teeth());
        // the belt comes up on the right and goes down on the left, past a second wheel that is not there
        Wheel far = wheel.at(new Point(0, -(BESIDE + 4) * pitch));
        BeltPath path = BeltPath.of(List.of(wheel, far));
        // a tooth is seated in the groove on +x, where the arc begins
        int count = 2 * BESIDE + (int) Math.floor(rim.teeth() / 2.0);
        return new BeltRun(path, spec.choice(), rim.tooth().land(), -BESIDE * pitch, count);
    }

    /** The belt runs on the pulley, and its teeth follow one another: all of them may touch. */
    private static List<Requirement.Pair> running(List<Member> members, Rubber rubber) {
        List<Requirement.Pair> pairs = new ArrayList<>();
        for (int i = 0; i < members.size(); i++) {
            for (int j = 0; j < i; j++) {
                pairs.add(Requirement.Pair.touching(j, i));
            }
        }
        pairs.addAll(rubber.onePiece());
        return pairs;
    }

    private static Assembly assembly(
            String name, PulleySpec spec, PulleyStack stack, Members members, BeltMotion motion) {
        double pitch = spec.choice().belt().pitch();
        double from = stack.faceBottom() + (stack.face() - spec.choice().width()) / 2;
        double to = from + spec.choice().width();
        Part band = motion.run().openBand((BESIDE + 1) * pitch, from, to);
        Rubber rubber = motion.run().addTo(members, band, 0, motion.firstTooth());
        List<Requirement> requirements = new ArrayList<>();
        requirements.add(new Requirement.StaysApart("tooth-entry", 0, running(members.all(), rubber)));
        requirements.addAll(PulleyStack.webs(members.all(), spec.material(), spec.material()));
        return new Assembly(
                name,
                members.all(),
                motion,
                Optional.empty(),
                requirements,
                callouts(spec),
                steps(spec, stack, members),
                views(spec, motion, band),
                BodyName.numbered("pulley"));
    }

    private static List<View> views(PulleySpec spec, BeltMotion motion, Part band) {
        double pitch = spec.choice().belt().pitch();
        List<Path> lines = List.of(
                Path.of(motion.run().path().beside(0).segments().get(0)),
                Path.of(ringleaf.geom.Arc.circle(Point.ORIGIN, spec.rim().pitchRadius())));
        double r = spec.rim().pitchRadius();
        Box near = new Box(r - 2.2 * pitch, -2 * pitch, r + 1.2 * pitch, 1.4 * pitch);
        int half = (motion.states() - 1) / 2;
        double cut = (band.zFrom() + band.zTo()) / 2;
        return List.of(
                new View("seated", 0, "a tooth seated on the right", Optional.empty(), lines, cut),
                new View("rolling", half, "half a pitch on", Optional.empty(), lines, cut),
                new View("groove", half, "the tooth as it enters the groove", Optional.of(near), lines, cut));
    }

    private static List<Callout> callouts(PulleySpec spec) {
        List<Callout> all = new ArrayList<>();
        PulleyRim rim = spec.rim();
        for (String view : List.of("seated", "rolling")) {
            all.add(diameter(view, rim.outsideRadius(), "outside"));
            all.add(diameter(view, rim.pitchRadius(), "pitch"));
            if (spec.flanges() > 0) {
                all.add(diameter(view, spec.flangeDiameter() / 2, "flange"));
            }
        }
        return all;
    }

    private static Callout diameter(String view, double radius, String what) {
        return new Callout(
                Callout.Form.DIAMETER,
                view,
                Point.ORIGIN,
                Point.polar(radius, Math.toRadians(-55)),
                what + " Ø" + Words.number(2 * radius, 3));
    }

    private static List<BuildStep> steps(PulleySpec spec, PulleyStack stack, Members members) {
        List<BuildStep> steps = new ArrayList<>();
        steps.add(BuildStep.of("Deburr the grooves; a burr there lifts the belt off the rim."));
        if (stack.plates() > 1) {
            steps.add(BuildStep.of("Lay the " + stack.plates() + " plates on one another with their marks in line."));
        }
        if (spec.flanges() > 0) {
            String words = stack.seatRadius() > 0
                    ? "Glue the flanges on their seats."
                    : "Put the flanges on either side"
                            + (spec.joining().isPresent()
                                    ? " and tighten the " + spec.joining().get().count() + " screws."
                                    : " and glue all on a rod through the bore.");
            BuildStep step = BuildStep.of(words, PulleyStack.joining(members, spec, WHEEL, Placing.NOTHING));
            boolean glued = spec.joining().isEmpty();
            steps.add(glued ? step.withGlue("flanges on the rim", List.of(Point.ORIGIN)) : step);
        }
        return steps;
    }

    private static MotionTable table(BeltMotion motion) {
        List<double[]> rows = new ArrayList<>();
        for (int i = 0; i < motion.states(); i++) {
            rows.add(new double[] {Math.toDegrees(motion.turn(0, i)), motion.run(i)});
        }
        return new MotionTable(List.of("pulley_deg", "belt_travel"), rows, "", List.of());
    }
}
