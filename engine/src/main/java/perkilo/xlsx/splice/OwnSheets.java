package perkilo.xlsx.splice;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import perkilo.xlsx.parts.PartNames;
import perkilo.xlsx.splice.WorkbookPart.LocalName;
import perkilo.xlsx.splice.WorkbookPart.Tab;

/**
 * The result sheets of earlier runs in a workbook.
 *
 * <p>Each of them has a hidden defined name in its scope, {@code _perkilo_sheet}, which records the name that the sheet
 * was built with and the name of its tab. Office suites keep this record when they save. A person who renames or copies
 * such a sheet wants to keep it: the record then differs from the tab, and the sheet belongs to the person.
 */
final class OwnSheets {

    static final String MARK = PartNames.RESULT_MARK;

    /** Separates the two names; no sheet's name can contain it. */
    private static final String BETWEEN = "/";

    private static final int LONGEST_NAME = 31;

    private final Map<String, Integer> placeByBuiltName = new LinkedHashMap<>();
    private final List<Tab> tabs;

    private OwnSheets(List<Tab> tabs) {
        this.tabs = tabs;
    }

    static OwnSheets of(WorkbookPart workbook) throws UnfitPackageException {
        OwnSheets own = new OwnSheets(workbook.tabs());
        for (XmlElement name : workbook.definedNames()) {
            if (MARK.equals(name.get("name"))) {
                own.remember(name.number("localSheetId", -1), name.words());
            }
        }
        return own;
    }

    private void remember(int place, String quotedRecord) {
        String[] names = unquoted(quotedRecord.strip()).split(BETWEEN, -1);
        boolean fits = place >= 0
                && place < tabs.size()
                && names.length == 2
                && tabs.get(place).name().equals(names[1]);
        if (fits) {
            placeByBuiltName.put(names[0], place);
        }
    }

    /** Counts the sheet of that name as ours, so that the next one takes its place. */
    void takeOver(String name) {
        for (int place = 0; place < tabs.size(); place++) {
            if (key(tabs.get(place).name()).equals(key(name))) {
                placeByBuiltName.put(name, place);
            }
        }
    }

    /** The place of our sheet with that name from zero; -1 for none. */
    int placeOf(String builtName) {
        return placeByBuiltName.getOrDefault(builtName, -1);
    }

    /** The tabs that are not ours. */
    List<String> tabsOfThePerson() {
        List<String> others = new ArrayList<>();
        for (int place = 0; place < tabs.size(); place++) {
            if (!placeByBuiltName.containsValue(place)) {
                others.add(tabs.get(place).name());
            }
        }
        return others;
    }

    /** The tab names of new sheets: as before, or as built, or with a number if that name is taken. */
    Map<String, String> finalNames(List<String> builtNames) {
        Set<String> taken = new HashSet<>();
        tabs.forEach(tab -> taken.add(key(tab.name())));
        Map<String, String> names = new LinkedHashMap<>();
        for (String built : builtNames) {
            int place = placeOf(built);
            names.put(built, place >= 0 ? tabs.get(place).name() : free(built, taken));
        }
        return names;
    }

    private static String free(String built, Set<String> taken) {
        String name = shortened(built, "");
        for (int number = 2; !taken.add(key(name)); number++) {
            name = shortened(built, " " + number);
        }
        return name;
    }

    private static String shortened(String name, String ending) {
        return name.substring(0, Math.min(name.length(), LONGEST_NAME - ending.length())) + ending;
    }

    private static String key(String name) {
        return name.toLowerCase(Locale.ROOT);
    }

    /** The record that makes a sheet ours. */
    static LocalName mark(int place, String builtName, String finalName) {
        return new LocalName(MARK, place, true, quoted(builtName + BETWEEN + finalName));
    }

    private static String quoted(String words) {
        return "\"" + words.replace("\"", "\"\"") + "\"";
    }

    private static String unquoted(String words) {
        boolean quoted = words.length() >= 2 && words.startsWith("\"") && words.endsWith("\"");
        return quoted ? words.substring(1, words.length() - 1).replace("\"\"", "\"") : words;
    }
}
