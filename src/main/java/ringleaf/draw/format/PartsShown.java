// SPDX-License-Identifier: Apache-2.0
package ringleaf.draw.format;

import java.util.List;
import ringleaf.draw.page.Paper;
import ringleaf.draw.paper.PaperItem;
import ringleaf.draw.sheet.SheetItem;

/**
 * The parts of a run that are made, ready for either kind of page.
 *
 * @param title of the spec
 * @param papers for pages at true scale, in the order of the parts
 * @param sheets for dimensioned sheets, in the same order
 * @param size of the paper
 * @param program the program with its version, for the pages to say
 */
public record PartsShown(String title, List<PaperItem> papers, List<SheetItem> sheets, Paper size, String program) {}
