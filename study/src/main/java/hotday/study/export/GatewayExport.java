package hotday.study.export;

import hotday.signals.translator.Program;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** A translation as C99: {@code gateway.h}, {@code gateway.c}, a runner of test vectors and vectors. */
public final class GatewayExport {
    private static final int FRAMES = 5_000;
    private static final long SEED = 1;

    private GatewayExport() {}

    /**
     * Writes the files into a folder, which is made where it is not there.
     *
     * @return their names
     */
    public static List<String> write(Program program, Path folder) {
        Map<String, String> files = new LinkedHashMap<>();
        Map<String, String> places = new GatewayTables(program).places();
        for (String name : List.of("gateway.h", "gateway.c", "gateway_test.c")) {
            files.put(name, Template.filled(name, places));
        }
        GatewayVectors vectors = new GatewayVectors(program);
        vectors.random(FRAMES, SEED);
        files.put("gateway_vectors.txt", vectors.text());
        Template.write(folder, files);
        return List.copyOf(files.keySet());
    }
}
