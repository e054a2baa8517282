package perkilo.pricelists;

import java.math.BigDecimal;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
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
 * <p>What stands in the cell goes before its row, its header, its number format, the lines above the list, and the
 * mapping; where two of them contradict each other, that is an error.
 */
final class PriceCell {

    private static final int LONG_WORDS = 20;

    private final DecimalMark mark;
    private final Mapping mapping;
    private final PriceNote title;
    private final Consumer<Question> ask;
    private final Findings findings;
    private final Map<String, Optional<PriceNote>> notes = new HashMap<>();
    private final Map<String, Optional<CurrencySign>> formats = new HashMap<>();
    private final Map<String, Optional<CurrencySign>> signs = new HashMap<>();

    PriceCell(DecimalMark mark, Mapping mapping, PriceNote title, Consumer<Question> ask, Findings findings) {
        this.mark = mark;
        this.mapping = mapping;
        this.title = title;
        this.ask = ask;
        this.findings = findings;
    }

    /**
     * A price.
     *
     * @param amount above zero
     * @param per null for one pack
     */
    record Price(BigDecimal amount, @Nullable Measure per, CurrencyUnit currency) {}

    /**
     * The price in a cell.
     *
     * @param header what its header says
     * @param perCell what the row's column says that the price is for; empty for nothing
     * @param currencyCell what the row's column says of the currency; empty for nothing
     * @param pack what is sold
     * @param remark what else in the row sounds as if it said what the price is for; empty for nothing
     * @return null where it was reported or asked about
     */
    @Nullable Price read(
            Cell cell,
            Origin origin,
            PriceNote header,
            String perCell,
            String currencyCell,
            PackText pack,
            String remark) {
        NumberWords parts =
                cell.kind() == Cell.Kind.TEXT ? NumberWords.of(cell.text()).orElse(null) : null;
        PriceNote beside = parts == null ? PriceNote.NONE : note(parts.words()).orElse(null);
        boolean typed = cell.kind() == Cell.Kind.NUMBER && !cell.isPercentFormat();
        boolean doubtful = parts != null && mark == DecimalMark.UNKNOWN && DecimalMark.isAmbiguous(parts.digits());
        BigDecimal number = typed
                ? cell.number()
                : parts == null ? null : mark.number(parts.digits()).orElse(null);
        if (beside == null || (number == null && !doubtful)) {
            findings.error(origin, wrong(cell));
            return null;
        }
        if (number != null && number.signum() <= 0) {
            findings.warning(origin, "%s is not taken as a price".formatted(Quantity.plain(number)));
            return null;
        }
        CurrencyUnit currency = currency(cell, origin, beside, header, currencyCell, perCell);
        For basis = basis(origin, beside, header, perCell, pack, remark);
        if (number == null) {
            ask.accept(Question.of(
                    Mapping.DECIMALS, origin, "\"%s\" can be two numbers".formatted(cell.text()), "point", "comma"));
        }
        return number == null || currency == null || basis == null
                ? null
                : new Price(basis.scaled(number), basis.per(), currency);
    }

    /** What words say of a price; the same words come again and again. */
    private Optional<PriceNote> note(String words) {
        return words.length() > LONG_WORDS ? PriceNote.of(words) : notes.computeIfAbsent(words, PriceNote::of);
    }

    /** What a cell says that has nothing else to say than what a price is for. */
    private Optional<PriceNote> basis(String words) {
        return note(words)
                .filter(PriceNote::saysWhatFor)
                .or(() -> note("per " + words).filter(PriceNote::saysWhatFor));
    }

    private static String wrong(Cell cell) {
        return switch (cell.kind()) {
            case ERROR -> "the price is " + cell.text();
            case DATE -> "the price is the date %s; give the cell a number format".formatted(cell.text());
            case NUMBER -> "the price is a percentage";
            default ->
                "the price \"%s\" is not understood; expected one such as 12.50"
                        .formatted(ListRows.shortened(cell.text()));
        };
    }

