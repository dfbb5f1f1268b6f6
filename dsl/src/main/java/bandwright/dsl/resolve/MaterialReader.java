// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.resolve;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;

import bandwright.dsl.diagnostic.Diagnostic;
import bandwright.dsl.diagnostic.NearNames;
import bandwright.dsl.material.Element;
import bandwright.dsl.material.Elements;
import bandwright.dsl.material.Metal;
import bandwright.dsl.material.MixingRule;
import bandwright.dsl.material.OwnMetal;
import bandwright.dsl.material.StoneMaterial;
import bandwright.dsl.quantity.Dimension;
import bandwright.dsl.syntax.Block;
import bandwright.dsl.syntax.MetalDefinition;
import bandwright.dsl.syntax.MetalProperty;
import bandwright.dsl.syntax.Name;
import bandwright.dsl.syntax.Property;

/** Metals and stone materials of one's own. */
final class MaterialReader extends Reader {
    /** Densities are kept in g/mm^3 and spoken of in g/cm^3. */
    private static final double CUBIC_MM = 1000;

    MaterialReader(Resolution design, Entry entry) {
        super(design, entry);
    }

    Metal metal() {
        Block<MetalProperty> block = ((MetalDefinition) entry.statement()).block();
        Property.Amount density = block.amount(Property.Word.DENSITY);
        List<MetalProperty.Share> shares = block.properties().stream()
                .filter(MetalProperty.Share.class::isInstance)
                .map(MetalProperty.Share.class::cast)
                .toList();
        if (density != null && !shares.isEmpty()) {
            oneOnly(density, shares.get(0));
        } else if (density == null && shares.isEmpty()) {
            missing("recipe or density", "density 13.1 g/cm^3");
        }
        faults.raise();
        return density != null ? ofDensity(density) : ofShares(shares);
    }

    private Metal ofDensity(Property.Amount density) {
        double said = density(density, OwnMetal::problem);
        faults.raise();
        return OwnMetal.ofDensity(name(), said);
    }

    StoneMaterial stone() {
        var block = ((bandwright.dsl.syntax.StoneMaterial) entry.statement()).block();
        Property.Amount density = block.amount(Property.Word.DENSITY);
        double said = 0;
        if (density == null) {
            missing("density", "density 5.8 g/cm^3");
        } else {
            said = density(density, StoneMaterial::problem);
        }
        faults.raise();
        return StoneMaterial.ofDensity(name(), said);
    }

    /** In g/cm^3. */
    private double density(Property.Amount density, Function<Double, Optional<String>> check) {
        double said = amount("density", density.value(), Dimension.DENSITY, Sign.POSITIVE) * CUBIC_MM;
        // 13.1 g/cm^3 comes back from g/mm^3 as 13.100000000000001.
        double rounded = Double.isFinite(said) ? Math.rint(said * 1e9) / 1e9 : said;
        if (Double.isFinite(rounded)) {
            check.apply(rounded)
                    .ifPresent(problem -> faults.add(Diagnostic.error("density-refused", place(density.value()))
                            .with(problem)));
        }
        return rounded;
    }

    private Metal ofShares(List<MetalProperty.Share> shares) {
        Map<Element, Double> composition = new LinkedHashMap<>();
        for (MetalProperty.Share share : shares) {
            double part = amount(share.word(), share.share(), Dimension.NUMBER, Sign.POSITIVE);
            element(share.element()).ifPresent(element -> composition.merge(element, part, Double::sum));
        }
        faults.raise();
        MixingRule.problem(composition)
                .ifPresent(problem -> faults.add(
                        Diagnostic.error("recipe-refused", entry.place()).with(problem)));
        faults.raise();
        return OwnMetal.ofComposition(name(), composition);
    }

    private Optional<Element> element(Name name) {
        Optional<Element> element = Elements.find(name.text());
        if (element.isEmpty()) {
            List<String> words = Elements.all().stream().map(Element::name).toList();
            List<String> near = NearNames.nearest(name.text(), words);
            Diagnostic.Builder fault =
                    Diagnostic.error("unknown-element", place(name)).with(name.text());
            if (near.isEmpty()) {
                fault.expected(String.join(", ", words));
            } else {
                fault.suggest(place(name), near.get(0));
            }
            faults.add(fault);
        }
        return element;
    }
}
