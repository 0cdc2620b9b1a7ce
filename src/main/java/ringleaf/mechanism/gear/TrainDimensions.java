// SPDX-License-Identifier: Apache-2.0
package ringleaf.mechanism.gear;

import java.util.ArrayList;
import java.util.List;
import ringleaf.machine.Room;
import ringleaf.part.Choice;
import ringleaf.part.Dimension;
import ringleaf.part.Dimension.Origin;
import ringleaf.tooth.TeethRatio;
import ringleaf.tooth.ToothForm;
import ringleaf.tooth.ToothMeasure;

/** Choices and sizes of a pair or a train as they stand in design.json, each with where it comes from. */
final class TrainDimensions {
    private final TrainDesign design;
    private final TrainSpec spec;
    private final List<Dimension> all = new ArrayList<>();

    TrainDimensions(TrainDesign design) {
        this.design = design;
        this.spec = design.spec();
    }

    /** The choices; with other teeth that would do beside them where they are to be told. */
    List<Choice> choices(boolean told) {
        List<Choice> choices = new ArrayList<>();
        List<String> others = told ? new Alternatives(design).words() : List.of();
        for (Stage stage : design.stages()) {
            boolean given = given(stage, "driver.teeth") && given(stage, "driven.teeth");
            choices.add(new Choice(
                    prefix(stage) + "teeth",
                    stage.mesh().driver().teeth() + "/" + stage.mesh().drivenTeeth(),
                    given ? Origin.GIVEN : Origin.SOLVED,
                    given ? "" : why(stage, stage.number() == 1 ? others : List.of())));
            choices.add(new Choice(
                    prefix(stage) + "mesh",
                    stage.mesh() instanceof Mesh.Inner ? "internal" : "external",
                    spec.given().contains("internal") ? Origin.GIVEN : Origin.DEFAULT,
                    ""));
        }
        String sense = design.last().drivenTurn() > 0 ? "same as the driver's" : "against the driver's";
        choices.add(new Choice("sense", sense, Origin.SOLVED, "every pair of outside gears turns it round"));
        return choices;
    }

    /** What these teeth have, and what else would do. */
    private String why(Stage stage, List<String> others) {
        StringBuilder why = new StringBuilder();
        boolean shared = !spec.isPair() && !spec.given().contains("stages");
        if (shared) {
            List<TeethRatio> train =
                    spec.stages().stream().map(StageSpec::teeth).toList();
            why.append("of the shortest train")
                    .append(StageSplit.clearsAxles(train) ? " whose gears clear all axles" : "")
                    .append(spec.ratioWithin() > 0 && StageSplit.hunts(train) ? " and hunt in every stage" : "");
        } else {
            why.append(
                    smallest(stage) >= stage.mesh().rack().leastTeeth() - TeethSearch.BARELY
                            ? "no undercut without profile shift"
                            : "profile shift against undercut");
        }
        why.append(stage.spec().teeth().isHunting() ? ", no common factor" : "");
        for (int i = 0; i < others.size(); i++) {
            why.append(i == 0 ? "; also " : "; ").append(others.get(i));
        }
        return why.toString();
    }

    private static int smallest(Stage stage) {
        int driver = stage.mesh().driver().teeth();
        return stage.mesh() instanceof Mesh.Inner
                ? driver
                : Math.min(driver, stage.mesh().drivenTeeth());
    }

    List<Dimension> all() {
        double asked = spec.ratio().orElse(Double.NaN);
        boolean exact = Math.abs(spec.totalRatio() - asked) <= 1e-9 * asked;
        add("ratio", spec.totalRatio(), "1", exact ? Origin.GIVEN : Origin.SOLVED, "of the teeth");
        for (Stage stage : design.stages()) {
            stage(stage);
        }
        mm("width", spec.width(), spec.given().contains("width") ? Origin.GIVEN : Origin.DEFAULT, "");
        double depth = design.last().zTo();
        mm("depth", depth, Origin.SOLVED, "over all gears along the axis");
        mm("overall-length", spec.length(), Origin.SOLVED, "over all gears, tip to tip");
        add(
                "travel",
                Math.toDegrees(spec.travel()),
                "deg",
                spec.given().contains("travel") ? Origin.GIVEN : Origin.DEFAULT,
                "");
        output();
        mm(
                "outline-deviation",
                design.deviation(),
                Origin.SOLVED,
                "worst distance of any smooth curve's arcs from the curve");
        return all;
    }

