// SPDX-License-Identifier: Apache-2.0
package ringleaf.mechanism.belt;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import ringleaf.machine.Room;
import ringleaf.mechanism.AsBuilt;
import ringleaf.mechanism.SizesOff;
import ringleaf.mechanism.body.AxleOff;
import ringleaf.part.Words;

/** Pulleys, and the drive they belong to, as they come from the workshop. */
final class BeltBuilt implements AsBuilt {
    /** What a belt between axles that cannot be moved may be stretched or slack by, as a share; common practice. */
    private static final double STRETCHES = 0.001;

    private final SizesOff sizes = new SizesOff();
    private final List<Limit> limits = new ArrayList<>();
    private final List<Margin> margins = new ArrayList<>();
    private Optional<DrivePlan> drive = Optional.empty();

    /** What is left of a limit when sizes are off. */
    @FunctionalInterface
    private interface Margin {
        double of(double[][] off);
    }

    private BeltBuilt() {}

    /** One pulley by itself, half wrapped. */
    static BeltBuilt of(PulleySpec pulley) {
        BeltBuilt built = new BeltBuilt();
        int belt = built.beltWidth(pulley);
        built.add("", pulley, new PulleyStack(pulley, 0), Math.PI, belt);
        return built;
    }

    /** A drive with its pulleys. */
    static BeltBuilt of(DrivePlan plan) {
        BeltBuilt built = new BeltBuilt();
        built.drive = Optional.of(plan);
        int belt = built.beltWidth(plan.spec().driver());
        for (int i = 0; i < plan.path().wheels().size(); i++) {
            Optional<PulleySpec> pulley = plan.pulley(i);
            if (pulley.isPresent()) {
                Wheel wheel = plan.path().wheels().get(i);
                double wrap = plan.path().teethInMesh(i) * 2 * Math.PI / wheel.teeth();
                built.add(wheel.name() + "-", pulley.get(), plan.stack(pulley.get()), wrap, belt);
            }
        }
        built.length(plan);
        if (plan.spec().plates() > 1) {
            built.between(plan);
        }
        return built;
    }

    private int beltWidth(PulleySpec pulley) {
        return sizes.add(
                "belt-width",
                "width of the belt",
                pulley.choice().width(),
                1,
                BeltRooms.BELT_WIDTH,
                "a belt maker's technical manual, table 5.13");
    }

    private void add(String prefix, PulleySpec pulley, PulleyStack stack, double wrap, int belt) {
        PulleyRim rim = pulley.rim();
        BeltChoice choice = pulley.choice();
        double pitch = choice.belt().pitch();
        int outside = sizes.radius(
                prefix + "outside-radius", "rim on which the belt lies", rim.outsideRadius(), pulley.material());
        int width = sizes.width(
                prefix + "groove-width", "width of the grooves", rim.tooth().width(), 1, pulley.material());
        int bottom = sizes.radius(
                prefix + "groove-bottom", "radius of the grooves' bottoms", rim.rootRadius(), pulley.material());
        double play = rim.rolled().play();
        double gives = PulleyChecks.GIVES * pitch;
        // A rim that is off by d spaces the teeth by 2 pi d/z more or less; from the middle of the arc of contact to
        // its
        // end that sums up to half the wrap times d.
        add(
                limit(
                        prefix + "teeth-seat",
                        "all teeth in mesh find their grooves, though the rim is off",
                        Optional.of(choice.play()),
                        Relief.larger("backlash", choice.backlash(), pitch / 4)),
                off -> (play + off[width][0]) / 2 + gives - Math.abs(off[outside][0]) * wrap / 2);
        double below = rim.rolled().tipRoom();
        add(
                limit(
                        prefix + "tip-clearance",
                        "a seated tooth stays off the groove's bottom",
                        Optional.of(choice.below()),
                        Relief.larger(
                                "clearance", choice.clearance(), choice.belt().toothHeight())),
                off -> below + off[outside][0] - off[bottom][0]);
        if (pulley.flanges() > 1) {
            int face =
                    sizes.height(prefix + "face-width", "width between the flanges", stack.face(), pulley.material());
            double beside = stack.face() - choice.width();
            add(
                    limit(
                            prefix + "face-width",
                            "the belt goes between the flanges",
                            Optional.empty(),
                            Relief.larger("face-width", stack.face(), 2 * stack.face())),
                    off -> beside + off[face][0] - off[belt][0]);
        }
        AxleOff.of(prefix, pulley.body(), pulley.material(), sizes).ifPresent(axle -> add(axle.limit(), axle::margin));
    }

