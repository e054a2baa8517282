package perkilo.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellStyle;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import perkilo.review.SavedByOffice;

/**
 * Workbooks that people laid out in their own way, in five languages: each gives the costs and the orders of the same
 * data in our own form.
 */
final class OwnLayoutsTest {

    private static final ObjectMapper JSON = new ObjectMapper();
    private static final LocalDate DAY = LocalDate.of(2026, 11, 20);

    @TempDir
    private Path folder = Path.of("");

    /** A number in a format of its own. */
    private record Shown(double number, String format) {}

    /** A workbook as its sheets, by name. */
    private record Layout(String name, Map<String, List<List<Object>>> sheets, List<String> merged) {

        static Layout of(String name) {
            return new Layout(name, new LinkedHashMap<>(), new ArrayList<>());
        }

        @SafeVarargs
        @SuppressWarnings("varargs") // the array is only copied
        final Layout sheet(String title, List<Object>... rows) {
            return sheet(title, List.of(rows));
        }

        Layout sheet(String title, List<List<Object>> rows) {
            sheets.put(title, rows);
            return this;
        }

        List<List<Object>> rows(String title) {
            return Objects.requireNonNull(sheets.get(title));
        }

        /** With a block merged, such as {@code Formula!A2:A3}. */
        Layout merge(String block) {
            merged.add(block);
            return this;
        }

        Layout without(String... titles) {
            for (String title : titles) {
                sheets.remove(title);
            }
            return this;
        }

        @Override
        public String toString() {
            return name;
        }
    }

    private static List<Object> row(Object... cells) {
        return List.of(cells);
    }

    /** The same data in our own form. */
    private static Layout ours(String name) {
        return Layout.of(name)
                .sheet(
                        "Settings",
                        row("Setting", "Value"),
                        row("Home currency", "EUR"),
                        row("Costing date", DAY),
                        row("Labour rate", 30))
                .sheet(
                        "Suppliers",
                        row("Supplier", "Currency", "Terms", "Lead time days", "Freight per order"),
                        row("Tarnholt Oleo", "EUR", "FCA", 14, 35),
                        row("Kvistgaard Kemi", "EUR", "FCA", 10, 20),
                        row("Jarrowglass", "EUR", "FCA", 7, 15))
                .sheet(
                        "Offers",
                        row(
                                "Supplier",
                                "Item",
                                "Pack size",
                                "Pack unit",
                                "From quantity",
                                "Price",
                                "Price per",
                                "Currency",
                                "Minimum order",
                                "Quoted on"),
                        row("Tarnholt Oleo", "Shea butter", 25, "kg", "", 6.5, "kg", "EUR", "", DAY),
                        row("Tarnholt Oleo", "Shea butter", 25, "kg", 100, 6.1, "kg", "EUR", "", DAY),
                        row("Tarnholt Oleo", "Shea butter", 25, "kg", 500, 5.8, "kg", "EUR", "", DAY),
                        row("Tarnholt Oleo", "Sunflower oil", 20, "kg", "", 3.2, "kg", "EUR", "", DAY),
                        row("Tarnholt Oleo", "Sunflower oil", 20, "kg", 100, 2.95, "kg", "EUR", "", DAY),
                        row("Tarnholt Oleo", "Sunflower oil", 20, "kg", 500, 2.8, "kg", "EUR", "", DAY),
                        row("Kvistgaard Kemi", "Glycerin", 5, "kg", "", 2.4, "kg", "EUR", "", DAY),
                        row("Kvistgaard Kemi", "Sodium hydroxide", 1, "kg", "", 9, "kg", "EUR", "", DAY),
                        row("Jarrowglass", "Jar", 100, "each", "", 62, "pack", "EUR", "", DAY))
                .sheet(
                        "Day cream",
                        row("Phase", "Material", "% w/w", "Phase °C"),
                        row("A", "Water", "q.s.", 75),
                        row("A", "Glycerin", 4, 75),
                        row("B", "Shea butter", 5, 75),
                        row("B", "Sunflower oil", 12.5, 75),
                        row("C", "Sodium hydroxide", 0.2, ""))
                .sheet(
                        "Hand balm",
                        row("Phase", "Material", "% w/w", "Phase °C"),
                        row("A", "Glycerin", 5, 70),
                        row("B", "Shea butter", 40, 70),
                        row("B", "Sunflower oil", 55, 70))
                .sheet(
                        "Products",
                        row("Product", "Formula", "Fill", "Fill unit"),
                        row("Day cream 50", "Day cream", 50, "g"),
                        row("Balm 30", "Hand balm", 30, "g"))
                .sheet(
                        "Components",
                        row("Product", "Component", "Units per product"),
                        row("Day cream 50", "Jar", 1),
                        row("Balm 30", "Jar", 1))
                .sheet(
                        "Runs",
                        row("Product", "Units"),
                        row("Day cream 50", 500),
                        row("Day cream 50", 1000),
                        row("Balm 30", 500),
                        row("Balm 30", 2000))
                .sheet(
                        "Demand",
                        row("Product", "Units", "Needed by"),
                        row("Day cream 50", 500, LocalDate.of(2027, 1, 1)),
                        row("Day cream 50", 800, LocalDate.of(2027, 2, 1)),
                        row("Day cream 50", 600, LocalDate.of(2027, 3, 1)),
                        row("Balm 30", 400, LocalDate.of(2027, 2, 1)),
                        row("Balm 30", 900, LocalDate.of(2027, 3, 1)));
    }

    static Stream<Layout> layouts() {
        return Stream.of(
                breaksAsColumns(),
                german(),
                french(),
                spanish(),
                italian(),
                formulasSideBySide(),
                weights(),
                listPerSupplier(),
                sections(),
                monthsDown(),
                sizesAcross(),
                sizesOnAnySheet(),
                termsOnPrices(),
                pairsInItalian(),
                formulasBelowOneAnother(),
                unitsInFormats(),
                textCells());
    }

