// SPDX-License-Identifier: Apache-2.0
package ringleaf.coupon;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import ringleaf.spec.text.Decimal;

/**
 * What is on a test piece and how large it is drawn; mm.
 *
 * @param process that makes it, by its name in the catalogue
 * @param stock of which it is made, by its name
 * @param layers whether it is built up in layers; else it is cut from sheet
 * @param thickness of the plate
 * @param pin nominal diameter of the pin that is tried, and width of the tongue
 * @param features in the order of the sheet, the names of each kind counted from 1
 */
public record Coupon(
        String process, String stock, boolean layers, double thickness, double pin, List<Feature> features) {
    /** Form of the sheet that this version writes and reads. */
    public static final int FORM = 1;

    /** No letter or figure that looks like another one when it is engraved. */
    private static final String SIGNS = "23456789ABCDEFGHJKLMNPQRSTUVWXYZ";

    private static final int ID_LENGTH = 6;

    public Coupon {
        features = List.copyOf(features);
    }

    /** The features of one kind, in their order. */
    public List<Feature> of(Feature.Kind kind) {
        List<Feature> some = new ArrayList<>();
        for (Feature feature : features) {
            if (feature.kind() == kind) {
                some.add(feature);
            }
        }
        return some;
    }

    /** The feature of this name, or null. */
    public Feature named(String name) {
        for (Feature feature : features) {
            if (feature.name().equals(name)) {
                return feature;
            }
        }
        return null;
    }

    /** Six signs that go on the piece and its sheet: another piece has others, but for one chance in 10⁹. */
    public String id() {
        StringBuilder text = new StringBuilder();
        text.append(FORM).append(' ').append(process).append(' ').append(stock).append(' ');
        text.append(layers)
                .append(' ')
                .append(Decimal.of(thickness))
                .append(' ')
                .append(Decimal.of(pin));
        for (Feature feature : features) {
            text.append(' ').append(feature.name()).append(' ').append(Decimal.of(feature.drawn()));
        }
        long hash = 0xcbf29ce484222325L;
        for (byte b : text.toString().getBytes(StandardCharsets.UTF_8)) {
            hash = (hash ^ (b & 0xFF)) * 0x100000001b3L;
        }
        hash ^= hash >>> 32;
        StringBuilder id = new StringBuilder();
        for (int i = 0; i < ID_LENGTH; i++) {
            id.append(SIGNS.charAt((int) (hash >>> 5 * i & 31)));
        }
        return id.toString();
    }
}
