// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.offer;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

import bandwright.dsl.construct.PartSection;
import bandwright.dsl.construct.Ring;
import bandwright.dsl.construct.Workshop;
import bandwright.dsl.diagnostic.Diagnostic;
import bandwright.dsl.measure.PartMeasures;
import bandwright.dsl.measure.RowMeasures;
import bandwright.dsl.measure.Spares;
import bandwright.dsl.model.Fault;
import bandwright.dsl.model.StoneRow;
import bandwright.dsl.pattern.AsCast;
import bandwright.dsl.quantity.Dimension;
import bandwright.dsl.quantity.Quantity;
import bandwright.dsl.quantity.QuantityFormat;
import bandwright.dsl.quantity.Unit;
import bandwright.dsl.resolve.Resolution;
import bandwright.dsl.source.SourceText;
import bandwright.dsl.syntax.Property;
import bandwright.dsl.syntax.Quote;
import bandwright.dsl.view.Table;
import bandwright.dsl.view.Table.Column;

/**
 * An offer. Metal is charged by the weight that is cast; what the bench then cuts away is part of it and told in a note. Losses
 * are shares of the cast weight, added one to the other. Each line is rounded to cents, halves away from zero, and the total is the sum
 * of the lines.
 */
public final class Offer {
    private final Prices prices;
    private final Map<String, Double> castG = new LinkedHashMap<>();
    private final Map<String, Double> finishedG = new LinkedHashMap<>();
    private final List<List<String>> rows = new ArrayList<>();
    private final List<String> notes = new ArrayList<>();
    private double total;

    private Offer(Quote quote, Resolution design, Workshop workshop, SourceText source) {
        if (design.bands().isEmpty()) {
            throw new Fault(
                    Diagnostic.note("no-ring-yet", source.place(quote.span())).build());
        }
        weigh(design, workshop);
        List<StoneRow> stoneRows = design.stoneRows();
        prices = new Prices(
                quote,
                design,
                source,
                List.copyOf(castG.keySet()),
                stoneRows.stream().map(StoneRow::name).toList());
        castG.forEach(this::metal);
        Ring ring = workshop.ring(design);
        stoneRows.forEach(row -> stones(new RowMeasures(ring, row.name())));
        prices.labour().forEach(work -> line(work.text(), "", work.price().value()));
        tax();
        rows.add(List.of("total", "", money(total)));
        prices.valid().ifPresent(until -> notes.add("valid until " + until));
    }

    /**
     * The lines of an offer, each with its arithmetic, and their total.
     *
     * @throws bandwright.dsl.model.Fault if a price is of the wrong kind or in another currency, or is for something the design
     *     does not have
     */
    public static Table of(Quote quote, Resolution design, Workshop workshop, SourceText source) {
        Offer offer = new Offer(quote, design, workshop, source);
        String title = design.title().map(name -> "Offer: " + name).orElse("Offer");
        List<Column> columns = List.of(
                Column.words("line"), Column.words("worked out"), Column.numbers("amount", offer.prices.currency()));
        return new Table(title, columns, offer.rows, offer.notes);
    }

    /**
     * What is cast and what is left in the end, by metal. A part that only the bench makes is of metal that was cast with the part it
     * is cut from, unless it is a kept one: that is let in as a piece of its own, which is charged as it is finished.
     */
    private void weigh(Resolution design, Workshop workshop) {
        Ring finished = workshop.ring(design);
        Ring asCast = workshop.ring(AsCast.of(design));
        Set<String> cast = new LinkedHashSet<>();
        for (PartSection section : asCast.sections()) {
            cast.add(section.name());
            castG.merge(section.metal().name(), new PartMeasures(asCast, section.name()).weightG(), Double::sum);
        }
        finished.bodies();
        for (PartSection section : finished.sections()) {
            String part = section.name();
            double grams = new PartMeasures(finished, part).weightG();
            finishedG.merge(section.metal().name(), grams, Double::sum);
            boolean letIn = design.grooves().stream()
                    .flatMap(groove -> groove.keep().stream())
                    .anyMatch(keep -> keep.part().equals(part));
            if (letIn && !cast.contains(part)) {
                castG.merge(section.metal().name(), grams, Double::sum);
            }
        }
    }

