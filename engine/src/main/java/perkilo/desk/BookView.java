package perkilo.desk;

import java.nio.file.Path;

/**
 * What a caller keeps of each book of a portfolio. The costs themselves are let go, as those of many books would not
 * fit into the memory. May be asked by several threads.
 */
@FunctionalInterface
public interface BookView<T> {

    /**
     * Looks at the costs of a book.
     *
     * @param book as the person named it, or as it lies in a folder
     */
    T of(Path book, CostAnswer.Costed costed);
}
