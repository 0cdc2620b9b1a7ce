// SPDX-License-Identifier: Apache-2.0
package ringleaf.cli;

import java.util.ArrayList;
import java.util.List;
import ringleaf.mechanism.Kind;
import ringleaf.spec.MechanismSpec;
import ringleaf.spec.text.Shown;

/** How many blades a trial piece is to have, and of what there is none. */
final class TrialBlades {
    /** One blade lies over nothing. */
    static final int LEAST = 2;

    private TrialBlades() {}

    /**
     * The number that was typed.
     *
     * @throws Stop when it is none, when no mechanism has any, and when it is out of range for one that can
     */
    static int of(String typed, List<MechanismSpec> mechanisms, List<Kind.Planned> planned) {
        List<String> others = new ArrayList<>();
        long number = Digits.of(typed);
        int least = Integer.MAX_VALUE;
        String smallest = "";
        for (int i = 0; i < planned.size(); i++) {
            MechanismSpec mechanism = mechanisms.get(i);
            int members = planned.get(i).members();
            if (members == 0) {
                others.add(mechanism.name() + " is a " + mechanism.kind().name());
            } else if (members < least) {
                least = members;
                smallest = mechanism.name();
            }
        }
        if (others.size() == planned.size()) {
            throw Stop.wrong(MakeCommand.TRIAL_BLADES + ": " + String.join(", ", others)
                    + "; a trial piece is cut out of a leaf-aperture, whose blades lie over one another");
        } else if (number < 0) {
            throw Stop.wrong(MakeCommand.TRIAL_BLADES + ": " + Shown.quoted(typed) + " is no whole number from " + LEAST
                    + " to " + least);
        } else if (number < LEAST) {
            throw Stop.wrong(MakeCommand.TRIAL_BLADES + ": " + number + " is below the least of " + LEAST
                    + " (one blade lies over nothing); nearest: " + LEAST);
        } else if (number > least) {
            throw Stop.wrong(MakeCommand.TRIAL_BLADES + ": " + number + " is above the " + least + " blades of "
                    + smallest + "; nearest: " + least);
        }
        return (int) number;
    }
}
