package perkilo.pricelists;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import net.jqwik.api.Assume;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import perkilo.Scratch;
import perkilo.xlsx.grid.Csv;

/**
 * A list reads back the same from every layout, language, kind of file, mark of decimals and way to name the currency.
 */
final class LayoutsProperties {

    static final LocalDate DAY = LocalDate.of(2026, 11, 2);

    @Property(tries = 500)
    void a_list_reads_back_the_same_from_every_layout(
            @ForAll ListWriter.Layout layout,
            @ForAll ListWriter.Language language,
            @ForAll ListWriter.Kind kind,
            @ForAll ListWriter.Basis basis,
            @ForAll ListWriter.Money money,
            @ForAll boolean comma,
            @ForAll long seed)
            throws IOException {
        ListWriter writer = new ListWriter(layout, language, kind, basis, money, comma, seed);
        Assume.that(writer.exists());
        Path folder = Scratch.folder();
        Path list = writer.write(folder);

        TakenIn taken = new TakeIn(new ListFolder(folder.resolve("kept")), List.of(), Set.of())
                .take(list, new TakeIn.Said("Fen & Moor", DAY, null));

        assertThat(taken.questions()).as(described(list)).isEmpty();
        assertThat(taken.isKept()).as(taken.findings() + described(list)).isTrue();
        assertThat(rows(taken)).as(described(list)).containsExactlyInAnyOrderElementsOf(writer.expected());
        Scratch.delete(folder);
    }

    private static String described(Path list) throws IOException {
        return list.toString().endsWith(".xlsx") ? list.toString() : Files.readString(list);
    }

    /** The list as it is kept. */
    static List<String> rows(TakenIn taken) throws IOException {
        var kept = taken.kept();
        assertThat(kept).isNotNull();
        List<String> rows = new ArrayList<>();
        for (Csv.Line line : Csv.read(new String(Files.readAllBytes(kept.file()), StandardCharsets.UTF_8), ',')) {
            List<String> fields =
                    line.fields().stream().map(field -> field.text()).toList();
            rows.add(String.join("|", fields.subList(1, 8)));
        }
        return rows.subList(1, rows.size());
    }
}
