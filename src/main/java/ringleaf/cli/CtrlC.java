// SPDX-License-Identifier: Apache-2.0
package ringleaf.cli;

import java.lang.reflect.Proxy;

/**
 * Hears Ctrl-C without ending the process. What Java has for that is no part of its standard library, so it is looked
 * for by name; where it is missing, nothing is heard and the process ends as it always did.
 */
final class CtrlC {
    private final Runnable heard;
    private Class<?> signals;
    private Class<?> handlers;
    private Object signal;
    private Object before;

    private CtrlC(Runnable heard) {
        this.heard = heard;
    }

    /** From now on each Ctrl-C runs this, on a thread of its own. */
    static CtrlC heard(Runnable heard) {
        CtrlC keys = new CtrlC(heard);
        keys.listen();
        return keys;
    }

    private synchronized void listen() {
        try {
            signals = Class.forName("sun.misc.Signal");
            handlers = Class.forName("sun.misc.SignalHandler");
            signal = signals.getConstructor(String.class).newInstance("INT");
            before = handle(Proxy.newProxyInstance(
                    handlers.getClassLoader(), new Class<?>[] {handlers}, (proxy, method, arguments) -> {
                        if (method.getName().equals("handle")) {
                            heard.run();
                            return null;
                        }
                        return method.getName().equals("equals")
                                ? (Object) (proxy == arguments[0])
                                : method.getName().equals("hashCode")
                                        ? (Object) System.identityHashCode(proxy)
                                        : "Ctrl-C";
                    }));
        } catch (ReflectiveOperationException | RuntimeException e) {
            before = null;
        }
    }

    /** Leaves Ctrl-C to whoever had it before. */
    synchronized void forget() {
        if (before != null) {
            try {
                handle(before);
            } catch (ReflectiveOperationException | RuntimeException e) {
                // Only a process that ends at once can lose by this.
                signal = null;
            }
            before = null;
        }
    }

    private Object handle(Object by) throws ReflectiveOperationException {
        return signals.getMethod("handle", signals, handlers).invoke(null, signal, by);
    }
}
