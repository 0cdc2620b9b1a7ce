// SPDX-License-Identifier: Apache-2.0
package ringleaf.mechanism.aperture;

import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import ringleaf.leaf.Layout;
import ringleaf.machine.Fit;
import ringleaf.mechanism.Material;
import ringleaf.mechanism.Request;
import ringleaf.mechanism.TipRoom;
import ringleaf.part.Words;
import ringleaf.spec.Making;
import ringleaf.spec.field.Bound;
import ringleaf.spec.field.Field;
import ringleaf.spec.field.Values;
import ringleaf.spec.shared.FitName;
import ringleaf.spec.shared.MakingProcess;
import ringleaf.spec.shared.Screw;
import ringleaf.spec.text.Problems;

/** From the values of a spec to an {@link ApertureSpec}: defaults that depend on others, and contradictions. */
final class ApertureReader {
    /** Printed plates and rings are this thick when nothing is said, mm. */
    private static final double PRINTED_PLATE = 2.4;

    private static final double PRINTED_RING = 2;
    /** Below this full opening pins and teeth are finer by default, mm. */
    private static final double SMALL = 40;

    private static final double SMALL_TEETH = 50;

    private final Request request;
    private final Values values;
    private final Problems problems;

    ApertureReader(Request request) {
        this.request = request;
        this.values = request.values();
        this.problems = request.problems();
    }

    ApertureSpec read() {
        double full = values.require(ApertureFields.FULL_OPENING);
        double least = values.require(ApertureFields.LEAST_OPENING);
        double thickness = values.require(ApertureFields.BLADE_THICKNESS);
        Material blade = material("blade", ApertureFields.BLADE_THICKNESS, thickness);
        Material plate = material("plate", ApertureFields.PLATE_THICKNESS, PRINTED_PLATE);
        Material ring = material("ring", ApertureFields.RING_THICKNESS, PRINTED_RING);
        Material spacer = material("spacer", null, PRINTED_PLATE);
        Material gear = material("gear", null, PRINTED_PLATE);
        openings(full, least);
        PinStyle style = pinStyle(blade);
        double pin = values.get(ApertureFields.PIN_DIAMETER).orElse(full < SMALL ? 1.0 : 1.5);
        boolean layoutGiven = values.isGiven(ApertureFields.DRIVE_PIN);
        Optional<Screw> screw = request.screw(values.require(ApertureFields.SCREW), values.where(ApertureFields.SCREW));
        int blades = values.require(ApertureFields.BLADES);
        Values own = values.given(ApertureFields.CLEARANCES).orElse(null);
        Clearances clearances = new UsualRooms(
                        own, blades, thickness, pin, full / 2, style, blade, plate, ring, spacer, gear)
                .all(new UsualRooms.Asked(boreFit(), slotFit(), setFit(thickness, pin)));
        return new ApertureSpec(
                request.name(),
                new Wanted(
                        full / 2,
                        least / 2,
                        blades,
                        thickness,
                        values.require(ApertureFields.LAP),
                        outer(full),
                        depth()),
                layouts(),
                layoutGiven,
                style,
                values.require(ApertureFields.HAND).equals("right"),
                values.require(ApertureFields.SLOT).equals("linear-opening"),
                open(ApertureFields.BLADE_WIDTH),
                open(ApertureFields.BLADE_SPAN),
                open(ApertureFields.LEVER),
                open(ApertureFields.LEVER_ANGLE),
                pin,
                values.require(ApertureFields.LEDGE),
                clearances,
                screw.orElse(null),
                blade,
                plate,
                ring,
                spacer,
                gear,
                new DriveReader(request, full, TipRoom.needed(clearances.ringRadial(), plate, gear, ring))
                        .read(full < SMALL_TEETH ? 0.5 : 0.8),
                values.isGiven(ApertureFields.JIGS) ? new JigReader(request).read(pin) : Optional.empty(),
                bezel(screw),
                request.hardware(),
                given());
    }

    private Bezel bezel(Optional<Screw> screw) {
        boolean asked = values.isGiven(ApertureFields.HOUSING) || values.isGiven(ApertureFields.KEEP_OUT);
        return asked && screw.isPresent() ? new BezelReader(request, screw.get()).read() : Bezel.NONE;
    }

    /** A family's process and stock in the thickness that the spec or the stock gives; both must say the same. */
    private Material material(String family, Field<Double> field, double otherwise) {
        Optional<Double> asked = field == null ? Optional.empty() : values.given(field);
        Making making = request.fabrication().of(family, asked.orElse(otherwise));
        OptionalDouble sheet = making.given() ? making.stock().thickness() : OptionalDouble.empty();
        double thickness = asked.orElse(sheet.orElse(otherwise));
        if (asked.isPresent() && sheet.isPresent() && Math.abs(asked.get() - sheet.getAsDouble()) > 1e-9) {
            problems.at(
                    values.where(field),
                    Words.mm(asked.get()) + " contradicts the stock "
                            + making.stock().name() + " of " + Words.mm(sheet.getAsDouble()),
                    "leave one of them out, or make them agree");
        } else if (!making.process().makesThickness(thickness)) {
            problems.at(
                    field == null ? values.where() : values.where(field),
                    Words.number(thickness, 3) + " mm is outside what "
                            + making.process().name() + " makes, "
                            + Words.number(making.process().thicknessFrom(), 3) + " to "
                            + Words.number(making.process().thicknessTo(), 3) + " mm",
                    "choose another process for " + family + " under fabrication");
        }
        return Material.of(making.process(), making.stock(), thickness);
    }

