// SPDX-License-Identifier: Apache-2.0
package ringleaf.cli;

import java.util.function.Supplier;

/** A result that is worked out on another thread meanwhile. */
final class Beside<T> {
    private final Thread thread;
    private T result;
    private Throwable failure;

    private Beside(String name, Supplier<T> work) {
        thread = new Thread(() -> run(work), name);
        thread.setDaemon(true);
    }

    static <T> Beside<T> start(String name, Supplier<T> work) {
        Beside<T> beside = new Beside<>(name, work);
        beside.thread.start();
        return beside;
    }

    private void run(Supplier<T> work) {
        try {
            result = work.get();
        } catch (RuntimeException | Error e) {
            failure = e;
        }
    }

    /** The result, once it is there; what went wrong on the other thread goes on here. */
    T result() {
        try {
            thread.join();
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new IllegalStateException("interrupted", e);
        }
        if (failure instanceof Error error) {
            throw error;
        } else if (failure != null) {
            throw (RuntimeException) failure;
        }
        return result;
    }
}
