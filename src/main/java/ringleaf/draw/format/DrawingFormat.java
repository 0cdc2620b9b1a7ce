// SPDX-License-Identifier: Apache-2.0
package ringleaf.draw.format;

import java.util.List;
import ringleaf.draw.page.Page;
import ringleaf.draw.sheet.SheetPages;

final class DrawingFormat extends PageFormat {
    @Override
    public String name() {
        return "drawing";
    }

    @Override
    public String writes() {
        return "a dimensioned sheet of each part, as PDF";
    }

    @Override
    String titled() {
        return "drawings";
    }

    @Override
    List<Page> pages(PartsShown parts) {
        return SheetPages.of(parts.sheets(), parts.size(), parts.program());
    }
}
