// SPDX-License-Identifier: Apache-2.0
package ringleaf.spec;

import java.text.Normalizer;
import java.util.Locale;
import java.util.Optional;
import ringleaf.spec.text.Shown;
import ringleaf.spec.text.SpecSource;

/** Names that are safe as files and folders everywhere: lower-case letters, digits and hyphens. */
public final class Slug {
    private static final int LONGEST = 60;

    private Slug() {}

    /**
     * The folder's name for a title: {@code Harbour light} gives {@code harbour-light}. Marks on letters are dropped;
     * a name that some systems keep for devices gets {@code -design} behind it. Letters of other scripts stand by numbers.
     *
     * @return empty when nothing of the title can stand in such a name
     */
    public static Optional<String> of(String title) {
        String plain = isAscii(title) ? title : Normalizer.normalize(title, Normalizer.Form.NFKD);
        String lower = plain.toLowerCase(Locale.ROOT);
        StringBuilder out = new StringBuilder();
        boolean gap = false;
        for (int i = 0; i < lower.length() && out.length() < LONGEST; i++) {
            char c = lower.charAt(i);
            if (c >= 'a' && c <= 'z' || c >= '0' && c <= '9') {
                if (gap && out.length() > 0) {
                    out.append('-');
                }
                gap = false;
                out.append(c);
            } else if (Character.getType(c) != Character.NON_SPACING_MARK && c != '\'') {
                gap = true;
            }
        }
        if (out.length() == 0) {
            return numbered(lower);
        }
        String slug = out.toString();
        return Optional.of(isDevice(slug) ? slug + "-design" : slug);
    }

    /** Letters of other scripts by their numbers, as {@code u706f-u53f0}; empty when there is no letter and no digit. */
    private static Optional<String> numbered(String title) {
        StringBuilder out = new StringBuilder();
        for (int i = 0; i < title.length(); ) {
            int c = title.codePointAt(i);
            String one = "u" + Integer.toHexString(c);
            if (Character.isLetterOrDigit(c) && out.length() + 1 + one.length() <= LONGEST) {
                out.append(out.length() == 0 ? "" : "-").append(one);
            }
            i += Character.charCount(c);
        }
        return out.length() == 0 ? Optional.empty() : Optional.of(out.toString());
    }

    /** Why a title cannot be taken; empty when it can. */
    public static String refusal(String title) {
        int length = title.codePointCount(0, title.length());
        if (title.isBlank()) {
            return "is empty (it names the output folder)";
        }
        if (length > 80) {
            return "is " + length + " characters long, and 80 are the most (it stands in one line and names a folder)";
        }
        for (int i = 0; i < title.length(); ) {
            int c = title.codePointAt(i);
            if (Shown.isHidden(c)) {
                return "holds a character that is not seen (U+" + SpecSource.hex(c) + ")";
            }
            if (c == '/' || c == '\\') {
                return "holds a " + (char) c + ", which parts folders (it names the output folder)";
            }
            i += Character.charCount(c);
        }
        if (title.contains("..")) {
            return "holds .., which leads out of a folder (it names the output folder)";
        }
        return of(title).isEmpty() ? "has no letter and no digit to name the output folder by" : "";
    }

    /** Why a mechanism's name cannot be taken; empty when it can. */
    static String nameRefusal(String name) {
        String rule = "lower-case letters, digits and hyphens, at most 40, a letter first, no hyphen last";
        boolean good = !name.isEmpty() && name.length() <= 40;
        for (int i = 0; good && i < name.length(); i++) {
            char c = name.charAt(i);
            boolean letter = c >= 'a' && c <= 'z';
            good = letter || i > 0 && (c >= '0' && c <= '9' || c == '-');
        }
        if (!good || name.endsWith("-")) {
            return Shown.quoted(name) + " is not a name for a mechanism (" + rule + ": it names files)";
        }
        return isDevice(name) ? name + " is a device's name on some systems, and a mechanism's name names files" : "";
    }

    /** Names that Windows keeps for devices, with or without an ending. */
    private static boolean isDevice(String slug) {
        switch (slug) {
            case "con":
            case "prn":
            case "aux":
            case "nul":
                return true;
            default:
                return slug.length() == 4
                        && (slug.startsWith("com") || slug.startsWith("lpt"))
                        && Character.isDigit(slug.charAt(3));
        }
    }

    private static boolean isAscii(String text) {
        for (int i = 0; i < text.length(); i++) {
            if (text.charAt(i) >= 0x80) {
                return false;
            }
        }
        return true;
    }
}
