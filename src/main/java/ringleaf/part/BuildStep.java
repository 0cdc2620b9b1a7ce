// SPDX-License-Identifier: Apache-2.0
package ringleaf.part;

import java.util.ArrayList;
import java.util.List;
import ringleaf.geom.Mirror;
import ringleaf.geom.Point;

/**
 * One step of putting a mechanism together, in the pose of state 0.
 *
 * @param words what to do, for the builder
 * @param placings what comes to its place, in order; empty where nothing does
 * @param glue what is fixed for good, and where
 */
public record BuildStep(String words, List<Placing> placings, List<Glue> glue) {
    /**
     * Places that are glued, soldered or pressed.
     *
     * @param words what is fixed to what
     * @param at places in the mechanism's frame in state 0
     */
    public record Glue(String words, List<Point> at) {
        public Glue {
            at = List.copyOf(at);
        }
    }

    public BuildStep {
        placings = List.copyOf(placings);
        glue = List.copyOf(glue);
    }

    /** A step at which nothing comes to its place. */
    public static BuildStep of(String words) {
        return new BuildStep(words, List.of(), List.of());
    }

    /** A step without glue. */
    public static BuildStep of(String words, List<Placing> placings) {
        return new BuildStep(words, placings, List.of());
    }

    /** The same with places to be fixed for good. */
    public BuildStep withGlue(String what, List<Point> at) {
        List<Glue> all = new ArrayList<>(glue);
        all.add(new Glue(what, at));
        return new BuildStep(words, placings, all);
    }

    /** The mirror image; words stay as they are. */
    public BuildStep mirrored(Mirror mirror) {
        List<Placing> turned = new ArrayList<>(placings.size());
        for (Placing placing : placings) {
            Way way = placing.way();
            if (way instanceof Way.Aside aside) {
                way = new Way.Aside(mirror.apply(aside.from()).minus(mirror.apply(Point.ORIGIN)));
            }
            turned.add(new Placing(placing.members(), placing.onto(), way, placing.press()));
        }
        List<Glue> marks = new ArrayList<>(glue.size());
        for (Glue each : glue) {
            List<Point> at = new ArrayList<>(each.at().size());
            for (Point point : each.at()) {
                at.add(mirror.apply(point));
            }
            marks.add(new Glue(each.words(), at));
        }
        return new BuildStep(words, turned, marks);
    }
}
