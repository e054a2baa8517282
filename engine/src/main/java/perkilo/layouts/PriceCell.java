package perkilo.layouts;

import java.math.BigDecimal;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.BiConsumer;
import java.util.function.Consumer;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import javax.money.CurrencyUnit;
import org.jspecify.annotations.Nullable;
import perkilo.origin.Origin;
import perkilo.reading.table.CurrencySign;
import perkilo.reading.table.Findings;
import perkilo.reading.table.PriceBasis;
import perkilo.units.Currencies;
import perkilo.units.Measure;
import perkilo.xlsx.grid.Cell;

/**
 * Reads prices: how much, in which currency, for what.
 *
 * <p>The text of the cell goes first, then its row, its header, its number format, the lines above the list, and the
 * mapping. A contradiction is reported or asked about.
 */
public final class PriceCell {

    /** Begins the field of a question about prices with a mark; the mark follows. */
    static final String PRICES_WITH = "prices with ";

    private static final int LONG_WORDS = 20;
    private static final Pattern RANGE = Pattern.compile("\\d ?(?:-|–|—|to|bis|à) ?\\d");

    private final Mapping mapping;
    private final PriceNote title;
    private final Consumer<Question> ask;
    private final ListGallons gallons;
    private final BiConsumer<Origin, String> wrong;
    private final Findings findings;
    private final Map<String, String> footnotes;
    private final Map<String, Optional<PriceNote>> notes = new HashMap<>();
    private final Map<String, Words> words = new HashMap<>();
    private final Map<String, Format> formats = new HashMap<>();
    private final Map<String, Optional<CurrencySign>> signs = new HashMap<>();

    /**
     * Ready to read.
     *
     * @param ask takes questions
     * @param wrong takes what is wrong with a cell
     * @param findings takes warnings
     */
    PriceCell(
            Mapping mapping,
            TitleFacts facts,
            Consumer<Question> ask,
            ListGallons gallons,
            BiConsumer<Origin, String> wrong,
            Findings findings) {
        this.wrong = wrong;
        this.gallons = gallons;
        this.mapping = mapping;
        this.title = facts.note();
        this.footnotes = facts.footnotes();
        this.ask = ask;
        this.findings = findings;
    }

    /**
     * A price.
     *
     * @param amount above zero
     * @param per null for one pack
     * @param factor by which the figure on the list was multiplied, such as 0.01 for a price per 100 kg
     */
    public record Price(BigDecimal amount, @Nullable Measure per, CurrencyUnit currency, BigDecimal factor) {}

    /** What the list says of a price apart from its cell: the nearest heading between the rows, then its header. */
    record Around(PriceNote section, PriceNote header, DecimalMark mark, boolean markIsAsked) {}

    /** Words beside a number: what they say of the price, whether it is about so much, and the mark of a footnote. */
    private record Words(Optional<PriceNote> note, boolean about, String mark) {

        private static final Pattern MARK = Pattern.compile("\\*{1,3}|[†‡¹²³]|(?<!\\d)\\d\\)");

        static Words of(String text) {
            Matcher found = MARK.matcher(text);
            String mark = found.find() ? found.group() : "";
            String plain = mark.isEmpty() ? text : found.replaceAll(" ").strip();
            Optional<PriceNote> whole = PriceNote.of(plain);
            if (whole.isPresent()) {
                return new Words(whole, false, mark);
            }
            StringBuilder left = new StringBuilder();
            for (String word : plain.split("[ \u00A0]+", -1)) {
                left.append(ListWords.is("approx", word) ? "" : word + " ");
            }
            boolean about = left.length() < plain.length();
            return new Words(about ? PriceNote.of(left.toString()) : whole, about, mark);
        }
    }

    /** What a number format shows beside the number. */
    private record Format(@Nullable CurrencySign currency, PriceNote note, String text) {

        static Format of(String format) {
            String text = FormatText.of(format);
            PriceNote note =
                    text.isEmpty() ? PriceNote.NONE : PriceNote.of(text).orElse(PriceNote.NONE);
            CurrencySign sign = CurrencySign.ofFormat(format).orElse(note.currency());
            return new Format(sign, note, text);
        }
    }

