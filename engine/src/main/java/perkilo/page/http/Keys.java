package perkilo.page.http;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.SecureRandom;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Base64;
import java.util.Deque;
import java.util.List;

/** The keys that let a browser in: the one in the page's address, and those that pages have got for it. Thread-safe. */
public final class Keys {

    private static final int BYTES = 32;

    /** Pages that can be open at once; the one that entered first is forgotten. */
    private static final int SESSIONS = 100;

    private final SecureRandom random = new SecureRandom();
    private final String token = fresh();
    private final List<String> once = new ArrayList<>();
    private final Deque<String> sessions = new ArrayDeque<>();

    /** The key in the address that is printed: 256 random bits. It lets any number of pages in. */
    public String token() {
        return token;
    }

    /** A key for an address that a program is started with, where others may see it: it lets one page in. */
    public synchronized String onlyOnce() {
        String key = fresh();
        once.add(key);
        return key;
    }

    /**
     * Lets a page in.
     *
     * @return what the page's cookie is to hold
     * @throws Refusal if the key is wrong
     */
    synchronized String enter(String key) throws Refusal {
        if (!same(key, token) && !once.removeIf(one -> same(key, one))) {
            throw new Refusal(Status.FORBIDDEN, RequestMessages.wrongKey());
        }
        String session = fresh();
        sessions.addLast(session);
        if (sessions.size() > SESSIONS) {
            sessions.removeFirst();
        }
        return session;
    }

    /** Whether a cookie holds the key of a page that was let in. */
    synchronized boolean isIn(String session) {
        boolean in = false;
        for (String one : sessions) {
            in |= same(session, one);
        }
        return in;
    }

    private String fresh() {
        byte[] bytes = new byte[BYTES];
        random.nextBytes(bytes);
        return Base64.getUrlEncoder().withoutPadding().encodeToString(bytes);
    }

    /** Whether two texts are the same; the time that it takes says nothing about where they differ. */
    private static boolean same(String one, String other) {
        return MessageDigest.isEqual(one.getBytes(StandardCharsets.UTF_8), other.getBytes(StandardCharsets.UTF_8));
    }
}
