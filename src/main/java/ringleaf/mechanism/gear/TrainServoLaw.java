package ringleaf.mechanism.gear;

import ringleaf.mechanism.ServoLaw;
import ringleaf.spec.shared.Servo;

/** The turn of the last gear as a function of the servo's on the first one's axle. */
record TrainServoLaw(TrainSpec spec, Servo servo) implements ServoLaw {
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
        return Math.min(Math.abs(spec.travel()), servo.travel());
    }

    @Override
    public double overTravel() {
        return 0;
    }

    /** Turn of the last gear, unsigned, degrees. */
    @Override
    public double output(double servoTurn, Build build) {
        return Math.toDegrees(servoTurn + build.zero()) / spec.totalRatio();
    }

    @Override
    public boolean hasPin() {
        return false;
    }

    /** The play of every mesh, brought back to the first driver. */
    @Override
    public double lostMotion() {
        double lost = 0;
        double turns = 1;
        for (StageSpec stage : spec.stages()) {
            Mesh mesh = stage.mesh();
            turns *= mesh.ratio();
            lost += Math.max(0, mesh.drivenPlay()) * turns;
        }
        return lost;
    }

    @Override
    public String lostIn() {
        return "teeth";
    }

    @Override
    public String sense() {
        return spec.travel() > 0 ? "counter-clockwise" : "clockwise";
    }
}
