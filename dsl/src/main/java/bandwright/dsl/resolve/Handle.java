// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.resolve;

import java.util.Optional;

import bandwright.dsl.resolve.expression.Value;

/**
 * A definition with a range, which a person may move.
 *
 * @param low the least value, of the same kind as the definition
 * @param high the largest value
 * @param step how far it moves at a time, where that is said; a plain number for finger sizes
 */
public record Handle(String name, Value low, Value high, Optional<Value> step) {}
