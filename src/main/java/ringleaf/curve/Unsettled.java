// SPDX-License-Identifier: Apache-2.0
package ringleaf.curve;

/** Rounding gave pieces that do not fit together; the same work with a wider snap may succeed. */
final class Unsettled extends RuntimeException {
    Unsettled(String message) {
        super(message, null, false, false);
    }
}
