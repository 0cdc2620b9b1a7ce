// SPDX-License-Identifier: Apache-2.0
package ringleaf.cli;

import ringleaf.spec.FabricationFields;
import ringleaf.spec.field.FieldHelp;

/** What a spec may say of how parts are made. */
final class FabricationHelp {
    private FabricationHelp() {}

    static String text() {
        return "fabrication: how parts are made, for all families at once or under the name of one\n\nFor all:\n"
                + FieldHelp.text(FabricationFields.GENERAL)
                + "\nUnder the name of a family, for all that is made as it is (spares: of that family only):\n"
                + FieldHelp.text(FabricationFields.ofFamily());
    }

    static String markdown() {
        return "For all families:\n\n"
                + FieldHelp.markdown(FabricationFields.GENERAL)
                + "\nUnder the name of a family, for all that is made as it is (`spares`: of that family only):\n\n"
                + FieldHelp.markdown(FabricationFields.ofFamily());
    }
}
