// SPDX-License-Identifier: Apache-2.0
package ringleaf.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import ringleaf.draw.Decimals;
import ringleaf.draw.view.AssemblyViews;
import ringleaf.draw.view.MovingView;
import ringleaf.part.Design;
import ringleaf.part.MotionTable;
import ringleaf.part.ShownUnit;
import ringleaf.part.Stand;

/** The pictures of a mechanism. */
public final class ViewFiles {
    private static final String FOLDER = "views/";
    private static final int MOST = 4;

    private ViewFiles() {}

    /**
     * Adds {@code views/<mechanism>-<view>.svg} to the set and returns the paths.
     *
     * @param shared what a page shows of the assembly too
     * @param title of the spec
     * @param stand where the mechanism stands, where the spec says it
     */
    public static List<String> add(
            Design design, MovingView shared, String title, Optional<Stand> stand, FileSet files) {
        String name = design.name()
                + stand.map(s -> ", " + StandWords.of(s, ShownUnit.MM)).orElse("");
        String head = title.isEmpty() ? name : title + ", " + name;
        Map<String, byte[]> views = AssemblyViews.all(head, shared, state -> caption(design, state));
        List<String> paths = new ArrayList<>();
        for (Map.Entry<String, byte[]> view : views.entrySet()) {
            String path = FOLDER + FileNames.of(design.name()) + "-" + view.getKey() + ".svg";
            paths.add(files.add(path, view.getValue()));
        }
        return paths;
    }

    private static String caption(Design design, int state) {
        return caption(design.motion(), design.hasServo(), state);
    }

    /**
     * The first angles and diameters that the table gives for a state: {@code ring 44.6°, opening 35.6 mm}.
     *
     * @param servo whether there is one; else nothing is said of its turn
     */
    static String caption(MotionTable table, boolean servo, int state) {
        if (state >= table.rows().size()) {
            return "";
        }
        StringBuilder out = new StringBuilder();
        int said = 0;
        for (int i = 0; i < table.columns().size() && said < MOST; i++) {
            String column = table.columns().get(i);
            double value = table.rows().get(state)[i];
            boolean angle = column.endsWith("_deg") && column.indexOf('_') == column.length() - 4;
            boolean diameter = column.endsWith("_diameter");
            if (!angle && !diameter || !servo && column.startsWith("servo_") || !Figures.isNumber(value)) {
                continue;
            }
            said++;
            String name = column.substring(0, column.lastIndexOf('_')).replace('_', ' ');
            out.append(out.length() > 0 ? ", " : "").append(name).append(' ');
            out.append(Decimals.of(value, angle ? 1 : 2)).append(angle ? "\u00b0" : " mm");
        }
        return out.toString();
    }
}
