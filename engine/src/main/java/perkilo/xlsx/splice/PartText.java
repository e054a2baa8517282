package perkilo.xlsx.splice;

import static java.nio.charset.StandardCharsets.ISO_8859_1;
import static java.nio.charset.StandardCharsets.UTF_16BE;
import static java.nio.charset.StandardCharsets.UTF_16LE;
import static java.nio.charset.StandardCharsets.UTF_8;

import java.nio.charset.Charset;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Conversion between a part's bytes and its text: read in the declared encoding, written in UTF-8. */
final class PartText {

    private static final Pattern DECLARED = Pattern.compile("^(<\\?xml[^>]*?encoding\\s*=\\s*[\"'])([^\"']+)");
    private static final int DECLARATION_LENGTH = 200;

    private PartText() {}

    static String decoded(byte[] bytes) throws UnfitPackageException {
        if (startsWith(bytes, 0xEF, 0xBB, 0xBF)) {
            return new String(bytes, 3, bytes.length - 3, UTF_8);
        }
        if (startsWith(bytes, 0xFF, 0xFE)) {
            return new String(bytes, 2, bytes.length - 2, UTF_16LE);
        }
        if (startsWith(bytes, 0xFE, 0xFF)) {
            return new String(bytes, 2, bytes.length - 2, UTF_16BE);
        }
        if (startsWith(bytes, '<', 0)) {
            return new String(bytes, UTF_16LE);
        }
        if (startsWith(bytes, 0, '<')) {
            return new String(bytes, UTF_16BE);
        }
        return new String(bytes, declared(bytes));
    }

    private static Charset declared(byte[] bytes) throws UnfitPackageException {
        String beginning = new String(bytes, 0, Math.min(bytes.length, DECLARATION_LENGTH), ISO_8859_1);
        Matcher matcher = DECLARED.matcher(beginning);
        if (!matcher.find()) {
            return UTF_8;
        }
        try {
            return Charset.forName(matcher.group(2));
        } catch (IllegalArgumentException e) {
            throw new UnfitPackageException(SpliceMessages.unknownEncoding(matcher.group(2)));
        }
    }

    private static boolean startsWith(byte[] bytes, int... first) {
        if (bytes.length < first.length) {
            return false;
        }
        for (int i = 0; i < first.length; i++) {
            if ((bytes[i] & 0xFF) != first[i]) {
                return false;
            }
        }
        return true;
    }

    static byte[] encoded(String text) {
        return DECLARED.matcher(text).replaceFirst("$1UTF-8").getBytes(UTF_8);
    }
}
