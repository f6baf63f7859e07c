package hotday.app.web;

import io.javalin.http.HttpResponseException;
import java.util.Map;

/** A device of the workshop that has not been told the code. */
final class NotPairedResponse extends HttpResponseException {
    private static final long serialVersionUID = 1L;

    NotPairedResponse() {
        super(401, "this device is not paired; type the code that 'hotday serve --lan' shows", Map.of());
    }
}
