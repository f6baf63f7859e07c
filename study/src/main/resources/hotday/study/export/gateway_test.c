/*
 * Runs test vectors: gateway_test FILE (or standard input). Exit status 0 when all of them come out as written.
 *
 *   cc -std=c99 -Wall -Wextra -Werror gateway.c gateway_test.c -o gateway_test && ./gateway_test gateway_vectors.txt
 *
 * A line each: "r NETWORK ID EXTENDED DATA RESULT" for a frame that comes, "l" for a look, and behind it
 * "s NETWORK ID EXTENDED DATA" for every frame that must leave. ID and DATA are hexadecimal; no data are "-".
 */
#include "gateway.h"

#include <stdio.h>
#include <string.h>

typedef struct {
    unsigned network;
    unsigned id;
    unsigned extended;
    unsigned length;
    uint8_t data[64];
} frame;

static frame sent[GATEWAY_ROOM(GATEWAY_OUTGOING)];
static unsigned filled;
static unsigned seen;

static void keep(void *context, uint8_t network, uint32_t id, uint8_t extended, const uint8_t *data, uint8_t length)
{
    frame *f = &sent[filled++];
    (void)context;
    f->network = network;
    f->id = (unsigned)id;
    f->extended = extended;
    f->length = length;
    memcpy(f->data, data, length);
}

static int bytes(const char *text, frame *f)
{
    unsigned octet;
    f->length = 0;
    if (text[0] == '-') {
        return 1;
    }
    while (*text != '\0') {
        if (f->length == sizeof f->data || sscanf(text, "%2x", &octet) != 1 || text[1] == '\0') {
            return 0;
        }
        f->data[f->length++] = (uint8_t)octet;
        text += 2;
    }
    return 1;
}

static int same(const frame *a, const frame *b)
{
    return a->network == b->network && a->id == b->id && a->extended == b->extended && a->length == b->length
        && memcmp(a->data, b->data, a->length) == 0;
}

static int run(gateway_state *g, const char *text)
{
    frame f;
    char data[160];
    unsigned result;
    if (text[0] == 's') {
        return sscanf(text, "s %u %x %u %159s", &f.network, &f.id, &f.extended, data) == 4 && bytes(data, &f)
            && seen < filled && same(&f, &sent[seen++]);
    }
    if (seen != filled) {
        return 0;
    }
    if (text[0] == 'l') {
        filled = 0;
        seen = 0;
        gateway_look(g, keep, NULL);
        return 1;
    }
    return sscanf(text, "r %u %x %u %159s %u", &f.network, &f.id, &f.extended, data, &result) == 5 && bytes(data, &f)
        && gateway_receive(g, (uint8_t)f.network, f.id, (uint8_t)f.extended, f.data, (uint8_t)f.length) == result;
}

int main(int argc, char **argv)
{
    static gateway_state g;
    char text[256];
    unsigned long at = 0;
    FILE *in = argc > 1 ? fopen(argv[1], "r") : stdin;
    if (in == NULL) {
        fprintf(stderr, "cannot read %s\n", argv[1]);
        return 2;
    }
    gateway_start(&g);
    while (fgets(text, (int)sizeof text, in) != NULL) {
        at++;
        if (!run(&g, text)) {
            fprintf(stderr, "line %lu does not come out as written: %s", at, text);
            return 1;
        }
    }
    if (seen != filled || at == 0) {
        fprintf(stderr, "line %lu is the last, and not all of it has come\n", at);
        return 1;
    }
    printf("%lu lines as written\n", at);
    return 0;
}
