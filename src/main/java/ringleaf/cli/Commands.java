// SPDX-License-Identifier: Apache-2.0
package ringleaf.cli;

import java.util.List;

/** The commands, in the order in which help lists them: a new one is a class and a line here. */
final class Commands {
    static final List<Command> ALL = List.of(
            new MakeCommand(),
            new CheckCommand(),
            new ExploreCommand(),
            new PreviewCommand(),
            new ToleranceCommand(),
            new ServoTableCommand(),
            new NewCommand(),
            new PresetsCommand(),
            new CatalogueCommand(),
            new SchemaCommand(),
            new CouponCommand(),
            new HelpCommand());

    private Commands() {}

    /** The command of a name that {@link #ALL} has. */
    static Command named(String name) {
        for (Command command : ALL) {
            if (command.name().equals(name)) {
                return command;
            }
        }
        throw new IllegalArgumentException("no command " + name);
    }
}
