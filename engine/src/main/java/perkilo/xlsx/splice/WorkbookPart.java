package perkilo.xlsx.splice;

import java.io.IOException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import perkilo.xlsx.parts.PartNames;

/** The part that lists the sheets and the defined names. */
final class WorkbookPart {

    /** A tab: its name, and the reference to its part. */
    record Tab(String name, String reference) {}

    /** A defined name in the scope of one sheet, counted from zero; its content without an equals sign. */
    record LocalName(String name, int sheet, boolean hidden, String content) {}

    private final String part;
    private final XmlElement workbook;
    private final XmlElement sheets;
    private final XmlEdits edits;
    private final List<Tab> tabs = new ArrayList<>();
    private int highestId;

    private WorkbookPart(String part, XmlElement workbook, XmlElement sheets) throws UnfitPackageException {
        this.part = part;
        this.workbook = workbook;
        this.sheets = sheets;
        this.edits = new XmlEdits(workbook);
        for (XmlElement sheet : sheets.children("sheet")) {
            tabs.add(new Tab(sheet.get("name", ""), sheet.get("id", "")));
            highestId = Math.max(highestId, sheet.number("sheetId", 0));
        }
    }

    static WorkbookPart of(Parts book) throws IOException {
        for (Relationship relationship : Relationship.of(book, PartNames.PACKAGE)) {
            if (relationship.type().equals("officeDocument")) {
                XmlElement workbook = book.xml(relationship.target());
                XmlElement sheets = workbook.child("sheets");
                if (!workbook.local().equals("workbook") || sheets == null) {
                    throw new UnfitPackageException(SpliceMessages.noWorkbook());
                }
                return new WorkbookPart(relationship.target(), workbook, sheets);
            }
        }
        throw new UnfitPackageException(SpliceMessages.noWorkbook());
    }

    String part() {
        return part;
    }

    Dialect dialect() {
        return Dialect.of(workbook);
    }

    /** The tabs in their order, those added included. */
    List<Tab> tabs() {
        return List.copyOf(tabs);
    }

    boolean isProtectedAgainstNewSheets() {
        XmlElement protection = workbook.child("workbookProtection");
        return protection != null && protection.isOn("lockStructure");
    }

    /** Adds a tab after the others and returns its place from zero. */
    int add(Tab tab) {
        highestId++;
        String prefix = relationshipPrefix();
        Map<String, String> attributes = new LinkedHashMap<>();
        attributes.put("name", tab.name());
        attributes.put("sheetId", String.valueOf(highestId));
        if (prefix.isEmpty()) {
            attributes.put("xmlns:r", dialect().relationships());
        }
        attributes.put((prefix.isEmpty() ? "r" : prefix) + ":id", tab.reference());
        edits.append(sheets, XmlText.openTag(sheets.prefix() + "sheet", attributes, true));
        tabs.add(tab);
        return tabs.size() - 1;
    }

    private String relationshipPrefix() {
        return workbook.attributes().stream()
                .filter(attribute -> attribute.name().startsWith("xmlns:")
                        && attribute.value().equals(dialect().relationships()))
                .map(attribute -> attribute.name().substring("xmlns:".length()))
                .findFirst()
                .orElse("");
    }

    /** The current defined names. */
    List<XmlElement> definedNames() {
        XmlElement all = workbook.child("definedNames");
        return all == null ? List.of() : all.children("definedName");
    }

    /** Removes some defined names and adds others. */
    void change(List<XmlElement> removed, List<LocalName> added) {
        removed.forEach(edits::remove);
        StringBuilder xml = new StringBuilder();
        added.forEach(name -> xml.append(written(name)));
        XmlElement all = workbook.child("definedNames");
        if (all != null) {
            edits.append(all, xml.toString());
        } else if (!added.isEmpty()) {
            String tag = workbook.prefix() + "definedNames";
            edits.insert(behindSheets(null), "<" + tag + ">" + xml + "</" + tag + ">");
        }
    }

    private String written(LocalName name) {
        String tag = workbook.prefix() + "definedName";
        Map<String, String> attributes = new LinkedHashMap<>();
        attributes.put("name", name.name());
        attributes.put("localSheetId", String.valueOf(name.sheet()));
        if (name.hidden()) {
            attributes.put("hidden", "1");
        }
        return XmlText.openTag(tag, attributes, false) + XmlText.escaped(name.content()) + "</" + tag + ">";
    }

    /** Asks the office suite to compute everything when it opens the workbook. */
    void recalculateOnOpening() {
        XmlElement calculation = workbook.child("calcPr");
        if (calculation != null) {
            edits.set(calculation, "fullCalcOnLoad", "1");
        } else {
            edits.insert(
                    behindSheets("definedNames"),
                    XmlText.openTag(workbook.prefix() + "calcPr", Map.of("fullCalcOnLoad", "1"), true));
        }
    }

    /** The position at which elements that follow the sheets and external links may be inserted. */
    private int behindSheets(@Nullable String alsoBehind) {
        int place = sheets.end();
        for (XmlElement child : workbook.children()) {
            boolean before = child.local().equals("functionGroups")
                    || child.local().equals("externalReferences")
                    || child.local().equals(alsoBehind);
            place = before ? Math.max(place, child.end()) : place;
        }
        return place;
    }

    /** The part with all changes. */
    String text() {
        return edits.apply();
    }

    void store(BookPackage book) {
        book.put(part, text());
    }
}
