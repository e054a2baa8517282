package perkilo.xlsx.grid;

import java.io.IOException;
import java.util.List;

/**
 * Whether the values that were saved with a workbook's formulas come from a program that computed them.
 *
 * <p>Some programs write formulas with zero as the value, or with whatever a template had, and leave the computing to
 * whoever opens the file. Such values are computed again; see {@link MissingValues}.
 */
final class SavedValues {

    /** Programs that write the values of formulas without computing them; from memory. */
    private static final List<String> WRITERS = List.of("SheetJS", "openpyxl");

    private static final String EXCEL = "Microsoft Excel";

    /** The version of Excel that first wrote this format; libraries that use its name write their own, lower one. */
    private static final int FIRST_EXCEL = 12;

    private final boolean doubtful;
    private boolean anyFormula;
    private boolean anyValue;

    private SavedValues(boolean doubtful) {
        this.doubtful = doubtful;
    }

    /**
     * What the workbook says about its own values. A workbook with our results asks for computing because of them, so
     * that says nothing about the other formulas.
     */
    static SavedValues of(PackageParts parts, BookIndex index) throws IOException {
        return new SavedValues((index.computesOnOpening() && !index.holdsResults()) || isByWriter(parts));
    }

    private static boolean isByWriter(PackageParts parts) throws IOException {
        for (String part : parts.roots("extended-properties")) {
            if (parts.has(part)) {
                return isByWriter(parts, part);
            }
        }
        return false;
    }

    private static boolean isByWriter(PackageParts parts, String part) throws IOException {
        String program = "";
        String version = "";
        try (Xml xml = parts.xml(part)) {
            while (xml.nextElement()) {
                switch (xml.name()) {
                    case "Application" -> program = xml.text().strip();
                    case "AppVersion" -> version = xml.text().strip();
                    default -> {}
                }
            }
        }
        int point = version.indexOf('.');
        int major = Xml.whole(point < 0 ? version : version.substring(0, point), FIRST_EXCEL);
        return WRITERS.stream().anyMatch(program::startsWith) || (program.equals(EXCEL) && major < FIRST_EXCEL);
    }

    /** The same workbook, but no value is trusted. */
    SavedValues doubted() {
        return new SavedValues(true);
    }

    /** Whether the value of every formula is to be computed again. */
    boolean areDoubtful() {
        return doubtful;
    }

    /** Notes the value of a formula. */
    void note(String type, String value) {
        anyFormula = true;
        anyValue |= type.equals("e") || !(value.isBlank() || isZero(value));
    }

    private static boolean isZero(String value) {
        for (int i = 0; i < value.length(); i++) {
            char c = value.charAt(i);
            if (c != '0' && c != '.') {
                return false;
            }
        }
        return true;
    }

    /** Whether there are formulas, and the value of each is zero or blank, so that they may not have been computed. */
    boolean areNothingButZeros() {
        return !doubtful && anyFormula && !anyValue;
    }
}
