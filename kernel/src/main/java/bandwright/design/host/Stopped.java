// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.design.host;

/**
 * Ends a cell that is to stop. An error without a trace, so that few catch it; whoever does meets it again at the next step.
 */
public final class Stopped extends Error {
    private static final long serialVersionUID = 1L;

    public Stopped() {
        super("the cell is to stop", null, false, false);
    }
}
