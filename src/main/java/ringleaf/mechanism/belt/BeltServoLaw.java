package ringleaf.mechanism.belt;

import ringleaf.mechanism.ServoLaw;
import ringleaf.part.Words;
import ringleaf.spec.shared.Servo;

/** The turn of the driven pulley as a function of the servo's. */
record BeltServoLaw(DrivePlan plan, Servo servo) implements ServoLaw {
    @Override
    public String output() {
        return "angle";
    }

    @Override
    public String unit() {
        return "deg";
    }

    @Override
    public double travel() {
        return Math.min(Math.abs(plan.driverTravel()), servo.travel());
    }

    @Override
    public double overTravel() {
        return 0;
    }

    /** Turn of the driven pulley, unsigned, degrees. */
    @Override
    public double output(double servoTurn, Build build) {
        return Math.toDegrees(servoTurn + build.zero()) / plan.spec().ratio();
    }

    @Override
    public boolean hasPin() {
        return false;
    }

    /** Play of the belt's teeth in both pulleys, as way of the belt on the driver's pitch circle. */
    @Override
    public double lostMotion() {
        return way() / plan.spec().driver().rim().pitchRadius();
    }

    private double way() {
        return plan.spec().driver().rim().rolled().play() + plan.spec().driven().rim().rolled().play();
    }

    @Override
    public String lostIn() {
        return "teeth of the belt in both pulleys " + Words.mm(way());
    }

    @Override
    public String sense() {
        return plan.driverTravel() > 0 ? "counter-clockwise" : "clockwise";
    }
}
