// SPDX-License-Identifier: Apache-2.0
package ringleaf.mechanism.aperture;

import java.util.ArrayList;
import java.util.List;
import ringleaf.geom.Point;
import ringleaf.part.BuildStep;
import ringleaf.part.Member;
import ringleaf.part.Placing;
import ringleaf.part.Way;
import ringleaf.part.Words;

/** What goes on when, with the order in which the blades are laid. Unmirrored, but for the words. */
final class BuildOrder {
    private static final String TURNS = "the ring must still turn by a finger.";

    private final ApertureDesign design;
    private final ApertureSpec spec;
    private final Stack stack;
    private final List<Member> members;
    private final List<BuildStep> steps = new ArrayList<>();

    BuildOrder(ApertureDesign design, List<Member> members) {
        this.design = design;
        this.spec = design.spec();
        this.stack = design.stack();
        this.members = members;
    }

    List<BuildStep> steps() {
        say("Deburr every part and lay the plates out with their alignment holes in line.");
        pins();
        base();
        if (design.pinionPlan().isPresent()) {
            servo(design.pinionPlan().get(), design.mount().orElseThrow());
        }
        put(
                "Put the spacer ring on the base, ledge down"
                        + (stack.ledgeSheets() > 0
                                ? " (" + stack.ledgeSheets() + " sheets of level-1, then " + stack.wallSheets()
                                        + " of level-2)."
                                : "."),
                one("spacer-ring", "base-plate", Way.DOWN));
        blades();
        put(
                "Lower the drive ring over all drive pins onto the ledge, "
                        + (design.handPlan().isPresent()
                                ? "its arm through the window."
                                : "the stop notch over the tab."),
                one("drive-ring", "base-plate", Way.DOWN));
        if (design.pinionPlan().isPresent()) {
            pinion();
        }
        if (stack.shims() > 0) {
            put(
                    "Lay " + stack.shims() + " spacer shim" + (stack.shims() > 1 ? "s" : "") + " on the wall.",
                    one("spacer-shim", "base-plate", Way.DOWN));
        }
        put(
                "Put the retainer on and draw the " + design.housing().screws().size() + " screws ("
                        + spec.screw().name() + ") up crosswise, just tight" + (isOnStand() ? "." : "; " + TURNS),
                one("retainer", "base-plate", Way.DOWN));
        if (isOnStand()) {
            say("Lift the housing off the stacking jig, and only now turn the ring: " + TURNS);
        }
        return steps;
    }

    private void pins() {
        // Blades are alike, so the places of the first stand for all.
        List<Point> drive = List.of(design.drivePoint());
        List<Placing> driveways = new ArrayList<>();
        for (int i = 1; i <= spec.blades(); i++) {
            driveways.add(pin("drive-pin " + i, "blade " + i, Way.DOWN));
        }
        PinWords words = new PinWords(design);
        if (spec.pinStyle() == PinStyle.BASE_POSTS) {
            List<Placing> posts = new ArrayList<>();
            for (int i = 1; i <= spec.blades(); i++) {
                posts.add(pin("pivot-pin " + i, "base-plate", Way.DOWN));
            }
            glued(
                    words.posts(spec.blades()),
                    posts,
                    "posts in the base",
                    new ApertureJoints(design, spec.blades()).bores().places());
        }
        if (spec.jigs().isPresent()) {
            say(words.jigs().preparing());
        }
        if (spec.pinStyle() == PinStyle.TWO_HOLES) {
            bothPins(words, driveways);
        } else {
            glued(words.drivePins(), driveways, "drive pins in the blades", drive);
        }
    }

    private void bothPins(PinWords words, List<Placing> driveways) {
        List<Placing> pivotways = new ArrayList<>();
        List<Placing> both = new ArrayList<>();
        for (int i = 1; i <= spec.blades(); i++) {
            pivotways.add(pin("pivot-pin " + i, "blade " + i, Way.UP));
            both.add(pivotways.get(i - 1));
            both.add(driveways.get(i - 1));
        }
        if (spec.jigs().isPresent()) {
            glued(words.jigs().pivotPins(), pivotways, "pivot pins in the blades", List.of(design.pivot()));
            glued(words.jigs().drivePins(), driveways, "drive pins in the blades", List.of(design.drivePoint()));
        } else {
            glued(words.both(), both, "pins in the blades", List.of(design.pivot(), design.drivePoint()));
        }
    }

    private void base() {
        Placing base = Placing.of(member("base-plate"), Placing.NOTHING, Way.DOWN);
        if (stack.hasCover()) {
            List<Placing> both = List.of(
                    Placing.of(member("cover"), Placing.NOTHING, Way.DOWN),
                    Placing.of(member("base-plate"), member("cover"), Way.DOWN));
            steps.add(BuildStep.of(
                    isOnStand()
                            ? "Stand the stacking jig up and lay the cover and then the base plate over its collar"
                                    + gap()
                            : "Lay the cover down and the base plate on it.",
                    both));
        } else {
            steps.add(BuildStep.of(
                    isOnStand()
                            ? "Stand the stacking jig up and lay the base plate over its collar, bores up" + gap()
                            : "Lay the base plate down, bores up.",
                    List.of(base)));
        }
    }

    private boolean isOnStand() {
        return spec.jigs().isPresent() && spec.jigs().get().stacking();
    }

    private String gap() {
        return design.pinionPlan().isPresent() ? ", the servo's place over the gap in its foot." : ".";
    }

