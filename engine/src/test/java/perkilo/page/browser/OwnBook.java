package perkilo.page.browser;

import java.io.IOException;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.util.CellReference;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;

/** Workbooks in people's own layouts. All names and prices are invented. */
final class OwnBook {

    private final XSSFWorkbook book = new XSSFWorkbook();

    private OwnBook put(String sheet, String place, Object... values) {
        XSSFSheet known = book.getSheet(sheet);
        XSSFSheet there = known == null ? book.createSheet(sheet) : known;
        CellReference at = new CellReference(place);
        Row old = there.getRow(at.getRow());
        Row row = old == null ? there.createRow(at.getRow()) : old;
        for (int i = 0; i < values.length; i++) {
            if (values[i] instanceof Number number) {
                row.createCell(at.getCol() + i).setCellValue(number.doubleValue());
            } else if (!values[i].equals("")) {
                row.createCell(at.getCol() + i).setCellValue(values[i].toString());
            }
        }
        return this;
    }

    private Path saved(Path folder, String name) {
        Path file = folder.resolve(name);
        try (OutputStream out = Files.newOutputStream(file)) {
            book.write(out);
            book.close();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return file;
    }

    /** A hand cream on one sheet, with its prices, packaging and facts; the density is not typed, so it is asked. */
    static Path handCream(Path folder) {
        return new OwnBook()
                .put("Costing", "A1", "HC-014 Hand cream")
                .put("Costing", "A3", "Ingredient", "%", "Supplier", "Pack", "Pack price (£)", "£/kg")
                .put("Costing", "A4", "Water", 89)
                .put("Costing", "A5", "Glycerin", 5, "Harrow", "5 kg", 21.5, 4.3)
                .put("Costing", "A6", "Shea butter", 6, "Mill Lane", "5 kg", 47, 9.4)
                .put("Costing", "A7", "Total", 100)
                .put("Costing", "A10", "Packaging", "Qty per tube", "Supplier", "Pack", "Pack price (£)")
                .put("Costing", "A11", "Tube 75 ml", 1, "Tubeworks", 250, 112.5)
                .put("Costing", "A12", "Label", 1, "Printhouse", 1000, 85)
                .put("Costing", "A15", "Labour rate (£/h)", 16)
                .put("Costing", "A16", "Hours per batch", 6)
                .put("Costing", "A17", "Tubes per batch", 200)
                .put("Costing", "A18", "Retail price inc VAT", 14.5)
                .put("Costing", "A20", "Fill", "75 ml")
                .saved(folder, "my costing.xlsx");
    }

    /** Two suppliers side by side: it is asked whether they are suppliers, and what a price is for. */
    static Path comparison(Path folder) {
        return new OwnBook()
                .put("Balm", "A1", "Material", "%")
                .put("Balm", "A2", "Rapsöl", 60)
                .put("Balm", "A3", "Sheabutter", 40)
                .put("Prices", "A1", "Item", "Pack", "Kestrel", "Dunmore", "Currency")
                .put("Prices", "A2", "Rapsöl", "25 kg", 4.4, 4.1, "EUR")
                .put("Prices", "A3", "Sheabutter", "10 kg", 9.8, "", "EUR")
                .put("Runs", "A1", "Formula", "Batch kg")
                .put("Runs", "A2", "Balm", 10)
                .saved(folder, "comparison.xlsx");
    }

    /** A product whose texts are scripts, were they read as part of the page. */
    static Path scripts(Path folder) {
        String image = "<img src=x onerror=\"window.hit=1\">";
        String script = "<script>window.hit=1</script>";
        return new OwnBook()
                .put("Settings", "A1", "Setting", "Value")
                .put("Settings", "A2", "Home currency", "EUR")
                .put("Offers", "A1", "Supplier", "Item", "Pack size", "Pack unit", "Price (EUR)", "Price per", script)
                .put("Offers", "A2", script, "Shea butter", 1, "kg", 9, "pack", image)
                .put("Offers", "A3", image, image, 100, "each", 30, "pack", script)
                .put("Balm", "A1", "Material", "% w/w")
                .put("Balm", "A2", "Shea butter", 100)
                .put("Products", "A1", "Product", "Formula", "Fill", "Fill unit")
                .put("Products", "A2", image, "Balm", 30, "g")
                .put("Components", "A1", "Product", "Component", "Units per product")
                .put("Components", "A2", image, image, 1)
                .put("Runs", "A1", "Product", "Units")
                .put("Runs", "A2", image, 100)
                .put("Runs", "A3", script, 50)
                .saved(folder, "scripts.xlsx");
    }

    /** A balm, and a cream whose jar has no price. */
    static Path withErrors(Path folder) {
        return new OwnBook()
                .put("Settings", "A1", "Setting", "Value")
                .put("Settings", "A2", "Home currency", "EUR")
                .put("Offers", "A1", "Supplier", "Item", "Pack size", "Pack unit", "Price (EUR)", "Price per")
                .put("Offers", "A2", "Tarnholt Oleo", "Shea butter", 1, "kg", 9, "pack")
                .put("Offers", "A3", "Tarnholt Oleo", "Sunflower oil", 1, "kg", "3,2o", "pack")
                .put("Balm", "A1", "Material", "% w/w")
                .put("Balm", "A2", "Shea butter", 100)
                .put("Cream", "A1", "Material", "% w/w")
                .put("Cream", "A2", "Shea butter", 50)
                .put("Cream", "A3", "Sunflower oil", 50)
                .put("Products", "A1", "Product", "Formula", "Fill", "Fill unit")
                .put("Products", "A2", "Balm 30", "Balm", 30, "g")
                .put("Products", "A3", "Cream 50", "Cream", 50, "g")
                .put("Runs", "A1", "Product", "Units")
                .put("Runs", "A2", "Balm 30", 100)
                .put("Runs", "A3", "Cream 50", 200)
                .saved(folder, "with errors.xlsx");
    }
}
