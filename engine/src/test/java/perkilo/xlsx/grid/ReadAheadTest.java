package perkilo.xlsx.grid;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.EOFException;
import java.io.IOException;
import java.io.InputStream;
import java.io.SequenceInputStream;
import java.time.Duration;
import java.util.Arrays;
import java.util.Random;
import java.util.concurrent.atomic.AtomicBoolean;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Assertions;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Reading ahead returns all bytes in order, and reports a fault at its place. */
class ReadAheadTest {

    private static final int BLOCK = 1 << 16;

    @Property(tries = 60)
    void all_bytes_come_through_in_pieces_of_any_size(@ForAll int seed, @ForAll @IntRange(max = 20 * BLOCK) int size)
            throws IOException {
        assertThat(throughIt(bytes(seed, size), new Random(seed))).isEqualTo(bytes(seed, size));
    }

    @ParameterizedTest
    @ValueSource(ints = {0, 1, BLOCK - 1, BLOCK, BLOCK + 1, 9 * BLOCK})
    void so_they_do_where_blocks_end(int size) throws IOException {
        assertThat(throughIt(bytes(1, size), new Random(2))).isEqualTo(bytes(1, size));
    }

    @ParameterizedTest
    @ValueSource(ints = {0, 100, 3 * BLOCK, 15 * BLOCK})
    void a_fault_comes_where_it_is(int before) throws IOException {
        EOFException cutShort = new EOFException("cut short");
        InputStream broken = new InputStream() {
            @Override
            public int read() throws IOException {
                throw cutShort;
            }

            @Override
            public int read(byte[] into, int offset, int length) throws IOException {
                throw cutShort;
            }
        };
        try (ReadAhead stream =
                new ReadAhead(new SequenceInputStream(new ByteArrayInputStream(bytes(3, before)), broken))) {
            int whole = before / BLOCK * BLOCK; // bytes in the same block as the fault may be lost
            assertThat(stream.readNBytes(whole)).isEqualTo(Arrays.copyOf(bytes(3, before), whole));
            assertThatThrownBy(stream::readAllBytes).isSameAs(cutShort);
            assertThatThrownBy(stream::read).isSameAs(cutShort);
        }
    }

    @Test
    void closing_early_ends_the_thread_and_closes_the_source() {
        AtomicBoolean closed = new AtomicBoolean();
        InputStream endless = new InputStream() {
            @Override
            public int read() {
                return 7;
            }

            @Override
            public int read(byte[] into, int offset, int length) {
                Arrays.fill(into, offset, offset + length, (byte) 7);
                return length;
            }

            @Override
            public void close() {
                closed.set(true);
            }
        };
        Assertions.assertTimeoutPreemptively(Duration.ofMinutes(10), () -> {
            ReadAhead stream = new ReadAhead(endless);
            assertThat(stream.read()).isEqualTo(7);
            stream.close();
        });
        assertThat(closed).isTrue();
        assertThat(Thread.getAllStackTraces().keySet())
                .noneMatch(thread -> thread.getName().equals("read ahead"));
    }

    private static byte[] throughIt(byte[] bytes, Random random) throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        try (ReadAhead stream = new ReadAhead(new ByteArrayInputStream(bytes))) {
            byte[] piece = new byte[100_000];
            while (true) {
                int single = random.nextInt(10) == 0 ? stream.read() : -2;
                int most = 1 + random.nextInt(piece.length);
                if (single >= 0) {
                    out.write(single);
                }
                int some = single == -1 ? -1 : stream.read(piece, 0, most);
                if (some < 0) {
                    return out.toByteArray();
                }
                out.write(piece, 0, some);
            }
        }
    }

    private static byte[] bytes(int seed, int size) {
        byte[] bytes = new byte[size];
        new Random(seed).nextBytes(bytes);
        return bytes;
    }
}
