// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.resolve;

import java.util.Optional;

/**
 * One thing that came to mean something else.
 *
 * @param before what it said, see {@link Entry#said}
 * @param after what it says instead
 * @param reason why, where the new statement tells
 */
public record Redefinition(String name, Entry before, Entry after, Optional<String> reason) {
    static Redefinition of(String name, Entry before, Entry after) {
        return new Redefinition(name, before, after, after.because());
    }

    public String oldText() {
        return before.said();
    }

    public String newText() {
        return after.said();
    }
}
