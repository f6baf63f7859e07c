package hotday.app.cli;

import hotday.core.finding.InputException;
import hotday.core.finding.Place;
import hotday.core.unit.Display;
import hotday.core.unit.Quantity;
import hotday.core.unit.UnitSystem;
import hotday.core.unit.Units;
import hotday.physics.fluid.Air;
import hotday.physics.refrigerant.PropertyTable;
import hotday.physics.refrigerant.RangeException;
import hotday.physics.refrigerant.Refrigerant;
import hotday.physics.refrigerant.TableError;
import hotday.study.property.Answers;
import hotday.study.property.Known;
import hotday.study.property.PointsFile;
import hotday.study.property.SaturationChart;
import hotday.study.workspace.AtomicFile;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** {@code hotday property}: refrigerant properties for one state, a file of states, or as a chart. */
@Command(
        name = "property",
        mixinStandardHelpOptions = true,
        description = "refrigerant properties: one state, a file of states, or a pressure-temperature chart",
        footer = {
            "",
            "One state takes two of --pressure, --temperature, --enthalpy, --quality, or pressure or temperature alone"
                    + " for liquid and vapour together. psi and bar count from the air outside, psia and bar abs from vacuum."
        })
final class PropertyCommand implements Callable<Integer> {
    private static final double LOWEST_ROAD = -430; // m, shore of the Dead Sea
    private static final double TROPOPAUSE = 11_000;
    private static final double MOST_STEPS = 10_000;
    private static final int ERROR_STATES = 200_000;
    private static final long ERROR_SEED = 1;

    private final Console console;

    @Option(names = "--fluid", required = true, paramLabel = "NAME", description = "R-134a or R-1234yf")
    private String fluid;

    @Option(names = "--from", paramLabel = "CSV", description = "points to answer; columns in docs/formats.md")
    private Optional<Path> from = Optional.empty();

    @Option(names = "--to", paramLabel = "CSV", description = "where the answers to --from go")
    private Optional<Path> to = Optional.empty();

    @Option(
            names = "--table",
            description = "answer --from by the table of the time loops, not by the equation of state")
    private boolean table;

    @Option(names = "--table-error", description = "measure that table against the equation of state")
    private boolean tableError;

    @Option(names = "--pressure", paramLabel = "P", description = "such as '170 psi' or '12 bar abs'")
    private Optional<String> pressure = Optional.empty();

    @Option(names = "--temperature", paramLabel = "T", description = "such as '120 degF'")
    private Optional<String> temperature = Optional.empty();

    @Option(names = "--enthalpy", paramLabel = "H", description = "such as '420 kJ/kg'; liquid at 0 degC has 200")
    private Optional<String> enthalpy = Optional.empty();

    @Option(names = "--quality", paramLabel = "X", description = "mass share of vapour, such as 0.2 or '20 %%'")
    private Optional<String> quality = Optional.empty();

    @Option(names = "--altitude", paramLabel = "H", description = "of the gauges, such as '5000 ft' (default 0 m)")
    private Optional<String> altitude = Optional.empty();

    @Option(names = "--chart", description = "saturation pressure against temperature, as gauges show it")
    private boolean chart;

    @Option(names = "--from-temperature", paramLabel = "T", description = "where the chart begins")
    private Optional<String> chartFrom = Optional.empty();

    @Option(names = "--to-temperature", paramLabel = "T", description = "where the chart ends")
    private Optional<String> chartTo = Optional.empty();

    @Option(names = "--step", paramLabel = "DT", description = "from row to row of the chart, such as '5 K'")
    private Optional<String> step = Optional.empty();

    @Option(names = "--picture", paramLabel = "SVG", description = "write the chart here, too")
    private Optional<Path> picture = Optional.empty();

    @Option(
            names = "--units",
            defaultValue = "metric",
            paramLabel = "SYSTEM",
            description = "metric, us, or mixed (degF and psi, the rest metric) (default ${DEFAULT-VALUE})")
    private UnitSystem units;

    @Option(names = "--json", description = "for machines")
    private boolean json;

    PropertyCommand(Console console) {
        this.console = console;
    }

    @Override
    public Integer call() {
        Optional<Refrigerant> known = Refrigerant.named(fluid);
        TypedOptions typed = new TypedOptions();
        if (known.isEmpty()) {
            typed.fault("--fluid", "unknown-fluid", unknownFluid());
        }
        requireOneTask(typed);
        Optional<PointsFile> points = from.flatMap(path -> typed.read(() -> PointsFile.open(path)));
        typed.throwIfAny();
        Refrigerant chosen = known.orElseThrow();
        if (points.isPresent()) {
            file(chosen, points.get());
        } else if (chart) {
            chart(chosen);
        } else if (tableError) {
            tableError(chosen);
        } else {
            state(chosen);
        }
        return CommandLineDoor.HOLDS;
    }

    private String unknownFluid() {
        String all = Arrays.stream(Refrigerant.values()).map(Refrigerant::label).collect(Collectors.joining(", "));
        return "'" + fluid + "' is not known; there are " + all;
    }

    private boolean isState() {
        return pressure.isPresent() || temperature.isPresent() || enthalpy.isPresent() || quality.isPresent();
    }

