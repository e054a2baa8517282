package perkilo.pricelists;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import perkilo.layouts.ListLine;
import perkilo.layouts.Mapping;
import perkilo.layouts.Question;
import perkilo.names.Names;
import perkilo.offers.Offer;
import perkilo.origin.Figure;
import perkilo.origin.Origin;
import perkilo.reading.table.Findings;
import perkilo.units.Measure;

/** Checks a whole list: prices that it has twice, and names that are not known. */
final class ListCheck {

    private static final int NAMED = 5;

    private final NameMatcher names;
    private final boolean namesAreKnown;
    private final Findings findings;

    ListCheck(NameMatcher names, boolean namesAreKnown, Findings findings) {
        this.names = names;
        this.namesAreKnown = namesAreKnown;
        this.findings = findings;
    }

    /**
     * Reports what is wrong.
     *
     * @param clear whether there are no open questions; while there are, a list without prices is not reported
     */
    void check(List<ListLine> lines, boolean clear) {
        if (lines.stream().noneMatch(ListLine::isPriced)
                && clear
                && findings.list().stream().noneMatch(finding -> finding.isError())) {
            findings.error(Origin.NONE, ListMessages.noPrices());
        }
        doubles(lines);
        if (namesAreKnown) {
            unknown(lines);
        }
    }

    /** What a person has to say of names that they gave and that are not known. */
    List<Question> questions(List<ListLine> lines, Mapping mapping) {
        List<Question> questions = new ArrayList<>();
        names.unknownAnswers().forEach((listed, name) -> {
            String field = "new name " + name;
            if (!mapping.answer(field).orElse("").equalsIgnoreCase("yes")) {
                Origin where = lines.stream()
                        .filter(line -> line.item().equals(listed))
                        .map(ListLine::origin)
                        .findFirst()
                        .orElse(Origin.NONE);
                List<String> choices = new ArrayList<>(List.of("yes"));
                choices.add("no");
                questions.add(new Question(
                        field, "", where, ListMessages.unknownAnswer(listed, name, names.nearest(name)), choices));
            }
        });
        return questions;
    }

    private void doubles(List<ListLine> lines) {
        Map<String, ListLine> items = new HashMap<>(2 * lines.size());
        Map<Place, ListLine> seen = new HashMap<>();
        for (ListLine line : lines) {
            if (!line.isPriced()) {
                continue;
            }
            String item = Names.key(names.of(line.listed()).name());
            ListLine firstOfItem = items.putIfAbsent(item, line);
            if (firstOfItem == null) {
                continue; // most items of a long list occur once
            }
            seen.putIfAbsent(Place.of(item, firstOfItem), firstOfItem);
            ListLine first = seen.putIfAbsent(Place.of(item, line), line);
            if (first != null && !samePrice(first, line)) {
                findings.error(
                        line.origin(),
                        ListMessages.secondPrice(line.item(), first.origin().where(), first.item()));
            }
        }
    }

    /** What can have only one price: an item in a pack, from a quantity, on a day; numbers without trailing zeros. */
    private record Place(
            String item,
            BigDecimal amount,
            Measure measure,
            @Nullable BigDecimal from,
            @Nullable LocalDate day) {

        static Place of(String item, ListLine line) {
            Figure from = line.price() == null ? null : line.price().from();
            return new Place(
                    item,
                    line.pack().amount().stripTrailingZeros(),
                    line.pack().measure(),
                    from == null ? null : from.value().stripTrailingZeros(),
                    line.quotedOn());
        }
    }

    private static boolean samePrice(ListLine one, ListLine other) {
        Offer.PriceBreak price = one.price();
        Offer.PriceBreak otherPrice = other.price();
        return price != null
                && otherPrice != null
                && price.price().value().compareTo(otherPrice.price().value()) == 0
                && price.per() == otherPrice.per()
                && Objects.equals(one.currency(), other.currency());
    }

    private void unknown(List<ListLine> lines) {
        Map<String, Origin> proposed = new LinkedHashMap<>();
        List<String> own = new ArrayList<>();
        Map<String, ListLine> items = new LinkedHashMap<>();
        lines.forEach(line -> items.putIfAbsent(line.item(), line));
        for (ListLine line : items.values()) {
            NameMatcher.Match match = names.of(line.listed());
            switch (match.by()) {
                case LOOKS_THE_SAME ->
                    findings.warning(line.origin(), ListMessages.looksTheSame(line.item(), match.perhaps()));
                case LIKE, OTHER_GRADE ->
                    proposed.put(
                            line.item() + " (perhaps " + match.perhaps()
                                    + (match.by() == NameMatcher.By.OTHER_GRADE
                                            ? ", of another grade)"
                                            : ", " + Math.round(match.likeness() * 100) + " %)"),
                            line.origin());
                case NOTHING -> own.add(line.item());
                default -> {}
            }
        }
        if (!proposed.isEmpty()) {
            List<String> some = proposed.keySet().stream().limit(NAMED).toList();
            findings.warning(proposed.values().iterator().next(), ListMessages.similarNames(proposed.size(), some));
        }
        if (!own.isEmpty()) {
            Origin file = new Origin(lines.get(0).origin().file(), "", "");
            List<String> some = own.stream().limit(NAMED).toList();
            findings.note(file, ListMessages.unknownNames(own.size(), some));
        }
    }
}
