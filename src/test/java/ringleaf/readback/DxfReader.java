// SPDX-License-Identifier: Apache-2.0
package ringleaf.readback;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Reads the DXF of a part: pairs, header variables, records of each section, polylines and circles. */
final class DxfReader {
    record Pair(int code, String value) {
        double number() {
            return Double.parseDouble(value);
        }
    }

    /** A run of pairs that begins with code 0. */
    record Item(String section, String table, List<Pair> pairs) {
        String type() {
            return pairs.get(0).value();
        }

        String first(int code) {
            for (Pair pair : pairs) {
                if (pair.code() == code) {
                    return pair.value();
                }
            }
            return null;
        }

        double number(int code) {
            return Double.parseDouble(first(code));
        }
    }

    final List<Pair> pairs = new ArrayList<>();
    final Map<String, List<Pair>> header = new LinkedHashMap<>();
    final List<Item> items = new ArrayList<>();
    final List<String> sections = new ArrayList<>();
    final List<ReadFigure> figures = new ArrayList<>();

    DxfReader(byte[] file) {
        String text = new String(file, StandardCharsets.US_ASCII);
        if (!text.endsWith("\n")) {
            throw new IllegalArgumentException("last line is open");
        }
        String[] lines = text.substring(0, text.length() - 1).split("\n", -1);
        if (lines.length % 2 != 0) {
            throw new IllegalArgumentException("a code without a value");
        }
        for (int i = 0; i < lines.length; i += 2) {
            pairs.add(new Pair(Integer.parseInt(lines[i].trim()), lines[i + 1]));
        }
        readSections();
        readFigures();
    }

    double variable(String name, int code) {
        for (Pair pair : header.get(name)) {
            if (pair.code() == code) {
                return pair.number();
            }
        }
        throw new IllegalArgumentException(name + " has no " + code);
    }

    List<Item> itemsOf(String section) {
        return items.stream().filter(i -> i.section().equals(section)).toList();
    }

    private void readSections() {
        String section = null;
        String table = null;
        List<Pair> current = null;
        for (int i = 0; i < pairs.size(); i++) {
            Pair pair = pairs.get(i);
            if (pair.code() == 999) {
                continue;
            }
            if (pair.code() == 0) {
                current = null;
                switch (pair.value()) {
                    case "SECTION" -> {
                        section = pairs.get(++i).value();
                        sections.add(section);
                    }
                    case "ENDSEC" -> section = null;
                    case "EOF" -> {
                        if (section != null || i != pairs.size() - 1) {
                            throw new IllegalArgumentException("EOF inside " + section);
                        }
                        sections.add("EOF");
                    }
                    default -> {
                        if (pair.value().equals("TABLE")) {
                            table = pairs.get(i + 1).value();
                        }
                        current = new ArrayList<>(List.of(pair));
                        items.add(new Item(section, "TABLES".equals(section) ? table : null, current));
                    }
                }
            } else if ("HEADER".equals(section)) {
                if (pair.code() == 9) {
                    current = new ArrayList<>();
                    header.put(pair.value(), current);
                } else {
                    current.add(pair);
                }
            } else {
                current.add(pair);
            }
        }
    }

    private void readFigures() {
        List<Item> entities = itemsOf("ENTITIES");
        for (int i = 0; i < entities.size(); i++) {
            Item item = entities.get(i);
            switch (item.type()) {
                case "CIRCLE" ->
                    figures.add(new ReadFigure(
                            item.first(8),
                            true,
                            true,
                            List.of(ReadPiece.circle(item.number(10), item.number(20), item.number(40)))));
                case "LWPOLYLINE" -> lightPolyline(item);
                case "POLYLINE" -> {
                    List<double[]> vertices = new ArrayList<>();
                    for (i++; entities.get(i).type().equals("VERTEX"); i++) {
                        Item v = entities.get(i);
                        vertices.add(new double[] {v.number(10), v.number(20), v.first(42) == null ? 0 : v.number(42)});
                    }
                    if (!entities.get(i).type().equals("SEQEND")) {
                        throw new IllegalArgumentException("polyline without an end");
                    }
                    figures.add(figure(item.first(8), item.number(70) == 1, vertices));
                }
                default -> throw new IllegalArgumentException("unexpected entity " + item.type());
            }
        }
    }

    private void lightPolyline(Item item) {
        List<double[]> vertices = new ArrayList<>();
        for (Pair pair : item.pairs()) {
            switch (pair.code()) {
                case 10 -> vertices.add(new double[] {pair.number(), Double.NaN, 0});
                case 20 -> vertices.get(vertices.size() - 1)[1] = pair.number();
                case 42 -> vertices.get(vertices.size() - 1)[2] = pair.number();
                default -> {}
            }
        }
        if (vertices.size() != (int) item.number(90)) {
            throw new IllegalArgumentException("vertices: " + vertices.size() + ", said " + item.first(90));
        }
        figures.add(figure(item.first(8), item.number(70) == 1, vertices));
    }

    private static ReadFigure figure(String layer, boolean closed, List<double[]> vertices) {
        List<ReadPiece> pieces = new ArrayList<>();
        int count = closed ? vertices.size() : vertices.size() - 1;
        for (int i = 0; i < count; i++) {
            double[] a = vertices.get(i);
            double[] b = vertices.get((i + 1) % vertices.size());
            pieces.add(
                    a[2] == 0 ? ReadPiece.line(a[0], a[1], b[0], b[1]) : ReadPiece.bulge(a[0], a[1], b[0], b[1], a[2]));
        }
        return new ReadFigure(layer, closed, false, pieces);
    }
}
