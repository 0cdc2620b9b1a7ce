// SPDX-License-Identifier: Apache-2.0
package ringleaf.machine;

/** What a part is in its mechanism, e.g. its base; each kind has an enum of them, in the order in which parts are told. */
public interface Role {
    /** Name of the part that plays it, as in tables and files. */
    String label();
}
