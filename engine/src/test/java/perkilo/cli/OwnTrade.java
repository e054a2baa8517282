package perkilo.cli;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellStyle;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;

/**
 * An invented brand's workbook with its own headers: five suppliers in three currencies, some with addresses, articles
 * and terms of payment, names that trip over file systems and calendars, and an order below its supplier's minimum.
 */
final class OwnTrade {

    private final Map<String, List<List<Object>>> sheets = new LinkedHashMap<>();

    static final List<String> SUPPLIERS = List.of(
            "Tarnholt Oleo GmbH",
            "Quillfen: Small/Lots*",
            "Marrowdale Botanicals, Inc.",
            "Pemberwick Glass Ltd",
            "=Østvest; Emballage");

    OwnTrade() {
        LocalDate quoted = LocalDate.of(2026, 11, 10);
        sheet(
                "Set-up",
                row("Setting", "Value"),
                row("Base currency", "EUR"),
                row("Costing date", LocalDate.of(2026, 12, 1)),
                row("FX margin %", 1.0),
                row("Company name", "Lumen & Fjord Skincare"),
                row("Company address", "Havnegade 12\n8000 Aarhus C\nDenmark"),
                row("Deliver to", "Nordlager, Gate 7, 8260 Viby J"),
                row("Buyer contact", "Jonas Lind"),
                row("VAT number", "DK00000000"));
        sheet(
                "Who we buy from",
                row(
                        "Vendor",
                        "Currency",
                        "Incoterms",
                        "Freight",
                        "MOV",
                        "Small order fee",
                        "Lead time (days)",
                        "Payment terms",
                        "Payment terms (days)",
                        "Prepaid %",
                        "Address",
                        "Contact person",
                        "Email",
                        "Customer number",
                        "Duty %"),
                row(
                        SUPPLIERS.get(0),
                        "EUR",
                        "FCA Hamburg",
                        85,
                        250,
                        30,
                        14,
                        "30 days net",
                        30,
                        "",
                        "Hafenweg 4\n20457 Hamburg",
                        "Ida Brandt",
                        "orders@tarnholt.example",
                        10482,
                        ""),
                row(SUPPLIERS.get(1), "EUR", "DAP", "", 600, 9.5, 5, "", "", "", "", "", "", "", ""),
                row(
                        SUPPLIERS.get(2),
                        "USD",
                        "FOB Newark",
                        220,
                        "",
                        "",
                        10,
                        "",
                        0,
                        50,
                        "1400 Mill Road, Newark, NJ 07102, USA",
                        "",
                        "",
                        "LF-77",
                        4),
                row(SUPPLIERS.get(3), "GBP", "DDP", "", "", "", 28, "", 14, 30, "Kiln Lane, Stoke", "", "", "", ""),
                row(SUPPLIERS.get(4), "EUR", "", 40, "", "", 10, "", "", "", "Kajen 1, Aalborg", "", "", "", ""));
        sheet(
                "Quotes",
                row(
                        "Vendor",
                        "Article",
                        "Art no",
                        "Supplier item name",
                        "Pack",
                        "Unit",
                        "From qty",
                        "Price",
                        "Per",
                        "Ccy",
                        "Quote date"),
                row(
                        SUPPLIERS.get(0),
                        "Shea butter",
                        "TO-1001",
                        "Shea refined BIO",
                        25,
                        "kg",
                        "",
                        6.355,
                        "kg",
                        "EUR",
                        quoted),
                row(
                        SUPPLIERS.get(0),
                        "Shea butter",
                        "TO-1001",
                        "Shea refined BIO",
                        25,
                        "kg",
                        100,
                        5.9,
                        "kg",
                        "EUR",
                        quoted),
                row(SUPPLIERS.get(0), "Triglyceride", "TO-2041", "", 20, "kg", "", 4.2, "kg", "EUR", quoted),
                row(
                        SUPPLIERS.get(0),
                        "Glycerin",
                        "=1+1",
                        "Glycerine, vegetable",
                        25,
                        "kg",
                        "",
                        44.5,
                        "pack",
                        "EUR",
                        quoted),
                row(SUPPLIERS.get(1), "Vitamin E", "", "", 1, "kg", "", 31.2, "kg", "EUR", quoted),
                row(SUPPLIERS.get(1), "Xanthan gum", "", "", 0.5, "kg", "", 9.9, "pack", "EUR", quoted),
                row(SUPPLIERS.get(2), "Jojoba oil", "MB-55", "Jojoba, Golden", 5, "L", "", 168, "pack", "USD", quoted),
                row(SUPPLIERS.get(3), "Jar 50 mL", "JG50-A", "", 192, "each", "", 0.2875, "each", "GBP", quoted),
                row(SUPPLIERS.get(4), "Label round", "", "", 1000, "each", "", 38, "pack", "EUR", quoted));
        sheet("Raw materials", row("Material", "INCI name", "Density g/mL"), row("Jojoba oil", "Jojoba", 0.865));
        sheet(
                "Night cream",
                row("Phase", "Material", "% w/w"),
                row("A", "Shea butter", 12),
                row("A", "Triglyceride", 9),
                row("A", "Jojoba oil", 6),
                row("A", "Vitamin E", 0.5),
                row("B", "Glycerin", 5),
                row("B", "Xanthan gum", 0.4),
                row("B", "Water", "q.s."));
        sheet("Products", row("Product", "Formula", "Fill", "Fill unit"), row("Cream 50", "Night cream", 50, "g"));
        sheet(
                "Components",
                row("Product", "Component", "Units per product", "Loss %"),
                row("Cream 50", "Jar 50 mL", 1, 1),
                row("Cream 50", "Label round", 1, 1));
        sheet(
                "Demand",
                row("Product", "Units", "Needed by"),
                row("Cream 50", 1200, LocalDate.of(2027, 2, 20)),
                row("Cream 50", 4000, LocalDate.of(2027, 5, 20)));
        sheet(
                "Rates",
                row("From", "To", "Rate", "Date"),
                row("EUR", "USD", 1.0912, LocalDate.of(2026, 11, 27)),
                row("EUR", "GBP", 0.8421, LocalDate.of(2026, 11, 27)));
    }

