// SPDX-License-Identifier: Apache-2.0
package ringleaf;

import ringleaf.part.Finding;
import ringleaf.part.ShownUnit;
import ringleaf.report.FindingWords;

/** What findings say to people, in millimetres. */
public final class Spoken {
    private Spoken() {}

    public static String of(Finding finding) {
        return FindingWords.message(finding, ShownUnit.MM);
    }

    public static String where(Finding finding) {
        return FindingWords.where(finding, ShownUnit.MM);
    }
}
