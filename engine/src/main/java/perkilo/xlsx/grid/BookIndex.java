package perkilo.xlsx.grid;

import java.io.IOException;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import perkilo.xlsx.grid.PackageParts.Link;
import perkilo.xlsx.parts.PartNames;

/**
 * The content of the workbook part: its sheets and how it counts days.
 *
 * @param sheets in the order of their tabs, without tabs that hold a chart or macros
 * @param date1904 whether days count from 1904
 * @param linksOut whether formulas may refer to other workbooks
 * @param computesOnOpening whether it asks for all formulas to be computed when it is opened
 * @param styles the part with the formats; empty if there is none
 * @param texts the part with the shared texts; empty if there is none
 */
record BookIndex(
        List<Sheet> sheets,
        boolean date1904,
        boolean linksOut,
        boolean computesOnOpening,
        String styles,
        String texts) {

    /**
     * A sheet.
     *
     * @param name as its tab shows it
     * @param part the part with its cells; empty if the workbook names none
     * @param visible whether a person sees its tab
     * @param ours whether it holds results of an earlier run, even under another name
     */
    record Sheet(String name, String part, boolean visible, boolean ours) {}

    /** A tab, before it is checked whether it holds our results. */
    private record Tab(String name, String reference, boolean visible) {}

    /** Reads the workbook part. */
    static BookIndex of(PackageParts parts, String part) throws IOException {
        List<Tab> tabs = new ArrayList<>();
        Set<Integer> marked = new HashSet<>();
        boolean date1904 = false;
        boolean linksOut = false;
        boolean computesOnOpening = false;
        try (Xml xml = parts.xml(part)) {
            while (xml.nextElement()) {
                switch (xml.name()) {
                    case "workbookPr" -> date1904 |= xml.isOn("date1904");
                    case "externalReference" -> linksOut = true;
                    case "calcPr" -> computesOnOpening |= xml.isOn("fullCalcOnLoad");
                    case "sheet" ->
                        tabs.add(new Tab(
                                xml.attribute("name", ""),
                                xml.reference("id"),
                                xml.attribute("state", "visible").equals("visible")));
                    case "definedName" -> {
                        if (xml.attribute("name", "").equals(PartNames.RESULT_MARK)) {
                            marked.add(xml.number("localSheetId", -1));
                        }
                    }
                    default -> {}
                }
            }
        }
        Map<String, Link> links = parts.links(part);
        return new BookIndex(
                sheets(tabs, marked, links),
                date1904,
                linksOut,
                computesOnOpening,
                target(links, "styles", parts),
                target(links, "sharedStrings", parts));
    }

    /** Whether a sheet holds results of an earlier run. */
    boolean holdsResults() {
        return sheets.stream().anyMatch(Sheet::ours);
    }

    private static List<Sheet> sheets(List<Tab> tabs, Set<Integer> marked, Map<String, Link> links) {
        List<Sheet> sheets = new ArrayList<>();
        for (int i = 0; i < tabs.size(); i++) {
            Tab tab = tabs.get(i);
            if (tab.reference().isBlank()) {
                continue; // a module of macros or a dialog of an old program, which has no part of its own
            }
            Link link = links.get(tab.reference());
            if (link == null || link.type().equals("worksheet")) {
                sheets.add(new Sheet(tab.name(), link == null ? "" : link.target(), tab.visible(), marked.contains(i)));
            }
        }
        return sheets;
    }

    private static String target(Map<String, Link> links, String type, PackageParts parts) {
        return links.values().stream()
                .filter(link -> link.type().equals(type))
                .map(Link::target)
                .filter(parts::has)
                .findFirst()
                .orElse("");
    }
}
