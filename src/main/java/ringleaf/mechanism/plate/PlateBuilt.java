// SPDX-License-Identifier: Apache-2.0
package ringleaf.mechanism.plate;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import ringleaf.geom.Point;
import ringleaf.mechanism.AsBuilt;
import ringleaf.mechanism.SizesOff;

/** Plates as they come from the workshop: whether the screws of every thing still pass plate and thing at once. */
final class PlateBuilt implements AsBuilt {
    private final PlateSpec spec;
    private final SizesOff sizes = new SizesOff();
    private final List<Held> held = new ArrayList<>();

    /**
     * A thing with two screws or more.
     *
     * @param spacing number of the plate's spacing of holes
     * @param own number of the thing's own
     * @param bore number of the plate's holes
     * @param play room of a screw in both holes as drawn, mm, on the diameter
     */
    private record Held(Seat seat, int spacing, int own, int bore, double play) {}

    private PlateBuilt(PlateSpec spec) {
        this.spec = spec;
        for (Seat seat : spec.seats()) {
            seat.form().fastened().filter(f -> f.at().size() > 1).ifPresent(f -> add(seat, f));
        }
    }

    /** Empty where nothing is held by two screws. */
    static Optional<AsBuilt> of(PlateSpec spec) {
        PlateBuilt built = new PlateBuilt(spec);
        return built.held.isEmpty() ? Optional.empty() : Optional.of(built);
    }

    private void add(Seat seat, SeatForm.Fastened fastened) {
        double apart = 0;
        for (Point a : fastened.at()) {
            for (Point b : fastened.at()) {
                apart = Math.max(apart, a.distance(b));
            }
        }
        int spacing = sizes.width(seat.name() + "-holes", "holes for " + seat.name(), apart, 1, spec.plate());
        int own = sizes.add(
                seat.name() + "-own-holes",
                "holes in " + seat.name() + " itself",
                apart,
                1,
                SizesOff.FILED,
                "bought, common practice");
        int bore = sizes.width(seat.name() + "-hole", "width of those holes", fastened.bored(), 1, spec.plate());
        double thread = fastened.screw().thread();
        held.add(new Held(seat, spacing, own, bore, fastened.bored() + fastened.hole() - 2 * thread));
    }

    @Override
    public List<Deviation> deviations() {
        return sizes.all();
    }

    @Override
    public List<Limit> limits() {
        return held.stream()
                .map(h -> new Limit(
                        h.seat.name() + "-screws", "mm", "screws pass the plate and " + h.seat.name() + " at once"))
                .toList();
    }

    /** Both outer screws share what the spacings differ by, each within its play. */
    @Override
    public Bench bench() {
        return off -> held.stream()
                .mapToDouble(h -> h.play + off[h.bore][0] - Math.abs(off[h.spacing][0] - off[h.own][0]))
                .toArray();
    }

    @Override
    public List<String> assumptions() {
        return List.of("Things are as large as their drawings say; only how far apart their holes are is varied.");
    }
}
