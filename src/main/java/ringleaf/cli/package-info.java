// SPDX-License-Identifier: Apache-2.0
/**
 * The command line: the only place with files, streams, clocks, threads of its own and exit codes. May use everything.
 */
package ringleaf.cli;
