// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.parse;

import java.util.List;

import bandwright.dsl.parse.antlr.BandParser;
import bandwright.dsl.parse.antlr.BandParserBaseVisitor;
import bandwright.dsl.syntax.BandProperty;
import bandwright.dsl.syntax.MetalProperty;
import bandwright.dsl.syntax.Property;
import bandwright.dsl.syntax.StoneMaterialProperty;

/** Bands and what they are made of. */
final class BandBuilder extends BandParserBaseVisitor<BandProperty> {
    private final ExpressionBuilder expressions;

    BandBuilder(ExpressionBuilder expressions) {
        this.expressions = expressions;
    }

    @Override
    public BandProperty visitFinger(BandParser.FingerContext tree) {
        return new BandProperty.Finger(
                expressions.visit(tree.size),
                expressions.optional(tree.more),
                tree.SYSTEM() == null ? null : tree.SYSTEM().getText(),
                Trees.span(tree));
    }

    @Override
    public BandProperty visitProfiles(BandParser.ProfilesContext tree) {
        List<BandProperty.Station> stations = Trees.list(
                tree.station(),
                station -> new BandProperty.Station(
                        Trees.name(station.name()), expressions.optional(station.amount()), Trees.span(station)));
        return new BandProperty.Profiles(stations, Trees.span(tree));
    }

    @Override
    public BandProperty visitMetalChoice(BandParser.MetalChoiceContext tree) {
        return new BandProperty.Metal(Trees.name(tree.name()), Trees.span(tree));
    }

    MetalProperty metal(BandParser.MetalPropertyContext tree) {
        if (tree instanceof BandParser.ShareContext share) {
            return new MetalProperty.Share(
                    Trees.name(share.name()), expressions.visit(share.amount()), Trees.span(share));
        }
        BandParser.MetalAmountContext amount = (BandParser.MetalAmountContext) tree;
        return new Property.Amount(Trees.word(amount.word), expressions.visit(amount.amount()), Trees.span(amount));
    }

    StoneMaterialProperty material(BandParser.MaterialPropertyContext tree) {
        return new Property.Amount(Trees.word(tree.word), expressions.visit(tree.amount()), Trees.span(tree));
    }
}
