package perkilo.xlsx.grid;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;

/**
 * Delimited files as people and programs write them, each with the rows that it holds.
 *
 * <p>The ways to spoil a file are those of G. Vitagliano, M. Hameed, L. Jiang, L. Reisener, E. Wu and F. Naumann,
 * "Pollock: A Data Loading Benchmark", Proceedings of the VLDB Endowment 16(8), 2023: file and table, number of
 * delimiters, structural characters. The base file is invented.
 */
final class MessyFiles {

    static final int ROWS = 60;

    private MessyFiles() {}

    /**
     * One file.
     *
     * @param name how it was spoilt
     * @param text its content
     * @param rows its fields; blank lines are left out
     */
    record Messy(String name, String text, List<List<String>> rows) {}

    /** How a file is written. */
    record Style(String delimiter, String quote, String escape, String lineEnd) {

        String field(String text, boolean always) {
            boolean needed = text.contains(delimiter)
                    || text.contains("\n")
                    || text.contains("\r")
                    || (!quote.isEmpty() && text.contains(quote))
                    || (delimiter.contains(" ") && text.contains(" "));
            if (quote.isEmpty()) {
                return escape.isEmpty()
                        ? text
                        : text.replace(escape, escape + escape).replace(delimiter, escape + delimiter);
            }
            String inside = escape.equals("\\") ? text.replace("\\", "\\\\") : text;
            return needed || always ? quote + inside.replace(quote, escape + quote) + quote : text;
        }

        String line(List<String> fields, boolean always) {
            return String.join(
                            delimiter,
                            fields.stream().map(f -> field(f, always)).toList())
                    + lineEnd;
        }

        String file(List<List<String>> rows) {
            StringBuilder text = new StringBuilder();
            rows.forEach(row -> text.append(line(row, false)));
            return text.toString();
        }
    }

    static final Style PLAIN = new Style(",", "\"", "\"", "\r\n");

    /** The rows of the base file: a list with dates, times, numbers, names and texts with commas, marks and spaces. */
    static List<List<String>> base() {
        List<List<String>> rows = new ArrayList<>();
        rows.add(List.of("DATE", "TIME", "ITEM NO", "Price", "Quantity", "Name", "Description", "Organic"));
        String[] names = {
            "Glycerin",
            "Shea butter, refined",
            "Children's soap base",
            "Tube 5\" white",
            "Lid 24\"",
            "Cocoa butter",
            "Oat's silk, fine",
            "Rose water"
        };
        String[] texts = {
            "Clear and odourless.",
            "From hand-picked nuts, cold pressed; keep below 25 C.",
            "Soft, mild, doesn't sting. In drums, cans or pails",
            "Round shoulder, 5\" long, for creams and gels",
            "Keep dry",
            "In blocks: 1 kg, 5 kg, 25 kg",
            "A \"light\" touch, also for children's skin, quick to spread",
            "Distilled; no alcohol, no colour."
        };
        Random random = new Random(11);
        for (int i = 0; i < ROWS; i++) {
            int pick = i % names.length;
            rows.add(List.of(
                    "%02d/%02d/2026".formatted(1 + i % 28, 1 + i % 12),
                    "%02d:%02d".formatted(i % 24, 15 * (i % 4)),
                    "%c%c-%04d".formatted('A' + i % 26, 'A' + (i * 7) % 26, random.nextInt(10_000)),
                    "%d.%02d".formatted(random.nextInt(90), random.nextInt(100)),
                    String.valueOf(random.nextInt(30)),
                    names[pick],
                    texts[pick],
                    String.valueOf(random.nextInt(2))));
        }
        return rows;
    }

    /** A price list with decimal commas and a title in which a comma comes first. */
    static List<List<String>> germanList() {
        List<List<String>> rows = new ArrayList<>();
        rows.add(List.of("Preisliste 2027, Nordlicht Rohstoffe, gültig ab 1.1.2027"));
        rows.add(List.of("Artikel", "Gebinde", "Preis", "je"));
        Random random = new Random(5);
        for (int i = 0; i < 40; i++) {
            rows.add(List.of(
                    "Öl Nr. " + i + (i % 3 == 0 ? ", kaltgepresst" : ""),
                    (1 + i % 5) * 5 + " kg",
                    (1 + random.nextInt(60)) + "," + (10 + random.nextInt(90)),
                    "kg"));
        }
        return rows;
    }

