package perkilo.xlsx.splice;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import perkilo.xlsx.splice.WorkbookPart.LocalName;

/** The defined names that belong to a result sheet: rows repeated in print, the filtered table, and our mark. */
final class LocalNames {

    private static final Set<String> OURS =
            Set.of("_xlnm.Print_Titles", "_xlnm._FilterDatabase", "_xlnm.Print_Area", OwnSheets.MARK, GivenSheets.MARK);

    private LocalNames() {}

    /**
     * The names in the scope of one sheet.
     *
     * @param workbook the workbook of result sheets
     * @param sheet the sheet's tab in it
     * @param place the sheet's place in the person's workbook, from zero
     */
    static List<LocalName> of(WorkbookPart workbook, String sheet, int place) throws UnfitPackageException {
        List<LocalName> names = new ArrayList<>();
        for (XmlElement name : workbook.definedNames()) {
            int scope = name.number("localSheetId", -1);
            if (scope >= 0 && workbook.tabs().get(scope).name().equals(sheet)) {
                names.add(new LocalName(name.get("name", ""), place, name.isOn("hidden"), name.words()));
            }
        }
        return names;
    }

    /** The names from an earlier run in the scope of sheets that are replaced. */
    static List<XmlElement> outdated(WorkbookPart workbook, List<Integer> places) throws UnfitPackageException {
        List<XmlElement> names = new ArrayList<>();
        for (XmlElement name : workbook.definedNames()) {
            if (OURS.contains(name.get("name", "")) && places.contains(name.number("localSheetId", -1))) {
                names.add(name);
            }
        }
        return names;
    }
}
