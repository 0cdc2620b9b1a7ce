// SPDX-License-Identifier: Apache-2.0
package ringleaf.fabricate;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Random;
import ringleaf.kinds.Kinds;
import ringleaf.mechanism.Kind;
import ringleaf.mechanism.Request;
import ringleaf.part.Design;
import ringleaf.part.Part;
import ringleaf.spec.MechanismSpec;
import ringleaf.spec.SpecDocument;
import ringleaf.spec.SpecReader;
import ringleaf.spec.shared.Catalogues;
import ringleaf.spec.shared.SharedFiles;
import ringleaf.spec.text.Problems;
import ringleaf.spec.text.SpecSource;

/** Specs of every kind and process by chance, each the same for its seed; some are refused, as a user's are. */
public final class ThrownSpec {
    private static final String[] KINDS = {"leaf-aperture", "gear", "gear-pair", "gear-train", "pulley", "belt-drive"};
    private static final String[] PLATES = {
        "{process: co2-laser, stock: acrylic-2}",
        "{process: co2-laser, stock: acrylic-3}",
        "{process: co2-laser, stock: acrylic-4}",
        "{process: co2-laser, stock: plywood-3}",
        "{process: filament-print, stock: petg}",
        "{process: filament-print, stock: pla}",
        "{process: resin-print, stock: resin}"
    };
    private static final String[] BLADES = {
        "{process: fibre-laser, stock: brass-0.15}",
        "{process: photo-etch, stock: steel-0.1}",
        "{process: drag-knife, stock: polyester-0.19}",
        "{process: co2-laser, stock: polyester-0.1}"
    };
    private static final String[] BELTS = {"T2.5", "T5", "T10", "3M", "5M", "8M", "XL", "MXL"};
    /** Pitches of the belts, mm, and the fewest teeth that their cords stand, as the catalogue has them or more. */
    private static final double[] PITCHES = {2.5, 5, 10, 3, 5, 8, 5.08, 2.032};

    private static final int FEWEST = 22;
    private static final String[] SCREWS = {"M1.6", "M2", "M2.5", "M3"};

    private final Random random;
    private final StringBuilder text = new StringBuilder();
    private boolean printed;

    private ThrownSpec(long seed) {
        random = new Random(seed);
    }

    /** The kind of a seed: kinds come in turn. */
    public static String kind(long seed) {
        return KINDS[(int) Math.floorMod(seed, (long) KINDS.length)];
    }

    /**
     * The text of a spec.
     *
     * @param cutting further lines under {@code fabrication}, each ended and indented by two spaces
     */
    public static String of(long seed, String cutting) {
        ThrownSpec thrown = new ThrownSpec(seed);
        thrown.fabrication(cutting);
        thrown.mechanism(kind(seed));
        return thrown.text.toString();
    }

    /** A spec as it was read and designed. */
    public record Made(String spec, SpecDocument document, Design design) {
        /** Parts that are made and have outlines. */
        public List<Part> drawn() {
            List<Part> drawn = new ArrayList<>();
            for (Part part : design.parts()) {
                if (part.isDrawn() && !part.source().isBought()) {
                    drawn.add(part);
                }
            }
            return drawn;
        }
    }

    /** The design of a spec; empty where it is refused. */
    public static Optional<Made> design(String spec) {
        Problems problems = new Problems();
        Catalogues catalogues = new Catalogues(SharedFiles.NONE, problems);
        Optional<SpecDocument> document = new SpecReader(Kinds.REGISTERED.fields(), catalogues, problems)
                .read(SpecSource.of("thrown.yaml", spec), List.of());
        if (document.isEmpty() || !problems.isEmpty()) {
            return Optional.empty();
        }
        MechanismSpec mechanism = document.get().mechanisms().get(0);
        Kind.Planned planned = Kinds.REGISTERED
                .named(mechanism.kind().name())
                .read(new Request(
                        mechanism.name(), mechanism.values(), document.get().fabrication(), catalogues, problems));
        return problems.isEmpty() ? Optional.of(new Made(spec, document.get(), planned.design(13))) : Optional.empty();
    }

    private void fabrication(String cutting) {
        text.append("fabrication:\n").append(cutting);
        String plate = one(PLATES);
        for (String family : new String[] {"plate", "ring", "gear", "pulley"}) {
            String own = chance(3) ? one(PLATES) : plate;
            text.append("  ").append(family).append(": ").append(own).append('\n');
            printed = own.contains("print");
        }
        text.append("  spacer: ").append(chance(2) ? plate : PLATES[4]).append('\n');
    }

    private void mechanism(String kind) {
        String blade = one(BLADES);
        if (kind.equals("leaf-aperture")) {
            text.append("  blade: ").append(blade).append('\n');
        }
        text.append("mechanisms:\n  made:\n");
        line("kind", kind);
        switch (kind) {
            case "leaf-aperture" -> aperture(blade.replaceAll(".*-([0-9.]+)}", "$1"));
            case "gear" -> gear();
            case "gear-pair" -> pair();
            case "gear-train" -> train();
            case "pulley" -> pulley();
            default -> drive();
        }
    }

