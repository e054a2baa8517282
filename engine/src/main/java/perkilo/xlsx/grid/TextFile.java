package perkilo.xlsx.grid;

import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;

/** Text files in the encodings that spreadsheet programs and web shops write. */
final class TextFile {

    private static final Charset WINDOWS = Charset.forName("windows-1252");

    private TextFile() {}

    /** The text of a file: by its byte-order mark, else UTF-8, else Windows-1252. */
    static String decode(byte[] content) {
        if (startsWith(content, 0xEF, 0xBB, 0xBF)) {
            return new String(content, 3, content.length - 3, StandardCharsets.UTF_8);
        }
        if (startsWith(content, 0xFF, 0xFE)) {
            return new String(content, 2, content.length - 2, StandardCharsets.UTF_16LE);
        }
        if (startsWith(content, 0xFE, 0xFF)) {
            return new String(content, 2, content.length - 2, StandardCharsets.UTF_16BE);
        }
        if (isAscii(content)) {
            return new String(content, StandardCharsets.US_ASCII);
        }
        try {
            return StandardCharsets.UTF_8
                    .newDecoder()
                    .decode(ByteBuffer.wrap(content))
                    .toString();
        } catch (CharacterCodingException notUtf8) {
            return new String(content, WINDOWS);
        }
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