    private static Layout breaksAsColumns() {
        return ours("breaks as columns, packs in words, months across, phases as headings")
                .sheet(
                        "Offers",
                        row("Prices in EUR per kg, as of 20 November 2026"),
                        row(),
                        row("Supplier", "Item", "Pack", "Price €/kg", "from 100 kg", "from 500 kg"),
                        row("Tarnholt Oleo", "Shea butter", "25 kg can", 6.5, 6.1, 5.8),
                        row("Tarnholt Oleo", "Sunflower oil", "20 kg can", 3.2, 2.95, 2.8),
                        row("Kvistgaard Kemi", "Glycerin", "5 kg", 2.4),
                        row("Kvistgaard Kemi", "Sodium hydroxide", "1 kg", 9))
                .sheet(
                        "Prices of jars",
                        row("Supplier", "Article", "Pack", "Price per pack (EUR)", "Date"),
                        row("Jarrowglass", "Jar", "100 pcs", 62, DAY))
                .sheet(
                        "Day cream",
                        row("Day cream, version 4 of October"),
                        row(),
                        row("Ingredient", "INCI", "%"),
                        row("Phase A (75 °C)"),
                        row("Water", "Aqua", "q.s. to 100"),
                        row("Glycerin", "Glycerin", 4),
                        row("B – Oil phase (75 °C)"),
                        row("Shea butter", "Butyrospermum Parkii Butter", 5),
                        row("Sunflower oil", "Helianthus Annuus Seed Oil", 12.5),
                        row("Phase C"),
                        row("Sodium hydroxide", "Sodium Hydroxide", "q.s. to pH 5.5 (ca. 0.2)"),
                        row("Total", "", 100))
                .sheet(
                        "Demand",
                        row("Plan of sales"),
                        row("Product", "Jan 27", "Feb 27", "Mar 27", "Total"),
                        row("Day cream 50", 500, 800, 600, 1900),
                        row("Balm 30", "", 400, 900, 1300),
                        row("Total", 500, 1200, 1500, 3200));
    }

    private static Layout german() {
        return Layout.of("German")
                .sheet(
                        "Einstellungen",
                        row("Einstellung", "Wert"),
                        row("Heimatwährung", "EUR"),
                        row("Kalkulationsdatum", DAY),
                        row("Stundensatz", 30))
                .sheet(
                        "Lieferanten",
                        row("Lieferant", "Währung", "Lieferbedingung", "Lieferzeit (Tage)", "Fracht je Bestellung"),
                        row("Tarnholt Oleo", "EUR", "FCA", 14, 35),
                        row("Kvistgaard Kemi", "EUR", "FCA", 10, 20),
                        row("Jarrowglass", "EUR", "FCA", 7, 15))
                .sheet(
                        "Angebote",
                        row(
                                "Lieferant",
                                "Artikel",
                                "Gebinde",
                                "Preis €/kg",
                                "Preis ab 100 kg",
                                "Preis ab 500 kg",
                                "Datum"),
                        row("Tarnholt Oleo", "Shea butter", "25 kg Eimer", "6,50", "6,10", "5,80", DAY),
                        row("Tarnholt Oleo", "Sunflower oil", "20 kg Kanister", "3,20", "2,95", "2,80", DAY),
                        row("Kvistgaard Kemi", "Glycerin", "5 kg", "2,40", "", "", DAY),
                        row("Kvistgaard Kemi", "Sodium hydroxide", "1 kg", "9,00", "", "", DAY))
                .sheet(
                        "Packmittelpreise",
                        row("Lieferant", "Artikel", "Gebinde", "Preis je Gebinde (EUR)", "Datum"),
                        row("Jarrowglass", "Jar", "100 Stück", "62,00", DAY))
                .sheet(
                        "Day cream",
                        row("Phase", "Rohstoff", "Anteil %"),
                        row("Wasserphase (75 °C)"),
                        row("", "Water", "ad 100"),
                        row("", "Glycerin", "4,0"),
                        row("Fettphase (75 °C)"),
                        row("", "Shea butter", "5,0"),
                        row("", "Sunflower oil", "12,5"),
                        row("Phase C"),
                        row("", "Sodium hydroxide", "q.s. auf pH 5,5 (ca. 0,2)"),
                        row("", "Summe", 100))
                .sheet(
                        "Hand balm",
                        row("Phase", "Rohstoff", "Gew.-%"),
                        row("A", "Glycerin", 5),
                        row("B", "Shea butter", 40),
                        row("B", "Sunflower oil", 55))
                .sheet(
                        "Produkte",
                        row("Produkt", "Rezeptur", "Füllmenge (g)"),
                        row("Day cream 50", "Day cream", 50),
                        row("Balm 30", "Hand balm", 30))
                .sheet(
                        "Stückliste",
                        row("Produkt", "Komponente", "Anzahl"),
                        row("Day cream 50", "Jar", 1),
                        row("Balm 30", "Jar", 1))
                .sheet(
                        "Läufe",
                        row("Produkt", "Stückzahl"),
                        row("Day cream 50", 500),
                        row("Day cream 50", 1000),
                        row("Balm 30", 500),
                        row("Balm 30", 2000))
                .sheet(
                        "Bedarf",
                        row("Produkt", "Januar 2027", "Februar 2027", "März 2027", "Summe"),
                        row("Day cream 50", 500, 800, 600, 1900),
                        row("Balm 30", "", 400, 900, 1300),
                        row("Summe", 500, 1200, 1500, 3200));
    }

    private static Layout french() {
        return Layout.of("French")
                .sheet(
                        "Paramètres",
                        row("Paramètre", "Valeur"),
                        row("Devise de base", "EUR"),
                        row("Date de calcul", DAY),
                        row("Taux horaire", 30))
                .sheet(
                        "Fournisseurs",
                        row("Fournisseur", "Devise", "Conditions de livraison", "Délai (jours)", "Frais de port"),
                        row("Tarnholt Oleo", "EUR", "FCA", 14, 35),
                        row("Kvistgaard Kemi", "EUR", "FCA", 10, 20),
                        row("Jarrowglass", "EUR", "FCA", 7, 15))
                .sheet(
                        "Tarifs",
                        row(
                                "Fournisseur",
                                "Désignation",
                                "Conditionnement",
                                "Prix au kilo (EUR)",
                                "à partir de 100 kg",
                                "à partir de 500 kg",
                                "Date"),
                        row("Tarnholt Oleo", "Shea butter", "seau de 25 kg", "6,50 €", "6,10 €", "5,80 €", DAY),
                        row("Tarnholt Oleo", "Sunflower oil", "bidon de 20 kg", "3,20 €", "2,95 €", "2,80 €", DAY),
                        row("Kvistgaard Kemi", "Glycerin", "5 kg", "2,40 €", "", "", DAY),
                        row("Kvistgaard Kemi", "Sodium hydroxide", "1 kg", "9,00 €", "", "", DAY))
                .sheet(
                        "Prix des emballages",
                        row("Fournisseur", "Article", "Conditionnement", "Prix du conditionnement (EUR)", "Date"),
                        row("Jarrowglass", "Jar", "100 pièces", 62, DAY))
                .sheet(
                        "Day cream",
                        row("Matière première", "Pourcentage"),
                        row("Phase aqueuse"),
                        row("Water", "qsp 100"),
                        row("Glycerin", "4 %"),
                        row("Phase grasse"),
                        row("Shea butter", "5 %"),
                        row("Sunflower oil", "12,5 %"),
                        row("Phase C"),
                        row("Sodium hydroxide", "q.s. pH 5,5 (env. 0,2 %)"))
                .sheet(
                        "Hand balm",
                        row("Phase", "Ingrédient", "% p/p"),
                        row("A", "Glycerin", 5),
                        row("B", "Shea butter", 40),
                        row("", "Sunflower oil", 55))
                .sheet(
                        "Produits",
                        row("Produit", "Formule", "Contenance", "Unité de contenance"),
                        row("Day cream 50", "Day cream", 50, "g"),
                        row("Balm 30", "Hand balm", 30, "g"))
                .sheet(
                        "Emballages",
                        row("Produit", "Composant", "Quantité par produit"),
                        row("Day cream 50", "Jar", 1),
                        row("Balm 30", "Jar", 1))
                .sheet(
                        "Séries",
                        row("Produit", "Quantité"),
                        row("Day cream 50", 500),
                        row("Day cream 50", 1000),
                        row("Balm 30", 500),
                        row("Balm 30", 2000))
                .sheet(
                        "Prévisions",
                        row("Produit", "janv. 27", "févr. 27", "mars 27"),
                        row("Day cream 50", 500, 800, 600),
                        row("Balm 30", "-", 400, 900));
    }

