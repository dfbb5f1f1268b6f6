// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.material;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

class MetalCatalogueTest {
    @ParameterizedTest
    @CsvSource({
        "red-gold-585, 13.24",
        "red-gold-585-ag200, 13.6",
        "rose-gold-585, 13.6",
        "yellow-gold-585, 13.92",
        "yellow-gold-750, 15.53",
        "rose-gold-750, 15.315",
        "white-gold-585-pd, 14.76",
        "white-gold-750-pd, 16.428",
        "white-gold-750-ni, 14.64",
        "platinum-950-ru, 20.7",
        "platinum-950-co, 20.027",
        "silver-925, 10.36",
        "palladium-950, 12",
        "titanium-grade-2, 4.51",
    })
    void metals_are_found_by_name(String name, double density) {
        assertThat(metal(name).densityGPerCm3()).isCloseTo(density, within(0.0006));
    }

    @Test
    void every_alloy_with_a_density_has_a_name() {
        List<OutsideData.Row> rows = OutsideData.rows("alloys.csv");
        assertThat(MetalCatalogue.all()).hasSameSizeAs(rows);
        for (int i = 0; i < rows.size(); i++) {
            Metal metal = MetalCatalogue.all().get(i);
            assertThat(metal.densityGPerCm3())
                    .as(metal.name())
                    .isCloseTo(rows.get(i).number("density_use_gcm3"), within(0.006));
        }
    }

    @Test
    void names_are_words_of_the_language_and_none_is_there_twice() {
        assertThat(MetalCatalogue.names())
                .doesNotHaveDuplicates()
                .allMatch(name -> name.matches("[a-z][a-z0-9]*(-[a-z0-9]+)*"))
                .allSatisfy(name -> assertThat(MetalCatalogue.find(name)).isPresent());
        assertThat(MetalCatalogue.find("Red-gold-585")).isEmpty();
    }

    @Test
    void a_precious_metals_recipe_is_as_fine_as_its_mark() {
        for (Metal metal : MetalCatalogue.all()) {
            Integer fineness = metal.fineness();
            if (fineness == null || metal.composition().isEmpty()) {
                continue;
            }
            Element main = Elements.find(metal.family()).orElseThrow();
            // A mark is a whole number in a thousand: 91.67 % is 917.
            assertThat(metal.composition().getOrDefault(main, 0.0) * 1000)
                    .as(metal.name())
                    .isGreaterThanOrEqualTo(fineness - 0.5);
        }
    }

    @Test
    void recipes_of_a_mark_are_all_of_them() {
        assertThat(MetalCatalogue.recipes("585"))
                .extracting(Metal::name)
                .contains("red-gold-585", "rose-gold-585", "yellow-gold-585", "white-gold-585-pd", "green-gold-585");
        assertThat(MetalCatalogue.recipes("18K"))
                .isEqualTo(MetalCatalogue.recipes("750"))
                .hasSizeGreaterThan(10);
        assertThat(MetalCatalogue.recipes("14ct")).extracting(Metal::fineness).containsOnly(580, 583, 585);
        assertThat(MetalCatalogue.recipes("950")).extracting(Metal::name).contains("platinum-950-ru", "palladium-950");
        assertThat(MetalCatalogue.recipes("586")).isEmpty();
    }

    @Test
    void every_metal_says_where_its_figures_come_from() {
        assertThat(MetalCatalogue.all()).allSatisfy(metal -> {
            assertThat(metal.sources())
                    .isNotEmpty()
                    .allSatisfy(source -> assertThat(source.text()).isNotBlank());
            assertThat(metal.densityGPerCm3()).isBetween(4.0, 22.6);
            assertThat(metal.title()).isNotBlank();
        });
        assertThat(metal("white-gold-585-pd").sources().get(0).text()).startsWith("Gold alloys to GOST");
        assertThat(metal("platinum-950-co").densityOrigin()).isEqualTo(DensityOrigin.MIXING_RULE);
        assertThat(metal("palladium-950").densityOrigin()).isEqualTo(DensityOrigin.OTHER_RECIPE);
    }

