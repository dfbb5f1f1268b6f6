// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.kernel.cell.java;

import java.io.InputStream;
import java.io.OutputStream;
import java.io.PrintStream;
import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.CharsetDecoder;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.util.Optional;

import org.jspecify.annotations.Nullable;

import bandwright.kernel.cell.CellConsole;
import bandwright.kernel.notebook.Output;

/**
 * The process's standard streams in the hands of cells, from the first Java cell until {@link #close}. What is printed goes to the cell
 * that runs, whatever thread prints it; between cells nobody sees it. What is read is asked of the user, a line at a time.
 */
final class CellStreams implements AutoCloseable {
    private final PrintStream outBefore = System.out;
    private final PrintStream errBefore = System.err;
    private final InputStream inBefore = System.in;
    private volatile CellConsole console = CellConsole.SILENT;

    CellStreams() {
        System.setOut(stream(Output.Channel.STDOUT));
        System.setErr(stream(Output.Channel.STDERR));
        System.setIn(new Answers());
    }

    /** Where things go from now on. */
    void turnTo(CellConsole next) {
        System.out.flush();
        System.err.flush();
        console = next;
    }

    @Override
    public void close() {
        turnTo(CellConsole.SILENT);
        System.setOut(outBefore);
        System.setErr(errBefore);
        System.setIn(inBefore);
    }

    private PrintStream stream(Output.Channel channel) {
        return new PrintStream(new Texts(channel), true, StandardCharsets.UTF_8);
    }

    /** Bytes on their way out, as text; a character's bytes may come in two pieces. */
    private final class Texts extends OutputStream {
        private static final int MOST = 4096;

        private final Output.Channel channel;
        private final CharsetDecoder decoder = StandardCharsets.UTF_8
                .newDecoder()
                .onMalformedInput(CodingErrorAction.REPLACE)
                .onUnmappableCharacter(CodingErrorAction.REPLACE);
        private final ByteBuffer bytes = ByteBuffer.allocate(MOST);
        private final CharBuffer characters = CharBuffer.allocate(MOST);

        Texts(Output.Channel channel) {
            this.channel = channel;
        }

        @Override
        public void write(int one) {
            write(new byte[] {(byte) one}, 0, 1);
        }

        @Override
        public synchronized void write(byte[] source, int offset, int length) {
            int from = offset;
            while (from < offset + length) {
                int piece = Math.min(offset + length - from, bytes.remaining());
                bytes.put(source, from, piece);
                from += piece;
                bytes.flip();
                decoder.decode(bytes, characters, false);
                bytes.compact();
                characters.flip();
                console.write(channel, characters.toString());
                characters.clear();
            }
        }
    }

    /** What the user types. */
    private final class Answers extends InputStream {
        private byte @Nullable [] line;
        private int next;

        @Override
        public synchronized int read() {
            byte[] one = new byte[1];
            return read(one, 0, 1) < 0 ? -1 : one[0] & 0xff;
        }

        @Override
        public synchronized int read(byte[] target, int offset, int length) {
            if (length == 0) {
                return 0;
            }
            byte[] present = line;
            if (present == null || next == present.length) {
                present = (ask("", false) + "\n").getBytes(StandardCharsets.UTF_8);
                line = present;
                next = 0;
            }
            int piece = Math.min(length, present.length - next);
            System.arraycopy(present, next, target, offset, piece);
            next += piece;
            return piece;
        }

        @Override
        public synchronized int available() {
            return line == null ? 0 : line.length - next;
        }
    }

    private String ask(String prompt, boolean hidden) {
        Optional<String> answer = console.ask(prompt, hidden);
        return answer.orElseThrow(() -> new IllegalStateException("nobody can be asked for input here"));
    }
}
