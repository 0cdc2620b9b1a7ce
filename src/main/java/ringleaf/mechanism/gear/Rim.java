// SPDX-License-Identifier: Apache-2.0
package ringleaf.mechanism.gear;

import java.util.function.DoubleSupplier;
import ringleaf.geom.Contour;
import ringleaf.geom.Tolerance;
import ringleaf.tooth.BasicRack;
import ringleaf.tooth.GearOutline;
import ringleaf.tooth.InternalForm;
import ringleaf.tooth.InternalOutline;
import ringleaf.tooth.TipFinish;
import ringleaf.tooth.ToothForm;

/** The teeth of one gear, on its outside or its inside. Lengths in mm; the axis is the origin. */
sealed interface Rim {
    int teeth();

    double module();

    double shift();

    BasicRack rack();

    double tipRadius();

    double rootRadius();

    double pitchAngle();

    /** Arc thickness of a tooth on its tip circle. */
    double tipThickness();

    /** The toothed contour, the middle of tooth 0 on +x, with how far its arcs stray from the true curves. */
    Cut cut(TipFinish finish);

    /**
     * Looks whether the teeth can be cut, on one of them: all are alike, and many are only tried.
     *
     * @throws IllegalArgumentException where they cannot, as {@link #cut} does
     */
    void look(TipFinish finish);

    /**
     * A contour as cut.
     *
     * @param contour counter-clockwise, the outside of a gear or the opening of a ring
     * @param measured measures {@link #deviation}, which takes longer than the cut and is not asked of those that are
     *     only tried
     * @param outline by which sectors are made; null for a ring
     */
    record Cut(Contour contour, DoubleSupplier measured, GearOutline outline) {
        /** Greatest distance of its arcs from the true flank and root, mm. */
        double deviation() {
            return measured.getAsDouble();
        }
    }

    /** Teeth on the outside. */
    record Outer(ToothForm form) implements Rim {
        @Override
        public int teeth() {
            return form.teeth();
        }

        @Override
        public double module() {
            return form.module();
        }

        @Override
        public double shift() {
            return form.shift();
        }

        @Override
        public BasicRack rack() {
            return form.rack();
        }

        @Override
        public double tipRadius() {
            return form.tipRadius();
        }

        @Override
        public double rootRadius() {
            return form.rootRadius();
        }

        @Override
        public double pitchAngle() {
            return form.pitchAngle();
        }

        @Override
        public double tipThickness() {
            return form.tipThickness();
        }

        @Override
        public Cut cut(TipFinish finish) {
            GearOutline outline = GearOutline.of(form, Tolerance.CURVE, finish);
            return new Cut(outline.external(), outline::deviation, outline);
        }

        @Override
        public void look(TipFinish finish) {
            GearOutline.of(form, Tolerance.CURVE, finish).sectorRim(form.tipRadius(), 2, 0);
        }
    }

    /** Teeth on the inside; tip relief and rounding are not offered there. */
    record Inner(InternalForm form) implements Rim {
        @Override
        public int teeth() {
            return form.teeth();
        }

        @Override
        public double module() {
            return form.module();
        }

        @Override
        public double shift() {
            return form.shift();
        }

        @Override
        public BasicRack rack() {
            return form.rack();
        }

        @Override
        public double tipRadius() {
            return form.tipRadius();
        }

        @Override
        public double rootRadius() {
            return form.rootRadius();
        }

        @Override
        public double pitchAngle() {
            return form.pitchAngle();
        }

        @Override
        public double tipThickness() {
            return form.thicknessAt(2 * form.tipRadius());
        }

        @Override
        public Cut cut(TipFinish finish) {
            InternalOutline outline = InternalOutline.of(form, Tolerance.CURVE);
            return new Cut(outline.opening(), outline::deviation, null);
        }

        @Override
        public void look(TipFinish finish) {
            InternalOutline.of(form, Tolerance.CURVE);
        }
    }
}
