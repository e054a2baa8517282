package perkilo.xlsx.grid;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;

/** Files in the container format that office suites used before 2007 and still use for encrypted files. */
final class CompoundFile {

    private CompoundFile() {}

    /** The message for such a file, by the names of the streams in it. */
    static String refusal(Path file, byte[] content) {
        if (holds(content, "EncryptedPackage")) {
            return FileMessages.password(file);
        }
        if (holds(content, "WordDocument")) {
            return FileMessages.wordDocument(file);
        }
        return FileMessages.oldWorkbook(file);
    }

    private static boolean holds(byte[] content, String stream) {
        String wide = new String(stream.getBytes(StandardCharsets.UTF_16LE), StandardCharsets.ISO_8859_1);
        return FileKind.mentions(content, wide);
    }
}