    private void requireOneTask(TypedOptions typed) {
        int tasks = (from.isPresent() ? 1 : 0) + (chart ? 1 : 0) + (isState() ? 1 : 0) + (tableError ? 1 : 0);
        if (tasks != 1) {
            typed.fault(
                    "hotday property",
                    "one-task",
                    tasks == 0
                            ? "say what is asked: --from and --to for a file, --chart, --table-error, or a state such as --pressure '170 psi'"
                            : "a file (--from), a chart (--chart), --table-error and a single state are asked one at a time");
        }
        if (from.isPresent() != to.isPresent()) {
            typed.fault(from.isPresent() ? "--to" : "--from", "option-missing", "--from and --to go together");
        }
        boolean partOfChart = chartFrom.isPresent() || chartTo.isPresent() || step.isPresent() || picture.isPresent();
        if (partOfChart && !chart) {
            typed.fault(
                    "--chart",
                    "option-missing",
                    "--from-temperature, --to-temperature, --step and --picture belong to --chart");
        }
        if (table && from.isEmpty()) {
            typed.fault("--table", "option-missing", "--table belongs to --from");
        }
        to.ifPresent(target -> typed.read(() -> {
            AtomicFile.requireTarget(target);
            return target;
        }));
    }

    private void file(Refrigerant chosen, PointsFile points) {
        Path target = to.orElseThrow();
        Answers answers = table ? Answers.ofTable(chosen) : Answers.ofEquation(chosen);
        long rows = points.answer(chosen, answers, target);
        if (json) {
            PropertyJson.print(console, chosen, rows, target);
        } else {
            console.result(rows + " rows of " + chosen.label() + " written to " + target);
        }
    }

    private void tableError(Refrigerant chosen) {
        PropertyTable made = PropertyTable.of(chosen);
        TableError error = TableError.of(made, ERROR_STATES, ERROR_SEED);
        if (json) {
            PropertyJson.print(console, made, error);
        } else {
            PropertyText.lines(made, error).forEach(console::result);
        }
    }

    private double altitude(TypedOptions typed) {
        return typed.between("--altitude", altitude, Quantity.LENGTH, 0.0, LOWEST_ROAD, TROPOPAUSE);
    }

    private void state(Refrigerant chosen) {
        TypedOptions typed = new TypedOptions();
        double air = Air.isaPressure(altitude(typed));
        Known known = new Known(
                typed.value("--temperature", temperature, Quantity.TEMPERATURE, Double.NaN),
                typed.pressure("--pressure", pressure, air),
                typed.value("--enthalpy", enthalpy, Quantity.SPECIFIC_ENTHALPY, Double.NaN),
                typed.value("--quality", quality, Quantity.RATIO, Double.NaN));
        typed.throwIfAny();
        if (!known.enough()) {
            throw InputException.at(
                    Place.of("hotday property"),
                    "pair-needed",
                    "a state takes two of --pressure, --temperature, --enthalpy, --quality, or pressure or temperature"
                            + " alone for liquid and vapour together");
        }
        try {
            answer(chosen, known, air);
        } catch (RangeException e) {
            throw InputException.at(Place.of("hotday property"), "out-of-range", e.getMessage());
        }
    }

    private void answer(Refrigerant chosen, Known known, double air) {
        if (json && known.saturation()) {
            PropertyJson.print(console, chosen, known.bothPhases(chosen), air);
        } else if (json) {
            PropertyJson.print(console, chosen, known.state(chosen), air);
        } else {
            PropertyText text = new PropertyText(new Display(units), chosen, air);
            (known.saturation() ? text.lines(known.bothPhases(chosen)) : text.lines(known.state(chosen)))
                    .forEach(console::result);
        }
    }

    private void chart(Refrigerant chosen) {
        SaturationChart made = chartOf(chosen);
        Display show = new Display(units);
        picture.ifPresent(path -> {
            byte[] svg = made.svg(show).getBytes(StandardCharsets.UTF_8);
            AtomicFile.write(path, out -> out.write(svg));
        });
        if (json) {
            PropertyJson.print(console, made);
        } else {
            PropertyText.lines(made, show).forEach(console::result);
            picture.ifPresent(path -> console.result("Chart written to " + path));
        }
    }

    private SaturationChart chartOf(Refrigerant chosen) {
        boolean metric = units == UnitSystem.METRIC;
        TypedOptions typed = new TypedOptions();
        double begin =
                typed.value("--from-temperature", chartFrom, Quantity.TEMPERATURE, usual("-30 degC", "-20 degF"));
        double end = typed.value("--to-temperature", chartTo, Quantity.TEMPERATURE, usual("90 degC", "190 degF"));
        double rise = typed.value("--step", step, Quantity.TEMPERATURE_DIFFERENCE, metric ? 5.0 : 10.0 / 1.8);
        if (!(end >= begin)) {
            typed.fault("--to-temperature", "out-of-range", "the chart must end above where it begins");
        }
        if (!(rise > 0 && end - begin <= MOST_STEPS * rise)) {
            typed.fault("--step", "out-of-range", "must be above 0 and give at most 10000 rows");
        }
        double height = altitude(typed);
        typed.throwIfAny();
        try {
            return SaturationChart.of(chosen, begin, end, rise, height);
        } catch (RangeException e) {
            throw InputException.at(Place.of("--chart"), "out-of-range", e.getMessage());
        }
    }

    private double usual(String metric, String other) {
        return Units.parse(Quantity.TEMPERATURE, units == UnitSystem.METRIC ? metric : other);
    }
}