    /** All files. */
    static List<Messy> all() {
        List<Messy> all = new ArrayList<>();
        dialects(all);
        fileAndTable(all);
        delimiters(all);
        marks(all);
        people(all);
        return all;
    }

    /** Delimiters, quotation marks, escapes and line ends, each with each where a file can be written so. */
    private static void dialects(List<Messy> all) {
        for (String delimiter : List.of(",", ";", "\t", "|", " ", ", ", "::", "||", "~")) {
            for (String quote : List.of("\"", "'", "")) {
                for (String escape : quote.isEmpty() ? List.of("\\", "") : List.of(quote, "\\", "")) {
                    for (String end : List.of("\n", "\r\n", "\r")) {
                        Style style = new Style(delimiter, quote, escape, end);
                        List<List<String>> rows = rowsFor(style);
                        all.add(new Messy(
                                "dialect " + shown(delimiter) + " " + quote + " " + escape + " " + shown(end),
                                style.file(rows),
                                rows));
                    }
                }
            }
        }
    }

    /** The base rows as far as a dialect can carry them: without escapes no field holds its delimiter. */
    private static List<List<String>> rowsFor(Style style) {
        boolean escapes = style.escape().equals("\\") && style.delimiter().length() == 1;
        if (!style.quote().isEmpty() || (escapes && !style.delimiter().equals(" "))) {
            return base();
        }
        String mark = style.delimiter().strip().isEmpty()
                ? style.delimiter()
                : style.delimiter().strip();
        String instead = mark.equals(" ") ? "_" : " ";
        return base().stream()
                .map(row -> row.stream()
                        .map(f -> f.replace(mark, instead).replace("  ", " "))
                        .toList())
                .toList();
    }

    /** File and table pollutions of the paper. */
    private static void fileAndTable(List<Messy> all) {
        List<List<String>> rows = base();
        String text = PLAIN.file(rows);
        all.add(new Messy("no trailing newline", text.substring(0, text.length() - 2), rows));
        all.add(new Messy("double trailing newline", text + "\r\n", rows));
        all.add(new Messy("no header", PLAIN.file(rows.subList(1, rows.size())), rows.subList(1, rows.size())));
        all.add(new Messy("header only", PLAIN.file(rows.subList(0, 1)), rows.subList(0, 1)));
        all.add(new Messy("one data row", PLAIN.file(rows.subList(0, 2)), rows.subList(0, 2)));
        for (int more = 1; more < 3; more++) {
            List<List<String>> headers = new ArrayList<>(rows);
            for (int i = 0; i < more; i++) {
                headers.add(0, List.of("", "", "", "Price", "", "Name", "", ""));
            }
            all.add(new Messy("header in rows " + (more + 1), PLAIN.file(headers), headers));
        }
        for (int columns : List.of(4, 8, 12)) {
            List<List<String>> two = new ArrayList<>(rows);
            List<List<String>> second = new ArrayList<>();
            for (int i = 0; i < 10; i++) {
                List<String> row = new ArrayList<>();
                for (int column = 0; column < columns; column++) {
                    row.add(i == 0 ? "col" + column : String.valueOf(i * column));
                }
                second.add(row);
            }
            two.addAll(second);
            all.add(new Messy("two tables, second of " + columns, PLAIN.file(rows) + "\r\n" + PLAIN.file(second), two));
        }
        for (boolean delimited : List.of(true, false)) {
            for (boolean blank : List.of(true, false)) {
                String words = "Price list of Quellmoor, valid from 1 March 2026, in EUR";
                String line = PLAIN.field(words, false) + (delimited ? ",,,,,,," : "") + "\r\n";
                String gap = blank ? (delimited ? ",,,,,,,\r\n" : "\r\n") : "";
                List<List<String>> before = new ArrayList<>(rows);
                List<List<String>> after = new ArrayList<>(rows);
                for (int i = 0; i < 3; i++) {
                    before.add(0, List.of(words));
                    after.add(List.of(words));
                }
                String how = (delimited ? " delimited" : "") + (blank ? " with a blank row" : "");
                all.add(new Messy("preamble" + how, line.repeat(3) + gap + text, before));
                all.add(new Messy("footnote" + how, text + gap + line.repeat(3), after));
            }
        }
        all.add(new Messy("byte-order mark", text, rows));
        all.add(new Messy("all quoted", quotedAll(rows), rows));
        List<List<String>> wide = new ArrayList<>();
        rows.forEach(row -> {
            List<String> cells = new ArrayList<>(row);
            for (int i = 0; i < 300; i++) {
                cells.add(row.get(3));
            }
            wide.add(cells);
        });
        all.add(new Messy("308 columns", PLAIN.file(wide), wide));
        List<List<String>> narrow = rows.stream().map(row -> row.subList(5, 6)).toList();
        all.add(new Messy("one column", PLAIN.file(narrow), narrow));
        List<List<String>> breaks = new ArrayList<>();
        for (List<String> row : rows) {
            List<String> cells = new ArrayList<>(row);
            cells.set(6, row.get(6) + "\nLine two, with a comma; and \"marks\"\r\n\nand more");
            breaks.add(cells);
        }
        all.add(new Messy("fields with line breaks", PLAIN.file(breaks), breaks));
        StringBuilder trailing = new StringBuilder();
        rows.forEach(
                row -> trailing.append(PLAIN.line(row, false).stripTrailing()).append(",,\r\n"));
        all.add(new Messy("trailing delimiters", trailing.toString(), rows));
        StringBuilder spaced = new StringBuilder();
        rows.forEach(row -> spaced.append(PLAIN.line(row, false)).append("\r\n"));
        all.add(new Messy("a blank line after each row", spaced.toString(), rows));
        StringBuilder mixed = new StringBuilder();
        String[] ends = {"\n", "\r\n", "\r"};
        for (int i = 0; i < rows.size(); i++) {
            mixed.append(PLAIN.line(rows.get(i), false).stripTrailing()).append(ends[i % 3]);
        }
        all.add(new Messy("mixed line ends", mixed.toString(), rows));
    }

