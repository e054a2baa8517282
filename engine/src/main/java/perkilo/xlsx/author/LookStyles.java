package perkilo.xlsx.author;

import java.util.Objects;
import org.jspecify.annotations.Nullable;
import perkilo.sheet.Look;

/** The font, fill and border lines of each look. */
final class LookStyles {

    static final String FONT = "Calibri";
    static final int USUAL_SIZE = 11;

    /**
     * A font.
     *
     * @param size in points
     */
    record Font(int size, String color, boolean bold) {

        /**
         * Explicit: a generated equals and hashCode cost milliseconds at start-up (see engine/docs/measurements.md).
         */
        @Override
        public boolean equals(@Nullable Object other) {
            return other instanceof Font font && size == font.size && bold == font.bold && color.equals(font.color);
        }

        @Override
        public int hashCode() {
            return Objects.hash(size, color, bold);
        }
    }

    /** A line at a cell's edge. */
    enum Line {
        NONE("", ""),
        ACCENT("thin", Palette.ACCENT),
        RULE("hair", Palette.RULE),
        CHOICE("thin", Palette.CHOICE_RULE),
        FILL_IN("thin", Palette.FILL_IN_RULE);

        private final String style;
        private final String color;

        Line(String style, String color) {
            this.style = style;
            this.color = color;
        }

        /** Its name in the standard, such as {@code thin}. */
        String style() {
            return style;
        }

        String color() {
            return color;
        }
    }

    /** The lines around a cell. */
    enum Border {
        NONE(Line.NONE, Line.NONE, Line.NONE),
        UNDERLINED(Line.NONE, Line.ACCENT, Line.NONE),
        RULED(Line.NONE, Line.RULE, Line.NONE),
        SUMMED(Line.ACCENT, Line.RULE, Line.NONE),
        BOXED(Line.CHOICE, Line.CHOICE, Line.CHOICE),
        ASKED(Line.FILL_IN, Line.FILL_IN, Line.FILL_IN);

        private final Line top;
        private final Line bottom;
        private final Line sides;

        Border(Line top, Line bottom, Line sides) {
            this.top = top;
            this.bottom = bottom;
            this.sides = sides;
        }

        Line top() {
            return top;
        }

        Line bottom() {
            return bottom;
        }

        Line sides() {
            return sides;
        }
    }

    private LookStyles() {}

    /**
     * The font of a cell's words.
     *
     * @param linked whether the cell has a link; such words are in the accent colour
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
            case WARNING, NOTICE -> Palette.WARNING;
            default -> Palette.INK;
        };
    }

    static boolean isBold(Look look) {
        return switch (look) {
            case TITLE, ANSWER, SECTION, HEADER, TOTAL, KEY -> true;
            default -> false;
        };
    }

    /** The fill colour behind the words; empty for none. */
    static String ground(Look look) {
        return switch (look) {
            case HEADER -> Palette.HEADER_GROUND;
            case CHOICE -> Palette.CHOICE_GROUND;
            case FILL_IN -> Palette.FILL_IN_GROUND;
            case KEY -> Palette.ACCENT_GROUND;
            case ERROR -> Palette.ERROR_GROUND;
            case WARNING -> Palette.WARNING_GROUND;
            default -> "";
        };
    }

    static Border border(Look look) {
        return switch (look) {
            case HEADER, SECTION -> Border.UNDERLINED;
            case LABEL, PLAIN, ERROR, WARNING, NOTICE -> Border.RULED;
            case TOTAL, KEY -> Border.SUMMED;
            case CHOICE -> Border.BOXED;
            case FILL_IN -> Border.ASKED;
            default -> Border.NONE;
        };
    }
}