    private static Layout spanish() {
        return Layout.of("Spanish")
                .sheet(
                        "Ajustes",
                        row("Ajuste", "Valor"),
                        row("Moneda base", "EUR"),
                        row("Fecha de cálculo", DAY),
                        row("Coste por hora", 30))
                .sheet(
                        "Proveedores",
                        row(
                                "Proveedor",
                                "Moneda",
                                "Condiciones de entrega",
                                "Plazo de entrega (días)",
                                "Gastos de envío"),
                        row("Tarnholt Oleo", "EUR", "FCA", 14, 35),
                        row("Kvistgaard Kemi", "EUR", "FCA", 10, 20),
                        row("Jarrowglass", "EUR", "FCA", 7, 15))
                .sheet("Ofertas", ours("").rows("Offers"))
                .sheet(
                        "Day cream",
                        row("Fase", "Materia prima", "Porcentaje", "Estimación %"),
                        row("A", "Water", "c.s.p. 100", ""),
                        row("A", "Glycerin", 4, ""),
                        row("B", "Shea butter", 5, ""),
                        row("B", "Sunflower oil", 12.5, ""),
                        row("C", "Sodium hydroxide", "c.s.", 0.2))
                .sheet(
                        "Hand balm",
                        row("Fase", "Materia prima", "%"),
                        row("A", "Glycerin", 5),
                        row("B", "Shea butter", 40),
                        row("B", "Sunflower oil", 55))
                .sheet(
                        "Productos",
                        row("Producto", "Fórmula", "Contenido", "Unidad de contenido"),
                        row("Day cream 50", "Day cream", 50, "g"),
                        row("Balm 30", "Hand balm", 30, "g"))
                .sheet(
                        "Envases",
                        row("Producto", "Componente", "Unidades por producto"),
                        row("Day cream 50", "Jar", 1),
                        row("Balm 30", "Jar", 1))
                .sheet(
                        "Tiradas",
                        row("Producto", "Unidades"),
                        row("Day cream 50", 500),
                        row("Day cream 50", 1000),
                        row("Balm 30", 500),
                        row("Balm 30", 2000))
                .sheet(
                        "Previsión",
                        row("", 2027),
                        row("Producto", "ene", "feb", "mar"),
                        row("Day cream 50", 500, 800, 600),
                        row("Balm 30", 0, 400, 900));
    }

    private static Layout italian() {
        return Layout.of("Italian")
                .sheet(
                        "Impostazioni",
                        row("Impostazione", "Valore"),
                        row("Valuta base", "EUR"),
                        row("Data di calcolo", DAY),
                        row("Costo orario", 30))
                .sheet(
                        "Fornitori",
                        row(
                                "Fornitore",
                                "Valuta",
                                "Condizioni di consegna",
                                "Tempi di consegna (giorni)",
                                "Spese di spedizione"),
                        row("Tarnholt Oleo", "EUR", "FCA", 14, 35),
                        row("Kvistgaard Kemi", "EUR", "FCA", 10, 20),
                        row("Jarrowglass", "EUR", "FCA", 7, 15))
                .sheet("Offerte", ours("").rows("Offers"))
                .sheet(
                        "Ricette",
                        row("Ricetta: Day cream"),
                        row("Fase", "Materia prima", "Quota"),
                        row("A", "Water", "q.b. a 100"),
                        row("", "Glycerin", 4),
                        row("B", "Shea butter", 5),
                        row("", "Sunflower oil", 12.5),
                        row("C", "Sodium hydroxide", 0.2),
                        row("", "Totale", 100),
                        row(),
                        row("Ricetta: Hand balm"),
                        row("Fase", "Materia prima", "Quota"),
                        row("A", "Glycerin", 5),
                        row("B", "Shea butter", 40),
                        row("", "Sunflower oil", 55))
                .sheet(
                        "Prodotti",
                        row("Prodotto", "Formula", "Contenuto (g)"),
                        row("Day cream 50", "Day cream", 50),
                        row("Balm 30", "Hand balm", 30))
                .sheet(
                        "Imballaggi",
                        row("Prodotto", "Componente", "Pezzi per prodotto"),
                        row("Day cream 50", "Jar", 1),
                        row("Balm 30", "Jar", 1))
                .sheet(
                        "Produzioni",
                        row("Prodotto", "Pezzi"),
                        row("Day cream 50", 500),
                        row("Day cream 50", 1000),
                        row("Balm 30", 500),
                        row("Balm 30", 2000))
                .sheet(
                        "Fabbisogno",
                        row("Prodotto", "gennaio 2027", "febbraio 2027", "marzo 2027"),
                        row("Day cream 50", 500, 800, 600),
                        row("Balm 30", "", 400, 900));
    }

    private static Layout formulasSideBySide() {
        return ours("formulas side by side, real dates over months")
                .without("Day cream", "Hand balm")
                .sheet(
                        "All formulas",
                        row("Phase", "Material", "Day cream %", "Hand balm %"),
                        row("A", "Water", "q.s.", ""),
                        row("A", "Glycerin", 4, 5),
                        row("B", "Shea butter", 5, 40),
                        row("B", "Sunflower oil", 12.5, 55),
                        row("C", "Sodium hydroxide", 0.2, "-"))
                .sheet(
                        "Forecast",
                        row("", "2027", "", ""),
                        row("SKU", LocalDate.of(2027, 1, 1), LocalDate.of(2027, 2, 1), LocalDate.of(2027, 3, 1)),
                        row("Day cream 50", 500, 800, 600),
                        row("Balm 30", "", 400, 900))
                .without("Demand");
    }

