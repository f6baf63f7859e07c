/* @TITLE@; see gateway.h. The engine below is the same for every sheet, the tables are those of this one. */
#include "gateway.h"

#define COUNTED 1000000000 /* counters of looks stop here */

/* Where a number lies in the payload, taken as a word of eight bytes with the first byte lowest. */
typedef struct {
    uint8_t big_endian;
    uint8_t shift; /* bits below it; of a big-endian one in the word with its bytes in reverse */
    uint8_t bits;
    uint8_t is_signed;
    uint8_t last_byte;
} field;

typedef struct {
    int64_t low;
    int64_t high;
} range;

/* A multiplexor that must have a value in one of some ranges. */
typedef struct {
    field at;
    int32_t first_range;
    int32_t ranges;
} condition;

/* A raw value of the source and what it becomes. */
typedef struct {
    int64_t from;
    int64_t to;
} row;

#define REST_SCALED 0
#define REST_VALUE 1
#define REST_NOTHING 2

/* What a signal becomes: rows first, then (raw * numerator + offset) / denominator, or one value, or nothing. */
typedef struct {
    uint16_t incoming;
    field source;
    int32_t first_condition;
    int32_t conditions;
    uint64_t exponent; /* of a floating-point number: all ones is no number */
    int32_t first_row;
    int32_t rows;
    uint8_t rest;
    int64_t otherwise;
    int64_t low; /* limits of the source; what lies outside counts as not come */
    int64_t high;
    int64_t numerator;
    int64_t offset;
    int64_t denominator;
    int64_t target_low;
    int64_t target_high;
    uint16_t outgoing;
    field target;
    int32_t time_out; /* looks */
    int32_t hold;     /* frames */
    int64_t safe;
} line;

typedef struct {
    uint8_t used;
    field at;
    int32_t first;
    int32_t last;
    int32_t step;
} counter;

#define GUARD_NONE 0
#define GUARD_CRC 1
#define GUARD_CRC_REFLECTED 2
#define GUARD_XOR 3
#define GUARD_SUM 4

/* A checksum: octets before, bytes of the payload, octets behind, all in OCTETS one after the other. */
typedef struct {
    uint8_t kind;
    field at;
    uint8_t bits;
    uint32_t generator; /* at the top of the register; reflected: mirrored at its bottom */
    uint32_t start;
    uint32_t inverted;
    int32_t first_octet;
    uint8_t before;
    uint8_t bytes;
    uint8_t after;
    uint8_t last_byte; /* a frame must reach so far */
} guard;

typedef struct {
    uint8_t network;
    uint32_t id;
    uint8_t extended;
    counter counts;
    guard checks;
} incoming;

typedef struct {
    uint8_t network;
    uint32_t id;
    uint8_t extended;
    uint8_t length;
    int32_t every;     /* looks */
    int32_t on_change; /* looks; 0 for not at all */
    uint64_t fixed;    /* word before anything is put in */
    counter counts;
    guard checks;
} outgoing;

@TABLES@
static uint64_t reversed(uint64_t word)
{
    uint64_t out = 0;
    int32_t i;
    for (i = 0; i < 8; i++) {
        out = (out << 8) | (word & 0xFFu);
        word >>= 8;
    }
    return out;
}

static uint64_t word_of(const uint8_t *data, uint8_t length)
{
    uint64_t word = 0;
    int32_t i;
    for (i = 0; i < length; i++) {
        word |= (uint64_t)data[i] << (8 * i);
    }
    return word;
}

static void bytes_of(uint64_t word, uint8_t *data, uint8_t length)
{
    int32_t i;
    for (i = 0; i < length; i++) {
        data[i] = (uint8_t)((word >> (8 * i)) & 0xFFu);
    }
}

static uint64_t mask_of(const field *f)
{
    return UINT64_MAX >> (64 - f->bits);
}

/* Two's complement without leaning on what a conversion of the compiler does. */
static int64_t signed_of(uint64_t bits)
{
    return bits <= (uint64_t)INT64_MAX ? (int64_t)bits : -(int64_t)(UINT64_MAX - bits) - 1;
}

static int64_t raw_of(const field *f, uint64_t word)
{
    uint64_t bits = ((f->big_endian ? reversed(word) : word) >> f->shift) & mask_of(f);
    if (f->is_signed) {
        uint64_t sign = (uint64_t)1 << (f->bits - 1);
        bits = (bits ^ sign) - sign;
    }
    return signed_of(bits);
}

