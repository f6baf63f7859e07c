/* @TITLE@: the fan-demand controller; see fan_controller.h. Numbers of the steps are those of docs/controller.md. */
#include "fan_controller.h"

/* The schedule: temperatures in 0.1 degC, pressures in kPa absolute, speeds in 0.1 km/h, demands in 0.01 %, ticks of 0.1 s. */
@SCHEDULE@
#define COUNTED 1000000
#define LONG_AGO 100000

/* Straight between its points, held beyond its ends. */
static int32_t curve(const int32_t (*points)[2], int32_t last, int32_t x)
{
    int32_t i = 0;
    if (x <= points[0][0]) {
        return points[0][1];
    }
    if (x >= points[last][0]) {
        return points[last][1];
    }
    while (x >= points[i + 1][0]) {
        i++;
    }
    return points[i][1] + (points[i + 1][1] - points[i][1]) * (x - points[i][0]) / (points[i + 1][0] - points[i][0]);
}

#define CURVE(points, x) curve((points), (int32_t)(sizeof(points) / sizeof((points)[0])) - 1, (x))

static int32_t counted(int32_t ticks)
{
    return ticks < COUNTED ? ticks + 1 : COUNTED;
}

static uint8_t latched(uint8_t before, int32_t x, int32_t on, int32_t off)
{
    return before ? x > off : x >= on;
}

static void raise_to(fan_state *s, int32_t demand, uint8_t source)
{
    if (demand > s->want) {
        s->want = demand;
        s->source = source;
    }
}

/* 1 */
static void sensor(fan_state *s, const fan_inputs *in)
{
    if (in->coolant == FAN_INVALID) {
        s->bad_ticks = counted(s->bad_ticks);
        s->good_ticks = 0;
    } else {
        s->held = in->coolant;
        s->bad_ticks = 0;
        s->good_ticks = counted(s->good_ticks);
    }
    if (!s->fault && s->bad_ticks >= SENSOR_BAD) {
        s->fault = 1;
    } else if (s->fault && s->good_ticks >= SENSOR_GOOD) {
        s->fault = 0;
    }
}

/* 2; true in an inhibited tick */
static uint8_t engine(fan_state *s, const fan_inputs *in)
{
    if (in->run && !s->ran) {
        s->start_ticks = START_DELAY;
        s->after_run = 0;
    }
    if (!in->run && s->ran && s->held >= AFTER_RUN_BEGIN) {
        s->after_run = 1;
        s->after_run_ticks = 0;
        s->low_battery_ticks = 0;
    }
    if (in->run && s->start_ticks > 0) {
        s->start_ticks--;
        return 1;
    }
    return 0;
}

/* 3 */
static void curves(fan_state *s, const fan_inputs *in)
{
    int32_t coolant;
    s->coolant_latch = latched(s->coolant_latch, s->held, COOLANT_ON, COOLANT_OFF);
    s->gearbox_latch = latched(s->gearbox_latch, in->gearbox, GEARBOX_ON, GEARBOX_OFF);
    s->ac_latch = latched(s->ac_latch, in->head_pressure, AC_ON, AC_OFF) && in->ac;
@CHARGE_AIR@    s->charge_air_latch = latched(s->charge_air_latch, in->charge_air, CHARGE_AIR_ON, CHARGE_AIR_OFF);
    s->want = 0;
    s->source = FAN_SOURCE_NONE;
    coolant = s->coolant_latch ? CURVE(COOLANT, s->held) : 0;
    raise_to(s, s->fault ? SENSOR_DEMAND : coolant, FAN_SOURCE_COOLANT);
    raise_to(s, s->gearbox_latch ? CURVE(GEARBOX, in->gearbox) : 0, FAN_SOURCE_GEARBOX);
    raise_to(s, s->ac_latch ? CURVE(AC, in->head_pressure) : 0, FAN_SOURCE_AC);
@CHARGE_AIR@    raise_to(s, s->charge_air_latch ? CURVE(CHARGE_AIR, in->charge_air) : 0, FAN_SOURCE_CHARGE_AIR);
}

/* 4 */
static void allowance(fan_state *s, const fan_inputs *in)
{
    if (s->held < ALLOWANCE_HOTTEST && !s->fault) {
        int32_t left = s->want - CURVE(ALLOWANCE, in->speed);
        s->want = left > 0 ? left : 0;
    }
}

/* 5 */
static void floor_at_rest(fan_state *s, const fan_inputs *in)
{
    s->slow = s->slow ? in->speed <= FLOOR_ABOVE : in->speed < FLOOR_BELOW;
    if (s->slow && s->held >= FLOOR_COOLANT) {
        raise_to(s, FLOOR_DEMAND, FAN_SOURCE_FLOOR);
    }
    if (s->want == 0) {
        s->source = FAN_SOURCE_NONE;
    }
}

/* In place of 3 to 5 while the engine stands. */
static void engine_off(fan_state *s, const fan_inputs *in)
{
    s->coolant_latch = 0;
    s->gearbox_latch = 0;
    s->ac_latch = 0;
@CHARGE_AIR@    s->charge_air_latch = 0;
    s->slow = 0;
    if (s->after_run) {
        s->after_run_ticks = counted(s->after_run_ticks);
        s->low_battery_ticks = in->battery < AFTER_RUN_BATTERY ? counted(s->low_battery_ticks) : 0;
        s->after_run = s->held > AFTER_RUN_END && s->after_run_ticks < AFTER_RUN_LONGEST
            && s->low_battery_ticks < AFTER_RUN_LOW_TICKS;
    }
    s->want = s->after_run ? CURVE(AFTER_RUN, s->held) : 0;
    s->source = s->after_run ? FAN_SOURCE_AFTER_RUN : FAN_SOURCE_NONE;
}

/* 6 */
static void on_and_off(fan_state *s, uint8_t forced)
{
    if (s->on) {
        s->on_ticks = counted(s->on_ticks);
        if (forced || (s->want < DEMAND_OFF && s->on_ticks >= LEAST_ON)) {
            s->on = 0;
            s->off_ticks = 0;
        }
    } else {
        s->off_ticks = counted(s->off_ticks);
        if (!forced && s->want >= DEMAND_ON && s->off_ticks >= LEAST_OFF) {
            s->on = 1;
            s->on_ticks = 0;
        }
    }
}

/* 7 */
static void slew(fan_state *s, const fan_inputs *in)
{
    int32_t target = s->on ? (s->want > LEAST_OUTPUT ? s->want : LEAST_OUTPUT) : 0;
    int32_t up = in->run && in->speed < SLEW_REST_SPEED ? SLEW_UP_AT_REST : SLEW_UP;
    int32_t highest = s->output + up;
    int32_t lowest = s->output - SLEW_DOWN;
    int32_t output = highest < target ? highest : target;
    s->output = output > lowest ? output : lowest;
    if (!s->on && s->output < SLEW_STOP) {
        s->output = 0;
    }
}

void fan_start(fan_state *s)
{
    static const fan_state nothing;
    *s = nothing;
    s->held = SENSOR_FIRST;
    s->off_ticks = LONG_AGO;
    s->source = FAN_SOURCE_NONE;
}

int32_t fan_step(fan_state *s, const fan_inputs *in)
{
    uint8_t inhibited;
    sensor(s, in);
    inhibited = engine(s, in);
    if (in->run) {
        curves(s, in);
        allowance(s, in);
        floor_at_rest(s, in);
        s->want = inhibited ? 0 : s->want;
    } else {
        engine_off(s, in);
    }
    on_and_off(s, inhibited || (!in->run && !s->after_run));
    slew(s, in);
    s->ran = in->run;
    return s->output;
}
