// SPDX-License-Identifier: Apache-2.0
package ringleaf.verify;

/** Told how far a judgement has come; never called by two threads at once. */
@FunctionalInterface
public interface Progress {
    /** For those who do not want to know. */
    Progress SILENT = (done, total) -> {};

    /** {@code done} of {@code total} states are judged. */
    void judged(int done, int total);
}
