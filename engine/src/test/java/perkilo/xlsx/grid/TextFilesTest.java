package perkilo.xlsx.grid;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import perkilo.origin.Finding;

/** Encodings of text files, and what is said about a file whose fields can be separated in several ways. */
final class TextFilesTest {

    private static final String LIST = """
            Artikel;Größe;Preis;je
            Öl, süß;5 kg;12,50 €;kg
            Crème brûlée – Aroma;1 kg;7,20 €;kg
            Ätherisches Öl;100 g;3,10 €;kg
            """;

    @TempDir
    Path folder = Path.of("");

    @ParameterizedTest
    @ValueSource(strings = {"UTF-8", "UTF-16LE", "UTF-16BE", "windows-1252", "x-MacRoman"})
    void a_list_without_a_byte_order_mark(String charset) throws IOException {
        assertThat(rows(read(LIST.getBytes(Charset.forName(charset))))).isEqualTo(expected());
    }

    @ParameterizedTest
    @ValueSource(strings = {"UTF-8", "UTF-16LE", "UTF-16BE"})
    void a_list_with_a_byte_order_mark(String charset) throws IOException {
        assertThat(rows(read(("\uFEFF" + LIST).getBytes(Charset.forName(charset)))))
                .isEqualTo(expected());
    }

    private static List<List<String>> expected() {
        return List.of(
                List.of("Artikel", "Größe", "Preis", "je"),
                List.of("Öl, süß", "5 kg", "12,50 €", "kg"),
                List.of("Crème brûlée – Aroma", "1 kg", "7,20 €", "kg"),
                List.of("Ätherisches Öl", "100 g", "3,10 €", "kg"));
    }

    /** Words of five languages, each alone in a file, are enough to tell the two encodings. */
    @ParameterizedTest
    @ValueSource(
            strings = {
                "Öl",
                "süß",
                "Größe",
                "Äther",
                "à",
                "pâte",
                "Crème",
                "beurre de karité",
                "Übersee",
                "naïf",
                "año",
                "precio más",
                "piñón",
                "caffè",
                "perché",
                "qualità",
                "ÖL UND FETT",
                "5 °C",
                "l’huile",
                "12,50 €",
                "façon",
                "“best” price",
                "Nr. 5 – neu",
                "© Quellmoor",
                "æble",
                "grød"
            })
    void words_in_windows_and_mac_encodings(String words) throws IOException {
        for (String charset : List.of("windows-1252", "x-MacRoman")) {
            byte[] content = ("Name;Price\n" + words + ";1\n").getBytes(Charset.forName(charset));
            assertThat(rows(read(content)).get(1).get(0)).as(charset).isEqualTo(words);
        }
    }

    @Test
    void mac_roman_is_noted_with_its_line() throws IOException {
        assertThat(read(LIST.getBytes(Charset.forName("x-MacRoman"))).findings())
                .extracting(Finding::toString)
                .containsExactly(
                        "note list.csv line 1: The file does not say how its letters are encoded. They are read"
                                + " as Mac Roman, because that makes words such as \"Größe\". If letters with accents are wrong,"
                                + " save the file as UTF-8.");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '#',
            value = {
                "Item,Price|Oil,1.20|Wax,2.30",
                "Preisliste, gültig ab 1.1.2027|Artikel;Preis;je|Öl, kalt;12,50;kg|Wachs;3,20;kg",
                "Item;Price;Per|\"Oil; raw\";1,20;kg|\"Wax, white\";2,30;kg",
                "Item\tPrice\tper|Oil, raw\t1,20\tkg",
                "Item, Price, Per|Oil, 1.20, kg|\"Wax, white\", 2.30, kg"
            })
    void a_clear_file_is_read_without_a_word(String lines) throws IOException {
        assertThat(read(lines.replace('|', '\n')).findings()).isEmpty();
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '#',
            value = {
                "Oil, raw; 5 kg|Wax, white; 1 kg"
                        + "#note list.csv line 1: The fields are taken to be separated by commas, which makes 2 columns."
                        + " They could also be separated by semicolons, which makes 2 columns. If the columns are wrong: Open it"
                        + " in your spreadsheet program and save it as .xlsx.",
                "Item Price Per|Oil 1.20 kg|Wax 2.30 kg|Salt 0.80 kg"
                        + "#note list.csv line 1: The fields are taken to be separated by spaces, because that makes 3 columns"
                        + " in nearly all lines. If the columns are wrong: Open it in your spreadsheet program and save it as"
                        + " .xlsx.",
                "'Item','Per'|'Children''s oil','kg'|'Wax, white','kg'"
                        + "#note list.csv line 1: The apostrophes around fields are taken to be quotation marks and are left"
                        + " out.",
                "Item,Price,Per|\"Oil,1.20,kg|\"Wax, white\",2.30,kg|Salt,0.80,kg"
                        + "#warning list.csv line 2: A quotation mark is out of place in the row that begins here. Such a row"
                        + " is read so that it has as many columns as the other rows. Check that its text is right.",
                "Item,Price,Per|\"Oil,1.20,kg|\"Wax,2.30,kg|Salt,0.80,kg|\"Tin,1,kg"
                        + "#warning list.csv line 2: Quotation marks are out of place in 3 rows: here, in line 3 and later."
                        + " Such a row is read so that it has as many columns as the other rows. Check that its text is right."
            })
    void a_doubtful_file_is_read_with_one_word(String lines, String expected) throws IOException {
        assertThat(read(lines.replace('|', '\n')).findings())
                .extracting(Finding::toString)
                .containsExactly(expected);
    }

