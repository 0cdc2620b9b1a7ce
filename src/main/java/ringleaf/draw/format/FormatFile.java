// SPDX-License-Identifier: Apache-2.0
package ringleaf.draw.format;

import java.util.List;

/**
 * A file that a format has made.
 *
 * @param path within the output folder
 * @param content its bytes
 * @param of numbers of the items that are in it, in the order in which they were given
 */
public record FormatFile(String path, byte[] content, List<Integer> of) {}
