/*
 * @TITLE@
 *
 * The translation between networks in whole numbers, as docs/network.md of the program that wrote this file defines it
 * ("What the gateway does"). No floating point, no memory is asked for, nothing but <stdint.h>.
 *
 *   gateway_state g;
 *   gateway_start(&g);
 *   for every data frame that came:          gateway_receive(&g, network, id, extended, data, length);
 *   every GATEWAY_LOOK_NS, from the start on: gateway_look(&g, send, context);
 */
#ifndef GATEWAY_H
#define GATEWAY_H

#include <stdint.h>

/* From one look to the next, ns. */
#define GATEWAY_LOOK_NS @POLL@

/* Networks. */
@NETWORKS@
/* What became of a frame. */
#define GATEWAY_TAKEN 0
#define GATEWAY_UNKNOWN 1
#define GATEWAY_WRONG_CHECKSUM 2
#define GATEWAY_WRONG_COUNTER 3

#define GATEWAY_INCOMING @INCOMING@
#define GATEWAY_OUTGOING @OUTGOING@
#define GATEWAY_LINES @LINES@
#define GATEWAY_ROOM(n) ((n) > 0 ? (n) : 1)

/* What the gateway remembers. Fill it with gateway_start and leave it alone. */
typedef struct {
    int64_t value; /* raw value of the target, as it came last */
    int64_t next;  /* came since the last look */
    int32_t age;   /* looks since the value was taken; -1 before the first */
    int32_t held;  /* frames that may still carry it once it is missing */
    uint8_t came;
} gateway_line;

typedef struct {
    int32_t last; /* counter of the last frame that counted; -1 before the first */
} gateway_source;

typedef struct {
    uint64_t last; /* content sent last, without counter and checksum */
    int32_t since; /* looks since then */
    int32_t count; /* counter of the next frame */
} gateway_target;

typedef struct {
    gateway_line lines[GATEWAY_ROOM(GATEWAY_LINES)];
    gateway_source sources[GATEWAY_ROOM(GATEWAY_INCOMING)];
    gateway_target targets[GATEWAY_ROOM(GATEWAY_OUTGOING)];
} gateway_state;

/* Takes a frame that leaves; data are valid during the call only. */
typedef void (*gateway_send)(
    void *context, uint8_t network, uint32_t id, uint8_t extended, const uint8_t *data, uint8_t length);

void gateway_start(gateway_state *g);

/* A data frame came. Returns what became of it. Frames of more than eight bytes are unknown. */
uint8_t gateway_receive(
    gateway_state *g, uint8_t network, uint32_t id, uint8_t extended, const uint8_t *data, uint8_t length);

/* One round: takes over what came since the last one, and sends what is due. */
void gateway_look(gateway_state *g, gateway_send send, void *context);

#endif
