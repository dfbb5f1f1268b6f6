// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.offer;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;

import org.jspecify.annotations.Nullable;

import bandwright.dsl.diagnostic.Diagnostic;
import bandwright.dsl.diagnostic.NearNames;
import bandwright.dsl.measure.Spares;
import bandwright.dsl.model.Fault;
import bandwright.dsl.quantity.Dimension;
import bandwright.dsl.quantity.Quantity;
import bandwright.dsl.quantity.Unit;
import bandwright.dsl.resolve.Resolution;
import bandwright.dsl.resolve.expression.Value;
import bandwright.dsl.source.SourceText;
import bandwright.dsl.syntax.Expression;
import bandwright.dsl.syntax.Name;
import bandwright.dsl.syntax.Property;
import bandwright.dsl.syntax.Quote;
import bandwright.dsl.syntax.QuoteProperty;

/** What a quote's block says, worked out: each price of the kind it must be, all in one currency. */
final class Prices {
    /** A line of labour, as typed. */
    record Labour(String text, Quantity price) {}

    private final Resolution design;
    private final SourceText source;
    private final Map<String, Quantity> metals = new LinkedHashMap<>();
    private final Map<String, Quantity> stones = new LinkedHashMap<>();
    private final Map<Property.Word, Quantity> amounts = new LinkedHashMap<>();
    private final List<Labour> labour = new ArrayList<>();
    private @Nullable Labour tax;
    private @Nullable String valid;
    private @Nullable String currency;

    /**
     * @param metalNames the metals that the design's parts are of
     * @param rows its rows of stones
     */
    Prices(Quote quote, Resolution design, SourceText source, List<String> metalNames, List<String> rows) {
        this.design = design;
        this.source = source;
        for (QuoteProperty property : quote.block().properties()) {
            read(property, metalNames, rows);
        }
    }

    private void read(QuoteProperty property, List<String> metalNames, List<String> rows) {
        if (property instanceof QuoteProperty.MetalPrice metal) {
            metals.put(named(metal.of(), metalNames), price(metal.price(), "a price per weight", this::isPerMass));
        } else if (property instanceof QuoteProperty.StonePrice stone) {
            stones.put(
                    named(stone.of(), rows),
                    price(stone.price(), "a price per carat or per stone", kind -> isPerMass(kind) || isMoney(kind)));
        } else if (property instanceof QuoteProperty.Labour work) {
            String text = work.text() == null ? "labour" : work.text();
            labour.add(new Labour(text, price(work.price(), "an amount of money", this::isMoney)));
        } else if (property instanceof QuoteProperty.Tax rate) {
            String text = rate.text() == null ? "tax" : rate.text();
            tax = new Labour(text, share(rate.rate()));
        } else if (property instanceof QuoteProperty.Valid until) {
            valid = until.text();
        } else if (property instanceof Property.Amount amount) {
            boolean setting = amount.kind() == Property.Word.SETTING;
            Quantity given =
                    setting ? price(amount.value(), "an amount of money", this::isMoney) : share(amount.value());
            if (amount.kind() == Property.Word.SPARES) {
                Spares.check(
                        given,
                        amount.value().isBareNumber(),
                        source.place(amount.value().span()));
            }
            amounts.put(amount.kind(), given);
        }
    }

    /** The name a price is for, checked; empty text for all. */
    private String named(@Nullable Name name, List<String> known) {
        if (name == null) {
            return "";
        } else if (known.contains(name.text())) {
            return name.text();
        }
        Diagnostic.Builder fault =
                Diagnostic.error("priced-unknown", source.place(name.span())).with(name.text());
        List<String> near = NearNames.nearest(name.text(), known);
        throw new Fault((near.isEmpty()
                        ? fault.expected(String.join(", ", known))
                        : fault.suggest(source.place(name.span()), near.get(0)))
                .build());
    }

    private boolean isMoney(Dimension kind) {
        return kind.money() == 1 && kind.equals(Dimension.money(String.valueOf(kind.currency())));
    }

    private boolean isPerMass(Dimension kind) {
        return kind.money() == 1 && kind.mass() == -1 && kind.length() == 0 && kind.angle() == 0;
    }

    private Quantity price(Expression expression, String wanted, Predicate<Dimension> fits) {
        Quantity price = amount(expression, wanted, fits);
        String other = price.dimension().currency();
        if (currency != null && !currency.equals(other)) {
            throw new Fault(Diagnostic.error("currencies-mixed", source.place(expression.span()))
                    .with(String.valueOf(other), currency)
                    .build());
        }
        currency = other;
        return price;
    }

    private Quantity share(Expression expression) {
        return amount(expression, "a plain number or a share", Dimension::isNumber);
    }

    private Quantity amount(Expression expression, String wanted, Predicate<Dimension> fits) {
        Value value = design.evaluate(expression, source);
        if (!(value instanceof Value.Amount amount)
                || !fits.test(amount.quantity().dimension())) {
            throw new Fault(Diagnostic.error("wrong-kind", source.place(expression.span()))
                    .with(wanted, value.kind())
                    .build());
        } else if (amount.quantity().value() < 0) {
            throw new Fault(Diagnostic.error("negative-price", source.place(expression.span()))
                    .with(value.text())
                    .build());
        }
        Unit written = expression instanceof Expression.NumberLiteral number ? number.unit() : null;
        return written == null ? amount.quantity() : amount.quantity().in(written);
    }

    Optional<Quantity> ofMetal(String metal) {
        return Optional.ofNullable(metals.getOrDefault(metal, metals.get("")));
    }

    Optional<Quantity> ofStones(String row) {
        return Optional.ofNullable(stones.getOrDefault(row, stones.get("")));
    }

    /** Setting, spares, loss or finishing, where it is said. */
    Optional<Quantity> amount(Property.Word word) {
        return Optional.ofNullable(amounts.get(word));
    }

    List<Labour> labour() {
        return labour;
    }

    Optional<Labour> tax() {
        return Optional.ofNullable(tax);
    }

    Optional<String> valid() {
        return Optional.ofNullable(valid);
    }

    /** Three capital letters; empty text where no price is given at all. */
    String currency() {
        return currency == null ? "" : currency;
    }
}
