// SPDX-License-Identifier: Apache-2.0
package ringleaf.cli;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.Arrays;
import java.util.Base64;

/** What a preview shows at the moment: the last page that could be drawn, and what is wrong since. */
final class Showing {
    private byte[] page;
    private String digest;
    private String problem;
    private long changes;
    private boolean ended;

    /**
     * A moment of it.
     *
     * @param changes how often it has changed so far
     * @param digest that tells pages apart
     * @param problem what is wrong, empty when nothing is
     * @param ended whether the preview is over
     */
    record Moment(long changes, String digest, String problem, boolean ended) {}

    Showing(byte[] page, String problem) {
        this.page = page;
        this.digest = digest(page);
        this.problem = problem;
    }

    /** The page, its digest as a comment after its end, by which its script tells whether it is the newest. */
    synchronized byte[] page() {
        byte[] mark = ("<!--" + digest + "-->").getBytes(StandardCharsets.UTF_8);
        byte[] marked = Arrays.copyOf(page, page.length + mark.length);
        System.arraycopy(mark, 0, marked, page.length, mark.length);
        return marked;
    }

    synchronized Moment moment() {
        return new Moment(changes, digest, problem, ended);
    }

    /**
     * Shows what came of a redraw; with a problem the last page stays.
     *
     * @return whether anything is different now
     */
    synchronized boolean show(byte[] newer, String wrong) {
        boolean same = problem.equals(wrong) && (newer == null || Arrays.equals(page, newer));
        if (!same) {
            problem = wrong;
            if (newer != null) {
                page = newer;
                digest = digest(newer);
            }
            changes++;
            notifyAll();
        }
        return !same;
    }

    /** Tells all who wait that it is over. */
    synchronized void end() {
        ended = true;
        changes++;
        notifyAll();
    }

    /** Waits until something has changed since {@code seen}, at most so many ms; the moment then. */
    synchronized Moment after(long seen, long mostMillis) throws InterruptedException {
        if (changes == seen && !ended) {
            wait(mostMillis);
        }
        return moment();
    }

    /** A short name of the content, the same for the same bytes. */
    private static String digest(byte[] bytes) {
        byte[] sum = sha256(bytes);
        return Base64.getUrlEncoder().withoutPadding().encodeToString(Arrays.copyOf(sum, 12));
    }

    /** The digest of a script as a content security policy names it. */
    static String policyDigest(String script) {
        return "sha256-" + Base64.getEncoder().encodeToString(sha256(script.getBytes(StandardCharsets.UTF_8)));
    }

    private static byte[] sha256(byte[] bytes) {
        try {
            return MessageDigest.getInstance("SHA-256").digest(bytes);
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java has SHA-256", e);
        }
    }
}