    private void sheet(String name, List<?>... rows) {
        List<List<Object>> all = new ArrayList<>();
        for (List<?> row : rows) {
            all.add(new ArrayList<>(row));
        }
        sheets.put(name, all);
    }

    private static List<Object> row(Object... cells) {
        return List.of(cells);
    }

    /** Changes the cells below a header. */
    OwnTrade set(String sheet, String header, Object value) {
        List<List<Object>> rows = sheets.getOrDefault(sheet, List.of());
        int column = rows.get(0).indexOf(header);
        rows.stream().skip(1).forEach(row -> row.set(column, value));
        return this;
    }

    /** Changes a setting. */
    OwnTrade setting(String name, Object value) {
        sheets.getOrDefault("Set-up", List.of()).stream()
                .filter(row -> row.get(0).equals(name))
                .forEach(row -> row.set(1, value));
        return this;
    }

    /** Saves the workbook. */
    Path save(Path file) throws IOException {
        try (XSSFWorkbook book = new XSSFWorkbook();
                OutputStream out = Files.newOutputStream(file)) {
            CellStyle day = book.createCellStyle();
            day.setDataFormat(book.createDataFormat().getFormat("yyyy-mm-dd"));
            sheets.forEach((name, rows) -> {
                XSSFSheet sheet = book.createSheet(name);
                for (int at = 0; at < rows.size(); at++) {
                    Row row = sheet.createRow(at);
                    for (int column = 0; column < rows.get(at).size(); column++) {
                        fill(row.createCell(column), rows.get(at).get(column), day);
                    }
                }
            });
            book.write(out);
        }
        return file;
    }

    private static void fill(Cell cell, Object value, CellStyle day) {
        if (value instanceof Number number) {
            cell.setCellValue(number.doubleValue());
        } else if (value instanceof LocalDate date) {
            cell.setCellValue(date);
            cell.setCellStyle(day);
        } else if (!value.toString().isEmpty()) {
            cell.setCellValue(value.toString());
        }
    }
}
