package perkilo.xlsx.grid;

import java.io.Closeable;
import java.io.EOFException;
import java.io.FileNotFoundException;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import java.util.zip.ZipEntry;
import java.util.zip.ZipException;
import java.util.zip.ZipFile;
import perkilo.xlsx.parts.PartNames;

/**
 * The parts of a workbook, which is a zip file. It is opened for reading only, and refused if it is built to mislead.
 *
 * <p>Parts are named from the root, such as {@code /xl/workbook.xml}; case does not matter.
 */
final class PackageParts implements Closeable {

    /** The most parts; workbooks with thousands of pictures stay below. */
    private static final int MOST_PARTS = 20_000;

    /** A part of this many unpacked bytes or more is unpacked on a thread of its own. */
    private static final int LONG = 1 << 20;

    private static final Pattern OUTSIDE =
            Pattern.compile("(?s)([A-Za-z]:|[/\\\\]{2}).*|(.*[/\\\\])?\\.\\.([/\\\\].*)?");

    private static final String ROOT = "/";

    private final Path file;
    private final ZipFile zip;
    private final Map<String, ZipEntry> parts = new HashMap<>();

    private PackageParts(Path file, ZipFile zip) {
        this.file = file;
        this.zip = zip;
    }

    /**
     * Opens a zip; only its table of contents is read.
     *
     * @throws UnreadableFileException if it is cut short, or holds parts that no workbook holds
     */
    static PackageParts open(Path file) throws IOException {
        ZipFile zip;
        try {
            zip = new ZipFile(file.toFile());
        } catch (ZipException | EOFException e) {
            throw new UnreadableFileException(FileMessages.cutShort(file), e);
        } catch (FileNotFoundException | java.nio.file.AccessDeniedException e) {
            throw new UnreadableFileException(FileMessages.notReadable(file), e);
        }
        PackageParts parts = new PackageParts(file, zip);
        try {
            parts.list();
            return parts;
        } catch (IOException | RuntimeException e) {
            parts.close();
            throw e;
        }
    }

    private void list() throws IOException {
        if (zip.size() > MOST_PARTS) {
            throw new UnreadableFileException(FileMessages.tooManyParts(file, zip.size()));
        }
        for (ZipEntry entry : Collections.list(zip.entries())) {
            String name = entry.getName();
            if (leavesTheFolder(name)) {
                throw new UnreadableFileException(FileMessages.partOutside(file, name));
            }
            if (parts.put(PartNames.key(name), entry) != null) {
                throw new UnreadableFileException(FileMessages.partTwice(file, name));
            }
        }
    }

    private static boolean leavesTheFolder(String name) {
        return OUTSIDE.matcher(name).matches();
    }

    /** Whether there is such a part. */
    boolean has(String part) {
        return parts.containsKey(PartNames.key(part));
    }

    /** Whether any part's name has this beginning and this ending. */
    boolean hasAny(String beginning, String ending) {
        return parts.keySet().stream().anyMatch(name -> name.startsWith(beginning) && name.endsWith(ending));
    }

    /** How many bytes a part says it unpacks to. */
    long size(String part) {
        ZipEntry entry = parts.get(PartNames.key(part));
        return entry == null ? 0 : entry.getSize();
    }

    /** The content of a part that must exist. */
    GuardedStream open(String part) throws IOException {
        ZipEntry entry = parts.get(PartNames.key(part));
        InputStream content = entry == null ? null : zip.getInputStream(entry);
        if (entry == null || content == null) {
            throw new UnreadableFileException(FileMessages.noPart(file, part));
        }
        InputStream unpacked = entry.getSize() < LONG ? content : new ReadAhead(content);
        return new GuardedStream(unpacked, file, entry.getCompressedSize());
    }

    /** A cursor on the XML of a part that must exist. */
    Xml xml(String part) throws IOException {
        return new Xml(file, open(part));
    }

    /** The relationships of a part by their identifiers; those that lead outside the workbook are left out. */
    Map<String, Link> links(String part) throws IOException {
        int folder = part.lastIndexOf('/') + 1;
        String list = part.substring(0, folder) + "_rels/" + part.substring(folder) + ".rels";
        Map<String, Link> links = new HashMap<>();
        if (!has(list)) {
            return links;
        }
        try (Xml xml = xml(list)) {
            while (xml.nextElement()) {
                if (xml.isAt("Relationship") && !xml.attribute("TargetMode", "").equals("External")) {
                    String type = xml.attribute("Type", "");
                    links.put(
                            xml.attribute("Id", ""),
                            new Link(
                                    type.substring(type.lastIndexOf('/') + 1),
                                    PartNames.resolved(part, xml.attribute("Target", ""))));
                }
            }
        }
        return links;
    }

    /** The targets of one type that the package as a whole refers to. */
    List<String> roots(String type) throws IOException {
        List<String> targets = new ArrayList<>();
        links(ROOT).values().stream()
                .filter(link -> link.type().equals(type))
                .map(Link::target)
                .forEach(targets::add);
        return targets;
    }

    @Override
    public void close() throws IOException {
        zip.close();
    }

    /**
     * A reference to another part.
     *
     * @param type the last word of its type, such as {@code worksheet}
     * @param target the part's name
     */
    record Link(String type, String target) {}
}
