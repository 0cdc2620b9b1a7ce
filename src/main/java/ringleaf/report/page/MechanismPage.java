// SPDX-License-Identifier: Apache-2.0
package ringleaf.report.page;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import ringleaf.draw.Decimals;
import ringleaf.draw.view.MovingView;
import ringleaf.geom.Box;
import ringleaf.geom.Placement;
import ringleaf.part.Assembly;
import ringleaf.part.Design;
import ringleaf.part.Member;
import ringleaf.part.Motion;
import ringleaf.part.MotionTable;
import ringleaf.part.Part;
import ringleaf.part.ShownUnit;

/**
 * The half of a mechanism's page that needs no findings: its picture, the motion and the table of the travel. It is
 * made beside the judge.
 */
public final class MechanismPage {
    private static final int DIGITS = 6;
    private static final int DECIMALS = 5;
    /** Room round the picture, as a share of its size. */
    private static final double ROOM = 0.04;

    private final Design design;
    private final String id;
    private final MovingView view;
    private final ShownUnit unit;
    private final String picture;
    private final String data;

    private MechanismPage(int number, Design design, MovingView view, ShownUnit unit) {
        this.design = design;
        this.unit = unit;
        this.id = "m" + number;
        this.view = view;
        this.picture = new PagePicture(id, design.assembly(), view).draw(viewBox(view.box(), ROOM));
        this.data = told();
    }

    /** Draws a mechanism that no views are made of. */
    public static MechanismPage of(int number, Design design, ShownUnit unit) {
        return of(number, design, MovingView.of(design.assembly()), unit);
    }

    /**
     * Draws a mechanism.
     *
     * @param number of the mechanism on the page, from 0
     * @param view of the design's assembly
     * @param unit in which lengths are told
     */
    public static MechanismPage of(int number, Design design, MovingView view, ShownUnit unit) {
        return new MechanismPage(number, design, view, unit);
    }

    Design design() {
        return design;
    }

    /** Prefix of all ids of this mechanism. */
    String id() {
        return id;
    }

    ShownUnit unit() {
        return unit;
    }

    MovingView view() {
        return view;
    }

    /** The SVG element in the first state. */
    String picture() {
        return picture;
    }

    /** The JSON object for the page's script. */
    String data() {
        return data;
    }

    /** Number of the member of this name, or -1. */
    int member(String name) {
        List<Member> members = design.assembly().members();
        for (int i = 0; i < members.size(); i++) {
            if (members.get(i).name().equals(name)) {
                return i;
            }
        }
        return -1;
    }

    /** Number of the part of this name in the picture, or -1 where it has none, or one that is a member by itself. */
    int part(String name) {
        if (member(name) >= 0) {
            return -1;
        }
        for (int i = 0; i < view.parts().size(); i++) {
            if (view.parts().get(i).name().equals(name)) {
                return i;
            }
        }
        return -1;
    }

    private String told() {
        StringBuilder out = new StringBuilder(16384);
        Assembly assembly = design.assembly();
        PageText.json(out.append("{\"name\":"), design.name());
        MotionData motion = new MotionData(assembly.motion());
        states(out, motion.states(), assembly.motion());
        members(out, assembly);
        parts(out);
        list(out.append(",\"leaves\":"), view.leaves());
        motion.append(out.append(','), bodies(assembly));
        unit(out);
        table(out, motion.states(), shown());
        return out.append('}').toString();
    }

    /** How the page's script is to tell lengths: spelling, mm in one, spelling of areas, mm² in one, step. */
    private void unit(StringBuilder out) {
        PageText.json(out.append(",\"unit\":["), unit.spelling());
        PageText.number(out.append(','), unit.millimetres(), 6);
        PageText.json(out.append(','), unit.areaSpelling());
        PageText.number(out.append(','), unit.squareMillimetres(), 6);
        PageText.number(out.append(','), unit.step(), 6).append(']');
    }

    /** The table without what no servo turns. */
    private MotionTable shown() {
        MotionTable table = design.motion();
        List<Integer> kept = new ArrayList<>();
        for (int c = 0; c < table.columns().size(); c++) {
            if (design.hasServo() || !table.columns().get(c).startsWith("servo_")) {
                kept.add(c);
            }
        }
        return table.only(kept);
    }

