// SPDX-License-Identifier: Apache-2.0
package ringleaf.mechanism.belt;

import java.util.Optional;
import ringleaf.mechanism.Material;
import ringleaf.mechanism.Request;
import ringleaf.part.Words;
import ringleaf.spec.field.Values;
import ringleaf.spec.shared.Bearing;
import ringleaf.spec.shared.FitName;
import ringleaf.spec.shared.MakingProcess;

/** From the fits and the bearing of a spec to how axles sit in the plates; what cannot be is reported. */
final class AxlesReader {
    private final Request request;
    private final Values values;

    AxlesReader(Request request) {
        this.request = request;
        this.values = request.values();
    }

    /**
     * The axles' fits.
     *
     * @param plate what the plates are made of
     * @param driven the pulley whose axle may have bearings
     */
    Axles read(Material plate, PulleySpec driven) {
        Values fits = values.given(DriveFields.FITS).orElse(DriveFields.FIT_SET.none(values.where()));
        FitName fit = FitName.of(fits.require(DriveFields.AXLE_FIT));
        MakingProcess process = request.catalogues().processes().require(plate.process());
        Optional<Axles.Seat> seat = Optional.empty();
        if (values.isGiven(DriveFields.AXLE_BEARING)) {
            seat = seat(process, FitName.of(fits.require(DriveFields.SEAT_FIT)), driven);
        } else if (fits.isGiven(DriveFields.SEAT_FIT)) {
            request.problems()
                    .at(
                            fits.where(DriveFields.SEAT_FIT),
                            "has no meaning without bearings",
                            "leave it out, or axle-bearing");
        }
        return new Axles(fit, process.allowance(fit), seat);
    }

    private Optional<Axles.Seat> seat(MakingProcess process, FitName fit, PulleySpec driven) {
        Optional<Bearing> bearing = request.catalogues()
                .bearings()
                .find(values.require(DriveFields.AXLE_BEARING), values.where(DriveFields.AXLE_BEARING));
        if (bearing.isEmpty()) {
            return Optional.empty();
        }
        if (values.require(DriveFields.PLATES).equals("none")) {
            request.problems()
                    .at(
                            values.where(DriveFields.AXLE_BEARING),
                            "there are no plates to hold bearings",
                            "leave it out, or plates: two");
        }
        double axle = DrivePlates.axle(driven);
        if (Math.abs(bearing.get().bore() - axle) > 1e-6) {
            request.problems()
                    .at(
                            values.where(DriveFields.AXLE_BEARING),
                            "the driven pulley's axle of " + Words.mm(axle) + " does not fit bearing "
                                    + bearing.get().name() + ", whose bore is "
                                    + Words.mm(bearing.get().bore()),
                            others(axle, bearing.get()));
        }
        double seat = bearing.get().outside() + process.allowance(fit);
        return Optional.of(new Axles.Seat(bearing.get(), fit, seat));
    }

    private String others(double axle, Bearing asked) {
        StringBuilder names = new StringBuilder();
        for (String name : request.catalogues().bearings().names()) {
            Optional<Bearing> other = request.catalogues().bearings().get(name);
            if (other.isPresent() && Math.abs(other.get().bore() - axle) < 1e-6) {
                names.append(names.length() == 0 ? "what does: " : ", ").append(name);
            }
        }
        return names.length() > 0 ? names.toString() : "driven: {bore: {axle: " + Words.number(asked.bore(), 3) + "}}";
    }
}
