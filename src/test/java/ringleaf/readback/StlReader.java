// SPDX-License-Identifier: Apache-2.0
package ringleaf.readback;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;

/** Reads binary STL and asks that every normal is the one of its triangle. */
public final class StlReader {
    private StlReader() {}

    public static String header(byte[] file) {
        return new String(file, 0, 80, StandardCharsets.US_ASCII).trim();
    }

    public static ReadMesh read(byte[] file) {
        ByteBuffer in = ByteBuffer.wrap(file).order(ByteOrder.LITTLE_ENDIAN);
        in.position(80);
        int count = in.getInt();
        assertThat(file).hasSize(84 + 50 * count);
        double[][] triangles = new double[count][9];
        for (double[] t : triangles) {
            double[] n = {in.getFloat(), in.getFloat(), in.getFloat()};
            for (int k = 0; k < 9; k++) {
                t[k] = in.getFloat();
            }
            boolean good = in.getShort() == 0;
            for (int side = 3; side < 9; side += 3) {
                double[] e = {t[side] - t[0], t[side + 1] - t[1], t[side + 2] - t[2]};
                double length = Math.sqrt(e[0] * e[0] + e[1] * e[1] + e[2] * e[2]);
                good &= Math.abs(n[0] * e[0] + n[1] * e[1] + n[2] * e[2]) < 1e-5 * length + 1e-7;
            }
            good &= Math.abs(n[0] * n[0] + n[1] * n[1] + n[2] * n[2] - 1) < 1e-5;
            if (!good) {
                throw new AssertionError(
                        "normal or filler of triangle " + Arrays.toString(t) + ": " + Arrays.toString(n));
            }
        }
        return new ReadMesh(triangles);
    }
}
