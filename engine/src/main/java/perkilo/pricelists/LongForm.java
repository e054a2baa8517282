package perkilo.pricelists;

import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import javax.money.CurrencyUnit;
import org.jspecify.annotations.Nullable;
import perkilo.schema.OffersSheet;

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
        next(quoted(supplier));
        next(quoted(item));
        next(number(line.pack().amount()));
        next(line.pack().measure().symbol());
        next(number(line.from()));
        CurrencyUnit currency = line.currency();
        if (currency == null) {
            next(OffersSheet.NO_PRICE);
            next("");
            next("");
        } else {
            next(number(line.price()));
            next(line.per() == null ? "pack" : line.per().symbol());
            next(currency.getCurrencyCode());
        }
        next(number(line.minimumOrder()));
        next(number(line.orderMultiple()));
        next(number(line.duty()));
        next(date(line.quotedOn() == null ? quotedOn : line.quotedOn()));
        next(date(line.validUntil() == null ? validUntil : line.validUntil()));
        text.append(quoted(note)).append('\n');
    }

    private void next(String field) {
        text.append(field).append(',');
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

    private static boolean needsQuotes(String field) {
        for (int at = 0; at < field.length(); at++) {
            char c = field.charAt(at);
            if (c == ',' || c == '"' || c == '\n' || c == '\r') {
                return true;
            }
        }
        return false;
    }

    private static String quoted(String field) {
        String safe = !field.isEmpty() && "=+-@\t\r".indexOf(field.charAt(0)) >= 0 ? " " + field : field;
        boolean plain = safe.equals(field) && !needsQuotes(safe);
        boolean number = plain && !field.isEmpty() && Character.isDigit(field.charAt(0));
        return plain && !number ? safe : "\"" + safe.replace("\"", "\"\"") + "\"";
    }
}