    @Test
    void words_in_lines_are_not_cut_at_their_spaces_and_colons() throws IOException {
        assertThat(rows(read("Shea butter refined\nOil 5 kg pail\nOpens: 9:00\nCloses: 17:30\n")))
                .containsExactly(
                        List.of("Shea butter refined"),
                        List.of("Oil 5 kg pail"),
                        List.of("Opens: 9:00"),
                        List.of("Closes: 17:30"));
    }

    @Test
    void lines_are_counted_in_every_kind_of_line_end() throws IOException {
        for (String end : List.of("\n", "\r\n", "\r")) {
            Grid grid = read("A,B" + end + "\"x" + end + "y\",1" + end + end + "z,2" + end)
                    .sheets()
                    .get(0);
            assertThat(grid.origin(3, 0).where()).isEqualTo("list.csv line 5");
            assertThat(grid.at(3, 0).text()).isEqualTo("z");
        }
    }

    /** A title in a comma file does not turn semicolons into delimiters, however long the file is. */
    @Test
    void the_end_of_a_long_file_counts_as_well() throws IOException {
        StringBuilder text =
                new StringBuilder("Price list; all prices in EUR; valid from 2026-03-01\nItem,Price,Per\n");
        for (int i = 0; i < 5000; i++) {
            text.append("Invented oil ").append(i).append(',').append(i % 90).append(".50,kg\n");
        }
        Grids read = read(text.toString());
        assertThat(read.findings()).isEmpty();
        assertThat(rows(read).get(4000)).hasSize(3);
    }

    /** Marks out of place in every row do not make reading quadratic. */
    @Test
    void marks_out_of_place_everywhere_are_read_in_time() throws IOException {
        StringBuilder text = new StringBuilder("Item,Price,Per\n");
        for (int i = 0; i < 50_000; i++) {
            text.append("\"Invented oil ").append(i).append(',').append(i % 90).append(".50,kg\n");
        }
        long start = System.nanoTime();
        assertThat(rows(read(text.toString())).get(40_000)).hasSize(3);
        assertThat((System.nanoTime() - start) / 1_000_000_000.0).isLessThan(20);
    }

    private Grids read(String text) throws IOException {
        return read(text.getBytes(StandardCharsets.UTF_8));
    }

    private Grids read(byte[] content) throws IOException {
        return Grids.ofPriceFile(Files.write(folder.resolve("list.csv"), content));
    }

    private static List<List<String>> rows(Grids grids) {
        Grid grid = grids.sheets().get(0);
        List<List<String>> rows = new ArrayList<>();
        rows.add(grid.row(grid.rows().first()).values().stream().map(Cell::text).toList());
        for (int row : grid.rows().below(grid.rows().first())) {
            rows.add(grid.row(row).values().stream().map(Cell::text).toList());
        }
        return rows;
    }
}
