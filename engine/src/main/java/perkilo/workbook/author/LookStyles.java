package perkilo.workbook.author;

import perkilo.report.Look;

/** The fonts, grounds and rules of each look. */
final class LookStyles {

    static final String FONT = "Calibri";
    static final int USUAL_SIZE = 11;

    /**
     * How words are written.
     *
     * @param size in points
     */
    record Font(int size, String color, boolean bold) {}

    /**
     * A line at a cell's edge.
     *
     * @param style as the standard calls it, such as {@code thin}
     */
    record Line(String style, String color) {

        static final Line NONE = new Line("", "");
    }

    /** The lines around a cell. */
    record Border(Line top, Line bottom, Line sides) {

        static final Border NONE = new Border(Line.NONE, Line.NONE, Line.NONE);
    }

    private LookStyles() {}

    /**
     * How a cell's words are written.
     *
     * @param linked whether a click leads to another cell; such words are in the accent colour
     */
    static Font font(Look look, boolean linked) {
        boolean plain = ink(look).equals(Palette.INK);
        return new Font(size(look), linked && plain ? Palette.ACCENT : ink(look), isBold(look));
    }

    private static int size(Look look) {
        return switch (look) {
            case TITLE -> 18;
            case ANSWER -> 12;
            case SECTION -> 13;
            case HINT -> 10;
            default -> USUAL_SIZE;
        };
    }

    static String ink(Look look) {
        return switch (look) {
            case TITLE, SECTION, HEADER, KEY -> Palette.ACCENT;
            case HINT -> Palette.MUTED;
            case ERROR -> Palette.ERROR;
            case WARNING -> Palette.WARNING;
            default -> Palette.INK;
        };
    }

    static boolean isBold(Look look) {
        return switch (look) {
            case TITLE, ANSWER, SECTION, HEADER, TOTAL, KEY -> true;
            default -> false;
        };
    }

    /** The colour behind the words; empty for none. */
    static String ground(Look look) {
        return switch (look) {
            case HEADER -> Palette.HEADER_GROUND;
            case CHOICE -> Palette.CHOICE_GROUND;
            case KEY -> Palette.ACCENT_GROUND;
            case ERROR -> Palette.ERROR_GROUND;
            case WARNING -> Palette.WARNING_GROUND;
            default -> "";
        };
    }

    static Border border(Look look) {
        Line accent = new Line("thin", Palette.ACCENT);
        Line rule = new Line("hair", Palette.RULE);
        Line choice = new Line("thin", Palette.CHOICE_RULE);
        return switch (look) {
            case HEADER, SECTION -> new Border(Line.NONE, accent, Line.NONE);
            case LABEL, PLAIN, ERROR, WARNING -> new Border(Line.NONE, rule, Line.NONE);
            case TOTAL, KEY -> new Border(accent, rule, Line.NONE);
            case CHOICE -> new Border(choice, choice, choice);
            default -> Border.NONE;
        };
    }
}