    private @Nullable CurrencyUnit currency(
            Cell cell, Origin origin, PriceNote beside, PriceNote header, String currencyCell, String perCell) {
        CurrencySign row = currencyCell.isEmpty()
                ? null
                : signs.computeIfAbsent(currencyCell, CurrencySign::parse).orElse(null);
        if (!currencyCell.isEmpty() && row == null) {
            findings.error(
                    origin, "the currency \"%s\" is not known; expected a code such as EUR".formatted(currencyCell));
            return null;
        }
        CurrencySign per = perCell.isEmpty()
                ? null
                : note(perCell).map(PriceNote::currency).orElse(null);
        CurrencySign said = first(beside.currency(), row, per, header.currency());
        CurrencySign format = cell.kind() == Cell.Kind.NUMBER
                ? formats.computeIfAbsent(cell.format(), CurrencySign::ofFormat).orElse(null)
                : null;
        if (beside.currency() != null && row != null && !overlap(beside.currency(), row)) {
            findings.error(
                    origin,
                    "the price is in %s, but the row's currency is %s"
                            .formatted(beside.currency().text(), row.text()));
            return null;
        }
        if (said != null && format != null && !overlap(said, format)) {
            findings.warning(
                    origin,
                    "the price is shown in %s, but the list says %s, which holds"
                            .formatted(format.text(), said.text()));
        }
        CurrencySign sign = first(said, format, title.currency());
        return settled(origin, sign);
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
        String text = sign == null
                ? "it is not said which currency the prices are in"
                : "\"%s\" can mean several currencies".formatted(sign.text());
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

    /** What a price is for, and what makes it the price for one of that. */
    private record For(@Nullable Measure per, BigDecimal factor) {

        private static final For PACK = new For(null, BigDecimal.ONE);

        private BigDecimal scaled(BigDecimal price) {
            return price.multiply(factor);
        }
    }

    private @Nullable For basis(
            Origin origin, PriceNote beside, PriceNote header, String perCell, PackText pack, String remark) {
        PriceNote row = PriceNote.NONE;
        if (!perCell.isEmpty()) {
            row = basis(perCell).orElse(null);
            if (row == null) {
                findings.error(
                        origin,
                        "what the price is for, \"%s\", is not understood; expected pack, kg, 100 g, L …"
                                .formatted(ListRows.shortened(perCell)));
                return null;
            }
        }
        PriceNote answer =
                mapping.answer(Mapping.PRICE_PER).flatMap(this::basis).orElse(PriceNote.NONE);
        PriceNote inRow = firstSaying(beside, row);
        PriceNote ofList = firstSaying(header, title, answer);
        PriceNote holds = inRow.saysWhatFor() ? inRow : unlessRemarked(origin, ofList, remark, pack);
        if (holds == null) {
            return null;
        }
        if (holds.saysWhatFor()) {
            return holds.pack() ? ofPack(origin, holds, pack) : of(origin, holds, pack.content());
        }
        ask.accept(Question.of(
                Mapping.PRICE_PER,
                origin,
                "it is not said what the prices are for",
                "pack",
                "kg",
                "100 g",
                "L",
                "each"));
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
     * What the list says its prices are for; where a remark in the row says otherwise, only a person knows which holds.
     *
     * @return null where it was asked about
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
            findings.warning(
                    origin,
                    "\"%s\" stands in the row, and the mapping says that %s holds"
                            .formatted(remark, row ? "this" : "what the list says of its prices"));
            return row ? said : ofList;
        }
        ask.accept(Question.of(
                Mapping.ROW_BASIS,
                origin,
                "\"%s\" stands in the row: does that hold for its price, or what holds for the list".formatted(remark),
                "row",
                "list"));
        return null;
    }

    /** A price for a whole pack; where that is made of smaller ones, a person has to say which of them is meant. */
    private @Nullable For ofPack(Origin origin, PriceNote note, PackText pack) {
        if (note.content() != null) {
            Quantity content = pack.content();
            BigDecimal holds = note.content().in(content.measure()).orElse(BigDecimal.ZERO);
            if (holds.compareTo(content.amount()) != 0) {
                findings.error(
                        origin, "the price is for a pack of %s, but the pack is %s".formatted(note.content(), content));
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
        ask.accept(Question.of(
                Mapping.MULTI_PACKS,
                origin,
                "the pack holds %d smaller ones, and it is not said whether the price is for all or for one"
                        .formatted(pack.pieces()),
                "case",
                "piece"));
        return null;
    }

    private @Nullable For of(Origin origin, PriceNote note, Quantity pack) {
        Quantity per = note.per();
        if (per == null) {
            throw new IllegalStateException("a note that says nothing");
        }
        if (per.measure().isCount() != pack.measure().isCount()) {
            findings.error(
                    origin,
                    "the price is per %s, but the pack is %s"
                            .formatted(per.measure().symbol(), pack));
            return null;
        }
        PriceBasis one = PriceBasis.of(per.amount(), per.measure()).orElse(null);
        if (one == null) {
            findings.error(origin, "the price is for %s; expected 1, 10, 100 or 1,000 of a unit".formatted(per));
            return null;
        }
        return new For(one.per(), one.factor());
    }
}
