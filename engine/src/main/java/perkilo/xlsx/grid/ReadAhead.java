package perkilo.xlsx.grid;

import java.io.IOException;
import java.io.InputStream;
import java.io.InterruptedIOException;
import java.util.concurrent.ArrayBlockingQueue;
import java.util.concurrent.BlockingQueue;
import org.jspecify.annotations.Nullable;

/**
 * A stream that is read a few blocks ahead on a thread of its own, so that a long part is unpacked and parsed at the
 * same time.
 *
 * <p>A fault while reading ahead reaches the reader at the same place. Closing ends the thread.
 */
final class ReadAhead extends InputStream {

    private static final int BLOCK = 1 << 16;
    private static final int MOST_AHEAD = 8;

    private final InputStream source;
    private final BlockingQueue<Block> ahead = new ArrayBlockingQueue<>(MOST_AHEAD);
    private final Thread thread;
    private Block block = new Block(new byte[0], null, false);
    private int at;

    /**
     * A part of the stream.
     *
     * @param bytes the content; may be empty
     * @param fault the fault after these bytes; null for none
     * @param last whether the stream ends after these bytes
     */
    @SuppressWarnings("ArrayRecordComponent") // never compared and never shown
    private record Block(byte[] bytes, @Nullable Throwable fault, boolean last) {}

    ReadAhead(InputStream source) {
        this.source = source;
        this.thread = new Thread(this::readAll, "read ahead");
        thread.setDaemon(true);
        thread.start();
    }

    private void readAll() {
        try {
            Block next;
            do {
                next = next();
                ahead.put(next);
            } while (!next.last);
        } catch (InterruptedException closed) {
            Thread.currentThread().interrupt();
        }
    }

    /** Passes every fault on to the reader. */
    private Block next() {
        byte[] bytes = new byte[0];
        try {
            bytes = source.readNBytes(BLOCK);
            return new Block(bytes, null, bytes.length < BLOCK);
        } catch (IOException | RuntimeException | Error fault) {
            return new Block(bytes, fault, true);
        }
    }

    @Override
    public int read() throws IOException {
        return isAtEnd() ? -1 : block.bytes[at++] & 0xFF;
    }

    @Override
    public int read(byte[] into, int offset, int length) throws IOException {
        if (length == 0) {
            return 0;
        }
        if (isAtEnd()) {
            return -1;
        }
        int some = Math.min(length, block.bytes.length - at);
        System.arraycopy(block.bytes, at, into, offset, some);
        at += some;
        return some;
    }

    private boolean isAtEnd() throws IOException {
        while (at == block.bytes.length) {
            rethrow(block.fault);
            if (block.last) {
                return true;
            }
            try {
                block = ahead.take();
                at = 0;
            } catch (InterruptedException e) {
                Thread.currentThread().interrupt();
                throw new InterruptedIOException("interrupted while reading");
            }
        }
        return false;
    }

    private static void rethrow(@Nullable Throwable fault) throws IOException {
        if (fault instanceof IOException failed) {
            throw failed;
        }
        if (fault instanceof RuntimeException wrong) {
            throw wrong;
        }
        if (fault instanceof Error serious) {
            throw serious;
        }
    }

    @Override
    public void close() throws IOException {
        thread.interrupt();
        boolean interrupted = false;
        while (thread.isAlive()) {
            try {
                thread.join();
            } catch (InterruptedException e) {
                interrupted = true;
            }
        }
        if (interrupted) {
            Thread.currentThread().interrupt();
        }
        source.close();
    }
}
