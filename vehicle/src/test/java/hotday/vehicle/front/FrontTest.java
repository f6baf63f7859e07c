package hotday.vehicle.front;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hotday.vehicle.InventedVehicle;
import hotday.vehicle.airpath.Rectangle;
import hotday.vehicle.front.FrontView.CoreView;
import hotday.vehicle.spec.VehicleSpec;
import hotday.vehicle.spec.VehicleSpec.CoreKind;
import hotday.vehicle.spec.VehicleSpec.PlacedCore;
import java.util.List;
import org.junit.jupiter.api.Test;

class FrontTest {
    private static final FrontInputs ROAD =
            new FrontInputs(20.0, 308.15, 101325.0, 0.5, 368.15, 1.2, 0.0, 6000.0, 2000.0, 3000.0);
    private static final FrontInputs IDLE =
            new FrontInputs(0.0, 308.15, 101325.0, 1.0, 368.15, 0.4, 1000.0, 5000.0, 0.0, 1500.0);

    private static VehicleSpec with(PlacedCore... front) {
        VehicleSpec v = InventedVehicle.diesel();
        VehicleSpec.Stack s = v.stack();
        PlacedCore radiator = s.cores().get(s.cores().size() - 1);
        List<PlacedCore> cores = new java.util.ArrayList<>(List.of(front));
        cores.add(radiator);
        return stack(
                v,
                new VehicleSpec.Stack(
                        s.width(), s.height(), cores, s.openings(), s.shroud(), 0, 1, s.fanDiameter(), 0, 10));
    }

    static VehicleSpec stack(VehicleSpec v, VehicleSpec.Stack stack) {
        return new VehicleSpec(
                v.name(),
                v.designAmbient(),
                v.altitude(),
                v.roadLoad(),
                v.engine(),
                v.chargeAir(),
                v.gearbox(),
                v.gearboxFluid(),
                v.coolant(),
                v.thermostat(),
                v.radiator(),
                v.heater(),
                v.fan(),
                v.airConditioning(),
                v.electrical(),
                v.frontEnd(),
                stack,
                v.schedule(),
                v.limits());
    }

    private static PlacedCore cooler(Rectangle place) {
        return new PlacedCore(CoreKind.GEARBOX_COOLER, 1, place, 0.019, 300, 0.5, 6, 5);
    }

    private static CoreView core(FrontView view, CoreKind kind) {
        return view.cores().stream()
                .filter(c -> c.core().kind() == kind)
                .findFirst()
                .orElseThrow();
    }

    /** All heat of the cores is in the air: mass flow x specific heat x rise, tile by tile. */
    @Test
    void heatOfTheCoresWarmsTheAir() {
        FrontView view = Front.compile(InventedVehicle.diesel()).settle(ROAD);
        assertThat(view.settled()).isTrue();
        double heat = view.cores().stream().mapToDouble(CoreView::heat).sum();
        double gained = 1007.0 * view.massFlow() * (view.rearTemperature() - view.faceTemperature());
        assertThat(gained).isCloseTo(heat, within(1e-6 * heat));
        assertThat(core(view, CoreKind.CONDENSER).heat()).isCloseTo(6000.0, within(0.01));
        assertThat(core(view, CoreKind.CHARGE_AIR_COOLER).heat()).isCloseTo(2000.0, within(0.01));
        assertThat(view.underhoodTemperature()).isGreaterThan(view.rearTemperature());
    }

    /** What a technician expects: the cooler warms what stands behind it and nothing beside it. */
    @Test
    void aGearboxCoolerLowOnTheLeftWarmsOnlyTheTilesBehindIt() {
        Rectangle place = new Rectangle(0, 0.28, 0.22, 0.14);
        FrontView view = Front.compile(with(cooler(place))).settle(IDLE);
        CoreView radiator = core(view, CoreKind.RADIATOR);
        for (int t = 0; t < view.speed().size(); t++) {
            boolean behind = place.holds(
                    view.face().grid().middleX(t), view.face().grid().middleY(t));
            double rise = radiator.airIn().get(t) - view.faceTemperature();
            assertThat(rise > 1.0).as("tile " + t).isEqualTo(behind);
            assertThat(rise).as("tile " + t).isGreaterThan(-1e-9);
        }
        assertThat(core(view, CoreKind.GEARBOX_COOLER).heat()).isCloseTo(1000.0, within(0.01));
    }

    /** A condenser warms the radiator's air, so the radiator gives less. */
    @Test
    void aCondenserInFrontCostsTheRadiatorHeat() {
        PlacedCore condenser = InventedVehicle.diesel().stack().cores().get(0);
        double with = core(Front.compile(with(condenser)).settle(ROAD), CoreKind.RADIATOR)
                .heat();
        double without =
                core(Front.compile(with()).settle(ROAD), CoreKind.RADIATOR).heat();
        assertThat(with).isLessThan(0.95 * without);
    }

    /** Head pressure follows what the air can take: more fan, less pressure; more heat, more pressure. */
    @Test
    void condensingPressureFollowsTheAir() {
        Front front = Front.compile(InventedVehicle.diesel());
        double idle = front.settle(IDLE).condensingPressure().orElseThrow();
        FrontInputs slow = new FrontInputs(0.0, 308.15, 101325.0, 0.6, 368.15, 0.4, 1000.0, 5000.0, 0.0, 1500.0);
        FrontInputs hotter = new FrontInputs(0.0, 308.15, 101325.0, 1.0, 368.15, 0.4, 1000.0, 7000.0, 0.0, 1500.0);
        assertThat(front.settle(slow).condensingPressure().orElseThrow()).isGreaterThan(1.1 * idle);
        assertThat(front.settle(hotter).condensingPressure().orElseThrow()).isGreaterThan(1.1 * idle);
    }

    /** Still air, fan off, a condenser that must give heat: a named outcome with finite numbers. */
    @Test
    void heatThatNoAirTakesIsSaid() {
        FrontInputs still = new FrontInputs(0.0, 318.15, 101325.0, 0.0, 378.15, 0.4, 3000.0, 9000.0, 3000.0, 5000.0);
        FrontView view = Front.compile(InventedVehicle.diesel()).settle(still);
        assertThat(view.settled()).isFalse();
        assertThat(view.speed()).allMatch(Double::isFinite);
        assertThat(view.rearTemperature()).isFinite();
        view.cores().forEach(c -> assertThat(c.heat()).isFinite());
    }
}
