// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.kernel.session;

import java.net.InetAddress;
import java.net.Socket;
import java.net.SocketException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;

import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

import bandwright.kernel.protocol.Channel;
import bandwright.kernel.protocol.Client;
import bandwright.kernel.protocol.Json;
import bandwright.kernel.protocol.Message;

import static org.assertj.core.api.Assertions.assertThat;

/** Whatever comes in, the kernel answers the next honest request. */
class HostileFramesTest {
    private Desk desk;

    @BeforeEach
    void opens_a_desk() throws Exception {
        desk = new Desk();
    }

    @AfterEach
    void closes_it() {
        desk.close();
    }

    @ParameterizedTest
    @EnumSource(names = {"SHELL", "CONTROL"})
    void a_wrong_signature_is_dropped(Channel channel) throws Exception {
        List<byte[]> frames = honest();
        frames.get(1)[0] ^= 1;
        drops(channel, frames, "wrong signature");
    }

    @ParameterizedTest
    @EnumSource(names = {"SHELL", "CONTROL"})
    void a_changed_content_is_dropped(Channel channel) {
        List<byte[]> frames = honest();
        frames.set(5, bytes("{\"restart\": true}"));
        drops(channel, frames, "wrong signature");
    }

    @ParameterizedTest
    @EnumSource(names = {"SHELL", "CONTROL"})
    void no_signature_is_dropped(Channel channel) {
        List<byte[]> frames = honest();
        frames.set(1, new byte[0]);
        drops(channel, frames, "wrong signature");
    }

    @ParameterizedTest
    @EnumSource(names = {"SHELL", "CONTROL"})
    void too_few_frames_are_dropped(Channel channel) {
        drops(channel, honest().subList(0, 5), "too few");
    }

    @ParameterizedTest
    @EnumSource(names = {"SHELL", "CONTROL"})
    void a_single_frame_is_dropped(Channel channel) {
        drops(channel, List.of(bytes("hello")), "without a delimiter");
    }

    @ParameterizedTest
    @EnumSource(names = {"SHELL", "CONTROL"})
    void a_thousand_frames_in_front_are_dropped(Channel channel) {
        List<byte[]> frames = new ArrayList<>();
        for (int count = 0; count < 1000; count++) {
            frames.add(new byte[1]);
        }
        frames.addAll(honest());
        drops(channel, frames, "without a delimiter");
    }

    @ParameterizedTest
    @EnumSource(names = {"SHELL", "CONTROL"})
    void a_replayed_message_is_dropped(Channel channel) {
        List<byte[]> frames = honest();
        desk.client.send(Channel.SHELL, frames);
        desk.shell();
        drops(channel, frames, "came before");
    }

    @ParameterizedTest
    @EnumSource(names = {"SHELL", "CONTROL"})
    void parts_that_are_no_json_objects_are_dropped(Channel channel) throws Exception {
        for (String part : List.of("[1]", "{", "nonsense", "", "{} {}", "[".repeat(100_000), "\u0000")) {
            drops(channel, signed(part, "{}"), "dropped from");
        }
    }

    @ParameterizedTest
    @EnumSource(names = {"SHELL", "CONTROL"})
    void a_header_without_a_type_is_dropped(Channel channel) throws Exception {
        drops(channel, signed("{\"msg_id\": \"x\"}", "{}"), "without id or type");
        drops(channel, signed("{\"msg_id\": 3, \"msg_type\": []}", "{}"), "without id or type");
    }

    @ParameterizedTest
    @EnumSource(names = {"SHELL", "CONTROL", "STDIN"})
    void noise_is_dropped(Channel channel) {
        Random random = new Random(7);
        for (int count = 0; count < 200; count++) {
            List<byte[]> frames = new ArrayList<>();
            for (int frame = random.nextInt(9); frame >= 0; frame--) {
                byte[] noise = new byte[random.nextInt(40)];
                random.nextBytes(noise);
                frames.add(random.nextInt(4) == 0 ? bytes("<IDS|MSG>") : noise);
            }
            desk.client.send(channel, frames);
        }
        assertThat(desk.run("show 1 mm").status()).isEqualTo("ok");
        assertThat(desk.control("kernel_info_request", Json.object()).type()).isEqualTo("kernel_info_reply");
    }

    @ParameterizedTest
    @EnumSource
    void noise_on_the_bare_port_is_survived(Channel channel) throws Exception {
        Random random = new Random(11);
        int port = desk.connection.ports().getOrDefault(channel, 0);
        for (int count = 0; count < 30; count++) {
            try (Socket socket = new Socket(InetAddress.getLoopbackAddress(), port)) {
                byte[] noise = new byte[random.nextInt(300)];
                random.nextBytes(noise);
                // Some begin as an honest greeting does, to get further.
                byte[] greeting = {(byte) 0xFF, 0, 0, 0, 0, 0, 0, 0, 1, 0x7F, 3, 0, 'N', 'U', 'L', 'L'};
                System.arraycopy(greeting, 0, noise, 0, count % 2 == 0 ? 0 : Math.min(noise.length, greeting.length));
                socket.getOutputStream().write(noise);
                socket.getOutputStream().flush();
            } catch (SocketException closed) {
                desk.log.add("the kernel closed a line");
            }
        }
        assertThat(desk.run("show 1 mm").status()).isEqualTo("ok");
        assertThat(desk.control("kernel_info_request", Json.object()).type()).isEqualTo("kernel_info_reply");
        desk.client.send(Channel.HB, List.of(new byte[] {'p'}));
        assertThat(desk.client.receive(Channel.HB, 5 * Desk.SECONDS)).hasSize(1);
    }

    @ParameterizedTest
    @EnumSource(names = {"SHELL"})
    void half_a_surrogate_pair_is_survived(Channel channel) {
        Desk.Told told = desk.run("show \ud83d");

        assertThat(told.status()).isEqualTo("error");
        assertThat(desk.run("show 1 mm").status()).isEqualTo("ok");
    }

    private List<byte[]> honest() {
        Message message = desk.client.message("kernel_info_request", Json.object(), Json.object());
        return new ArrayList<>(desk.client.frames(message));
    }

    /** Frames that are signed rightly, whatever their parts. */
    private List<byte[]> signed(String header, String content) throws Exception {
        List<byte[]> parts = List.of(bytes(header), bytes("{}"), bytes("{}"), bytes(content));
        javax.crypto.Mac mac = javax.crypto.Mac.getInstance("HmacSHA256");
        mac.init(new javax.crypto.spec.SecretKeySpec(bytes("a key"), "HmacSHA256"));
        parts.forEach(mac::update);
        List<byte[]> frames = new ArrayList<>(
                List.of(bytes("<IDS|MSG>"), bytes(java.util.HexFormat.of().formatHex(mac.doFinal()))));
        frames.addAll(parts);
        return frames;
    }

    private void drops(Channel channel, List<byte[]> frames, String reason) {
        desk.log.clear();
        try (Client other = new Client(desk.connection)) {
            other.send(channel, frames);
            other.send(channel, "kernel_info_request", Json.object());

            // The first thing that comes back answers the honest request: the other got no answer.
            Message answer = other.message(channel, 5 * Desk.SECONDS).orElseThrow();
            assertThat(answer.type()).isEqualTo("kernel_info_reply");
            assertThat(other.message(channel, 50)).isEmpty();
        }
        assertThat(desk.log).hasSize(1).first().asString().contains(reason);
    }

    private static byte[] bytes(String text) {
        return text.getBytes(StandardCharsets.UTF_8);
    }
}
