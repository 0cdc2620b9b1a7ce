// SPDX-License-Identifier: Apache-2.0
package ringleaf.outline;

import java.util.ArrayList;
import java.util.List;
import ringleaf.geom.Point;
import ringleaf.spec.text.Place;
import ringleaf.spec.text.Problems;
import ringleaf.spec.text.Shown;
import ringleaf.spec.text.SpecSource;

/** One entity of a DXF text: its type and its group codes. What is missing or no number is reported once. */
final class DxfEntity {
    private final SpecSource source;
    private final List<DxfPair> pairs;
    private final Problems problems;
    private boolean good = true;

    DxfEntity(SpecSource source, List<DxfPair> pairs, Problems problems) {
        this.source = source;
        this.pairs = pairs;
        this.problems = problems;
    }

    String type() {
        return pairs.get(0).value();
    }

    Place place() {
        return pairs.get(0).place(source).named(Shown.quoted(type()));
    }

    /** Whether all that was asked of it so far was there. */
    boolean isGood() {
        return good;
    }

    boolean has(int code) {
        return find(code) != null;
    }

    private DxfPair find(int code) {
        for (DxfPair pair : pairs) {
            if (pair.code() == code) {
                return pair;
            }
        }
        return null;
    }

    String text(int code, String otherwise) {
        DxfPair pair = find(code);
        return pair == null ? otherwise : pair.value();
    }

    int whole(int code) {
        return find(code) == null ? 0 : (int) number(code);
    }

    double number(int code) {
        DxfPair pair = find(code);
        if (pair == null) {
            wrong(place(), "lacks its group " + code);
            return 0;
        }
        return number(pair);
    }

    double positive(int code) {
        double value = number(code);
        if (good && !(value > 0)) {
            wrong(find(code).place(source).named(type()), "a radius is above 0");
        }
        return value;
    }

    Point point(int code) {
        return new Point(number(code), number(code + 10));
    }

    private double number(DxfPair pair) {
        try {
            double value = Double.parseDouble(pair.value());
            if (Math.abs(value) < 1e9) {
                return value;
            }
        } catch (NumberFormatException e) {
            // Reported below, with numbers that are none or beyond any drawing.
            good = false;
        }
        wrong(pair.place(source).named(type()), Shown.quoted(pair.value()) + " is no number of a drawing");
        return 0;
    }

    private void wrong(Place at, String reason) {
        good = false;
        problems.at(at, reason, "save the drawing again");
    }

    /** All numbers of a group that may come again. */
    double[] numbers(int code) {
        return pairs.subList(1, pairs.size()).stream()
                .filter(pair -> pair.code() == code)
                .mapToDouble(this::number)
                .toArray();
    }

    /** The corners of a light polyline: each begins with its x. */
    List<DxfVertex> vertices() {
        List<DxfVertex> vertices = new ArrayList<>();
        double x = 0;
        double y = 0;
        double bulge = 0;
        boolean open = false;
        for (DxfPair pair : pairs.subList(1, pairs.size())) {
            if (pair.code() == 10) {
                if (open) {
                    vertices.add(new DxfVertex(new Point(x, y), bulge));
                }
                x = number(pair);
                bulge = 0;
                open = true;
            } else if (pair.code() == 20) {
                y = number(pair);
            } else if (pair.code() == 42) {
                bulge = number(pair);
            }
        }
        if (open) {
            vertices.add(new DxfVertex(new Point(x, y), bulge));
        }
        return vertices;
    }

    /** An entity that was drawn in a plane of its own may be mirrored: its arcs would bulge the wrong way. */
    void checkUpright() {
        boolean upright = !has(230) || number(230) > 0.999999;
        if (!upright) {
            wrong(place(), "lies in a plane of its own, seen from behind or aslant");
        }
    }
}
