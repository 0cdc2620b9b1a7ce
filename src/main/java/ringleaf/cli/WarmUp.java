package ringleaf.cli;

import java.util.List;
import ringleaf.curve.Overlay;
import ringleaf.draw.svg.SvgWriter;
import ringleaf.geom.Point;
import ringleaf.geom.Region;
import ringleaf.report.DesignJson;
import ringleaf.spec.shared.Catalogues;
import ringleaf.spec.shared.SharedFiles;
import ringleaf.spec.text.Problems;
import ringleaf.spec.text.SpecSource;
import ringleaf.spec.text.YamlReader;

/**
 * Loads what a run will need soon, on a second thread, while the first one is still parsing options or solving. A cold
 * start spends most of its time on loading and linking classes; results do not depend on this.
 */
final class WarmUp {
    private WarmUp() {}

    /** Starts loading, when these arguments are likely to end in files. */
    static void start(String[] args) {
        if (args.length > 1 && args[0].equals(Syntax.MAKE)) {
            Thread thread = new Thread(WarmUp::load, "warm-up");
            thread.setDaemon(true);
            thread.start();
        }
    }

    private static void load() {
        try {
            // In the order of need: the options' library keeps the first thread busy for as long as this takes.
            YamlReader.read(SpecSource.of("", "title: t\nmechanisms: {a: {is: 1}} # b\n"), new Problems());
            new Catalogues(SharedFiles.NONE, new Problems()).processes().names();
            Overlay.difference(
                    List.of(Region.disc(Point.ORIGIN, 2)), List.of(Region.disc(new Point(2, 0), 1)));
            SvgWriter.warmUp();
            DesignJson.write("", "", List.of());
        } catch (RuntimeException | Error e) {
            // Whatever this is, the run itself will meet it and report it.
            Thread.currentThread().setName("warm-up-failed");
        }
    }
}
