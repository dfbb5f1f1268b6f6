// Bandwright. SPDX-License-Identifier: Apache-2.0
/**
 * A small server for one person's browser on this machine, on the JDK's own. Knows nothing of rings: routes are given to it, and in front
 * of each of them stands the {@link bandwright.kernel.page.server.Door}.
 */
@NullMarked
package bandwright.kernel.page.server;

import org.jspecify.annotations.NullMarked;
