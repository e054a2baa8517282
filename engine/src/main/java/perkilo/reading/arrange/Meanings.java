package perkilo.reading.arrange;

import java.util.Map;
import java.util.Optional;
import perkilo.layouts.ColumnUse;
import perkilo.layouts.Meaning;
import perkilo.schema.InputColumn;
import perkilo.schema.OffersSheet;

/** The columns of Offers, and what the columns of suppliers' lists mean. */
final class Meanings {

    private static final Map<InputColumn, Meaning> ALL = Map.ofEntries(
            Map.entry(OffersSheet.SUPPLIER, Meaning.SUPPLIER),
            Map.entry(OffersSheet.ITEM, Meaning.ITEM),
            Map.entry(OffersSheet.PACK_SIZE, Meaning.PACK),
            Map.entry(OffersSheet.PACK_UNIT, Meaning.PACK_UNIT),
            Map.entry(OffersSheet.FROM_QUANTITY, Meaning.FROM),
            Map.entry(OffersSheet.PRICE, Meaning.PRICE),
            Map.entry(OffersSheet.PRICE_PER, Meaning.PER),
            Map.entry(OffersSheet.CURRENCY_OF_PRICE, Meaning.CURRENCY),
            Map.entry(OffersSheet.MINIMUM_ORDER, Meaning.MINIMUM),
            Map.entry(OffersSheet.ORDER_MULTIPLE, Meaning.MULTIPLE),
            Map.entry(OffersSheet.DUTY, Meaning.DUTY),
            Map.entry(OffersSheet.QUOTED_ON, Meaning.QUOTED_ON),
            Map.entry(OffersSheet.VALID_UNTIL, Meaning.VALID_UNTIL));

    private Meanings() {}

    /** What one of our columns is in a supplier's list. */
    static Optional<Meaning> of(InputColumn column) {
        return Optional.ofNullable(ALL.get(column));
    }

    /** Our column for what a column of a supplier's list holds; empty if we have none. */
    static Optional<InputColumn> column(Meaning meaning) {
        return ALL.entrySet().stream()
                .filter(entry -> entry.getValue() == meaning)
                .map(Map.Entry::getKey)
                .findFirst();
    }

    /**
     * What a column of a list is, as our header or in the words of a list: {@code Pack size}, {@code price from 25 kg}.
     */
    static String words(ColumnUse use) {
        boolean plain = use.from() == null && use.packText().isEmpty();
        return ALL.entrySet().stream()
                .filter(entry -> plain && entry.getValue() == use.meaning())
                .map(entry -> entry.getKey().header())
                .findFirst()
                .orElse(use.words());
    }
}
