// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.check;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import static bandwright.dsl.check.Bench.band;
import static bandwright.dsl.check.Bench.verdict;
import static org.assertj.core.api.Assertions.assertThat;

class ParcelChecksTest {
    private static String parcel(String tolerance, double clearance) {
        return band(4, 2) + "stone-row lights on shank { stone round diamond 1.5 mm" + tolerance
                + "  around 180 deg  spacing 0.1 mm  sink 0.2 mm }\n"
                + "cut seats for lights from shank { hole 0.8 mm  clearance " + clearance + " mm }";
    }

    @ParameterizedTest
    @CsvSource({"0.02, FAILED", "0.026, CLOSE", "0.04, PASSED"})
    void the_largest_stone_goes_into_its_bore(double clearance, Verdict verdict) {
        assertThat(verdict("parcel-bore", parcel(" within 0.05 mm", clearance))).isEqualTo(verdict);
    }

    @Test
    void what_is_missing_is_told_without_a_sign() {
        assertThat(Bench.one("parcel-bore", parcel(" within 0.05 mm", 0.02)).sentence())
                .isEqualTo("the largest stone of lights is 0.01 mm wider than its bore");
    }

    @ParameterizedTest
    @CsvSource({"0.06, FAILED", "0.048, CLOSE", "0.03, PASSED"})
    void two_largest_stones_stand_side_by_side(double tolerance, Verdict verdict) {
        assertThat(verdict("parcel-gap", parcel(" within " + tolerance + " mm", 0.04)))
                .isEqualTo(verdict);
    }

    @Test
    void a_parcel_nobody_tells_of_is_not_looked_at() {
        assertThat(verdict("parcel-bore", parcel("", 0.01))).isEqualTo(Verdict.NOT_LOOKED_AT);
    }

    @Test
    void the_largest_stones_are_nearest_where_stones_are() {
        String text = parcel(" within 0.06 mm", 0.04);

        assertThat(Bench.one("parcel-gap", text).place())
                .isEqualTo(Bench.one("stone-gap", text).place());
    }
}
