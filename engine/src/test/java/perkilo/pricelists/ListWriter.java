package perkilo.pricelists;

import java.io.IOException;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.text.DecimalFormat;
import java.text.DecimalFormatSymbols;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import java.util.TreeSet;
import java.util.function.Function;
import org.apache.poi.xssf.usermodel.XSSFCell;
import org.apache.poi.xssf.usermodel.XSSFCellStyle;
import org.apache.poi.xssf.usermodel.XSSFRow;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;

/** An invented list, written in one of the layouts that suppliers use; and what its long form has to be. */
final class ListWriter {

    enum Layout {
        LONG_PACKS,
        LONG_UNITS,
        WIDE_PACKS,
        WIDE_UNITS,
        WIDE_TWO_ROWS,
        PAIRED_COLUMNS,
        BREAKS_IN_CELL,
        PACKS_IN_NAMES
    }

    enum Language {
        ENGLISH,
        GERMAN,
        FRENCH,
        ITALIAN,
        SPANISH
    }

    enum Kind {
        SEMICOLONS,
        TABS,
        COMMAS,
        XLSX_TEXT,
        XLSX_NUMBERS,
        JSON
    }

    enum Basis {
        PACK,
        UNIT,
        HUNDRED_G
    }

    enum Money {
        CODE_IN_HEADER,
        COLUMN,
        BESIDE_THE_PRICE,
        TITLE
    }

    /** One item in one pack, with its price at each break. */
    private record Entry(String item, BigDecimal pack, String unit, List<BigDecimal> prices) {}

    private static final String[][] HEADS = {
        {"Product", "Pack", "From quantity of packs", "Price", "Currency"},
        {"Bezeichnung", "Gebinde", "Ab Menge", "Preis", "Währung"},
        {"Désignation", "Conditionnement", "À partir de", "Prix", "Devise"},
        {"Prodotto", "Confezione", "Da quantità", "Prezzo", "Valuta"},
        {"Producto", "Envase", "Desde", "Precio", "Moneda"}
    };
    private static final String[] PER_PACK = {"per drum", "je Gebinde", "par fût", "per fusto", "por bidón"};
    private static final String[] PER = {"per ", "pro ", "par ", "al ", "por "};
    private static final String[][] PACKS = {
        {"%s %s drum", "%s%s", "drum %s %s"},
        {"%s-%s-Fass", "Kanister à %s %s", "%s %s"},
        {"fût de %s %s", "%s %s", "bidon %s%s"},
        {"fusto da %s %s", "%s %s", "tanica %s%s"},
        {"bidón de %s %s", "%s %s", "saco %s%s"}
    };

    private final Layout layout;
    private final int language;
    private final Kind kind;
    private final Basis basis;
    private final Money money;
    private final boolean comma;
    private final Random random;
    private final List<BigDecimal> breaks = new ArrayList<>();
    private final List<Entry> entries = new ArrayList<>();
    private final String unit;

    ListWriter(Layout layout, Language language, Kind kind, Basis basis, Money money, boolean comma, long seed) {
        this.layout = layout;
        this.language = List.of(Language.values()).indexOf(language);
        this.kind = kind;
        this.basis = basis;
        this.money = money == Money.TITLE && kind == Kind.JSON ? Money.CODE_IN_HEADER : money;
        this.comma = comma;
        this.random = new Random(seed);
        this.unit = basis == Basis.HUNDRED_G ? "kg" : List.of("kg", "L", "lb").get(random.nextInt(3));
        invent();
    }

    private boolean inUnits() {
        return layout == Layout.LONG_UNITS || layout == Layout.WIDE_UNITS;
    }

    private void invent() {
        TreeSet<Integer> steps = new TreeSet<>();
        while (steps.size() < 2) {
            steps.add(inUnits() ? 1001 + random.nextInt(900) : 2 + random.nextInt(40));
        }
        breaks.add(BigDecimal.ONE);
        steps.forEach(step -> breaks.add(BigDecimal.valueOf(step)));
        List<String> sizes = List.of("0.5", "1", "5", "25", "190", "1000");
        int count = 1 + random.nextInt(6);
        for (int item = 0; item < count; item++) {
            List<BigDecimal> prices = new ArrayList<>();
            for (int at = 0; at < breaks.size(); at++) {
                prices.add(BigDecimal.valueOf(1 + random.nextInt(300_000), 2));
            }
            entries.add(new Entry(
                    "Öl No. %d, \"fein\"".formatted(item),
                    new BigDecimal(sizes.get(random.nextInt(sizes.size()))),
                    unit,
                    prices));
        }
        // the mark of decimals has to show somewhere, and that a break counts packs
        entries.add(new Entry(
                "Last one",
                new BigDecimal("190"),
                unit,
                List.of(new BigDecimal("12.50"), new BigDecimal("11.25"), new BigDecimal("10.75"))));
    }