static uint64_t put(const field *f, uint64_t word, int64_t raw)
{
    uint64_t hole = mask_of(f) << f->shift;
    uint64_t value = ((uint64_t)raw & mask_of(f)) << f->shift;
    return f->big_endian ? (word & ~reversed(hole)) | reversed(value) : (word & ~hole) | value;
}

static int32_t counted(int32_t looks)
{
    return looks < COUNTED ? looks + 1 : COUNTED;
}

/* Checksums. */

static uint32_t add_octet(const guard *c, uint32_t reg, uint8_t octet)
{
    int32_t bit;
    switch (c->kind) {
    case GUARD_CRC:
        reg ^= (uint32_t)octet << 24;
        for (bit = 0; bit < 8; bit++) {
            reg = (reg & 0x80000000u) != 0 ? (reg << 1) ^ c->generator : reg << 1;
        }
        return reg;
    case GUARD_CRC_REFLECTED:
        reg ^= octet;
        for (bit = 0; bit < 8; bit++) {
            reg = (reg & 1u) != 0 ? (reg >> 1) ^ c->generator : reg >> 1;
        }
        return reg;
    case GUARD_XOR:
        return reg ^ octet;
    default:
        return reg + octet;
    }
}

static uint32_t checksum(const guard *c, const uint8_t *data)
{
    const uint8_t *octet = &OCTETS[c->first_octet];
    uint32_t reg = c->start;
    int32_t i;
    for (i = 0; i < c->before; i++) {
        reg = add_octet(c, reg, *octet++);
    }
    for (i = 0; i < c->bytes; i++) {
        reg = add_octet(c, reg, data[*octet++]);
    }
    for (i = 0; i < c->after; i++) {
        reg = add_octet(c, reg, *octet++);
    }
    if (c->kind == GUARD_CRC) {
        reg >>= 32 - c->bits;
    }
    return (reg ^ c->inverted) & (UINT32_MAX >> (32 - c->bits));
}

/* Reception: the checksum first, so that a damaged frame does not move the counter. */

static uint8_t counts(const counter *c, gateway_source *s, uint64_t word, uint8_t length)
{
    int64_t value;
    if (c->at.last_byte >= length) {
        return 0;
    }
    value = raw_of(&c->at, word);
    if (value < c->first || value > c->last || (value - c->first) % c->step != 0 || value == s->last) {
        return 0;
    }
    s->last = (int32_t)value;
    return 1;
}

static uint8_t is_there(const line *l, uint64_t word, uint8_t length)
{
    int32_t i;
    int32_t k;
    for (i = 0; i < l->conditions; i++) {
        const condition *c = &CONDITIONS[l->first_condition + i];
        uint8_t holds = 0;
        if (c->at.last_byte >= length) {
            return 0;
        }
        for (k = 0; k < c->ranges; k++) {
            const range *r = &RANGES[c->first_range + k];
            int64_t raw = raw_of(&c->at, word);
            holds |= (uint8_t)(raw >= r->low && raw <= r->high);
        }
        if (!holds) {
            return 0;
        }
    }
    return l->source.last_byte < length
        && (l->exponent == 0 || ((uint64_t)raw_of(&l->source, word) & l->exponent) != l->exponent);
}

/* To the nearest, halves away from zero. */
static int64_t quotient(int64_t n, int64_t d)
{
    int64_t q = n / d;
    int64_t rest = n % d; /* has the sign of n */
    if (rest > 0 && rest >= d - rest) {
        return q + 1;
    }
    return rest < 0 && -rest >= d + rest ? q - 1 : q;
}

static int64_t scaled(const line *l, int64_t raw)
{
    int64_t to = quotient(raw * l->numerator + l->offset, l->denominator);
    to = to < l->target_high ? to : l->target_high;
    return to > l->target_low ? to : l->target_low;
}

static void take(gateway_line *s, int64_t translated)
{
    s->came = 1;
    s->next = translated;
}

static void translate(const line *l, gateway_line *s, int64_t raw)
{
    int32_t i;
    for (i = 0; i < l->rows; i++) {
        if (ROWS[l->first_row + i].from == raw) {
            take(s, ROWS[l->first_row + i].to);
            return;
        }
    }
    if (l->rest == REST_VALUE) {
        take(s, l->otherwise);
    } else if (l->rest == REST_SCALED && raw >= l->low && raw <= l->high) {
        take(s, scaled(l, raw));
    }
}

