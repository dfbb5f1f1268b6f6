// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.parse;

import bandwright.dsl.parse.antlr.BandParser;
import bandwright.dsl.parse.antlr.BandParserBaseVisitor;
import bandwright.dsl.syntax.ProngsProperty;
import bandwright.dsl.syntax.Property;
import bandwright.dsl.syntax.StoneRowProperty;

/** Stones and what holds them. */
final class StonesBuilder extends BandParserBaseVisitor<StoneRowProperty> {
    private final ExpressionBuilder expressions;

    StonesBuilder(ExpressionBuilder expressions) {
        this.expressions = expressions;
    }

    @Override
    public StoneRowProperty visitStone(BandParser.StoneContext tree) {
        return new StoneRowProperty.Stone(
                Trees.name(tree.cut),
                Trees.name(tree.material),
                expressions.visit(tree.size),
                expressions.optional(tree.by),
                expressions.optional(tree.within),
                Trees.span(tree));
    }

    @Override
    public StoneRowProperty visitAround(BandParser.AroundContext tree) {
        return GrooveBuilder.around(tree, expressions);
    }

    @Override
    public StoneRowProperty visitRowAmount(BandParser.RowAmountContext tree) {
        return new Property.Amount(Trees.word(tree.word), expressions.visit(tree.amount()), Trees.span(tree));
    }

    @Override
    public StoneRowProperty visitSpacing(BandParser.SpacingContext tree) {
        return new StoneRowProperty.Spacing(tree.LEAST() != null, expressions.visit(tree.amount()), Trees.span(tree));
    }

    @Override
    public StoneRowProperty visitRowAcross(BandParser.RowAcrossContext tree) {
        return new StoneRowProperty.Across(expressions.all(tree.amount()), Trees.span(tree));
    }

    @Override
    public StoneRowProperty visitStaggered(BandParser.StaggeredContext tree) {
        return new StoneRowProperty.Staggered(Trees.span(tree));
    }

    @Override
    public StoneRowProperty visitUpright(BandParser.UprightContext tree) {
        return new StoneRowProperty.Upright(Trees.span(tree));
    }

    ProngsProperty prongs(BandParser.ProngsPropertyContext tree) {
        return new Property.Amount(Trees.word(tree.word), expressions.visit(tree.amount()), Trees.span(tree));
    }
}
