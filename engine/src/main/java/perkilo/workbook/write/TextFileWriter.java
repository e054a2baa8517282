package perkilo.workbook.write;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;

/** Writes plain text files the way workbooks are written: complete, or not at all. */
public final class TextFileWriter {

    private TextFileWriter() {}

    /**
     * Writes a text as UTF-8.
     *
     * @param target where to; what stands there is replaced
     * @throws UnwritableFileException if it can't be written, with the reason in the person's words; then what stood
     *     there still does
     */
    public static void write(Path target, String text) throws IOException {
        ByteBuffer bytes = ByteBuffer.wrap(text.getBytes(StandardCharsets.UTF_8));
        try (StagedFile file = StagedFile.write(target, out -> {
            while (bytes.hasRemaining()) {
                out.write(bytes);
            }
        })) {
            file.moveToItsPlace();
        }
    }
}
