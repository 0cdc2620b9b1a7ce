// SPDX-License-Identifier: Apache-2.0
package ringleaf.mechanism.aperture;

import java.util.List;
import java.util.Optional;
import ringleaf.curve.Roots;
import ringleaf.geom.Angles;
import ringleaf.machine.RoomLaw;
import ringleaf.mechanism.TipRoom;
import ringleaf.tooth.BasicRack;
import ringleaf.tooth.GearPair;
import ringleaf.tooth.SectorReach;
import ringleaf.tooth.ShiftChoice;
import ringleaf.tooth.ToothForm;

/**
 * Sizes the sector and its pinion: the least full circle of teeth whose root leaves the web to the slots, whose tips
 * reach past the ledge, and whose pinion stays outside the blades' cavity; and the smallest pinion that the servo can
 * turn far enough.
 */
final class PinionPlanner {
    /** A pinion has no fewer teeth of its own choice; common practice, no source. */
    static final int FEWEST_OWN_TEETH = 12;
    /** Kept between the pinion's tips and the cavity, so that it may be wider than the ring, mm. */
    private static final double PAST_CAVITY = 0.15;
    /** Backlash beyond what the ring's radial play can take up, mm along the reference circle; common practice. */
    private static final double SPARE_BACKLASH = 0.05;
    /** Share of the servo's travel that is planned with; its ends are kept for the stops. */
    private static final double USED_TRAVEL = 0.98;
    /** Teeth of the ring's pinion where a step-up gives it the turns it needs. */
    private static final int STEPPED_TEETH = 24;
    /** Teeth of the small wheel of a step-up: few, yet wide enough for its axle. */
    private static final int WHEEL_TEETH = 20;
    /** The servo of a step-up stands outward of the axle and to its side, off the screws and the view, rad. */
    private static final double STEP_DIRECTION = Math.toRadians(45);
    /** A pinion of more teeth than this share of the sector's full circle is no pinion any more. */
    private static final double LARGEST_SHARE = 0.8;

    /** Tips are lowered to this width, in modules; below 0.2 the check of tips warns. */
    private static final double LEAST_TIP = 0.1;
    /** A tooth may lose this much of its width, in modules; it is about 1.57 modules wide. */
    private static final double MOST_THINNING = 0.4;
    /** Tips are not lowered so far for the processes' sake that less than this is left; see the check. */
    private static final double GOOD_RATIO = DriveChecks.GOOD_RATIO;
    /** Halvings in which the room at the tips is found then. */
    private static final int ROOM_STEPS = 5;
    /** Axles of a step-up, mm. */
    private static final double AXLE = 3;

    private static final double THIN_AXLE = 2;
    private static final double SMALL_MODULE = 0.7;

    private final ApertureSpec spec;
    private final DriveSpec.Pinion wanted;
    private final BasicRack rack;

    PinionPlanner(ApertureSpec spec, DriveSpec.Pinion wanted) {
        this.spec = spec;
        this.wanted = wanted;
        this.rack = BasicRack.ofAngle(wanted.pressureAngle());
    }

    /** Backlash along the reference circle that still leaves play when the ring leans against its wall, mm. */
    double backlash() {
        double perDistance = 2 * Math.tan(wanted.pressureAngle());
        double fromPlay = spec.clearances().ringRadial() * perDistance + SPARE_BACKLASH;
        double forProcess = RoomLaw.room(
                1,
                perDistance * spec.plate().repeatability(),
                spec.gear().repeatability(),
                spec.ring().repeatability());
        return wanted.backlash().orElse(Math.max(fromPlay, forProcess));
    }

    /** Teeth of this drive, their tips lowered where they would be pointed. */
    private ToothForm teeth(int count, double shift) {
        return ToothForm.of(wanted.module(), count, shift, thinning(), rack)
                .withLeastTipThickness(LEAST_TIP * wanted.module());
    }

    /** Half the backlash for each gear, but never so much that no tooth is left; the check of the backlash tells then. */
    private double thinning() {
        return Math.min(backlash() / 2, MOST_THINNING * wanted.module());
    }

    /**
     * The drive for a ring with this cavity and these slots.
     *
     * @param at direction of the pinion in the unmirrored frame, rad
     * @param travel ring angle from open to closed, signed
     */
    PinionPlan plan(double at, double cavity, double slotOuter, double travel, double overTravel) {
        GearPair pair = withRoom(cavity, slotOuter, travel + 2 * Math.signum(travel) * overTravel);
        ToothForm sector = pair.gear();
        SectorReach reach = SectorReach.of(pair, sector.tipRadius());
        double turned = Math.abs(travel) + 2 * overTravel;
        int spaces = reach.spaces(turned, wanted.spareTeeth());
        return new PinionPlan(
                at,
                travel,
                pair,
                Math.min(spaces, mostSpaces(sector, turned)),
                spec.clearances().pinion(),
                spec.screw().hole() / 2 + Rim.housingWeb(spec),
                List.of(),
                wanted.stepUp() ? Optional.of(stepUp(at, pair, turned)) : Optional.empty(),
                wanted.servo());
    }

    /**
     * Tooth spaces that leave room on the rim for the stop's notch and the scallop beside it; the check of the teeth
     * at the stops tells where these are too few.
     */
    private static int mostSpaces(ToothForm sector, double turned) {
        double cuts = turned + StopNotch.tab(sector.tipRadius()) + 2 * RingPart.besideNotch(sector.tipRadius());
        return Math.max(1, (int) Math.floor((Angles.TURN - cuts) / sector.pitchAngle()) - 1);
    }

