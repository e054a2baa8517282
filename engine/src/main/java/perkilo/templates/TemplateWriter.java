package perkilo.templates;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.Month;
import java.time.ZoneOffset;
import java.util.Date;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.apache.poi.ss.SpreadsheetVersion;
import org.apache.poi.ss.usermodel.CellStyle;
import org.apache.poi.ss.usermodel.DataValidation;
import org.apache.poi.ss.usermodel.DataValidationHelper;
import org.apache.poi.ss.usermodel.PrintSetup;
import org.apache.poi.ss.util.AreaReference;
import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.ss.util.CellRangeAddressList;
import org.apache.poi.ss.util.CellReference;
import org.apache.poi.xssf.usermodel.XSSFCell;
import org.apache.poi.xssf.usermodel.XSSFClientAnchor;
import org.apache.poi.xssf.usermodel.XSSFComment;
import org.apache.poi.xssf.usermodel.XSSFDrawing;
import org.apache.poi.xssf.usermodel.XSSFRichTextString;
import org.apache.poi.xssf.usermodel.XSSFRow;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFTable;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import perkilo.schema.InputColumn;
import perkilo.schema.SettingsSheet;
import perkilo.schema.SheetSchema;
import perkilo.schema.ValueKind;
import perkilo.xlsx.author.WrappedWords;

/** Writes a template's workbook. */
public final class TemplateWriter {

    private static final int CHARACTER = 256;
    private static final int WIDEST = 60;
    private static final int NARROWEST = 10;

    /** The extra width of a bold head: wider letters, an indent, and the filter's button. */
    private static final double BOLD = 1.1;

    private static final int BUTTON = 4;
    private static final int PROSE_WIDTH = 110;
    private static final float LINE_POINTS = 15;
    private static final float PARAGRAPH_GAP_POINTS = 5;
    private static final float TITLE_POINTS = 26;
    private static final Date MADE =
            Date.from(LocalDateTime.of(2026, Month.NOVEMBER, 20, 0, 0).toInstant(ZoneOffset.UTC));

    private final XSSFWorkbook book = new XSSFWorkbook();
    private final TemplateStyles styles = new TemplateStyles(book);
    private final TemplateSource source;
    private final Map<String, List<String>> headers = new LinkedHashMap<>();

    private TemplateWriter(TemplateSource source) {
        this.source = source;
        source.tables().forEach((name, table) -> headers.put(name, table.rows().get(0)));
    }

    /**
     * Makes all templates anew: {@code TemplateWriter workbook-templates}.
     *
     * @param arguments the folder that holds {@code source/}; a workbook is written to it for each folder in
     *     {@code source/}
     */
    public static void main(String[] arguments) throws IOException {
        Path templates = Path.of(arguments[0]);
        try (var folders = Files.list(templates.resolve("source"))) {
            for (Path folder : folders.filter(Files::isDirectory).sorted().toList()) {
                write(folder, templates.resolve(folder.getFileName() + ".xlsx"));
            }
        }
    }

    /**
     * Writes one template.
     *
     * @param folder its tables
     * @param target the workbook
     */
    public static void write(Path folder, Path target) throws IOException {
        TemplateWriter writer = new TemplateWriter(TemplateSource.read(folder));
        try (XSSFWorkbook book = writer.book;
                OutputStream out = Files.newOutputStream(target)) {
            writer.fill();
            book.write(out);
        }
    }

    private void fill() {
        book.getProperties().getCoreProperties().setCreated(Optional.of(MADE));
        book.getProperties().getCoreProperties().setCreator("Perkilo");
        startHere();
        source.tables().forEach(this::sheet);
    }

    private void startHere() {
        XSSFSheet sheet = book.createSheet("Start here");
        sheet.setDisplayGridlines(false);
        sheet.setColumnWidth(0, PROSE_WIDTH * CHARACTER);
        int at = 0;
        for (String line : source.startHere()) {
            XSSFRow row = sheet.createRow(at);
            row.setHeightInPoints(
                    at == 0
                            ? TITLE_POINTS
                            : WrappedWords.lines(line, PROSE_WIDTH) * LINE_POINTS + PARAGRAPH_GAP_POINTS);
            XSSFCell cell = row.createCell(0);
            cell.setCellValue(line);
            cell.setCellStyle(at == 0 ? styles.titleStyle() : styles.wordsStyle());
            at++;
        }
        print(sheet);
    }

    private void sheet(String name, TemplateSource.Table table) {
        XSSFSheet sheet = book.createSheet(name);
        List<String> heads = table.rows().get(0);
        for (int row = 0; row < table.rows().size(); row++) {
            XSSFRow cells = sheet.createRow(row);
            for (int column = 0; column < heads.size(); column++) {
                String text = column < table.rows().get(row).size()
                        ? table.rows().get(row).get(column)
                        : "";
                ValueKind kind = kind(table, row, column);
                if (row == 0) {
                    writeHead(cells.createCell(column), text, kind);
                } else {
                    write(cells.createCell(column), text, kind);
                }
            }
        }
        int lines = 1;
        for (int column = 0; column < heads.size(); column++) {
            describe(sheet, name, table.schema(), heads.get(column), column);
            int width = width(table, column);
            sheet.setColumnWidth(column, width * CHARACTER);
            lines = Math.max(lines, WrappedWords.lines(heads.get(column), (int) ((width - BUTTON) / BOLD)));
        }
        sheet.getRow(0).setHeightInPoints(lines * LINE_POINTS + PARAGRAPH_GAP_POINTS);
        makeTable(sheet, name, heads.size(), table.rows().size());
        sheet.createFreezePane(1, 1);
        print(sheet);
        sheet.setRepeatingRows(new CellRangeAddress(0, 0, -1, -1));
    }

