package perkilo.xlsx.grid;

import com.fasterxml.jackson.core.JsonParseException;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import perkilo.origin.Finding;

/**
 * Everything that one file holds.
 *
 * @param sheets in the order of the file, hidden ones left out
 * @param findings what was found wrong with the file as such
 */
public record Grids(List<Grid> sheets, List<Finding> findings) {

    private static final int BEGINNING = 1 << 16;
    private static final int MOST = 64 << 20;
    private static final String SAVE_AS = "open it in your spreadsheet program and save it as .xlsx";

    public Grids {
        sheets = List.copyOf(sheets);
        findings = List.copyOf(findings);
    }

    /**
     * The sheets of a person's workbook.
     *
     * @throws UnreadableFileException if the file is not an XLSX or XLSM workbook that can be opened
     */
    public static Grids ofBook(Path file) throws IOException {
        byte[] content = content(file);
        FileKind kind = FileKind.of(content);
        if (kind == FileKind.ZIP) {
            return WorkbookFile.read(file, true);
        }
        String text = "is a %s under the name of a workbook; " + SAVE_AS;
        throw switch (kind) {
            case TEXT -> new UnreadableFileException(file, text.formatted("text file (CSV)"));
            case JSON -> new UnreadableFileException(file, text.formatted("JSON file"));
            default -> refusal(file, kind, content);
        };
    }

    /**
     * The tables of a price list: a workbook, CSV or JSON.
     *
     * @throws UnreadableFileException if the file is none of these, or cannot be opened
     */
    public static Grids ofPriceFile(Path file) throws IOException {
        byte[] content = content(file);
        FileKind kind = FileKind.of(content);
        return switch (kind) {
            case ZIP -> WorkbookFile.read(file, false);
            case TEXT -> new Grids(List.of(CsvGrid.of(name(file), TextFile.decode(content))), List.of());
            case JSON -> json(file, TextFile.decode(content));
            default -> throw refusal(file, kind, content);
        };
    }

    /**
     * The text of a file that begins like XML; empty for every other file.
     *
     * @throws UnreadableFileException if there is no such file
     */
    public static Optional<byte[]> xml(Path file) throws IOException {
        byte[] content = content(file);
        return FileKind.of(content) == FileKind.XML ? Optional.of(content) : Optional.empty();
    }

    private static Grids json(Path file, String text) throws IOException {
        try {
            return new Grids(JsonGrids.of(name(file), text), List.of());
        } catch (JsonParseException e) {
            String what = "cannot be read as JSON near line %d: %s"
                    .formatted(e.getLocation().getLineNr(), e.getOriginalMessage());
            throw new UnreadableFileException(file, what, e);
        }
    }

    /** The content of a file; of a zip only the beginning, as its parts are read one by one. */
    private static byte[] content(Path file) throws IOException {
        if (Files.isDirectory(file)) {
            throw new UnreadableFileException(file, "is a folder; name the file in it");
        }
        if (!Files.exists(file)) {
            throw new UnreadableFileException(file, "does not exist; check the name and the folder");
        }
        try (InputStream in = Files.newInputStream(file)) {
            byte[] beginning = in.readNBytes(BEGINNING);
            return FileKind.of(beginning) == FileKind.ZIP ? beginning : whole(file, beginning, in);
        } catch (UnreadableFileException e) {
            throw e;
        } catch (IOException e) {
            throw new UnreadableFileException(file, "cannot be read; check that you may open it", e);
        }
    }

    private static byte[] whole(Path file, byte[] beginning, InputStream in) throws IOException {
        byte[] rest = in.readNBytes(MOST);
        if (rest.length == MOST) {
            throw new UnreadableFileException(
                    file, "is larger than %d MB; take the tables that count into a smaller file".formatted(MOST >> 20));
        }
        byte[] all = Arrays.copyOf(beginning, beginning.length + rest.length);
        System.arraycopy(rest, 0, all, beginning.length, rest.length);
        return all;
    }

    private static UnreadableFileException refusal(Path file, FileKind kind, byte[] content) {
        return new UnreadableFileException(
                file,
                switch (kind) {
                    case EMPTY -> "is empty; " + "take a copy that holds something";
                    case COMPOUND -> CompoundFile.refusal(content);
                    case PDF -> "is a PDF, not a workbook; ask for the figures as a spreadsheet";
                    case HTML -> "is a web page (HTML), not a workbook; " + SAVE_AS;
                    case XML -> "is an XML file, not a workbook; " + SAVE_AS;
                    default -> "is not a workbook; " + SAVE_AS;
                });
    }

    private static String name(Path file) {
        return String.valueOf(file.getFileName());
    }
}
