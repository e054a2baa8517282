package perkilo.pricelists;

import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import javax.money.CurrencyUnit;
import org.jspecify.annotations.Nullable;
import perkilo.layouts.ListLine;
import perkilo.layouts.Quantity;
import perkilo.offers.Offer;
import perkilo.origin.Figure;
import perkilo.schema.OffersSheet;

/**
 * Lists in the long form: CSV with a comma, quoted as RFC 4180, UTF-8.
 *
 * <p>A text that a spreadsheet would take for a formula gets a space before it, which readers remove.
 */
final class LongForm {

    private static final String HEADER = "Supplier,Item,Pack size,Pack unit,From quantity,Price,Price per,Currency,"
            + "Minimum order,Order multiple,Duty %,Quoted on,Valid until,Note\n";

    private final StringBuilder text = new StringBuilder(HEADER);

    /**
     * Adds a line.
     *
     * @param item the item that the line means
     */
    void add(String supplier, String item, ListLine line, LocalDate quotedOn, @Nullable LocalDate validUntil) {
        String code = line.listed().code();
        String listed = item.equals(line.item()) ? code : ("listed as " + line.item() + " " + code).strip();
        String between = listed.isEmpty() || line.note().isEmpty() ? "" : "; ";
        String note = listed + between + line.note();
        next(quoted(supplier));
        next(quoted(item));
        next(Quantity.plain(line.pack().amount()));
        next(line.pack().measure().symbol());
        Offer.PriceBreak price = line.price();
        CurrencyUnit currency = line.currency();
        next(price == null ? "" : number(price.from()));
        if (price == null || currency == null) {
            next(OffersSheet.NO_PRICE);
            next("");
            next("");
        } else {
            next(number(price.price()));
            next(price.per() == null ? "pack" : price.per().symbol());
            next(currency.getCurrencyCode());
        }
        next(number(line.terms().minimumOrder()));
        next(number(line.terms().orderMultiple()));
        next(percent(line.terms().duty()));
        next(date(line.quotedOn() == null ? quotedOn : line.quotedOn()));
        LocalDate ownEnd = line.validity().validUntil();
        next(date(ownEnd == null ? validUntil : ownEnd));
        text.append(quoted(note)).append('\n');
    }

    private void next(String field) {
        text.append(field).append(',');
    }

    /** The file's bytes. */
    byte[] bytes() {
        return text.toString().getBytes(StandardCharsets.UTF_8);
    }

    private static String number(@Nullable Figure number) {
        return number == null ? "" : Quantity.plain(number.value());
    }

    private static String percent(@Nullable Figure fraction) {
        return fraction == null ? "" : Quantity.plain(fraction.value().movePointRight(2));
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