    private static void print(XSSFSheet sheet) {
        sheet.getPrintSetup().setPaperSize(PrintSetup.A4_PAPERSIZE);
        sheet.getPrintSetup().setLandscape(true);
        sheet.setFitToPage(true);
        sheet.getPrintSetup().setFitHeight((short) 0);
    }

    private void writeHead(XSSFCell cell, String text, ValueKind kind) {
        boolean numbers = kind.isNumber() || kind == ValueKind.DATE;
        cell.setCellStyle(numbers ? styles.numberHeaderStyle() : styles.headerStyle());
        cell.setCellValue(text);
    }

    private void write(XSSFCell cell, String text, ValueKind kind) {
        cell.setCellStyle(style(kind, text));
        if (text.isBlank()) {
            return;
        }
        if (kind == ValueKind.DATE) {
            cell.setCellValue(LocalDate.parse(text));
        } else if (isNumber(kind, text)) {
            cell.setCellValue(Double.parseDouble(text));
        } else {
            cell.setCellValue(text);
        }
    }

    private CellStyle style(ValueKind kind, String text) {
        if (kind == ValueKind.DATE) {
            return styles.dayStyle();
        }
        return kind.isNumber() || isNumber(kind, text) ? styles.inputStyle() : styles.textStyle();
    }

    private static boolean isNumber(ValueKind kind, String text) {
        return (kind.isNumber() || kind == ValueKind.ANY) && text.matches("-?\\d+(\\.\\d+)?");
    }

    /** The kind of value in a cell; on the Settings sheet each row has its own kind. */
    private static ValueKind kind(TemplateSource.Table table, int row, int column) {
        String header = table.rows().get(0).get(column);
        if (table.schema().equals(SettingsSheet.SCHEMA) && header.equals(SettingsSheet.VALUE.header()) && row > 0) {
            String setting = table.rows().get(row).get(0);
            return SettingsSheet.SETTINGS.stream()
                    .filter(one -> one.header().equals(setting))
                    .map(InputColumn::kind)
                    .findFirst()
                    .orElse(ValueKind.TEXT);
        }
        return table.schema().column(header).map(InputColumn::kind).orElse(ValueKind.TEXT);
    }

    private void describe(XSSFSheet sheet, String name, SheetSchema schema, String header, int column) {
        Optional<InputColumn> known = schema.column(header);
        if (known.isEmpty()) {
            return;
        }
        note(sheet, column, known.get());
        DropDowns.listFor(name, known.get(), headers).ifPresent(list -> {
            DataValidationHelper helper = sheet.getDataValidationHelper();
            DataValidation validation = helper.createValidation(
                    helper.createFormulaListConstraint(list),
                    new CellRangeAddressList(1, DropDowns.ROOM, column, column));
            // other names are allowed: a component is not on the list of materials, and a new supplier may not have a
            // row yet
            validation.setShowErrorBox(false);
            sheet.addValidationData(validation);
        });
    }

    private static void note(XSSFSheet sheet, int column, InputColumn known) {
        StringBuilder text = new StringBuilder(known.explanation()).append('.');
        if (!known.unit().isEmpty()) {
            text.append("\nUnit: ").append(known.unit());
        }
        text.append("\nExample: ").append(known.example());
        if (!known.byDefault().isEmpty()) {
            text.append("\nBlank means: ").append(known.byDefault());
        }
        XSSFDrawing drawing = sheet.createDrawingPatriarch();
        XSSFClientAnchor anchor = new XSSFClientAnchor(0, 0, 0, 0, column + 1, 1, column + 4, 7);
        XSSFComment comment = drawing.createCellComment(anchor);
        comment.setString(new XSSFRichTextString(text.toString()));
        comment.setAuthor("Perkilo");
        comment.setAddress(0, column);
    }

    private void makeTable(XSSFSheet sheet, String name, int columns, int rows) {
        AreaReference area = new AreaReference(
                new CellReference(0, 0),
                new CellReference(Math.max(1, rows - 1), columns - 1),
                SpreadsheetVersion.EXCEL2007);
        XSSFTable table = sheet.createTable(area);
        String id = name.replaceAll("[^A-Za-z0-9]", "_") + "_table";
        table.setName(id);
        table.setDisplayName(id);
        table.getCTTable().addNewAutoFilter().setRef(area.formatAsString());
    }

    private static int width(TemplateSource.Table table, int column) {
        int longest = NARROWEST;
        for (String word : table.rows().get(0).get(column).split(" ", -1)) {
            longest = Math.max(longest, (int) Math.ceil(word.length() * BOLD) + BUTTON);
        }
        for (int row = 1; row < table.rows().size(); row++) {
            List<String> cells = table.rows().get(row);
            longest =
                    Math.max(longest, column < cells.size() ? cells.get(column).length() + 2 : 0);
        }
        return Math.min(WIDEST, longest);
    }
}
