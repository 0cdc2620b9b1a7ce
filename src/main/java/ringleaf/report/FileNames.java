// SPDX-License-Identifier: Apache-2.0
package ringleaf.report;

/** Names of mechanisms, parts and titles as names of files. */
public final class FileNames {
    private static final int LONGEST = 60;

    private FileNames() {}

    /**
     * The name in lower case letters, digits and single hyphens, at most 60 characters; everything else becomes a
     * hyphen, and nothing at all becomes {@code unnamed}.
     */
    public static String of(String name) {
        StringBuilder out = new StringBuilder();
        for (int i = 0; i < name.length() && out.length() < LONGEST; i++) {
            char c = name.charAt(i);
            if (c >= 'A' && c <= 'Z') {
                c = (char) (c - 'A' + 'a');
            }
            boolean plain = c >= 'a' && c <= 'z' || c >= '0' && c <= '9';
            if (plain) {
                out.append(c);
            } else if (out.length() > 0 && out.charAt(out.length() - 1) != '-') {
                out.append('-');
            }
        }
        if (out.length() > 0 && out.charAt(out.length() - 1) == '-') {
            out.setLength(out.length() - 1);
        }
        return out.length() == 0 ? "unnamed" : out.toString();
    }
}
