// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.kernel.protocol;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

class ConnectionTest {
    private static final String FILE = """
            {"shell_port": 5001, "iopub_port": 5002, "stdin_port": 5003, "control_port": 5004, "hb_port": 5005,
             "ip": "127.0.0.1", "key": "k", "transport": "tcp", "signature_scheme": "hmac-sha256", "kernel_name": ""}
            """;

    @Test
    void a_file_says_where_to_listen() throws Exception {
        Connection connection = Connection.read(FILE);

        assertThat(connection.address(Channel.HB)).isEqualTo("tcp://127.0.0.1:5005");
        assertThat(connection.signature().signs()).isTrue();
    }

    @Test
    void an_address_of_the_sixth_version_is_bracketed() throws Exception {
        assertThat(Connection.read(FILE.replace("127.0.0.1", "::1")).address(Channel.SHELL))
                .isEqualTo("tcp://[::1]:5001");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "\"tcp\"|\"ipc\"|tcp only",
                "5003|5001|same port",
                "5003|70000|no port number under stdin_port",
                "5003|\"x\"|no port number under stdin_port",
                "hmac-sha256|hmac-md4|does not know",
                "{|[|no JSON",
            })
    void what_cannot_be_done_is_said_in_a_sentence(String part, String other, String words) {
        ConnectionFault fault =
                catchThrowableOfType(ConnectionFault.class, () -> Connection.read(FILE.replace(part, other)));

        assertThat(fault.sentence()).contains(words);
    }

    @Test
    void a_port_that_is_taken_is_said_in_a_sentence() throws Exception {
        Connection connection = Connection.onFreePorts("k");
        try (Sockets first = Sockets.open(connection, new Stamp(), (channel, message) -> {}, line -> {})) {
            ConnectionFault fault = catchThrowableOfType(
                    ConnectionFault.class,
                    () -> Sockets.open(connection, new Stamp(), (channel, message) -> {}, line -> {}));

            assertThat(fault.sentence()).contains("cannot listen at tcp://127.0.0.1:");
            assertThat(first).isNotNull();
        }
    }
}
