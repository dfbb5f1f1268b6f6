// Bandwright. SPDX-License-Identifier: Apache-2.0
/** What is wrong with a text, as data: code, message, places, suggestion; and how it is shown. All sentences are in {@code messages.properties}. May depend on {@code source}. */
@NullMarked
package bandwright.dsl.diagnostic;

import org.jspecify.annotations.NullMarked;
