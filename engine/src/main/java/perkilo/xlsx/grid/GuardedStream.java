package perkilo.xlsx.grid;

import java.io.FilterInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Path;

/** The unpacked content of a part, up to a bound: a few kilobytes can be made to unpack to gigabytes. */
final class GuardedStream extends FilterInputStream {

    /** Any part may unpack to this many bytes. */
    private static final long HARMLESS = 16L << 20;

    /** The same bound for a sheet that is full of cells: nine million cells at most. */
    private static final long HARMLESS_SHEET = 128L << 20;

    /**
     * How many times the kept bytes a sheet may unpack to: a cell takes at least 15 bytes of XML (50 with a place, a
     * style and a type) and at least 4 bytes when kept.
     */
    private static final long TIMES_WHAT_IS_KEPT = 16;

    /**
     * How many times its packed size a part may unpack to; sheets of 200,000 rows of one repeated value were measured
     * at 11 to 28 times.
     */
    private static final long MOST_TIMES = 200;

    /** No part may unpack to more; larger than any sheet that a spreadsheet program can open on an ordinary machine. */
    private static final long MOST = 1L << 30;

    private final Path file;
    private long most;
    private long kept;
    private long seen;

    /**
     * Guards a stream.
     *
     * @param packed how many bytes the part takes in the file
     */
    GuardedStream(InputStream in, Path file, long packed) {
        super(in);
        this.file = file;
        this.most = Math.min(MOST, Math.max(HARMLESS, packed * MOST_TIMES));
    }

    /**
     * Raises the bound, because this many bytes of the part were worth keeping. A wide sheet of one repeated value,
     * written without the places of its cells, packs better than any other honest part.
     */
    void keeps(int bytes) {
        kept += bytes;
        most = Math.max(most, Math.min(HARMLESS_SHEET, HARMLESS + kept * TIMES_WHAT_IS_KEPT));
    }

    @Override
    public int read() throws IOException {
        int read = super.read();
        count(read < 0 ? 0 : 1);
        return read;
    }

    @Override
    public int read(byte[] bytes, int offset, int length) throws IOException {
        int read = super.read(bytes, offset, length);
        count(Math.max(read, 0));
        return read;
    }

    @Override
    public long skip(long bytes) throws IOException {
        long skipped = super.skip(bytes);
        count(skipped);
        return skipped;
    }

    private void count(long bytes) throws IOException {
        seen += bytes;
        if (seen > most) {
            throw new UnreadableFileException(FileMessages.unpacksTooFar(file));
        }
    }
}
