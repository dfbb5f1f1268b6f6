// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.view;

import java.util.List;
import java.util.Map;

import org.junit.jupiter.api.Test;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

class JsonTest {
    @Test
    void text_can_stand_inside_of_a_page() {
        assertThat(Json.write(Map.of("a</script>", "\"b\" & \\\n\u2028\ud83d\udc8d ü")))
                .isEqualTo("{\"a\\u003c/script\\u003e\":\"\\\"b\\\" \\u0026 \\\\\\u000a\\u2028\\ud83d\\udc8d ü\"}");
    }

    @Test
    void numbers_have_no_exponent_and_no_negative_zero() {
        assertThat(Json.write(List.of(
                        Json.number(1e-7),
                        Json.number(-0.0),
                        Json.number(1 / 3.0),
                        Json.number(1200),
                        Json.exact(0.1f))))
                .isEqualTo("[0.0000001,0,0.333333333,1200,0.100000001490116119384765625]");
    }

    @Test
    void what_is_no_part_of_a_tree_is_our_fault() {
        assertThatThrownBy(() -> Json.write(List.of(0.5))).isInstanceOf(IllegalArgumentException.class);
    }
}
