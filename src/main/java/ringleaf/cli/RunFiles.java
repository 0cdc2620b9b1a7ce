// SPDX-License-Identifier: Apache-2.0
package ringleaf.cli;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import ringleaf.draw.view.MovingView;
import ringleaf.fabricate.Fits;
import ringleaf.fabricate.Preparation;
import ringleaf.fabricate.Prepared;
import ringleaf.fabricate.SheetSet;
import ringleaf.part.Design;
import ringleaf.part.FitSize;
import ringleaf.part.ShownUnit;
import ringleaf.part.Stand;
import ringleaf.report.ClearancesCsv;
import ringleaf.report.DesignJson;
import ringleaf.report.FileNames;
import ringleaf.report.FileSet;
import ringleaf.report.MechanismReport;
import ringleaf.report.MotionCsv;
import ringleaf.report.PartFiles;
import ringleaf.report.PartsCsv;
import ringleaf.report.SheetFiles;
import ringleaf.report.SolidFiles;
import ringleaf.report.ViewFiles;
import ringleaf.report.page.MechanismPage;
import ringleaf.report.page.ReportPage;
import ringleaf.spec.SpecDocument;
import ringleaf.spec.shared.Catalogues;
import ringleaf.verify.Clearance;

/**
 * All files of a run, made in memory. Drawings begin on threads of their own as soon as the designs are there, beside
 * the judge: they share nothing but the designs, which nobody changes, and the order of the files is that of the spec.
 */
final class RunFiles {
    /** The file that lists all others, and the last. */
    static final String DESIGN = "design.json";

    private final SpecDocument document;
    private final List<Optional<Stand>> stands;
    private final List<Preparation> prepared;
    private final List<Drawn> drawn = new ArrayList<>();
    private final Solids solids;
    private Beside<MadeSolids> meshes;
    /** Further files of parts, held back like those. */
    private final List<Beside<FileSet>> further = new ArrayList<>();

    private final Beside<List<List<FitSize>>> fits;

    private record Made(FileSet files, Map<String, List<String>> paths) {}

    private record Shown(FileSet views, MechanismPage page) {}

    private record Drawn(Beside<Made> parts, Beside<Shown> shown) {}

    /** Solids with the paths of each part's files. */
    private record MadeSolids(FileSet files, List<List<String>> paths) {}

    private RunFiles(
            SpecDocument document,
            List<Optional<Stand>> stands,
            List<Preparation> prepared,
            Solids solids,
            Beside<List<List<FitSize>>> fits) {
        this.stands = stands;
        this.solids = solids;
        this.document = document;
        this.prepared = prepared;
        this.fits = fits;
    }

    /**
     * Begins to draw what is wanted of every design.
     *
     * @param stands of each, as far as they are told
     * @param solids to be made as well, or null
     */
    static RunFiles start(
            SpecDocument document,
            List<Design> designs,
            List<Optional<Stand>> stands,
            List<Preparation> prepared,
            Wanted wanted,
            Solids solids) {
        String title = document.title();
        ShownUnit unit = Told.unit(document);
        RunFiles files = new RunFiles(document, stands, prepared, solids, Beside.start(() -> fits(document, designs)));
        for (int i = 0; i < designs.size(); i++) {
            Design design = designs.get(i);
            Preparation own = prepared.isEmpty() ? null : prepared.get(i);
            int number = i;
            files.drawn.add(new Drawn(
                    Beside.start(() -> parts(design, own, wanted, document.catalogues())),
                    Beside.start(() -> shown(number, design, title, stands.get(number), unit))));
        }
        if (solids != null) {
            files.meshes = Beside.start(() -> solids(solids, title));
        }
        return files;
    }

    /** Adds files that are being made of the parts. */
    void with(Beside<FileSet> files) {
        further.add(files);
    }

    private static List<List<FitSize>> fits(SpecDocument document, List<Design> designs) {
        List<List<FitSize>> all = new ArrayList<>();
        for (Design design : designs) {
            all.add(Fits.of(design, document.fabrication(), document.catalogues()));
        }
        return all;
    }

    private static Made parts(Design design, Preparation prepared, Wanted wanted, Catalogues catalogues) {
        FileSet files = new FileSet();
        PartFiles.Wanted own = wanted.outlines();
        if (prepared != null) {
            return new Made(
                    files, PartFiles.add(design.name(), MachineLines.items(design, prepared, catalogues), own, files));
        }
        return new Made(files, PartFiles.add(design, own, files));
    }

    private static MadeSolids solids(Solids solids, String title) {
        FileSet files = new FileSet();
        return new MadeSolids(
                files,
                SolidFiles.add(
                        solids.items(), solids.formats(), solids.chord(), title, "ringleaf " + Version.text(), files));
    }

