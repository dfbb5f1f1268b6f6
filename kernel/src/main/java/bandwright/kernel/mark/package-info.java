// Bandwright. SPDX-License-Identifier: Apache-2.0
@NullMarked
package bandwright.kernel.mark;

import org.jspecify.annotations.NullMarked;
