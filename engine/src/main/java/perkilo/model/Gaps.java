package perkilo.model;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import perkilo.names.Names;
import perkilo.origin.Origin;

/**
 * What is not known of a book because something in it could not be read, and what depends on it. Everything else of the
 * book can be used.
 *
 * @param gaps in the order of the files
 */
public record Gaps(List<Gap> gaps) {

    /** Nothing is missing. */
    public static final Gaps NONE = new Gaps(List.of());

    public Gaps {
        gaps = List.copyOf(gaps);
    }

    /** What depends on an unreadable cell. */
    public enum Kind {
        /** Every figure. */
        EVERYTHING,
        /** The cost of work, in every run. */
        WORK,
        /** Every run of a product. */
        PRODUCT,
        /** How a formula is made, and so every run of it. */
        MAKING,
        /** A part of a formula, or all of it; {@link Gap#what} names the part. */
        RECIPE,
        /** A component of a product; {@link Gap#what} names it. */
        COMPONENT,
        /** A material or component, wherever it is used. */
        ITEM,
        /** An offer for an item: its other offers are used. */
        OFFER,
        /** An offer for an item, whose currency cannot be converted: its other offers are used. */
        NO_RATE,
        /** The reason why an item has no offer was reported before. */
        NO_OFFER,
        /** One row of the runs. */
        RUN,
        /** One row of the demand. */
        DEMAND,
        /** The stock of an item. */
        STOCK,
        /** Every plan of orders. */
        ORDERS,
        /** When a supplier delivers. */
        LEAD_TIME,
        /** A fact of a material or a formula that only swaps use. */
        FACT
    }

    /**
     * One thing that is not known.
     *
     * @param kind what depends on it
     * @param key the name of what depends on it, as {@link Names#key}; empty where the kind says enough
     * @param what the thing that is not known, in the person's words
     * @param origin the cell
     */
    public record Gap(Kind kind, String key, String what, Origin origin) {}

    /** Whether every figure depends on something that could not be read. */
    public boolean isEverything() {
        return has(Kind.EVERYTHING);
    }

    /** Whether there is a gap of a kind. */
    public boolean has(Kind kind) {
        return gaps.stream().anyMatch(gap -> gap.kind() == kind);
    }

    /** The gaps of a kind for a name. */
    public List<Gap> of(Kind kind, String name) {
        String key = Names.key(name);
        return gaps.stream()
                .filter(gap -> gap.kind() == kind && gap.key().equals(key))
                .toList();
    }

    /** Why an item has no price, if it is because of an error that was reported. */
    public Optional<String> whyNoPrice(String item) {
        Optional<Gap> offer = first(Kind.OFFER, item);
        if (first(Kind.NO_RATE, item).isPresent()) {
            return Optional.of("no exchange rate");
        }
        return offer.isPresent()
                ? offer.map(gap -> "no price, error in " + gap.origin().where())
                : first(Kind.NO_OFFER, item).map(gap -> "no price");
    }

    /** The gaps of a kind. */
    public List<Gap> of(Kind kind) {
        return gaps.stream().filter(gap -> gap.kind() == kind).toList();
    }

    /** The first gap of a kind for a name. */
    public Optional<Gap> first(Kind kind, String name) {
        return of(kind, name).stream().findFirst();
    }

    /** The key of a row that has no name of its own. */
    public static String place(Origin origin) {
        return Names.key(origin.where());
    }

    /** The name of what a run makes. */
    public static String name(Run run) {
        if (run instanceof Run.OfProduct units) {
            return units.product();
        }
        if (run instanceof Run.OfBulk bulk) {
            return bulk.formula();
        }
        throw new AssertionError(run);
    }

    /** These gaps without those of a kind. */
    public Gaps without(Kind kind) {
        return new Gaps(gaps.stream().filter(gap -> gap.kind() != kind).toList());
    }

    /** These gaps and others; each thing once for what depends on it. */
    public Gaps and(List<Gap> more) {
        Map<List<Object>, Gap> all = new LinkedHashMap<>();
        List<Gap> both = new ArrayList<>(gaps);
        both.addAll(more);
        both.forEach(gap -> all.putIfAbsent(List.of(gap.kind(), gap.key(), gap.what()), gap));
        return new Gaps(List.copyOf(all.values()));
    }
}
