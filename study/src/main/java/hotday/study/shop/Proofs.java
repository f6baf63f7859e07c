package hotday.study.shop;

import hotday.core.finding.Finding;
import hotday.core.finding.InputException;
import hotday.core.finding.Place;
import hotday.core.finding.Wording;
import hotday.core.typed.Overlay;
import hotday.core.typed.TypedText;
import hotday.signals.channel.Recording;
import hotday.study.prove.Proof;
import hotday.study.prove.ProveRequest;
import hotday.study.prove.ProveRequest.ProveProgress;
import hotday.study.signoff.ProgramVersion;
import hotday.study.signoff.SignOffPdf;
import hotday.study.workspace.AtomicFile;
import hotday.study.workspace.Leftovers;
import hotday.vehicle.cases.Case;
import hotday.vehicle.cases.Cases;
import hotday.vehicle.sheet.BuildSheet;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.concurrent.CancellationException;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.BooleanSupplier;
import java.util.regex.Pattern;
import tools.jackson.core.JacksonException;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.ObjectNode;

/**
 * The last proof of every build: {@code builds/ID/proof.json}, the document it names, and the sign-off that was taken from one. {@code
 * proof.json} is written last and whole, so that what it names is always there. Shared between threads.
 */
public final class Proofs {
    private static final Pattern PDF = Pattern.compile("proof-[0-9a-z]+\\.pdf");
    private static final String FILE = "proof.json";
    private static final String SIGN_OFF = "signoff.pdf";

    private final Path folder;
    private final Runs runs;
    private final Map<String, Known> known = new ConcurrentHashMap<>();

    private record Known(long bytes, long modified, Optional<ObjectNode> proof) {}

    /**
     * Where the proof of a build stands.
     *
     * @param made there is one
     * @param current sheet, parts, cases and recordings are as they were then
     * @param signed the sign-off that lies there is the one of this proof
     * @param runs names of the recordings it was made from
     */
    public record State(boolean made, boolean current, boolean signed, List<String> runs) {
        public State {
            runs = List.copyOf(runs);
        }
    }

    Proofs(Path shop, Runs runs) {
        this.folder = shop;
        this.runs = runs;
    }

    private Path build(String id) {
        return folder.resolve("builds").resolve(id);
    }

    /**
     * Refuses at once what could never be proven: no recording to fit, one that is not there or whose columns nobody has named, one in both
     * roles.
     */
    public void check(ProofOrder order) {
        List<Finding> faults = new ArrayList<>();
        if (order.fit().isEmpty()) {
            faults.add(Finding.fault("no-fit-run", Place.of("fit"), "at least one recording to fit is needed"));
        }
        List<String> all = new ArrayList<>(order.fit());
        all.addAll(order.predict());
        Map<String, Runs.Run> there = new TreeMap<>();
        runs.all().forEach(run -> there.put(run.name(), run));
        for (String name : all) {
            Runs.Run run = there.get(name);
            if (run == null) {
                faults.add(Finding.fault(
                        "no-such-run", Place.of(name), "there is no recording '" + name + "' in this shop"));
            } else if (run.map() == Runs.MapKind.NONE) {
                faults.add(Finding.fault(
                        "run-without-map",
                        Place.of(name),
                        "nobody has said yet what the columns of '" + name + "' mean"));
            }
        }
        if (all.stream().distinct().count() < all.size()) {
            faults.add(
                    Finding.fault("run-twice", Place.of("fit"), "a recording is either fitted or predicted, and once"));
        }
        if (!faults.isEmpty()) {
            throw new InputException(faults);
        }
    }

    /**
     * Makes a proof and keeps it as the last one of its build.
     *
     * @param name letters and digits, of its document
     * @param wording of whoever reads it
     * @return name of the document
     */
    public String make(
            ProofOrder order, String name, Wording wording, ProveProgress progress, BooleanSupplier cancelled) {
        check(order);
        Leftovers.remove(build(order.build()));
        Path path = build(order.build()).resolve("build.yaml");
        String text = TypedText.read(path);
        ProofBasis basis = basis(Digest.of(text), versions(order));
        BuildSheet sheet = BuildSheet.of(path, text, Overlay.none());
        List<Case> cases =
                Cases.ofBuild(path).stream().filter(c -> !c.forCold()).toList();
        progress.at("reading the recordings", 0.01);
        Proof proof = ProofWork.of(new ProveRequest(
                sheet.vehicle(),
                cases,
                recordings(order.fit()),
                recordings(order.predict()),
                order.observeOil(),
                order.seed(),
                Math.max(1, Runtime.getRuntime().availableProcessors()),
                progress,
                cancelled));
        progress.at("writing it down", 0.99);
        Paper paper = paper(order, name, wording, basis, sheet, proof);
        if (cancelled.getAsBoolean()) {
            throw new CancellationException();
        }
        return keep(paper);
    }

    /**
     * Keeps a proof that was made elsewhere from the sheet and recordings as they lie in the shop.
     *
     * @param name letters and digits, of its document
     * @param wording of whoever reads it
     * @return name of the document
     */
    public String keep(ProofOrder order, String name, Wording wording, BuildSheet sheet, Proof proof) {
        String version = Digest.of(TypedText.read(build(order.build()).resolve("build.yaml")));
        return keep(paper(order, name, wording, basis(version, versions(order)), sheet, proof));
    }

    /** A proof as it is written. */
    private record Paper(String build, String pdf, byte[] document, byte[] json) {}

    private static Paper paper(
            ProofOrder order, String name, Wording wording, ProofBasis basis, BuildSheet sheet, Proof proof) {
        String pdf = "proof-" + name + ".pdf";
        byte[] json = ProofFile.MAPPER.writeValueAsBytes(ProofFile.of(order, basis, proof, wording, pdf));
        return new Paper(order.build(), pdf, document(sheet, proof), json);
    }

