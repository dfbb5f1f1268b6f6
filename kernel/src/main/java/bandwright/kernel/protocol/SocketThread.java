// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.kernel.protocol;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.channels.Pipe;
import java.util.ArrayList;
import java.util.List;
import java.util.Queue;
import java.util.concurrent.ConcurrentLinkedQueue;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.function.Consumer;

import org.zeromq.ZContext;
import org.zeromq.ZMQ;

/**
 * A socket and the one thread that touches it. Others hand over frames through a queue and wake the thread by a byte in a pipe,
 * which it watches together with the socket.
 */
final class SocketThread {
    /** So many messages are read before the queue of those to be sent gets its turn. */
    private static final int TURN = 64;

    private final ZMQ.Socket socket;
    private final ZMQ.Poller poller;
    private final Pipe pipe;
    private final Consumer<List<byte[]>> received;
    private final Consumer<String> log;
    private final Queue<List<byte[]>> outbound = new ConcurrentLinkedQueue<>();
    private final AtomicBoolean woken = new AtomicBoolean();
    private final Thread thread;
    private volatile boolean closing;

    /**
     * @param socket bound already; this thread closes it
     * @param received hears, on this thread, the frames of each message that comes in; must be quick
     */
    SocketThread(
            String name, ZContext context, ZMQ.Socket socket, Consumer<List<byte[]>> received, Consumer<String> log) {
        this.socket = socket;
        this.received = received;
        this.log = log;
        this.poller = context.createPoller(2);
        try {
            this.pipe = Pipe.open();
            pipe.source().configureBlocking(false);
        } catch (IOException failure) {
            throw new UncheckedIOException(failure);
        }
        poller.register(socket, ZMQ.Poller.POLLIN);
        poller.register(pipe.source(), ZMQ.Poller.POLLIN);
        this.thread = new Thread(this::run, name);
        thread.setDaemon(true);
    }

    void start() {
        thread.start();
    }

    /** Sends a message, soon and in order. From any thread. */
    void send(List<byte[]> frames) {
        outbound.add(frames);
        wake();
    }

    /** Sends what waits, closes the socket, ends the thread. */
    void close() {
        closing = true;
        wake();
        try {
            thread.join(1000);
        } catch (InterruptedException stopped) {
            Thread.currentThread().interrupt();
        }
    }

    private void wake() {
        if (woken.compareAndSet(false, true)) {
            try {
                pipe.sink().write(ByteBuffer.wrap(new byte[1]));
            } catch (IOException closed) {
                // Nobody is left to be woken.
                return;
            }
        }
    }

    private void run() {
        try {
            while (!closing) {
                poller.poll(-1);
                sleepAgain();
                receive();
                flush();
            }
            flush();
        } catch (RuntimeException | Error failure) {
            log.accept("the thread " + thread.getName() + " ended: " + failure);
        } finally {
            poller.close();
            socket.close();
            closePipe();
        }
    }

    private void sleepAgain() {
        try {
            ByteBuffer bytes = ByteBuffer.allocate(16);
            while (pipe.source().read(bytes) > 0) {
                bytes.clear();
            }
        } catch (IOException closed) {
            closing = true;
        }
        // Before the queue is looked at: whoever adds from now on wakes again.
        woken.set(false);
    }

    private void receive() {
        for (int count = 0; count < TURN; count++) {
            byte[] frame = socket.recv(ZMQ.DONTWAIT);
            if (frame == null) {
                return;
            }
            List<byte[]> frames = new ArrayList<>(List.of(frame));
            while (socket.hasReceiveMore()) {
                frames.add(socket.recv());
            }
            try {
                received.accept(frames);
            } catch (RuntimeException | Error failure) {
                log.accept("a message was dropped: " + failure);
            }
        }
    }

    private void flush() {
        List<byte[]> frames = outbound.poll();
        while (frames != null) {
            for (int at = 0; at < frames.size(); at++) {
                socket.send(frames.get(at), at < frames.size() - 1 ? ZMQ.SNDMORE : 0);
            }
            frames = outbound.poll();
        }
    }

    private void closePipe() {
        try {
            pipe.sink().close();
            pipe.source().close();
        } catch (IOException closedAlready) {
            return;
        }
    }
}
