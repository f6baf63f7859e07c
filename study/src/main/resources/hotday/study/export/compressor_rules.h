/*
 * @TITLE@: when the clutch of the compressor closes.
 *
 * Whole numbers of 32 bits, ten ticks a second, as docs/controller.md of the program that wrote this file defines them
 * ("The compressor, exactly"). No floating point, no memory is asked for, nothing but <stdint.h>.
 */
#ifndef COMPRESSOR_RULES_H
#define COMPRESSOR_RULES_H

#include <stdint.h>

#define COMPRESSOR_INVALID (-9999) /* a temperature that cannot be right */

/* What the rules see at a tick. */
typedef struct {
    uint8_t request;          /* compressor asked for in the last message */
    int32_t request_age;      /* ticks since that message came, 0 in the tick it comes */
    uint8_t run;              /* engine running */
    int32_t engine_speed;     /* rpm */
    int32_t evaporator;       /* 0.1 degC, or COMPRESSOR_INVALID */
    int32_t head_pressure;    /* kPa absolute */
    int32_t suction_pressure; /* kPa absolute */
    int32_t load;             /* load or pedal, 0.01 % */
    int32_t coolant;          /* 0.1 degC, or COMPRESSOR_INVALID */
} compressor_inputs;

/* What keeps the clutch open, the first that stands. */
#define HOLD_TIMEOUT 0
#define HOLD_REQUEST 1
#define HOLD_ENGINE 2
#define HOLD_START 3
#define HOLD_SPEED 4
#define HOLD_FREEZE 5
#define HOLD_HIGH 6
#define HOLD_LOW 7
#define HOLD_THROTTLE 8
#define HOLD_COOLANT 9
#define HOLD_LEAST_OFF 10
#define HOLD_LEAD 11
#define HOLD_NONE 12

/* What they remember, and what they say. Fill it with compressor_start and leave it alone. */
typedef struct {
    uint8_t ran;
    int32_t start_ticks;
    uint8_t slow;
    uint8_t freezing;
    uint8_t high;
    uint8_t low;
    uint8_t open;
    int32_t open_ticks;
    uint8_t hot;
    uint8_t engaged; /* clutch closed */
    int32_t switch_ticks;
    int32_t lead_ticks;
    uint8_t announced; /* for the idle governor */
    uint8_t hold;
} compressor_state;

void compressor_start(compressor_state *s);

/* One tick, every 0.1 s. Returns 1 while the clutch is closed. */
uint8_t compressor_step(compressor_state *s, const compressor_inputs *in);

#endif
