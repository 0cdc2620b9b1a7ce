// SPDX-License-Identifier: Apache-2.0
package ringleaf.cli;

import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicInteger;

/**
 * Lets a long command end by itself when the process is interrupted. At the first Ctrl-C it is told to come to an end
 * and has some seconds for what it still wants to check; a second one takes these from it; a third ends the process. A
 * plain kill is like the first, and the process waits a while for the command to print and write what it has.
 */
final class Interrupt implements AutoCloseable {
    private static final long PATIENCE_S = 60;
    /** For checking what is to be shown, after the first. */
    private static final long CHECKING_S = 10;

    private final CountDownLatch ended = new CountDownLatch(1);
    private final Thread hook = new Thread(this::ending, "ringleaf-stop");
    private final AtomicInteger times = new AtomicInteger();
    private volatile long since;
    private final CtrlC keys;

    private Interrupt() {
        keys = CtrlC.heard(this::pressed);
    }

    static Interrupt watch() {
        Interrupt interrupt = new Interrupt();
        Runtime.getRuntime().addShutdownHook(interrupt.hook);
        return interrupt;
    }

    /** Whether somebody wants the command to end. */
    boolean asked() {
        return times.get() > 0;
    }

    /** Whether whoever asked has asked again, or waited for long enough. */
    boolean askedTwice() {
        return times.get() > 1 || asked() && System.nanoTime() - since > TimeUnit.SECONDS.toNanos(CHECKING_S);
    }

    /** Ctrl-C where Java tells of it; elsewhere the process begins to end and the hook hears of it. */
    private void pressed() {
        mark();
        if (times.get() > 1) {
            keys.forget();
        }
    }

    private void mark() {
        if (times.get() == 0) {
            since = System.nanoTime();
        }
        times.incrementAndGet();
    }

    private void ending() {
        boolean first = times.get() < 2;
        mark();
        try {
            ended.await(first ? PATIENCE_S : 0, TimeUnit.SECONDS);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }

    @Override
    public void close() {
        keys.forget();
        try {
            Runtime.getRuntime().removeShutdownHook(hook);
        } catch (IllegalStateException e) {
            // The process is ending, and the hook waits for this.
            hook.setName("ringleaf-stop-late");
        }
        ended.countDown();
    }
}