    @Test
    void nickel_is_known_or_said_to_be_unknown() {
        assertThat(metal("white-gold-750-ni").nickel()).isEqualTo(Nickel.YES);
        assertThat(metal("white-gold-585-pd").nickel()).isEqualTo(Nickel.NO);
        assertThat(metal("white-gold-585-caster").nickel()).isEqualTo(Nickel.UNKNOWN);
        assertThat(MetalCatalogue.all())
                .filteredOn(metal -> Nickel.of(metal.composition()) == Nickel.YES)
                .allMatch(metal -> metal.nickel() == Nickel.YES);
    }

    @Test
    void melting_ranges_are_in_order() {
        assertThat(MetalCatalogue.all()).allSatisfy(metal -> {
            Double solidus = metal.solidusC();
            Double liquidus = metal.liquidusC();
            assertThat(solidus == null).isEqualTo(liquidus == null);
            if (solidus != null && liquidus != null) {
                assertThat(solidus).isLessThanOrEqualTo(liquidus);
            }
        });
    }

    @Test
    void colours_keep_red_yellow_and_white_apart() {
        LinearColour red = metal("red-gold-585").picture();
        LinearColour yellow = metal("yellow-gold-750").picture();
        LinearColour white = metal("white-gold-750-pd").picture();
        assertThat(red.green()).isLessThan(yellow.green() - 0.02);
        assertThat(white.blue()).isGreaterThan(yellow.blue() + 0.1);
        assertThat(metal("white-gold-585-caster").picture())
                .isEqualTo(metal("white-gold-585-pd").picture());
        assertThat(MetalCatalogue.all()).noneMatch(metal -> metal.picture().equals(MetalColour.UNKNOWN));
    }

    @Test
    void own_metals_by_recipe_follow_the_mixing_rule() {
        Map<Element, Double> recipe = recipe(0.585, 0.2, 0.215);
        assertThat(MixingRule.problem(recipe)).isEmpty();
        Metal metal = OwnMetal.ofComposition("my-alloy", recipe);
        assertThat(metal.densityGPerCm3()).isCloseTo(13.629, within(0.0005));
        assertThat(metal.fineness()).isEqualTo(585);
        assertThat(metal.nickel()).isEqualTo(Nickel.NO);
        assertThat(metal.densityOrigin()).isEqualTo(DensityOrigin.MIXING_RULE);
    }

    @Test
    void own_metals_by_density_know_nothing_else() {
        Metal metal = OwnMetal.ofDensity("my-alloy", 13.1);
        assertThat(metal.densityGPerCm3()).isEqualTo(13.1);
        assertThat(metal.nickel()).isEqualTo(Nickel.UNKNOWN);
        assertThat(metal.fineness()).isNull();
    }

    @Test
    void slips_in_own_metals_are_told() {
        assertThat(MixingRule.problem(recipe(0.585, 0.2, 0.2))).hasValue("the shares add up to 98.50 %, not to 100 %");
        assertThat(MixingRule.problem(recipe(1, 0, 0))).hasValue("the share of silver must be more than 0 %");
        assertThat(MixingRule.problem(Map.of())).isPresent();
        assertThat(OwnMetal.problem(131))
                .hasValue("a density of 131.0 g/cm^3 is no metal's; they lie between 0.5 and 22.6 g/cm^3");
        assertThat(OwnMetal.problem(13.1)).isEmpty();
    }

    private static Metal metal(String name) {
        return MetalCatalogue.find(name).orElseThrow();
    }

    private static Map<Element, Double> recipe(double gold, double silver, double copper) {
        Map<Element, Double> recipe = new LinkedHashMap<>();
        recipe.put(Elements.find("gold").orElseThrow(), gold);
        recipe.put(Elements.find("silver").orElseThrow(), silver);
        recipe.put(Elements.find("Cu").orElseThrow(), copper);
        return recipe;
    }
}
