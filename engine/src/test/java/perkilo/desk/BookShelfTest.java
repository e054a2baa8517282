package perkilo.desk;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import perkilo.reading.Sources;

/** Workbooks that are asked for again and again. */
final class BookShelfTest {

    @TempDir
    private Path folder = Path.of("");

    private final BookShelf shelf = new BookShelf();

    private OpenedBook open(Sources sources) throws IOException {
        return shelf.open(sources, Templates.DAY, Watch.NONE);
    }

    @Test
    void a_workbook_is_read_once_until_it_changes() throws IOException {
        Path book = Templates.book(folder, Template.MINIMAL);
        OpenedBook first = open(Sources.of(book));
        assertThat(open(Sources.of(book))).isSameAs(first);

        FileTime time = Files.getLastModifiedTime(book);
        byte[] bytes = Files.readAllBytes(book);
        bytes[10] ^= 2; // the time of the first part: as long as before
        Files.write(book, bytes);
        Files.setLastModifiedTime(book, time);
        assertThat(open(Sources.of(book))).isNotSameAs(first);
    }

    @Test
    void it_is_read_anew_if_a_list_changes_that_is_read_with_it() throws IOException {
        Path book = Templates.book(folder, Template.MINIMAL);
        Path list = Files.writeString(
                folder.resolve("list.csv"),
                "Supplier,Item,Pack size,Pack unit,Price,Price per,Currency\nTarnholt Oleo,Shea butter,25,kg,160,pack,EUR\n");
        Sources with = new Sources(book, List.of(list), null, null);
        OpenedBook first = open(with);
        assertThat(open(with)).isSameAs(first);
        assertThat(open(Sources.of(book))).isNotSameAs(first);

        Files.writeString(list, Files.readString(list).replace("160", "161"));
        assertThat(open(with).reading().value().offersFor("Shea butter"))
                .extracting(offer -> offer.breaks().get(0).price().value().toPlainString())
                .contains("161");
    }

    @Test
    void the_ones_used_last_are_kept() throws IOException {
        Path book = Templates.book(folder, Template.MINIMAL);
        OpenedBook first = open(Sources.of(book));
        for (int other = 0; other < 3; other++) {
            open(Sources.of(Files.copy(book, folder.resolve(other + ".xlsx"))));
            assertThat(open(Sources.of(book))).isSameAs(first);
        }
        for (int other = 3; other < 7; other++) {
            open(Sources.of(Files.copy(book, folder.resolve(other + ".xlsx"))));
        }
        assertThat(open(Sources.of(book))).isNotSameAs(first);
    }
}
