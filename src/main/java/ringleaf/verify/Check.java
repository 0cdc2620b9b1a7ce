package ringleaf.verify;

import java.util.List;
import ringleaf.part.Finding;

/** Judges one requirement: measures it state by state, then says the worst. */
abstract class Check {
    final Scene scene;

    Check(Scene scene) {
        this.scene = scene;
    }

    /** What is asked of the motion and the design before the states are shared out; runs on the caller's thread. */
    void prepare(Pose pose) {}

    /** What needs no motion, done once beside the states and before the end; runs on any thread. */
    void still() {}

    /** Measures one state, or null when this state is not asked for; runs on any thread, for several states at once. */
    abstract Measure measure(Pose pose, Figures figures);

    /** Adds what was found; {@code measures} has one entry a judged state, null where none was asked for. */
    abstract void conclude(Measure[] measures, List<Finding> findings);

    /** A finding that passes when no more than the tolerance is missing. */
    final Finding finding(String check, Measure worst, String unit, String message) {
        Finding.Status status =
                worst.margin() >= -scene.tolerance ? Finding.Status.PASS : Finding.Status.FAIL;
        return new Finding(check, status, worst.value(), worst.limit(), unit, where(worst), message + scene.judged());
    }

    final String where(Measure m) {
        String label = scene.assembly.motion().label(m.state());
        String place = m.place().words();
        return place.isEmpty() ? label : label + ", " + place;
    }

    /** A finding on what does not move. */
    final Finding still(String check, double margin, double value, double limit, String where, String message) {
        Finding.Status status = margin >= -scene.tolerance ? Finding.Status.PASS : Finding.Status.FAIL;
        return new Finding(check, status, value, limit, "mm", where, message);
    }

    final String name(int member) {
        return scene.assembly.members().get(member).name();
    }

    final String both(int first, int second) {
        return name(first) + " and " + name(second);
    }
}