    private void aperture(String thickness) {
        double full = 20 + random.nextInt(60);
        line("full-opening", full);
        line("least-opening", Math.round(full * (0.15 + 0.5 * random.nextDouble())));
        line("blades", 6 + random.nextInt(12));
        line("blade-thickness", thickness);
        maybe("hand", "right");
        maybe("pin-style", chance(2) ? "two-holes" : "base-posts");
        line("screw", one(SCREWS));
        if (chance(2)) {
            line("drive", "{by: pinion, at: " + random.nextInt(360) + ", module: 0.8, servo: micro-180}");
        } else {
            line("drive", "{by: hand, at: " + random.nextInt(360) + (chance(2) ? ", scale-factor: 1.4142}" : "}"));
        }
    }

    private void gear() {
        boolean ring = chance(4);
        line("teeth", ring ? 40 + random.nextInt(50) : 12 + random.nextInt(60));
        line("module", 0.8 + 0.2 * random.nextInt(6));
        if (ring) {
            line("internal", "true");
        } else {
            if (chance(4)) {
                line("sector", "{teeth: 7, shape: " + (chance(2) ? "disc" : "segment") + "}");
            }
            lines(body(), "    ");
        }
    }

    private void pair() {
        boolean ring = chance(4);
        line("internal", Boolean.toString(ring));
        line("module", 0.8 + 0.2 * random.nextInt(6));
        text.append("    driver:\n      teeth: ")
                .append(14 + random.nextInt(12))
                .append('\n');
        lines(body(), "      ");
        text.append("    driven:\n      teeth: ").append(ring ? 60 + random.nextInt(20) : 20 + random.nextInt(50));
        text.append('\n');
        if (!ring) {
            lines(body(), "      ");
        }
    }

    private void train() {
        line("module", 0.8 + 0.2 * random.nextInt(4));
        line("ratio", 4 + random.nextInt(120) / 10.0);
        line("stage-count", 2 + random.nextInt(2));
    }

    private void pulley() {
        line("belt", "\"" + one(BELTS) + "\"");
        wheel("    ", FEWEST + random.nextInt(30));
    }

    private void drive() {
        int belt = random.nextInt(BELTS.length);
        line("belt", "\"" + BELTS[belt] + "\"");
        text.append("    driver:\n");
        wheel("      ", FEWEST + random.nextInt(10));
        text.append("    driven:\n");
        wheel("      ", FEWEST + random.nextInt(30));
        if (chance(2)) {
            line("plates", chance(2) ? "two" : "one");
        }
        if (chance(3)) {
            line("centres", "fixed");
            line("centre-distance", 30 * PITCHES[belt]);
            line("idler", "{side: outside, diameter: 12, axle: 3}");
        }
    }

    private void wheel(String indent, int teeth) {
        text.append(indent).append("teeth: ").append(teeth).append('\n');
        List<String> more = body();
        if (chance(3)) {
            more.add("flanges: " + (chance(2) ? "one" : "none"));
        }
        if (printed && chance(3)) {
            more.add("hub-height: 6\nhub-diameter: ".replace("\n", "\n" + indent) + (10 + random.nextInt(12)));
        }
        lines(more, indent);
    }

    private List<String> body() {
        List<String> lines = new ArrayList<>();
        switch (random.nextInt(7)) {
            case 0 -> lines.add("bore: {form: d, diameter: 5}");
            case 1 -> lines.add("bore: {form: keyway, axle: 6}");
            case 2 -> lines.add("bore: {form: square, axle: 4}");
            case 3 -> lines.add("bore: {form: bearing, bearing: 623}");
            case 4 -> lines.add("bore: {axle: " + (2 + random.nextInt(4)) + ", fit: press}");
            default -> lines.add("bore: {axle: " + (2 + random.nextInt(4)) + "}");
        }
        if (chance(3)) {
            lines.add("hub-screws: {screw: " + one(SCREWS) + ", count: " + (2 + random.nextInt(5)) + "}");
        }
        if (chance(2)) {
            lines.add("lightening: {form: " + (chance(2) ? "spokes" : "holes") + ", count: " + (3 + random.nextInt(6))
                    + "}");
        }
        return lines;
    }

    private void lines(List<String> lines, String indent) {
        for (String line : lines) {
            text.append(indent).append(line).append('\n');
        }
    }

    private void line(String name, Object value) {
        String shown = value instanceof Double number ? String.format(Locale.ROOT, "%.1f", number) : value.toString();
        text.append("    ").append(name).append(": ").append(shown).append('\n');
    }

    private void maybe(String name, String value) {
        if (chance(3)) {
            line(name, value);
        }
    }

    private boolean chance(int in) {
        return random.nextInt(in) == 0;
    }

    private String one(String[] all) {
        return all[random.nextInt(all.length)];
    }
}
