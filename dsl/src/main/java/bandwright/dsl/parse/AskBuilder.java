// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.parse;

import java.util.ArrayList;
import java.util.List;

import org.antlr.v4.runtime.Token;
import org.jspecify.annotations.Nullable;

import bandwright.dsl.parse.antlr.BandParser;
import bandwright.dsl.parse.antlr.BandParserBaseVisitor;
import bandwright.dsl.source.Span;
import bandwright.dsl.syntax.Asked;
import bandwright.dsl.syntax.Axis;
import bandwright.dsl.syntax.Change;
import bandwright.dsl.syntax.Definition;
import bandwright.dsl.syntax.ExportProperty;
import bandwright.dsl.syntax.Expression;
import bandwright.dsl.syntax.Name;
import bandwright.dsl.syntax.Property;
import bandwright.dsl.syntax.QuoteProperty;
import bandwright.dsl.syntax.Range;

/** Variations, alternatives, offers and files. */
final class AskBuilder extends BandParserBaseVisitor<ExportProperty> {
    private final ExpressionBuilder expressions;

    AskBuilder(ExpressionBuilder expressions) {
        this.expressions = expressions;
    }

    Axis axis(BandParser.AxisContext tree) {
        Span span = Trees.span(tree);
        if (tree instanceof BandParser.StretchContext stretch) {
            return new Axis.Stretch(
                    Trees.name(stretch.name()),
                    expressions.visit(stretch.start),
                    expressions.visit(stretch.end),
                    expressions.optional(stretch.step),
                    span);
        }
        if (tree instanceof BandParser.ValuesContext values) {
            return new Axis.Values(Trees.name(values.name()), expressions.all(values.amount()), span);
        }
        return new Axis.OwnRange(Trees.name(((BandParser.OwnRangeContext) tree).name()), span);
    }

    Change change(BandParser.ChangeContext tree) {
        return new Change(Trees.name(tree.name()), expressions.visit(tree.value), Trees.span(tree));
    }

    /** What stands in the braces; without braces nothing is asked, at the end of what stands before. */
    Asked asked(BandParser.@Nullable AskedContext tree, Span statement) {
        List<Definition> definitions = new ArrayList<>();
        List<Expression> values = new ArrayList<>();
        if (tree == null) {
            return new Asked(definitions, values, new Span(statement.end(), statement.end()));
        }
        for (BandParser.AskedItemContext item : tree.askedItem()) {
            if (item instanceof BandParser.AskedDefinitionContext definition) {
                definitions.add(difference(definition.difference()));
            } else if (item instanceof BandParser.AskedValueContext value) {
                values.add(expressions.visit(value.expression()));
            }
        }
        return new Asked(definitions, values, Trees.span(tree));
    }

    Definition difference(BandParser.DifferenceContext tree) {
        if (tree instanceof BandParser.HandleDifferenceContext handle) {
            return new Definition(
                    Trees.name(handle.name()),
                    expressions.visit(handle.value),
                    range(handle.range()),
                    Trees.because(handle.because()),
                    Trees.span(handle));
        }
        BandParser.PlainDifferenceContext plain = (BandParser.PlainDifferenceContext) tree;
        Name name = Trees.name(plain.name());
        return new Definition(
                name, expressions.visit(plain.value), null, Trees.because(plain.because()), Trees.span(plain));
    }

    Range range(BandParser.RangeContext tree) {
        return new Range(
                expressions.visit(tree.low),
                expressions.visit(tree.high),
                expressions.optional(tree.step),
                Trees.span(tree));
    }

