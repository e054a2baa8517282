package perkilo.xlsx.splice;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** One list of a style sheet, such as its fonts; entries that it does not hold yet can be added. */
final class StyleGroup {

    private static final String ALTERNATIVES = "AlternateContent";

    private final String name;
    private final @Nullable XmlElement group;
    private final List<String> canonical = new ArrayList<>();
    private final List<XmlElement> added = new ArrayList<>();
    private final List<Map<String, String>> changes = new ArrayList<>();

    StyleGroup(XmlElement styles, String name) throws UnfitPackageException {
        this.name = name;
        this.group = styles.child(name);
        if (group != null) {
            if (group.child(ALTERNATIVES) != null) {
                throw new UnfitPackageException(SpliceMessages.styleAlternatives());
            }
            group.children().forEach(entry -> canonical.add(entry.canonical()));
        }
    }

    String name() {
        return name;
    }

    /** How many entries there are, those added included. */
    int size() {
        return canonical.size();
    }

    boolean hasAdditions() {
        return !added.isEmpty();
    }

    /**
     * The place of an entry; adds it if there is no equal one.
     *
     * @param changed attributes with their new values
     */
    int placeOf(XmlElement entry, Map<String, String> changed) {
        int place = canonical.indexOf(entry.copy("", changed));
        return place >= 0 ? place : add(entry, changed);
    }

    /** Adds an entry even if there is an equal one. */
    int add(XmlElement entry, Map<String, String> changed) {
        canonical.add(entry.copy("", changed));
        added.add(entry);
        changes.add(changed);
        return canonical.size() - 1;
    }

    /** Writes the additions into the style sheet. */
    void store(XmlElement styles, XmlEdits edits) {
        StringBuilder xml = new StringBuilder();
        for (int i = 0; i < added.size(); i++) {
            xml.append(added.get(i).copy(styles.prefix(), changes.get(i)));
        }
        if (group != null) {
            edits.set(group, "count", String.valueOf(size()));
            edits.append(group, xml.toString());
        } else {
            String tag = styles.prefix() + name;
            String list = "<" + tag + " count=\"" + size() + "\">" + xml + "</" + tag + ">";
            if (styles.isEmptyTag()) {
                edits.append(styles, list);
            } else {
                edits.insert(StyleOrder.placeFor(styles, name), list);
            }
        }
    }
}
