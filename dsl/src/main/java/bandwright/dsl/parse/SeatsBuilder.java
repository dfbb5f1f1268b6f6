// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.parse;

import bandwright.dsl.parse.antlr.BandParser;
import bandwright.dsl.parse.antlr.BandParserBaseVisitor;
import bandwright.dsl.syntax.ChannelProperty;
import bandwright.dsl.syntax.Property;
import bandwright.dsl.syntax.SeatsProperty;

/** Cuts in which stones sit. */
final class SeatsBuilder extends BandParserBaseVisitor<SeatsProperty> {
    private final ExpressionBuilder expressions;
    private final Report report;

    SeatsBuilder(ExpressionBuilder expressions, Report report) {
        this.expressions = expressions;
        this.report = report;
    }

    @Override
    public SeatsProperty visitSeatsAmount(BandParser.SeatsAmountContext tree) {
        return new Property.Amount(Trees.word(tree.word), expressions.visit(tree.amount()), Trees.span(tree));
    }

    @Override
    public SeatsProperty visitDeburr(BandParser.DeburrContext tree) {
        return new SeatsProperty.Deburr(expressions.optional(tree.amount()), Trees.span(tree));
    }

    @Override
    public SeatsProperty visitMade(BandParser.MadeContext tree) {
        return GrooveBuilder.made(tree);
    }

    @Override
    public SeatsProperty visitChannel(BandParser.ChannelContext tree) {
        return new SeatsProperty.Channel(
                Trees.block(tree, Trees.list(tree.channelProperty(), this::channel), report), Trees.span(tree));
    }

    private ChannelProperty channel(BandParser.ChannelPropertyContext tree) {
        if (tree instanceof BandParser.BarsContext bars) {
            return new Property.Amount(Property.Word.BARS_EVERY, expressions.visit(bars.amount()), Trees.span(bars));
        }
        BandParser.ChannelAmountContext amount = (BandParser.ChannelAmountContext) tree;
        return new Property.Amount(Trees.word(amount.word), expressions.visit(amount.amount()), Trees.span(amount));
    }
}
