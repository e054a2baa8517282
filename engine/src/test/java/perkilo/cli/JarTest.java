package perkilo.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.function.UnaryOperator;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * The jar as it is handed out: parts of its libraries are left out of it, which no test of the classes beside it sees.
 * Run once the jar is built.
 */
@Tag("jar")
final class JarTest {

    /** A price of 6.5 as people compute one, with functions of all kinds. */
    private static final List<String> PRICES = List.of(
            "13/2",
            "Notes!B1*2",
            "SUM(Notes!B1:B2)",
            "ROUND(6.4999,1)",
            "MAX(Notes!B1:B2,6.5)",
            "IF(Notes!B1>3,6.5,0)",
            "IFERROR(1/0,6.5)",
            "VLOOKUP(\"shea\",Notes!A1:B3,2,FALSE)",
            "INDEX(Notes!B1:B3,MATCH(\"shea\",Notes!A1:A3,0))",
            "SUMIF(Notes!A1:A3,\"shea\",Notes!B1:B3)",
            "SUMPRODUCT(Notes!B1:B2,Notes!C1:C2)/2",
            "INDIRECT(\"Notes!B3\")",
            "OFFSET(Notes!B1,2,0)",
            "VALUE(TEXT(6.5,\"0.00\"))",
            "VALUE(SUBSTITUTE(\"6,5\",\",\",\".\"))",
            "MEDIAN(6,7)",
            "AVERAGE(Notes!B3,Notes!B3)",
            "ROUND(STDEV(0,13)/SQRT(2),6)",
            "NPV(0,6.5)",
            "-PMT(0,2,13)",
            "DAY(DATE(2026,1,6))+0.5",
            "MONTH(EDATE(DATE(2026,1,1),5))+0.5",
            "NETWORKDAYS(DATE(2026,11,2),DATE(2026,11,9))+0.5",
            "MDETERM(Notes!B1:C2)",
            "FORECAST(6.5,Notes!B1:B3,Notes!B1:B3)");

    @TempDir
    private Path folder = Path.of("");

    @Test
    void formulas_without_saved_values_are_computed() throws Exception {
        String computed = costed("formulas", formula -> "<c><f>" + escaped(formula) + "</f></c>");
        String typed = costed("numbers", formula -> "<c><v>6.5</v></c>");
        assertThat(computed).isEqualTo(typed).contains("\"unitCost\"");
    }

    private String costed(String name, UnaryOperator<String> price) throws Exception {
        Path own = Files.createDirectories(folder.resolve(name));
        Path book = Files.write(own.resolve("book.xlsx"), book(price).bytes());
        Path answer = folder.resolve(name + ".json");
        Path said = folder.resolve(name + ".txt");
        Process jar = new ProcessBuilder(
                        Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                        "-jar",
                        Path.of("target", "perkilo.jar").toString(),
                        "cost",
                        "--json",
                        book.toString())
                .redirectOutput(answer.toFile())
                .redirectError(said.toFile())
                .start();
        assertThat(jar.waitFor(10, TimeUnit.MINUTES)).isTrue();
        assertThat(jar.exitValue()).as(Files.readString(said)).isZero();
        return Files.readString(answer);
    }

    /** As many materials as prices, all alike but for how the price is written. */
    private static RawBook book(UnaryOperator<String> price) throws IOException {
        List<List<?>> offers = new ArrayList<>();
        List<List<?>> lines = new ArrayList<>();
        offers.add(List.of(
                "Supplier", "Item", "Pack size", "Pack unit", "From quantity", "Price", "Price per", "Currency"));
        lines.add(List.of("Phase", "Material", "% w/w"));
        for (int i = 0; i < PRICES.size(); i++) {
            String material = "Butter " + (char) ('A' + i);
            offers.add(List.of("Tarnholt Oleo", material, 25, "kg", "", "", "kg", "EUR"));
            lines.add(List.of("A", material, 100.0 / PRICES.size()));
        }
        RawBook book = RawBook.sound()
                .sheet("Offers", offers.toArray(List[]::new))
                .sheet("Balm", lines.toArray(List[]::new))
                .sheet("Notes", List.of("argan", 3.25, 1), List.of("jojoba", 3.25, 3), List.of("shea", 6.5));
        for (int i = 0; i < PRICES.size(); i++) {
            book.set("Offers", "F" + (i + 2), price.apply(PRICES.get(i)));
        }
        return book;
    }

    private static String escaped(String formula) {
        return formula.replace("&", "&amp;").replace("<", "&lt;").replace(">", "&gt;");
    }
}
