package ringleaf.draw.view;

import ringleaf.geom.Box;
import ringleaf.geom.Point;

/** The assembly seen from above in one state, at true scale. */
final class PlanView {
    private static final double TOP = 19;
    private static final double BOTTOM = 11;
    private static final double SIDE = 4;

    private PlanView() {}

    static byte[] draw(Scene scene, String title, String view, int state, String caption) {
        Box body = scene.box();
        double unit = Math.max(body.width(), body.height()) / 100;
        // Sizes of text follow from the unit alone; a sheet of any area tells them.
        Sheet measure = new Sheet(body, unit);
        Notes notes = new Notes(scene.assembly().callouts(), view, body, unit, measure.textSize());
        double legendX = body.maxX() + notes.margin(true) + 8 * unit;
        double right = legendX
                + Furniture.legendWidth(scene.parts(), measure.textSize(), measure.smallSize(), unit)
                + SIDE * unit;
        double left = body.minX() - Math.max(notes.margin(false), 2 * unit) - SIDE * unit;
        double legendFoot = body.maxY() - Furniture.legendHeight(scene.parts(), unit);
        double bottom = Math.min(body.minY() - notes.foot() - BOTTOM * unit, legendFoot - SIDE * unit);
        Sheet sheet = new Sheet(new Box(left, bottom, right, notes.top() + TOP * unit), unit);
        sheet.paper(title + ", " + view, caption);
        new PlanPainter(scene, sheet, state).paint();
        notes.paint(sheet);
        Furniture.legend(sheet, scene, new Point(legendX, body.maxY()));
        Furniture.title(sheet, title, view + (caption.isEmpty() ? "" : ": " + caption));
        Furniture.scaleBar(sheet);
        return sheet.toBytes();
    }
}
