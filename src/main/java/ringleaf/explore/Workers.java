// SPDX-License-Identifier: Apache-2.0
package ringleaf.explore;

import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.concurrent.atomic.AtomicReference;
import java.util.function.BooleanSupplier;
import java.util.function.IntConsumer;
import java.util.function.Supplier;

/** Does numbered pieces of work on several threads; which thread does which must not matter to the result. */
final class Workers {
    private static final long TOLD_EVERY_MS = 100;

    private final int threads;
    private final Exploration.Told told;
    private final BooleanSupplier stopped;

    Workers(int threads, Exploration.Told told, BooleanSupplier stopped) {
        this.threads = threads;
        this.told = told;
        this.stopped = stopped;
    }

    /**
     * Does all pieces, or those that were begun when somebody stopped it; what goes wrong on a thread goes on here.
     *
     * @param total pieces, numbered from 0
     * @param atOnce neighbours that one thread takes together
     * @param worker gives each thread what does a piece
     */
    void all(int total, int atOnce, Supplier<IntConsumer> worker) {
        AtomicInteger next = new AtomicInteger();
        AtomicInteger done = new AtomicInteger();
        AtomicReference<Throwable> failure = new AtomicReference<>();
        CountDownLatch ended = new CountDownLatch(threads);
        for (int t = 0; t < threads; t++) {
            Thread thread = new Thread(
                    () -> {
                        try {
                            IntConsumer own = worker.get();
                            int from = next.getAndAdd(atOnce);
                            while (from < total && failure.get() == null && !stopped.getAsBoolean()) {
                                int to = Math.min(total, from + atOnce);
                                for (int i = from; i < to && !stopped.getAsBoolean(); i++) {
                                    own.accept(i);
                                    done.incrementAndGet();
                                }
                                from = next.getAndAdd(atOnce);
                            }
                        } catch (RuntimeException | Error e) {
                            failure.compareAndSet(null, e);
                        } finally {
                            ended.countDown();
                        }
                    },
                    "explore-" + t);
            thread.setDaemon(true);
            thread.start();
        }
        try {
            while (!ended.await(TOLD_EVERY_MS, TimeUnit.MILLISECONDS)) {
                told.done(done.get(), total);
            }
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new IllegalStateException("interrupted while exploring", e);
        }
        if (failure.get() instanceof Error error) {
            throw error;
        } else if (failure.get() != null) {
            throw (RuntimeException) failure.get();
        }
    }
}
