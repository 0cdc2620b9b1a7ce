// SPDX-License-Identifier: Apache-2.0
package ringleaf.spec;

import java.util.List;
import ringleaf.spec.field.Field;
import ringleaf.spec.field.FieldSet;

/** The keys at the root of a spec, and those of a family's fabrication. */
final class RootFields {
    static final String KIND = "kind";
    /** Keys of every mechanism, whatever its kind. */
    static final List<String> OF_EVERY_KIND = List.of(KIND, PlaceFields.PLACE.name());

    static final String FABRICATION = "fabrication";
    static final String MECHANISMS = "mechanisms";
    /** Keys whose maps are read apart. */
    static final List<String> MAPS =
            List.of(FABRICATION, MECHANISMS, SetupFields.APART.name(), SetupFields.FOLLOWS.name());

    static final Field<String> TITLE = Field.text("title", 80)
            .help("what the thing is called; names the output folder")
            .example("Harbour light")
            .byDefaultWords("the file's name");
    static final Field<String> UNITS = Field.choice("units")
            .help("what a length without a unit is in")
            .option("mm", "millimetres")
            .option("cm", "centimetres")
            .option("in", "inches of 25.4 mm")
            .option("thou", "thousandths of an inch")
            .byDefault("mm");
    static final FieldSet SCALARS = FieldSet.of(TITLE, UNITS);
    static final List<String> NAMES =
            List.of("title", "units", FABRICATION, MECHANISMS, SetupFields.APART.name(), SetupFields.FOLLOWS.name());

    static final Field<String> PROCESS = Field.name("process", "processes.yaml")
            .help("how parts of the family are made")
            .example("fibre-laser")
            .byDefaultWords("the usual one for the stock");
    static final Field<String> STOCK = Field.name("stock", "stock.yaml")
            .help("what they are made of")
            .example("brass-0.15")
            .required();
    static final FieldSet MAKING =
            FieldSet.of(PROCESS, STOCK).and(FabricationFields.FAMILY.fields().toArray(new Field<?>[0]));

    private RootFields() {}

    /** A title from a file's name: without folders and ending, hyphens as spaces. */
    static String titleFrom(String fileName) {
        int slash = Math.max(fileName.lastIndexOf('/'), fileName.lastIndexOf('\\'));
        String name = fileName.substring(slash + 1);
        int dot = name.lastIndexOf('.');
        name = dot > 0 ? name.substring(0, dot) : name;
        return name.replace('-', ' ').replace('_', ' ').trim();
    }
}
