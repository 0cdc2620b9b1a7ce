// SPDX-License-Identifier: Apache-2.0
/** Reads drawing files back with small readers that share no code with the writers, and with public libraries. */
package ringleaf.readback;
