// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl;

import java.util.List;

/**
 * A function of another language that ring text can call by its name.
 *
 * @param version changes when what the function does may have changed; the same on every machine
 */
public record RingFunction(String name, String version, Body body) {
    /** What it does. The same arguments must give the same value; may be called by several threads. */
    public interface Body {
        /** A quantity, a finger size, or a reason why there is none. */
        Worked value(List<Worked.Worth> arguments);
    }
}
