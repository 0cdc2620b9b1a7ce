package ringleaf.cli;

import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;

/**
 * Lets a long command end by itself when the process is interrupted: it is told, and the process waits a while for it
 * to print and write what it has.
 */
final class Interrupt implements AutoCloseable {
    private static final long PATIENCE_S = 60;

    private final CountDownLatch ended = new CountDownLatch(1);
    private final Thread hook = new Thread(this::interrupted, "ringleaf-stop");
    private volatile boolean asked;

    private Interrupt() {}

    static Interrupt watch() {
        Interrupt interrupt = new Interrupt();
        Runtime.getRuntime().addShutdownHook(interrupt.hook);
        return interrupt;
    }

    /** Whether somebody wants the command to end. */
    boolean asked() {
        return asked;
    }

    private void interrupted() {
        asked = true;
        try {
            ended.await(PATIENCE_S, TimeUnit.SECONDS);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }

    @Override
    public void close() {
        try {
            Runtime.getRuntime().removeShutdownHook(hook);
        } catch (IllegalStateException e) {
            // The process is ending, and the hook waits for this.
            hook.setName("ringleaf-stop-late");
        }
        ended.countDown();
    }
}