uint8_t gateway_receive(
    gateway_state *g, uint8_t network, uint32_t id, uint8_t extended, const uint8_t *data, uint8_t length)
{
    int32_t i;
    int32_t k;
    if (length > 8) {
        return GATEWAY_UNKNOWN;
    }
    for (i = 0; i < GATEWAY_INCOMING; i++) {
        const incoming *m = &INCOMING[i];
        if (m->network == network && m->id == id && m->extended == extended) {
            uint64_t word = word_of(data, length);
            const guard *c = &m->checks;
            if (c->kind != GUARD_NONE
                && (c->last_byte >= length || raw_of(&c->at, word) != (int64_t)checksum(c, data))) {
                return GATEWAY_WRONG_CHECKSUM;
            }
            if (m->counts.used && !counts(&m->counts, &g->sources[i], word, length)) {
                return GATEWAY_WRONG_COUNTER;
            }
            for (k = 0; k < GATEWAY_LINES; k++) {
                if (LINES[k].incoming == i && is_there(&LINES[k], word, length)) {
                    translate(&LINES[k], &g->lines[k], raw_of(&LINES[k].source, word));
                }
            }
            return GATEWAY_TAKEN;
        }
    }
    return GATEWAY_UNKNOWN;
}

/* A look. */

#define CONTENT_SAFE 0
#define CONTENT_LIVE 1
#define CONTENT_HELD 2

static uint8_t content(const line *l, const gateway_line *s)
{
    if (s->age < 0 || (s->age >= l->time_out && s->held == 0)) {
        return CONTENT_SAFE;
    }
    return s->age < l->time_out ? CONTENT_LIVE : CONTENT_HELD;
}

static void send_target(gateway_state *g, int32_t i, uint64_t word, gateway_send send, void *context)
{
    const outgoing *m = &OUTGOING[i];
    gateway_target *t = &g->targets[i];
    uint8_t data[8] = {0, 0, 0, 0, 0, 0, 0, 0};
    int32_t k;
    t->since = 0;
    t->last = word;
    for (k = 0; k < GATEWAY_LINES; k++) {
        if (LINES[k].outgoing == i && content(&LINES[k], &g->lines[k]) == CONTENT_HELD) {
            g->lines[k].held--;
        }
    }
    if (m->counts.used) {
        word = put(&m->counts.at, word, t->count);
        t->count = t->count + m->counts.step > m->counts.last ? m->counts.first : t->count + m->counts.step;
    }
    bytes_of(word, data, m->length);
    if (m->checks.kind != GUARD_NONE) {
        bytes_of(put(&m->checks.at, word, (int64_t)checksum(&m->checks, data)), data, m->length);
    }
    send(context, m->network, m->id, m->extended, data, m->length);
}

void gateway_look(gateway_state *g, gateway_send send, void *context)
{
    int32_t i;
    int32_t k;
    for (k = 0; k < GATEWAY_LINES; k++) {
        gateway_line *s = &g->lines[k];
        if (s->came) {
            s->came = 0;
            s->value = s->next;
            s->age = 0;
            s->held = LINES[k].hold;
        } else if (s->age >= 0) {
            s->age = counted(s->age);
        }
    }
    for (i = 0; i < GATEWAY_OUTGOING; i++) {
        const outgoing *m = &OUTGOING[i];
        gateway_target *t = &g->targets[i];
        uint64_t word = m->fixed;
        uint8_t changed;
        t->since = counted(t->since);
        for (k = 0; k < GATEWAY_LINES; k++) {
            if (LINES[k].outgoing == i) {
                uint8_t safe = content(&LINES[k], &g->lines[k]) == CONTENT_SAFE;
                word = put(&LINES[k].target, word, safe ? LINES[k].safe : g->lines[k].value);
            }
        }
        changed = m->on_change > 0 && t->since >= m->on_change && word != t->last;
        if (t->since >= m->every || changed) {
            send_target(g, i, word, send, context);
        }
    }
}

void gateway_start(gateway_state *g)
{
    int32_t i;
    for (i = 0; i < GATEWAY_LINES; i++) {
        g->lines[i].value = 0;
        g->lines[i].next = 0;
        g->lines[i].age = -1;
        g->lines[i].held = 0;
        g->lines[i].came = 0;
    }
    for (i = 0; i < GATEWAY_INCOMING; i++) {
        g->sources[i].last = -1;
    }
    for (i = 0; i < GATEWAY_OUTGOING; i++) {
        g->targets[i].last = 0;
        g->targets[i].since = OUTGOING[i].every; /* due at the first look */
        g->targets[i].count = OUTGOING[i].counts.first;
    }
}
