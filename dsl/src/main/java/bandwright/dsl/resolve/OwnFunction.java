// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.resolve;

import java.util.List;

import bandwright.dsl.resolve.expression.Value;

/**
 * A function that a cell in another language gives to ring text.
 *
 * @param cellId the cell it belongs to
 * @param version changes when what the function does may have changed; the same on every machine
 */
public record OwnFunction(String name, String cellId, String version, Body body) {
    /** What it does. The same arguments must give the same value; may be called by several threads. */
    public interface Body {
        /** The value; throws the fault that says why there is none. */
        Value value(List<Value> arguments);
    }
}
