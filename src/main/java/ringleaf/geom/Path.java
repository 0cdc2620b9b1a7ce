// SPDX-License-Identifier: Apache-2.0
package ringleaf.geom;

import java.util.ArrayList;
import java.util.List;

/** An open chain of pieces, each starting where the one before ended, on the same point value. */
public record Path(List<Segment> segments) {
    public Path {
        segments = List.copyOf(segments);
        if (segments.isEmpty()) {
            throw new IllegalArgumentException("a path needs a piece");
        }
        for (int i = 1; i < segments.size(); i++) {
            if (!segments.get(i - 1).end().equals(segments.get(i).start())) {
                throw new IllegalArgumentException("piece " + i + " does not start where the one before ended");
            }
        }
    }

    public static Path of(Segment... segments) {
        return new Path(List.of(segments));
    }

    public Point start() {
        return segments.get(0).start();
    }

    public Point end() {
        return segments.get(segments.size() - 1).end();
    }

    public Box box() {
        Box box = segments.get(0).box();
        for (Segment segment : segments) {
            box = box.union(segment.box());
        }
        return box;
    }

    public Path reversed() {
        List<Segment> back = new ArrayList<>(segments.size());
        for (int i = segments.size() - 1; i >= 0; i--) {
            back.add(segments.get(i).reversed());
        }
        return new Path(back);
    }

    public Path placed(Placement placement) {
        List<Segment> placed = new ArrayList<>(segments.size());
        for (Segment segment : segments) {
            placed.add(segment.placed(placement));
        }
        return new Path(placed);
    }

    public Path mirrored(Mirror mirror) {
        List<Segment> mirrored = new ArrayList<>(segments.size());
        for (Segment segment : segments) {
            mirrored.add(segment.mirrored(mirror));
        }
        return new Path(mirrored);
    }
}
