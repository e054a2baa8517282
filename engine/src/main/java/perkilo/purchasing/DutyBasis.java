package perkilo.purchasing;

/**
 * The value that import duty is charged on.
 *
 * <p>Each member of the WTO chooses whether transport and insurance to the border are part of the customs value
 * (Customs Valuation Agreement, Article 8(2)): the European Union and the United Kingdom include them, the United
 * States does not.
 */
public enum DutyBasis {
    /** Goods with insurance and freight. */
    CIF,
    /** Goods alone, with the small-order charge. */
    FOB
}