    private static final Format NO_FORMAT = new Format(null, PriceNote.NONE, "");

    /**
     * The price in a cell.
     *
     * @param around what its header and the headings say
     * @param perCell text of the row's column "price per"; empty if there is none
     * @param currencyCell text of the row's column of currencies; empty if there is none
     * @param pack what is sold
     * @param remark another text of the row that seems to say what the price is for; empty if there is none
     * @return null if the price was reported or asked about
     */
    public @Nullable Price read(
            Cell cell,
            Origin origin,
            Around around,
            String perCell,
            String currencyCell,
            PackText pack,
            String remark) {
        NumberWords parts =
                cell.kind() == Cell.Kind.TEXT ? NumberWords.of(cell.text()).orElse(null) : null;
        Words said = parts == null ? null : words(parts.words());
        PriceNote beside = said == null ? PriceNote.NONE : said.note().orElse(null);
        boolean typed = cell.kind() == Cell.Kind.NUMBER && !cell.isPercentFormat();
        DecimalMark mark = around.mark();
        boolean doubtful = parts != null && mark == DecimalMark.UNKNOWN && DecimalMark.isAmbiguous(parts.digits());
        BigDecimal number = typed
                ? cell.number()
                : parts == null ? null : mark.number(parts.digits()).orElse(null);
        if (beside == null || (number == null && !doubtful)) {
            wrong.accept(origin, wrong(cell));
            return null;
        }
        if (number != null && number.signum() <= 0) {
            findings.warning(origin, RowMessages.priceNotAboveZero(number));
            return null;
        }
        Format format =
                typed && !cell.format().isEmpty() ? formats.computeIfAbsent(cell.format(), Format::of) : NO_FORMAT;
        CurrencyUnit currency = currency(origin, beside, around, currencyCell, perCell, format);
        For basis = basis(origin, beside, around, perCell, pack, remark, format, currency);
        if (number == null && parts != null && !around.markIsAsked()) {
            ask.accept(Question.decimals(origin, cell.text(), parts.digits()));
        }
        boolean used = said == null || isUsed(said, cell, origin);
        return number == null || currency == null || basis == null || !used
                ? null
                : new Price(basis.scaled(number), basis.per(), currency, basis.factor());
    }

    /** Whether a price with a mark or a word such as "about" is used; a person decides what a mark means. */
    private boolean isUsed(Words said, Cell cell, Origin origin) {
        if (said.about()) {
            findings.warning(origin, RowMessages.aboutPrice(ListRows.shortened(cell.text())));
        }
        if (said.mark().isEmpty()) {
            return true;
        }
        String field = PRICES_WITH + said.mark();
        String answer = mapping.answer(field).orElse("");
        if (answer.equalsIgnoreCase("yes")) {
            return true;
        }
        if (!answer.equalsIgnoreCase("no, leave them out")) {
            ask.accept(Question.of(
                    field,
                    origin,
                    QuestionMessages.marked(
                            ListRows.shortened(cell.text()),
                            ListRows.shortened(footnotes.getOrDefault(said.mark(), ""))),
                    "yes",
                    "no, leave them out"));
        }
        return false;
    }

    private Words words(String text) {
        return text.length() > LONG_WORDS ? Words.of(text) : words.computeIfAbsent(text, Words::of);
    }

    /** What words say about a price; kept, because the same words come again and again. */
    private Optional<PriceNote> note(String words) {
        return words.length() > LONG_WORDS ? PriceNote.of(words) : notes.computeIfAbsent(words, PriceNote::of);
    }

    /** What a cell of the column "price per" says. */
    private Optional<PriceNote> basis(String words) {
        return note(words)
                .filter(PriceNote::saysWhatFor)
                .or(() -> note("per " + words).filter(PriceNote::saysWhatFor));
    }

    private static String wrong(Cell cell) {
        return switch (cell.kind()) {
            case ERROR -> RowMessages.priceFault(cell.text());
            case DATE -> RowMessages.priceIsDate(cell.text());
            case NUMBER -> RowMessages.priceIsPercentage();
            case TEXT ->
                RANGE.matcher(cell.text()).find()
                        ? RowMessages.priceIsRange(ListRows.shortened(cell.text()))
                        : RowMessages.priceNotUnderstood(ListRows.shortened(cell.text()));
            case BLANK -> RowMessages.priceNotUnderstood(ListRows.shortened(cell.text()));
        };
    }

