// SPDX-License-Identifier: Apache-2.0
package ringleaf.mechanism.plate;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import ringleaf.geom.Box;
import ringleaf.mechanism.AsBuilt;
import ringleaf.mechanism.Kind;
import ringleaf.part.Choice;
import ringleaf.part.Design;
import ringleaf.part.Dimension;
import ringleaf.part.Dimension.Origin;
import ringleaf.part.FitRow;
import ringleaf.part.MotionTable;

/** A plate that was read. */
record PlannedPlate(PlateSpec spec) implements Kind.Planned {
    @Override
    public Design design(int states) {
        PlateAssembly assembly = new PlateAssembly(spec);
        Map<String, Double> travel = new LinkedHashMap<>();
        travel.put("states", (double) states);
        List<double[]> rows = new ArrayList<>();
        for (int i = 0; i < states; i++) {
            rows.add(new double[0]);
        }
        return new Design(
                spec.name(),
                SeatPlate.NAME,
                List.of(new Choice(
                        "outline",
                        spec.outline(),
                        spec.given().contains("outline") ? Origin.GIVEN : Origin.DEFAULT,
                        "")),
                dimensions(),
                assembly.parts(),
                assembly.assemble(states),
                new MotionTable(List.of(), rows, "", List.of()),
                new PlateChecks(spec).all(),
                travel,
                List.of(),
                joints());
    }

    private List<Dimension> dimensions() {
        Box box = spec.edge().box();
        List<Dimension> all = new ArrayList<>();
        all.add(new Dimension("overall-width", box.width(), "mm", Origin.SOLVED, "what the seats need"));
        all.add(new Dimension("overall-height", box.height(), "mm", Origin.SOLVED, "what the seats need"));
        all.add(new Dimension("seats", spec.seats().size(), "1", Origin.GIVEN, ""));
        all.add(new Dimension(
                "plate-thickness",
                spec.thickness(),
                "mm",
                spec.given().contains("plate-thickness") ? Origin.GIVEN : Origin.SOLVED,
                spec.given().contains("plate-thickness") ? "" : "that of the stock"));
        all.add(new Dimension(
                "margin", spec.margin(), "mm", spec.given().contains("margin") ? Origin.GIVEN : Origin.DEFAULT, ""));
        if (spec.plates() == 2) {
            boolean given = spec.given().contains("gap");
            all.add(new Dimension(
                    "gap",
                    spec.gap(),
                    "mm",
                    given ? Origin.GIVEN : Origin.SOLVED,
                    given ? "" : "what stands between the plates, with spacers that are sold"));
            all.add(new Dimension(
                    "depth", spec.gap() + 2 * spec.thickness(), "mm", Origin.SOLVED, "both plates and the gap"));
        }
        all.add(new Dimension(
                "clearances-beside",
                spec.beside().mm(),
                "mm",
                spec.beside().origin(),
                spec.beside().how()));
        return all;
    }

    /** Bores that something sits in. */
    private List<FitRow> joints() {
        List<FitRow> all = new ArrayList<>();
        for (boolean rear : new boolean[] {false, true}) {
            String plate = spec.plates() == 1 ? PlateAssembly.ONLY : rear ? PlateAssembly.REAR : PlateAssembly.FRONT;
            for (Seat seat : spec.on(rear)) {
                seat.form()
                        .fitted()
                        .ifPresent(f -> all.add(new FitRow(
                                seat.name() + "-bore",
                                plate,
                                FitRow.Shape.HOLE,
                                f.fit().label(),
                                f.nominal(),
                                f.bore(),
                                1,
                                "")));
            }
        }
        return all;
    }

    @Override
    public Optional<AsBuilt> asBuilt() {
        return PlateBuilt.of(spec);
    }
}
