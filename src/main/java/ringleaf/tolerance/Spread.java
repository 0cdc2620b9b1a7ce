// SPDX-License-Identifier: Apache-2.0
package ringleaf.tolerance;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.concurrent.atomic.AtomicReference;
import java.util.function.IntConsumer;
import java.util.function.Supplier;

/** Spreads numbered tasks over threads; what a task does must depend on its number alone. */
final class Spread {
    private Spread() {}

    /**
     * Does all tasks.
     *
     * @param worker makes the worker of one thread
     */
    static void over(int tasks, int threads, Ticker ticker, Supplier<IntConsumer> worker) {
        AtomicInteger next = new AtomicInteger();
        AtomicInteger done = new AtomicInteger();
        AtomicReference<RuntimeException> trouble = new AtomicReference<>();
        Runnable work = () -> {
            try {
                IntConsumer own = worker.get();
                int task = next.getAndIncrement();
                while (task < tasks && trouble.get() == null) {
                    own.accept(task);
                    task = next.getAndIncrement();
                    ticker.done(done.incrementAndGet(), tasks);
                }
            } catch (RuntimeException e) {
                trouble.compareAndSet(null, e);
            }
        };
        List<Thread> others = new ArrayList<>();
        for (int i = 1; i < Math.min(threads, tasks); i++) {
            Thread thread = new Thread(work, "builds-" + i);
            thread.setDaemon(true);
            thread.start();
            others.add(thread);
        }
        work.run();
        for (Thread thread : others) {
            join(thread);
        }
        if (trouble.get() != null) {
            throw trouble.get();
        }
    }

    private static void join(Thread thread) {
        boolean interrupted = false;
        while (thread.isAlive()) {
            try {
                thread.join();
            } catch (InterruptedException e) {
                interrupted = true;
            }
        }
        if (interrupted) {
            Thread.currentThread().interrupt();
        }
    }
}
