package hotday.study.face;

import hotday.core.unit.Display;
import hotday.core.unit.Quantity;
import hotday.core.unit.Unit;
import hotday.study.picture.FaceChart;
import hotday.study.picture.FaceChart.Box;
import hotday.study.picture.FaceChart.Layer;
import hotday.study.picture.FaceChart.Outline;
import hotday.study.picture.FaceChart.Panel;
import hotday.study.picture.SvgCanvas;
import hotday.vehicle.airpath.Face;
import hotday.vehicle.airpath.Rectangle;
import hotday.vehicle.airpath.TileFlow.FanState;
import hotday.vehicle.cases.Case;
import hotday.vehicle.front.FrontView;
import hotday.vehicle.front.FrontView.CoreView;
import hotday.vehicle.plant.Plant;
import hotday.vehicle.sheet.BuildSheet;
import hotday.vehicle.spec.VehicleSpec;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** Front view with air speed and air temperature at every core, and side view, of one operating point. */
public final class FacePicture {
    private static final double MILLIMETRES = 1e3; // in a metre
    private static final double FAN_DEPTH = 60.0; // mm, drawn only

    private final VehicleSpec spec;
    private final FrontView view;
    private final Display show;
    private final String situation;

    FacePicture(VehicleSpec spec, FrontView view, Display show, String situation) {
        this.spec = spec;
        this.view = view;
        this.show = show;
        this.situation = situation;
    }

    /** A case on the design day of a sheet, settled, fan at full speed. */
    public static FacePicture of(BuildSheet sheet, Case kase) {
        VehicleSpec spec = sheet.vehicle();
        FrontView view = SettledFront.of(spec, Plant.compile(spec), kase);
        Display show = new Display(sheet.units());
        String day = show.format(Quantity.TEMPERATURE, spec.designAmbient()) + " outside";
        return new FacePicture(spec, view, show, kase.title() + ", " + day);
    }

    /** The picture as SVG text. */
    public String svg() {
        FaceChart chart = chart();
        SvgCanvas canvas = new SvgCanvas(chart.width(), chart.height(), chart.title());
        chart.draw(canvas);
        return canvas.finish();
    }

    FaceChart chart() {
        Face face = view.face();
        return new FaceChart(
                spec.name() + ": " + situation,
                notes(),
                face.grid().x().stream().map(v -> MILLIMETRES * v).toList(),
                face.grid().y().stream().map(v -> MILLIMETRES * v).toList(),
                speeds(),
                temperatures(),
                outlines(),
                side());
    }

    /** What the picture says, in words. */
    public List<String> notes() {
        List<String> lines = new ArrayList<>();
        lines.add(String.format(
                Locale.ROOT,
                "Air through the face %.2f kg/s; reaches it at %s, leaves the stack at %s, bay %s.",
                view.massFlow(),
                temperature(view.faceTemperature()),
                temperature(view.rearTemperature()),
                temperature(view.underhoodTemperature())));
        StringBuilder line = new StringBuilder();
        for (CoreView core : view.cores()) {
            line.append(line.isEmpty() ? "Heat to the air: " : ", ")
                    .append(core.core().kind().title())
                    .append(' ')
                    .append(show.format(Quantity.POWER, core.heat()));
        }
        lines.add(line.append('.').toString());
        if (view.condensing().isPresent()) {
            lines.add("Refrigerant condenses at "
                    + temperature(view.condensing().getAsDouble())
                    + ", "
                    + show.format(
                            Quantity.PRESSURE_ABSOLUTE,
                            view.condensingPressure().getAsDouble())
                    + " (R-134a, no losses in pipes).");
        }
        lines.add(fans());
        if (!view.settled()) {
            lines.add(
                    "Not settled: this air cannot carry the heat that is asked of it. Read the numbers as a warning only.");
        }
        return lines;
    }

    private String fans() {
        String states = switch (view.fans().get(0)) {
            case POWERED -> "The fan drives the air.";
            case WINDMILLING -> "The fan turns in the wind or stands.";
            case STALLED -> "The fan is stalled.";
        };
        if (view.fans().size() > 1 && view.fans().contains(FanState.STALLED)) {
            states = "A fan is stalled.";
        }
        String flaps = view.flapMassFlow() > 0.0
                ? String.format(Locale.ROOT, " Flaps open, %.2f kg/s.", view.flapMassFlow())
                : spec.stack().flapArea() > 0.0 ? " Flaps shut." : "";
        String back = view.reversedMassFlow() > 0.0
                ? String.format(
                        Locale.ROOT, " %.3f kg/s come out of the front (negative speeds).", view.reversedMassFlow())
                : "";
        return states + flaps + back;
    }

    private String temperature(double kelvin) {
        return show.format(Quantity.TEMPERATURE, kelvin);
    }

    private Panel speeds() {
        List<Box> openings =
                spec.stack().openings().stream().map(FacePicture::box).toList();
        return new Panel("Air speed at the face (openings framed), m/s", view.speed(), 1, openings);
    }

    private List<Panel> temperatures() {
        List<Panel> panels = new ArrayList<>();
        Unit unit = show.unitFor(Quantity.TEMPERATURE);
        for (CoreView core : view.cores()) {
            String name = core.core().kind().title();
            panels.add(panel("Air reaching the " + name + ", " + unit.symbol(), core.airIn(), core, unit));
        }
        CoreView last = view.cores().get(view.cores().size() - 1);
        panels.add(panel(
                "Air leaving the " + last.core().kind().title() + ", " + unit.symbol(), last.airOut(), last, unit));
        return panels;
    }

    private static Panel panel(String title, List<Double> kelvin, CoreView core, Unit unit) {
        List<Double> values =
                kelvin.stream().map(v -> Double.isNaN(v) ? v : unit.fromSi(v)).toList();
        return new Panel(title, values, 0, List.of(box(core.core().place())));
    }

    private static Box box(Rectangle r) {
        return new Box(
                MILLIMETRES * r.left(), MILLIMETRES * r.top(), MILLIMETRES * r.width(), MILLIMETRES * r.height());
    }

    /** Fans only: they mark where the air is drawn. */
    private List<Outline> outlines() {
        return view.face().fans().stream()
                .map(fan -> {
                    double size = MILLIMETRES * fan.disc().diameter();
                    Box box = new Box(
                            MILLIMETRES * fan.disc().x() - 0.5 * size,
                            MILLIMETRES * fan.disc().y() - 0.5 * size,
                            size,
                            size);
                    return new Outline("fan", box, true);
                })
                .toList();
    }

    private List<Layer> side() {
        List<Layer> layers = new ArrayList<>();
        layers.add(new Layer(
                "openings",
                0.0,
                spec.stack().openings().stream().map(FacePicture::box).toList(),
                false));
        for (CoreView core : view.cores()) {
            String depth = show.format(Quantity.LENGTH, core.core().depth());
            layers.add(new Layer(
                    core.core().kind().title() + ", " + depth,
                    MILLIMETRES * core.core().depth(),
                    List.of(box(core.core().place())),
                    true));
        }
        layers.add(new Layer("shroud", 20.0, List.of(box(spec.stack().shroud())), false));
        double size = MILLIMETRES * spec.stack().fanDiameter();
        double middle = MILLIMETRES
                * (spec.stack().shroud().top() + 0.5 * spec.stack().shroud().height());
        String fan = (spec.stack().fans() > 1 ? "fans, " : "fan, ")
                + show.format(Quantity.LENGTH, spec.stack().fanDiameter());
        layers.add(new Layer(fan, FAN_DEPTH, List.of(new Box(0, middle - 0.5 * size, 1, size)), true));
        return layers;
    }
}
