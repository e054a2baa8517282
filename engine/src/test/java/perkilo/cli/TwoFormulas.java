package perkilo.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * A workbook with two emulsions that share an emollient, and two suppliers: Nordquell (freight 45 EUR per order, 30 EUR
 * more below 400 EUR of goods) and Ostrand (freight 60 EUR per order). Everything that swaps of emollients need is
 * known; the figures of the tests are computed from these rows by hand.
 */
final class TwoFormulas {

    private TwoFormulas() {}

    /** Writes the workbook into a folder. */
    static Path in(Path folder) throws IOException {
        return Files.write(folder.resolve("two.xlsx"), book().bytes());
    }

    private static List<Object> emollient(String name, String inci, int spreading, int viscosity, Object hlb) {
        return List.of(
                name,
                inci,
                "emollient",
                "emollient ester",
                "oil",
                spreading > 650 ? "medium" : "heavy",
                spreading,
                viscosity,
                hlb,
                "medium",
                1,
                1,
                40,
                "high",
                "no",
                100,
                -20);
    }

    private static List<Object> offer(String item, String supplier, int pack, Object price) {
        String unit = item.equals("Bottle") ? "each" : "kg";
        return List.of(item, supplier, pack, unit, price, "EUR", unit);
    }

    static RawBook book() {
        List<List<?>> materials = new ArrayList<>(List.of(
                List.of(
                        "Material",
                        "INCI name",
                        "Functions",
                        "Role",
                        "Soluble in",
                        "Spreading class",
                        "Spreading value",
                        "Viscosity mPa·s",
                        "Required HLB",
                        "Polarity",
                        "Natural origin index",
                        "Use min %",
                        "Use max %",
                        "Oxidative stability",
                        "Volatile",
                        "Max process °C",
                        "Melts at °C"),
                List.of("Water", "Aqua", "solvent"),
                List.of("Glycerin", "Glycerin", "humectant", "humectant", "water"),
                List.of("Xanthan", "Xanthan Gum", "viscosity controlling", "gum", "water"),
                List.of(
                        "Emulsifier",
                        "Glyceryl Stearate 60 % (and) PEG-100 Stearate 40 %",
                        "emulsifying",
                        "O/W emulsifier",
                        "oil"),
                List.of("Preservative", "Phenoxyethanol, Ethylhexylglycerin", "preservative", "preservative", "both")));
        materials.add(emollient("Caprylate A", "Coco-Caprylate", 1000, 11, 10));
        materials.add(emollient("Oleate B", "Decyl Oleate", 950, 12, 10.5));
        materials.add(emollient("Palmitate C", "Isopropyl Palmitate", 1050, 10, 10.2));
        materials.add(emollient("Stearate D", "Ethylhexyl Stearate", 900, 14, 10));
        materials.add(emollient("Triglyceride E", "Caprylic/Capric Triglyceride", 700, 28, 9));
        return new RawBook()
                .sheet(
                        "Settings",
                        List.of("Setting", "Value"),
                        List.of("Home currency", "EUR"),
                        List.of("Costing date", "2026-11-20"),
                        List.of("Stability test cost", 650),
                        List.of("Challenge test cost", 480))
                .sheet("Materials", materials.toArray(new List<?>[0]))
                .sheet(
                        "Suppliers",
                        List.of(
                                "Supplier",
                                "Currency",
                                "Freight per order",
                                "Minimum order value",
                                "Small order charge"),
                        List.of("Nordquell", "EUR", 45, 400, 30),
                        List.of("Ostrand", "EUR", 60, "", ""))
                .sheet(
                        "Offers",
                        List.of("Item", "Supplier", "Pack size", "Pack unit", "Price", "Currency", "Price per"),
                        offer("Glycerin", "Ostrand", 25, 2.1),
                        offer("Xanthan", "Ostrand", 1, 18),
                        offer("Emulsifier", "Ostrand", 20, 7.5),
                        offer("Preservative", "Ostrand", 5, 14),
                        offer("Caprylate A", "Nordquell", 25, 11.5),
                        offer("Oleate B", "Nordquell", 25, 6.4),
                        offer("Palmitate C", "Nordquell", 180, 3.1),
                        offer("Stearate D", "Ostrand", 25, 5.2),
                        offer("Triglyceride E", "Nordquell", 25, 6.8),
                        offer("Bottle", "Ostrand", 100, 0.3))
                .sheet(
                        "Day cream",
                        List.of("Phase", "Material", "INCI name", "% w/w", "Phase °C", "Remarks", "Supplier code"),
                        List.of("A", "Water", "Aqua", "q.s.", 75, "", ""),
                        List.of("A", "Glycerin", "Glycerin", 4, 75, "", "GLY-1"),
                        List.of("A", "Xanthan", "Xanthan Gum", 0.3, 75, "disperse in glycerin", 71),
                        List.of("B", "Caprylate A", "Coco-Caprylate", 8, 75, "add first", "CC-5"),
                        List.of("B", "Triglyceride E", "Caprylic/Capric Triglyceride", 5, 75, "", "CT-8"),
                        List.of("B", "Emulsifier", "", 4.5, 75, "", ""),
                        List.of("C", "Preservative", "", 1, 40, "below 45 °C", ""))
                .sheet(
                        "Body milk",
                        List.of("Phase", "Material", "% w/w", "Phase °C"),
                        List.of("A", "Water", "q.s.", 75),
                        List.of("A", "Glycerin", 3, 75),
                        List.of("A", "Xanthan", 0.4, 75),
                        List.of("B", "Caprylate A", 5, 75),
                        List.of("B", "Emulsifier", 4, 75),
                        List.of("C", "Preservative", 1, 40))
                .sheet(
                        "Batches",
                        List.of("Formula", "Vessel max kg", "Hold-up kg", "Hours per batch"),
                        List.of("Day cream", 100, 0.5, 3),
                        List.of("Body milk", 200, 1, 3))
                .sheet(
                        "Products",
                        List.of("Product", "Formula", "Fill", "Fill unit"),
                        List.of("Cream 50 g", "Day cream", 50, "g"),
                        List.of("Milk 200 g", "Body milk", 200, "g"))
                .sheet(
                        "Components",
                        List.of("Product", "Component", "Per unit"),
                        List.of("Cream 50 g", "Bottle", 1),
                        List.of("Milk 200 g", "Bottle", 1))
                .sheet(
                        "Runs",
                        List.of("Product", "Units"),
                        List.of("Cream 50 g", 500),
                        List.of("Cream 50 g", 5000),
                        List.of("Milk 200 g", 300),
                        List.of("Milk 200 g", 3000));
    }

    /**
     * The arguments of a search in the workbook, with more behind them; a tilde stands for a blank inside of a name.
     */
    static List<Object> search(Path book, Path result, String more) {
        List<Object> words = new ArrayList<>(List.of("swap", book, "-q", "-o", result));
        if (!more.isEmpty()) {
            for (String word : more.split(" ", -1)) {
                words.add(word.replace('~', ' '));
            }
        }
        return words;
    }

    /** The title of a run, as sheets and JSON have it. */
    static String title(int units, String product) {
        return String.format(Locale.ROOT, "%,d × %s", units, product);
    }
}
