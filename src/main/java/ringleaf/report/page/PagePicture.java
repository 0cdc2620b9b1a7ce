// SPDX-License-Identifier: Apache-2.0
package ringleaf.report.page;

import java.util.List;
import ringleaf.draw.Decimals;
import ringleaf.draw.view.MovingView;
import ringleaf.geom.Placement;
import ringleaf.part.Assembly;
import ringleaf.part.Family;
import ringleaf.part.Member;
import ringleaf.part.Part;

/** The picture of a mechanism as it stands in the page: each outline once, members as uses of it. */
final class PagePicture {
    private final String id;
    private final Assembly assembly;
    private final MovingView view;
    private final StringBuilder out = new StringBuilder(32768);

    PagePicture(String id, Assembly assembly, MovingView view) {
        this.id = id;
        this.assembly = assembly;
        this.view = view;
    }

    String draw(String viewBox) {
        out.append("<svg id=\"")
                .append(id)
                .append("-picture\" class=\"mechanism-picture\" viewBox=\"")
                .append(viewBox);
        out.append("\" role=\"group\" aria-label=\"");
        PageText.html(out, assembly.name()).append(" seen from above, to scale\">\n<defs>\n");
        List<MovingView.Sheaf> sheaves = view.sheaves();
        for (int i = 0; i < sheaves.size(); i++) {
            define(i, sheaves.get(i));
        }
        out.append("</defs>\n<g class=\"scene\">\n");
        if (view.clear().isPresent()) {
            out.append("<path class=\"light\" d=\"").append(view.clear().get()).append("\"/>\n");
        }
        boolean[] named = new boolean[view.parts().size()];
        for (int i = 0; i < sheaves.size(); i++) {
            sheaf(i, sheaves.get(i), named);
        }
        if (view.clear().isPresent()) {
            out.append("<path class=\"clear\" vector-effect=\"non-scaling-stroke\" d=\"");
            out.append(view.clear().get()).append("\"/>\n");
        }
        return out.append("</g>\n</svg>").toString();
    }

    private void define(int index, MovingView.Sheaf sheaf) {
        boolean plain = sheaf.edge().isEmpty() && sheaf.marks().isEmpty();
        if (plain) {
            path(" id=\"" + outlineId(index) + "\"", sheaf.outline());
            return;
        }
        out.append("<g id=\"").append(outlineId(index)).append("\">");
        if (!sheaf.edge().isEmpty()) {
            // A soft edge that falls on the leaf beneath.
            path(" class=\"shade wide\"", sheaf.edge());
            path(" class=\"shade\"", sheaf.edge());
        }
        path("", sheaf.outline());
        if (!sheaf.marks().isEmpty()) {
            path(" class=\"marks\"", sheaf.marks());
        }
        out.append("</g>\n");
    }

    private void path(String attributes, String data) {
        out.append("<path").append(attributes).append(" vector-effect=\"non-scaling-stroke\" d=\"");
        out.append(data).append("\"/>\n");
    }

    private String outlineId(int index) {
        return id + "-o" + index;
    }

    private void sheaf(int index, MovingView.Sheaf sheaf, boolean[] named) {
        Part part = view.parts().get(sheaf.part());
        out.append("<g class=\"sheaf p").append(sheaf.part()).append(' ').append(role(sheaf.role()));
        // A ring over leaves lets them be seen; a gear beside them may be solid.
        out.append(part.family() == Family.GEAR ? " gear" : "");
        out.append("\" data-part=\"").append(sheaf.part()).append("\" data-z=\"");
        Decimals.append(out, sheaf.zFrom(), 4);
        Decimals.append(out.append(' '), sheaf.zTo(), 4);
        out.append('"');
        if (!named[sheaf.part()]) {
            named[sheaf.part()] = true;
            out.append(" tabindex=\"0\" role=\"img\" aria-label=\"")
                    .append(sheaf.members().size())
                    .append(" &#215; ");
            PageText.html(out, part.name()).append('"');
        }
        out.append("><g id=\"").append(id).append("-g").append(index).append("\">\n");
        for (int i = 0; i < sheaf.members().size(); i++) {
            use(index, sheaf, i);
        }
        out.append("</g></g>\n");
    }

    private void use(int index, MovingView.Sheaf sheaf, int place) {
        int number = sheaf.members().get(place);
        Member member = assembly.members().get(number);
        out.append("<use href=\"#")
                .append(outlineId(index))
                .append("\" data-m=\"")
                .append(number)
                .append('"');
        if (sheaf.role() == MovingView.Role.LEAVES) {
            out.append(" class=\"t").append(tint(place, sheaf.members().size())).append('"');
        }
        Placement placement = member.placed(assembly.motion(), 0);
        if (!placement.equals(Placement.IDENTITY)) {
            out.append(" transform=\"").append(MovingView.transform(placement)).append('"');
        }
        out.append("/>\n");
    }

    /** Two tints in turn; an odd last leaf gets the one between, so that it stands off both its neighbours. */
    private static int tint(int place, int count) {
        return place == count - 1 && count % 2 == 1 ? 2 : place % 2;
    }

    private static String role(MovingView.Role role) {
        return switch (role) {
            case UNDER -> "under";
            case LEAVES -> "leaves";
            case OVER -> "over";
            case PIN -> "pin";
            case COVER -> "cover";
        };
    }
}