    private static Layout weights() {
        return ours("weights in place of per cent, numeric months")
                .sheet(
                        "Day cream",
                        row("Formula:", "Day cream"),
                        row("Phase", "Material", "g"),
                        row("A", "Water", "ad 1000"),
                        row("A", "Glycerin", 40),
                        row("B", "Shea butter", 50),
                        row("B", "Sunflower oil", 125),
                        row("C", "Sodium hydroxide", 2),
                        row("", "Total", 1000))
                .sheet(
                        "Hand balm",
                        row("Phase", "Material", "Batch kg", "Notes"),
                        row("A", "Glycerin", 1.25, ""),
                        row("B", "Shea butter", 10, ""),
                        row("B", "Sunflower oil", 13.75, "warm"),
                        row("", "Total", 25))
                .sheet(
                        "Demand",
                        row("Product", "2027-01", "2027-02", "2027-03"),
                        row("Day cream 50", 500, 800, 600),
                        row("Balm 30", "", 400, 900));
    }

    private static Layout listPerSupplier() {
        return ours("a sheet per supplier, the supplier in its name or title")
                .without("Offers")
                .sheet(
                        "Tarnholt Oleo",
                        row("Item", "Pack", "Price €/kg", "from 100 kg", "from 500 kg", "Quoted on"),
                        row("Shea butter", "25 kg", 6.5, 6.1, 5.8, DAY),
                        row("Sunflower oil", "20 kg", 3.2, 2.95, 2.8, DAY))
                .sheet(
                        "Kemi",
                        row("Supplier: Kvistgaard Kemi"),
                        row("Item", "Pack", "Price per kg (EUR)", "Quoted on"),
                        row("Glycerin", "5 kg", 2.4, DAY),
                        row("Sodium hydroxide", "1 kg", 9, DAY))
                .sheet(
                        "Jars",
                        row("Price list Jarrowglass, 20 November 2026, prices in EUR"),
                        row("Article", "Pack", "Price per pack"),
                        row("Jar", "100 pieces", 62));
    }

    private static Layout sections() {
        return ours("suppliers as headings between the prices")
                .sheet(
                        "Offers",
                        row("Item", "Pack", "Price €/kg", "from 100 kg", "from 500 kg", "Date"),
                        row("Tarnholt Oleo"),
                        row("Shea butter", "25 kg", 6.5, 6.1, 5.8, DAY),
                        row("Sunflower oil", "20 kg", 3.2, 2.95, 2.8, DAY),
                        row("Kvistgaard Kemi"),
                        row("Glycerin", "5 kg", 2.4, "", "", DAY),
                        row("Sodium hydroxide", "1 kg", 9, "", "", DAY))
                .sheet(
                        "Prices",
                        row("Supplier", "Item", "Pack", "Price", "Currency", "Quoted on"),
                        row("Jarrowglass", "Jar", "100 each", "62 per pack", "EUR", DAY));
    }

    private static Layout monthsDown() {
        return ours("months down, products across")
                .sheet(
                        "Demand",
                        row("Month", "Day cream 50", "Balm 30"),
                        row("Jan 2027", 500, ""),
                        row("Feb 2027", 800, 400),
                        row("Mar 2027", 600, 900),
                        row("Total", 1900, 1300));
    }

    private static Layout sizesAcross() {
        return ours("sizes of runs across")
                .sheet(
                        "Runs",
                        row("Product", "Run 1", "Run 2"),
                        row("Day cream 50", 500, 1000),
                        row("Balm 30", 500, 2000));
    }

    private static Layout sizesOnAnySheet() {
        return ours("sizes of runs under numbered headers, on a sheet of any name")
                .without("Runs")
                .sheet(
                        "Sheet5",
                        row("Produkt", "Stückzahl 1", "Stückzahl 2"),
                        row("Day cream 50", 500, 1000),
                        row("Balm 30", 500, 2000));
    }

    /** Suppliers' terms beside price breaks as columns; the sheet also looks like suppliers, or like components. */
    private static Layout termsOnPrices() {
        return ours("terms of suppliers beside price breaks as columns")
                .without("Suppliers", "Offers")
                .sheet(
                        "Sheet2",
                        row(
                                "Fournisseur",
                                "Produit",
                                "Emballage",
                                "Prix (EUR/kg)",
                                "à partir de 100 kg (EUR/kg)",
                                "à partir de 500 kg (EUR/kg)",
                                "Frais de port par commande",
                                "Délai (semaines)",
                                "Incoterm",
                                "Date du tarif"),
                        row("Tarnholt Oleo", "Shea butter", "25 kg bidon", 6.5, 6.1, 5.8, 35, 2, "FCA", DAY),
                        row("Tarnholt Oleo", "Sunflower oil", "20 kg bidon", 3.2, 2.95, 2.8, 35, 2, "FCA", DAY))
                .sheet(
                        "Sheet3",
                        row(
                                "Lieferant",
                                "Produkt",
                                "VPE",
                                "Listenpreis",
                                "Fracht pro Bestellung",
                                "Lieferzeit",
                                "Terms",
                                "Stand"),
                        row("Kvistgaard Kemi", "Glycerin", "5 kg Kanister", "2,40 €/kg", 20, 10, "FCA", DAY),
                        row("Kvistgaard Kemi", "Sodium hydroxide", "1 kg Eimer", "9,00 €/kg", 20, 10, "FCA", DAY),
                        row("Jarrowglass", "Jar", "100 Stück", "62,00 €/Gebinde", 15, 7, "FCA", DAY));
    }

    private static Layout pairsInItalian() {
        return ours("a word for packs that also means components, over pairs of quantities and prices")
                .sheet(
                        "Listino prezzi",
                        row(
                                "Fornitore",
                                "Materia prima",
                                "Imballo",
                                "Quantità 1 (kg)",
                                "Prezzo unitario 1 (EUR/kg)",
                                "Quantità 2 (kg)",
                                "Prezzo unitario 2 (EUR/kg)",
                                "Quantità 3 (kg)",
                                "Prezzo unitario 3 (EUR/kg)",
                                "Data offerta"),
                        row("Tarnholt Oleo", "Shea butter", "25 kg", 25, 6.5, 100, 6.1, 500, 5.8, DAY),
                        row("Tarnholt Oleo", "Sunflower oil", "20 kg", 20, 3.2, 100, 2.95, 500, 2.8, DAY))
                .sheet(
                        "Offers",
                        row(
                                "Supplier",
                                "Item",
                                "Pack size",
                                "Pack unit",
                                "Price",
                                "Price per",
                                "Currency",
                                "Quoted on"),
                        row("Kvistgaard Kemi", "Glycerin", 5, "kg", 2.4, "kg", "EUR", DAY),
                        row("Kvistgaard Kemi", "Sodium hydroxide", 1, "kg", 9, "kg", "EUR", DAY),
                        row("Jarrowglass", "Jar", 100, "each", 62, "pack", "EUR", DAY));
    }

