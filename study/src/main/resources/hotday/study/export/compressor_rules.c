/* @TITLE@: when the clutch of the compressor closes; see compressor_rules.h. Steps are those of docs/controller.md. */
#include "compressor_rules.h"

/* The limits: temperatures in 0.1 degC, pressures in kPa absolute, engine speed in rpm, load in 0.01 %, ticks of 0.1 s. */
@LIMITS@
#define COUNTED 1000000
#define LONG_AGO 100000

/* Rules that are stronger than the least time on. */
#define STRONGER                                                                                                       \
    (1u << HOLD_TIMEOUT | 1u << HOLD_ENGINE | 1u << HOLD_START | 1u << HOLD_SPEED | 1u << HOLD_HIGH | 1u << HOLD_LOW)

static int32_t counted(int32_t ticks)
{
    return ticks < COUNTED ? ticks + 1 : COUNTED;
}

static uint8_t above(uint8_t before, int32_t x, int32_t from, int32_t until)
{
    return before ? x > until : x >= from;
}

static uint8_t below(uint8_t before, int32_t x, int32_t from, int32_t until)
{
    return before ? x < until : x <= from;
}

static uint32_t bit(uint8_t stands, uint8_t hold)
{
    return stands ? (uint32_t)1 << hold : 0u;
}

/* 2; true while the start delay runs */
static uint8_t engine(compressor_state *s, const compressor_inputs *in)
{
    if (in->run && !s->ran) {
        s->start_ticks = START_DELAY;
    }
    s->ran = in->run;
    if (in->run && s->start_ticks > 0) {
        s->start_ticks--;
        return 1;
    }
    return 0;
}

static void latches(compressor_state *s, const compressor_inputs *in)
{
    uint8_t blanked = s->engaged && s->switch_ticks < SUCTION_BLANKING;
    s->slow = below(s->slow, in->engine_speed, SPEED_FROM, SPEED_UNTIL);
    s->freezing = FREEZE_USED && below(s->freezing, in->evaporator, FREEZE_FROM, FREEZE_UNTIL);
    s->high = above(s->high, in->head_pressure, HIGH_FROM, HIGH_UNTIL);
    s->low = !blanked && below(s->low, in->suction_pressure, LOW_FROM, LOW_UNTIL);
    s->open = above(s->open, in->load, THROTTLE_FROM, THROTTLE_UNTIL);
    s->open_ticks = s->open ? counted(s->open_ticks) : 0;
    s->hot = in->coolant == COMPRESSOR_INVALID ? s->hot : above(s->hot, in->coolant, COOLANT_FROM, COOLANT_UNTIL);
}

/* 3; a bit for every rule that stands */
static uint32_t rules(const compressor_state *s, const compressor_inputs *in, uint8_t delayed)
{
    return bit(in->request_age < 0 || in->request_age >= REQUEST_TIMEOUT, HOLD_TIMEOUT)
        | bit(!in->request, HOLD_REQUEST) | bit(!in->run, HOLD_ENGINE) | bit(delayed, HOLD_START)
        | bit(s->slow, HOLD_SPEED) | bit(s->freezing, HOLD_FREEZE) | bit(s->high, HOLD_HIGH) | bit(s->low, HOLD_LOW)
        | bit(s->open && s->open_ticks <= THROTTLE_LONGEST, HOLD_THROTTLE) | bit(s->hot, HOLD_COOLANT)
        | bit(!s->engaged && s->switch_ticks < LEAST_OFF, HOLD_LEAST_OFF);
}

static void turn(compressor_state *s, uint8_t to)
{
    s->switch_ticks = to == s->engaged ? s->switch_ticks : 0;
    s->engaged = to;
}

/* 4 */
static void clutch(compressor_state *s, uint32_t standing)
{
    if (s->engaged) {
        turn(s, standing == 0 || ((standing & STRONGER) == 0 && s->switch_ticks < LEAST_ON));
    } else if (standing != 0) {
        s->lead_ticks = 0;
    } else if (s->lead_ticks < LEAD) {
        s->lead_ticks++;
    } else {
        s->lead_ticks = 0;
        turn(s, 1);
    }
}

static uint8_t first(uint32_t standing)
{
    uint8_t hold = HOLD_TIMEOUT;
    if (standing == 0) {
        return HOLD_LEAD;
    }
    while ((standing & 1u) == 0) {
        standing >>= 1;
        hold++;
    }
    return hold;
}

void compressor_start(compressor_state *s)
{
    static const compressor_state nothing;
    *s = nothing;
    s->slow = 1;
    s->switch_ticks = LONG_AGO;
    s->hold = HOLD_TIMEOUT;
}

uint8_t compressor_step(compressor_state *s, const compressor_inputs *in)
{
    uint8_t delayed;
    uint32_t standing;
    s->switch_ticks = counted(s->switch_ticks); /* 1 */
    delayed = engine(s, in);
    latches(s, in);
    standing = rules(s, in, delayed);
    clutch(s, standing);
    s->announced = in->run && (s->engaged || s->lead_ticks > 0 || s->switch_ticks < TRAIL); /* 5 */
    s->hold = s->engaged ? HOLD_NONE : first(standing);
    return s->engaged;
}
