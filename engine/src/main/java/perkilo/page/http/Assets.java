package perkilo.page.http;

import java.io.IOException;
import java.io.InputStream;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;

/** The parts of the page itself: our own, and those of the libraries that it uses. */
final class Assets {

    /** A name without dots but the last one, so that it cannot lead elsewhere. */
    private static final Pattern NAME = Pattern.compile("[a-z0-9-]+\\.[a-z0-9]+");

    private static final Pattern FOLDER = Pattern.compile("[a-z0-9-]+");

    /** The libraries, by their names, with the folders that they are in. */
    static final Map<String, String> LIBRARIES = Map.of("lit-html", "/META-INF/resources/webjars/lit-html/3.1.2/");

    private static final Map<String, String> TYPES = Map.of(
            "html", "text/html; charset=utf-8",
            "css", "text/css; charset=utf-8",
            "js", "text/javascript; charset=utf-8",
            "svg", "image/svg+xml",
            "png", "image/png");

    private Assets() {}

    /**
     * A part of the page.
     *
     * @param path its address: none, {@code page} and a name, or {@code lib}, a library and a name
     * @throws Refusal if there is no such part
     */
    static Answer of(List<String> path) throws Refusal, IOException {
        if (path.equals(List.of(""))) {
            return found("/perkilo/page/", List.of("index.html"));
        }
        if (path.equals(List.of("favicon.ico"))) {
            return found("/perkilo/page/", List.of("icon.svg"));
        }
        if (path.size() > 1 && path.get(0).equals("page")) {
            return found("/perkilo/page/", path.subList(1, path.size()));
        }
        String library = path.size() > 2 && path.get(0).equals("lib") ? LIBRARIES.get(path.get(1)) : null;
        if (library == null) {
            throw nothing();
        }
        return found(library, path.subList(2, path.size()));
    }

    private static Answer found(String folder, List<String> names) throws Refusal, IOException {
        String name = names.get(names.size() - 1);
        String type = TYPES.get(name.substring(name.lastIndexOf('.') + 1));
        boolean fits = NAME.matcher(name).matches()
                && names.subList(0, names.size() - 1).stream()
                        .allMatch(one -> FOLDER.matcher(one).matches());
        if (!fits || type == null) {
            throw nothing();
        }
        try (InputStream in = Assets.class.getResourceAsStream(folder + String.join("/", names))) {
            if (in == null) {
                throw nothing();
            }
            return new Answer.Asset(type, in.readAllBytes());
        }
    }

    private static Refusal nothing() {
        return new Refusal(Status.NOT_FOUND, RequestMessages.nothingHere());
    }
}
