// SPDX-License-Identifier: Apache-2.0
package ringleaf.cli;

import ringleaf.spec.FabricationFields;
import ringleaf.spec.field.FieldHelp;

/** What a spec may say of how parts are made. */
final class FabricationHelp {
    private FabricationHelp() {}

    static String text() {
        return "fabrication: how parts are made, for all families at once or under the name of one\n\nFor all:\n"
                + FieldHelp.text(FabricationFields.GENERAL) + "\nFor a family:\n"
                + FieldHelp.text(FabricationFields.ofFamily());
    }

    static String markdown() {
        return "For all families:\n\n"
                + FieldHelp.markdown(FabricationFields.GENERAL)
                + "\nFor one family, under its name:\n\n"
                + FieldHelp.markdown(FabricationFields.ofFamily());
    }
}