    private static Layout formulasBelowOneAnother() {
        return ours("formulas below one another with titles, phases merged down")
                .without("Day cream", "Hand balm")
                .sheet(
                        "Recipes 2026",
                        row("Formula: Day cream"),
                        row("Phase", "Material", "% w/w"),
                        row("A", "Water", "balance"),
                        row("", "Glycerin", 4),
                        row("B", "Shea butter", 5),
                        row("", "Sunflower oil", 12.5),
                        row("C", "Sodium hydroxide", 0.2),
                        row(),
                        row("Formula: Hand balm"),
                        row("Phase", "Material", "% w/w"),
                        row("A", "Glycerin", 5),
                        row("B", "Shea butter", 40),
                        row("", "Sunflower oil", 55))
                .merge("Recipes 2026!A3:A4")
                .merge("Recipes 2026!A5:A6");
    }

    private static Layout unitsInFormats() {
        return ours("units in number formats")
                .sheet(
                        "Offers",
                        row("Supplier", "Item", "Pack size", "From quantity", "Price", "Quoted on"),
                        priced("Tarnholt Oleo", "Shea butter", 25, "", 6.5),
                        priced("Tarnholt Oleo", "Shea butter", 25, new Shown(100, "0 \"kg\""), 6.1),
                        priced("Tarnholt Oleo", "Shea butter", 25, new Shown(500, "0 \"kg\""), 5.8),
                        priced("Tarnholt Oleo", "Sunflower oil", 20, "", 3.2),
                        priced("Tarnholt Oleo", "Sunflower oil", 20, new Shown(100, "0 \"kg\""), 2.95),
                        priced("Tarnholt Oleo", "Sunflower oil", 20, new Shown(500, "0 \"kg\""), 2.8),
                        priced("Kvistgaard Kemi", "Glycerin", 5, "", 2.4),
                        priced("Kvistgaard Kemi", "Sodium hydroxide", 1, "", 9),
                        row(
                                "Jarrowglass",
                                "Jar",
                                new Shown(100, "0 \"pcs\""),
                                "",
                                new Shown(62, "0.00 [$€-407]\"/pack\""),
                                DAY))
                .sheet(
                        "Products",
                        row("Product", "Formula", "Fill"),
                        row("Day cream 50", "Day cream", new Shown(50, "0 \"g\"")),
                        row("Balm 30", "Hand balm", new Shown(30, "0\\ \"g\"")));
    }

    private static List<Object> priced(String supplier, String item, double pack, Object from, double price) {
        return row(supplier, item, new Shown(pack, "0.00 \"kg\""), from, new Shown(price, "#,##0.00 \"€/kg\""), DAY);
    }

    private static Layout textCells() {
        return ours("words in cells")
                .sheet(
                        "Offers",
                        row("Supplier", "Item", "Pack size", "From quantity", "Price", "Quoted on"),
                        row("Tarnholt Oleo", "Shea butter", "25 kg can", "", "0,65 €/100 g", "20 nov. 2026"),
                        row("Tarnholt Oleo", "Shea butter", "25 kg can", "100 kg", "6,10 €/kg", "20.11.26"),
                        row("Tarnholt Oleo", "Shea butter", "25 kg can", "500 kg", "5,80 €/kg", "20. November 2026"),
                        row("Tarnholt Oleo", "Sunflower oil", "can 20 kg", "", "3.20 €/kg", DAY),
                        row("Tarnholt Oleo", "Sunflower oil", "can 20 kg", "100 kg", "2,95 €/kg", DAY),
                        row("Tarnholt Oleo", "Sunflower oil", "can 20 kg", "500 kg", "2,80 €/kg", DAY),
                        row("Kvistgaard Kemi", "Glycerin", "5 kg", "", "2.40 €/kg", DAY),
                        row("Kvistgaard Kemi", "Sodium hydroxide", "1 kg bottle", "", "9.– €/kg", DAY),
                        row("Jarrowglass", "Jar", "100 pcs", "", "62.- € per pack", DAY))
                .sheet(
                        "Demand",
                        row("Product", "Units", "Needed by"),
                        row("Day cream 50", 500, "Jan 27"),
                        row("Day cream 50", "800 pcs", "Februar 2027"),
                        row("Day cream 50", 600, "2027-03"),
                        row("Balm 30", 400, "févr. 27"),
                        row("Balm 30", 900, "03/2027"));
    }

    @ParameterizedTest
    @MethodSource("layouts")
    void costs_and_orders_are_those_of_the_same_data_in_our_form(Layout layout) throws IOException {
        Path theirs = save(layout, "theirs.xlsx");
        Path ours = save(ours("ours"), "ours.xlsx");

        CommandLineRun check = CommandLineRun.of("check", theirs);
        assertThat(check.exit()).as(check.err()).isZero();
        assertThat(costs(theirs)).isEqualTo(costs(ours));
        assertThat(orders(theirs)).isEqualTo(orders(ours));
    }

    @Test
    void a_cell_of_an_own_layout_is_named_and_stays_live() throws IOException {
        Path book = save(breaksAsColumns(), "book.xlsx");
        Path out = folder.resolve("out.xlsx");
        CommandLineRun run = CommandLineRun.of("cost", book, "-o", out);
        assertThat(run.exit()).as(run.err()).isZero();
        List<String> formulas = new ArrayList<>();
        try (XSSFWorkbook costed = new XSSFWorkbook(out.toFile())) {
            costed.getSheet("Cost detail")
                    .forEach(row -> row.forEach(cell -> {
                        if (cell.getCellType() == org.apache.poi.ss.usermodel.CellType.FORMULA) {
                            formulas.add(cell.getCellFormula());
                        }
                    }));
        } catch (org.apache.poi.openxml4j.exceptions.InvalidFormatException e) {
            throw new IOException(e);
        }
        assertThat(formulas)
                .as("the price of a break stands in its own cell, and so does a level")
                .anyMatch(formula -> formula.matches(".*'?Offers'?!\\$?D\\$?4.*"))
                .anyMatch(formula -> formula.contains("'Day cream'!C9/IF(LEFT(CELL("));
    }

    /** Headers that nobody can know, a comma that can mean two things, and a sheet that is not ours. */
    private static Layout mails() {
        return ours("prices from mails")
                .without("Offers")
                .sheet(
                        "prices from mails",
                        row("who", "when", "what", "how it comes", "how much"),
                        row("Tarnholt Oleo", DAY, "Shea butter", "25 kg can", "6,50 €/kg"),
                        row("Tarnholt Oleo", DAY, "Sunflower oil", "20 kg can", "3,20 €/kg"),
                        row("Kvistgaard Kemi", DAY, "Glycerin", "5 kg", "2,400 €/kg"),
                        row("Kvistgaard Kemi", DAY, "Sodium hydroxide", "1 kg", "9,000 €/kg"),
                        row("Jarrowglass", DAY, "Jar", "100 each", "62,00 € per pack"));
    }

