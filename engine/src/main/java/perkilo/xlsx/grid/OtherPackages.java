package perkilo.xlsx.grid;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;

/** Zip files that are not a readable workbook. */
final class OtherPackages {

    private OtherPackages() {}

    /**
     * The workbook part.
     *
     * @throws UnreadableFileException if there is none; the message says what the file is instead
     */
    static String refuse(Path file, PackageParts parts) throws IOException {
        List<String> roots = parts.roots("officeDocument");
        for (String root : roots) {
            if (parts.has(root) && isWorkbook(parts, root)) {
                return root;
            }
        }
        throw new UnreadableFileException(whatElse(file, parts, roots));
    }

    private static boolean isWorkbook(PackageParts parts, String root) throws IOException {
        if (root.endsWith(".bin")) {
            return false;
        }
        try (Xml xml = parts.xml(root)) {
            return xml.nextElement() && xml.isAt("workbook");
        }
    }

    private static String whatElse(Path file, PackageParts parts, List<String> roots) {
        if (parts.has("/xl/workbook.bin")) {
            return FileMessages.binaryWorkbook(file);
        }
        if (parts.has("/content.xml") && parts.has("/mimetype")) {
            return FileMessages.openDocument(file);
        }
        if (parts.hasAny("/word/", "")) {
            return FileMessages.wordDocument(file);
        }
        if (parts.hasAny("", ".iwa")) {
            return FileMessages.numbersDocument(file);
        }
        if (!roots.isEmpty() || parts.has("/xl/workbook.xml")) {
            return FileMessages.noSheetList(file);
        }
        return FileMessages.archive(file);
    }
}
