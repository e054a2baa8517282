package perkilo.reading.arrange;

import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import perkilo.layouts.ColumnUse;
import perkilo.layouts.HeaderReading;
import perkilo.layouts.Meaning;
import perkilo.layouts.PriceNote;
import perkilo.reading.table.ColumnNames;
import perkilo.schema.InputColumn;
import perkilo.schema.OffersSheet;
import perkilo.schema.RunsSheet;

/** What headers mean on price lists, on offers and over the sizes of runs. */
final class Headings {

    private static final ColumnNames TERMS = new ColumnNames(OffersSheet.OF_SUPPLIER);
    private static final ColumnNames RUNS = new ColumnNames(RunsSheet.SCHEMA.columns());
    private static final Pattern NUMBERED = Pattern.compile("(.*\\D)\\s*\\d{1,2}\\.?\\s*(\\([^)]*\\))?");

    private Headings() {}

    private static Optional<Meaning> onList(String header) {
        return sure(header).or(() -> {
            Matcher numbered = NUMBERED.matcher(header.strip());
            return numbered.matches() ? sure(numbered.group(1)) : Optional.empty();
        });
    }

    private static Optional<Meaning> sure(String header) {
        return HeaderReading.of(header)
                .flatMap(reading -> Optional.ofNullable(reading.use()))
                .map(ColumnUse::meaning);
    }

    /** Our column of Offers that a header names; empty if it names none for sure. */
    static Optional<InputColumn> column(String header) {
        return onList(header).flatMap(Meanings::column);
    }

    /** What a header says of the prices below it; nothing if it heads none. */
    static PriceNote note(String header) {
        return HeaderReading.of(header).map(HeaderReading::note).orElse(PriceNote.NONE);
    }

    /** Whether a header has any meaning on a price list. */
    static boolean isKnown(String header) {
        return onList(header).isPresent();
    }

    /** Whether a header has a certain meaning on a price list. */
    static boolean means(String header, Meaning meaning) {
        return onList(header).filter(meaning::equals).isPresent();
    }

    /** Whether two headers mean different things on a price list. */
    static boolean isOther(String one, String other) {
        Optional<Meaning> meaning = onList(one);
        return meaning.isPresent()
                && !meaning.equals(onList(other))
                && onList(other).isPresent();
    }

    /** The term or charge of a supplier that a header on offers names, with its unit understood. */
    static Optional<InputColumn> term(String header) {
        return TERMS.find(header)
                .filter(named -> named.notUnderstood().isEmpty())
                .map(ColumnNames.Named::column);
    }

    /** The column of Runs that a header names. */
    static Optional<InputColumn> ofRuns(String header) {
        return RUNS.find(header).map(ColumnNames.Named::column);
    }

    /** The column of Runs that a header names before its own number: {@code Units 1}; empty if it has no number. */
    static Optional<InputColumn> numberedOfRuns(String header) {
        Matcher numbered = NUMBERED.matcher(header.strip());
        return numbered.matches() ? ofRuns(numbered.group(1)) : Optional.empty();
    }
}
