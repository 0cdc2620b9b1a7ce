// SPDX-License-Identifier: Apache-2.0
package ringleaf.draw.format;

import java.util.ArrayList;
import java.util.List;

/** Both kinds of PDF pages by one name. */
final class PdfFormat implements Format {
    private final List<Format> members;

    PdfFormat(PageFormat... members) {
        this.members = List.of(members);
    }

    @Override
    public String name() {
        return "pdf";
    }

    @Override
    public String writes() {
        List<String> names = new ArrayList<>();
        for (Format member : members) {
            names.add(member.name());
        }
        return String.join(" and ", names);
    }

    @Override
    public List<String> files() {
        List<String> files = new ArrayList<>();
        for (Format member : members) {
            files.addAll(member.files());
        }
        return files;
    }

    @Override
    public List<FormatOption> options() {
        return members.get(0).options();
    }

    @Override
    public List<Format> members() {
        return members;
    }
}
