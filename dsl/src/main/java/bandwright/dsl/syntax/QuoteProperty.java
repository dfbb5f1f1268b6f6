// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.syntax;

import org.jspecify.annotations.Nullable;

import bandwright.dsl.source.Span;

/** A price, an allowance or a line of an offer. */
public sealed interface QuoteProperty extends Property
        permits Property.Amount,
                QuoteProperty.MetalPrice,
                QuoteProperty.StonePrice,
                QuoteProperty.Labour,
                QuoteProperty.Tax,
                QuoteProperty.Valid {

    /** @param of the metal it is the price of; all that have none of their own if absent */
    record MetalPrice(@Nullable Name of, Expression price, Span span) implements QuoteProperty {
        @Override
        public String word() {
            return of == null ? "metal" : "metal " + of;
        }
    }

    /** @param of the row whose stones it is the price of; all that have none of their own if absent */
    record StonePrice(@Nullable Name of, Expression price, Span span) implements QuoteProperty {
        @Override
        public String word() {
            return of == null ? "stones" : "stones " + of;
        }
    }

    /** @param text what the work is; two lines of one text are one too many */
    record Labour(@Nullable String text, Expression price, Span span) implements QuoteProperty {
        @Override
        public String word() {
            return text == null ? "labour" : "labour \"" + text + "\"";
        }
    }

    /** @param text what the tax is called */
    record Tax(@Nullable String text, Expression rate, Span span) implements QuoteProperty {
        @Override
        public String word() {
            return "tax";
        }
    }

    /** Until when the offer holds, as typed. */
    record Valid(String text, Span span) implements QuoteProperty {
        @Override
        public String word() {
            return "valid";
        }
    }
}