    private static Layout withoutBreaks() {
        List<List<Object>> offers = new ArrayList<>(ours("").sheets().get("Offers"));
        offers.removeIf(row -> row.get(4) instanceof Integer);
        return ours("ours").sheet("Offers", offers);
    }

    @Test
    void a_freight_that_differs_between_the_prices_of_a_supplier_is_told() throws IOException {
        Path book = save(
                ours("book")
                        .without("Suppliers", "Offers")
                        .sheet(
                                "Sheet2",
                                row(
                                        "Lieferant",
                                        "Rohstoff",
                                        "Gebinde",
                                        "ab 1 kg (EUR/kg)",
                                        "ab 100 kg (EUR/kg)",
                                        "Fracht pro Bestellung"),
                                row("Tarnholt Oleo", "Shea butter", "25 kg", 6.5, 6.1, 35),
                                row("Tarnholt Oleo", "Sunflower oil", "20 kg", 3.2, 2.95, 36)),
                "book.xlsx");
        assertThat(CommandLineRun.of("check", book).err())
                .contains("error Sheet2!F3:")
                .contains("36", "35");
    }

    @Test
    void a_sheet_reading_says_what_no_header_says() throws IOException {
        Path book = save(mails(), "book.xlsx");
        assertThat(CommandLineRun.of("check", book).exit())
                .as("nothing is guessed")
                .isEqualTo(1);

        Path reviewed = folder.resolve("book-review.xlsx");
        CommandLineRun.of("check", book, "--review");
        Map<String, String> proposed = readingRows(reviewed);
        assertThat(proposed)
                .containsEntry("prices from mails (the whole sheet)", "Offers")
                .containsEntry("prices from mails who", "Supplier")
                .containsEntry("prices from mails what", "Item")
                .containsEntry("prices from mails how it comes", "Pack size")
                .containsEntry("prices from mails how much", "Price")
                .containsEntry("Products Product", "");

        assertThat(costs(reviewed)).isEqualTo(costs(save(withoutBreaks(), "ours.xlsx")));
    }

    @Test
    @Tag("office")
    void an_office_suite_changes_nothing() throws IOException, InterruptedException {
        Path ours = save(ours("ours"), "ours.xlsx");
        for (Layout layout : List.of(breaksAsColumns(), german(), formulasSideBySide(), unitsInFormats())) {
            Path saved = SavedByOffice.of(save(layout, "theirs.xlsx"));
            assertThat(costs(saved)).as(layout.name()).isEqualTo(costs(ours));
        }
        CommandLineRun.of("check", save(mails(), "book.xlsx"), "--review");
        Path reviewed = SavedByOffice.of(folder.resolve("book-review.xlsx"));
        assertThat(costs(reviewed)).isEqualTo(costs(save(withoutBreaks(), "ours.xlsx")));
    }

    @Test
    void what_is_filled_in_goes_before_what_is_proposed() throws IOException {
        Path book = save(mails(), "book.xlsx");
        CommandLineRun.of("check", book, "--review");
        Path reviewed = folder.resolve("book-review.xlsx");
        edit(reviewed, "what", "ignore");
        assertThat(CommandLineRun.of("check", reviewed).err()).contains("The Offers table has no column \"Item\"");
        edit(reviewed, "what", "Itemm");
        assertThat(CommandLineRun.of("check", reviewed).err())
                .contains("Read as is \"Itemm\", which is not one of the columns.");
    }

    @Test
    void a_sheet_reading_is_renewed_in_its_place_with_the_answers_kept() throws IOException {
        Path book = save(mails(), "book.xlsx");
        CommandLineRun.of("check", book, "--review");
        Path reviewed = folder.resolve("book-review.xlsx");
        Map<String, String> untouched = readingRows(reviewed);
        CommandLineRun.of("check", reviewed, "--review", "--in-place");
        assertThat(readingRows(reviewed)).isEqualTo(untouched);

        edit(reviewed, "what", "");
        edit(reviewed, "when", "ignore");
        edit(reviewed, "Labour rate", "ignore");
        renameHeader(reviewed, "prices from mails", "who", "sender");
        for (int time = 0; time < 2; time++) {
            CommandLineRun.of("check", reviewed, "--review", "--in-place");
            assertThat(readingRows(reviewed))
                    .containsEntry("prices from mails what", "")
                    .containsEntry("prices from mails when", "ignore")
                    .containsEntry("prices from mails how much", "Price")
                    .containsKey("prices from mails sender")
                    .containsEntry("prices from mails who", "Supplier");
            assertThat(tabs(reviewed))
                    .filteredOn(name -> name.startsWith("Reading"))
                    .containsExactly("Reading");
            assertThat(tabs(reviewed))
                    .filteredOn(name -> name.startsWith("Choices"))
                    .hasSizeLessThan(2);
        }
    }

    @Test
    void an_answer_that_a_question_offers_is_taken() throws IOException {
        Layout layout = ours("ours");
        List<List<Object>> offers = layout.rows("Offers");
        layout.sheet("Offers", offers.subList(0, offers.size() - 1))
                .sheet(
                        "Jarrowglass",
                        row("Supplier: Jarrowglass"),
                        row("Article", "Price EUR per piece from 100", "from 5000", "Date"),
                        row("Jar", 0.62, 0.62, DAY));
        String asked = CommandLineRun.of("check", save(layout, "book.xlsx")).err();
        assertThat(asked).contains("1 piece").contains("at \"pack column\"");
        layout.sheet(
                "Reading",
                row("Sheet", "Cell", "What is there", "Read as"),
                row("Jarrowglass", "A2", "pack column", "1 piece"));
        String err = CommandLineRun.of("check", save(layout, "book.xlsx")).err();
        assertThat(err).doesNotContain("pack column").doesNotContain("which is not one of the columns");
    }

    private static List<String> tabs(Path file) throws IOException {
        List<String> names = new ArrayList<>();
        try (XSSFWorkbook book = new XSSFWorkbook(Files.newInputStream(file))) {
            book.sheetIterator().forEachRemaining(sheet -> names.add(sheet.getSheetName()));
        }
        return names;
    }

    private static void renameHeader(Path file, String sheet, String header, String other) throws IOException {
        XSSFWorkbook book;
        try (var in = Files.newInputStream(file)) {
            book = new XSSFWorkbook(in);
        }
        book.getSheet(sheet).getRow(0).forEach(cell -> {
            if (cell.toString().equals(header)) {
                cell.setCellValue(other);
            }
        });
        try (OutputStream out = Files.newOutputStream(file)) {
            book.write(out);
        }
        book.close();
    }

