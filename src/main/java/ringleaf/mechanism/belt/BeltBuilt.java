package ringleaf.mechanism.belt;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import ringleaf.groove.RollCheck;
import ringleaf.mechanism.AsBuilt;
import ringleaf.mechanism.SizesOff;
import ringleaf.part.Words;

/** Pulleys, and the drive they belong to, as they come from the workshop. */
final class BeltBuilt implements AsBuilt {
    /** What a belt between axles that cannot be moved may be stretched or slack by, as a share; likewise. */
    private static final double STRETCHES = 0.001;

    private static final int SIZES = 3;

    private final SizesOff sizes = new SizesOff();
    private final List<Limit> limits = new ArrayList<>();
    private final List<RollCheck> rolled = new ArrayList<>();
    private final List<Double> wraps = new ArrayList<>();
    private final List<Double> gives = new ArrayList<>();
    private Optional<DrivePlan> drive = Optional.empty();

    private BeltBuilt() {}

    /** One pulley by itself, half wrapped. */
    static BeltBuilt of(PulleySpec pulley) {
        BeltBuilt built = new BeltBuilt();
        built.add("", pulley, Math.PI);
        return built;
    }

    /** A drive with its pulleys. */
    static BeltBuilt of(DrivePlan plan) {
        BeltBuilt built = new BeltBuilt();
        for (int i = 0; i < plan.path().wheels().size(); i++) {
            Optional<PulleySpec> pulley = plan.pulley(i);
            if (pulley.isPresent()) {
                Wheel wheel = plan.path().wheels().get(i);
                double wrap = plan.path().teethInMesh(i) * 2 * Math.PI / wheel.teeth();
                built.add(wheel.name() + "-", pulley.get(), wrap);
            }
        }
        built.drive = Optional.of(plan);
        double length = plan.path().length();
        built.sizes.add("belt-length", "length of the belt", length, 1, DriveSlot.BELT_TOLERANCE * length, "0.2 %, common practice");
        built.sizes.width("centre-distance", "distance of the axles", plan.layout().distance(), 1, plan.spec().plate());
        built.limits.add(new Limit("belt-tightens", "mm", "what the belt is too long or too short can be taken up"));
        return built;
    }

    private void add(String prefix, PulleySpec pulley, double wrap) {
        rolled.add(pulley.rim().rolled());
        wraps.add(wrap);
        gives.add(PulleyChecks.GIVES * pulley.choice().belt().pitch());
        sizes.edge(prefix + "outside-radius", "rim on which the belt lies", pulley.rim().outsideRadius(), 1, pulley.material());
        sizes.width(prefix + "groove-width", "width of the grooves", pulley.rim().tooth().width(), 1, pulley.material());
        sizes.edge(prefix + "groove-bottom", "radius of the grooves' bottoms", pulley.rim().rootRadius(), 1, pulley.material());
        limits.add(new Limit(prefix + "teeth-seat", "mm", "all teeth in mesh find their grooves, though the rim is off"));
        limits.add(new Limit(prefix + "tip-clearance", "mm", "a seated tooth stays off the groove's bottom"));
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
        return this::margins;
    }

    private double[] margins(double[][] off) {
        double[] margins = new double[limits.size()];
        int pulleys = rolled.size();
        for (int i = 0; i < pulleys; i++) {
            double rim = off[SIZES * i][0];
            double groove = off[SIZES * i + 1][0];
            double bottom = off[SIZES * i + 2][0];
            // A rim that is off by d spaces the teeth by 2 pi d/z more or less; from the middle of the arc of contact
            // to its end that sums up to half the wrap times d.
            margins[2 * i] = (rolled.get(i).play() + groove) / 2 + gives.get(i) - Math.abs(rim) * wraps.get(i) / 2;
            margins[2 * i + 1] = rolled.get(i).tipRoom() + rim - bottom;
        }
        drive.ifPresent(plan -> {
            double belt = off[SIZES * pulleys][0];
            double distance = off[SIZES * pulleys + 1][0];
            double taken = plan.slot().moves() ? plan.slot().taken() : STRETCHES * plan.path().length();
            // Both straight spans grow with the distance, by less than twice as much.
            margins[2 * pulleys] = taken - Math.abs(belt - (plan.spec().fixed() ? 2 * distance : 0));
        });
        return margins;
    }

    @Override
    public List<String> assumptions() {
        List<String> all = new ArrayList<>();
        all.add("A rim that is off carries the belt's pitch line with it, so teeth come by a little too wide or too narrow;"
                + " all grooves of a pulley are off alike; the belt's own pitch counts as right, and its rubber gives by "
                + Words.number(100 * PulleyChecks.GIVES, 0) + " % of it.");
        drive.ifPresent(plan -> {
            String taken = Words.number(100 * plan.slot().taken() / plan.path().length(), 2) + " % of the belt's length.";
            all.add(plan.slot().moves()
                    ? "What moves in its slot takes up " + taken
                    : "A belt between axles that stand fast gives by " + Words.number(100 * STRETCHES, 1) + " %.");
        });
        all.add("Not modelled: single grooves, runout, flanges, axles that are not square, wear.");
        return all;
    }
}
