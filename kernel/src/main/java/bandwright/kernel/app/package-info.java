// Bandwright. SPDX-License-Identifier: Apache-2.0
/** The command line: verbs, options, files, exit codes. The only place that prints, and {@link bandwright.kernel.app.Main} the only one that ends the process. May depend on everything in this module. */
@NullMarked
package bandwright.kernel.app;

import org.jspecify.annotations.NullMarked;
