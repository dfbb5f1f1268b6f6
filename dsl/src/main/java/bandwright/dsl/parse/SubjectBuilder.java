// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.parse;

import java.util.List;
import java.util.Locale;

import org.jspecify.annotations.Nullable;

import bandwright.dsl.parse.antlr.BandParser;
import bandwright.dsl.parse.antlr.BandParserBaseVisitor;
import bandwright.dsl.syntax.Expression;
import bandwright.dsl.syntax.Name;
import bandwright.dsl.syntax.ShowSubject;
import bandwright.dsl.syntax.Viewpoint;

/** What is shown, and from where. */
final class SubjectBuilder extends BandParserBaseVisitor<ShowSubject> {
    private final ExpressionBuilder expressions;
    private final AskBuilder asks;
    private final Report report;

    SubjectBuilder(ExpressionBuilder expressions, AskBuilder asks, Report report) {
        this.expressions = expressions;
        this.asks = asks;
        this.report = report;
    }

    @Override
    public ShowSubject visitRingSubject(BandParser.RingSubjectContext tree) {
        return new ShowSubject.Parts(List.of(Trees.name(tree)), Trees.span(tree));
    }

    @Override
    public ShowSubject visitPartsSubject(BandParser.PartsSubjectContext tree) {
        return new ShowSubject.Parts(Trees.names(tree.part()), Trees.span(tree));
    }

    @Override
    public ShowSubject visitSection(BandParser.SectionContext tree) {
        List<Name> parts =
                tree.parts() == null ? List.of() : Trees.names(tree.parts().part());
        return new ShowSubject.Section(parts, expressions.optional(tree.at), Trees.span(tree));
    }

    @Override
    public ShowSubject visitLayout(BandParser.LayoutContext tree) {
        return new ShowSubject.Layout(Trees.name(tree.name()), Trees.span(tree));
    }

    @Override
    public ShowSubject visitViews(BandParser.ViewsContext tree) {
        List<Name> parts =
                tree.parts() == null ? List.of() : Trees.names(tree.parts().part());
        return new ShowSubject.Views(parts, Trees.span(tree));
    }

    @Override
    public ShowSubject visitWeights(BandParser.WeightsContext tree) {
        return new ShowSubject.Weights(tree.ALL() != null, Trees.span(tree));
    }

    @Override
    public ShowSubject visitCasting(BandParser.CastingContext tree) {
        return new ShowSubject.Casting(
                tree.LBRACE() == null
                        ? null
                        : Trees.block(tree, Trees.list(tree.castingProperty(), asks::visit), report),
                Trees.span(tree));
    }

    @Override
    public ShowSubject visitTopic(BandParser.TopicContext tree) {
        String word = tree.topic.getText().toUpperCase(Locale.ROOT);
        return new ShowSubject.Topic(ShowSubject.Topic.Word.valueOf(word), Trees.span(tree));
    }

    @Override
    public ShowSubject visitValueSubject(BandParser.ValueSubjectContext tree) {
        return value(tree.expression());
    }

    /** The word {@code ring} alone means all parts, wherever it stands. */
    ShowSubject value(BandParser.ExpressionContext tree) {
        Expression value = expressions.visit(tree);
        boolean ring = value instanceof Expression.Reference reference
                && reference.name().isRing();
        return ring
                ? new ShowSubject.Parts(List.of(((Expression.Reference) value).name()), Trees.span(tree))
                : new ShowSubject.Value(value, Trees.span(tree));
    }

    @Nullable
    Viewpoint viewpoint(BandParser.@Nullable ViewpointContext tree) {
        if (tree == null) {
            return null;
        }
        if (tree.side == null) {
            return new Viewpoint(Viewpoint.Side.ANGLE, expressions.visit(tree.amount()), Trees.span(tree));
        }
        String side = tree.side.getText().toUpperCase(Locale.ROOT).replace('-', '_');
        return new Viewpoint(Viewpoint.Side.valueOf(side), null, Trees.span(tree));
    }
}
