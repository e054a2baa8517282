package perkilo.xlsx.grid;

/** What an unquoted field looks like: a figure, a value of another kind, or several fields that were not separated. */
final class FieldLook {

    private static final String SIGNS = "+-.,'’%€$£¥ \u00A0\u202F";

    private FieldLook() {}

    /** Whether a text is a number, a price, a percentage, a date in figures or a time. */
    static boolean isFigure(String text) {
        int digits = 0;
        int letters = 0;
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            if (c >= '0' && c <= '9') {
                digits++;
            } else if (Character.isLetter(c)) {
                letters++;
            } else if (SIGNS.indexOf(c) < 0 && c != '/' && c != ':') {
                return false;
            }
        }
        return digits > 0 && letters <= (digits > 3 ? 3 : 1) && !hasLooseComma(text);
    }

    /** Whether a text is blank, or words without a delimiter inside. */
    static boolean isValue(String text) {
        if (text.isEmpty()) {
            return true;
        }
        char last = text.charAt(text.length() - 1);
        boolean inches = text.length() > 1 && Character.isLetterOrDigit(text.charAt(text.length() - 2));
        boolean marked = isMark(text.charAt(0)) || (isMark(last) && !inches);
        return !marked
                && text.indexOf('|') < 0
                && text.indexOf('\t') < 0
                && !text.contains("::")
                && !hasLooseComma(text)
                && !isFollowedTightly(text, ';');
    }

    private static boolean isMark(char c) {
        return c == '"' || c == '\'';
    }

    /** Whether a comma is neither inside a number nor before a space. */
    private static boolean hasLooseComma(String text) {
        for (int at = text.indexOf(','); at >= 0; at = text.indexOf(',', at + 1)) {
            boolean afterDigit = at > 0 && Character.isDigit(text.charAt(at - 1));
            boolean beforeDigit = at + 1 < text.length() && Character.isDigit(text.charAt(at + 1));
            boolean beforeSpace = at + 1 < text.length() && text.charAt(at + 1) == ' ';
            boolean dash = at + 1 < text.length() && text.charAt(at + 1) == '-';
            if (!(afterDigit && (beforeDigit || dash)) && !(beforeSpace && at > 0)) {
                return true;
            }
        }
        return false;
    }

    private static boolean isFollowedTightly(String text, char mark) {
        for (int at = text.indexOf(mark); at >= 0; at = text.indexOf(mark, at + 1)) {
            if (at + 1 == text.length() || text.charAt(at + 1) != ' ') {
                return true;
            }
        }
        return false;
    }
}
