// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.kernel.catalogue.spark;

import java.io.Serializable;

/**
 * Rows that are worked out one after the other on one machine.
 *
 * @param from the first
 * @param end the first that is none of them
 */
record Stretch(long from, long end) implements Serializable {
    private static final long serialVersionUID = 1L;
}
