// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.design.host;

import java.nio.file.Path;
import java.util.Optional;

import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;

import bandwright.design.Design;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

class HostsTest {
    private final Host first = new Nobody();
    private final Host second = new Nobody();

    @AfterEach
    void leaves_none() {
        Hosts.remove(first);
        Hosts.remove(second);
    }

    @Test
    void a_cell_that_has_ended_is_no_host_any_more() {
        Hosts.put(first);
        assertThat(Hosts.current()).isSameAs(first);

        Hosts.remove(first);

        assertThatThrownBy(Hosts::current)
                .isInstanceOf(IllegalStateException.class)
                .hasMessageContaining("no cell is running");
    }

    /** The thread of a given-up cell may come to its end while another cell runs. */
    @Test
    void a_given_up_cell_that_ends_late_leaves_the_cell_that_runs_by_then_its_place() {
        Hosts.put(first);
        Hosts.put(second);

        Hosts.remove(first);

        assertThat(Hosts.current()).isSameAs(second);
    }

    @Test
    void a_function_for_ring_text_reaches_no_host() {
        Hosts.put(first);

        assertThatThrownBy(() -> Stop.function(Hosts::current))
                .isInstanceOf(IllegalStateException.class)
                .hasMessageContaining("a function for ring text");
        assertThat(Hosts.current()).isSameAs(first);
    }

    private static final class Nobody implements Host {
        @Override
        public Design design() {
            throw new UnsupportedOperationException();
        }

        @Override
        public void display(@Nullable Object value) {}

        @Override
        public Optional<String> ask(String prompt, boolean hidden) {
            return Optional.empty();
        }

        @Override
        public void jar(Path file) {}
    }
}
