package perkilo.workbook.author;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.function.Consumer;

/** Things that are listed once each and referred to by their number. */
final class Numbered<T> {

    private final Map<T, Integer> numbers = new LinkedHashMap<>();
    private final int first;

    /**
     * An empty list.
     *
     * @param first the number of the first thing
     */
    Numbered(int first) {
        this.first = first;
    }

    /** The number of a thing, listed if it is not yet. */
    int of(T thing) {
        Integer known = numbers.get(thing);
        if (known != null) {
            return known;
        }
        int number = first + numbers.size();
        numbers.put(thing, number);
        return number;
    }

    boolean isEmpty() {
        return numbers.isEmpty();
    }

    /** How many there are, with those before the first. */
    int end() {
        return first + numbers.size();
    }

    void forEach(Consumer<T> action) {
        numbers.keySet().forEach(action);
    }
}
