// Bandwright. SPDX-License-Identifier: Apache-2.0
/**
 * What expressions are worth: values with their kinds, arithmetic that checks units, functions, comparisons. Names and
 * measures are looked up through {@link bandwright.dsl.resolve.expression.Scope}. May depend on {@code syntax}, {@code
 * material}, {@code model} and what lies before them.
 */
@NullMarked
package bandwright.dsl.resolve.expression;

import org.jspecify.annotations.NullMarked;
