// SPDX-License-Identifier: Apache-2.0
package ringleaf.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import ringleaf.coupon.Estimate;
import ringleaf.coupon.Measured;
import ringleaf.part.Words;
import ringleaf.spec.field.Field;
import ringleaf.spec.shared.MakingProcess;
import ringleaf.spec.shared.Stock;
import ringleaf.spec.text.Decimal;
import ringleaf.spec.text.Shown;

/** What a filled sheet says, for a person. */
final class CouponText {
    private CouponText() {}

    /** The table of what was found, beside what the catalogue had. */
    static ResultText of(
            Measured measured, MakingProcess before, Optional<Stock> stock, List<String> written, String folder) {
        ResultText text = new ResultText();
        List<String> rows = new ArrayList<>();
        rows.add(row("", "value", "95 % interval", "u", "was", ""));
        for (Measured.Value value : measured.values()) {
            rows.add(row(value, was(value.key(), before, stock)));
        }
        text.list(
                "measured on piece " + measured.coupon().id() + " (" + before.name() + ", "
                        + measured.coupon().stock() + ", " + measured.readings()
                        + " readings); mm, u is the standard uncertainty",
                rows);
        List<String> told = new ArrayList<>();
        for (Measured.Value value : measured.told()) {
            told.add(row(value, ""));
        }
        text.list("also found", told);
        text.list("written to " + Shown.cut(folder, 300), written);
        text.list(
                "next",
                List.of("lay " + Shown.cut(folder, 300) + "/ beside your spec as shared/, or give it with --shared"));
        return text;
    }

    private static String was(String key, MakingProcess before, Optional<Stock> stock) {
        if (key.equals(Measured.KERF) && stock.isPresent() && stock.get().isMadeBy(before.name())) {
            return Decimal.of(stock.get().kerf(before));
        }
        Field<?> field = MakingProcess.FIELDS.find(key);
        Object value = field == null ? null : before.entry().values().get(field).orElse(null);
        return value instanceof Double number ? Decimal.of(number) : "";
    }

    private static String row(Measured.Value value, String was) {
        Estimate e = value.estimate();
        boolean exact = e.low() == e.high();
        String interval = exact ? "" : number(e.low()) + " to " + number(e.high());
        String u = exact ? "" : Decimal.of(e.u(), 2);
        return row(value.key(), number(e.value()), interval, u, was, value.note());
    }

    private static String row(String name, String value, String interval, String u, String was, String note) {
        StringBuilder row = new StringBuilder();
        pad(row, name, 35);
        pad(row, value, 45);
        pad(row, interval, 63);
        pad(row, u, 73);
        pad(row, was, 80);
        return row.append(note).toString().stripTrailing();
    }

    private static void pad(StringBuilder row, String text, int to) {
        row.append(text);
        row.append(" ".repeat(Math.max(1, to - row.length())));
    }

    private static String number(double value) {
        return Words.number(value, 3);
    }
}
