package perkilo.purchasing.search;

import java.util.Arrays;
import org.jspecify.annotations.Nullable;

/** What has been decided on the way to a node of the search: which orders are placed, and how long lines are. */
final class Decisions {
    static final byte OPEN_QUESTION = -1;
    static final byte NO = 0;
    static final byte YES = 1;

    /** By order: whether it is placed. */
    final byte[] placed;
    /** By order: whether it stays below its minimum and pays the charge. */
    final byte[] small;

    private final @Nullable Range ranges;

    /** No decisions yet. */
    Decisions(int orders) {
        placed = new byte[orders];
        small = new byte[orders];
        Arrays.fill(placed, OPEN_QUESTION);
        Arrays.fill(small, OPEN_QUESTION);
        ranges = null;
    }

    private Decisions(byte[] placed, byte[] small, @Nullable Range ranges) {
        this.placed = placed;
        this.small = small;
        this.ranges = ranges;
    }

    Decisions withPlaced(int order, byte answer) {
        byte[] more = placed.clone();
        more[order] = answer;
        return new Decisions(more, small.clone(), ranges);
    }

    Decisions withSmall(int order, byte answer) {
        byte[] more = small.clone();
        more[order] = answer;
        return new Decisions(placed.clone(), more, ranges);
    }

    Decisions withRange(int offer, long atLeast, long atMost) {
        return new Decisions(placed.clone(), small.clone(), new Range(offer, atLeast, atMost, ranges));
    }

    /** The decided ranges of line lengths; the same object if and only if they are the same. */
    @Nullable Object ranges() {
        return ranges;
    }

    /** Writes the decided ranges of line lengths into the terms. */
    void limit(Terms terms, SearchMarket market) {
        Arrays.fill(terms.atLeast, 0);
        Arrays.fill(terms.forcedLines, 0);
        for (PackChoice offer : market.offers) {
            terms.atMost[offer.id] = offer.mostSteps;
        }
        for (Range range = ranges; range != null; range = range.rest()) {
            if (range.atLeast() > 0 && terms.atLeast[range.offer()] == 0) {
                terms.forcedLines[market.linkOf.get(range.offer()).item()]++;
            }
            terms.atLeast[range.offer()] = Math.max(terms.atLeast[range.offer()], range.atLeast());
            terms.atMost[range.offer()] = Math.min(terms.atMost[range.offer()], range.atMost());
        }
    }

    private record Range(
            int offer, long atLeast, long atMost, @Nullable Range rest) {}
}
