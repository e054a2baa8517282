package perkilo.xlsx.author;

/** The colours of result sheets and charts: one accent, greys, and three light fills for cells that need attention. */
final class Palette {

    static final String INK = "26323A";
    static final String MUTED = "66727A";
    static final String RULE = "DCE3E6";
    static final String ACCENT = "17606B";
    static final String ACCENT_GROUND = "E6F0F1";
    static final String HEADER_GROUND = "F1F5F6";
    static final String CHOICE_GROUND = "FFF8DC";
    static final String CHOICE_RULE = "CBB26A";
    static final String FILL_IN_GROUND = "FFEFB3";
    static final String FILL_IN_RULE = "B8860B";
    static final String ERROR = "A3271E";
    static final String ERROR_GROUND = "FBEAE7";
    static final String WARNING = "7A5200";
    static final String WARNING_GROUND = "FDF1D6";

    /**
     * Colours that people with any colour vision tell apart: Okabe and Ito, <cite>Color Universal Design</cite> (2008),
     * then grey and two of Paul Tol's.
     */
    private static final String[] SERIES = {
        "0072B2", "E69F00", "009E73", "CC79A7", "56B4E9", "D55E00", "999999", "332288", "882255", "DDCC77"
    };

    private Palette() {}

    /** The colour of a chart's series, counted from zero; they start again after the tenth. */
    static String series(int number) {
        return SERIES[number % SERIES.length];
    }

    /** A colour as cell styles write it: opaque. */
    static String opaque(String color) {
        return "FF" + color;
    }
}