    /**
     * Roots on the base, tips at the ring: a blade passes over the roots of its neighbours on the side of its tip, so
     * those are laid first. The circle has no first and no last, so the last ones have to go in under the first.
     */
    private void blades() {
        int n = spec.blades();
        int under = Math.min(n - 1, Math.max(1, (int) Math.ceil(reach() / spec.pitch()) - 1));
        String next = spec.mirrored() ? "counter-clockwise" : "clockwise";
        List<Placing> over = new ArrayList<>();
        List<Placing> last = new ArrayList<>();
        for (int i = n; i >= 1; i--) {
            (i > under ? over : last)
                    .add(Placing.of(member("blade " + i), member("base-plate"), i > under ? Way.DOWN : Way.UNDER));
        }
        String range = n - under > 1 ? "blades " + n + " to " + (under + 1) + " one after another" : "blade " + n;
        steps.add(BuildStep.of(
                "Lay " + range + " in the open pose, each next one in the bore " + next
                        + " of the last: at every overlap the blade that is nearer its tip lies over the one nearer its"
                        + " root." + (isOnStand() ? " Each inner edge lies against the jig's collar." : ""),
                over));
        String rest = under > 1 ? "blades " + under + " to 1 likewise" : "blade 1 likewise";
        steps.add(BuildStep.of(
                "Close the circle: lay " + rest + ", but lift the tips of those laid first and slip each root under"
                        + " them, so that there is no first and no last blade.",
                last));
    }

    /** The angle that a blade covers seen from the axis, both round ends included, rad. */
    private double reach() {
        double half = Math.max(design.band().width() / 2, design.ear());
        return design.band().span()
                + 2 * Math.asin(Math.min(1, half / design.band().pivotRadius()));
    }

    private void servo(PinionPlan plan, ServoMount mount) {
        say("Drive the servo (" + plan.servo().name() + ") to the end of its travel that is to mean open before"
                + " anything is screwed to it.");
        boolean stepUp = plan.stepUp().isPresent();
        if (stepUp) {
            List<Placing> placings = new ArrayList<>();
            placings.add(one("axle", "step-wheel", Way.DOWN));
            placings.add(one("axle", "base-plate", Way.UP));
            glued(
                    "Press and glue the step wheel on the axle and push the axle through the base from behind.",
                    placings,
                    "step wheel on the axle",
                    List.of(plan.centre()));
        }
        List<Placing> behind = new ArrayList<>();
        for (int i = 0; i < members.size(); i++) {
            if (members.get(i).name().startsWith(Fasteners.STANDOFF)
                    || members.get(i).name().startsWith(Fasteners.PACKING)) {
                behind.add(Placing.of(i, member("base-plate"), Way.UP));
            }
        }
        if (mount.hasPlate()) {
            if (stepUp) {
                behind.add(one("servo-gear", "servo-plate", Way.DOWN));
            }
            behind.add(one("servo-plate", "base-plate", Way.UP));
        } else if (stepUp) {
            behind.add(one("servo-gear", "base-plate", Way.UP));
        }
        String gear = stepUp ? "screw the servo gear on, its mark on the step wheel's mark; " : "";
        String words;
        if (mount.hasPlate()) {
            words = "Screw the servo by its ears to the back of the servo plate, output through the base; " + gear
                    + (mount.standoff() > 1e-9
                            ? "standoffs of " + Words.mm(mount.standoff()) + " go between plate and base."
                            : "the plate lies flat on the base.");
        } else {
            words = "Screw the servo by its ears to the back of the base"
                    + (mount.standoff() > 1e-9 ? " on packing of " + Words.mm(mount.standoff()) : "")
                    + (stepUp ? "; " + gear.substring(0, gear.length() - 2) : "") + ".";
        }
        steps.add(BuildStep.of(words, behind));
    }

    private void pinion() {
        Placing placing = one("pinion", "base-plate", Way.DOWN);
        if (design.pinionPlan().flatMap(PinionPlan::stepUp).isPresent()) {
            glued(
                    "Turn servo and ring to open, press and glue the pinion on the axle in front, its mark on the ring's"
                            + " mark; wheel and pinion must turn freely together.",
                    List.of(placing),
                    "pinion on the axle",
                    List.of(design.pinionPlan().orElseThrow().centre()));
        } else {
            put(
                    "Turn servo and ring to open, drop the pinion in with its mark on the ring's mark, and screw it"
                            + " to the servo.",
                    placing);
        }
    }

    private void say(String words) {
        steps.add(BuildStep.of(words));
    }

    private void put(String words, Placing placing) {
        steps.add(BuildStep.of(words, List.of(placing)));
    }

    private void glued(String words, List<Placing> placings, String what, List<Point> at) {
        steps.add(BuildStep.of(words, placings).withGlue(what, at));
    }

    private Placing one(String name, String onto, Way way) {
        return Placing.of(member(name), member(onto), way);
    }

    /** A pin that may be larger than its hole by what its fit takes away. */
    private Placing pin(String name, String onto, Way way) {
        double press = Math.max(0, -spec.clearances().set().room().mm());
        return new Placing(List.of(member(name)), member(onto), way, press);
    }

    private int member(String name) {
        for (int i = 0; i < members.size(); i++) {
            if (members.get(i).name().equals(name)) {
                return i;
            }
        }
        throw new IllegalArgumentException(name);
    }
}
