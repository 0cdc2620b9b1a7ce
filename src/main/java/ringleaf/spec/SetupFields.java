// SPDX-License-Identifier: Apache-2.0
package ringleaf.spec;

import java.util.List;
import ringleaf.spec.field.Field;
import ringleaf.spec.field.FieldSet;
import ringleaf.spec.field.Values;

/** What a spec says of all its mechanisms together: how far they keep apart, and which goes along with which. */
public final class SetupFields {
    /** What every mechanism's drive is called, behind its name and a full stop. */
    public static final String TRAVEL = "travel";

    /** Room between any two. */
    public static final Field<Double> LEAST =
            room("least", "room between any two that do not touch by design").byDefault("0");

    /** Two by name. */
    public static final Field<List<String>> BETWEEN = Field.text("between", 90)
            .help("two mechanisms, or bodies of them")
            .example("[shutter, turntable.driven]")
            .list(2)
            .required();

    /** Room between those two. */
    public static final Field<Double> PAIR_LEAST =
            room("least", "room between these two").required();

    static final FieldSet PAIR_SET = FieldSet.of(BETWEEN, PAIR_LEAST);

    /** Pairs with a figure of their own. */
    public static final Field<List<Values>> PAIRS = Field.group("pairs", PAIR_SET)
            .help("two that keep another room between them")
            .list(60)
            .byDefaultWords("none");

    static final FieldSet APART_SET = FieldSet.of(LEAST, PAIRS);

    /** The key as a whole. */
    public static final Field<Values> APART = Field.group("apart", APART_SET)
            .help("how far mechanisms of one spec keep from one another")
            .byDefaultWords("some room between any two");

    /** The drive that is led. */
    public static final Field<String> DRIVE = Field.text("drive", 90)
            .help("the drive that is led: a mechanism's name and .travel")
            .example("arm.travel")
            .required();

    /** The drive that leads. */
    public static final Field<String> OF = Field.text("of", 90)
            .help("the drive that leads: a mechanism's name and .travel")
            .example("shutter.travel")
            .required();

    /** How far it goes along. */
    public static final Field<Double> BY = Field.number("by")
            .help("share of its own travel that it has gone when the leader has gone all of its own")
            .atLeast(0.001, "it would stand still")
            .atMost(1, "it has no more travel")
            .byDefault("1");

    static final FieldSet FOLLOW_SET = FieldSet.of(DRIVE, OF, BY);

    /** The key as a whole. */
    public static final Field<List<Values>> FOLLOWS = Field.group("follows", FOLLOW_SET)
            .help("drives that go along with others; all else moves by itself")
            .list(24)
            .byDefaultWords("none");

    static final FieldSet ALL = FieldSet.of(APART, FOLLOWS);

    private SetupFields() {}

    private static Field<Double> room(String name, String help) {
        return Field.length(name)
                .help(help)
                .atLeast(0, "what overlaps cannot be built")
                .atMost(1000, "a metre is no neighbour");
    }
}