    private static byte[] document(BuildSheet sheet, Proof proof) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        try {
            SignOffPdf.write(sheet, proof, ProgramVersion.NUMBER, LocalDate.now(), out);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return out.toByteArray();
    }

    private synchronized String keep(Paper paper) {
        Path build = build(paper.build());
        AtomicFile.write(build.resolve(paper.pdf()), out -> out.write(paper.document()));
        AtomicFile.write(build.resolve(FILE), out -> out.write(paper.json()));
        Leftovers.removeOthers(build, PDF, paper.pdf());
        return paper.pdf();
    }

    private List<Recording> recordings(List<String> names) {
        return InputException.each(names, runs::recording);
    }

    private Map<String, String> versions(ProofOrder order) {
        Map<String, String> all = new TreeMap<>();
        order.fit().forEach(name -> runs.find(name).ifPresent(run -> all.put(name, run.version())));
        order.predict().forEach(name -> runs.find(name).ifPresent(run -> all.put(name, run.version())));
        return all;
    }

    private ProofBasis basis(String sheet, Map<String, String> versions) {
        return new ProofBasis(sheet, Beside.digest(folder), versions);
    }

    /** The last proof of a build as it is kept; docs/page.md has the keys. */
    public Optional<ObjectNode> find(String id) {
        return kept(id).map(ObjectNode::deepCopy);
    }

    /** Of the ceilings of the last proof the one that leaves least over its design day, as {@code proof.json} has it. */
    public Optional<JsonNode> least(String id) {
        return kept(id).stream()
                .flatMap(root -> root.path("proof").path("ceilings").valueStream())
                .min(Comparator.comparingDouble(c -> c.path("degC").asDouble(0.0)
                        - c.path("design_ambient_degC").asDouble(0.0)))
                .map(JsonNode::deepCopy);
    }

    private Optional<ObjectNode> kept(String id) {
        Path file = build(id).resolve(FILE);
        try {
            if (!Files.isRegularFile(file)) {
                return Optional.empty();
            }
            long bytes = Files.size(file);
            long modified = Files.getLastModifiedTime(file).toMillis();
            Known last = known.get(id);
            if (last == null || last.bytes() != bytes || last.modified() != modified) {
                last = new Known(bytes, modified, read(file));
                known.put(id, last);
            }
            return last.proof();
        } catch (IOException e) {
            return Optional.empty();
        }
    }

    /** Empty for a file that somebody else put there. */
    private static Optional<ObjectNode> read(Path file) throws IOException {
        try {
            JsonNode root = ProofFile.MAPPER.readTree(Files.readString(file, StandardCharsets.UTF_8));
            boolean ours = root instanceof ObjectNode
                    && PDF.matcher(root.path("pdf").asString("")).matches();
            return ours ? Optional.of((ObjectNode) root) : Optional.empty();
        } catch (JacksonException e) {
            return Optional.empty();
        }
    }

    /** Where the proof of a build stands. */
    public State state(String id) {
        Optional<ObjectNode> proof = kept(id);
        if (proof.isEmpty()) {
            return new State(false, false, Files.isRegularFile(build(id).resolve(SIGN_OFF)), List.of());
        }
        Map<String, String> then = ProofFile.runs(proof.get());
        return new State(true, current(id, proof.get(), then), signed(id, proof.get()), List.copyOf(then.keySet()));
    }

    private boolean current(String id, ObjectNode proof, Map<String, String> then) {
        Map<String, String> now = new TreeMap<>();
        for (Runs.Run run : runs.all()) {
            if (then.containsKey(run.name())) {
                now.put(run.name(), run.version());
            }
        }
        try {
            ProofBasis basis = basis(Digest.of(TypedText.read(build(id).resolve("build.yaml"))), now);
            return basis.equals(new ProofBasis(
                    proof.path("sheet_version").asString(""),
                    proof.path("beside_version").asString(""),
                    then));
        } catch (InputException unreadable) {
            return false;
        }
    }

    private boolean signed(String id, ObjectNode proof) {
        Path signOff = build(id).resolve(SIGN_OFF);
        Path pdf = pdf(id, proof);
        try {
            return Files.isRegularFile(signOff) && Files.isRegularFile(pdf) && Files.mismatch(signOff, pdf) < 0;
        } catch (IOException e) {
            return false;
        }
    }

    private Path pdf(String id, ObjectNode proof) {
        return build(id).resolve(proof.path("pdf").asString(""));
    }

    /** Document of the last proof. */
    public Optional<byte[]> document(String id) {
        Optional<ObjectNode> proof = kept(id);
        if (proof.isEmpty()) {
            return Optional.empty();
        }
        try {
            return Optional.of(Files.readAllBytes(pdf(id, proof.get())));
        } catch (IOException e) {
            return Optional.empty(); // a newer proof took its place just now, or somebody took it away
        }
    }

    /**
     * Takes the document of a proof as the sign-off.
     *
     * @param pdf name of the document that was read
     * @return false when that is not the last proof any more, or no longer of this sheet and these recordings
     */
    public synchronized boolean signOff(String id, String pdf) {
        Optional<ObjectNode> proof = kept(id);
        boolean last = proof.isPresent() && proof.get().path("pdf").asString("").equals(pdf);
        Optional<byte[]> content = last && state(id).current() ? document(id) : Optional.empty();
        content.ifPresent(bytes -> AtomicFile.write(build(id).resolve(SIGN_OFF), out -> out.write(bytes)));
        return content.isPresent();
    }
}
