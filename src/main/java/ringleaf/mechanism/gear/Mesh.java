// SPDX-License-Identifier: Apache-2.0
package ringleaf.mechanism.gear;

import ringleaf.tooth.BasicRack;
import ringleaf.tooth.GearPair;
import ringleaf.tooth.InternalPair;
import ringleaf.tooth.ToothForm;

/** Two gears in mesh, outside each other or one within the other; the first drives. Lengths in mm, angles in rad. */
sealed interface Mesh {
    /**
     * Lengths that differ by less are one length, mm: what choosing teeth and checking them both allow for rounding, a
     * thousandth of what any process resolves.
     */
    double SAME = 1e-6;

    ToothForm driver();

    Rim drivenRim();

    double centreDistance();

    double workingAngle();

    /** Pairs of teeth in contact on average, of what both involutes can carry. */
    double contactRatio();

    /** Along the rolling circles. */
    double backlash();

    double driverWorkingRadius();

    double drivenWorkingRadius();

    /** Least room between tips and roots. */
    double tipClearance();

    /** Turn of the driven gear for one of the driver, counter-clockwise positive for both. */
    double turn();

    default Rim driverRim() {
        return new Rim.Outer(driver());
    }

    default int drivenTeeth() {
        return drivenRim().teeth();
    }

    default double module() {
        return driver().module();
    }

    default BasicRack rack() {
        return driver().rack();
    }

    /** Turns of the driver to one of the driven gear. */
    default double ratio() {
        return (double) drivenTeeth() / driver().teeth();
    }

    /** Angle by which the driven gear can turn while the driver stands. */
    default double drivenPlay() {
        return backlash() / drivenWorkingRadius();
    }

    /** Both gears outside each other. */
    record Outer(GearPair pair) implements Mesh {
        @Override
        public ToothForm driver() {
            return pair.pinion();
        }

        @Override
        public Rim drivenRim() {
            return new Rim.Outer(pair.gear());
        }

        @Override
        public double centreDistance() {
            return pair.centreDistance();
        }

        @Override
        public double workingAngle() {
            return pair.workingAngle();
        }

        @Override
        public double contactRatio() {
            return pair.contact().usableRatio();
        }

        @Override
        public double backlash() {
            return pair.backlash();
        }

        @Override
        public double driverWorkingRadius() {
            return pair.pinionWorkingRadius();
        }

        @Override
        public double drivenWorkingRadius() {
            return pair.gearWorkingRadius();
        }

        @Override
        public double tipClearance() {
            return Math.min(pair.pinionTipClearance(), pair.gearTipClearance());
        }

        @Override
        public double turn() {
            return -1 / ratio();
        }
    }

    /** A driver within a ring. */
    record Inner(InternalPair pair) implements Mesh {
        @Override
        public ToothForm driver() {
            return pair.pinion();
        }

        @Override
        public Rim drivenRim() {
            return new Rim.Inner(pair.ring());
        }

        @Override
        public double centreDistance() {
            return pair.centreDistance();
        }

        @Override
        public double workingAngle() {
            return pair.workingAngle();
        }

        @Override
        public double contactRatio() {
            return pair.contactRatio();
        }

        @Override
        public double backlash() {
            return pair.backlash();
        }

        @Override
        public double driverWorkingRadius() {
            return pair.pinionWorkingRadius();
        }

        @Override
        public double drivenWorkingRadius() {
            return pair.ringWorkingRadius();
        }

        @Override
        public double tipClearance() {
            return Math.min(pair.pinionTipClearance(), pair.ringTipClearance());
        }

        @Override
        public double turn() {
            return 1 / ratio();
        }
    }
}