    private void openings(double full, double least) {
        if (least >= full) {
            problems.at(
                    values.where(ApertureFields.LEAST_OPENING),
                    Words.mm(least) + " is not below the full opening of " + Words.mm(full)
                            + " (the blades would have nothing to do)",
                    "it must be smaller");
        }
    }

    private OuterLimit outer(double full) {
        Bound bound = values.bound(ApertureFields.OUTER_DIAMETER);
        if (bound.mostOr(Double.MAX_VALUE) <= full) {
            problems.at(
                    values.where(ApertureFields.OUTER_DIAMETER),
                    Words.mm(bound.mostOr(0)) + " is not larger than the full opening of " + Words.mm(full)
                            + " (the housing goes round it)");
        }
        return new OuterLimit(bound.leastOr(0), bound.mostOr(Double.POSITIVE_INFINITY));
    }

    private OptionalDouble depth() {
        Bound bound = values.bound(ApertureFields.DEPTH);
        if (bound.atLeast().isPresent()) {
            problems.at(
                    values.where(ApertureFields.DEPTH),
                    "a least depth has no meaning (the stack is as thin as its parts allow)",
                    "give {at-most: …}");
        }
        double most = bound.mostOr(Double.POSITIVE_INFINITY);
        return Double.isInfinite(most) ? OptionalDouble.empty() : OptionalDouble.of(most);
    }

    private List<Layout> layouts() {
        Optional<String> asked = values.get(ApertureFields.DRIVE_PIN);
        boolean lever = values.isGiven(ApertureFields.LEVER) || values.isGiven(ApertureFields.LEVER_ANGLE);
        if (asked.isPresent() && asked.get().equals("far-end")) {
            for (Field<Double> field : List.of(ApertureFields.LEVER, ApertureFields.LEVER_ANGLE)) {
                if (values.isGiven(field)) {
                    problems.at(values.where(field), "a drive pin at the far end has no lever", "drive-pin: lever");
                }
            }
            return List.of(Layout.FAR_END);
        }
        if (asked.isPresent() || lever) {
            return List.of(Layout.LEVER);
        }
        return List.of(Layout.FAR_END, Layout.LEVER);
    }

    private PinStyle pinStyle(Material blade) {
        Optional<String> asked = values.get(ApertureFields.PIN_STYLE);
        if (asked.isEmpty()) {
            return blade.sheet() ? PinStyle.TWO_HOLES : PinStyle.ONE_GLUED;
        }
        for (PinStyle style : PinStyle.values()) {
            if (style.label().equals(asked.get())) {
                if (style == PinStyle.ONE_GLUED && blade.sheet()) {
                    problems.at(
                            values.where(ApertureFields.PIN_STYLE),
                            "one-glued wants a blade that is printed with its pin, and " + blade.process()
                                    + " cuts flat sheet",
                            "two-holes");
                }
                return style;
            }
        }
        throw new IllegalStateException(asked.get());
    }

    private UsualRooms.Listed boreFit() {
        return allowance(ApertureFields.BORE, ApertureFields.PIVOT_BORE, "plate");
    }

    private UsualRooms.Listed slotFit() {
        return allowance(ApertureFields.SLOT_ROOM, ApertureFields.SLOT_FIT, "ring");
    }

    /** What the process adds for the fit; a length given at the same time contradicts it. */
    private UsualRooms.Listed allowance(Field<Double> length, Field<String> fit, String family) {
        Values own = values.given(ApertureFields.CLEARANCES).orElse(null);
        Values fits = values.given(ApertureFields.FITS).orElse(null);
        if (own != null && own.isGiven(length) && fits != null && fits.isGiven(fit)) {
            problems.at(
                    fits.where(fit),
                    "a fit by name contradicts clearances." + length.name() + ", which gives its room already",
                    "leave one of them out");
        }
        FitName name = FitName.of(fitName(fit));
        return new UsualRooms.Listed(name, process(family).allowance(name));
    }

    private String fitName(Field<String> fit) {
        Values fits = values.given(ApertureFields.FITS).orElse(null);
        return fits == null ? fit.defaultValue() : fits.get(fit).orElse(fit.defaultValue());
    }

    private MakingProcess process(String family) {
        return request.fabrication().of(family, PRINTED_PLATE).process();
    }

    private Fit setFit(double bladeThickness, double pin) {
        String asked = fitName(ApertureFields.PIN_HOLE);
        if (asked == null) {
            return Fit.still(FitName.PRESS, pin, pin, Clearances.AS_WIDE);
        }
        FitName name = FitName.of(asked);
        double allowance =
                request.fabrication().of("blade", bladeThickness).process().allowance(name);
        boolean grips = name == FitName.PRESS && allowance == 0;
        return Fit.still(name, pin, pin + allowance, grips ? Clearances.AS_WIDE : "");
    }

    private OptionalDouble open(Field<Double> field) {
        Optional<Double> value = values.given(field);
        return value.isPresent() ? OptionalDouble.of(value.get()) : OptionalDouble.empty();
    }

    private Set<String> given() {
        Set<String> given = new HashSet<>();
        for (Field<?> field : values.fields().fields()) {
            if (values.isGiven(field)) {
                given.add(field.name());
            }
        }
        values.given(ApertureFields.DRIVE).ifPresent(drive -> {
            for (Field<?> field : drive.fields().fields()) {
                if (drive.isGiven(field)) {
                    given.add("drive." + field.name());
                }
            }
        });
        return given;
    }
}
