package perkilo.desk;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.atomic.AtomicInteger;

/** A watch that remembers what it saw, and cancels after it was asked so many times. */
final class Seen implements Watch {

    private final Map<Stage, List<String>> seen = new EnumMap<>(Stage.class);
    private final AtomicInteger asked = new AtomicInteger();
    private final int cancelAfter;

    private Seen(int cancelAfter) {
        this.cancelAfter = cancelAfter;
    }

    /** A watch that lets everything go on. */
    static Seen all() {
        return new Seen(Integer.MAX_VALUE);
    }

    /** A watch that says so many times that the work may go on, and then no more. */
    static Seen cancelAfter(int times) {
        return new Seen(times);
    }

    @Override
    public synchronized void at(Stage stage, int done, int of) {
        seen.computeIfAbsent(stage, any -> new ArrayList<>()).add(done + " of " + of);
    }

    @Override
    public boolean isCancelled() {
        return asked.incrementAndGet() > cancelAfter;
    }

    /** What was seen of a stage, such as {@code 1 of 3}. */
    synchronized List<String> of(Stage stage) {
        return List.copyOf(seen.getOrDefault(stage, List.of()));
    }

    /** How often it was asked after it had cancelled, the time that it did so not counted. */
    int askedAgain() {
        return Math.max(0, asked.get() - cancelAfter - 1);
    }

    /** How often it was asked. */
    int asked() {
        return asked.get();
    }
}
