package ringleaf.part;

/**
 * What a check found.
 *
 * @param check name of the check, e.g. {@code light-tight}
 * @param status whether it holds
 * @param measured what was measured, in {@code unit}
 * @param limit what it was held against, in {@code unit}
 * @param unit mm, deg, mm2, Nmm, N or 1
 * @param where state and place, e.g. {@code closed, blade 1 and blade 2}
 * @param message one plain sentence for the builder
 */
public record Finding(
        String check, Status status, double measured, double limit, String unit, String where, String message) {
    /** In order of weight. */
    public enum Status {
        PASS,
        WARN,
        FAIL;

        public String label() {
            return name().toLowerCase(java.util.Locale.ROOT);
        }
    }

    /** A check that holds when the measured value is at least the limit. */
    public static Finding atLeast(
            String check, double measured, double limit, String unit, String where, String message) {
        return new Finding(check, measured >= limit ? Status.PASS : Status.FAIL, measured, limit, unit, where, message);
    }

    /** A check that holds when the measured value is at most the limit. */
    public static Finding atMost(
            String check, double measured, double limit, String unit, String where, String message) {
        return new Finding(check, measured <= limit ? Status.PASS : Status.FAIL, measured, limit, unit, where, message);
    }

    public boolean failed() {
        return status == Status.FAIL;
    }
}
