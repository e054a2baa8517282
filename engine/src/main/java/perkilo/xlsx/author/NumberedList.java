package perkilo.xlsx.author;

import java.util.Iterator;
import java.util.LinkedHashMap;
import java.util.Map;

/** A list of distinct things in the order of their numbers; other parts refer to a thing by its number. */
final class NumberedList<T> implements Iterable<T> {

    private final Map<T, Integer> numbers = new LinkedHashMap<>();
    private final int first;

    /**
     * An empty list.
     *
     * @param first the number of the first thing
     */
    NumberedList(int first) {
        this.first = first;
    }

    /** The number of a thing; adds it to the list if it is new. */
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

    /** How many there are, including the numbers before the first. */
    int end() {
        return first + numbers.size();
    }

    @Override
    public Iterator<T> iterator() {
        return numbers.keySet().iterator();
    }
}