    private static String quotedAll(List<List<String>> rows) {
        StringBuilder text = new StringBuilder();
        rows.forEach(row -> text.append(PLAIN.line(row, true)));
        return text.toString();
    }

    /** A delimiter too few or too many, in one row. */
    private static void delimiters(List<Messy> all) {
        List<List<String>> rows = base();
        for (int row : List.of(0, 1, 4, 30, ROWS)) {
            for (int column = 1; column < 8; column++) {
                List<String> less = new ArrayList<>(rows.get(row));
                String joined = less.get(column - 1) + less.get(column);
                boolean clean = joined.indexOf(',') < 0 && joined.indexOf('"') < 0;
                less.remove(column);
                less.set(column - 1, joined);
                if (clean) {
                    all.add(changed("delimiter missing in row " + row + " column " + column, rows, row, less));
                }
                List<String> more = new ArrayList<>(rows.get(row));
                more.add(column, "");
                all.add(changed("delimiter too many in row " + row + " column " + column, rows, row, more));
            }
        }
    }

    private static Messy changed(String name, List<List<String>> rows, int row, List<String> fields) {
        List<List<String>> all = new ArrayList<>(rows);
        all.set(row, fields);
        return new Messy(name, PLAIN.file(all), all);
    }

    /** A quotation mark too many at the beginning of each field of some rows, or inside. */
    private static void marks(List<Messy> all) {
        List<List<String>> rows = base();
        for (int row : List.of(0, 1, 2, 4, 5, 7, 31, ROWS)) {
            for (int column = 0; column < 8; column++) {
                String value = rows.get(row).get(column);
                String written = PLAIN.field(value, false);
                boolean quoted = written.startsWith("\"");
                List<String> fields = new ArrayList<>();
                rows.get(row).forEach(field -> fields.add(PLAIN.field(field, false)));
                fields.set(column, quoted ? "\"\"" + written.substring(1) : "\"" + written);
                all.add(spoilt(
                        "mark too many in row " + row + " column " + column, rows, row, column, fields, "\"" + value));
                if (quoted) {
                    int middle = value.indexOf(' ') + 1;
                    String inside = value.substring(0, middle) + "\"" + value.substring(middle);
                    fields.set(
                            column,
                            "\"" + value.substring(0, middle).replace("\"", "\"\"") + "\""
                                    + value.substring(middle).replace("\"", "\"\"") + "\"");
                    all.add(spoilt("mark inside row " + row + " column " + column, rows, row, column, fields, inside));
                }
            }
        }
    }

