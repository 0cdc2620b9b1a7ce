// SPDX-License-Identifier: Apache-2.0
package ringleaf.cli;

import java.nio.file.Path;
import java.util.List;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParseResult;
import ringleaf.part.Design;

/** {@code check}: designs and checks, and writes nothing. */
final class CheckCommand implements Command {

    @Override
    public String name() {
        return "check";
    }

    @Override
    public CommandSpec syntax() {
        CommandSpec check = Syntax.command(
                name(),
                "Designs and checks, writes nothing. Says first whether it may be cut, and why.",
                "Examples:%n  ringleaf check harbour-light --set shutter.least-opening=8%n"
                        + "  ringleaf check my.yaml --details%n"
                        + "  ringleaf check out/harbour-light  (a folder: whether its files are of one run)%n"
                        + Syntax.STREAMS);
        Syntax.spec(check);
        Syntax.judging(check);
        Syntax.details(check);
        return check;
    }

    @Override
    public int run(ParseResult given, Console console) {
        String spec = given.matchedPositionalValue(0, "");
        Path folder = console.surroundings().place(spec, "the spec");
        if (FolderCheck.isOutput(folder)) {
            return FolderCheck.run(folder, spec, console);
        }
        Run run = Run.read(Asked.of(given), console.surroundings(), console.in());
        List<Design> designs = run.design();
        List<Judged> all = run.judge(designs, run.prepare(designs), console.surroundings(), console.err());
        Told told = new Told(run.document(), all, console);
        told.briefly();
        if (given.hasMatchedOption(Syntax.DETAILS)) {
            told.inDetail();
        }
        return told.failed() ? Exit.FAILED : Exit.FINE;
    }
}
