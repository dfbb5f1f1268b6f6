// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.kernel.protocol;

import java.nio.charset.StandardCharsets;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.function.BiConsumer;
import java.util.function.Consumer;

import org.zeromq.SocketType;
import org.zeromq.ZContext;
import org.zeromq.ZMQ;
import org.zeromq.ZMQException;

/** The five sockets of a kernel. */
public final class Sockets implements AutoCloseable {
    /** Messages kept for a client that does not read; what comes beyond is lost to it, and only to it. */
    private static final int KEPT_FOR_SLOW = 100_000;

    private static final long LARGEST_BYTES = 32L * 1000 * 1000;
    private static final int LINGER_MS = 300;

    private final ZContext context = new ZContext();
    private final Map<Channel, SocketThread> threads = new EnumMap<>(Channel.class);
    private final Connection connection;
    private final Wire wire;
    private final Stamp stamp;
    private final BiConsumer<Channel, Message> received;
    private final Consumer<String> log;

    private Sockets(Connection connection, Stamp stamp, BiConsumer<Channel, Message> received, Consumer<String> log) {
        this.connection = connection;
        this.wire = new Wire(connection.signature());
        this.stamp = stamp;
        this.received = received;
        this.log = log;
        context.setLinger(LINGER_MS);
    }

    /**
     * Opens all sockets and listens.
     *
     * @param received hears each message that is well-formed and rightly signed, on the thread of its socket; must be quick
     * @param log hears, in a sentence, of what was dropped
     */
    public static Sockets open(
            Connection connection, Stamp stamp, BiConsumer<Channel, Message> received, Consumer<String> log)
            throws ConnectionFault {
        Sockets sockets = new Sockets(connection, stamp, received, log);
        try {
            for (Channel channel : Channel.values()) {
                sockets.bind(channel);
            }
        } catch (ConnectionFault fault) {
            sockets.context.close();
            throw fault;
        }
        sockets.threads.values().forEach(SocketThread::start);
        return sockets;
    }

    private void bind(Channel channel) throws ConnectionFault {
        ZMQ.Socket socket = context.createSocket(type(channel));
        socket.setLinger(LINGER_MS);
        socket.setMaxMsgSize(LARGEST_BYTES);
        socket.setSndHWM(channel == Channel.IOPUB ? KEPT_FOR_SLOW : 0);
        socket.setRcvHWM(0);
        socket.setIPv6(connection.host().contains(":"));
        if (channel == Channel.IOPUB) {
            // Tells of every subscription, not only of the first to a topic: each client is to be welcomed.
            socket.setXpubVerbose(true);
        } else if (channel != Channel.HB) {
            // A client that comes back under its old name is the one to talk to.
            socket.setRouterHandover(true);
        }
        try {
            socket.bind(connection.address(channel));
        } catch (ZMQException | IllegalArgumentException failure) {
            throw new ConnectionFault("the kernel cannot listen at " + connection.address(channel) + ": "
                    + (failure.getMessage() == null ? "the port is taken" : failure.getMessage()));
        }
        String name = "socket " + channel;
        threads.put(channel, new SocketThread(name, context, socket, frames -> arrived(channel, frames), log));
    }

    private static SocketType type(Channel channel) {
        return switch (channel) {
            // A router echoes as well as a socket made for replies would, and never refuses a second question before
            // the first answer.
            case SHELL, CONTROL, STDIN, HB -> SocketType.ROUTER;
            case IOPUB -> SocketType.XPUB;
        };
    }

    private void arrived(Channel channel, List<byte[]> frames) {
        switch (channel) {
            case SHELL, CONTROL, STDIN -> request(channel, frames);
            case IOPUB -> subscription(frames.get(0));
            case HB -> send(Channel.HB, frames);
        }
    }

    private void request(Channel channel, List<byte[]> frames) {
        Message message;
        try {
            message = wire.read(frames);
        } catch (MalformedMessage malformed) {
            log.accept("dropped from " + channel + ": " + malformed.reason());
            return;
        }
        received.accept(channel, message);
    }

    /** A first byte of 1 and the topic. */
    private void subscription(byte[] frame) {
        if (frame.length > 0 && frame[0] == 1) {
            String topic = new String(frame, 1, frame.length - 1, StandardCharsets.UTF_8);
            broadcast(stamp.broadcast(
                    topic, Json.object(), "iopub_welcome", Json.object().put("subscription", topic), Json.object()));
        }
    }

    /** Sends a message through the socket from which its request came. */
    public void reply(Channel channel, Message message) {
        send(channel, wire.write(message));
    }

    /** Sends a message to all clients that want it. */
    public void broadcast(Message message) {
        send(Channel.IOPUB, wire.write(message));
    }

    private void send(Channel channel, List<byte[]> frames) {
        SocketThread thread = threads.get(channel);
        if (thread != null) {
            thread.send(frames);
        }
    }

    /** Sends what waits and closes all. */
    @Override
    public void close() {
        threads.values().forEach(SocketThread::close);
        context.close();
    }
}