    @Test
    void a_sheet_is_the_table_that_a_person_says() throws IOException {
        Layout layout = ours("ours").without("Hand balm");
        layout.sheet(
                "Hand balm",
                row("Material", "INCI", "CAS", "Supplier", "how much"),
                row("Glycerin", "Glycerin", "56-81-5", "Kvistgaard Kemi", 5),
                row("Shea butter", "Butyrospermum Parkii Butter", "194043-92-0", "Tarnholt Oleo", 40),
                row("Sunflower oil", "Helianthus Annuus Seed Oil", "8001-21-6", "Tarnholt Oleo", 55));
        layout.sheet(
                "Reading",
                row("Sheet", "Cell", "What is there", "Read as"),
                row("Hand balm", "", "(the whole sheet)", "Formula"));
        Path book = save(layout, "book.xlsx");
        assertThat(CommandLineRun.of("check", book).err())
                .as("it is no list of materials, and what is missing is told")
                .containsPattern("error Hand balm[^\n]*(% w/w|\"how much\")")
                .doesNotContain("looks like Offers");
        CommandLineRun.of("check", book, "--review", "--in-place");
        assertThat(readingRows(book))
                .containsEntry("Hand balm (the whole sheet)", "Formula")
                .containsKey("Hand balm how much");

        edit(book, "how much", "% w/w");
        Layout plain = ours("ours")
                .without("Hand balm")
                .sheet(
                        "Hand balm",
                        row("Material", "% w/w"),
                        row("Glycerin", 5),
                        row("Shea butter", 40),
                        row("Sunflower oil", 55));
        assertThat(costs(book)).isEqualTo(costs(save(plain, "ours.xlsx")));
    }

    @Test
    void headers_that_are_not_known_are_named() throws IOException {
        Layout layout = ours("ours").sheet("Stock", row("which", "how many"), row("Glycerin", 5), row("Jar", 40));
        assertThat(CommandLineRun.of("check", save(layout, "book.xlsx")).err())
                .contains("This sheet is to be Stock, but its headers are not known: \"which\", \"how many\".")
                .doesNotContain("No row of headers was found");
    }

    /** Offers with breaks as columns, and a column of a cost that no list has. */
    private static Layout withCarriage(String as) {
        Layout layout = ours("carriage").without("Offers");
        layout.sheet(
                "Kvist",
                row("Supplier: Kvistgaard Kemi"),
                row("Article", "Pack", "EUR/kg from 1 kg", "EUR/kg from 25 kg", "Carriage costs"),
                row("Glycerin", "5 kg", 2.4, 2.4, 20),
                row("Sodium hydroxide", "1 kg", 9, 9, 20));
        return as.isEmpty()
                ? layout
                : layout.sheet(
                        "Reading",
                        row("Sheet", "Cell", "What is there", "Read as"),
                        row("Kvist", "E2", "Carriage costs", as));
    }

    @Test
    void a_column_of_offers_can_be_a_term_of_the_supplier_or_nothing() throws IOException {
        String asked =
                CommandLineRun.of("check", save(withCarriage(""), "book.xlsx")).err();
        assertThat(asked).contains("Carriage costs");
        String freight = CommandLineRun.of("check", save(withCarriage("Freight per order"), "book.xlsx"))
                .err();
        assertThat(freight).doesNotContain("Carriage costs").doesNotContain("What does it hold?");
        JsonNode account = JSON.readTree(CommandLineRun.of("check", folder.resolve("book.xlsx"), "--json")
                .out());
        assertThat(account.toString()).contains("Freight per order");
        for (String nothing : List.of("nothing", "ignore")) {
            String err = CommandLineRun.of("check", save(withCarriage(nothing), "book.xlsx"))
                    .err();
            assertThat(err)
                    .doesNotContain("no longer on the sheet")
                    .doesNotContain("not one of the columns")
                    .doesNotContain("What does it hold?");
            assertThat(err.lines().filter(line -> line.contains("Kvist!E2") || line.contains("Reading!D2")))
                    .as("one note")
                    .singleElement()
                    .asString()
                    .startsWith("note ")
                    .contains("\"Carriage costs\"");
        }
    }

    @Test
    void grams_of_formulas_side_by_side_become_per_cent() throws IOException {
        Layout grams = ours("grams")
                .without("Day cream", "Hand balm")
                .sheet(
                        "Rezepturen",
                        row("Phase", "Rohstoff", "Day cream [g]", "Hand balm [g]"),
                        row("A", "Water", 1566, ""),
                        row("A", "Glycerin", 80, 90),
                        row("B", "Shea butter", 100, 720),
                        row("B", "Sunflower oil", 250, 990),
                        row("C", "Sodium hydroxide", 4, ""),
                        row("", "Summe", 2000, 1800));
        Layout percents = ours("per cent")
                .sheet(
                        "Day cream",
                        row("Phase", "Material", "% w/w"),
                        row("A", "Water", 78.3),
                        row("A", "Glycerin", 4),
                        row("B", "Shea butter", 5),
                        row("B", "Sunflower oil", 12.5),
                        row("C", "Sodium hydroxide", 0.2))
                .sheet(
                        "Hand balm",
                        row("Phase", "Material", "% w/w"),
                        row("A", "Glycerin", 5),
                        row("B", "Shea butter", 40),
                        row("B", "Sunflower oil", 55));
        Path book = save(grams, "book.xlsx");
        CommandLineRun check = CommandLineRun.of("check", book);
        assertThat(check.exit()).as(check.err()).isZero();
        assertThat(check.err())
                .contains("\"Day cream [g]\" is converted to per cent of 2000.")
                .contains("\"Hand balm [g]\" is converted to per cent of 1800.");
        assertThat(costs(book)).isEqualTo(costs(save(percents, "ours.xlsx")));
    }

    @Test
    void a_row_that_fits_nothing_any_more_is_told() throws IOException {
        Path book = save(
                ours("ours")
                        .sheet(
                                "Reading",
                                row("Sheet", "Cell", "What is there", "Read as"),
                                row("Offers", "A1", "Vendor of old", "Supplier"),
                                row("Gone", "", "(the whole sheet)", "Offers"),
                                row("Demand", "", "(the whole sheet)", "ignore")),
                "book.xlsx");
        assertThat(CommandLineRun.of("check", book).err())
                .contains("warning Reading!D2: \"Vendor of old\" is no longer on the sheet \"Offers\", so this row"
                        + " changes nothing. Correct or delete it.")
                .contains("warning Reading!D3: There is no sheet \"Gone\" any more, so this row changes nothing."
                        + " Correct or delete it.");
        assertThat(CommandLineRun.of("order", book).err()).contains("There is no demand to plan for.");
    }

