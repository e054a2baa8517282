package perkilo.desk;

import java.nio.file.Path;

/**
 * What a caller keeps of each book of a portfolio. The costs themselves are dropped, because those of many books would
 * not fit into memory. Several threads may call it.
 */
@FunctionalInterface
public interface BookView<T> {

    /**
     * Takes what is kept from the costs of a book.
     *
     * @param book as the person named it, or its path in the folder that they named
     */
    T of(Path book, CostAnswer.Costed costed);
}
