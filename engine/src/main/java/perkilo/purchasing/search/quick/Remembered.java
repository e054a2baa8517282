package perkilo.purchasing.search.quick;

import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Function;

/**
 * A cache of results, for several threads. When it is full, everything is dropped and computed anew.
 *
 * @param <K> what a result is computed from; the result depends on nothing else
 * @param <V> the result
 */
final class Remembered<K, V> {

    private final int most;
    private final Map<K, V> known = new ConcurrentHashMap<>();

    /**
     * An empty cache.
     *
     * @param most how many results are remembered at most
     */
    Remembered(int most) {
        this.most = most;
    }

    /** The result for a key, computed if it is not known; two threads may both compute it. */
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
