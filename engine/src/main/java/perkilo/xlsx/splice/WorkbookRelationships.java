package perkilo.xlsx.splice;

import java.io.IOException;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import perkilo.xlsx.parts.PartNames;

/** The relationships of the workbook part, to which ours are added. */
final class WorkbookRelationships {

    private final String source;
    private final Dialect dialect;
    private final XmlElement all;
    private final XmlEdits edits;
    private final List<Relationship> known;
    private final Set<String> ids = new HashSet<>();

    WorkbookRelationships(Parts book, String source, Dialect dialect) throws IOException {
        this.source = source;
        this.dialect = dialect;
        this.all = book.xml(PartNames.relationshipsOf(source));
        this.edits = new XmlEdits(all);
        this.known = Relationship.of(book, source);
        for (Relationship relationship : known) {
            ids.add(relationship.id());
        }
    }

    /** The part that a reference of the workbook leads to. */
    Optional<String> target(String id) {
        for (Relationship relationship : known) {
            if (relationship.id().equals(id) && !relationship.outside()) {
                return Optional.of(relationship.target());
            }
        }
        return Optional.empty();
    }

    /** The parts of one type. */
    List<String> targets(String type) {
        List<String> targets = new ArrayList<>();
        for (Relationship relationship : known) {
            if (relationship.type().equals(type) && !relationship.outside()) {
                targets.add(relationship.target());
            }
        }
        return targets;
    }

    /** Adds a reference to a part and returns its identifier. */
    String add(String type, String target) {
        int number = 1;
        while (!ids.add("rId" + number)) {
            number++;
        }
        Map<String, String> attributes = new LinkedHashMap<>();
        attributes.put("Id", "rId" + number);
        attributes.put("Type", dialect.relationships() + "/" + type);
        attributes.put("Target", PartNames.relative(source, target));
        edits.append(all, XmlText.openTag(all.prefix() + "Relationship", attributes, true));
        return "rId" + number;
    }

    /** Removes the references to parts of one type. */
    void remove(String type) {
        for (XmlElement element : all.children("Relationship")) {
            if (element.get("Type", "").endsWith("/" + type)) {
                edits.remove(element);
            }
        }
    }

    void store(BookPackage book) {
        book.put(PartNames.relationshipsOf(source), edits.apply());
    }
}
