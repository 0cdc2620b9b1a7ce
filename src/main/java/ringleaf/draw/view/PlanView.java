// SPDX-License-Identifier: Apache-2.0
package ringleaf.draw.view;

import java.util.ArrayList;
import java.util.List;
import org.w3c.dom.Element;
import ringleaf.draw.svg.PathData;
import ringleaf.geom.Box;
import ringleaf.geom.Path;
import ringleaf.geom.Point;
import ringleaf.part.Callout;
import ringleaf.part.View;

/** The assembly seen from above in one state: the whole at true scale, or a window of it enlarged. */
final class PlanView {
    private static final double TOP = 19;
    private static final double BOTTOM = 11;
    private static final double SIDE = 4;
    private static final double LINE = 0.3;
    /** Size of an enlarged window on paper, mm, and the enlargements to choose from. */
    private static final double ENLARGED = 130;

    private static final int[] SCALES = {2, 5, 10, 20, 50, 100};

    private PlanView() {}

    static byte[] draw(Scene scene, String title, View wanted, String said) {
        String view = wanted.name();
        int scale = wanted.window().isPresent() ? scale(wanted.window().get()) : 1;
        Box body = scaled(wanted.window().orElseGet(() -> withLines(scene.box(), wanted.lines())), scale);
        String caption = scale == 1 ? said : "enlarged " + scale + " times" + (said.isEmpty() ? "" : "; " + said);
        double unit = Math.max(body.width(), body.height()) / 100;
        // Sizes of text follow from the unit alone; a sheet of any area tells them.
        Sheet measure = new Sheet(body, unit);
        Notes notes = new Notes(callouts(scene, scale), view, body, unit, measure.textSize());
        double legendX = body.maxX() + notes.margin(true) + 8 * unit;
        double right = legendX
                + Furniture.legendWidth(scene.parts(), measure.textSize(), measure.smallSize(), unit)
                + SIDE * unit;
        double left = body.minX() - Math.max(notes.margin(false), 2 * unit) - SIDE * unit;
        double legendFoot = body.maxY() - Furniture.legendHeight(scene.parts(), unit);
        double bottom = Math.min(body.minY() - notes.foot() - BOTTOM * unit, legendFoot - SIDE * unit);
        Sheet sheet = new Sheet(new Box(left, bottom, right, notes.top() + TOP * unit), unit);
        sheet.paper(title + ", " + view, caption);
        Sheet inside = sheet.enlarged(scale);
        Element ground = wanted.window().isPresent() ? window(sheet, body, scale) : sheet.root();
        new PlanPainter(scene, inside, ground, wanted.state(), wanted.cut()).paint();
        lines(inside, ground, wanted);
        notes.paint(sheet);
        Furniture.legend(sheet, scene, new Point(legendX, body.maxY()));
        Furniture.title(sheet, title, view + (caption.isEmpty() ? "" : ": " + caption));
        Furniture.scaleBar(sheet, scale);
        return sheet.toBytes();
    }

    /** A box that holds the view's lines too, so that no text comes to lie on them. */
    private static Box withLines(Box box, List<Path> lines) {
        Box all = box;
        for (Path line : lines) {
            all = all.union(line.box());
        }
        return all;
    }

    private static Box scaled(Box box, int scale) {
        return new Box(scale * box.minX(), scale * box.minY(), scale * box.maxX(), scale * box.maxY());
    }

    private static List<Callout> callouts(Scene scene, int scale) {
        List<Callout> own = scene.assembly().callouts();
        if (scale == 1) {
            return own;
        }
        List<Callout> enlarged = new ArrayList<>();
        for (Callout c : own) {
            enlarged.add(new Callout(c.form(), c.view(), c.from().times(scale), c.to().times(scale), c.text()));
        }
        return enlarged;
    }

    /** The round enlargement that brings a window nearest to its usual size on paper. */
    private static int scale(Box window) {
        double wanted = ENLARGED / Math.max(window.width(), window.height());
        int best = SCALES[0];
        for (int scale : SCALES) {
            best = Math.abs(scale - wanted) < Math.abs(best - wanted) ? scale : best;
        }
        return best;
    }

    /** A group drawn so many times as large that shows nothing outside the window, and the window's frame. */
    private static Element window(Sheet sheet, Box box, int scale) {
        String[] frame = {
            "x", Sheet.number(box.minX()), "y", Sheet.number(-box.maxY()),
            "width", Sheet.number(box.width()), "height", Sheet.number(box.height())
        };
        Element clip = sheet.add(sheet.root(), "clipPath", "id", "window");
        sheet.add(clip, "rect", frame);
        Element shown = sheet.add(sheet.root(), "g", "clip-path", "url(#window)");
        Element ground = sheet.add(shown, "g", "transform", "scale(" + scale + ")");
        Element edge = sheet.add(sheet.root(), "rect", frame);
        Sheet.set(edge, "fill", "none");
        Sheet.set(edge, "stroke", Palette.QUIET_INK);
        Sheet.set(edge, "stroke-width", Sheet.number(LINE * sheet.unit()));
        return ground;
    }

    private static void lines(Sheet sheet, Element ground, View view) {
        if (view.lines().isEmpty()) {
            return;
        }
        Element group = sheet.group(ground, "lines");
        for (Path line : view.lines()) {
            String data = new PathData(Sheet.DECIMALS).add(line).toString();
            sheet.path(group, data, "none", Palette.SIGNAL, LINE);
        }
    }
}
