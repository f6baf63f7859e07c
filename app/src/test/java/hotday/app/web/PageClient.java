package hotday.app.web;

import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpRequest.BodyPublisher;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.net.http.HttpResponse.BodyHandler;
import java.net.http.HttpResponse.BodyHandlers;
import java.time.Duration;
import java.util.function.Predicate;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** Asks a server as the page does. */
final class PageClient {
    private final String address;
    private final HttpClient client = HttpClient.newHttpClient();

    PageClient(String address) {
        this.address = address;
    }

    HttpRequest.Builder ask(String path) {
        return HttpRequest.newBuilder(URI.create(address + path)).timeout(Duration.ofSeconds(120));
    }

    <T> HttpResponse<T> send(HttpRequest.Builder request, BodyHandler<T> handler) {
        try {
            return client.send(request.build(), handler);
        } catch (IOException e) {
            throw new AssertionError(e);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new AssertionError(e);
        }
    }

    HttpResponse<String> get(String path) {
        return send(ask(path), BodyHandlers.ofString());
    }

    HttpResponse<String> change(String method, String path, String body) {
        return send(
                ask(path).header("Content-Type", "application/json").method(method, BodyPublishers.ofString(body)),
                BodyHandlers.ofString());
    }

    HttpResponse<String> upload(String name, BodyPublisher body) {
        return send(
                ask("api/runs?file=" + name)
                        .header("Content-Type", "application/octet-stream")
                        .POST(body),
                BodyHandlers.ofString());
    }

    static JsonNode json(HttpResponse<String> response) {
        return JsonMapper.builder().build().readTree(response.body());
    }

    /** Asks again until the answer is the one waited for. */
    JsonNode until(String path, Predicate<JsonNode> wanted) throws InterruptedException {
        long until = System.currentTimeMillis() + 120_000;
        JsonNode last = json(get(path));
        while (!wanted.test(last) && System.currentTimeMillis() < until) {
            Thread.sleep(20);
            last = json(get(path));
        }
        if (!wanted.test(last)) {
            throw new AssertionError("still " + last);
        }
        return last;
    }
}
