"""Decodes the frames of a file with canmatrix, once for every line on standard input, and answers with the sum of all values.

Words: a DBC file with one message, a file of payloads of eight bytes.
"""
import logging
import sys
import warnings

warnings.simplefilter("ignore")
logging.disable(logging.CRITICAL)
import canmatrix.formats  # noqa: E402

frame = canmatrix.formats.loadp_flat(sys.argv[1]).frames[0]
with open(sys.argv[2], "rb") as file:
    data = file.read()
payloads = [data[i : i + 8] for i in range(0, len(data), 8)]
print("ready", flush=True)
for _ in sys.stdin:
    total = 0.0
    for payload in payloads:
        for signal in frame.decode(payload).values():
            total += float(signal.phys_value)
    print(repr(total), flush=True)
