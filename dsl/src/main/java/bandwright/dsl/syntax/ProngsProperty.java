// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.syntax;

/** A property of prongs: diameter, rise, root, across, reach, per-gap, set-height. */
public sealed interface ProngsProperty extends Property permits Property.Amount {}