    /** A view box of a box with y up, with room round it. */
    static String viewBox(Box box, double room) {
        double margin = room * Math.max(box.width(), box.height());
        Box grown = box.grown(margin);
        return Decimals.of(grown.minX(), 3) + " " + Decimals.of(-grown.maxY(), 3) + " " + Decimals.of(grown.width(), 3)
                + " " + Decimals.of(grown.height(), 3);
    }

    private static int bodies(Assembly assembly) {
        int most = 0;
        for (Member member : assembly.members()) {
            most = Math.max(most, member.body());
        }
        return most + 1;
    }

    private static void states(StringBuilder out, int[] states, Motion motion) {
        out.append(",\"states\":[");
        for (int i = 0; i < states.length; i++) {
            out.append(i == 0 ? "" : ",").append(states[i]);
        }
        out.append("],\"labels\":{");
        int last = states.length - 1;
        PageText.json(out.append("\"0\":"), motion.label(0));
        PageText.json(out.append(",\"").append(last).append("\":"), motion.label(states[last]));
        out.append('}');
    }

    private void members(StringBuilder out, Assembly assembly) {
        out.append(",\"members\":[");
        Map<String, Integer> parts = new TreeMap<>();
        for (int i = 0; i < view.parts().size(); i++) {
            parts.put(view.parts().get(i).name(), i);
        }
        for (int i = 0; i < assembly.members().size(); i++) {
            Member member = assembly.members().get(i);
            PageText.json(out.append(i == 0 ? "[" : ",["), member.name());
            out.append(',').append(parts.get(member.part().name())).append(',').append(member.body());
            Placement home = member.home();
            if (!home.equals(Placement.IDENTITY)) {
                PageText.number(out.append(','), Math.toDegrees(home.angle()), 6);
                PageText.number(out.append(','), home.shift().x(), 5);
                PageText.number(out.append(','), home.shift().y(), 5);
            }
            out.append(']');
        }
        out.append(']');
    }

    private void parts(StringBuilder out) {
        out.append(",\"parts\":[");
        for (int i = 0; i < view.parts().size(); i++) {
            Part part = view.parts().get(i);
            PageText.json(out.append(i == 0 ? "[" : ",["), part.name());
            PageText.number(out.append(','), part.isDrawn() ? part.zFrom() : 0, 4);
            PageText.number(out.append(','), part.isDrawn() ? part.zTo() : 0, 4);
            PageText.number(out.append(','), part.isDrawn() ? part.box().height() : 0, 3)
                    .append(']');
        }
        out.append(']');
    }

    private static void table(StringBuilder out, int[] states, MotionTable table) {
        out.append(",\"columns\":[");
        for (int c = 0; c < table.columns().size(); c++) {
            PageText.json(out.append(c == 0 ? "" : ","), table.columns().get(c));
        }
        out.append("],\"table\":[");
        for (int c = 0; c < table.columns().size(); c++) {
            out.append(c == 0 ? "[" : ",[");
            for (int i = 0; i < states.length; i++) {
                out.append(i == 0 ? "" : ",");
                value(out, states[i] < table.rows().size() ? table.rows().get(states[i])[c] : Double.NaN);
            }
            out.append(']');
        }
        out.append(']');
        if (!table.placeColumn().isEmpty()) {
            places(out, states, table);
        }
    }

    private static void value(StringBuilder out, double value) {
        if (Double.isNaN(value) || Double.isInfinite(value)) {
            out.append("null");
        } else {
            out.append(Decimals.significant(value, DIGITS, DECIMALS));
        }
    }

    /** Each distinct word once, then a number for every state. */
    private static void places(StringBuilder out, int[] states, MotionTable table) {
        Map<String, Integer> numbers = new TreeMap<>();
        PageText.json(out.append(",\"placeColumn\":"), table.placeColumn()).append(",\"places\":[");
        StringBuilder at = new StringBuilder();
        for (int i = 0; i < states.length; i++) {
            String place = states[i] < table.places().size() ? table.places().get(states[i]) : "";
            Integer number = numbers.get(place);
            if (number == null) {
                number = numbers.size();
                numbers.put(place, number);
                PageText.json(out.append(number == 0 ? "" : ","), place);
            }
            at.append(i == 0 ? "" : ",").append(number);
        }
        out.append("],\"placeAt\":[").append(at).append(']');
    }

    private static void list(StringBuilder out, List<Integer> numbers) {
        out.append('[');
        for (int i = 0; i < numbers.size(); i++) {
            out.append(i == 0 ? "" : ",").append(numbers.get(i));
        }
        out.append(']');
    }
}
