// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.resolve;

import java.util.List;
import java.util.Optional;

import bandwright.dsl.quantity.Unit;

/** Which limits the checks have, for those who read a user's own. */
public interface KnownLimits {
    /** Where nothing is checked. */
    KnownLimits NONE = new KnownLimits() {
        @Override
        public List<String> keys() {
            return List.of();
        }

        @Override
        public Optional<Unit> unit(String key) {
            return Optional.empty();
        }

        @Override
        public boolean mayBeNegative(String key) {
            return false;
        }
    };

    /** All keys, in alphabetical order. */
    List<String> keys();

    /** The unit in which a limit is told, if there is such a limit. */
    Optional<Unit> unit(String key);

    /** Whether a limit of one's own may be below zero, as where that says how far one thing may lie beyond another. */
    boolean mayBeNegative(String key);
}
