package perkilo.xlsx.splice;

import java.io.IOException;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.Map;
import perkilo.xlsx.parts.PartNames;

/** Copies parts and everything they refer to under free names, and removes such trees again. */
final class PartGraft {

    private final Parts source;
    private final BookPackage book;
    private final ContentTypes sourceTypes;
    private final ContentTypes types;
    private final Dialect dialect;
    private final Map<String, String> copies = new HashMap<>();

    PartGraft(Parts source, BookPackage book, ContentTypes types, Dialect dialect) throws IOException {
        this.source = source;
        this.book = book;
        this.sourceTypes = ContentTypes.of(source);
        this.types = types;
        this.dialect = dialect;
    }

    /**
     * Writes a part, and copies what its original refers to.
     *
     * @param original the part's name in the source
     * @param part the part's name in the book
     * @param content the part's content
     */
    void write(String original, String part, byte[] content) throws IOException {
        copies.put(original, part);
        book.put(part, content);
        String type = sourceTypes.typeOf(original);
        if (type != null) {
            types.add(part, type);
        }
        if (source.has(PartNames.relationshipsOf(original))) {
            writeRelationships(original, part);
        }
    }

    private void writeRelationships(String original, String part) throws IOException {
        XmlElement all = source.xml(PartNames.relationshipsOf(original));
        XmlEdits edits = new XmlEdits(all);
        Map<String, String> targets = new LinkedHashMap<>();
        for (Relationship relationship : Relationship.of(source, original)) {
            if (!relationship.outside()) {
                targets.put(relationship.id(), copied(relationship.target()));
            }
        }
        for (XmlElement element : all.children("Relationship")) {
            String target = targets.get(element.get("Id", ""));
            if (target != null) {
                edits.set(element, "Target", PartNames.relative(part, target));
            }
        }
        book.put(PartNames.relationshipsOf(part), dialect.translated(edits.apply()));
    }

    private String copied(String original) throws IOException {
        String known = copies.get(original);
        if (known != null) {
            return known;
        }
        String part = PartNames.free(original, book::has);
        byte[] content = source.bytes(original);
        boolean isXml = original.endsWith(".xml") || original.endsWith(".vml");
        write(original, part, isXml ? PartText.encoded(dialect.translated(PartText.decoded(content))) : content);
        return part;
    }

    /** Removes what a part refers to, except what other parts refer to as well. */
    void dropWhatIsOnlyUsedBy(String part) throws IOException {
        for (Relationship relationship : Relationship.of(book, part)) {
            String target = relationship.target();
            if (!relationship.outside() && book.has(target) && !isUsedElsewhere(target, part)) {
                dropWhatIsOnlyUsedBy(target);
                book.drop(target);
                types.remove(target);
            }
        }
        book.drop(PartNames.relationshipsOf(part));
    }

    private boolean isUsedElsewhere(String target, String user) throws IOException {
        String ownList = PartNames.key(PartNames.relationshipsOf(user));
        for (String list : book.keys()) {
            if (list.endsWith(".rels") && !list.equals(ownList) && refersTo(list, target)) {
                return true;
            }
        }
        return false;
    }

    private boolean refersTo(String list, String target) throws IOException {
        String source = list.replace("/_rels/", "/").replaceAll("\\.rels$", "");
        for (Relationship relationship : Relationship.of(book, source)) {
            if (!relationship.outside() && PartNames.key(relationship.target()).equals(PartNames.key(target))) {
                return true;
            }
        }
        return false;
    }
}
