package ringleaf.cli;

import java.util.List;
import picocli.CommandLine;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.Model.PositionalParamSpec;

/**
 * Commands and their options, declared by hand: reading them from annotations would cost every start some reflection.
 */
final class Syntax {
    static final String MAKE = "make";
    static final String CHECK = "check";
    static final String EXPLORE = "explore";
    static final String PREVIEW = "preview";
    static final String TOLERANCE = "tolerance";
    static final String SERVO_TABLE = "servo-table";
    static final String NEW = "new";
    static final String PRESETS = "presets";
    static final String SCHEMA = "schema";
    static final String COUPON = "coupon";
    static final String HELP = "help";
    private static final List<String> COMMANDS =
            List.of(MAKE, CHECK, EXPLORE, PREVIEW, TOLERANCE, SERVO_TABLE, NEW, PRESETS, SCHEMA, COUPON, HELP);

    static final String OUTPUT = "--output";
    static final String OUTPUT_SHORT = "-o";
    static final String SET = "--set";
    static final String FORMATS = "--formats";
    static final String DXF = "--dxf";
    static final String SLICE = "--slice";
    static final String SOLIDS = "--solids";
    static final String CHORD = "--chord";
    static final String PAGE_SIZE = "--page-size";
    static final String STATES = "--states";
    static final String THOROUGH = "--thorough";
    static final String KERF = "--kerf";
    static final String ANYWAY = "--anyway";
    static final String SHARED = "--shared";
    static final String PORT = "--port";
    static final String BUILDS = "--builds";
    static final String SEED = "--seed";
    static final String MECHANISM = "--mechanism";
    static final String WITHIN = "--within";
    static final String MEASURED = "--measured";
    /** A topic of help beside commands and kinds. */
    static final String FABRICATION = "fabrication";

    static final String VARY = "--vary";
    static final String MINIMISE = "--minimise";
    static final String KEEP = "--keep";
    static final String TAKE = "--take";
    static final String TO = "--to";
    static final String YES = "--yes";
    static final String THREADS = "--threads";
    static final String WHY_NOT = "--why-not";

    static final String MARKDOWN = "--markdown";
    static final String PROCESS = "--process";
    static final String STOCK = "--stock";
    static final String READ = "--read";
    static final String REPLACE = "--replace";

    private static final String SPEC = "a file, a preset's name, or - for standard input";

    private Syntax() {}

    /**
     * The command line that takes these arguments: with the one command they begin with, or, where they begin with no
     * command or with one that needs to know the others, with all of them. The library takes some time for each.
     */
    static CommandLine line(String[] args) {
        // Options are read as texts; ready converters for other types would load the database classes at every start.
        System.setProperty("picocli.converters.excludes", "java.*");
        CommandSpec root = command(
                "ringleaf",
                "Turns a short spec into exact, checked, cut-ready outlines of printable mechanism parts.",
                "Begin with:%n"
                        + "  ringleaf make harbour-light       make a preset into out/harbour-light%n"
                        + "  ringleaf new harbour-light        write its spec, to change it%n"
                        + "%nExit codes: 0 all checks passed or only warned, 1 a check failed,%n"
                        + "2 spec or command line wrong, 3 cannot read or write.%n");
        String first = args.length == 0 ? "" : args[0];
        boolean one = COMMANDS.contains(first) && !first.equals(HELP);
        for (String name : COMMANDS) {
            if (!one || name.equals(first)) {
                root.addSubcommand(name, spec(name));
            }
        }
        return new CommandLine(root);
    }

    private static CommandSpec spec(String name) {
        return switch (name) {
            case MAKE -> make();
            case CHECK -> check();
            case EXPLORE -> explore();
            case PREVIEW -> preview();
            case TOLERANCE -> tolerance();
            case SERVO_TABLE -> servoTable();
            case NEW -> fresh();
            case PRESETS -> presets();
            case SCHEMA -> schema();
            case COUPON -> coupon();
            default -> help();
        };
    }