    private void stage(Stage stage) {
        Mesh mesh = stage.mesh();
        String p = prefix(stage);
        boolean moduleGiven = spec.given().contains("module")
                || given(stage, "driver.module")
                || given(stage, "driven.module")
                || given(stage, "module");
        add(p + "module", mesh.module(), "mm", moduleGiven ? Origin.GIVEN : Origin.SOLVED, moduleHow(stage));
        boolean angleGiven = spec.given().contains("pressure-angle")
                || given(stage, "driver.pressure-angle")
                || given(stage, "driven.pressure-angle");
        add(
                p + "pressure-angle",
                Math.toDegrees(mesh.rack().pressureAngle()),
                "deg",
                angleGiven ? Origin.GIVEN : Origin.DEFAULT,
                "");
        boolean exact = stage.spec().ask().centreDistance().isExact();
        mm(
                p + "centre-distance",
                mesh.centreDistance(),
                exact ? Origin.GIVEN : Origin.SOLVED,
                "where teeth of full thickness mesh without backlash");
        add(
                p + "working-pressure-angle",
                Math.toDegrees(mesh.workingAngle()),
                "deg",
                Origin.SOLVED,
                "base circles and centre distance");
        add(p + "contact-ratio", mesh.contactRatio(), "1", Origin.SOLVED, "of what both involutes carry");
        Room play = stage.spec().ask().backlashRoom(mesh.module());
        mm(
                p + "backlash",
                mesh.backlash(),
                play.origin() == Origin.GIVEN ? Origin.GIVEN : Origin.SOLVED,
                "along the rolling circles: what the process may misplace edges by, and 0.03 modules; " + play.how());
        Room tips = stage.spec().ask().room().tips(mesh);
        mm(
                p + "tip-clearance",
                mesh.tipClearance(),
                Origin.SOLVED,
                "tip to root, the lesser of both gears; " + tips.how());
        wheel(stage, "driver", stage.driver());
        wheel(stage, "driven", stage.driven());
    }

    private String moduleHow(Stage stage) {
        boolean most = !Double.isNaN(stage.spec().ask().centreDistance().mostOr(Double.NaN));
        return spec.overall().isPresent() || most
                ? "the largest of the usual series that fits with these teeth"
                : "the usual one where nothing limits it";
    }

    private void wheel(Stage stage, String which, Wheel wheel) {
        String p = prefix(stage) + which;
        Rim rim = wheel.rim();
        add(
                p + "-teeth",
                rim.teeth(),
                "1",
                given(stage, which + ".teeth") ? Origin.GIVEN : Origin.SOLVED,
                "of the full circle");
        if (wheel.spec().sector().isPresent()) {
            add(
                    p + "-teeth-cut",
                    wheel.teethCut(),
                    "1",
                    given(stage, which + ".sector.teeth") ? Origin.GIVEN : Origin.SOLVED,
                    "what the travel needs and one more at each end");
        }
        add(
                p + "-profile-shift",
                rim.shift(),
                "1",
                given(stage, which + ".profile-shift") ? Origin.GIVEN : Origin.SOLVED,
                "no undercut, tips of some width, equal sliding");
        measures(all, p, rim);
        wheel.spec()
                .ringRadius()
                .ifPresent(r -> mm(
                        p + "-ring-diameter",
                        2 * r,
                        given(stage, which + ".ring-diameter") ? Origin.GIVEN : Origin.SOLVED,
                        "root circle and what stands outside it"));
    }

    /** Circles, and what a caliper measures on the teeth. */
    static void measures(List<Dimension> all, String p, Rim rim) {
        double module = rim.module();
        all.add(solved(p + "-reference-diameter", module * rim.teeth(), "teeth times module"));
        all.add(solved(p + "-tip-diameter", 2 * rim.tipRadius(), "addendum, profile shift and shortening"));
        all.add(solved(p + "-root-diameter", 2 * rim.rootRadius(), "dedendum and profile shift"));
        if (rim instanceof Rim.Outer outer) {
            ToothForm form = outer.form();
            int count = ToothMeasure.spanTeeth(form);
            String how = "caliper over " + count + (count == 1 ? " tooth" : " teeth");
            all.add(new Dimension(p + "-span-teeth", count, "1", Origin.SOLVED, "touching near mid flank"));
            all.add(solved(p + "-span", ToothMeasure.span(form, count), how));
        }
    }

    private static Dimension solved(String name, double value, String how) {
        return new Dimension(name, value, "mm", Origin.SOLVED, how);
    }

    private void output() {
        double loss = Math.pow(LoadChecks.EFFICIENCY, design.stages().size());
        double ratio = spec.totalRatio();
        spec.drive().torque().ifPresent(torque -> {
            boolean given = spec.given().contains("drive.torque");
            add("drive-torque", torque, "Nmm", given ? Origin.GIVEN : Origin.DEFAULT, "");
            add(
                    "output-torque",
                    torque * ratio * loss,
                    "Nmm",
                    Origin.SOLVED,
                    "torque times ratio, a tenth lost in each mesh");
        });
        spec.drive().speed().ifPresent(speed -> {
            add("drive-speed", speed, "1", Origin.GIVEN, "");
            add("output-speed", speed / ratio, "1", Origin.SOLVED, "turns a minute over the ratio");
        });
        spec.drive()
                .servo()
                .ifPresent(servo -> add(
                        "output-travel",
                        Math.toDegrees(servo.travel() / ratio),
                        "deg",
                        Origin.SOLVED,
                        "the servo's travel over the ratio"));
    }

    private String prefix(Stage stage) {
        return spec.isPair() ? "" : "stage-" + stage.number() + "-";
    }

    private boolean given(Stage stage, String path) {
        String own = spec.isPair() ? path : "stages." + stage.number() + "." + path;
        return spec.given().contains(own);
    }

    private void mm(String name, double value, Origin origin, String how) {
        add(name, value, "mm", origin, how);
    }

    private void add(String name, double value, String unit, Origin origin, String how) {
        all.add(new Dimension(name, value, unit, origin, origin == Origin.SOLVED ? how : ""));
    }
}