    /** The long form, a row a price: item, pack, unit, from, price, what for, currency. */
    List<String> expected() {
        List<String> rows = new ArrayList<>();
        for (Entry entry : entries) {
            for (int at = 0; at < breaks.size(); at++) {
                BigDecimal begins = inUnits() ? breaks.get(at) : breaks.get(at).multiply(entry.pack);
                BigDecimal from = begins.compareTo(entry.pack) > 0 ? begins : null;
                BigDecimal price =
                        basis == Basis.HUNDRED_G ? entry.prices.get(at).multiply(BigDecimal.TEN) : entry.prices.get(at);
                rows.add(String.join(
                        "|",
                        entry.item,
                        plain(entry.pack),
                        entry.unit,
                        from == null ? "" : plain(from),
                        plain(price),
                        basis == Basis.PACK ? "pack" : entry.unit,
                        "GBP"));
            }
        }
        return rows;
    }

    static String plain(BigDecimal number) {
        BigDecimal stripped = number.stripTrailingZeros();
        return (stripped.scale() < 0 ? stripped.setScale(0) : stripped).toPlainString();
    }

    /** Writes the list. */
    Path write(Path folder) {
        List<List<Object>> rows = new ArrayList<>();
        if (kind != Kind.JSON) {
            rows.add(List.of("Fen & Moor (invented)"));
            if (money == Money.TITLE) {
                rows.add(List.of("Prices in GBP"));
            }
            rows.add(List.of());
        }
        boolean wide = layout == Layout.WIDE_PACKS || layout == Layout.WIDE_UNITS || layout == Layout.WIDE_TWO_ROWS;
        switch (layout) {
            case PAIRED_COLUMNS -> rows.addAll(paired());
            case BREAKS_IN_CELL -> rows.addAll(inCells());
            case PACKS_IN_NAMES -> rows.addAll(inNames());
            default -> rows.addAll(wide ? wide() : longRows());
        }
        try {
            return switch (kind) {
                case SEMICOLONS -> text(folder, rows, ';');
                case TABS -> text(folder, rows, '\t');
                case COMMAS -> text(folder, rows, ',');
                case JSON -> json(folder, rows);
                case XLSX_TEXT, XLSX_NUMBERS -> xlsx(folder, rows);
            };
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private List<List<Object>> longRows() {
        List<List<Object>> rows = new ArrayList<>();
        String[] heads = HEADS[language];
        String from = language == 0 ? "From" : heads[2];
        List<Object> header = new ArrayList<>(
                List.of(heads[0], heads[1], inUnits() ? from + " (" + unit + ")" : from, heads[3] + " " + note()));
        if (money == Money.COLUMN) {
            header.add(heads[4]);
        }
        rows.add(header);
        for (Entry entry : entries) {
            for (int at = 0; at < breaks.size(); at++) {
                List<Object> row =
                        new ArrayList<>(List.of(entry.item, pack(entry), breaks.get(at), price(entry.prices.get(at))));
                if (money == Money.COLUMN) {
                    row.add("GBP");
                }
                rows.add(row);
            }
        }
        return rows;
    }

    private List<List<Object>> wide() {
        List<List<Object>> rows = new ArrayList<>();
        String[] heads = HEADS[language];
        List<Object> header = new ArrayList<>(List.of(heads[0], heads[1]));
        for (int at = 0; at < breaks.size(); at++) {
            header.add(breakHead(at));
        }
        if (money == Money.COLUMN) {
            header.add(heads[4]);
        }
        if (layout == Layout.WIDE_TWO_ROWS) {
            rows.add(List.of("", "", heads[3] + " " + note()));
        }
        rows.add(header);
        for (Entry entry : entries) {
            List<Object> row = new ArrayList<>(List.of(entry.item, pack(entry)));
            entry.prices.forEach(price -> row.add(price(price)));
            if (money == Money.COLUMN) {
                row.add("GBP");
            }
            rows.add(row);
        }
        return rows;
    }

    /** A quantity and a price in turn: {@code Qty 1, Price 1, Qty 2, Price 2}. */
    private List<List<Object>> paired() {
        String[] heads = HEADS[language];
        String quantity = List.of("Qty", "Menge", "Qté", "Quantità", "Cantidad").get(language);
        List<Object> header = new ArrayList<>(List.of(heads[0], heads[1]));
        for (int at = 1; at <= breaks.size(); at++) {
            header.add(quantity + " " + at);
            header.add(heads[3] + " " + at + " (" + note() + ")");
        }
        return rows(header, entry -> {
            List<Object> row = new ArrayList<>(List.of(entry.item, pack(entry)));
            for (int at = 0; at < breaks.size(); at++) {
                row.add(breaks.get(at));
                row.add(price(entry.prices.get(at)));
            }
            return row;
        });
    }

    /**
     * All prices of an item in one cell: {@code 1–4: 12.50 / 5–9: 11.80 / 10+: 11.20}, or {@code 12.50 (5+: 11.80)}.
     */
    private List<List<Object>> inCells() {
        String[] heads = HEADS[language];
        return rows(new ArrayList<>(List.of(heads[0], heads[1], heads[3] + " (" + note() + ")")), entry -> {
            StringBuilder cell = new StringBuilder();
            boolean ranges = random.nextBoolean();
            for (int at = 0; at < breaks.size(); at++) {
                String price = shownPrice(entry.prices.get(at));
                String begins = plain(breaks.get(at));
                boolean last = at + 1 == breaks.size();
                String ends = last ? "" : plain(breaks.get(at + 1).subtract(BigDecimal.ONE));
                if (ranges) {
                    cell.append(at == 0 ? "" : " / ")
                            .append(begins)
                            .append(last ? "+" : "–" + ends)
                            .append(": ")
                            .append(price);
                } else {
                    cell.append(at == 0 ? "" : at == 1 ? " (" : "; ")
                            .append(at == 0 ? "" : begins + "+: ")
                            .append(price)
                            .append(last ? ")" : "");
                }
            }
            return new ArrayList<>(List.of(entry.item, pack(entry), cell.toString()));
        });
    }

    private String shownPrice(BigDecimal price) {
        return format(price, "#,##0.00") + (money == Money.BESIDE_THE_PRICE ? " £" : "");
    }

    /** The pack at the end of the name. */
    private List<List<Object>> inNames() {
        List<Object> header = new ArrayList<>(List.of(HEADS[language][0]));
        for (int at = 0; at < breaks.size(); at++) {
            header.add(breakHead(at));
        }
        return rows(header, entry -> {
            List<Object> row = new ArrayList<>(List.of(entry.item + " " + pack(entry)));
            entry.prices.forEach(price -> row.add(price(price)));
            return row;
        });
    }

    private List<List<Object>> rows(List<Object> header, Function<Entry, List<Object>> row) {
        List<List<Object>> rows = new ArrayList<>();
        if (money == Money.COLUMN) {
            header.add(HEADS[language][4]);
        }
        rows.add(header);
        for (Entry entry : entries) {
            List<Object> cells = row.apply(entry);
            if (money == Money.COLUMN) {
                cells.add("GBP");
            }
            rows.add(cells);
        }
        return rows;
    }

    private String breakHead(int at) {
        String quantity = plain(breaks.get(at));
        String note = layout == Layout.WIDE_TWO_ROWS ? "" : " (" + note() + ")";
        if (inUnits()) {
            return List.of("from ", "ab ", "à partir de ", "da ", "desde ").get(language) + quantity + " " + unit
                    + note;
        }
        String next = at + 1 < breaks.size() ? plain(breaks.get(at + 1).subtract(BigDecimal.ONE)) : "";
        return switch (random.nextInt(3)) {
            case 0 -> next.isEmpty() ? quantity + "+" + note : quantity + "–" + next + note;
            case 1 -> "≥ " + quantity + note;
            default ->
                List.of("from %s drums", "ab %s Gebinde", "à partir de %s fûts", "da %s fusti", "desde %s bidones")
                                .get(language)
                                .formatted(quantity)
                        + note;
        };
    }

    /** What the header says of prices. */
    private String note() {
        String code = money == Money.CODE_IN_HEADER ? "GBP" : "";
        String per = switch (basis) {
            case PACK -> PER_PACK[language];
            case UNIT -> PER[language] + unit;
            case HUNDRED_G -> PER[language] + "100 g";
        };
        return (code + " " + per).strip();
    }

    private String pack(Entry entry) {
        String text = PACKS[language][random.nextInt(3)];
        return text.formatted(number(entry.pack), entry.unit);
    }

    private Object price(BigDecimal price) {
        String beside = money == Money.BESIDE_THE_PRICE ? " £" : "";
        return kind == Kind.XLSX_NUMBERS || (kind == Kind.JSON && beside.isEmpty())
                ? price
                : format(price, "#,##0.00") + beside;
    }

    private String number(BigDecimal number) {
        return format(number, "0.###");
    }

    private String format(BigDecimal number, String pattern) {
        DecimalFormatSymbols symbols = DecimalFormatSymbols.getInstance(Locale.ROOT);
        symbols.setDecimalSeparator(comma ? ',' : '.');
        symbols.setGroupingSeparator(comma ? '.' : ',');
        return new DecimalFormat(pattern, symbols).format(number);
    }

    private static Path text(Path folder, List<List<Object>> rows, char delimiter) throws IOException {
        StringBuilder text = new StringBuilder();
        for (List<Object> row : rows) {
            for (int at = 0; at < row.size(); at++) {
                text.append(at == 0 ? "" : delimiter)
                        .append('"')
                        .append(shown(row.get(at)).replace("\"", "\"\""))
                        .append('"');
            }
            text.append("\r\n");
        }
        return Files.write(folder.resolve("list.csv"), text.toString().getBytes(StandardCharsets.UTF_8));
    }

    private static String shown(Object value) {
        return value instanceof BigDecimal number ? plain(number) : value.toString();
    }

    private static Path json(Path folder, List<List<Object>> rows) throws IOException {
        List<Object> header = rows.get(rows.size() > 1 && rows.get(0).get(0).equals("") ? 1 : 0);
        StringBuilder text = new StringBuilder("[");
        for (List<Object> row : rows.subList(rows.indexOf(header) + 1, rows.size())) {
            text.append(text.length() == 1 ? "\n{" : ",\n{");
            for (int at = 0; at < row.size(); at++) {
                Object value = row.get(at);
                text.append(at == 0 ? "" : ", ")
                        .append(quoted(header.get(at).toString()))
                        .append(": ");
                text.append(value instanceof BigDecimal number ? plain(number) : quoted(value.toString()));
            }
            text.append('}');
        }
        return Files.write(
                folder.resolve("list.json"), text.append("]").toString().getBytes(StandardCharsets.UTF_8));
    }

    private static String quoted(String text) {
        return '"' + text.replace("\\", "\\\\").replace("\"", "\\\"") + '"';
    }

    private Path xlsx(Path folder, List<List<Object>> rows) throws IOException {
        Path file = folder.resolve("list.xlsx");
        try (XSSFWorkbook book = new XSSFWorkbook();
                OutputStream out = Files.newOutputStream(file)) {
            XSSFCellStyle pounds = book.createCellStyle();
            pounds.setDataFormat(book.createDataFormat().getFormat("[$£-809]#,##0.00"));
            XSSFSheet sheet = book.createSheet("Prices");
            for (int at = 0; at < rows.size(); at++) {
                XSSFRow row = sheet.createRow(at);
                for (int column = 0; column < rows.get(at).size(); column++) {
                    put(row.createCell(column), rows.get(at).get(column), pounds);
                }
                if (rows.get(at).size() == 3 && rows.get(at).get(0).equals("")) {
                    sheet.addMergedRegion(new org.apache.poi.ss.util.CellRangeAddress(at, at, 2, 4));
                }
            }
            book.write(out);
        }
        return file;
    }

    private void put(XSSFCell cell, Object value, XSSFCellStyle pounds) {
        if (value instanceof BigDecimal number) {
            cell.setCellValue(number.doubleValue());
            if (money == Money.BESIDE_THE_PRICE) {
                cell.setCellStyle(pounds);
            }
        } else if (!value.toString().isEmpty()) {
            cell.setCellValue(value.toString());
        }
    }

    /** Whether the layout can be written in this kind of file at all. */
    boolean exists() {
        boolean twoRows = layout == Layout.WIDE_TWO_ROWS;
        return !(twoRows && (kind != Kind.XLSX_TEXT && kind != Kind.XLSX_NUMBERS));
    }
}