    /**
     * The pair whose tips are lowered as ring and processes ask for, or as far as the teeth still carry on well from one
     * to the next, yet never less than the ring can lean.
     */
    private GearPair withRoom(double cavity, double slotOuter, double turned) {
        if (wanted.tipClearance().isPresent()) {
            return pair(wanted.tipClearance().getAsDouble(), cavity, slotOuter, turned);
        }
        double lean = Math.max(spec.clearances().ringRadial(), rack.clearance() * wanted.module());
        double room = Math.max(lean, TipRoom.needed(lean, spec.plate(), spec.gear(), spec.ring()));
        return Roots.lastMade(
                        tips -> Optional.of(pair(tips, cavity, slotOuter, turned))
                                .filter(pair -> pair.contact().usableRatio() >= GOOD_RATIO),
                        lean,
                        room,
                        ROOM_STEPS)
                .orElseGet(() -> pair(lean, cavity, slotOuter, turned));
    }

    /** The pair with this much room at its tips, mm, or what leaves anything of the teeth; the check tells then. */
    private GearPair pair(double asked, double cavity, double slotOuter, double turned) {
        double room = Math.min(asked, DriveReader.MOST_TIP_ROOM * wanted.module());
        double tips = rack.addendum() - TipRoom.lowering(wanted.module(), rack, room);
        double shift = 0;
        int gearTeeth = 0;
        int pinionTeeth = 0;
        for (int round = 0; round < 3; round++) {
            gearTeeth = gearTeeth(cavity, slotOuter, shift, tips);
            pinionTeeth = pinionTeeth(gearTeeth, turned);
            shift = shiftFor(pinionTeeth, gearTeeth);
        }
        gearTeeth = Math.max(gearTeeth, gearTeeth(cavity, slotOuter, shift, tips));
        return GearPair.of(teeth(pinionTeeth, shift), teeth(gearTeeth, -shift)).withTipClearance(room);
    }

    /** The pair that turns the pinion far enough while the servo keeps within its travel. */
    private StepUp stepUp(double at, GearPair pair, double ringTravel) {
        double pinionTravel = ringTravel * pair.gear().teeth() / pair.pinion().teeth();
        double ratio = pinionTravel / (wanted.servo().travel() * USED_TRAVEL);
        int servoTeeth = Math.max(WHEEL_TEETH, (int) Math.ceil(ratio * WHEEL_TEETH - 1e-9));
        ToothForm servoGear = teeth(servoTeeth, 0);
        ToothForm wheel = teeth(WHEEL_TEETH, 0);
        double room = spec.plate().runningClearance();
        double axle = wanted.module() < SMALL_MODULE ? THIN_AXLE : AXLE;
        double tips = TipRoom.needed(0, spec.plate(), spec.gear(), spec.gear());
        double tipRoom = Math.min(
                Math.max(tips, rack.clearance() * wanted.module()), DriveReader.MOST_TIP_ROOM * wanted.module());
        GearPair step = GearPair.of(servoGear, wheel).withTipClearance(tipRoom);
        return new StepUp(step, at + STEP_DIRECTION, axle, room);
    }

    private int gearTeeth(double cavity, double slotOuter, double shift, double tips) {
        double m = wanted.module();
        double root = slotOuter + spec.ring().leastWeb();
        double forRoot = 2 * (root / m + rack.dedendum() + shift);
        double forTip = 2 * ((cavity + spec.ledge()) / m - tips + shift);
        double forPinion = 2 * ((cavity + PAST_CAVITY) / m + tips + shift);
        return (int) Math.ceil(Math.max(forRoot, Math.max(forTip, forPinion)) - 1e-9);
    }

    private int pinionTeeth(int gearTeeth, double travel) {
        if (wanted.pinionTeeth().isPresent()) {
            return wanted.pinionTeeth().getAsInt();
        }
        if (wanted.stepUp()) {
            return STEPPED_TEETH;
        }
        int needed = neededTeeth(gearTeeth, travel, wanted.servo().travel());
        int most = (int) Math.floor(LARGEST_SHARE * gearTeeth);
        return Math.max(Math.max(FEWEST_OWN_TEETH, forBore()), Math.min(needed, most));
    }

    /** Fewest teeth, without shift, whose root leaves the web round the servo's output. */
    private int forBore() {
        double root = wanted.servo().splineDiameter() / 2 + spec.gear().leastWeb();
        return (int) Math.ceil(2 * (root / wanted.module() + rack.dedendum()) - 1e-9);
    }

    /** Least pinion with which a servo of this travel turns the ring through {@code travel}. */
    static int neededTeeth(int gearTeeth, double travel, double servoTravel) {
        return (int) Math.ceil(Math.abs(travel) * gearTeeth / (servoTravel * USED_TRAVEL) - 1e-9);
    }

    private double shiftFor(int pinionTeeth, int gearTeeth) {
        double least = ShiftChoice.forPinion(rack, pinionTeeth);
        if (least == 0) {
            return 0;
        }
        return Math.max(
                least,
                ShiftChoice.of(rack, pinionTeeth, gearTeeth, 0, ShiftChoice.LEAST_TIP)
                        .pinion());
    }
}
