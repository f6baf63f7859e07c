"""Decodes random payloads of every message of DBC files with canmatrix and prints a digest of the raw values.

Words: number of payloads a message, then files. A line out: file number, identifier as in the file, length, name of the
signal, factor, offset, and the digest, or the word 'beyond' for a signal that does not lie inside its message.
"""
import logging
import sys
import warnings

warnings.simplefilter("ignore")
logging.disable(logging.CRITICAL)
import canmatrix.formats  # noqa: E402

MASK = (1 << 64) - 1
NOT_THERE = 0x5555
PRIME = 1099511628211


def payloads(seed, length, count):
    """splitmix64, eight bytes a number, the lowest first."""
    numbers = (length + 7) // 8
    state = seed
    for _ in range(count):
        data = b""
        for _ in range(numbers):
            state = (state + 0x9E3779B97F4A7C15) & MASK
            z = ((state ^ (state >> 30)) * 0xBF58476D1CE4E5B9) & MASK
            z = ((z ^ (z >> 27)) * 0x94D049BB133111EB) & MASK
            data += (z ^ (z >> 31)).to_bytes(8, "little")
        yield data[:length]


def inside(signal, frame):
    return signal.start_bit >= 0 and signal.start_bit + signal.size <= 8 * frame.size


def digests(frame, seed, count):
    signals = [s for s in frame.signals if inside(s, frame)]
    sums = [0] * len(signals)
    multiplexed = frame.is_multiplexed
    for data in payloads(seed, frame.size, count):
        little, big = frame.bytes_to_bitstrings(data)
        raw = frame.bitstring_to_signal_list(signals, big, little, 8 * frame.size)
        there = frame.decode(data) if multiplexed else None
        for i, value in enumerate(raw):
            seen = (value + 1) & MASK if there is None or signals[i].name in there else NOT_THERE
            sums[i] = (sums[i] * PRIME + seen) & MASK
    return dict(zip(map(id, signals), sums))


def main():
    count = int(sys.argv[1])
    for number, path in enumerate(sys.argv[2:]):
        matrix = canmatrix.formats.loadp_flat(path, dbcImportEncoding="utf-8", dbcImportCommentEncoding="utf-8")
        for frame in matrix.frames:
            identifier = frame.arbitration_id.id | (0x80000000 if frame.arbitration_id.extended else 0)
            found = digests(frame, identifier, count) if frame.size else {}
            for s in frame.signals:
                print(number, identifier, frame.size, s.name, float(s.factor), float(s.offset),
                      found.get(id(s), "beyond"), sep="\t")


main()
