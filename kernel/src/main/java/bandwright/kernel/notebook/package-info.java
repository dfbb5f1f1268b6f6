// Bandwright. SPDX-License-Identifier: Apache-2.0
/** Notebooks as files: reading, completing and writing them, and a `.ring` text read as a notebook of one cell. A file that is no notebook of ours is a value with a sentence that says why. Knows nothing of the ring language; depends on Jackson alone. */
@NullMarked
package bandwright.kernel.notebook;

import org.jspecify.annotations.NullMarked;
