// SPDX-License-Identifier: Apache-2.0
package ringleaf.cli;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.PrintStream;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import ringleaf.draw.Decimals;
import ringleaf.firmware.FitText;
import ringleaf.firmware.Fitted;
import ringleaf.firmware.MeasuredPoint;
import ringleaf.firmware.MeasuredReader;
import ringleaf.firmware.ServoCsv;
import ringleaf.firmware.ServoFit;
import ringleaf.firmware.ServoHeader;
import ringleaf.firmware.ServoTable;
import ringleaf.mechanism.Kind;
import ringleaf.mechanism.ServoLaw;
import ringleaf.part.Design;
import ringleaf.report.FileNames;
import ringleaf.spec.text.Nearest;
import ringleaf.spec.text.Shown;

/** A run of {@code servo-table}: the table from output to pulse for a servo's firmware, as drawn or as measured. */
final class ServoTableRun {
    /** Greatest errors between rows when none is asked for, mm and degrees. */
    private static final double WITHIN_MM = 0.02;

    private static final double WITHIN_DEG = 0.05;
    /** A table measured by hand is short. */
    private static final int MOST_BYTES = 1 << 20;

    private final Surroundings surroundings;
    private final PrintStream out;
    private final PrintStream err;

    /**
     * What is asked for beside the spec.
     *
     * @param output folder as typed
     * @param mechanism the one that is meant, where there are several
     * @param within greatest error, mm or degrees
     * @param measured file of measurements
     */
    record Wish(
            Optional<String> output, Optional<String> mechanism, Optional<String> within, Optional<String> measured) {}

    private final Console console;

    private record Driven(String name, ServoLaw law, ServoTable table, Fitted fitted) {}

    ServoTableRun(Console console) {
        this.console = console;
        surroundings = console.surroundings();
        out = console.out();
        err = console.err();
    }

    int write(Run run, Wish wish) {
        double within = within(wish.within());
        String shown = wish.output().orElse("out/" + run.document().slug());
        OutputFolder folder = new OutputFolder(surroundings.place(shown, "the folder of --output"), shown);
        folder.check();
        Map<String, ServoLaw> laws = laws(run, wish.mechanism());
        if (wish.measured().isPresent() && laws.size() > 1) {
            throw Stop.wrong("--measured: " + laws.size() + " mechanisms have a servo ("
                    + String.join(", ", laws.keySet()) + "); --mechanism says which was measured");
        }
        List<Driven> tables = new ArrayList<>();
        for (Map.Entry<String, ServoLaw> each : laws.entrySet()) {
            Fitted fitted = wish.measured().isPresent() ? fitted(wish.measured().get(), each.getValue()) : null;
            tables.add(new Driven(each.getKey(), each.getValue(), table(each.getValue(), fitted, within), fitted));
        }
        List<Design> designs = run.design();
        List<Judged> all = run.judge(designs, List.of(), surroundings, err);
        for (Judged judged : all) {
            if (judged.failed() && laws.containsKey(judged.design().name())) {
                new Told(run.document(), all, console).findings();
                err.print("no table is written, because a check failed\n");
                return Exit.FAILED;
            }
        }
        Map<String, byte[]> files = new LinkedHashMap<>();
        String title = run.document().title();
        for (Driven each : tables) {
            String path = "servo/" + FileNames.of(each.name);
            files.put(path + ".csv", ServoCsv.write(each.table));
            files.put(path + ".h", ServoHeader.write(Version.text(), title, each.name, each.table, each.fitted));
        }
        folder.write(files, any -> List.of());
        for (Driven each : tables) {
            say(each);
        }
        out.print("in " + shown + ": " + String.join(", ", files.keySet()) + "\n");
        return Exit.FINE;
    }

    private static double within(Optional<String> typed) {
        if (typed.isEmpty()) {
            return Double.NaN;
        }
        String text = typed.get();
        double value = text.matches("\\d{1,9}(\\.\\d{1,9})?") ? Double.parseDouble(text) : Double.NaN;
        if (!(value >= 0.001 && value <= 10)) {
            throw Stop.wrong("--within: " + Shown.quoted(text)
                    + " is no plain number from 0.001 (no servo holds more) to 10, in mm of opening or degrees");
        }
        return value;
    }

