// Bandwright. SPDX-License-Identifier: Apache-2.0
/**
 * What a bench would look at before metal is poured: each check is a small class that gives findings, with what was measured, the limit, where on
 * the ring, and where the limit comes from. Limits are data ({@code limits.csv}); rival rules stand beside them. Depends on
 * {@code construct}, {@code measure}, {@code model}, {@code material} and, for the user's own limits, on an interface of {@code resolve}.
 */
@NullMarked
package bandwright.dsl.check;

import org.jspecify.annotations.NullMarked;
