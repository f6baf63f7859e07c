/*
 * @TITLE@: the fan-demand controller.
 *
 * Whole numbers of 32 bits, ten ticks a second, as docs/controller.md of the program that wrote this file defines them
 * ("The fan-demand controller, exactly"). No floating point, no memory is asked for, nothing but <stdint.h>.
 */
#ifndef FAN_CONTROLLER_H
#define FAN_CONTROLLER_H

#include <stdint.h>

#define FAN_INVALID (-9999) /* a coolant temperature that cannot be right */

/* What the controller sees at a tick. */
typedef struct {
    uint8_t run;           /* engine running */
    int32_t coolant;       /* 0.1 degC, or FAN_INVALID */
    int32_t gearbox;       /* 0.1 degC */
    int32_t head_pressure; /* kPa absolute */
    uint8_t ac;            /* compressor asked for and allowed */
    int32_t speed;         /* 0.1 km/h */
    int32_t battery;       /* mV */
@CHARGE_AIR@    int32_t charge_air;    /* 0.1 degC, behind its cooler */
} fan_inputs;

#define FAN_SOURCE_NONE 0
#define FAN_SOURCE_COOLANT 1
#define FAN_SOURCE_GEARBOX 2
#define FAN_SOURCE_AC 3
#define FAN_SOURCE_FLOOR 4
#define FAN_SOURCE_AFTER_RUN 5
@CHARGE_AIR@#define FAN_SOURCE_CHARGE_AIR 6

/* What it remembers, and what it says. Fill it with fan_start and leave it alone. */
typedef struct {
    uint8_t ran;
    int32_t start_ticks;
    int32_t held; /* coolant temperature that counts */
    int32_t bad_ticks;
    int32_t good_ticks;
    uint8_t fault;
    uint8_t coolant_latch;
    uint8_t gearbox_latch;
    uint8_t ac_latch;
@CHARGE_AIR@    uint8_t charge_air_latch;
    uint8_t slow; /* counts as at rest */
    uint8_t after_run;
    int32_t after_run_ticks;
    int32_t low_battery_ticks;
    uint8_t on;
    int32_t on_ticks;
    int32_t off_ticks;
    int32_t output; /* 0.01 %, what the fan is told */
    int32_t want;   /* 0.01 %, before least times and slew */
    uint8_t source; /* what decides */
} fan_state;

void fan_start(fan_state *s);

/* One tick, every 0.1 s. Returns the output, 0 to 10000 in 0.01 %. */
int32_t fan_step(fan_state *s, const fan_inputs *in);

#endif
