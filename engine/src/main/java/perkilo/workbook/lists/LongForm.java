package perkilo.workbook.lists;

import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Lists in the long form: CSV with a comma, quoted as RFC 4180, UTF-8.
 *
 * <p>A text that a spreadsheet would take for a formula gets a space before it, which readers drop again.
 */
final class LongForm {

    private static final String HEADER = "Supplier,Item,Pack size,Pack unit,From quantity,Price,Price per,Currency,"
            + "Minimum order,Order multiple,Duty %,Quoted on,Valid until,Note\n";

    private final StringBuilder text = new StringBuilder(HEADER);

    /**
     * Adds a line.
     *
     * @param item whom its item means
     */
    void add(String supplier, String item, ListLine line, LocalDate quotedOn, @Nullable LocalDate validUntil) {
        String note = item.equals(line.item()) ? line.code() : ("listed as " + line.item() + " " + line.code()).strip();
        row(List.of(
                quoted(supplier),
                quoted(item),
                number(line.pack().amount()),
                line.pack().measure().symbol(),
                number(line.from()),
                number(line.price()),
                line.per() == null ? "pack" : line.per().symbol(),
                line.currency().getCurrencyCode(),
                number(line.minimumOrder()),
                number(line.orderMultiple()),
                number(line.duty()),
                String.valueOf(line.quotedOn() == null ? quotedOn : line.quotedOn()),
                date(line.validUntil() == null ? validUntil : line.validUntil()),
                quoted(note)));
    }

    private void row(List<String> fields) {
        text.append(String.join(",", fields)).append('\n');
    }

    /** The file's bytes. */
    byte[] bytes() {
        return text.toString().getBytes(StandardCharsets.UTF_8);
    }

    private static String number(@Nullable BigDecimal number) {
        return number == null ? "" : Quantity.plain(number);
    }

    private static String date(@Nullable LocalDate date) {
        return date == null ? "" : date.toString();
    }

    private static String quoted(String field) {
        String safe = !field.isEmpty() && "=+-@\t\r".indexOf(field.charAt(0)) >= 0 ? " " + field : field;
        boolean plain =
                safe.equals(field) && safe.chars().noneMatch(c -> c == ',' || c == '"' || c == '\n' || c == '\r');
        boolean number = plain && !field.isEmpty() && Character.isDigit(field.charAt(0));
        return plain && !number ? safe : "\"" + safe.replace("\"", "\"\"") + "\"";
    }
}
