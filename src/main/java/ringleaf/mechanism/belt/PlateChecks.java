// SPDX-License-Identifier: Apache-2.0
package ringleaf.mechanism.belt;

import java.util.ArrayList;
import java.util.List;
import ringleaf.curve.Distances;
import ringleaf.part.Figure;
import ringleaf.part.Finding;

/** What must hold of the plates: that they hold what they are to hold, and stay in one piece. */
final class PlateChecks {
    private final DriveSpec spec;
    private final DrivePlates plates;
    private final List<Finding> all = new ArrayList<>();

    private PlateChecks(DrivePlan plan, DrivePlates plates) {
        this.spec = plan.spec();
        this.plates = plates;
    }

    static List<Finding> of(DrivePlan plan, DrivePlates plates) {
        PlateChecks checks = new PlateChecks(plan, plates);
        for (int i = 0; i < checks.spec.plates(); i++) {
            checks.holes(i == 0 ? "base-plate" : "front-plate", i == 0);
            checks.onePiece(i == 0 ? "base-plate" : "front-plate", i == 0);
        }
        if (checks.spec.plates() > 0) {
            checks.screws();
            checks.servo();
        }
        checks.all.addAll(new DriveFasteners(plan).findings(plates));
        return checks.all;
    }

    /** Holes that run into each other hold nothing; those of one group are meant to. */
    private void holes(String plate, boolean base) {
        List<DrivePlates.Cut> cuts = plates.cuts(base);
        DriveRoom.Nearest nearest = DriveRoom.Nearest.NONE;
        for (int i = 0; i < cuts.size(); i++) {
            for (int j = i + 1; j < cuts.size(); j++) {
                DrivePlates.Cut a = cuts.get(i);
                DrivePlates.Cut b = cuts.get(j);
                if (!a.group().equals(b.group())) {
                    // the distance of holes of which one lies in the other is nought
                    nearest = nearest.or(
                            Distances.between(a.region(), b.region()).distance(),
                            "hole for the " + a.what(),
                            "hole for the " + b.what());
                }
            }
        }
        if (nearest.first().isEmpty()) {
            return;
        }
        all.add(Finding.of("hole-distance")
                .about(plate, nearest.first(), nearest.second())
                .atLeast(nearest.distance(), spec.plate().leastWeb(), "mm")
                .says("belt.holes", nearest.distance() > 0, plate, nearest.words(), Figure.mm(nearest.distance())));
    }

    private void onePiece(String plate, boolean base) {
        int pieces = plates.outline(base).size();
        if (pieces != 1) {
            all.add(Finding.of("one-piece").about(plate).atMost(pieces, 1, "1").says("belt.pieces", plate, pieces));
        }
    }

    private void screws() {
        for (String missing : plates.standoffs().missing()) {
            all.add(Finding.of("screw-place").about(missing).plain(false).says("belt.no-screw", missing));
        }
    }

    /** The horn has to come up through the plate to where the driver's foot is. */
    private void servo() {
        if (spec.servo().isEmpty()) {
            return;
        }
        double height = spec.servo().get().hornHeight();
        double needed = height - plates.hornSpare();
        Finding.Draft draft = Finding.of("servo-height").about("servo").atLeast(height, needed, "mm");
        all.add(draft.says("belt.servo-height", draft.isHeld(), Figure.mm(height), Figure.mm(needed)));
    }
}