    QuoteProperty price(BandParser.QuotePropertyContext tree) {
        Span span = Trees.span(tree);
        if (tree instanceof BandParser.PriceContext price) {
            Name of = price.of == null ? null : Trees.name(price.of);
            Expression value = expressions.visit(price.price);
            return price.word.getType() == BandParser.METAL
                    ? new QuoteProperty.MetalPrice(of, value, span)
                    : new QuoteProperty.StonePrice(of, value, span);
        } else if (tree instanceof BandParser.LabourContext labour) {
            return new QuoteProperty.Labour(optional(labour.text), expressions.visit(labour.price), span);
        } else if (tree instanceof BandParser.TaxContext tax) {
            return new QuoteProperty.Tax(optional(tax.text), expressions.visit(tax.rate), span);
        } else if (tree instanceof BandParser.ValidContext valid) {
            return new QuoteProperty.Valid(Trees.text(valid.text), span);
        }
        BandParser.QuoteAmountContext amount = (BandParser.QuoteAmountContext) tree;
        return new Property.Amount(Trees.word(amount.word), expressions.visit(amount.amount()), span);
    }

    private static @Nullable String optional(@Nullable Token text) {
        return text == null ? null : Trees.text(text);
    }

    @Override
    public ExportProperty visitExportParts(BandParser.ExportPartsContext tree) {
        return new ExportProperty.Parts(Trees.names(tree.parts().part()), Trees.span(tree));
    }

    @Override
    public ExportProperty visitExportStage(BandParser.ExportStageContext tree) {
        return new ExportProperty.Stage(tree.stage.getType() == BandParser.CAST, Trees.span(tree));
    }

    @Override
    public ExportProperty visitExportAssembled(BandParser.ExportAssembledContext tree) {
        return new ExportProperty.Assembled(Trees.span(tree));
    }

    @Override
    public ExportProperty visitExportLaidOut(BandParser.ExportLaidOutContext tree) {
        return new ExportProperty.LaidOut(expressions.optional(tree.amount()), Trees.span(tree));
    }

    @Override
    public ExportProperty visitExportReplace(BandParser.ExportReplaceContext tree) {
        return new ExportProperty.Replace(Trees.span(tree));
    }

    @Override
    public ExportProperty visitSheetPaper(BandParser.SheetPaperContext tree) {
        return new ExportProperty.Paper(Trees.name(tree.name()), Trees.span(tree));
    }

    @Override
    public ExportProperty visitSheetMetals(BandParser.SheetMetalsContext tree) {
        return new ExportProperty.Metals(
                tree.names().name().stream().map(Trees::name).toList(), Trees.span(tree));
    }

    @Override
    public ExportProperty visitSheetSpares(BandParser.SheetSparesContext tree) {
        return new Property.Amount(Trees.word(tree.word), expressions.visit(tree.amount()), Trees.span(tree));
    }

    @Override
    public ExportProperty visitSheetReplace(BandParser.SheetReplaceContext tree) {
        return new ExportProperty.Replace(Trees.span(tree));
    }

    @Override
    public ExportProperty visitCastingAmount(BandParser.CastingAmountContext tree) {
        return new Property.Amount(Trees.word(tree.word), expressions.visit(tree.amount()), Trees.span(tree));
    }

    @Override
    public ExportProperty visitShrinkage(BandParser.ShrinkageContext tree) {
        return new ExportProperty.Shrinkage(expressions.visit(tree.amount()), Trees.span(tree));
    }

    @Override
    public ExportProperty visitDirectedShrinkage(BandParser.DirectedShrinkageContext tree) {
        return new ExportProperty.DirectedShrinkage(
                expressions.visit(tree.inAround),
                expressions.visit(tree.inAcross),
                expressions.visit(tree.inOut),
                Trees.span(tree));
    }

    @Override
    public ExportProperty visitStock(BandParser.StockContext tree) {
        return new ExportProperty.Stock(
                allowance(tree, BandParser.OUTSIDE), allowance(tree, BandParser.INSIDE), Trees.span(tree));
    }

    private @Nullable Expression allowance(BandParser.StockContext tree, int side) {
        return tree.allowance().stream()
                .filter(allowance -> allowance.side.getType() == side)
                .findFirst()
                .map(allowance -> expressions.visit(allowance.amount()))
                .orElse(null);
    }
}
