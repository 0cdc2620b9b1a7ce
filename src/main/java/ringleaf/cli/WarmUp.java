package ringleaf.cli;

import java.util.List;
import ringleaf.draw.svg.SvgWriter;
import ringleaf.report.DesignJson;
import ringleaf.spec.shared.Catalogues;
import ringleaf.spec.shared.SharedFiles;
import ringleaf.spec.text.Problems;

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
            new Catalogues(SharedFiles.NONE, new Problems()).processes().names();
            SvgWriter.warmUp();
            DesignJson.write("", "", List.of());
        } catch (RuntimeException | Error e) {
            // Whatever this is, the run itself will meet it and report it.
            Thread.currentThread().setName("warm-up-failed");
        }
    }
}
