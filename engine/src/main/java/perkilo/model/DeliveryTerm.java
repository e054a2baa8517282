package perkilo.model;

import java.util.Locale;
import java.util.Optional;

/**
 * Who pays which costs of transport, by the rules of Incoterms 2020 (International Chamber of Commerce).
 *
 * <p>Cost split of EXW, FCA, CPT, CIP, DAP and DPU as published by forwarders; FAS, FOB, CFR, CIF and the insurance
 * clauses from memory.
 */
public enum DeliveryTerm {
    EXW(Bears.ALL, true, true),
    FCA(Bears.ALL, true, true),
    FAS(Bears.ALL, true, true),
    FOB(Bears.ALL, true, true),
    CFR(Bears.ON_CARRIAGE, true, true),
    CIF(Bears.ON_CARRIAGE, false, true),
    CPT(Bears.NOTHING, true, true),
    CIP(Bears.NOTHING, false, true),
    DAP(Bears.NOTHING, false, true),
    DPU(Bears.NOTHING, false, true),
    DDP(Bears.NOTHING, false, false);

    private enum Bears {
        ALL,
        ON_CARRIAGE,
        NOTHING
    }

    private final Bears freight;
    private final boolean insurance;
    private final boolean duty;

    DeliveryTerm(Bears freight, boolean insurance, boolean duty) {
        this.freight = freight;
        this.insurance = insurance;
        this.duty = duty;
    }

    /**
     * The term that a text names; a place after it is allowed, as in {@code FCA Hamburg}.
     *
     * @return empty if it names none
     */
    public static Optional<DeliveryTerm> parse(String text) {
        String first = text.strip().toUpperCase(Locale.ROOT).split("[^A-Z]", 2)[0];
        for (DeliveryTerm term : values()) {
            if (term.name().equals(first)) {
                return Optional.of(term);
            }
        }
        return Optional.empty();
    }

    /** Whether the buyer pays any of the freight; with CFR and CIF that from the port on. */
    public boolean buyerPaysFreight() {
        return freight != Bears.NOTHING;
    }

    /**
     * Whether the seller pays the freight to the port of destination, and the buyer no more than that from there on.
     */
    public boolean buyerPaysOnCarriageAlone() {
        return freight == Bears.ON_CARRIAGE;
    }

    /** Whether insurance of the carriage, if there is any, is the buyer's. */
    public boolean buyerPaysInsurance() {
        return insurance;
    }

    /** Whether import duty is the buyer's. */
    public boolean buyerPaysDuty() {
        return duty;
    }
}
