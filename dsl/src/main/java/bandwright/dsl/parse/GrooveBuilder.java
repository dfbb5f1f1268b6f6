// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.parse;

import java.util.Locale;

import bandwright.dsl.parse.antlr.BandParser;
import bandwright.dsl.parse.antlr.BandParserBaseVisitor;
import bandwright.dsl.syntax.GrooveProperty;
import bandwright.dsl.syntax.Property;

/** Grooves, and what fills them. */
final class GrooveBuilder extends BandParserBaseVisitor<GrooveProperty> {
    private final ExpressionBuilder expressions;

    GrooveBuilder(ExpressionBuilder expressions) {
        this.expressions = expressions;
    }

    @Override
    public GrooveProperty visitDepthThrough(BandParser.DepthThroughContext tree) {
        return new GrooveProperty.DepthThrough(Trees.span(tree));
    }

    @Override
    public GrooveProperty visitGrooveAmount(BandParser.GrooveAmountContext tree) {
        return new Property.Amount(Trees.word(tree.word), expressions.visit(tree.amount()), Trees.span(tree));
    }

    @Override
    public GrooveProperty visitFloorProfile(BandParser.FloorProfileContext tree) {
        return new GrooveProperty.FloorProfile(Trees.name(tree.name()), Trees.span(tree));
    }

    @Override
    public GrooveProperty visitAround(BandParser.AroundContext tree) {
        return around(tree, expressions);
    }

    @Override
    public GrooveProperty visitMade(BandParser.MadeContext tree) {
        return made(tree);
    }

    @Override
    public GrooveProperty visitEnding(BandParser.EndingContext tree) {
        return new GrooveProperty.Ending(tree.ending.getType() == BandParser.ROUND, Trees.span(tree));
    }

    @Override
    public GrooveProperty visitKeep(BandParser.KeepContext tree) {
        return new GrooveProperty.Keep(Trees.name(tree.kept), Trees.name(tree.metal), Trees.span(tree));
    }

    @Override
    public GrooveProperty visitLetInFrom(BandParser.LetInFromContext tree) {
        boolean fingertip = tree.side.getType() == BandParser.FINGERTIP;
        return new GrooveProperty.LetInFrom(fingertip, Trees.name(tree.name()), Trees.span(tree));
    }

    @Override
    public GrooveProperty visitLetInHalves(BandParser.LetInHalvesContext tree) {
        return new GrooveProperty.LetInHalves(expressions.visit(tree.amount()), Trees.span(tree));
    }

    @Override
    public GrooveProperty visitLetInCast(BandParser.LetInCastContext tree) {
        return new GrooveProperty.LetInCast(Trees.span(tree));
    }

    @Override
    public GrooveProperty visitJoined(BandParser.JoinedContext tree) {
        String joint = tree.joint.getText().toUpperCase(Locale.ROOT);
        return new GrooveProperty.Joined(GrooveProperty.Joint.valueOf(joint), Trees.span(tree));
    }

    @Override
    public GrooveProperty visitLeaving(BandParser.LeavingContext tree) {
        return new GrooveProperty.Leaving(Trees.names(tree.names().name()), Trees.span(tree));
    }

    @Override
    public GrooveProperty visitInside(BandParser.InsideContext tree) {
        return new GrooveProperty.Inside(Trees.span(tree));
    }

    static Property.Around around(BandParser.AroundContext tree, ExpressionBuilder expressions) {
        return new Property.Around(
                expressions.optional(tree.arc), expressions.optional(tree.centred), Trees.span(tree));
    }

    static Property.Made made(BandParser.MadeContext tree) {
        return new Property.Made(tree.BENCH() != null, Trees.span(tree));
    }
}
