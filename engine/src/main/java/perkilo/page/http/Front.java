package perkilo.page.http;

import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.sun.net.httpserver.HttpExchange;
import com.sun.net.httpserver.HttpHandler;
import java.io.IOException;
import java.util.List;
import java.util.function.Consumer;
import java.util.function.UnaryOperator;

/** Takes every request: checks it, has it answered, and sends the answer or a sentence why there is none. */
public final class Front implements HttpHandler {

    private static final int LONGEST_ADDRESS = 4096;

    private final Guard guard;
    private final Routes routes;
    private final UnaryOperator<String> shown;
    private final Consumer<Throwable> faults;

    /**
     * A front.
     *
     * @param shown makes a sentence about a file fit for the page, such as by leaving out its folder
     * @param faults receives what failed unexpectedly
     */
    public Front(Guard guard, Routes routes, UnaryOperator<String> shown, Consumer<Throwable> faults) {
        this.guard = guard;
        this.routes = routes;
        this.shown = shown;
        this.faults = faults;
    }

    @Override
    public void handle(HttpExchange exchange) {
        try (exchange) {
            Reply reply = new Reply(exchange);
            Answer answer;
            try {
                answer = answer(exchange);
            } catch (Refusal refusal) {
                reply.refuse(refusal);
                return;
            } catch (IOException file) {
                reply.refuse(new Refusal(Status.NO_ANSWER, shown.apply(String.valueOf(file.getMessage()))));
                return;
            } catch (OutOfMemoryError full) {
                reply.refuse(new Refusal(Status.NO_ANSWER, RequestMessages.noMemory()));
                return;
            } catch (RuntimeException | Error fault) {
                faults.accept(fault);
                reply.refuse(new Refusal(Status.FAULT, RequestMessages.fault()));
                return;
            }
            reply.send(answer);
        } catch (IOException gone) {
            // the page does not wait for the answer any more
        } catch (InterruptedException ended) {
            Thread.currentThread().interrupt();
        }
    }

    private Answer answer(HttpExchange exchange) throws Refusal, IOException {
        String method = exchange.getRequestMethod();
        String path = exchange.getRequestURI().getRawPath();
        boolean isData = path != null && path.startsWith("/api/");
        guard.checkPlace(method, exchange.getRequestHeaders(), isData);
        if (path == null
                || !path.startsWith("/")
                || exchange.getRequestURI().toString().length() > LONGEST_ADDRESS) {
            throw new Refusal(Status.BAD_REQUEST, RequestMessages.nothingHere());
        }
        Call call = new Call(exchange);
        if (!isData) {
            return page(method, call);
        }
        if (call.path().equals(List.of("api", "enter")) && method.equals("POST")) {
            String cookie = guard.enter(Call.text(call.body(), "token"));
            return new Answer.Entered(JsonNodeFactory.instance.objectNode().put("ok", true), cookie);
        }
        guard.checkCookie(exchange.getRequestHeaders());
        return routes.answer(method, call);
    }

    private static Answer page(String method, Call call) throws Refusal, IOException {
        if (!method.equals("GET")) {
            throw new Refusal(Status.WRONG_METHOD, RequestMessages.wrongMethod(method));
        }
        return Assets.of(call.path());
    }
}