    @Test
    void a_decimal_mark_and_the_order_of_days_can_be_said() throws IOException {
        Layout doubtful = ours("ours");
        List<List<Object>> offers = new ArrayList<>(doubtful.sheets().get("Offers"));
        offers.set(7, row("Kvistgaard Kemi", "Glycerin", 5, "kg", "", "2,400", "kg", "EUR", "", "11/10/2026"));
        doubtful.sheet("Offers", offers);
        assertThat(CommandLineRun.of("check", save(doubtful, "doubtful.xlsx")).err())
                .contains("Price is \"2,400\", which can mean 2400 or 2.4.")
                .contains("Quoted on is \"11/10/2026\", which can mean");
        doubtful.sheet(
                "Reading",
                row("Sheet", "Cell", "What is there", "Read as"),
                row("Offers", "F8", "decimals", "comma"),
                row("Offers", "J8", "dates", "month first"));
        assertThat(costs(save(doubtful, "doubtful.xlsx"))).isEqualTo(costs(save(ours("ours"), "ours.xlsx")));
    }

    @Test
    void a_column_of_losses_that_adds_up_to_100_is_no_formula() throws IOException {
        Layout layout = ours("ours")
                .sheet(
                        "Components",
                        row("Product", "Component", "Units per product", "Loss %"),
                        row("Day cream 50", "Jar", 1, 60),
                        row("Balm 30", "Jar", 1, 40));
        CommandLineRun check = CommandLineRun.of("check", save(layout, "book.xlsx"));
        assertThat(check.exit()).as(check.err()).isZero();
        assertThat(check.out()).contains("2 formulas");
    }

    @Test
    void a_formula_says_which_line_needs_an_estimate() throws IOException {
        Layout layout = ours("ours");
        List<List<Object>> lines = new ArrayList<>(layout.sheets().get("Day cream"));
        lines.set(5, row("C", "Sodium hydroxide", "q.s. to pH 5.5", ""));
        layout.sheet("Day cream", lines);
        assertThat(CommandLineRun.of("check", save(layout, "book.xlsx")).err())
                .contains(
                        "error Day cream!C6: How much of \"Sodium hydroxide\" is used is not known, because its % w/w is"
                                + " \"q.s. to pH 5.5\". Type about how much, such as q.s. to pH 5.5 (ca. 0.3), or add a column"
                                + " Estimate %.");
    }

    @Test
    void what_a_list_leaves_open_is_asked_with_its_cell() throws IOException {
        Layout layout = ours("ours")
                .sheet(
                        "Offers",
                        row("Supplier", "Item", "Pack", "Price EUR", "from 4"),
                        row("Tarnholt Oleo", "Shea butter", "2 kg", 6.5, 6));
        assertThat(CommandLineRun.of("check", save(layout, "book.xlsx")).err())
                .contains("error Offers!D2: Are the prices for a pack, or for an amount such as 1 kg?")
                .contains("Write the answer on a sheet Reading, at \"price per\".");
    }

    @Test
    void a_raw_list_is_read_beside_a_workbook_where_it_is_clear() throws IOException {
        Path book = save(ours("ours").without("Offers"), "book.xlsx");
        Path clear = Files.writeString(folder.resolve("kvist.csv"), """
                Supplier: Kvistgaard Kemi;;
                Article;Gebinde;Price per kg (EUR)
                Glycerin;5 kg;2,40
                Sodium hydroxide;1 kg;9,00
                """);
        String err = CommandLineRun.of("check", book, "--prices", clear).err();
        assertThat(err)
                .contains("\"Shea butter\"")
                .doesNotContain("\"Glycerin\"")
                .doesNotContain("kvist.csv");

        Path open = Files.writeString(folder.resolve("open.csv"), """
                Article;Gebinde;Price
                Glycerin;5 kg;2,40
                """);
        assertThat(CommandLineRun.of("check", book, "--prices", open).err())
                .contains("This is a supplier's list that leaves something open. Take it in first (perkilo prices ");
    }

    /** What stands under Read as, by sheet and what is there. */
    private static Map<String, String> readingRows(Path file) throws IOException {
        Map<String, String> rows = new TreeMap<>();
        try (XSSFWorkbook book = new XSSFWorkbook(Files.newInputStream(file))) {
            book.getSheet("Reading").forEach(row -> {
                if (row.getRowNum() > 4 && row.getCell(2) != null) {
                    rows.put(row.getCell(0) + " " + row.getCell(2), String.valueOf(row.getCell(5)));
                }
            });
        }
        return rows;
    }

    /** Types an answer on the sheet Reading. */
    private static void edit(Path file, String there, String as) throws IOException {
        XSSFWorkbook book;
        try (var in = Files.newInputStream(file)) {
            book = new XSSFWorkbook(in);
        }
        book.getSheet("Reading").forEach(row -> {
            if (row.getCell(2) != null && row.getCell(2).toString().equals(there)) {
                row.createCell(5).setCellValue(as);
            }
        });
        try (OutputStream out = Files.newOutputStream(file)) {
            book.write(out);
        }
        book.close();
    }

    private static Map<String, JsonNode> costs(Path book) throws IOException {
        CommandLineRun run = CommandLineRun.of("cost", book, "--json");
        assertThat(run.exit()).as(run.err()).isZero();
        Map<String, JsonNode> costs = new TreeMap<>();
        JSON.readTree(run.out())
                .get("runs")
                .forEach(one -> costs.put(one.get("product") + " " + one.get("units"), one));
        assertThat(costs).hasSize(4);
        return costs;
    }

    private static JsonNode orders(Path book) throws IOException {
        CommandLineRun run = CommandLineRun.of("order", book, "--json");
        assertThat(run.exit()).as(run.err()).isZero();
        return JSON.readTree(run.out()).get("orders");
    }

    private Path save(Layout layout, String name) throws IOException {
        Path file = folder.resolve(name);
        try (XSSFWorkbook book = new XSSFWorkbook()) {
            layout.sheets().forEach((title, rows) -> {
                XSSFSheet sheet = book.createSheet(title);
                for (int row = 0; row < rows.size(); row++) {
                    Row cells = sheet.createRow(row);
                    for (int column = 0; column < rows.get(row).size(); column++) {
                        put(book, cells.createCell(column), rows.get(row).get(column));
                    }
                }
            });
            layout.merged().forEach(block -> {
                String[] parts = block.split("!", 2);
                book.getSheet(parts[0]).addMergedRegion(CellRangeAddress.valueOf(parts[1]));
            });
            try (OutputStream out = Files.newOutputStream(file)) {
                book.write(out);
            }
        }
        return file;
    }

    private static void put(XSSFWorkbook book, Cell cell, Object value) {
        if (value instanceof Number number) {
            cell.setCellValue(number.doubleValue());
        } else if (value instanceof LocalDate day) {
            cell.setCellValue(day);
            style(book, cell, "yyyy-mm-dd");
        } else if (value instanceof Shown shown) {
            cell.setCellValue(shown.number());
            style(book, cell, shown.format());
        } else if (!value.equals("")) {
            cell.setCellValue(value.toString());
        }
    }

    private static void style(XSSFWorkbook book, Cell cell, String format) {
        CellStyle style = book.createCellStyle();
        style.setDataFormat(book.createDataFormat().getFormat(format));
        cell.setCellStyle(style);
    }
}