    private static CommandSpec make() {
        CommandSpec make = command(
                MAKE,
                "Designs, checks and writes everything.",
                "Examples:%n"
                        + "  ringleaf make harbour-light%n"
                        + "  ringleaf make my.yaml -o cut --set shutter.blades=16 --formats dxf --dxf r12%n"
                        + "%n`ringleaf help leaf-aperture` lists every field of a spec with its default.%n");
        make.addPositional(positional(0, "SPEC", true, SPEC));
        make.addOption(option("DIR", "the output folder; files of the same names there are replaced"
                + " (default: out/ and the title's name)", OUTPUT_SHORT, OUTPUT));
        judging(make);
        make.addOption(option("LIST", "what is written of parts: svg, dxf (default: both); stl, 3mf for solids; paper for"
                + " pages at true scale, drawing for dimensioned sheets, pdf for paper and drawing", FORMATS));
        make.addOption(option("VERSION", "version of DXF: r2000 (the default), or r12 for old readers", DXF));
        make.addOption(option("N", "only a test slice of N blades, to try pins, slope and friction on scrap", SLICE));
        make.addOption(option("PARTS", "parts of which stl and 3mf are made: printed (the default), all, or names", SOLIDS));
        make.addOption(option("LENGTH", "how far the chords of stl and 3mf may leave the arcs (default: 0.01mm)", CHORD));
        make.addOption(option("SIZE", "paper of PDF pages: a4 or letter (default: letter where units are in or thou,"
                + " else a4)", PAGE_SIZE));
        make.addOption(flag("writes part files although a check failed (still exit 1)", ANYWAY));
        return make;
    }

    private static CommandSpec check() {
        CommandSpec check = command(
                CHECK,
                "Designs and checks, writes nothing.",
                "Example:%n  ringleaf check harbour-light --set shutter.least-opening=8%n");
        check.addPositional(positional(0, "SPEC", true, SPEC));
        judging(check);
        return check;
    }

    private static CommandSpec explore() {
        CommandSpec explore = command(
                EXPLORE,
                "Varies fields, solves and checks every combination, and shows the best and what binds them.",
                "Examples:%n"
                        + "  ringleaf explore harbour-light --vary shutter.blades=8..24 --vary shutter.lap=0.4,0.6,0.8%n"
                        + "  ringleaf explore my.yaml --vary 'shutter.full-opening=2in..3in*5' --minimise depth%n"
                        + "  ringleaf explore my.yaml --why-not%n"
                        + "%nVALUES: values and ranges with commas between them; 8..24 goes in steps of 1, 60..70..2.5%n"
                        + "in steps of 2.5, 2in..3in*5 gives five values. What takes names takes them too:%n"
                        + "  --vary shutter.drive-pin=far-end,lever --vary fabrication.blade.stock=brass-0.1,brass-0.15%n"
                        + "%nCutting times come from the processes' cutting speeds, which are places to start from.%n");
        explore.addPositional(positional(0, "SPEC", true, SPEC));
        explore.addOption(OptionSpec.builder(VARY)
                .paramLabel("PATH=VALUES")
                .type(String[].class)
                .auxiliaryTypes(String.class)
                .description("varies one field (repeatable; all combinations are tried)")
                .build());
        explore.addOption(option("FIGURE", "what to seek the least of: outer-diameter, depth, ring-travel, parts,"
                + " cutting-length, cutting-time, or any other dimension (default: the bezel of an aperture,"
                + " else what the kind weighs first)", MINIMISE));
        explore.addOption(
                option("N", "best designs whose outlines are judged too, and that are shown (default: 5)", KEEP));
        explore.addOption(option("K", "writes the design in place K as a spec", TAKE));
        explore.addOption(option("FILE", "where --take writes to, never over an existing file"
                + " (default: the title's name and the place, as in harbour-light-1.yaml)", TO));
        explore.addOption(flag("more than 100,000 combinations are meant", YES));
        explore.addOption(flag("the smallest single changes that make a spec work that does not", WHY_NOT));
        explore.addOption(option("DIR", "folder for explore.csv and explore.svg (default: out/ and the title's name)",
                OUTPUT_SHORT, OUTPUT));
        sets(explore);
        explore.addOption(
                option("N", "states of the travel that every combination is checked at (default: 61)", STATES));
        explore.addOption(option("N", "threads that share the work (default: one for each core)", THREADS));
        shared(explore);
        return explore;
    }

