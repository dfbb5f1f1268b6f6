// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.kernel.catalogue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

class OverTest {
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "breadth | breadth",
                "breadth=3 mm..8 mm step 0.1 mm | breadth from 3 mm to 8 mm step 0.1 mm",
                "breadth = 3 mm .. 8 mm | breadth from 3 mm to 8 mm",
                "breadth=3..8 mm step 0.1 mm | breadth from 3 mm to 8 mm step 0.1 mm",
                "breadth=3.5..8.5 mm | breadth from 3.5 mm to 8.5 mm",
                "finger-size=US 3..13 step 1/4 | finger-size from US 3 to US 13 step 1/4",
                "finger-size=US 3..US 13 | finger-size from US 3 to US 13",
                "finger-size=UK J..UK T 1/2 | finger-size from UK J to UK T 1/2",
                "finger-size=UK H..Q | finger-size from UK H to UK Q",
                "count=3..8 | count from 3 to 8",
                "alloy=red-gold-585, silver-925 | alloy over red-gold-585, silver-925",
                "breadth=4 mm | breadth over 4 mm",
            })
    void ranges_as_people_write_them_become_axes_of_the_language(String given, String axis) throws CatalogueFault {
        assertThat(Over.of(given).axis()).isEqualTo(axis);
    }

    @Test
    void a_name_or_a_range_that_is_missing_is_told() {
        for (String wrong : new String[] {"", "=3..4", "breadth="}) {
            assertThatThrownBy(() -> Over.of(wrong)).hasMessageContaining("--over takes NAME=RANGE");
        }
    }
}
