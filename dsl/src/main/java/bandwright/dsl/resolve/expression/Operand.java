// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.resolve.expression;

import bandwright.dsl.source.Place;
import bandwright.dsl.syntax.Expression;

/**
 * A value with the expression it came from.
 *
 * @param about what the value is, for the words under it: its kind, and where a name is defined
 */
record Operand(Expression expression, Value value, Place place, String about) {}
