package perkilo.xlsx.grid;

import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import org.jspecify.annotations.Nullable;

/** Text files in the encodings that spreadsheet programs and web shops write. */
final class TextFile {

    private static final Charset WINDOWS = Charset.forName("windows-1252");

    private static final int LOOK_AT = 4096;

    private TextFile() {}

    /**
     * The text of a file.
     *
     * @param guessed whether it is in Mac Roman, which no mark tells
     * @param line the first line with a character that tells
     * @param word the text around that character
     */
    record Decoded(String text, boolean guessed, int line, String word) {}

    /**
     * The text of a file: by its byte-order mark; else UTF-16 if every other byte is zero; else UTF-8; else
     * Windows-1252 or Mac Roman.
     */
    static Decoded read(byte[] content) {
        if (startsWith(content, 0xEF, 0xBB, 0xBF)) {
            return sure(new String(content, 3, content.length - 3, StandardCharsets.UTF_8));
        }
        if (startsWith(content, 0xFF, 0xFE)) {
            return sure(new String(content, 2, content.length - 2, StandardCharsets.UTF_16LE));
        }
        if (startsWith(content, 0xFE, 0xFF)) {
            return sure(new String(content, 2, content.length - 2, StandardCharsets.UTF_16BE));
        }
        Charset wide = wide(content);
        if (wide != null) {
            return sure(new String(content, wide));
        }
        if (isAscii(content)) {
            return sure(new String(content, StandardCharsets.US_ASCII));
        }
        String utf8 = utf8(content);
        if (utf8 != null) {
            return sure(utf8);
        }
        return MacRoman.isOne(content) ? macRoman(content) : sure(new String(content, WINDOWS));
    }

    private static Decoded sure(String text) {
        return new Decoded(text, false, 0, "");
    }

    private static Decoded macRoman(byte[] content) {
        String text = MacRoman.decode(content);
        int at = 0;
        int line = 1;
        while (content[at] >= 0) {
            boolean inPair = content[at] == '\r' && at + 1 < content.length && content[at + 1] == '\n';
            line += Dialect.isBreak(text.charAt(at)) && !inPair ? 1 : 0;
            at++;
        }
        return new Decoded(text, true, line, wordAt(text, at));
    }

    private static String wordAt(String text, int at) {
        int from = at;
        int to = at;
        while (from > 0 && at - from < 20 && Character.isLetterOrDigit(text.charAt(from - 1))) {
            from--;
        }
        while (to < text.length() && to - at < 20 && (to == at || Character.isLetterOrDigit(text.charAt(to)))) {
            to++;
        }
        return text.substring(from, to);
    }

    private static @Nullable String utf8(byte[] content) {
        try {
            return StandardCharsets.UTF_8
                    .newDecoder()
                    .decode(ByteBuffer.wrap(content))
                    .toString();
        } catch (CharacterCodingException notUtf8) {
            return null;
        }
    }

    /** UTF-16 without a byte-order mark, by the zero bytes of plain letters; null if it is not that. */
    static @Nullable Charset wide(byte[] content) {
        int[] zeros = new int[2];
        int looked = Math.min(content.length, LOOK_AT) & ~1;
        for (int i = 0; i < looked; i++) {
            if (content[i] == 0) {
                zeros[i & 1]++;
            }
        }
        if (content.length % 2 != 0 || zeros[0] + zeros[1] == 0) {
            return null;
        }
        boolean little = zeros[1] > looked / 3 && zeros[0] * 20 < zeros[1];
        boolean big = zeros[0] > looked / 3 && zeros[1] * 20 < zeros[0];
        if (little) {
            return StandardCharsets.UTF_16LE;
        }
        return big ? StandardCharsets.UTF_16BE : null;
    }

    /** The text of a file. */
    static String decode(byte[] content) {
        return read(content).text();
    }

    /** The beginning of a file's text; a character that is cut in half at the end is tolerated. */
    static String decode(byte[] content, int bytes) {
        return decode(content.length > bytes ? Arrays.copyOf(content, bytes) : content);
    }

    private static boolean isAscii(byte[] content) {
        for (byte one : content) {
            if (one < 0) {
                return false;
            }
        }
        return true;
    }

    private static boolean startsWith(byte[] content, int... bytes) {
        if (content.length < bytes.length) {
            return false;
        }
        for (int i = 0; i < bytes.length; i++) {
            if ((content[i] & 0xFF) != bytes[i]) {
                return false;
            }
        }
        return true;
    }
}