    private @Nullable CurrencyUnit currency(
            Origin origin, PriceNote beside, Around around, String currencyCell, String perCell, Format shown) {
        CurrencySign row = currencyCell.isEmpty()
                ? null
                : signs.computeIfAbsent(currencyCell, CurrencySign::parse).orElse(null);
        if (!currencyCell.isEmpty() && row == null) {
            wrong.accept(origin, RowMessages.unknownCurrency(currencyCell));
            return null;
        }
        CurrencySign per = perCell.isEmpty()
                ? null
                : note(perCell).map(PriceNote::currency).orElse(null);
        CurrencySign said = first(
                beside.currency(),
                row,
                per,
                around.section().currency(),
                around.header().currency());
        CurrencySign format = shown.currency();
        if (beside.currency() != null && row != null && !overlap(beside.currency(), row)) {
            wrong.accept(
                    origin, RowMessages.otherCurrencyInRow(beside.currency().text(), row.text()));
            return null;
        }
        if (said != null && format != null && !overlap(said, format)) {
            findings.warning(origin, RowMessages.otherCurrencyShown(format.text(), said.text()));
        }
        return settled(origin, narrowed(first(said, format, title.currency()), per, row, around, title));
    }

    /** A sign that several currencies share, as the nearest place says that names one of them. */
    private static @Nullable CurrencySign narrowed(
            @Nullable CurrencySign sign,
            @Nullable CurrencySign per,
            @Nullable CurrencySign row,
            Around around,
            PriceNote title) {
        if (sign == null || sign.isClear()) {
            return sign;
        }
        CurrencySign[] nearest = {
            row, per, around.section().currency(), around.header().currency(), title.currency()
        };
        for (CurrencySign other : nearest) {
            if (other != null
                    && other.isClear()
                    && sign.canMean(other.meanings().get(0))) {
                return other;
            }
        }
        return sign;
    }

    private @Nullable CurrencyUnit settled(Origin origin, @Nullable CurrencySign sign) {
        CurrencyUnit answer =
                mapping.answer(Mapping.CURRENCY).flatMap(Currencies::find).orElse(null);
        if (sign == null && answer != null) {
            return answer;
        }
        if (sign != null && sign.isClear()) {
            return sign.meanings().get(0);
        }
        if (sign != null && answer != null && sign.canMean(answer)) {
            return answer;
        }
        List<String> choices = sign == null
                ? List.of("a code such as EUR")
                : sign.meanings().stream().map(CurrencyUnit::getCurrencyCode).toList();
        String text = sign == null ? QuestionMessages.whichCurrency() : QuestionMessages.whichCurrency(sign.text());
        ask.accept(new Question(Mapping.CURRENCY, "", origin, text, choices));
        return null;
    }

    private static boolean overlap(CurrencySign one, CurrencySign other) {
        return one.meanings().stream().anyMatch(other::canMean);
    }

    private static @Nullable CurrencySign first(@Nullable CurrencySign... signs) {
        for (CurrencySign sign : signs) {
            if (sign != null) {
                return sign;
            }
        }
        return null;
    }

    /** What a price is for, and the factor that turns it into the price for one of that. */
    private record For(@Nullable Measure per, BigDecimal factor) {

        private static final For PACK = new For(null, BigDecimal.ONE);

        private BigDecimal scaled(BigDecimal price) {
            return price.multiply(factor);
        }
    }

