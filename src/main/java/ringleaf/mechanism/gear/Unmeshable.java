package ringleaf.mechanism.gear;

/** Two gears that cannot mesh as asked; the message says why, for people. */
final class Unmeshable extends Exception {
    private static final long serialVersionUID = 1;

    Unmeshable(String message) {
        super(message, null, false, false);
    }
}