    private static CommandSpec preview() {
        CommandSpec preview = command(
                PREVIEW,
                "Serves a page on this machine alone that is drawn anew whenever the spec is saved.",
                "Example:%n  ringleaf preview my-light.yaml%n"
                        + "%nIt prints the address to open in a browser. Mistakes of the spec are shown in the page;"
                        + "%nthe last good design stays. Ctrl-C ends it.%n");
        preview.addPositional(positional(0, "SPEC", true, "a file, or a preset's name"));
        preview.addOption(option("N", "the port to serve on (default: any that is free)", PORT));
        judging(preview);
        return preview;
    }

    private static CommandSpec tolerance() {
        CommandSpec tolerance = command(
                TOLERANCE,
                "Tells how far each size may drift before something gives way, and how many builds would work.",
                "Examples:%n"
                        + "  ringleaf tolerance harbour-light%n"
                        + "  ringleaf tolerance my.yaml --builds 10000 -o study%n"
                        + "%nWhat a process keeps sizes within is its repeatability in processes.yaml.%n");
        tolerance.addPositional(positional(0, "SPEC", true, SPEC));
        tolerance.addOption(option(
                "DIR", "writes tolerance/<mechanism>-drift.csv and -yield.csv there", OUTPUT_SHORT, OUTPUT));
        tolerance.addOption(option("N", "random builds, 1 to " + ToleranceCommand.MOST_BUILDS + " (default: "
                + ToleranceCommand.USUAL_BUILDS + ")", BUILDS));
        tolerance.addOption(option(
                "N", "seed of the random numbers; the same seed gives the same builds (default: 1)", SEED));
        reading(tolerance);
        return tolerance;
    }

    private static CommandSpec servoTable() {
        CommandSpec table = command(
                SERVO_TABLE,
                "Writes a table from opening to servo pulse, as CSV and as a C header.",
                "Examples:%n"
                        + "  ringleaf servo-table harbour-light%n"
                        + "  ringleaf servo-table my.yaml --measured openings.csv%n"
                        + "%nThe file of --measured has a header, e.g. servo_deg,opening_mm, and a line for each%n"
                        + "opening measured on the finished thing: four or more, best six from open to closed.%n");
        table.addPositional(positional(0, "SPEC", true, SPEC));
        table.addOption(option("DIR", "the output folder, in which servo/ is written"
                + " (default: out/ and the title's name)", OUTPUT_SHORT, OUTPUT));
        table.addOption(option("FILE", "openings measured on the finished thing, to correct the table by", MEASURED));
        table.addOption(option("NAME", "the mechanism that is meant (default: all with a servo)", MECHANISM));
        table.addOption(option("ERROR", "greatest error between rows, 0.001 to 10"
                + " (default: 0.02 mm of opening, 0.05 degrees)", WITHIN));
        reading(table);
        return table;
    }

    private static void reading(CommandSpec command) {
        sets(command);
        shared(command);
    }

    private static void sets(CommandSpec command) {
        command.addOption(OptionSpec.builder(SET)
                .paramLabel("PATH=VALUE")
                .type(String[].class)
                .auxiliaryTypes(String.class)
                .description("overrides one field, e.g. mechanisms.shutter.blades=14 (repeatable;"
                        + " a leading mechanisms. may be left out)")
                .build());
    }

    private static void shared(CommandSpec command) {
        command.addOption(option(
                "FOLDER", "folder with own catalogues (stock.yaml, servos.yaml, …) laid over the ready ones", SHARED));
    }

    private static void judging(CommandSpec command) {
        sets(command);
        command.addOption(option(
                "N", "states of the travel that are swept, " + States.LEAST + " to " + States.MOST + " (default: "
                        + States.USUAL + ")", STATES));
        command.addOption(flag("outlines carry the kerf, as with fabrication.kerf=true", KERF));
        command.addOption(flag("judges outlines at every state, and not only at ends, extremes and nine between", THOROUGH));
        shared(command);
    }

