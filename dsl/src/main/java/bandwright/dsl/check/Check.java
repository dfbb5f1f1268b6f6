// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.check;

import java.util.List;

/** A family of checks. */
interface Check {
    /**
     * The key of what is looked at, for when it cannot be.
     */
    String key();

    /**
     * What is found, in a fixed order; nothing where there is nothing to look at.
     *
     * @throws bandwright.dsl.model.Fault if the ring cannot be made as far as this check needs it
     */
    List<Finding> look(Look look);
}
