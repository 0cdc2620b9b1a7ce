// SPDX-License-Identifier: Apache-2.0
package ringleaf.cli;

import java.io.IOException;
import java.io.InputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import ringleaf.coupon.Coupon;
import ringleaf.coupon.CouponParts;
import ringleaf.coupon.CouponPlan;
import ringleaf.coupon.CouponSheet;
import ringleaf.coupon.Filled;
import ringleaf.coupon.Measured;
import ringleaf.coupon.OwnEntry;
import ringleaf.coupon.OwnFile;
import ringleaf.coupon.SheetReader;
import ringleaf.draw.Drawing;
import ringleaf.draw.Naming;
import ringleaf.draw.PartDrawing;
import ringleaf.draw.format.OutlineFormat;
import ringleaf.spec.shared.Catalogues;
import ringleaf.spec.shared.MakingProcess;
import ringleaf.spec.shared.SharedFiles;
import ringleaf.spec.shared.Stock;
import ringleaf.spec.text.Nearest;
import ringleaf.spec.text.Problems;
import ringleaf.spec.text.Shown;
import ringleaf.spec.text.SpecSource;

/** A run of {@code coupon}: a piece that measures the user's machine, and what its filled sheet says. */
final class CouponRun {
    private static final String SHEET = "coupon.yaml";
    private static final String OWN = "shared";

    private final Surroundings surroundings;
    private final PrintStream out;
    private final Optional<String> shared;
    private final Optional<String> output;
    private final Problems problems = new Problems();

    /**
     * The command.
     *
     * @param shared folder with own catalogues, as typed
     * @param output folder, as typed
     */
    CouponRun(Console console, Optional<String> shared, Optional<String> output) {
        surroundings = console.surroundings();
        out = console.out();
        this.shared = shared;
        this.output = output;
    }

    /** Writes a piece and its sheet. */
    int make(String processName, Optional<String> stockName, Wanted wanted) {
        Catalogues catalogues = catalogues();
        MakingProcess process = process(processName, catalogues);
        Stock stock = stock(process, stockName, catalogues);
        problems.throwIfAny();
        Coupon coupon = CouponPlan.of(process, stock);
        String shown = output.orElse("out/coupon-" + process.name() + "-" + stock.name());
        Path folder = surroundings.place(shown, "the folder of --output");
        OutputFolder target = new OutputFolder(folder, shown);
        target.check();
        if (Files.exists(folder.resolve(SHEET), LinkOption.NOFOLLOW_LINKS)) {
            throw Stop.trouble("cannot write " + Shown.cut(shown + "/" + SHEET, 300)
                    + ": it exists already, may hold readings, and is left as it is; choose another folder with -o");
        }
        Drawing drawing = PartDrawing.of(
                CouponParts.of(coupon), new PartDrawing.Options(Naming.NONE, Map.of()), PartDrawing.Extra.NONE);
        Map<String, byte[]> files = new LinkedHashMap<>();
        for (OutlineFormat format : wanted.outlines().formats()) {
            files.put("coupon" + format.ending(), format.write(drawing, wanted.options()));
        }
        files.put(SHEET, CouponSheet.of(coupon).getBytes(StandardCharsets.UTF_8));
        target.write(files, any -> List.of());
        ResultText text = new ResultText();
        text.list(
                "piece " + coupon.id(),
                List.of(
                        process.name() + " on " + stock.name()
                                + ": make it as drawn, with no correction of kerf or size",
                        "fill in " + shown + "/" + SHEET,
                        "then: ringleaf coupon --read " + shown + "/" + SHEET));
        List<String> cautions = new ArrayList<>(process.cautions());
        for (String caution : stock.cautions()) {
            if (!cautions.contains(caution)) {
                cautions.add(caution);
            }
        }
        text.list("cautions", cautions);
        text.list("written to " + Shown.cut(shown, 300), List.copyOf(files.keySet()));
        out.print(text);
        return Exit.FINE;
    }

    private Catalogues catalogues() {
        return new Catalogues(OwnCatalogues.of(shared, surroundings), problems);
    }

    private MakingProcess process(String name, Catalogues catalogues) {
        Optional<MakingProcess> process = catalogues.processes().get(name);
        problems.throwIfAny();
        if (process.isEmpty()) {
            String hint = Nearest.hint(name, catalogues.processes().names());
            throw Stop.wrong("--process: there is no process " + Shown.quoted(name) + " in processes.yaml; " + hint);
        }
        return process.get();
    }

