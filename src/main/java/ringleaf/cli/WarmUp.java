package ringleaf.cli;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import ringleaf.curve.Shapes;
import ringleaf.draw.svg.SvgWriter;
import ringleaf.geom.Box;
import ringleaf.geom.Contour;
import ringleaf.geom.Placement;
import ringleaf.geom.Point;
import ringleaf.geom.Region;
import ringleaf.geom.Tolerance;
import ringleaf.part.Assembly;
import ringleaf.part.BuildStep;
import ringleaf.part.Callout;
import ringleaf.part.Design;
import ringleaf.part.Layer;
import ringleaf.part.Member;
import ringleaf.part.Motion;
import ringleaf.part.MotionTable;
import ringleaf.part.Part;
import ringleaf.part.Placing;
import ringleaf.part.Requirement;
import ringleaf.part.Way;
import ringleaf.report.DesignJson;
import ringleaf.report.FileSet;
import ringleaf.report.MechanismReport;
import ringleaf.report.PartFiles;
import ringleaf.report.ViewFiles;
import ringleaf.spec.text.Problems;
import ringleaf.spec.text.SpecSource;
import ringleaf.spec.text.YamlReader;
import ringleaf.tooth.BasicRack;
import ringleaf.tooth.GearOutline;
import ringleaf.tooth.ShiftChoice;
import ringleaf.tooth.ToothForm;
import ringleaf.verify.Judge;
import ringleaf.verify.Options;

/**
 * Loads what a run will need soon, on a second thread, while the first one is still reading or solving. A cold
 * start spends most of its time on loading and linking classes; results do not depend on this. It does real work on a
 * plate with a hole that turns by a right angle.
 */
final class WarmUp {
    private WarmUp() {}

    /** Starts loading, when these arguments are likely to end in files. */
    static Optional<Thread> start(String[] args) {
        if (args.length > 1 && args[0].equals(Syntax.MAKE)) {
            Thread thread = new Thread(WarmUp::load, "warm-up");
            thread.setDaemon(true);
            thread.start();
            return Optional.of(thread);
        }
        return Optional.empty();
    }

    private static void load() {
        try {
            YamlReader.read(SpecSource.of("", "title: t\nmechanisms: {a: {is: 1}} # b\n"), new Problems());
            ToothForm teeth = ToothForm.of(1, 12, ShiftChoice.of(BasicRack.FORM_A, 12, 40, 0, 0.2).pinion(), 0, BasicRack.FORM_A);
            GearOutline.of(teeth, Tolerance.CURVE);
            SvgWriter.warmUp();
            Design plate = plate();
            FileSet files = new FileSet();
            Map<String, List<String>> paths = PartFiles.add(plate, PartFiles.Wanted.USUAL, files);
            ViewFiles.add(plate, "", files);
            Judge.judge(plate.assembly(), Options.DEFAULT);
            DesignJson.write("", "", List.of(new MechanismReport(plate, List.of(), paths)));
        } catch (RuntimeException | Error e) {
            // Whatever this is, the run itself will meet it and report it.
            Thread.currentThread().setName("warm-up-failed");
        }
    }

    private static Design plate() {
        Contour hole = Contour.circle(new Point(3, 0), 1);
        Region region = Region.of(Shapes.roundedRectangle(new Box(-9, -9, 9, 9), 2), hole);
        Part.Source source = new Part.Source("", "");
        Part part = new Part("plate", "plate", 1, source, List.of(Layer.of(region, 0, 1)), List.of(), "");
        Member member = new Member("plate", part, 1, Placement.IDENTITY);
        List<Requirement> requirements = List.of(
                new Requirement.StaysInside("", List.of(0), Region.disc(Point.ORIGIN, 20), 1),
                new Requirement.LeastWeb("", "plate", 1),
                new Requirement.StaysApart("", 1, List.of()));
        Callout callout = new Callout(Callout.Form.DIAMETER, "open", Point.ORIGIN, new Point(9, 0), "");
        Assembly assembly = new Assembly(
                "plate", List.of(member), new Turn(), Optional.empty(), requirements, List.of(callout),
                List.of(BuildStep.of("", List.of(Placing.of(0, Placing.NOTHING, Way.DOWN)))));
        MotionTable table = new MotionTable(List.of("a"), List.of(new double[1], new double[1]), "", List.of());
        return new Design(
                "plate", "", List.of(), List.of(), List.of(part), assembly, table, List.of(), Map.of(), List.of());
    }

    private static final class Turn implements Motion {
        @Override
        public int states() {
            return 2;
        }

        @Override
        public Placement pose(int body, int state) {
            return Placement.turn(state * Math.PI / 2);
        }

        @Override
        public String label(int state) {
            return "";
        }

        @Override
        public List<Integer> notable() {
            return List.of();
        }
    }
}
