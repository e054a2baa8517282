package perkilo.pricelists;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import perkilo.names.Names;
import perkilo.offers.Offer;
import perkilo.origin.Figure;
import perkilo.origin.Origin;
import perkilo.reading.table.Findings;
import perkilo.units.Measure;

/** What only shows when a whole list is looked at: prices that stand twice, names that are not known. */
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
     * Reports what is found.
     *
     * @param clear whether nothing is open: as long as something is, there may be no prices at all
     */
    void check(List<ListLine> lines, boolean clear) {
        if (lines.stream().noneMatch(ListLine::isPriced)
                && clear
                && findings.list().stream().noneMatch(finding -> finding.isError())) {
            findings.error(Origin.NONE, "the list holds no price");
        }
        doubles(lines);
        if (namesAreKnown) {
            unknown(lines);
        }
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
                continue; // most items of a long list stand in it once
            }
            seen.putIfAbsent(Place.of(item, firstOfItem), firstOfItem);
            ListLine first = seen.putIfAbsent(Place.of(item, line), line);
            if (first != null && !samePrice(first, line)) {
                findings.error(
                        line.origin(),
                        "a second price for %s in the same pack from the same quantity; the first is in %s, for \"%s\""
                                .formatted(
                                        "\"" + line.item() + "\"",
                                        first.origin().where(),
                                        first.item()));
            }
        }
    }

    /** What has one price: an item in a pack, from a quantity, on a day; numbers without zeros at their end. */
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
        int own = 0;
        Map<String, ListLine> items = new LinkedHashMap<>();
        lines.forEach(line -> items.putIfAbsent(line.item(), line));
        for (ListLine line : items.values()) {
            NameMatcher.Match match = names.of(line.listed());
            switch (match.by()) {
                case LOOKS_THE_SAME ->
                    findings.warning(
                            line.origin(),
                            "\"%s\" only looks like \"%s\": some letters are of another alphabet or invisible; say in the"
                                            .formatted(line.item(), match.perhaps())
                                    + " mapping whether it is the same");
                case LIKE ->
                    proposed.put(
                            "%s (perhaps %s, %d %%)"
                                    .formatted(line.item(), match.perhaps(), Math.round(match.likeness() * 100)),
                            line.origin());
                case NOTHING -> own++;
                default -> {}
            }
        }
        if (!proposed.isEmpty()) {
            String some = proposed.keySet().stream().limit(NAMED).collect(Collectors.joining("; "));
            findings.warning(
                    proposed.values().iterator().next(),
                    "%s: %s%s"
                            .formatted(
                                    proposed.size() == 1
                                            ? "1 name is only like a known one, and keeps its own name until the mapping says what it is"
                                            : proposed.size()
                                                    + " names are only like known ones, and keep their own names until the mapping says what they are",
                                    some,
                                    proposed.size() > NAMED ? " …" : ""));
        }
        if (own > 0) {
            findings.note(
                    new Origin(lines.get(0).origin().file(), "", ""),
                    (own == 1 ? "1 name is" : own + " names are")
                            + " not known and taken in as the supplier calls them");
        }
    }
}
