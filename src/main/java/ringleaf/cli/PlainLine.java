package ringleaf.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * A {@code make} line in its plainest form, read without the options' library, which would take longer to start than
 * the design of a mechanism: known options in full, each followed by its own text, none twice that may stand once.
 * Everything else, every mistake above all, is left to the library; what both read means the same (a test tells).
 */
final class PlainLine implements Typed {
    private static final List<String> WITH_TEXT = List.of(
            Syntax.OUTPUT,
            Syntax.SET,
            Syntax.FORMATS,
            Syntax.DXF,
            MakeCommand.PAGE_SIZE,
            Syntax.STATES,
            Syntax.SHARED);
    private static final List<String> FLAGS = List.of(Syntax.THOROUGH, Syntax.KERF, MakeCommand.ANYWAY);

    private final List<String> options = new ArrayList<>();
    private final List<String> texts = new ArrayList<>();
    private String spec = "";

    private PlainLine() {}

    /** The line, or nothing when it is not plain. */
    static Optional<Typed> of(String[] args) {
        if (args.length < 2 || !args[0].equals(MakeCommand.NAME)) {
            return Optional.empty();
        }
        PlainLine line = new PlainLine();
        for (int i = 1; i < args.length; i++) {
            String option = args[i].equals(Syntax.OUTPUT_SHORT) ? Syntax.OUTPUT : args[i];
            boolean once = option.equals(Syntax.SET) || !line.options.contains(option);
            if (isText(option) && line.spec.isEmpty()) {
                line.spec = option;
            } else if (FLAGS.contains(option) && once) {
                line.add(option, "");
            } else if (WITH_TEXT.contains(option) && once && i + 1 < args.length && isText(args[i + 1])) {
                line.add(option, args[++i]);
            } else {
                return Optional.empty();
            }
        }
        return line.spec.isEmpty() ? Optional.empty() : Optional.of(line);
    }

    /** Dashes may begin an option, the other sign a file of arguments; quotes the library may look at. */
    private static boolean isText(String arg) {
        return !arg.isEmpty() && arg.charAt(0) != '-' && arg.charAt(0) != '@' && arg.indexOf('"') < 0;
    }

    private void add(String option, String text) {
        options.add(option);
        texts.add(text);
    }

    @Override
    public String positional(int place) {
        return place == 0 ? spec : null;
    }

    @Override
    public String value(String option) {
        int place = options.indexOf(option);
        return place < 0 ? null : texts.get(place);
    }

    @Override
    public List<String> values(String option) {
        List<String> all = new ArrayList<>();
        for (int i = 0; i < options.size(); i++) {
            if (options.get(i).equals(option)) {
                all.add(texts.get(i));
            }
        }
        return all;
    }

    @Override
    public boolean has(String option) {
        return options.contains(option);
    }
}
