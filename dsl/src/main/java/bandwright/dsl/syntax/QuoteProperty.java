// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.syntax;

/** A price: metal, stones, labour, loss. */
public sealed interface QuoteProperty extends Property permits Property.Amount {}
