// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.syntax;

/** A property of a stone material: density. */
public sealed interface StoneMaterialProperty extends Property permits Property.Amount {}
