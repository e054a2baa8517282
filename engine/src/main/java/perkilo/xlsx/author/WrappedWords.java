package perkilo.xlsx.author;

/** Text broken into lines as a spreadsheet breaks it: between words, and inside a word that is wider than a line. */
public final class WrappedWords {

    private WrappedWords() {}

    /**
     * How many lines words take.
     *
     * @param text a line feed begins a new line
     * @param width the width of a line in characters; less than one counts as one
     */
    public static int lines(String text, int width) {
        int lines = 0;
        for (String paragraph : text.split("\n", -1)) {
            lines += linesOfParagraph(paragraph, Math.max(1, width));
        }
        return lines;
    }

    private static int linesOfParagraph(String paragraph, int width) {
        int lines = 1;
        int filled = 0;
        for (String word : paragraph.split(" ", -1)) {
            int needed = filled == 0 ? word.length() : filled + 1 + word.length();
            if (needed > width && filled > 0) {
                lines++;
                needed = word.length();
            }
            lines += Math.max(0, (needed - 1) / width);
            filled = needed > width ? needed % width : needed;
        }
        return lines;
    }
}
