// SPDX-License-Identifier: Apache-2.0
package ringleaf.draw.mesh;

import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import ringleaf.draw.PlainText;
import ringleaf.solid.Mesh;

/**
 * Binary STL: a header of 80 bytes that says what the file is and in which unit, the number of triangles, and for each
 * its normal, its corners in single precision and two bytes of nothing; little-endian. The format is common practice
 * and has no standard.
 */
public final class StlWriter {
    private static final int HEADER = 80;
    private static final int TRIANGLE = 50;

    private StlWriter() {}

    /**
     * The file.
     *
     * @param words what it is, cut off after 80 bytes; must not begin with {@code solid}, by which readers know the text
     *     form
     */
    public static byte[] write(Mesh mesh, String words) {
        ByteBuffer out = ByteBuffer.allocate(HEADER + 4 + TRIANGLE * mesh.triangleCount());
        out.order(ByteOrder.LITTLE_ENDIAN);
        byte[] header = PlainText.line(words).getBytes(StandardCharsets.US_ASCII);
        for (int i = 0; i < HEADER; i++) {
            out.put(i < header.length ? header[i] : (byte) ' ');
        }
        out.putInt(mesh.triangleCount());
        float[] corners = new float[mesh.corners().length];
        for (int i = 0; i < corners.length; i++) {
            corners[i] = (float) mesh.corners()[i];
        }
        int[] triangles = mesh.triangles();
        for (int t = 0; t < triangles.length; t += 3) {
            normal(corners, 3 * triangles[t], 3 * triangles[t + 1], 3 * triangles[t + 2], out);
            for (int k = 0; k < 3; k++) {
                int at = 3 * triangles[t + k];
                out.putFloat(corners[at]).putFloat(corners[at + 1]).putFloat(corners[at + 2]);
            }
            out.putShort((short) 0);
        }
        return out.array();
    }

    private static void normal(float[] p, int a, int b, int c, ByteBuffer out) {
        double ux = (double) p[b] - p[a];
        double uy = (double) p[b + 1] - p[a + 1];
        double uz = (double) p[b + 2] - p[a + 2];
        double vx = (double) p[c] - p[a];
        double vy = (double) p[c + 1] - p[a + 1];
        double vz = (double) p[c + 2] - p[a + 2];
        double x = uy * vz - uz * vy;
        double y = uz * vx - ux * vz;
        double z = ux * vy - uy * vx;
        double length = Math.sqrt(x * x + y * y + z * z);
        double share = length > 0 ? 1 / length : 0;
        out.putFloat((float) (x * share)).putFloat((float) (y * share)).putFloat((float) (z * share));
    }
}
