// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.explore;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

import bandwright.dsl.resolve.expression.Value;

/**
 * What came of one variant.
 *
 * @param made whether the ring can be made so at all
 * @param values of what was asked, in its order; one that has no value is empty
 * @param failed which requirements it fails, counted from 0 in the order of the design
 * @param reason why it cannot be made, or why a value is missing; empty text if nothing is
 */
record Variant(boolean made, List<Optional<Value>> values, List<Integer> failed, String reason) {
    Variant {
        values = List.copyOf(values);
        failed = List.copyOf(failed);
    }

    /** The requirements it fails, counted from 1: {@code 1, 3}. */
    String failedNumbers() {
        return failed.stream().map(number -> Integer.toString(number + 1)).collect(Collectors.joining(", "));
    }

    /** The reason, and that it cannot be made if so. */
    String reasonInWords() {
        return made ? reason : "cannot be made: " + reason;
    }
}
