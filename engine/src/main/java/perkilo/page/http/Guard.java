package perkilo.page.http;

import com.sun.net.httpserver.Headers;
import java.util.List;
import java.util.Set;

/**
 * Decides who may ask: only the page that this server gave out, in a browser that was let in.
 *
 * <p>Any web page that a person visits can make their browser send requests to this computer. Such a request has a
 * foreign {@code Origin} or {@code Sec-Fetch-Site}, lacks the cookie, or has a foreign name in {@code Host}.
 */
public final class Guard {

    private final Set<String> hosts;
    private final String cookie;
    private final Keys keys;

    /**
     * A guard.
     *
     * @param port that the server listens on
     */
    public Guard(int port, Keys keys) {
        this.hosts = Set.of("127.0.0.1:" + port, "localhost:" + port, "[::1]:" + port);
        this.cookie = "perkilo-" + port; // cookies are shared by all ports of a computer
        this.keys = keys;
    }

    /**
     * Checks where a request comes from.
     *
     * @param isData whether it asks for data, not for the page itself
     * @throws Refusal if it comes from elsewhere
     */
    void checkPlace(String method, Headers headers, boolean isData) throws Refusal {
        List<String> host = all(headers, "Host");
        if (host.size() != 1 || !hosts.contains(host.get(0))) {
            throw new Refusal(Status.FORBIDDEN, RequestMessages.otherHost());
        }
        List<String> origin = all(headers, "Origin");
        boolean own = origin.equals(List.of("http://" + host.get(0)));
        boolean none = origin.isEmpty() && method.equals("GET");
        List<String> site = all(headers, "Sec-Fetch-Site");
        boolean near = site.isEmpty()
                || site.equals(List.of("same-origin"))
                || (site.equals(List.of("none")) && !isData && method.equals("GET"));
        if (!(own || none) || !near) {
            throw new Refusal(Status.FORBIDDEN, RequestMessages.otherPage());
        }
    }

    /**
     * Checks that a request has the cookie of a page that was let in.
     *
     * @throws Refusal if it has not
     */
    void checkCookie(Headers headers) throws Refusal {
        for (String line : all(headers, "Cookie")) {
            for (String one : line.split(";", -1)) {
                int mark = one.indexOf('=');
                if (mark > 0
                        && one.substring(0, mark).strip().equals(cookie)
                        && keys.isIn(one.substring(mark + 1).strip())) {
                    return;
                }
            }
        }
        throw new Refusal(Status.FORBIDDEN, RequestMessages.notEntered());
    }

    /**
     * Lets a page in.
     *
     * @return its cookie, which neither scripts nor other pages can use
     * @throws Refusal if the key is wrong
     */
    String enter(String key) throws Refusal {
        return cookie + "=" + keys.enter(key) + "; Path=/; HttpOnly; SameSite=Strict";
    }

    private static List<String> all(Headers headers, String name) {
        List<String> values = headers.get(name);
        return values == null ? List.of() : values;
    }
}