    private static CommandSpec fresh() {
        CommandSpec fresh = command(
                NEW,
                "Writes a commented spec to start from; never over an existing file.",
                "Example:%n  ringleaf new harbour-light my-light.yaml%n");
        fresh.addPositional(positional(0, "PRESET", true, "a name that `ringleaf presets` lists"));
        fresh.addPositional(positional(1, "FILE", false, "where to (default: the preset's name and .yaml)"));
        return fresh;
    }

    private static CommandSpec presets() {
        return command(PRESETS, "Lists the presets with a line each.", "Example:%n  ringleaf presets%n");
    }

    private static CommandSpec schema() {
        return command(
                SCHEMA,
                "Prints the JSON Schema of a spec, for editors.",
                "Example:%n  ringleaf schema > ringleaf.schema.json%n");
    }

    private static CommandSpec coupon() {
        CommandSpec coupon = command(
                COUPON,
                "Makes a test piece that measures your own machine, and reads what you measured on it.",
                "Examples:%n"
                        + "  ringleaf coupon --process co2-laser --stock acrylic-3%n"
                        + "  ringleaf coupon --read out/coupon-co2-laser-acrylic-3/coupon.yaml -o shared%n"
                        + "%nThe first writes the piece and a sheet to fill in; the second turns the filled sheet into%n"
                        + "own values of the process, which every make takes from shared/ beside its spec, or from%n"
                        + "--shared FOLDER.%n");
        coupon.addOption(option("NAME", "the process to measure, by its name in processes.yaml", PROCESS));
        coupon.addOption(option(
                "NAME", "what the piece is made of (default: the thickest stock up to 3 mm that the process usually makes)",
                STOCK));
        coupon.addOption(option("FILE", "the filled sheet", READ));
        coupon.addOption(option("DIR", "the output folder (default: out/coupon-PROCESS-STOCK, or shared with --read)",
                "-o", OUTPUT));
        coupon.addOption(flag("replaces values that shared/processes.yaml already holds for the process", REPLACE));
        coupon.addOption(option("LIST", "formats of the piece: svg,dxf (default: both)", FORMATS));
        coupon.addOption(option("VERSION", "version of DXF: r2000 (the default), or r12 for old readers", DXF));
        shared(coupon);
        return coupon;
    }

    private static CommandSpec help() {
        CommandSpec help = command(
                HELP,
                "Shows how a command is used, or every field of a kind of mechanism with its default.",
                "Examples:%n  ringleaf help make%n  ringleaf help leaf-aperture%n");
        help.addPositional(positional(0, "TOPIC", false, "a command, a kind, or fabrication"));
        help.addOption(flag("the fields as a table in Markdown", MARKDOWN));
        return help;
    }

    private static CommandSpec command(String name, String description, String footer) {
        CommandSpec command = CommandSpec.create().name(name);
        command.usageMessage().description(description).footer("", footer).width(100).sortOptions(false);
        command.addOption(OptionSpec.builder("-h", "--help")
                .usageHelp(true)
                .description("shows this and ends")
                .build());
        command.addOption(OptionSpec.builder("-V", "--version")
                .versionHelp(true)
                .description("shows the version and ends")
                .build());
        return command;
    }

    private static OptionSpec option(String label, String description, String... names) {
        return OptionSpec.builder(names)
                .paramLabel(label)
                .type(String.class)
                .description(description)
                .build();
    }

    private static OptionSpec flag(String description, String name) {
        return OptionSpec.builder(name)
                .type(boolean.class)
                .description(description)
                .build();
    }

    private static PositionalParamSpec positional(int index, String label, boolean required, String description) {
        return PositionalParamSpec.builder()
                .index(Integer.toString(index))
                .arity(required ? "1" : "0..1")
                .required(required)
                .paramLabel(label)
                .type(String.class)
                .description(description)
                .build();
    }
}
