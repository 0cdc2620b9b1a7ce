// SPDX-License-Identifier: Apache-2.0
package ringleaf.mechanism.gear;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import ringleaf.geom.Arc;
import ringleaf.geom.Box;
import ringleaf.geom.Line;
import ringleaf.geom.Path;
import ringleaf.geom.Point;
import ringleaf.part.Callout;
import ringleaf.part.Callout.Form;
import ringleaf.part.View;
import ringleaf.part.Words;

/** The first mesh at three phases of a pitch, and enlarged at its contact with the line of action. */
final class TrainViews {
    private static final String[] NAMES = {"mesh-1", "mesh-2", "mesh-3"};
    private static final String CONTACT = "contact";
    /** Half the side of the enlarged window, in modules, beside half the path of contact. */
    private static final double WINDOW = 2.2;
    /** Half the arcs of the rolling circles that are drawn, in modules. */
    private static final double ROLLING_ARC = 3;

    private final TrainDesign design;
    private final TrainMotion motion;
    private final Stage first;
    private final double[] path;
    private final Point along;

    TrainViews(TrainDesign design, TrainMotion motion) {
        this.design = design;
        this.motion = motion;
        this.first = design.stages().get(0);
        this.path = ContactEnds.of(first.mesh());
        // The driver turns counter-clockwise and pushes along the common tangent of the base circles.
        double slant = first.spec().at() + Math.PI / 2 - first.mesh().workingAngle();
        this.along = Point.polar(1, slant);
    }

    List<View> views() {
        List<View> views = new ArrayList<>();
        for (int i = 0; i < NAMES.length; i++) {
            int state = motion.phase(i / 3.0);
            views.add(new View(NAMES[i], state, caption(state), Optional.empty(), List.of()));
        }
        int state = motion.phase(2 / 3.0);
        Point pitch = first.pitchPoint();
        double half = WINDOW * first.mesh().module() + Math.max(Math.abs(path[0]), path[1]) / 2;
        Box window = new Box(pitch.x() - half, pitch.y() - half, pitch.x() + half, pitch.y() + half);
        views.add(new View(CONTACT, state, caption(state), Optional.of(window), lines()));
        return views;
    }

    private String caption(int state) {
        double in = motion.driver(state);
        double pitch = first.mesh().driver().pitchAngle();
        double share = in / pitch - Math.floor(in / pitch + 1e-9);
        return "driver at " + Words.degrees(in, 1) + (design.spec().isPair() ? ", driven at " : ", last gear at ")
                + Words.degrees(in * design.last().drivenTurn(), 1) + ", "
                + Words.number(Math.abs(share), 2) + " of a pitch";
    }

    /** The line of action from base circle to base circle, its used part twice over, and both rolling circles. */
    private List<Path> lines() {
        Point pitch = first.pitchPoint();
        double[] tangents = ContactEnds.tangents(first.mesh());
        List<Path> lines = new ArrayList<>();
        lines.add(line(pitch, tangents[0], tangents[1]));
        lines.add(line(pitch, path[0], path[1]));
        double at = first.spec().at();
        lines.add(arc(first.driverAxis(), first.mesh().driverWorkingRadius(), at));
        boolean inner = first.mesh() instanceof Mesh.Inner;
        lines.add(arc(first.drivenAxis(), first.mesh().drivenWorkingRadius(), inner ? at : at + Math.PI));
        return lines;
    }

    private Path line(Point pitch, double from, double to) {
        return Path.of(new Line(pitch.plus(along.times(from)), pitch.plus(along.times(to))));
    }

    private Path arc(Point centre, double radius, double direction) {
        double half = Math.min(Math.PI / 2, ROLLING_ARC * first.mesh().module() / radius);
        return Path.of(Arc.of(centre, radius, direction - half, 2 * half));
    }

    List<Callout> callouts() {
        List<Callout> all = new ArrayList<>();
        for (Stage stage : design.stages()) {
            all.add(new Callout(
                    Form.DISTANCE,
                    NAMES[0],
                    stage.driverAxis(),
                    stage.drivenAxis(),
                    "centres " + Words.number(stage.mesh().centreDistance(), 3)));
            Rim driver = stage.driver().rim();
            all.add(label(stage.driverAxis(), driver, stage.number()));
            all.add(label(stage.drivenAxis(), stage.driven().rim(), stage.number()));
        }
        diameter(all, first.driverAxis(), 2 * first.driver().rim().tipRadius());
        diameter(all, first.drivenAxis(), 2 * first.driven().reach());
        contact(all);
        return all;
    }

    private static Callout label(Point axis, Rim rim, int stage) {
        Point foot = axis.plus(new Point(0, 0.35 * rim.rootRadius()));
        String text = rim.teeth() + " teeth, module " + Words.number(rim.module(), 4);
        return new Callout(Form.LABEL, NAMES[1], axis, foot, text);
    }

    private static void diameter(List<Callout> all, Point axis, double diameter) {
        Point to = axis.plus(Point.polar(diameter / 2, Math.PI / 3));
        all.add(new Callout(Form.DIAMETER, NAMES[0], axis, to, "Ø" + Words.number(diameter, 2)));
    }

    private void contact(List<Callout> all) {
        Point pitch = first.pitchPoint();
        Point begin = pitch.plus(along.times(path[0]));
        Point end = pitch.plus(along.times(path[1]));
        double reach = first.mesh().module() * WINDOW;
        if (Math.abs(path[0]) < 2 * reach && path[1] < 2 * reach) {
            all.add(new Callout(Form.LABEL, CONTACT, begin, begin, "contact begins"));
            all.add(new Callout(Form.LABEL, CONTACT, end, end, "contact ends"));
        }
        all.add(new Callout(
                Form.LABEL,
                CONTACT,
                pitch,
                pitch,
                "pitch point, working angle " + Words.degrees(first.mesh().workingAngle(), 2)));
    }
}
