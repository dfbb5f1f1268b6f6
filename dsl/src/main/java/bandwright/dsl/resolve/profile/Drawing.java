// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.resolve.profile;

import bandwright.dsl.geometry.plane.Outline;

/** What came of drawing a form: its outline, or the size that cannot be. */
public sealed interface Drawing {
    record Drawn(Outline outline) implements Drawing {}

    /**
     * A size that is more than it can be.
     *
     * @param size the word of the size to underline
     * @param what what is too large, in words: {@code the side}
     * @param valueMm how large it is
     * @param limit what it cannot be more than, in words: {@code the height}
     * @param limitMm how large that is
     */
    record Impossible(String size, String what, double valueMm, String limit, double limitMm) implements Drawing {}
}
