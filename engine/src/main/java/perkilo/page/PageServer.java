package perkilo.page;

import com.sun.net.httpserver.HttpServer;
import java.io.IOException;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.net.URI;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.ThreadPoolExecutor;
import java.util.concurrent.TimeUnit;
import perkilo.page.http.Front;
import perkilo.page.http.Guard;
import perkilo.page.http.Keys;
import perkilo.page.http.Routes;
import perkilo.page.work.WorkList;

/** A server on this computer's own address, at a free port, until a page closes it or none is open any more. */
public final class PageServer implements AutoCloseable {

    /** Requests at once; each open page holds one for as long as it is open. */
    private static final int THREADS = 64;

    private static final int IDLE_SECONDS = 30;
    private static final int QUEUE = 64;

    private final HttpServer server;
    private final ThreadPoolExecutor threads;
    private final Keys keys;
    private final LastPage lastPage;
    private final WorkList works = new WorkList();
    private final CountDownLatch ended = new CountDownLatch(1);

    private PageServer(HttpServer server, PageSettings settings) {
        this.server = server;
        this.keys = new Keys();
        this.lastPage = new LastPage(settings.clock());
        this.threads = new ThreadPoolExecutor(
                THREADS, THREADS, IDLE_SECONDS, TimeUnit.SECONDS, new LinkedBlockingQueue<>(), work -> {
                    Thread thread = new Thread(work, "page");
                    thread.setDaemon(true);
                    return thread;
                });
        threads.allowCoreThreadTimeOut(true);
        Desk desk = new Desk(settings);
        Routes routes = new Routes();
        new PageCalls(lastPage, works, ended).addTo(routes);
        new FolderCalls(desk, settings.version()).addTo(routes);
        new ReadingCalls(desk, works).addTo(routes);
        new CostCalls(desk, works).addTo(routes);
        Guard guard = new Guard(server.getAddress().getPort(), keys);
        server.createContext("/", new Front(guard, routes, desk::shown, settings.faults()));
        server.setExecutor(threads);
    }

    /**
     * Starts a server.
     *
     * @throws IOException if there is no free port
     */
    public static PageServer start(PageSettings settings) throws IOException {
        InetSocketAddress own = new InetSocketAddress(InetAddress.getLoopbackAddress(), 0);
        PageServer page = new PageServer(HttpServer.create(own, QUEUE), settings);
        page.server.start();
        return page;
    }

    /** The page's address for a person; the key in it lets any number of pages in. */
    public URI address() {
        return address(keys.token());
    }

    /** The page's address for starting a browser: the key in it lets one page in, as others may see it. */
    public URI addressForOnce() {
        return address(keys.onlyOnce());
    }

    private URI address(String key) {
        return URI.create("http://127.0.0.1:" + server.getAddress().getPort() + "/#" + key);
    }

    /**
     * Waits until a page closes the server, or the last page has been gone for long.
     *
     * @param tickMillis how often to look whether a page is open
     */
    public void await(long tickMillis) throws InterruptedException {
        boolean closed = false;
        while (!closed && !lastPage.isOver()) {
            closed = ended.await(tickMillis, TimeUnit.MILLISECONDS);
        }
    }

    /** Ends the server; work that runs is asked to stop. */
    @Override
    public void close() {
        ended.countDown();
        works.endAll();
        server.stop(0);
        threads.shutdownNow();
    }
}
