package perkilo.json;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.util.List;
import org.junit.jupiter.api.Test;
import perkilo.sheet.table.Column;
import perkilo.sheet.table.Table;

/** A declared table becomes an array, and one entry of a table an object. */
final class TableJsonTest {

    private record Jar(String size, BigDecimal price) {}

    private record Shelf(String name, Jar best, List<Jar> jars) {}

    private final Table<Jar> jars = Table.of(
            Column.<Jar>of("size", "Size").words(Jar::size).json(),
            Column.<Jar>of("onSheet", "Only on the sheet").words(Jar::size),
            Column.<Jar>of("price", "Price").value(Jar::price).json());
    private final Table<Shelf> shelves = Table.of(
            Column.<Shelf>of("name", "Shelf").words(Shelf::name).json(),
            Column.<Shelf>of("best", "").json(shelf -> jars.one(shelf.best())),
            Column.<Shelf>of("jars", "").json(shelf -> jars.with(shelf.jars())));

    @Test
    void one_entry_is_an_object_and_rows_are_an_array() {
        Jar small = new Jar("50 mL", new BigDecimal("1.50"));
        Jar large = new Jar("200 mL", new BigDecimal("2"));
        Shelf top = new Shelf("top", large, List.of(small, large));

        assertThat(TableJson.array(shelves.with(List.of(top)))).hasToString("""
                        [{"name":"top","best":{"size":"200 mL","price":"2"},\
                        "jars":[{"size":"50 mL","price":"1.5"},{"size":"200 mL","price":"2"}]}]""");
    }

    @Test
    void a_member_can_be_left_out_of_some_rows() {
        Table<Jar> priced = Table.of(
                Column.<Jar>of("size", "Size").words(Jar::size).json(),
                Column.<Jar>of("price", "Price")
                        .value(Jar::price)
                        .json()
                        .jsonWhere(jar -> jar.price().signum() > 0));

        assertThat(TableJson.array(
                        priced.with(List.of(new Jar("50 mL", BigDecimal.ZERO), new Jar("200 mL", BigDecimal.ONE)))))
                .hasToString("[{\"size\":\"50 mL\"},{\"size\":\"200 mL\",\"price\":\"1\"}]");
    }
}