    private static Messy spoilt(
            String name, List<List<String>> rows, int row, int column, List<String> written, String value) {
        StringBuilder text = new StringBuilder();
        List<List<String>> truth = new ArrayList<>(rows);
        List<String> cells = new ArrayList<>(rows.get(row));
        cells.set(column, value);
        truth.set(row, cells);
        for (int i = 0; i < rows.size(); i++) {
            text.append(i == row ? String.join(",", written) + "\r\n" : PLAIN.line(rows.get(i), false));
        }
        return new Messy(name, text.toString(), truth);
    }

    /** Lists as buyers get them. */
    private static void people(List<Messy> all) {
        List<List<String>> german = germanList();
        for (String end : List.of("\n", "\r\n", "\r")) {
            Style style = new Style(";", "\"", "\"", end);
            String body = style.file(german.subList(1, german.size()));
            all.add(new Messy(
                    "semicolons under a title with commas " + shown(end),
                    german.get(0).get(0) + end + body,
                    german));
            all.add(new Messy("decimal commas " + shown(end), body, german.subList(1, german.size())));
        }
        Style tabs = new Style("\t", "\"", "\"", "\n");
        all.add(new Messy("tabs and decimal commas", tabs.file(german), german));
        List<List<String>> two = new ArrayList<>();
        for (int i = 1; i < 30; i++) {
            two.add(List.of(i + "," + i, (3 * i) + ",5"));
        }
        all.add(new Messy("two columns of decimal commas", new Style(";", "\"", "\"", "\n").file(two), two));
        List<List<String>> names = new ArrayList<>();
        for (int i = 0; i < 20; i++) {
            names.add(List.of("Invented Oil " + (char) ('A' + i)));
        }
        all.add(new Messy("a list of names", PLAIN.file(names), names));
        List<List<String>> facts = List.of(
                List.of("Supplier", "Quellmoor, Bremen"),
                List.of("Valid from", "2026-03-01; until further notice"),
                List.of("Currency", "EUR"));
        all.add(new Messy("three facts", PLAIN.file(facts), facts));
        all.add(new Messy(
                "a mark that closes on the next line",
                "\"Name\";\"Limit\";\"n\"\n\"OR-0.75\";\"14.40\";\"\n\"\n",
                List.of(List.of("Name", "Limit", "n"), List.of("OR-0.75", "14.40", ""))));
        List<List<String>> sections = new ArrayList<>();
        StringBuilder report = new StringBuilder();
        for (String section : List.of("Meetings", "Travel", "Gifts")) {
            sections.add(List.of(section));
            sections.add(List.of("Person", "Date", "Firm, or person", "Purpose"));
            for (int i = 0; i < 7; i++) {
                sections.add(
                        i % 3 == 0
                                ? List.of("Ms A. Example", "Oct-26", "Quellmoor", "About soap, and \"oils\"")
                                : List.of("", "", "Nordlicht " + i));
            }
        }
        for (List<String> row : sections) {
            report.append(PLAIN.line(row, false).stripTrailing())
                    .append(",".repeat(9 - row.size()))
                    .append("\n");
        }
        all.add(new Messy("sections with rows of nine", report.toString(), sections));
        List<List<String>> titles = new ArrayList<>(List.of(List.of("Pageid", "PageTitle")));
        StringBuilder pages = new StringBuilder("Pageid,PageTitle\n");
        for (int i = 0; i < 30; i++) {
            String title = i % 4 == 0 ? "\"Heroes\" (song " + i + ")" : i % 4 == 1 ? "L'Exemple " + i : "'t Hof " + i;
            titles.add(List.of(String.valueOf(100 + i), title));
            pages.append(100 + i).append(',').append(title).append('\n');
        }
        all.add(new Messy("marks at the beginning of titles", pages.toString(), titles));
        List<List<String>> powers = new ArrayList<>();
        for (int i = 0; i < 50; i++) {
            powers.add(List.of("-" + i + ".25E-03", "1.0e+" + i, ""));
        }
        all.add(new Messy("powers of ten and a comma at the end", PLAIN.file(powers), powers));
        List<List<String>> few = List.of(List.of("Item", "Price"), List.of("Oil, cold pressed", "12,50"));
        all.add(new Messy("two rows with semicolons", new Style(";", "\"", "\"", "\n").file(few), few));
    }

    static String shown(String text) {
        return text.replace("\r", "CR").replace("\n", "LF").replace("\t", "TAB").replace(" ", "SPACE");
    }
}
