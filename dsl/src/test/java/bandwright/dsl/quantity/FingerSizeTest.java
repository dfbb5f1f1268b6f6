// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.quantity;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

class FingerSizeTest {
    private static final FingerSize US_7 = new FingerSize(SizeSystem.US, 7);

    @ParameterizedTest
    @CsvSource({
        "US, 7, US 7",
        "US, 7.25, US 7 1/4",
        "US, 0.5, US 1/2",
        "US, 0, US 0",
        "US, 7.1, US 7.1",
        "UK, 14, UK N",
        "UK, 14.5, UK N 1/2",
        "UK, 26.5, UK Z 1/2",
        "UK, 27, UK Z+1",
        "UK, 27.5, UK Z+1 1/2",
        "UK, 14.3, UK N + 0.3",
        "UK, 0.5, UK A - 0.5",
        "ISO, 57, ISO 57",
        "ISO, 54.4, ISO 54.4",
        "JP, 14, JP 14",
        "CH, 14, CH 14",
        "DE, 17.25, DE 17.25",
        "DE, 17.00049, DE 17",
    })
    void is_written_as_the_language_writes_it(SizeSystem system, double number, String text) {
        assertThat(new FingerSize(system, number)).hasToString(text);
    }

    @Test
    void one_finger_in_all_systems() {
        // By the six formulas: 25.4 (0.458 + 0.032 x 7) = 17.3228 mm, times pi.
        assertThat(US_7.diameterMm()).isCloseTo(17.3228, within(1e-10));
        assertThat(US_7.in(SizeSystem.ISO).number()).isCloseTo(54.4212, within(5e-5));
        assertThat(US_7.in(SizeSystem.CH).number()).isCloseTo(14.4212, within(5e-5));
        assertThat(US_7.in(SizeSystem.DE).number()).isCloseTo(17.3228, within(1e-10));
        assertThat(US_7.in(SizeSystem.UK).number()).isCloseTo(14.537, within(5e-4));
        assertThat(US_7.in(SizeSystem.JP).number()).isCloseTo(13.9684, within(5e-5));
    }

    @Test
    void the_nearest_size_that_is_made() {
        assertThat(US_7.nearestStandard(SizeSystem.UK)).hasToString("UK N 1/2");
        assertThat(US_7.nearestStandard(SizeSystem.ISO)).hasToString("ISO 54");
        assertThat(US_7.nearestStandard(SizeSystem.JP)).hasToString("JP 14");
        assertThat(US_7.nearestStandard(SizeSystem.CH)).hasToString("CH 14");
        assertThat(US_7.nearestStandard(SizeSystem.DE)).hasToString("DE 17.25");
        assertThat(new FingerSize(SizeSystem.ISO, 54).nearestStandard(SizeSystem.US))
                .hasToString("US 6 3/4");
        assertThat(new FingerSize(SizeSystem.ISO, 54.5).nearestStandard(SizeSystem.ISO))
                .hasToString("ISO 55");
    }

    @ParameterizedTest
    @EnumSource
    void there_and_back_is_the_same_finger(SizeSystem system) {
        assertThat(US_7.in(system).in(SizeSystem.US).number()).isCloseTo(7, within(1e-12));
    }

    @Test
    void steps_are_the_systems_own() {
        assertThat(US_7.plus(0.25)).hasToString("US 7 1/4");
        assertThat(new FingerSize(SizeSystem.UK, 14).plus(1)).hasToString("UK O");
        FingerSize iso = new FingerSize(SizeSystem.ISO, 54);
        assertThat(iso.plus(1).circumferenceMm() - iso.circumferenceMm()).isEqualTo(1);
        FingerSize de = new FingerSize(SizeSystem.DE, 17);
        assertThat(de.plus(1).diameterMm() - de.diameterMm()).isCloseTo(1, within(1e-12));
        assertThat(US_7.minus(0.5)).hasToString("US 6 1/2");
    }

    @Test
    void sizes_of_one_system_subtract_and_others_do_not() {
        assertThat(new FingerSize(SizeSystem.US, 8.5).minus(US_7)).isEqualTo(1.5);
        FingerSize iso = new FingerSize(SizeSystem.ISO, 54);
        assertThatThrownBy(() -> US_7.minus(iso)).isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void sizes_compare_by_circumference() {
        assertThat(US_7).isGreaterThan(new FingerSize(SizeSystem.ISO, 54));
        assertThat(US_7).isLessThan(new FingerSize(SizeSystem.ISO, 55));
        assertThat(new FingerSize(SizeSystem.CH, 14)).isEqualByComparingTo(new FingerSize(SizeSystem.ISO, 54));
    }

    @ParameterizedTest
    @EnumSource
    void every_system_says_where_it_comes_from(SizeSystem system) {
        assertThat(system.word()).isEqualTo(system.name());
        assertThat(system.fullName()).isNotBlank();
        assertThat(system.standard()).isNotBlank();
        assertThat(system.formula()).contains("=");
        assertThat(SizeSystem.UK.caution()).isPresent();
    }

    @Test
    void a_size_no_finger_has_says_so_with_the_numbers() {
        assertThat(new FingerSize(SizeSystem.US, 400).problem())
                .hasValue("US 400 would be an inner diameter of 336.753 mm; fingers lie between 10 mm and 35 mm");
        assertThat(new FingerSize(SizeSystem.US, Double.NaN).problem()).isPresent();
        assertThat(US_7.problem()).isEmpty();
        assertThat(new FingerSize(SizeSystem.CH, 0).problem()).hasValue("CH sizes start at 1");
        assertThat(US_7.minus(8).problem()).hasValue("US sizes start at 0");
    }
}
