package perkilo.page;

import java.io.IOException;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import perkilo.json.Json;
import perkilo.page.http.Answer;
import perkilo.page.http.EventStream;
import perkilo.page.http.Routes;
import perkilo.page.work.WorkList;

/** What a page asks about itself: that it is open, how far work is, and that all is to end. */
final class PageCalls {

    private static final long BEAT_SECONDS = 5;

    private final LastPage lastPage;
    private final WorkList works;
    private final CountDownLatch ended;

    PageCalls(LastPage lastPage, WorkList works, CountDownLatch ended) {
        this.lastPage = lastPage;
        this.works = works;
        this.ended = ended;
    }

    void addTo(Routes routes) {
        routes.add("GET", "alive", (call, name) -> new Answer.Stream(this::alive));
        routes.add("GET", "work/*/events", (call, name) -> new Answer.Stream(works.of(name)));
        routes.add("POST", "work/*/stop", (call, name) -> {
            works.of(name).stop();
            return done();
        });
        routes.add("POST", "close", (call, name) -> {
            Thread end = new Thread(this::endSoon, "close");
            end.setDaemon(true);
            end.start();
            return done();
        });
    }

    private static Answer done() {
        return new Answer.Data(Json.object().put("ok", true));
    }

    private void alive(EventStream out) throws IOException, InterruptedException {
        lastPage.came();
        try {
            while (!ended.await(BEAT_SECONDS, TimeUnit.SECONDS)) {
                out.beat();
            }
            out.send("{\"end\":true}");
        } finally {
            lastPage.went();
        }
    }

    /** The answer is to reach the page before the server ends. */
    private void endSoon() {
        try {
            TimeUnit.MILLISECONDS.sleep(300);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
        ended.countDown();
    }
}
