package perkilo.xlsx.splice;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.Locale;

/**
 * How many style numbers the person's own sheets use. Some programs write numbers without an entry in the style sheet;
 * entries that we add must not take those numbers, or the person's cells would get our looks.
 */
final class StyleNumbers {

    private static final int BUFFER = 1 << 16;
    private static final int LONGEST_ATTRIBUTE = 32;

    /** No office suite takes a style number above this. */
    private static final int MOST = 65_490;

    private int formats;
    private int conditionalFormats;
    private final byte[] name = new byte[LONGEST_ATTRIBUTE];
    private int nameLength;
    private boolean inTag;
    private int quote;
    private int value;

    private StyleNumbers() {}

    /** The numbers in all sheets and tables of a workbook. */
    static StyleNumbers usedIn(BookPackage book) throws IOException {
        StyleNumbers numbers = new StyleNumbers();
        for (String part : book.untouched()) {
            boolean styled =
                    part.contains("/worksheets/") || part.contains("/tables/") || part.contains("/pivottables/");
            if (styled && part.endsWith(".xml")) {
                try (InputStream xml = book.stream(part)) {
                    numbers.read(xml);
                }
            }
        }
        return numbers;
    }

    /** One more than the highest number of a cell format. */
    int formats() {
        return formats;
    }

    /** One more than the highest number of a conditional format. */
    int conditionalFormats() {
        return conditionalFormats;
    }

    private void read(InputStream xml) throws IOException {
        inTag = false;
        quote = 0;
        byte[] buffer = new byte[BUFFER];
        for (int length = xml.read(buffer); length >= 0; length = xml.read(buffer)) {
            for (int at = 0; at < length; at++) {
                next(buffer[at]);
            }
        }
    }

    /** One byte; bytes of zero are skipped, so that UTF-16 reads like ASCII. */
    private void next(int b) {
        if (!inTag) {
            inTag = b == '<';
            nameLength = 0;
        } else if (quote != 0) {
            inValue(b);
        } else if (b == '"' || b == '\'') {
            quote = b;
            value = 0;
        } else if (b == '>') {
            inTag = false;
        } else if (b == ' ' || b == '\n' || b == '\r' || b == '\t') {
            nameLength = 0;
        } else if (b != '=' && b != 0 && nameLength < LONGEST_ATTRIBUTE) {
            name[nameLength++] = (byte) b;
        }
    }

    private void inValue(int b) {
        if (b == quote) {
            quote = 0;
            if (value > 0) {
                used();
            }
            nameLength = 0;
        } else if (b >= '0' && b <= '9' && value >= 0) {
            value = Math.min(value * 10 + b - '0', MOST);
        } else if (b != 0) {
            value = -1;
        }
    }

    private void used() {
        if (nameLength == 1
                ? name[0] == 's'
                : nameLength == 5 && name[0] == 's' && attribute().equals("style")) {
            formats = Math.max(formats, value + 1);
        } else if (nameLength >= 5 && attribute().toLowerCase(Locale.ROOT).endsWith("dxfid")) {
            conditionalFormats = Math.max(conditionalFormats, value + 1);
        }
    }

    private String attribute() {
        return new String(name, 0, nameLength, StandardCharsets.US_ASCII);
    }
}
