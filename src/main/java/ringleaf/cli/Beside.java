// SPDX-License-Identifier: Apache-2.0
package ringleaf.cli;

import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.function.Supplier;

/** A result that is worked out on another thread meanwhile. */
final class Beside<T> {
    /** As many threads as there is work; none keeps the program from ending. */
    private static final ExecutorService THREADS = Executors.newCachedThreadPool(work -> {
        Thread thread = new Thread(work, "beside");
        thread.setDaemon(true);
        return thread;
    });

    private final Future<T> work;

    private Beside(Future<T> work) {
        this.work = work;
    }

    static <T> Beside<T> start(Supplier<T> work) {
        return new Beside<>(THREADS.submit(work::get));
    }

    /** The result, once it is there; what went wrong on the other thread goes on here. */
    T result() {
        try {
            return work.get();
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new IllegalStateException("interrupted", e);
        } catch (ExecutionException e) {
            if (e.getCause() instanceof Error error) {
                throw error;
            }
            // A supplier throws nothing else.
            throw (RuntimeException) e.getCause();
        }
    }
}
