// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.kernel.notebook;

import java.util.List;

/**
 * What running a code cell left behind.
 *
 * @param executionCount the how manieth cell it was, from 1
 */
public record CellResult(int executionCount, List<Output> outputs) {
    public CellResult {
        outputs = List.copyOf(outputs);
    }
}
