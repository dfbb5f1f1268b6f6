// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.kernel.cell.java;

import java.util.Set;

import bandwright.dsl.Workbench;

/** A design beside the one that stands. */
final class VariantDesign extends AskedDesign {
    private final Workbench workbench;

    VariantDesign(Workbench workbench, Workhand hand, Set<String> asked) {
        super(hand, asked);
        this.workbench = workbench;
    }

    @Override
    Workbench workbench() {
        return workbench;
    }
}
