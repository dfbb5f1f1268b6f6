// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.kernel.protocol;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

import org.zeromq.SocketType;
import org.zeromq.ZContext;
import org.zeromq.ZMQ;

import com.fasterxml.jackson.databind.node.ObjectNode;

/** The other end: a client of a kernel, for rehearsals and tests. For one thread. */
public final class Client implements AutoCloseable {
    private final ZContext context = new ZContext();
    private final Map<Channel, ZMQ.Socket> sockets = new EnumMap<>(Channel.class);
    private final Stamp stamp = new Stamp();
    private final Wire wire;

    public Client(Connection connection) {
        this.wire = new Wire(connection.signature());
        context.setLinger(0);
        for (Channel channel : Channel.values()) {
            ZMQ.Socket socket = context.createSocket(type(channel));
            socket.setRcvHWM(0);
            socket.setSndHWM(0);
            // Kernels answer questions on stdin to whom has the same name there as on shell.
            if (channel == Channel.SHELL || channel == Channel.STDIN) {
                socket.setIdentity(("client-" + System.identityHashCode(this)).getBytes(ZMQ.CHARSET));
            }
            if (channel == Channel.IOPUB) {
                socket.subscribe("");
            }
            socket.connect(connection.address(channel));
            sockets.put(channel, socket);
        }
    }

    private static SocketType type(Channel channel) {
        return switch (channel) {
            case SHELL, CONTROL, STDIN -> SocketType.DEALER;
            case IOPUB -> SocketType.SUB;
            case HB -> SocketType.REQ;
        };
    }

    /** A message that is ready to be sent. */
    public Message message(String type, ObjectNode content, ObjectNode metadata) {
        return stamp.request(type, content, metadata);
    }

    /** Its frames, signed. */
    public List<byte[]> frames(Message message) {
        return wire.write(message);
    }

    public void send(Channel channel, List<byte[]> frames) {
        ZMQ.Socket socket = socket(channel);
        for (int at = 0; at < frames.size(); at++) {
            socket.send(frames.get(at), at < frames.size() - 1 ? ZMQ.SNDMORE : 0);
        }
    }

    /** Sends a message and gives its id. */
    public String send(Channel channel, String type, ObjectNode content) {
        return send(channel, message(type, content, Json.object()));
    }

    /** Sends a message and gives its id. */
    public String send(Channel channel, Message message) {
        send(channel, frames(message));
        return message.header().path("msg_id").asText();
    }

    /** The frames of the next message; none if nothing comes in time. */
    public List<byte[]> receive(Channel channel, int milliseconds) {
        ZMQ.Socket socket = socket(channel);
        socket.setReceiveTimeOut(milliseconds);
        byte[] frame = socket.recv();
        if (frame == null) {
            return List.of();
        }
        List<byte[]> frames = new ArrayList<>(List.of(frame));
        while (socket.hasReceiveMore()) {
            frames.add(socket.recv());
        }
        return frames;
    }

    /** The next message; nothing if none comes in time. One that is malformed or signed wrongly is a failure. */
    public Optional<Message> message(Channel channel, int milliseconds) {
        List<byte[]> frames = receive(channel, milliseconds);
        try {
            return frames.isEmpty() ? Optional.empty() : Optional.of(wire.read(frames));
        } catch (MalformedMessage malformed) {
            throw new IllegalStateException(malformed);
        }
    }

    private ZMQ.Socket socket(Channel channel) {
        ZMQ.Socket socket = sockets.get(channel);
        if (socket == null) {
            throw new IllegalStateException("no socket for " + channel);
        }
        return socket;
    }

    @Override
    public void close() {
        context.close();
    }
}
