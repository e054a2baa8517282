package perkilo.xlsx.grid;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;

/** The shared texts of a workbook, which cells refer to by number; each is made into a cell once. */
final class SharedTexts {

    private static final Pattern CODE = Pattern.compile("_x([0-9A-Fa-f]{4})_");
    private static final int HEXADECIMAL = 16;

    /** The most digits that a reference has. */
    private static final int LONGEST = 9;

    private final List<Cell> cells = new ArrayList<>();

    /** The texts in a part; none if the part is missing. */
    static SharedTexts of(PackageParts parts, String part) throws IOException {
        SharedTexts texts = new SharedTexts();
        if (!part.isEmpty()) {
            try (Xml xml = parts.xml(part)) {
                while (xml.nextElement()) {
                    if (xml.isAt("si")) {
                        texts.cells.add(Cell.text(words(xml)));
                    }
                }
            }
        }
        return texts;
    }

    /** The words of a text, formatted or not; phonetic guides of Asian names are left out. */
    static String words(Xml xml) throws IOException {
        int inside = xml.depth();
        String first = "";
        StringBuilder more = null;
        while (xml.nextElementInside(inside)) {
            if (xml.isAt("rPh")) {
                xml.skip();
            } else if (xml.isAt("t")) {
                String run = xml.text();
                if (more == null && first.isEmpty()) {
                    first = run;
                } else {
                    more = more == null ? new StringBuilder(first) : more;
                    more.append(run);
                }
            }
        }
        return decoded(more == null ? first : more.toString());
    }

    /** The text with its escapes decoded: spreadsheets write characters that XML cannot hold as {@code _x000D_}. */
    static String decoded(String text) {
        return text.indexOf("_x") < 0
                ? text
                : CODE.matcher(text)
                        .replaceAll(code -> java.util.regex.Matcher.quoteReplacement(
                                Character.toString((char) Integer.parseInt(code.group(1), HEXADECIMAL))));
    }

    /** The number in a reference; below zero if there is no such text. */
    int number(String reference) {
        String digits = reference.strip();
        int number = 0;
        for (int i = 0; i < digits.length(); i++) {
            int digit = digits.charAt(i) - '0';
            if (digit < 0 || digit > 9 || i == LONGEST) {
                return -1;
            }
            number = number * 10 + digit;
        }
        return digits.isEmpty() || number >= cells.size() ? -1 : number;
    }

    /** A text's cell, by its number. */
    Cell at(int number) {
        return cells.get(number);
    }
}
