// SPDX-License-Identifier: Apache-2.0
package ringleaf.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import ringleaf.draw.format.FormatFile;
import ringleaf.draw.format.OutlineFormat;
import ringleaf.draw.format.PageFormat;
import ringleaf.draw.format.PartsShown;
import ringleaf.draw.page.Paper;
import ringleaf.draw.paper.PaperItem;
import ringleaf.draw.sheet.SheetItem;
import ringleaf.draw.sheet.SheetUnit;
import ringleaf.fabricate.Fits;
import ringleaf.fabricate.Preparation;
import ringleaf.part.Design;
import ringleaf.part.FitRow;
import ringleaf.part.FitSize;
import ringleaf.part.Part;
import ringleaf.part.Words;
import ringleaf.report.FileNames;
import ringleaf.report.FileSet;
import ringleaf.report.PartData;
import ringleaf.spec.SpecDocument;
import ringleaf.spec.field.LengthUnit;
import ringleaf.spec.shared.FitName;

/** PDF pages of the parts that are made: what goes on them, from designs and catalogues. */
final class PagePlans {
    private PagePlans() {}

    /** The files of the pages that are asked for; none where no part is made. */
    static FileSet files(SpecDocument document, List<Design> designs, List<Preparation> prepared, Wanted wanted) {
        PartsShown parts = parts(document, designs, prepared, wanted);
        FileSet files = new FileSet();
        for (PageFormat format : parts.papers().isEmpty() ? List.<PageFormat>of() : wanted.pages()) {
            FormatFile file = format.write(parts);
            files.add(file.path(), file.content());
        }
        return files;
    }

    /**
     * Every part that is made, in the order of the designs.
     *
     * @param prepared the designs as they were prepared, in their order; empty when nothing was asked of them
     */
    static PartsShown parts(SpecDocument document, List<Design> designs, List<Preparation> prepared, Wanted wanted) {
        List<PaperItem> papers = new ArrayList<>();
        List<SheetItem> sheets = new ArrayList<>();
        for (int i = 0; i < designs.size(); i++) {
            Design design = designs.get(i);
            Preparation own = prepared.isEmpty() ? null : prepared.get(i);
            List<FitSize> sizes = Fits.of(design, document.fabrication(), document.catalogues());
            for (Part part : design.parts()) {
                if (part.isDrawn() && !part.source().isBought()) {
                    papers.add(paper(design, part));
                    sheets.add(sheet(document, design, part, sizes, own, wanted));
                }
            }
        }
        Optional<String> size = Optional.ofNullable(wanted.options().get(PageFormat.SIZE.name()));
        return new PartsShown(document.title(), papers, sheets, size(document, size), "ringleaf " + Version.text());
    }

    /** Who measures in inches is taken to have letter paper. */
    private static Paper size(SpecDocument document, Optional<String> asked) {
        return asked.map(size -> size.equals("letter")).orElse(isInches(document)) ? Paper.LETTER : Paper.A4;
    }

    private static boolean isInches(SpecDocument document) {
        return document.units() == LengthUnit.IN || document.units() == LengthUnit.THOU;
    }

    private static PaperItem paper(Design design, Part part) {
        String thick = Words.number(part.zTo() - part.zFrom(), 3);
        return new PaperItem(
                design.name() + " " + part.name(),
                "quantity " + part.quantityWords() + ", " + part.source().stock() + ", " + thick + " mm thick",
                part);
    }

    private static SheetItem sheet(
            SpecDocument document, Design design, Part part, List<FitSize> sizes, Preparation own, Wanted wanted) {
        SheetUnit unit = isInches(document) ? SheetUnit.INCH : SheetUnit.MM;
        List<SheetItem.FitLine> fits = new ArrayList<>();
        for (FitSize size : sizes) {
            if (size.joint().part().equals(part.name())) {
                fits.add(fit(size, unit));
            }
        }
        boolean kerf = own != null
                && own.parts().containsKey(part.name())
                && own.parts().get(part.name()).kerf() > 0;
        // The last format, as machines read DXF sooner than SVG.
        List<OutlineFormat> cut = wanted.outlines().formats();
        String file = kerf || cut.isEmpty()
                ? ""
                : "parts/" + FileNames.of(design.name()) + "-" + FileNames.of(part.name())
                        + cut.get(cut.size() - 1).ending();
        String process = part.source().process();
        String tolerance = document.catalogues()
                .processes()
                .get(process)
                .map(p -> "\u00B1" + unit.length(p.repeatability()) + ", what " + process + " repeats to")
                .orElse("as the process repeats");
        return new SheetItem(
                document.title(),
                design.name(),
                part,
                tolerance,
                file,
                fits,
                PartData.of(design, part, unit),
                PartData.involute(design, part),
                unit);
    }

    private static SheetItem.FitLine fit(FitSize size, SheetUnit unit) {
        FitRow joint = size.joint();
        FitName fit = FitName.of(joint.fit());
        double nominal = joint.nominal();
        String words = fit.label();
        if (fit == FitName.THREAD_CLEARANCE) {
            words = "for M" + Words.number(nominal, 2);
        } else if (joint.shape() != FitRow.Shape.SHAFT) {
            words += ", for " + unit.length(nominal);
        }
        if (size.isoClass().isPresent()) {
            words += " " + size.isoClass().get().name();
        }
        String limits =
                size.isoClass().map(c -> range(c.least(), c.most(), unit)).orElse("");
        return new SheetItem.FitLine(
                joint.name(),
                joint.shape(),
                joint.size(),
                joint.count(),
                words,
                limits,
                range(size.least(), size.most(), unit),
                range(size.leastPlay(), size.mostPlay(), unit),
                size.how(),
                joint.places());
    }

    private static String range(double least, double most, SheetUnit unit) {
        return unit.length(least) + " to " + unit.length(most);
    }
}
