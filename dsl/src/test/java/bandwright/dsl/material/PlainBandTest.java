// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.material;

import org.junit.jupiter.api.Test;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

class PlainBandTest {
    @Test
    void its_volume_is_an_outer_cylinder_less_an_inner_one() {
        PlainBand band = new PlainBand(18, 2, 5);
        assertThat(band.volumeMm3()).isCloseTo(Math.PI * (11 * 11 - 9 * 9) * 5, within(1e-9));
    }
}