    private @Nullable For basis(
            Origin origin,
            PriceNote beside,
            Around around,
            String perCell,
            PackText pack,
            String remark,
            Format format,
            @Nullable CurrencyUnit currency) {
        PriceNote row = PriceNote.NONE;
        if (!perCell.isEmpty()) {
            row = basis(perCell).orElse(null);
            if (row == null) {
                wrong.accept(origin, RowMessages.basisNotUnderstood(ListRows.shortened(perCell)));
                return null;
            }
        }
        PriceNote answer =
                mapping.answer(Mapping.PRICE_PER).flatMap(this::basis).orElse(PriceNote.NONE);
        PriceNote inRow = firstSaying(beside, row);
        PriceNote ofList = firstSaying(around.section(), around.header(), format.note(), title, answer);
        String otherwise = remark.isEmpty() && format.note().saysWhatFor() ? format.text() : remark;
        PriceNote holds = inRow.saysWhatFor() ? inRow : unlessRemarked(origin, ofList, otherwise, pack);
        if (holds == null) {
            return null;
        }
        if (holds.saysWhatFor()) {
            return holds.pack() ? ofPack(origin, holds, pack) : of(origin, holds, pack.content(), currency);
        }
        ask.accept(Question.of(
                Mapping.PRICE_PER, origin, QuestionMessages.whatPricesAreFor(), "pack", "kg", "100 g", "L", "each"));
        return null;
    }

    private static PriceNote firstSaying(PriceNote... notes) {
        for (PriceNote note : notes) {
            if (note.saysWhatFor()) {
                return note;
            }
        }
        return PriceNote.NONE;
    }

    /**
     * What the list says its prices are for. If a remark in the row says otherwise, a person decides.
     *
     * @return null if it was asked about
     */
    private @Nullable PriceNote unlessRemarked(Origin origin, PriceNote ofList, String remark, PackText pack) {
        PriceNote said = remark.isEmpty() ? PriceNote.NONE : note(remark).orElse(PriceNote.NONE);
        boolean pieces = said.per() != null && said.per().measure().isCount();
        if (pieces && !pack.content().measure().isCount()) {
            said = new PriceNote(said.currency(), null, true, null);
        }
        if (!said.saysWhatFor() || !ofList.saysWhatFor() || said.isSameBasis(ofList)) {
            return ofList;
        }
        String answer = mapping.answer(Mapping.ROW_BASIS).orElse("");
        boolean row = answer.equalsIgnoreCase("row");
        if (row || answer.equalsIgnoreCase("list")) {
            findings.warning(origin, row ? RowMessages.rowOverList(remark) : RowMessages.listOverRow(remark));
            return row ? said : ofList;
        }
        ask.accept(Question.of(Mapping.ROW_BASIS, origin, QuestionMessages.rowOrList(remark), "row", "list"));
        return null;
    }

    /** A price for a whole pack; for a pack made of smaller ones, a person has to say which is meant. */
    private @Nullable For ofPack(Origin origin, PriceNote note, PackText pack) {
        if (note.content() != null) {
            Quantity content = pack.content();
            BigDecimal holds = note.content().in(content.measure()).orElse(BigDecimal.ZERO);
            if (holds.compareTo(content.amount()) != 0) {
                wrong.accept(origin, RowMessages.priceOfOtherPack(note.content().toString(), content.toString()));
                return null;
            }
        }
        if (pack.pieces() == 1) {
            return For.PACK;
        }
        String answer = mapping.answer(Mapping.MULTI_PACKS).orElse("");
        if (answer.equalsIgnoreCase("case")) {
            return For.PACK;
        }
        if (answer.equalsIgnoreCase("piece")) {
            return new For(null, BigDecimal.valueOf(pack.pieces()));
        }
        ask.accept(
                Question.of(Mapping.MULTI_PACKS, origin, QuestionMessages.caseOrPiece(pack.pieces()), "case", "piece"));
        return null;
    }

    private @Nullable For of(Origin origin, PriceNote note, Quantity pack, @Nullable CurrencyUnit currency) {
        if (note.per() == null) {
            throw new IllegalStateException("a note that says nothing");
        }
        Quantity per = currency == null ? note.per() : gallons.settled(note.per(), currency, origin);
        if (per == null) {
            return null;
        }
        if (per.measure().isCount() != pack.measure().isCount()) {
            wrong.accept(origin, RowMessages.priceOfOtherKind(per.measure().symbol(), pack.toString()));
            return null;
        }
        PriceBasis one = PriceBasis.of(per.amount(), per.measure()).orElse(null);
        if (one == null) {
            wrong.accept(origin, RowMessages.oddAmount(per.toString()));
            return null;
        }
        return new For(one.per(), one.factor());
    }
}
