// SPDX-License-Identifier: Apache-2.0
package ringleaf.mechanism;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.function.Supplier;

/**
 * Results of pure functions by what they were worked out from, for whoever tries many designs that have much in
 * common. Two threads that want the same wait for one of them; what was not asked for longest is let go first, which
 * costs time and changes no result.
 */
public final class Memo {
    private final Map<Object, Slot> slots;

    private static final class Slot {
        private Object value;
    }

    /** Remembers so many results. */
    public Memo(int most) {
        slots = new LinkedHashMap<>(64, 0.75f, true) {
            @Override
            protected boolean removeEldestEntry(Map.Entry<Object, Slot> eldest) {
                return size() > most;
            }
        };
    }

    /**
     * The value for a key; {@code made} works it out when it is not known, and may ask for others.
     *
     * @param key equal exactly when the value is; its class belongs to one kind of value
     */
    @SuppressWarnings("unchecked")
    public <T> T get(Object key, Supplier<T> made) {
        Slot slot;
        synchronized (slots) {
            slot = slots.computeIfAbsent(key, k -> new Slot());
        }
        synchronized (slot) {
            if (slot.value == null) {
                slot.value = made.get();
            }
            return (T) slot.value;
        }
    }
}
