package perkilo.workbook.read.grid;

import java.io.FilterInputStream;
import java.io.IOException;
import java.io.InputStream;

/** A stream that refuses to give more than it may: what unpacks to far more than its size is no real workbook. */
final class LimitedStream extends FilterInputStream {

    private long left;

    LimitedStream(InputStream in, long most) {
        super(in);
        this.left = most;
    }

    @Override
    public int read() throws IOException {
        int read = super.read();
        count(read < 0 ? 0 : 1);
        return read;
    }

    @Override
    public int read(byte[] bytes, int from, int length) throws IOException {
        int read = super.read(bytes, from, length);
        count(Math.max(0, read));
        return read;
    }

    private void count(int read) throws IOException {
        left -= read;
        if (left < 0) {
            throw new IOException("unpacks to far more than its size");
        }
    }
}
