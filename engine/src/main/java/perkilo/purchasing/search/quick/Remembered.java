package perkilo.purchasing.search.quick;

import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Function;

/**
 * What was worked out before, for several threads; where it gets too much, all is forgotten and worked out anew.
 *
 * @param <K> what a thing is worked out from; it alone decides what comes out
 * @param <V> what comes out
 */
final class Remembered<K, V> {

    private final int most;
    private final Map<K, V> known = new ConcurrentHashMap<>();

    /**
     * A memory.
     *
     * @param most so many things are remembered at most
     */
    Remembered(int most) {
        this.most = most;
    }

    /** What comes of a key, worked out where it is not known; two threads may both work it out. */
    V of(K key, Function<K, V> work) {
        V before = known.get(key);
        if (before != null) {
            return before;
        }
        V made = work.apply(key);
        if (known.size() >= most) {
            known.clear();
        }
        V meanwhile = known.putIfAbsent(key, made);
        return meanwhile == null ? made : meanwhile;
    }
}