    private static ServoTable table(ServoLaw law, Fitted fitted, double within) {
        boolean angle = law.unit().equals("deg");
        double bound = Double.isNaN(within) ? (angle ? WITHIN_DEG : WITHIN_MM) : within;
        try {
            return ServoTable.of(law, fitted == null ? ServoLaw.Build.AS_DRAWN : fitted.build(), bound);
        } catch (IllegalArgumentException e) {
            throw Stop.wrong("--within: " + e.getMessage());
        }
    }

    /** The laws by mechanism, in the order of the spec. */
    private static Map<String, ServoLaw> laws(Run run, Optional<String> wanted) {
        List<String> names = run.names();
        if (wanted.isPresent() && !names.contains(wanted.get())) {
            throw Stop.wrong("--mechanism: there is no mechanism " + Shown.quoted(wanted.get()) + "; "
                    + Nearest.hint(wanted.get(), names));
        }
        Map<String, ServoLaw> laws = new LinkedHashMap<>();
        List<String> without = new ArrayList<>();
        for (int i = 0; i < names.size(); i++) {
            Kind.Planned planned = run.planned().get(i);
            if (wanted.isEmpty() || wanted.get().equals(names.get(i))) {
                Optional<ServoLaw> law = planned.servoLaw();
                if (law.isPresent()) {
                    laws.put(names.get(i), law.get());
                } else {
                    String hint = planned.servoHint();
                    without.add(names.get(i)
                            + (hint.isEmpty()
                                    ? ": parts of this kind are driven by nothing"
                                    : ": no servo drives it; " + hint + " does"));
                }
            }
        }
        if (laws.isEmpty()) {
            throw Stop.wrong("there is no servo to write a table for (" + String.join("; ", without) + ")");
        }
        return laws;
    }

    private Fitted fitted(String file, ServoLaw law) {
        Path path = surroundings.place(file, "the file of --measured");
        String text;
        try (InputStream in = Trouble.open(path)) {
            ByteArrayOutputStream bytes = new ByteArrayOutputStream();
            bytes.write(in.readNBytes(MOST_BYTES + 1));
            if (bytes.size() > MOST_BYTES) {
                throw Stop.wrong(Shown.cut(file, 300) + ": is no table measured by hand: over a megabyte");
            }
            text = StandardCharsets.UTF_8
                    .newDecoder()
                    .decode(ByteBuffer.wrap(bytes.toByteArray()))
                    .toString();
        } catch (CharacterCodingException e) {
            throw Stop.wrong(Shown.cut(file, 300) + ": is no text in UTF-8");
        } catch (IOException e) {
            throw Trouble.reading(file, e);
        }
        List<String> wrong = new ArrayList<>();
        String shown = Shown.cut(file, 300);
        java.util.function.BiConsumer<Integer, String> problems =
                (line, reason) -> wrong.add(shown + (line > 0 ? ":" + line : "") + ": " + reason);
        List<MeasuredPoint> points = new MeasuredReader(law, problems).read(text);
        Fitted fitted = wrong.isEmpty() ? new ServoFit(law).fit(points, problems) : null;
        if (!wrong.isEmpty() || fitted == null) {
            throw Stop.wrong(wrong.isEmpty() ? shown + ": no fit was found" : String.join("\nringleaf: ", wrong));
        }
        return fitted;
    }

    private void say(Driven each) {
        ServoTable table = each.table;
        String unit = each.law.unit().equals("deg") ? "°" : " " + each.law.unit();
        out.print(each.name + ": " + table.rows().size() + " rows from "
                + Decimals.of(table.least() * ServoTable.UNIT, 2) + unit + " to "
                + Decimals.of(table.most() * ServoTable.UNIT, 2) + unit
                + (table.rows().size() > 2
                        ? ", a row every " + Decimals.of(table.step() * ServoTable.UNIT, 2) + unit
                        : ", one straight line")
                + "\n");
        out.print("  interpolated it misses by " + Decimals.of(table.error(), 4) + unit + " at most\n");
        out.print("  play: a change of sense takes " + Decimals.of(Math.toDegrees(each.law.lostMotion()), 2)
                + "° of the servo, " + Decimals.of(Math.abs(table.takeUp()) * ServoTable.PULSE_UNIT, 1) + " µs ("
                + each.law.lostIn() + ")\n");
        if (each.fitted != null) {
            for (String line : FitText.words(each.law, each.fitted)) {
                out.print("  " + line + "\n");
            }
            for (String line : FitText.residuals(each.law, each.fitted)) {
                out.print("    " + line + "\n");
            }
        }
    }
}
