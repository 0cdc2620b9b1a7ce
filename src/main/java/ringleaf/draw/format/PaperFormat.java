// SPDX-License-Identifier: Apache-2.0
package ringleaf.draw.format;

import java.util.List;
import ringleaf.draw.page.Page;
import ringleaf.draw.paper.PaperPages;

final class PaperFormat extends PageFormat {
    @Override
    public String name() {
        return "paper";
    }

    @Override
    public String writes() {
        return "PDF pages at true scale, to lay the real thing on";
    }

    @Override
    String titled() {
        return "parts at true scale";
    }

    @Override
    List<Page> pages(PartsShown parts) {
        return PaperPages.of(parts.title(), parts.papers(), parts.size());
    }
}
