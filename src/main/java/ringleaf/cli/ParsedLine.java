package ringleaf.cli;

import java.util.List;
import picocli.CommandLine.ParseResult;

/** What the options' library found on the command line. */
record ParsedLine(ParseResult given) implements Typed {
    @Override
    public String positional(int place) {
        return given.matchedPositionalValue(place, null);
    }

    @Override
    public String value(String option) {
        return given.matchedOptionValue(option, null);
    }

    @Override
    public List<String> values(String option) {
        return List.of(given.matchedOptionValue(option, new String[0]));
    }

    @Override
    public boolean has(String option) {
        return given.hasMatchedOption(option);
    }
}
