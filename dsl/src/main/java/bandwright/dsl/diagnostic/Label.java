// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.diagnostic;

import bandwright.dsl.source.Place;

/** A few words under an underlined place; no words, no more than the line under it. */
public record Label(Place place, String text) {}