    private void metal(String metal, double grams) {
        Optional<Quantity> price = prices.ofMetal(metal);
        if (price.isEmpty()) {
            missing(metal, "no price for it");
            return;
        }
        Quantity weight = Quantity.grams(grams);
        line(metal, weight + " x " + price(price.get()), grams * price.get().value());
        share("lost in casting", Property.Word.LOSS, weight, price.get());
        share("filed and polished away", Property.Word.FINISHING, weight, price.get());
        double atBench = grams - finishedG.getOrDefault(metal, grams);
        if (Math.abs(atBench) > 5e-4) {
            notes.add(metal + ": of " + weight + " cast, " + Quantity.grams(atBench)
                    + " is cut away at the bench; it is charged, and stays with the workshop");
        }
    }

    private void share(String what, Property.Word word, Quantity weight, Quantity price) {
        prices.amount(word)
                .ifPresent(share -> line(
                        "- " + what,
                        percent(share) + " x " + weight + " x " + price(price),
                        share.value() * weight.value() * price.value()));
    }

    private void stones(RowMeasures row) {
        int spares = spares(row.count());
        int bought = row.count() + spares;
        String count = spares == 0 ? bought + " stones" : "(" + row.count() + " + " + spares + " spare) stones";
        String name = row.row().name();
        Optional<Quantity> price = prices.ofStones(name);
        if (price.isEmpty()) {
            missing(name, "no price for its stones");
        } else if (price.get().dimension().equals(Dimension.money(prices.currency()))) {
            line(name, count + " x " + price(price.get()), bought * price.get().value());
        } else {
            Quantity each = Quantity.carats(row.caratsEach());
            Quantity perCarat =
                    price.get().in(Unit.parse(prices.currency() + "/ct").orElseThrow());
            line(
                    name,
                    count + " x " + carats(each) + " x " + price(perCarat),
                    bought * each.value() * price.get().value());
        }
        prices.amount(Property.Word.SETTING)
                .ifPresent(setting -> line(
                        "- setting " + name,
                        row.count() + " stones x " + price(setting),
                        row.count() * setting.value()));
    }

    /** A price as it was written, with two digits more than money has. */
    private static String price(Quantity price) {
        Unit unit = price.shown() == null ? Unit.shownFor(price.dimension()) : price.shown();
        return QuantityFormat.number(price.value() / unit.factor(), 4) + " " + unit.symbol();
    }

    /** Small stones weigh thousandths of a carat: three more digits than usual. */
    private static String carats(Quantity each) {
        return QuantityFormat.number(each.value() / 0.2, 6) + " ct";
    }

    private int spares(int count) {
        return prices.amount(Property.Word.SPARES)
                .map(spare -> Spares.of(spare, count))
                .orElse(0);
    }

    private void tax() {
        prices.tax().ifPresent(tax -> {
            rows.add(List.of("before " + tax.text(), "", money(total)));
            line(
                    tax.text(),
                    percent(tax.price()) + " x " + money(total),
                    tax.price().value() * total);
        });
    }

    private void missing(String what, String why) {
        rows.add(List.of(what, why, ""));
        notes.add("the total does not hold " + what + ": " + why);
    }

    private void line(String what, String arithmetic, double amount) {
        // Each line is charged as it is shown, so that the column adds up.
        total = Double.parseDouble(QuantityFormat.number(total + Double.parseDouble(money(amount)), 2));
        rows.add(List.of(what, arithmetic, money(amount)));
    }

    private static String percent(Quantity share) {
        return QuantityFormat.number(100 * share.value(), 3) + " %";
    }

    /** Two decimals always, so that a column of them lines up. */
    private static String money(double amount) {
        String number = QuantityFormat.number(amount, 2);
        int point = number.indexOf('.');
        return point < 0 ? number + ".00" : number + "0".repeat(3 - (number.length() - point));
    }
}
