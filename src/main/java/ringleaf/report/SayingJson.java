// SPDX-License-Identifier: Apache-2.0
package ringleaf.report;

import ringleaf.draw.PlainText;
import ringleaf.part.Argument;
import ringleaf.part.Figure;
import ringleaf.part.Saying;

/** A saying as data: its key, and its arguments in the order in which its words number them. */
final class SayingJson {
    private SayingJson() {}

    /** An object with key and arguments. */
    static void write(JsonText json, Saying saying) {
        json.beginObject();
        json.name("key").text(saying.key());
        json.name("arguments").beginArray();
        for (Argument argument : saying.arguments()) {
            write(json, argument);
        }
        json.endArray().endObject();
    }

    private static void write(JsonText json, Argument argument) {
        if (argument instanceof Saying saying) {
            write(json, saying);
        } else if (argument instanceof Figure figure) {
            write(json, figure);
        } else if (argument instanceof Argument.Name name) {
            json.text(PlainText.line(name.text()));
        } else if (argument instanceof Argument.Count count) {
            json.raw(Long.toString(count.number()));
        } else if (argument instanceof Argument.Whether whether) {
            json.raw(Boolean.toString(whether.yes()));
        } else if (argument instanceof Argument.Several several) {
            json.beginArray();
            several.each().forEach(one -> write(json, one));
            json.endArray();
        }
    }

    private static void write(JsonText json, Figure figure) {
        boolean angle = figure.kind() == Figure.Kind.ANGLE;
        json.beginObject();
        json.name("value").raw(Figures.full(angle ? Math.toDegrees(figure.value()) : figure.value(), "null"));
        json.name("unit")
                .text(
                        switch (figure.kind()) {
                            case LENGTH, BARE, TYPED -> "mm";
                            case AREA -> "mm2";
                            case ANGLE -> "deg";
                            case NUMBER -> "1";
                        });
        json.endObject();
    }
}