    /** The stock asked for, or the thickest up to the usual thickness; what the process usually makes goes first. */
    private Stock stock(MakingProcess process, Optional<String> name, Catalogues catalogues) {
        List<String> made = new ArrayList<>();
        Stock best = null;
        boolean bestIsUsual = false;
        for (String each : catalogues.stock().names()) {
            Optional<Stock> stock = catalogues.stock().get(each);
            if (stock.isEmpty() || !stock.get().isMadeBy(process.name())) {
                continue;
            }
            double thickness = stock.get().thickness().orElse(CouponPlan.USUAL_THICKNESS);
            if (!process.makesThickness(thickness)) {
                continue;
            }
            made.add(each);
            boolean usual = stock.get().processes().get(0).equals(process.name());
            boolean thicker = best == null || thickness > best.thickness().orElse(CouponPlan.USUAL_THICKNESS);
            if (name.isPresent()
                    ? name.get().equals(each)
                    : thickness <= CouponPlan.USUAL_THICKNESS
                            && (usual && !bestIsUsual || usual == bestIsUsual && thicker)) {
                best = stock.get();
                bestIsUsual = usual;
            }
        }
        problems.throwIfAny();
        if (best == null) {
            String what = name.isPresent()
                    ? "--stock: " + process.name() + " makes nothing of " + Shown.quoted(name.get())
                    : process.name() + " makes no stock up to 3 mm in stock.yaml; name one with --stock";
            throw Stop.wrong(what + "; what it makes: " + String.join(", ", made));
        }
        return best;
    }

    /** Turns a filled sheet into own values. */
    int read(String typed, boolean replace) {
        SpecSource source = source(typed);
        Optional<Filled> filled = SheetReader.read(source, problems);
        problems.throwIfAny();
        Coupon coupon = filled.orElseThrow().coupon();
        Catalogues catalogues = catalogues();
        MakingProcess process = process(coupon.process(), catalogues);
        Optional<Measured> found = Measured.of(filled.get(), process, problems);
        problems.throwIfAny();
        Measured measured = found.orElseThrow();
        String shown = output.orElse(OWN);
        Path folder = surroundings.place(shown, "the folder of --output");
        OutputFolder target = new OutputFolder(folder, shown);
        target.check();
        Map<String, byte[]> files = new LinkedHashMap<>();
        List<String> written = new ArrayList<>();
        add(OwnEntry.process(measured), folder, shown, replace, files, written);
        Optional<Stock> stock = catalogues.stock().get(coupon.stock());
        problems.throwIfAny();
        if (!coupon.layers()
                && stock.isPresent()
                && stock.get().processes().get(0).equals(process.name())) {
            add(OwnEntry.stock(measured), folder, shown, replace, files, written);
        }
        checkReadable(files, coupon);
        target.write(files, any -> List.of());
        out.print(CouponText.of(measured, process, stock, written, shown));
        return Exit.FINE;
    }

    private SpecSource source(String typed) {
        Path path = surroundings.place(typed, "the file of --read");
        if (Files.isDirectory(path)) {
            throw Stop.trouble("cannot read " + Shown.cut(typed, 300) + ": it is a folder, and a sheet is a file");
        }
        try (InputStream file = Trouble.open(path)) {
            Optional<SpecSource> source = SpecSource.read(typed, file, problems);
            problems.throwIfAny();
            return source.orElseThrow();
        } catch (IOException e) {
            throw Trouble.reading(typed, e);
        }
    }

    private void add(
            OwnEntry entry,
            Path folder,
            String shown,
            boolean replace,
            Map<String, byte[]> files,
            List<String> written) {
        String name = entry.topKey() + ".yaml";
        Path path = folder.resolve(name);
        String at = shown + "/" + name;
        Optional<SpecSource> before = Optional.empty();
        if (Files.exists(path, LinkOption.NOFOLLOW_LINKS)) {
            try (InputStream in = Trouble.open(path)) {
                before = SpecSource.read(at, in, problems);
            } catch (IOException e) {
                throw Trouble.reading(at, e);
            }
            problems.throwIfAny();
        }
        OwnFile.Result result = OwnFile.with(entry, before, replace);
        switch (result.outcome()) {
            case TAKEN ->
                throw Stop.trouble("cannot write " + Shown.cut(at, 300) + ": it holds values for "
                        + entry.name()
                        + " already, which are left as they are; --replace replaces those that were measured"
                        + ", -o writes elsewhere");
            case UNCLEAR ->
                throw Stop.trouble("cannot write " + Shown.cut(at, 300) + ": it is laid out so that"
                        + " no values"
                        + " can be put in without touching others, and is left as it is; -o writes elsewhere");
            case NEW -> written.add(name + ": new");
            case ADDED -> written.add(name + ": " + entry.name() + " added, all else as it was");
            default -> written.add(name + ": measured values of " + entry.name() + " replaced, all else as it was");
        }
        files.put(name, result.text().getBytes(StandardCharsets.UTF_8));
    }

    /** What is written must be what a later run takes: it is read as that run would read it. */
    private void checkReadable(Map<String, byte[]> files, Coupon coupon) {
        SharedFiles own = (name, all) -> {
            byte[] text = files.get(name);
            List<SpecSource> sources =
                    new ArrayList<>(OwnCatalogues.of(shared, surroundings).read(name, all));
            if (text != null) {
                sources.add(SpecSource.of(name, new String(text, StandardCharsets.UTF_8)));
            }
            return sources;
        };
        Catalogues later = new Catalogues(own, problems);
        later.processes().get(coupon.process());
        later.stock().get(coupon.stock());
        problems.throwIfAny();
    }
}
