package ringleaf.cli;

/** Starts the tool. */
public final class Main {
    private Main() {}

    /** Runs the command line and ends the process with its exit code. */
    public static void main(String[] args) {
        System.exit(0);
    }
}
