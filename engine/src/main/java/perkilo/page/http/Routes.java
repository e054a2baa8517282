package perkilo.page.http;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;

/** Which work answers which address. */
public final class Routes {

    private static final String ANY = "*";

    /** Answers a request. */
    @FunctionalInterface
    public interface Work {

        /**
         * The answer.
         *
         * @param call the request
         * @param name the word of the path where the route has a star; empty without one
         * @throws Refusal if there is none, with the reason
         * @throws IOException whose message is a sentence for a person, if a file cannot be read or written
         */
        Answer answer(Call call, String name) throws Refusal, IOException;
    }

    private record Route(String method, List<String> path, Work work) {

        boolean fits(List<String> words) {
            boolean fits = words.size() == path.size();
            for (int at = 0; fits && at < path.size(); at++) {
                fits = path.get(at).equals(ANY) || path.get(at).equals(words.get(at));
            }
            return fits;
        }

        String name(List<String> words) {
            int at = path.indexOf(ANY);
            return at < 0 ? "" : words.get(at);
        }
    }

    private final List<Route> routes = new ArrayList<>();

    /**
     * Adds a route.
     *
     * @param path below {@code /api/}, such as {@code books/*}{@code /cost}
     */
    public void add(String method, String path, Work work) {
        routes.add(new Route(method, List.of(("api/" + path).split("/", -1)), work));
    }

    /** The answer to a request. */
    Answer answer(String method, Call call) throws Refusal, IOException {
        boolean known = false;
        for (Route route : routes) {
            if (route.fits(call.path())) {
                if (route.method().equals(method)) {
                    return route.work().answer(call, route.name(call.path()));
                }
                known = true;
            }
        }
        throw known
                ? new Refusal(Status.WRONG_METHOD, RequestMessages.wrongMethod(method))
                : new Refusal(Status.NOT_FOUND, RequestMessages.nothingHere());
    }
}
