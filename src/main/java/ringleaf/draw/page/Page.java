// SPDX-License-Identifier: Apache-2.0
package ringleaf.draw.page;

import java.util.List;
import java.util.Optional;
import ringleaf.draw.Drawing;
import ringleaf.geom.Box;

/**
 * A page of paper: mm from its lower left corner, y up.
 *
 * @param width mm
 * @param height mm
 * @param contents in the order in which they are drawn
 */
public record Page(double width, double height, List<Content> contents) {
    public Page {
        contents = List.copyOf(contents);
    }

    /**
     * A drawing on the page.
     *
     * @param drawing in the page's own coordinates, true scale
     * @param window outside of which nothing of it is shown; absent for all of it
     */
    public record Content(Drawing drawing, Optional<Box> window) {}
}
