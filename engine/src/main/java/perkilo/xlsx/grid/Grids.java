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
import perkilo.origin.Origin;

/**
 * All tables of one file.
 *
 * @param sheets in the order of the file, hidden ones left out
 * @param findings what is wrong with the file as a whole
 * @param others the sheets that are left out
 */
public record Grids(List<Grid> sheets, List<Finding> findings, List<Other> others) {

    /** Why a sheet is left out. */
    public enum Why {
        /** It holds results of an earlier run. */
        RESULT,
        /** It is hidden. */
        HIDDEN,
        /** The file lists it but does not hold it. */
        MISSING
    }

    /**
     * A sheet that is left out.
     *
     * @param place the sheet
     */
    public record Other(Origin place, Why why) {}

    private static final int BEGINNING = 1 << 16;
    private static final int MOST = 64 << 20;

    public Grids {
        sheets = List.copyOf(sheets);
        findings = List.copyOf(findings);
        others = List.copyOf(others);
    }

    /** The tables of a file of which no sheet is left out. */
    public Grids(List<Grid> sheets, List<Finding> findings) {
        this(sheets, findings, List.of());
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
        throw switch (kind) {
            case TEXT -> new UnreadableFileException(FileMessages.text(file));
            case JSON -> new UnreadableFileException(FileMessages.json(file));
            default -> refusal(file, kind, content);
        };
    }

    /**
     * The result sheets of earlier runs in a workbook.
     *
     * @param name the beginning of their names
     * @throws UnreadableFileException if the file cannot be opened
     */
    public static List<Grid> ofResults(Path file, String name) throws IOException {
        return WorkbookFile.results(file, name);
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
            case TEXT -> CsvGrid.of(name(file), TextFile.read(content));
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
            int line = e.getLocation().getLineNr();
            throw new UnreadableFileException(FileMessages.notJson(file, line, e.getOriginalMessage()), e);
        }
    }

    /** The content of a file; for a zip only the beginning, as its parts are read one by one. */
    private static byte[] content(Path file) throws IOException {
        if (Files.isDirectory(file)) {
            throw new UnreadableFileException(FileMessages.folder(file));
        }
        if (!Files.exists(file)) {
            throw new UnreadableFileException(FileMessages.missing(file));
        }
        try (InputStream in = Files.newInputStream(file)) {
            byte[] beginning = in.readNBytes(BEGINNING);
            return FileKind.of(beginning) == FileKind.ZIP ? beginning : whole(file, beginning, in);
        } catch (UnreadableFileException e) {
            throw e;
        } catch (IOException e) {
            throw new UnreadableFileException(FileMessages.notReadable(file), e);
        }
    }

    private static byte[] whole(Path file, byte[] beginning, InputStream in) throws IOException {
        byte[] rest = in.readNBytes(MOST);
        if (rest.length == MOST) {
            throw new UnreadableFileException(FileMessages.tooLarge(file, MOST >> 20));
        }
        byte[] all = Arrays.copyOf(beginning, beginning.length + rest.length);
        System.arraycopy(rest, 0, all, beginning.length, rest.length);
        return all;
    }

    private static UnreadableFileException refusal(Path file, FileKind kind, byte[] content) {
        return new UnreadableFileException(
                switch (kind) {
                    case EMPTY -> FileMessages.empty(file);
                    case COMPOUND -> CompoundFile.refusal(file, content);
                    case PDF -> FileMessages.pdf(file);
                    case HTML -> FileMessages.webPage(file);
                    case XML -> FileMessages.xml(file);
                    default -> FileMessages.otherKind(file);
                });
    }

    private static String name(Path file) {
        return String.valueOf(file.getFileName());
    }
}
