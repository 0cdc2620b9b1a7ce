package ringleaf.geom;

import java.util.ArrayList;
import java.util.Collections;
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

    public double length() {
        return segments.stream().mapToDouble(Segment::length).sum();
    }

    public Box box() {
        return segments.stream().map(Segment::box).reduce(Box::union).orElseThrow();
    }

    public Path reversed() {
        List<Segment> back = new ArrayList<>(segments.stream().map(Segment::reversed).toList());
        Collections.reverse(back);
        return new Path(back);
    }

    public Path placed(Placement placement) {
        return new Path(segments.stream().map(s -> s.placed(placement)).toList());
    }

    public Path mirrored(Mirror mirror) {
        return new Path(segments.stream().map(s -> s.mirrored(mirror)).toList());
    }
}
