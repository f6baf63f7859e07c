/*
 * Runs test vectors: controller_test FILE (or standard input). Exit status 0 when all of them come out as written.
 *
 *   cc -std=c99 -Wall -Wextra -Werror fan_controller.c compressor_rules.c controller_test.c -o controller_test
 *   ./controller_test controller_vectors.txt
 *
 * A line a tick: "f" and the @INPUTS@ inputs of the fan controller, then output, want, source, on, fault; or "c" and the nine
 * inputs of the compressor's rules, then engaged, announced, hold.
 */
#include "compressor_rules.h"
#include "fan_controller.h"

#include <stdio.h>

static int fan(fan_state *s, const char *text)
{
@NO_CHARGE_AIR@    int in[7];
@CHARGE_AIR@    int in[8];
    int out[5];
    fan_inputs at;
    if (sscanf(
@NO_CHARGE_AIR@            text, "f %d %d %d %d %d %d %d %d %d %d %d %d", &in[0], &in[1], &in[2], &in[3], &in[4], &in[5], &in[6],
@NO_CHARGE_AIR@            &out[0], &out[1], &out[2], &out[3], &out[4])
@NO_CHARGE_AIR@        != 12) {
@CHARGE_AIR@            text, "f %d %d %d %d %d %d %d %d %d %d %d %d %d", &in[0], &in[1], &in[2], &in[3], &in[4], &in[5], &in[6],
@CHARGE_AIR@            &in[7], &out[0], &out[1], &out[2], &out[3], &out[4])
@CHARGE_AIR@        != 13) {
        return 0;
    }
    at.run = (uint8_t)in[0];
    at.coolant = in[1];
    at.gearbox = in[2];
    at.head_pressure = in[3];
    at.ac = (uint8_t)in[4];
    at.speed = in[5];
    at.battery = in[6];
@CHARGE_AIR@    at.charge_air = in[7];
    return fan_step(s, &at) == out[0] && s->want == out[1] && s->source == out[2] && s->on == out[3]
        && s->fault == out[4];
}

static int compressor(compressor_state *s, const char *text)
{
    int in[9];
    int out[3];
    compressor_inputs at;
    if (sscanf(
            text, "c %d %d %d %d %d %d %d %d %d %d %d %d", &in[0], &in[1], &in[2], &in[3], &in[4], &in[5], &in[6],
            &in[7], &in[8], &out[0], &out[1], &out[2])
        != 12) {
        return 0;
    }
    at.request = (uint8_t)in[0];
    at.request_age = in[1];
    at.run = (uint8_t)in[2];
    at.engine_speed = in[3];
    at.evaporator = in[4];
    at.head_pressure = in[5];
    at.suction_pressure = in[6];
    at.load = in[7];
    at.coolant = in[8];
    return compressor_step(s, &at) == out[0] && s->announced == out[1] && s->hold == out[2];
}

int main(int argc, char **argv)
{
    static fan_state fan_now;
    static compressor_state compressor_now;
    char text[256];
    unsigned long at = 0;
    FILE *in = argc > 1 ? fopen(argv[1], "r") : stdin;
    if (in == NULL) {
        fprintf(stderr, "cannot read %s\n", argv[1]);
        return 2;
    }
    fan_start(&fan_now);
    compressor_start(&compressor_now);
    while (fgets(text, (int)sizeof text, in) != NULL) {
        at++;
        if (!(text[0] == 'f' ? fan(&fan_now, text) : compressor(&compressor_now, text))) {
            fprintf(stderr, "line %lu does not come out as written: %s", at, text);
            return 1;
        }
    }
    if (at == 0) {
        fprintf(stderr, "no vectors\n");
        return 1;
    }
    printf("%lu lines as written\n", at);
    return 0;
}
