// Bandwright. SPDX-License-Identifier: Apache-2.0
/**
 * A running kernel: what each request of Jupyter's protocol does. Requests on shell are answered one after the other by one
 * thread; those on control by another, so that they need not wait; cells run on a thread each, which can be given up. May depend
 * on `protocol`, `cell`, `display`, `notebook` and on the door of the language.
 */
@NullMarked
package bandwright.kernel.session;

import org.jspecify.annotations.NullMarked;
