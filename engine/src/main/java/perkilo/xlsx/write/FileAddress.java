package perkilo.xlsx.write;

import java.net.URI;
import java.net.URISyntaxException;
import java.nio.file.Path;

/**
 * The address of a file as a link in a workbook writes it: relative if possible, so that both files may move together.
 */
public final class FileAddress {

    private FileAddress() {}

    /**
     * The address of a file.
     *
     * @param file the file that the link leads to
     * @param workbook the workbook that holds the link
     */
    public static String of(Path file, Path workbook) {
        Path from = workbook.toAbsolutePath().normalize().getParent();
        Path to = file.toAbsolutePath().normalize();
        if (from == null || !sameRoot(from, to)) {
            return to.toUri().toASCIIString();
        }
        String relative =
                from.relativize(to).toString().replace(to.getFileSystem().getSeparator(), "/");
        try {
            return new URI(null, null, relative.contains(":") ? "./" + relative : relative, null).toASCIIString();
        } catch (URISyntaxException odd) {
            return to.toUri().toASCIIString();
        }
    }

    private static boolean sameRoot(Path one, Path other) {
        Path root = one.getRoot();
        return root != null && root.equals(other.getRoot());
    }
}
