package perkilo.xlsx.grid;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;

/** Files that keep to RFC 4180, with values as price lists have them, are read as they were written. */
final class Rfc4180Properties {

    private static final String[] WORDS = {
        "oil",
        "Shea butter",
        "5\" tube",
        "\"best\" wax",
        "children's soap",
        "'n butter",
        "O'Neill",
        "raw; dry",
        "cold, pressed",
        "line one\nline two",
        "line one\r\nline two",
        "C:\\lists\\",
        "50 | 50",
        "tab\there",
        "https://example.org/a?b=1,2",
        "a::b",
        "~",
        "€ 3,20",
        "1,234.50",
        "12.5",
        "-4",
        "2026-03-01",
        "03/04/2026",
        "10:30",
        "25 %",
        "",
        "x@example.org",
        "\"",
        "\"\"",
        ",",
        "\n",
        "'",
        "'quoted'",
        "q.s.",
        "#5",
        "R&D",
        "(dry)"
    };

    @Property(tries = 500)
    void what_is_written_is_read(
            @ForAll @IntRange(min = 0, max = 1_000_000) int seed,
            @ForAll @IntRange(min = 2, max = 9) int columns,
            @ForAll @IntRange(min = 3, max = 60) int rows,
            @ForAll boolean always,
            @ForAll boolean unix) {
        Random random = new Random(seed);
        MessyFiles.Style style = new MessyFiles.Style(",", "\"", "\"", unix ? "\n" : "\r\n");
        List<List<String>> written = new ArrayList<>();
        StringBuilder text = new StringBuilder();
        for (int row = 0; row < rows; row++) {
            List<String> fields = new ArrayList<>();
            for (int column = 0; column < columns; column++) {
                boolean figures = column % 2 == 1 && row > 0;
                fields.add(figures ? String.valueOf(random.nextInt(1000)) : WORDS[random.nextInt(WORDS.length)]);
            }
            written.add(fields);
            text.append(style.line(fields, always));
        }

        DialectFinder.Found found = DialectFinder.find(text.toString());
        List<List<String>> read = new ArrayList<>();
        Csv csv = new Csv(text.toString(), found.dialect(), found.usual());
        csv.read(line -> read.add(line.fields().stream().map(Csv.Field::text).toList()));

        assertThat(found.dialect()).isEqualTo(Dialect.COMMA);
        assertThat(csv.oddLines()).isEmpty();
        assertThat(read).isEqualTo(written);
    }
}
