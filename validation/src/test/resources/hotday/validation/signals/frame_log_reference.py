"""Decodes a recording of frames with canmatrix and prints name, count, least, most and sum of every signal.

Arguments: kind (candump or rows), description (DBC), recording. Messages of 29 bits stand for their parameter group.
"""
import csv
import gzip
import sys

import canmatrix
import canmatrix.formats


def candump(path):
    with (gzip.open if path.endswith(".gz") else open)(path, "rt") as lines:
        for line in lines:
            _, bus, frame = line.split()
            identifier, data = frame.split("#")
            yield bus, int(identifier, 16), len(identifier) == 8, bytes.fromhex(data)


def rows(path):
    with open(path, newline="") as text:
        for row in csv.DictReader(text):
            data = bytes(int(row["D%d" % (i + 1)], 16) for i in range(int(row["LEN"])))
            yield row["Bus"], int(row["ID"], 16), row["Extended"] == "true", data


kind, description, recording = sys.argv[1:4]
matrix = list(canmatrix.formats.loadp(description).values())[0]
sums = {}
for bus, identifier, extended, data in {"candump": candump, "rows": rows}[kind](recording):
    arbitration = canmatrix.ArbitrationId(identifier, extended)
    frame = matrix.frame_by_pgn(arbitration.pgn) if extended else matrix.frame_by_id(arbitration)
    if frame is None:
        continue
    sender = "@%02X" % (identifier & 0xFF) if extended else ""
    for name, value in frame.decode(data).items():
        key = bus + ":" + frame.name + "." + name + sender
        value = float(value.phys_value)
        count, least, most, total = sums.get(key, (0, value, value, 0.0))
        sums[key] = count + 1, min(least, value), max(most, value), total + value
for key in sums:
    print("\t".join([key] + [repr(v) for v in sums[key]]))
