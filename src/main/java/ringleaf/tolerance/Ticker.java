// SPDX-License-Identifier: Apache-2.0
package ringleaf.tolerance;

/** Is told how far a study has come; from any thread. */
@FunctionalInterface
public interface Ticker {
    Ticker NONE = (done, of) -> {};

    void done(int done, int of);
}
