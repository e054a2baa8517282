package perkilo.xlsx.grid;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;

/** Zip files that are something else than a workbook that can be read. */
final class OtherPackages {

    private static final String SAVE_AS = "open it in your spreadsheet program and save it as .xlsx";

    private OtherPackages() {}

    /**
     * The workbook part.
     *
     * @throws UnreadableFileException if there is none; its message says what the file is instead
     */
    static String refuse(Path file, PackageParts parts) throws IOException {
        List<String> roots = parts.roots("officeDocument");
        for (String root : roots) {
            if (parts.has(root) && isWorkbook(parts, root)) {
                return root;
            }
        }
        throw new UnreadableFileException(file, whatElse(parts, roots));
    }

    private static boolean isWorkbook(PackageParts parts, String root) throws IOException {
        if (root.endsWith(".bin")) {
            return false;
        }
        try (Xml xml = parts.xml(root)) {
            return xml.nextElement() && xml.isAt("workbook");
        }
    }

    private static String whatElse(PackageParts parts, List<String> roots) {
        if (parts.has("/xl/workbook.bin")) {
            return "is a binary workbook (.xlsb); " + SAVE_AS;
        }
        if (parts.has("/content.xml") && parts.has("/mimetype")) {
            return "is an OpenDocument file (.ods); " + SAVE_AS;
        }
        if (parts.hasAny("/word/", "")) {
            return "is a Word document, not a workbook; bring the tables into a spreadsheet and save it as .xlsx";
        }
        if (parts.hasAny("", ".iwa")) {
            return "is a Numbers document; export it as an Excel workbook (.xlsx)";
        }
        if (!roots.isEmpty() || parts.has("/xl/workbook.xml")) {
            return "is damaged: the part that lists its sheets is missing; take a fresh copy of it";
        }
        return "is a ZIP archive, not a workbook; unpack it and name the workbook in it";
    }
}
