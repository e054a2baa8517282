package perkilo.reading;

import java.util.Collections;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import perkilo.model.Book;
import perkilo.model.Formula;
import perkilo.model.Gaps;
import perkilo.model.Gaps.Gap;
import perkilo.model.Product;
import perkilo.names.Names;
import perkilo.offers.Offer;
import perkilo.origin.Origin;
import perkilo.reading.table.Findings;

/** All checks that need more than one table. */
final class BookChecks {

    private final Book book;
    private final Set<String> described;
    private final InciLinks links;
    private final Tables tables;
    private final LookAlikeCheck lookAlikes;
    private final WithdrawnPacks withdrawn;
    private final Origin reports;
    private final Findings findings;

    /**
     * Checks a book.
     *
     * @param book as read
     * @param described materials that have a row of their own, by {@link Names#key}
     * @param links which materials lines of formulas mean
     * @param lookAlikes has already seen the offers
     * @param withdrawn knows which packs newer lists no longer have
     * @param reports the cell of the report currencies
     */
    BookChecks(
            Book book,
            Set<String> described,
            InciLinks links,
            Tables tables,
            LookAlikeCheck lookAlikes,
            WithdrawnPacks withdrawn,
            Origin reports,
            Findings findings) {
        this.lookAlikes = lookAlikes;
        this.links = links;
        this.withdrawn = withdrawn;
        this.reports = reports;
        this.book = book;
        this.described = described;
        this.tables = tables;
        this.findings = findings;
    }

    /** Reports what does not fit together; returns the book without offers that cannot be measured or converted. */
    Book run() {
        Items items = Items.of(book);
        new NameCheck(book, described, links, tables, findings).run();
        lookAlikes.run();
        new SeveralSheets(tables, findings).run();
        new SupplierCheck(book, findings).run();
        new StockCheck(book, items, findings).run();
        List<Offer> kept = new OfferCheck(book, items, findings).kept();
        List<Offer> payable = new RateCheck(book.withOffers(kept), items, reports, findings).payable();
        Book checked = book.withOffers(payable);
        withdrawn.report(checked, items, findings);
        return checked.withGaps(book.gaps().and(unpayable(kept, payable, items)));
    }

    /** Offers whose currency cannot be converted, which is reported once for each currency. */
    private static List<Gap> unpayable(List<Offer> offers, List<Offer> payable, Items items) {
        if (offers.size() == payable.size()) {
            return List.of();
        }
        Set<Offer> kept = Collections.newSetFromMap(new IdentityHashMap<>());
        kept.addAll(payable);
        return offers.stream()
                .filter(offer -> !kept.contains(offer) && items.isUsed(offer))
                .map(offer -> new Gap(Gaps.Kind.NO_RATE, Names.key(offer.item()), offer.item(), offer.origin()))
                .toList();
    }

    /**
     * What a book needs to buy.
     *
     * @param materials the first line of a formula that names each, by {@link Names#key}
     * @param components the first that names each, by {@link Names#key}
     */
    record Items(Map<String, Formula.Line> materials, Map<String, Product.Component> components) {

        static Items of(Book book) {
            Map<String, Formula.Line> materials = new LinkedHashMap<>();
            for (Formula formula : book.formulas().values()) {
                formula.lines().forEach(line -> materials.putIfAbsent(Names.key(line.material()), line));
            }
            Map<String, Product.Component> components = new LinkedHashMap<>();
            for (Product product : book.products().values()) {
                product.components()
                        .forEach(component -> components.putIfAbsent(Names.key(component.name()), component));
            }
            return new Items(materials, components);
        }

        boolean isUsed(Offer offer) {
            String key = Names.key(offer.item());
            return materials.containsKey(key) || components.containsKey(key);
        }
    }
}
