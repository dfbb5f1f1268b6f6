// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.kernel.session;

import bandwright.dsl.Workbench;

/** The design as it stands, and how many cells were counted. For the thread that answers shell alone. */
final class Bench {
    private Workbench workbench = Workbench.empty();
    private int count;

    Workbench workbench() {
        return workbench;
    }

    void put(Workbench next) {
        workbench = next;
    }

    void forgetCell(String cellId) {
        workbench = workbench.without(cellId);
    }

    /** The same design on a workbench of its own, because a thread that was given up may still read the old one. */
    void renew() {
        workbench = workbench.without("");
    }

    int count() {
        return count;
    }

    void countOn() {
        count++;
    }
}
