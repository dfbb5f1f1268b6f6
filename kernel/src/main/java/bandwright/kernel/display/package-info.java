// Bandwright. SPDX-License-Identifier: Apache-2.0
/** What the language answers, in the forms front ends take: MIME bundles that always hold plain text, error outputs, tables of headline numbers. May depend on `notebook` and on the door of the language. */
@NullMarked
package bandwright.kernel.display;

import org.jspecify.annotations.NullMarked;
