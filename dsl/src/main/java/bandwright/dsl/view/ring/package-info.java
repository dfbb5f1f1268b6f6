// Bandwright. SPDX-License-Identifier: Apache-2.0
/** What of a ring goes into pictures, drawings and tables: from {@code construct} and {@code measure} to the views' own data. */
@NullMarked
package bandwright.dsl.view.ring;

import org.jspecify.annotations.NullMarked;
