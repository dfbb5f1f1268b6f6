// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.pattern;

import java.util.Optional;

import org.jspecify.annotations.Nullable;

import bandwright.dsl.diagnostic.Diagnostic;
import bandwright.dsl.model.Fault;
import bandwright.dsl.quantity.Dimension;
import bandwright.dsl.quantity.Quantity;
import bandwright.dsl.quantity.Unit;
import bandwright.dsl.resolve.Resolution;
import bandwright.dsl.resolve.expression.Value;
import bandwright.dsl.source.SourceText;
import bandwright.dsl.syntax.Block;
import bandwright.dsl.syntax.ExportProperty;
import bandwright.dsl.syntax.Expression;
import bandwright.dsl.syntax.Property;

/** Works out what a block says of a pattern; each figure must be of its kind and within what can be meant. */
public final class AllowanceReader {
    /** Beyond these a figure is a slip: no caster's shrinkage comes near a fifth, nobody files two millimetres away. */
    private static final Quantity MOST_SHRINKAGE = percent(20);

    private static final Quantity MOST_STOCK = Quantity.millimetres(2);

    private final Resolution design;
    private final SourceText source;
    private final @Nullable Block<ExportProperty> block;

    public AllowanceReader(Resolution design, SourceText source, @Nullable Block<ExportProperty> block) {
        this.design = design;
        this.source = source;
        this.block = block;
    }

    /**
     * Shrinkage and stock; what is not said is nothing.
     *
     * @throws Fault if a figure is of the wrong kind or out of range
     */
    public Allowances allowances() {
        double around = 0;
        double across = 0;
        double out = 0;
        ExportProperty.Shrinkage even = find(ExportProperty.Shrinkage.class);
        ExportProperty.DirectedShrinkage directed = find(ExportProperty.DirectedShrinkage.class);
        if (even != null) {
            around = shrinkage(even.amount());
            across = around;
            out = around;
        } else if (directed != null) {
            around = shrinkage(directed.around());
            across = shrinkage(directed.across());
            out = shrinkage(directed.out());
        }
        ExportProperty.Stock stock = find(ExportProperty.Stock.class);
        return new Allowances(
                around,
                across,
                out,
                stock == null ? 0 : stock(stock.outside()),
                stock == null ? 0 : stock(stock.inside()));
    }

    /**
     * A plain figure of the block.
     *
     * @param least the smallest it may be; the largest is of the same dimension
     * @return nothing if it is not said
     * @throws Fault if it is of the wrong kind or out of range
     */
    public Optional<Quantity> amount(Property.Word word, Quantity least, Quantity most) {
        Property.Amount amount = block == null ? null : block.amount(word);
        return Optional.ofNullable(amount).map(given -> checked(word.word(), given.value(), least, most));
    }

    private double shrinkage(Expression amount) {
        return checked("shrinkage", amount, percent(0), MOST_SHRINKAGE).value();
    }

    private double stock(@Nullable Expression amount) {
        return amount == null
                ? 0
                : checked("stock", amount, Quantity.millimetres(0), MOST_STOCK).value();
    }

    private <T extends ExportProperty> @Nullable T find(Class<T> kind) {
        return block == null ? null : block.find(kind);
    }

    /**
     * A figure as it is written somewhere.
     *
     * @param word what it is called
     * @param least the smallest it may be; the largest is of the same dimension
     * @throws Fault if it is of the wrong kind or out of range
     */
    public Quantity checked(String word, Expression amount, Quantity least, Quantity most) {
        Value value = design.evaluate(amount, source);
        if (!(value instanceof Value.Amount given)
                || !given.quantity().dimension().equals(most.dimension())) {
            Diagnostic.Builder fault = Diagnostic.error("wrong-kind", source.place(amount.span()))
                    .with(kind(word, most.dimension()), value.kind());
            throw new Fault(
                    withUnit(fault, amount, Unit.MILLIMETRE, least, most).build());
        }
        double figure = given.quantity().value();
        if (!(figure >= least.value() && figure <= most.value())) {
            Diagnostic.Builder fault = Diagnostic.error("allowance-out-of-range", source.place(amount.span()))
                    .with(word, least.toString(), most.toString(), shown(given.quantity(), amount));
            throw new Fault(withUnit(fault, amount, Unit.PERCENT, least, most).build());
        }
        return given.quantity();
    }

    /** A number alone that would be right with a unit behind it gets the unit. */
    private Diagnostic.Builder withUnit(
            Diagnostic.Builder fault, Expression amount, Unit unit, Quantity least, Quantity most) {
        if (!amount.isBareNumber() || !unit.dimension().equals(most.dimension())) {
            return fault;
        }
        String text = source.text(amount.span());
        if (!(design.evaluate(amount, source) instanceof Value.Amount plain)) {
            return fault;
        }
        double figure = Quantity.of(plain.quantity().value(), unit).value();
        boolean fits = figure >= least.value() && figure <= most.value();
        return fits ? fault.suggest(source.place(amount.span()), text + " " + unit.symbol()) : fault;
    }

    /** As it is written: what has no unit gets none. */
    private static String shown(Quantity given, Expression amount) {
        boolean plain = amount.isBareNumber();
        return given.dimension().isNumber() && !plain
                ? given.in(Unit.PERCENT).toString()
                : given + (plain ? " without a unit" : "");
    }

    private static String kind(String word, Dimension dimension) {
        if (dimension.isNumber()) {
            return word.equals("shrinkage") ? "a share, such as 1.6 %," : "a share, such as 30 %,";
        }
        return dimension.equals(Dimension.LENGTH) ? "a length" : "a density, such as 1.1 g/cm^3,";
    }

    private static Quantity percent(double percent) {
        return Quantity.of(percent, Unit.PERCENT).in(Unit.PERCENT);
    }
}
