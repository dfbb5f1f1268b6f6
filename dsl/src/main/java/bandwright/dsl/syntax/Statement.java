// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.syntax;

/** One statement of a cell. */
public sealed interface Statement extends Node
        permits Band,
                Definition,
                Explain,
                Export,
                Find,
                Forget,
                Groove,
                Limit,
                Measured,
                MetalDefinition,
                Option,
                Profile,
                Prongs,
                Quote,
                Require,
                Seats,
                Sheet,
                Show,
                StoneMaterial,
                StoneRow,
                Title,
                Vary,
                View,
                WhatIf {
    <R> R accept(Visitor<R> visitor);

    /** One answer for each kind of statement. */
    interface Visitor<R> {
        R title(Title title);

        R definition(Definition definition);

        R profile(Profile profile);

        R band(Band band);

        R groove(Groove groove);

        R seats(Seats seats);

        R stoneRow(StoneRow stoneRow);

        R prongs(Prongs prongs);

        R metal(MetalDefinition metal);

        R stoneMaterial(StoneMaterial material);

        R forget(Forget forget);

        R show(Show show);

        R view(View view);

        R vary(Vary vary);

        R whatIf(WhatIf whatIf);

        R option(Option option);

        R find(Find find);

        R measured(Measured measured);

        R explain(Explain explain);

        R require(Require require);

        R limit(Limit limit);

        R quote(Quote quote);

        R export(Export export);

        R sheet(Sheet sheet);
    }
}
