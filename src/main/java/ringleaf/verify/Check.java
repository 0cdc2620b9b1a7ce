// SPDX-License-Identifier: Apache-2.0
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

    /** A finding on the worst measure; its figures are still to come. */
    final Finding.Draft on(String check, Measure worst) {
        String label = scene.assembly.motion().label(worst.state());
        Finding.Place place = Finding.Place.state(worst.state(), label)
                .withPoint(worst.place().at());
        return still(check, worst.place().members()).at(place);
    }

    /** A finding on what does not move; its figures are still to come. */
    final Finding.Draft still(String check, List<String> members) {
        return Finding.of(check).onOutlines(scene.tolerance).about(members);
    }

    final Finding.Draft still(String check, String member) {
        return still(check, List.of(member));
    }

    final String name(int member) {
        return scene.assembly.members().get(member).name();
    }

    final List<String> both(int first, int second) {
        return first == second ? List.of(name(first)) : List.of(name(first), name(second));
    }
}
