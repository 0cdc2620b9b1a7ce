// SPDX-License-Identifier: Apache-2.0
package ringleaf.mechanism.slide;

import ringleaf.mechanism.ServoLaw;
import ringleaf.part.Words;
import ringleaf.spec.shared.Servo;

/** What the servo of a slide moves: the carriage, by the slider-crank. */
record SlideLaw(SlideLayout layout) implements ServoLaw {
    @Override
    public Servo servo() {
        return layout.spec().servo();
    }

    @Override
    public String output() {
        return "position";
    }

    @Override
    public String unit() {
        return "mm";
    }

    @Override
    public double travel() {
        return Math.min(layout.swing(), servo().travel());
    }

    /** Until the carriage meets an end plate, where the horn is slowest. */
    @Override
    public double overTravel() {
        double most = 0;
        for (int i = 0; i <= 10; i++) {
            most = Math.max(most, Math.abs(layout.crank().speed(layout.angle(i / 10.0))));
        }
        return layout.spec().stop().mm() / most;
    }

    @Override
    public double output(double turn, Build build) {
        return layout.way(layout.startAngle() - turn - build.zero());
    }

    @Override
    public boolean hasPin() {
        return false;
    }

    /** The play of both pins in the link, as a turn where the horn moves the carriage least. */
    @Override
    public double lostMotion() {
        double least = Double.POSITIVE_INFINITY;
        for (int i = 0; i <= 10; i++) {
            least = Math.min(least, Math.abs(layout.crank().speed(layout.angle(i / 10.0))));
        }
        return 2 * layout.spec().pivot().room().mm() / least;
    }

    @Override
    public String lostIn() {
        return "both pins of the link "
                + Words.mm(2 * layout.spec().pivot().room().mm());
    }

    @Override
    public String sense() {
        return "clockwise";
    }
}
