// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.parse;

import java.util.List;
import java.util.Locale;

import bandwright.dsl.parse.antlr.BandParser;
import bandwright.dsl.parse.antlr.BandParserBaseVisitor;
import bandwright.dsl.source.Span;
import bandwright.dsl.syntax.Name;
import bandwright.dsl.syntax.Quote;
import bandwright.dsl.syntax.Show;
import bandwright.dsl.syntax.ShowSubject;
import bandwright.dsl.syntax.Statement;
import bandwright.dsl.syntax.Vary;
import bandwright.dsl.syntax.WhatIf;

/** What a drawing or a table in a file is of: the statement that would ask for it. */
final class HeldBuilder extends BandParserBaseVisitor<Statement> {
    private final ExpressionBuilder expressions;
    private final AskBuilder asks;
    private final Report report;

    HeldBuilder(ExpressionBuilder expressions, AskBuilder asks, Report report) {
        this.expressions = expressions;
        this.asks = asks;
        this.report = report;
    }

    private static Show show(ShowSubject subject) {
        return new Show(subject, null, null, subject.span());
    }

    @Override
    public Statement visitHeldSection(BandParser.HeldSectionContext tree) {
        List<Name> parts =
                tree.parts() == null ? List.of() : Trees.names(tree.parts().part());
        return show(new ShowSubject.Section(parts, expressions.optional(tree.at), Trees.span(tree)));
    }

    @Override
    public Statement visitHeldLayout(BandParser.HeldLayoutContext tree) {
        return show(new ShowSubject.Layout(Trees.name(tree.name()), Trees.span(tree)));
    }

    @Override
    public Statement visitHeldViews(BandParser.HeldViewsContext tree) {
        List<Name> parts =
                tree.parts() == null ? List.of() : Trees.names(tree.parts().part());
        return show(new ShowSubject.Views(parts, Trees.span(tree)));
    }

    @Override
    public Statement visitHeldWeights(BandParser.HeldWeightsContext tree) {
        return show(new ShowSubject.Weights(tree.ALL() != null, Trees.span(tree)));
    }

    /** Without a block of its own: the file's says how patterns are made. */
    @Override
    public Statement visitHeldCasting(BandParser.HeldCastingContext tree) {
        return show(new ShowSubject.Casting(null, Trees.span(tree)));
    }

    @Override
    public Statement visitHeldTopic(BandParser.HeldTopicContext tree) {
        String word = tree.topic.getText().toUpperCase(Locale.ROOT);
        return show(new ShowSubject.Topic(ShowSubject.Topic.Word.valueOf(word), Trees.span(tree)));
    }

    @Override
    public Statement visitHeldVary(BandParser.HeldVaryContext tree) {
        Span span = Trees.span(tree);
        return new Vary(Trees.list(tree.axis(), asks::axis), asks.asked(tree.asked(), span), span);
    }

    @Override
    public Statement visitHeldWhatIf(BandParser.HeldWhatIfContext tree) {
        Span span = Trees.span(tree);
        return new WhatIf(Trees.list(tree.change(), asks::change), asks.asked(tree.asked(), span), span);
    }

    @Override
    public Statement visitHeldQuote(BandParser.HeldQuoteContext tree) {
        return new Quote(
                Trees.block(tree, Trees.list(tree.quoteProperty(), asks::price), report), null, Trees.span(tree));
    }
}
