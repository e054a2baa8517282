package perkilo.xlsx.splice;

import java.io.IOException;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import perkilo.xlsx.parts.PartNames;
import perkilo.xlsx.splice.WorkbookPart.LocalName;
import perkilo.xlsx.splice.WorkbookPart.Tab;

/**
 * The sheets in a workbook that were written for a person to go on with.
 *
 * <p>Each has a hidden defined name in its scope, which keeps a word about it and the name of its tab. A sheet that is
 * copied or renamed has another tab: it counts as the person's alone.
 */
public final class GivenSheets {

    static final String MARK = PartNames.GIVEN_MARK;

    private static final String BETWEEN = "/";

    private GivenSheets() {}

    /**
     * The words about the given sheets of a workbook, by their tabs.
     *
     * @return none if the file is no workbook
     */
    public static Map<String, String> in(Path file) {
        Map<String, String> records = new LinkedHashMap<>();
        try (BookPackage book = BookPackage.open(file)) {
            WorkbookPart workbook = WorkbookPart.of(book);
            List<Tab> tabs = workbook.tabs();
            for (XmlElement name : workbook.definedNames()) {
                int place = name.number("localSheetId", -1);
                if (MARK.equals(name.get("name")) && place >= 0 && place < tabs.size()) {
                    String words = name.words().strip();
                    String tab = tabs.get(place).name();
                    String ending = BETWEEN + tab.replace("\"", "\"\"") + "\"";
                    if (words.startsWith("\"") && words.endsWith(ending)) {
                        records.put(tab, words.substring(1, words.length() - ending.length()));
                    }
                }
            }
        } catch (IOException e) {
            return Map.of(); // not a workbook that a sheet was written into
        }
        return records;
    }

    /** The record of a sheet. */
    static LocalName mark(int place, String record, String finalName) {
        String words = record + BETWEEN + finalName;
        return new LocalName(MARK, place, true, "\"" + words.replace("\"", "\"\"") + "\"");
    }
}