    private static Shown shown(int number, Design design, String title, Optional<Stand> stand, ShownUnit unit) {
        FileSet files = new FileSet();
        MovingView view = MovingView.of(design.assembly());
        ViewFiles.add(design, view, title, stand, files);
        return new Shown(files, MechanismPage.of(number, design, view, unit));
    }

    /**
     * The files by path within the output folder, design.json last.
     *
     * @param all the same designs with their findings
     * @param held whether part and sheet files are held back
     * @param sheets on which parts are laid out
     * @param cautions for the page, a line each
     * @param clearances between the mechanisms
     */
    Map<String, byte[]> all(
            List<Judged> all,
            boolean held,
            List<SheetSet> sheets,
            Wanted wanted,
            List<String> cautions,
            List<Clearance> clearances) {
        FileSet files = new FileSet();
        List<MechanismReport> reports = new ArrayList<>();
        List<Design> designs = new ArrayList<>();
        for (int i = 0; i < all.size(); i++) {
            Design design = all.get(i).design();
            Map<String, List<String>> paths = new LinkedHashMap<>();
            if (!held) {
                add(drawn.get(i).parts.result(), files, paths);
                addSolids(design.name(), paths);
            }
            files.add("motion/" + FileNames.of(design.name()) + ".csv", MotionCsv.write(design.motion()));
            files.addAll(drawn.get(i).shown.result().views);
            reports.add(report(i, all.get(i), paths));
            designs.add(design);
        }
        files.add("parts.csv", PartsCsv.write(designs));
        if (!clearances.isEmpty()) {
            files.add("clearances.csv", ClearancesCsv.write(clearances, Told.unit(document)));
        }
        if (!held && !sheets.isEmpty()) {
            SheetFiles.add(SheetPlans.of(document.title(), sheets, document.catalogues()), wanted.outlines(), files);
        }
        if (!held && solids != null) {
            files.addAll(meshes.result().files);
        }
        for (Beside<FileSet> more : held ? List.<Beside<FileSet>>of() : further) {
            files.addAll(more.result());
        }
        List<MechanismPage> pages = new ArrayList<>();
        for (Drawn each : drawn) {
            pages.add(each.shown.result().page);
        }
        files.add(
                ReportPage.FILE,
                ReportPage.write(
                        new ReportPage.About(Version.text(), document.title(), Told.unit(document)),
                        pages,
                        reports,
                        cautions,
                        Optional.empty()));
        byte[] json = DesignJson.write(Version.text(), document.title(), reports, cautions, files.files());
        files.add(DESIGN, json);
        return files.files();
    }

    /** The parts of which a solid was asked for, but none can be made, each with the reason. */
    List<String> withoutSolid() {
        List<String> parts = new ArrayList<>();
        for (int i = 0; solids != null && i < solids.items().size(); i++) {
            if (meshes.result().paths.get(i).isEmpty()) {
                parts.add(
                        solids.items().get(i).part().name()
                                + ": its outlines cross, or it touches itself along an edge, so that no closed surface bounds it");
            }
        }
        return parts;
    }

    /** Names a part's solids among its files. */
    private void addSolids(String mechanism, Map<String, List<String>> paths) {
        for (int i = 0; solids != null && i < solids.items().size(); i++) {
            SolidFiles.Item item = solids.items().get(i);
            if (item.mechanism().equals(mechanism)) {
                paths.computeIfAbsent(item.part().name(), p -> new ArrayList<>())
                        .addAll(meshes.result().paths.get(i));
            }
        }
    }

    private MechanismReport report(int i, Judged judged, Map<String, List<String>> paths) {
        Map<String, Double> kerfs = new LinkedHashMap<>();
        if (!prepared.isEmpty()) {
            for (Map.Entry<String, Prepared> part : prepared.get(i).parts().entrySet()) {
                if (part.getValue().kerf() > 0) {
                    kerfs.put(part.getKey(), part.getValue().kerf());
                }
            }
        }
        List<FitSize> own = fits.result().get(i);
        return new MechanismReport(judged.design(), judged.findings(), paths, own, kerfs, stands.get(i));
    }

    private static void add(Made made, FileSet files, Map<String, List<String>> paths) {
        Map<String, String> placed = new LinkedHashMap<>();
        for (Map.Entry<String, byte[]> file : made.files.files().entrySet()) {
            placed.put(file.getKey(), files.add(file.getKey(), file.getValue()));
        }
        for (Map.Entry<String, List<String>> part : made.paths.entrySet()) {
            List<String> own = new ArrayList<>();
            for (String path : part.getValue()) {
                own.add(placed.get(path));
            }
            paths.put(part.getKey(), own);
        }
    }
}
