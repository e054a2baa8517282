package perkilo.xlsx.grid;

import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.Locale;

/** The kind of a file, recognised by its first bytes. */
enum FileKind {
    EMPTY,
    ZIP,
    COMPOUND,
    PDF,
    HTML,
    XML,
    JSON,
    TEXT,
    BINARY;

    private static final int LOOK_AT = 4096;

    /** The kind of a file that begins with these bytes. */
    static FileKind of(byte[] content) {
        if (content.length == 0) {
            return EMPTY;
        }
        if (startsWith(content, 'P', 'K', 3, 4) || startsWith(content, 'P', 'K', 5, 6)) {
            return ZIP;
        }
        if (startsWith(content, 0xD0, 0xCF, 0x11, 0xE0)) {
            return COMPOUND;
        }
        if (startsWith(content, '%', 'P', 'D', 'F')) {
            return PDF;
        }
        return ofText(content);
    }

    private static FileKind ofText(byte[] content) {
        boolean wide = startsWith(content, 0xFF, 0xFE)
                || startsWith(content, 0xFE, 0xFF)
                || TextFile.wide(beginning(content)) != null;
        if (!wide && hasZero(content)) {
            return BINARY;
        }
        String start = TextFile.decode(content, LOOK_AT).strip().toLowerCase(Locale.ROOT);
        if (start.startsWith("{") || start.startsWith("[")) {
            return JSON;
        }
        if (start.startsWith("<")) {
            boolean html = start.contains("<html") || start.contains("<table") || start.startsWith("<!doctype html");
            return html ? HTML : XML;
        }
        return start.isEmpty() ? EMPTY : TEXT;
    }

    private static byte[] beginning(byte[] content) {
        return content.length > LOOK_AT ? Arrays.copyOf(content, LOOK_AT) : content;
    }

    private static boolean hasZero(byte[] content) {
        for (int i = 0; i < Math.min(content.length, LOOK_AT); i++) {
            if (content[i] == 0) {
                return true;
            }
        }
        return false;
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

    /** Whether the bytes contain a name, such as a part's name in a package. */
    static boolean mentions(byte[] content, String ascii) {
        return new String(content, StandardCharsets.ISO_8859_1).contains(ascii);
    }
}
