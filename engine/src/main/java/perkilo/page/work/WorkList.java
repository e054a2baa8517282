package perkilo.page.work;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.regex.Pattern;
import perkilo.page.http.Call;

/** The work that pages follow, by the names that they gave it. */
public final class WorkList {

    private static final Pattern NAME = Pattern.compile("[A-Za-z0-9_-]{1,64}");

    /** More than pages can follow at once; the oldest is forgotten. */
    private static final int MOST = 200;

    private final Map<String, Work> all = new LinkedHashMap<>();

    /** The work of that name; a page may ask for it before it has begun. */
    public synchronized Work of(String name) {
        Work work = all.computeIfAbsent(name, any -> new Work());
        if (all.size() > MOST) {
            all.remove(all.keySet().iterator().next());
        }
        return work;
    }

    /** The work for a request: of the name in its header, or one that no page follows. */
    public Work begin(Call call) {
        String name = call.header("X-Work");
        return name != null && NAME.matcher(name).matches() ? of(name) : new Work();
    }

    /** Ends the work; its name can be used again. */
    public synchronized void end(Work work) {
        work.end();
        all.values().remove(work);
    }

    /** Ends and stops everything. */
    public synchronized void endAll() {
        all.values().forEach(Work::stop);
        all.values().forEach(Work::end);
        all.clear();
    }
}
