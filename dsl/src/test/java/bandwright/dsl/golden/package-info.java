// Bandwright. SPDX-License-Identifier: Apache-2.0
/** Inputs and expected answers as files, for the tests of all packages. */
@NullMarked
package bandwright.dsl.golden;

import org.jspecify.annotations.NullMarked;
