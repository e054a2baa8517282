package perkilo.xlsx.grid;

import java.nio.charset.Charset;

/**
 * Tells Mac Roman text from Windows-1252 text. In the right one of the two, letters with accents are inside words or at
 * their beginning, and signs are between words.
 *
 * <p>Mac OS Roman as mapped by Apple and the Unicode Consortium (unicode.org/Public/MAPPINGS/VENDORS/APPLE/ROMAN.TXT).
 */
final class MacRoman {

    private static final Charset WINDOWS = Charset.forName("windows-1252");

    /** The characters of the bytes from 0x80. */
    private static final String UPPER_HALF = "ÄÅÇÉÑÖÜáàâäãåçéèêëíìîïñóòôöõúùûü†°¢£§•¶ß®©™´¨≠ÆØ∞±≤≥¥µ∂∑∏π∫ªºΩæø"
            + "¿¡¬√ƒ≈∆«»…\u00A0ÀÃÕŒœ–—“”‘’÷◊ÿŸ⁄€‹›ﬁﬂ‡·‚„‰ÂÊÁËÈÍÎÏÌÓÔ\uF8FFÒÚÛÙıˆ˜¯˘˙˚¸˝˛ˇ";

    private static final String USUAL_SIGNS = "°§®©™±µ–—«»\u00A0×²³·";

    private MacRoman() {}

    /** The text of bytes in Mac Roman. */
    static String decode(byte[] content) {
        char[] text = new char[content.length];
        for (int i = 0; i < content.length; i++) {
            int code = content[i] & 0xFF;
            text[i] = code < 0x80 ? (char) code : UPPER_HALF.charAt(code - 0x80);
        }
        return new String(text);
    }

    /** Whether the bytes make better words in Mac Roman than in Windows-1252. */
    static boolean isOne(byte[] content) {
        int mac = 0;
        int windows = 0;
        String macText = decode(content);
        String windowsText = new String(content, WINDOWS);
        for (int i = 0; i < content.length; i++) {
            if (content[i] < 0) {
                mac += score(macText, i);
                windows += score(windowsText, i);
            }
        }
        return mac > windows;
    }

    private static int score(String text, int at) {
        char c = text.charAt(at);
        char before = at > 0 ? text.charAt(at - 1) : ' ';
        char after = at + 1 < text.length() ? text.charAt(at + 1) : ' ';
        if (Character.isLowerCase(c) && c != 'ª' && c != 'º' && c < '\u0180') {
            return lowerCase(c, before, after);
        }
        if (Character.isUpperCase(c) && c < '\u0180') {
            boolean shouted = Character.isUpperCase(before) || Character.isUpperCase(after);
            boolean begins = !Character.isLetterOrDigit(before) && Character.isLetter(after);
            return begins || (shouted && !Character.isLowerCase(before)) ? 1 : -2;
        }
        return sign(c, before, after);
    }

    private static int lowerCase(char c, char before, char after) {
        if (Character.isLetter(before)) {
            return 2;
        }
        boolean begins = "àéèê".indexOf(c) >= 0;
        return Character.isLowerCase(after) || begins ? begins ? 2 : 1 : -1;
    }

    private static int sign(char c, char before, char after) {
        boolean afterLetter = Character.isLetter(before);
        boolean beforeLetter = Character.isLetter(after);
        return switch (c) {
            case '“', '‘' -> beforeLetter && !afterLetter ? 2 : -1;
            case '”' -> afterLetter && !beforeLetter ? 2 : 1;
            case '’' -> apostrophe(before, after);
            case '€', '£' -> Character.isLowerCase(after) || afterLetter ? -2 : 1;
            case '…' -> beforeLetter ? -1 : 1;
            default -> USUAL_SIGNS.indexOf(c) >= 0 && !(afterLetter && beforeLetter) ? 1 : -2;
        };
    }

    /** An apostrophe as in {@code l’huile}, {@code children’s} or {@code mois’}. */
    private static int apostrophe(char before, char after) {
        boolean elision = "ldnsjcmtuLDNSJCMTU".indexOf(before) >= 0 && "aeiouyhéèêâîôAEIOUYH".indexOf(after) >= 0;
        boolean ending = Character.isLetter(before) && (after == 's' || !Character.isLetter(after));
        return elision || ending ? 3 : -1;
    }
}
