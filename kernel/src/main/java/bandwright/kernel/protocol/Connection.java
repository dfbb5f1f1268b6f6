// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.kernel.protocol;

import java.io.IOException;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;

/**
 * What a connection file says.
 *
 * @param host an address of this machine, or {@code *} for all
 * @param ports one for each channel, 1 to 65535
 * @param signature how messages are signed
 */
public record Connection(String host, Map<Channel, Integer> ports, Signature signature) {
    private static final int HIGHEST_PORT = 65_535;

    public Connection {
        ports = Map.copyOf(ports);
    }

    /** Reads the text of a connection file. */
    public static Connection read(String text) throws ConnectionFault {
        ObjectNode file;
        try {
            file = Json.parse(text);
        } catch (MalformedMessage failure) {
            throw new ConnectionFault("the connection file holds " + failure.reason());
        }
        String transport = file.path("transport").asText("tcp");
        if (!transport.equals("tcp")) {
            throw new ConnectionFault("the connection file asks for transport '" + transport
                    + "'; this kernel speaks tcp only, so start it with transport tcp");
        }
        Map<Channel, Integer> ports = new EnumMap<>(Channel.class);
        for (Channel channel : Channel.values()) {
            ports.put(channel, port(file, channel));
        }
        if (new HashSet<>(ports.values()).size() < ports.size()) {
            throw new ConnectionFault("the connection file gives two channels the same port");
        }
        String scheme = file.path("signature_scheme").asText("hmac-sha256");
        return new Connection(
                file.path("ip").asText("127.0.0.1"),
                ports,
                Signature.of(scheme, file.path("key").asText("")));
    }

    /** One on this machine alone, on ports that nobody uses now. */
    public static Connection onFreePorts(String key) throws IOException, ConnectionFault {
        Map<Channel, Integer> ports = new EnumMap<>(Channel.class);
        List<ServerSocket> taken = new ArrayList<>();
        try {
            for (Channel channel : Channel.values()) {
                // All are held until the last is found, so that none is found twice.
                ServerSocket socket = new ServerSocket(0, 1, InetAddress.getLoopbackAddress());
                taken.add(socket);
                ports.put(channel, socket.getLocalPort());
            }
        } finally {
            for (ServerSocket socket : taken) {
                socket.close();
            }
        }
        return new Connection("127.0.0.1", ports, Signature.of("hmac-sha256", key));
    }

    private static int port(ObjectNode file, Channel channel) throws ConnectionFault {
        String key = channel.name().toLowerCase(Locale.ROOT) + "_port";
        JsonNode port = file.path(key);
        if (!port.canConvertToInt() || port.asInt() < 1 || port.asInt() > HIGHEST_PORT) {
            throw new ConnectionFault("the connection file has no port number under " + key);
        }
        return port.asInt();
    }

    String address(Channel channel) {
        String bracketed = host.contains(":") && !host.startsWith("[") ? "[" + host + "]" : host;
        return "tcp://" + bracketed + ":" + ports.get(channel);
    }
}