    /** What the belt's length strays by is taken up, and it can be drawn tight. */
    private void length(DrivePlan plan) {
        double length = plan.path().length();
        int belt = sizes.add(
                "belt-length",
                "length of the belt",
                length,
                1,
                DriveSlot.BELT_TOLERANCE * length,
                "0.2 %, common practice");
        int distance = sizes.width(
                "centre-distance",
                "distance of the axles",
                plan.layout().distance(),
                1,
                plan.spec().plate());
        if (!plan.slot().moves()) {
            add(
                    limit(
                            "belt-length",
                            "the belt between axles that stand fast is neither slack nor overstretched",
                            Optional.empty(),
                            new Relief("centres", List.of("movable"))),
                    off -> STRETCHES * length - Math.abs(off[belt][0] - 2 * off[distance][0]));
            return;
        }
        double longer = plan.slot().taken() - BeltRooms.TIGHT * length;
        BeltPath slackest = plan.layout().pathAt(-plan.slot().inward());
        double shorter = slackest == null ? Double.POSITIVE_INFINITY : length - slackest.length();
        // Both straight spans grow with the distance, by less than twice as much.
        add(
                limit(
                        "tension-allowance",
                        "a belt that is too long can be drawn tight",
                        Optional.of(BeltRooms.takeUp(length, plan.spec().plate())),
                        new Relief("idler.along", List.of("0.5", "0.4", "0.6", "0.3")),
                        new Relief("centres", List.of("movable"))),
                off -> longer - off[belt][0] + Math.min(0, 2 * off[distance][0]));
        add(
                limit("installation-allowance", "a belt that is too short goes on", Optional.empty()),
                off -> shorter + off[belt][0] - Math.max(0, 2 * off[distance][0]));
    }

    /** Pulleys do not rub between their plates. */
    private void between(DrivePlan plan) {
        DriveSpec spec = plan.spec();
        double height = plan.top() - plan.foot();
        int stack = sizes.height(
                "pulley-height",
                "height of the pulleys with their flanges",
                height,
                spec.driven().material());
        int spacer = sizes.add(
                "plate-distance",
                "distance of the plates",
                height + 2 * spec.axialRoom(),
                1,
                BeltRooms.SPACER,
                "spacers, common practice");
        double room = 2 * spec.axialRoom();
        add(
                limit(
                        "axial-play",
                        "pulleys do not rub on the plates",
                        Optional.empty(),
                        Relief.larger("clearances.axial", spec.axialRoom(), 3 * spec.axialRoom())),
                off -> room + off[spacer][0] - off[stack][0]);
    }

    private static Limit limit(String check, String holds, Optional<Room> room, Relief... reliefs) {
        return room.isPresent()
                ? Limit.of(check, "mm", holds, room.get(), List.of(reliefs))
                : new Limit(check, "mm", holds, "", List.of(reliefs));
    }

    private void add(Limit limit, Margin margin) {
        limits.add(limit);
        margins.add(margin);
    }

    @Override
    public List<Deviation> deviations() {
        return sizes.all();
    }

    @Override
    public List<Limit> limits() {
        return List.copyOf(limits);
    }

    @Override
    public Bench bench() {
        return off -> {
            double[] left = new double[margins.size()];
            for (int i = 0; i < left.length; i++) {
                left[i] = margins.get(i).of(off);
            }
            return left;
        };
    }

    @Override
    public List<String> families() {
        return drive.isPresent() ? List.of("pulley", "plate") : List.of("pulley");
    }

    @Override
    public List<String> assumptions() {
        List<String> all = new ArrayList<>();
        all.add(
                "A rim that is off carries the belt's pitch line with it, so teeth come by a little too wide or too narrow;"
                        + " all grooves of a pulley are off alike; the belt's own pitch counts as right, and its rubber gives by "
                        + Words.number(100 * PulleyChecks.GIVES, 0)
                        + " % of it. Of rims and bottoms the diameter is kept, so the"
                        + " radius is off by half of that; runout moves a pulley and spaces no teeth.");
        drive.ifPresent(plan -> {
            String taken = Words.number(100 * plan.slot().taken() / plan.path().length(), 2)
                    + " % of the belt's length;" + " whoever builds it sets the tension with what it is.";
            all.add(
                    plan.slot().moves()
                            ? "What moves in its slot takes up " + taken
                            : "A belt between axles that stand fast gives by " + Words.number(100 * STRETCHES, 1)
                                    + " %.");
        });
        all.add("Not modelled: single grooves, bent flanges, axles that are not square, wear.");
        return all;
    }
}
