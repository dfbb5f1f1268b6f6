// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl;

import org.jspecify.annotations.Nullable;

import bandwright.dsl.view.Contrast;

/**
 * Two designs compared.
 *
 * @param overlay the sections of both at the top of the ring, one over the other; none where one of them has no ring
 */
public record Comparison(Contrast contrast, Answer.@Nullable Drawn overlay) {}
