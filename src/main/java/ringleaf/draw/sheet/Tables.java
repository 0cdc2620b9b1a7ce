// SPDX-License-Identifier: Apache-2.0
package ringleaf.draw.sheet;

import java.util.ArrayList;
import java.util.List;
import ringleaf.geom.Angles;
import ringleaf.geom.Point;
import ringleaf.part.Layer;

/** What is said of a part in tables. */
final class Tables {
    private static final double NOTE_WIDTH = 80;

    /** Column of the limits of classes, which is left out where no class is named. */
    private static final int LIMITS = 4;

    private Tables() {}

    static List<Table> of(SheetItem item, Features features) {
        List<Table> all = new ArrayList<>();
        if (!item.data().isEmpty()) {
            List<List<String>> rows = new ArrayList<>();
            for (SheetItem.Datum datum : item.data()) {
                rows.add(List.of(datum.name(), datum.value()));
            }
            features.span()
                    .ifPresent(span -> rows.add(List.of(
                            "span over " + span.teeth() + " teeth", item.unit().length(span.span()))));
            all.add(new Table("Data", List.of("what", "value"), rows));
        }
        if (item.part().layers().size() > 1) {
            all.add(levels(item));
        }
        List<Found.Place> places = features.found().places();
        if (!places.isEmpty()) {
            all.add(places(places, features));
        }
        if (!item.fits().isEmpty()) {
            all.add(fits(item));
        }
        List<String> notes = notes(item, features);
        if (!notes.isEmpty()) {
            all.add(Table.notes(notes, NOTE_WIDTH));
        }
        return all;
    }

    private static Table levels(SheetItem item) {
        List<List<String>> rows = new ArrayList<>();
        double bed = item.part().zFrom();
        for (int i = 0; i < item.part().layers().size(); i++) {
            Layer layer = item.part().layers().get(i);
            rows.add(List.of(
                    Integer.toString(i + 1),
                    item.unit().length(layer.zFrom() - bed),
                    item.unit().length(layer.zTo() - bed),
                    item.unit().length(layer.height())));
        }
        return new Table("Levels, height above the lowest face", List.of("level", "from", "to", "height"), rows);
    }

    private static Table places(List<Found.Place> places, Features features) {
        Bearings bearings = features.bearings();
        Sizes sizes = features.found().sizes();
        boolean round = bearings.round();
        List<List<String>> rows = new ArrayList<>();
        for (Found.Place place : places) {
            Point at = place.at().minus(bearings.origin());
            List<String> row = new ArrayList<>(List.of(place.label(), sizes.length(at.x()), sizes.length(at.y())));
            if (round) {
                row.add(sizes.length(at.norm()));
                row.add(Sizes.degrees(Angles.positive(at.angle())));
            }
            row.add(place.what());
            rows.add(row);
        }
        List<String> header = round ? List.of("", "x", "y", "radius", "angle", "what") : List.of("", "x", "y", "what");
        String from = round ? "from the centre" : "from the point marked 0";
        return new Table("Places of centres, " + from, header, rows);
    }

    private static Table fits(SheetItem item) {
        List<List<String>> rows = new ArrayList<>();
        for (SheetItem.FitLine fit : item.fits()) {
            rows.add(new ArrayList<>(List.of(
                    fit.name(),
                    Integer.toString(fit.count()),
                    item.unit().length(fit.size()),
                    fit.fit(),
                    fit.limits(),
                    fit.expected(),
                    fit.play())));
        }
        List<String> header =
                new ArrayList<>(List.of("joint", "n", "drawn", "fit", "limits", "expected as made", "play"));
        if (item.fits().stream().allMatch(fit -> fit.limits().isEmpty())) {
            header.remove(LIMITS);
            rows.forEach(row -> row.remove(LIMITS));
        }
        return new Table("Fits, " + item.unit().spelling(), header, rows);
    }

    private static List<String> notes(SheetItem item, Features features) {
        List<String> notes = new ArrayList<>();
        if (!item.part().note().isEmpty()) {
            notes.add(item.part().note());
        }
        for (SheetItem.FitLine fit : item.fits()) {
            notes.add(fit.name() + ": " + fit.how());
        }
        double turn = features.bearings().turn();
        if (turn != 0) {
            notes.add("The view is turned by " + Sizes.degrees(turn) + " against the part's file.");
        }
        if (features.found().hasProfile()) {
            notes.add("Curves without a radius are chains of tangent arcs, given by the file.");
        }
        return notes;
    }
}
