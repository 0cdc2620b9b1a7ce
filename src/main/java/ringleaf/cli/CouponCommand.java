// SPDX-License-Identifier: Apache-2.0
package ringleaf.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParseResult;
import ringleaf.draw.format.Formats;

/** {@code coupon}: a piece that measures the user's machine, and what its filled sheet says. */
final class CouponCommand implements Command {
    private static final String PROCESS = "--process";
    private static final String STOCK = "--stock";
    private static final String READ = "--read";
    private static final String REPLACE = "--replace";

    @Override
    public String name() {
        return "coupon";
    }

    @Override
    public CommandSpec syntax() {
        CommandSpec coupon = Syntax.command(
                name(),
                "Makes a test piece that measures your own machine, and reads what you measured on it.",
                "Examples:%n"
                        + "  ringleaf coupon --process co2-laser --stock acrylic-3%n"
                        + "  ringleaf coupon --read out/coupon-co2-laser-acrylic-3/coupon.yaml -o shared%n"
                        + "%nThe first writes the piece and a sheet to fill in; the second turns the filled sheet"
                        + " into%n"
                        + "own values of the process, which every make takes from shared/ beside its spec, or from%n"
                        + "--shared FOLDER.%n");
        coupon.addOption(Syntax.option("NAME", "the process to measure, by its name in processes.yaml", PROCESS));
        coupon.addOption(Syntax.option(
                "NAME",
                "what the piece is made of (default: the thickest stock up to 3 mm that the process usually makes)",
                STOCK));
        coupon.addOption(Syntax.option("FILE", "the filled sheet", READ));
        coupon.addOption(Syntax.option(
                "DIR",
                "the output folder (default: out/coupon-PROCESS-STOCK, or shared with --read)",
                Syntax.OUTPUT_SHORT,
                Syntax.OUTPUT));
        coupon.addOption(
                Syntax.flag("replaces values that shared/processes.yaml already holds for the process", REPLACE));
        Syntax.formats(coupon, Formats.outlines());
        Syntax.shared(coupon);
        return coupon;
    }

    @Override
    public int run(ParseResult given, Console console) {
        CouponRun coupon = new CouponRun(
                console,
                Optional.ofNullable(given.matchedOptionValue(Syntax.SHARED, null)),
                Optional.ofNullable(given.matchedOptionValue(Syntax.OUTPUT, null)));
        String process = given.matchedOptionValue(PROCESS, null);
        String read = given.matchedOptionValue(READ, null);
        if ((process == null) == (read == null)) {
            throw Stop.wrong("coupon takes either --process NAME, for a piece, or --read FILE, for a filled sheet");
        }
        List<String> others = new ArrayList<>(read == null ? List.of(REPLACE) : List.of(STOCK, Syntax.FORMATS));
        if (read != null) {
            Formats.options(Formats.outlines()).forEach(option -> others.add(option.name()));
        }
        for (String other : others) {
            if (given.hasMatchedOption(other)) {
                throw Stop.wrong(other + " has no meaning with " + (read == null ? PROCESS : READ));
            }
        }
        if (read != null) {
            return coupon.read(read, given.hasMatchedOption(REPLACE));
        }
        Wanted wanted = Wanted.of(Formats.outlines(), option -> given.matchedOptionValue(option, null));
        return coupon.make(process, Optional.ofNullable(given.matchedOptionValue(STOCK, null)), wanted);
    }
}
