package perkilo.review;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.List;
import java.util.Locale;

/** The keys that tell rows apart, short enough for a narrow column. */
public final class Key {

    /** A letter, so that no spreadsheet takes a key for a number. */
    private static final String BEGINNING = "k";

    private static final int LENGTH = 11;
    private static final int CHECK_LENGTH = 4;
    private static final char SEPARATOR = '\u001F';

    private Key() {}

    /** The key of what a row is about; the same parts give the same key in every run. */
    public static String of(String... parts) {
        return BEGINNING + digest(List.of(parts)).substring(0, LENGTH);
    }

    /** What answers come down to, whatever their case and the spaces around them. */
    static String check(List<String> answers) {
        List<String> plain = answers.stream()
                .map(answer -> answer.strip().toLowerCase(Locale.ROOT))
                .toList();
        return digest(plain).substring(0, CHECK_LENGTH);
    }

    /** The SHA-256 of bytes, in hexadecimal digits. */
    public static String digest(byte[] content) {
        try {
            return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(content));
        } catch (NoSuchAlgorithmException impossible) {
            throw new IllegalStateException(impossible);
        }
    }

    private static String digest(List<String> parts) {
        StringBuilder all = new StringBuilder();
        parts.forEach(part -> all.append(part).append(SEPARATOR));
        return digest(all.toString().getBytes(StandardCharsets.UTF_8));
    }
}
