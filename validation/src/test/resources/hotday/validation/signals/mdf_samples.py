"""Writes small measurement files in the ASAM MDF 4 layout, and beside each what must come out of it as JSON.

    mdf_samples.py FOLDER             the family of small files
    mdf_samples.py FOLDER --big N     files of N million records and of N million CAN frames instead, to measure speed

The block layouts are from memory of the standard (ASAM MDF 4.1, column-oriented storage 4.2) and of its associated
standard for bus logging. Expected values are worked out from the raw values that are written; none is read back.

NAME.json:
    about, version, finalised, start_ns
    fault       the file is broken on purpose; groups and frames hold what is whole
    fault_block, fault_at   name and address of the block with the fault
    refused     no MDF 4 file, or nothing in it
    groups[]    name, bus, cycles, master {name, unit, sync, virtual, values[]} or null,
                channels[] {name, unit, comment, type, times[] in seconds or null, values[]}
                type: number, text, mixed (numbers and texts), bytes (hex), moment (ISO 8601)
                null as a value: marked as invalid
    frames[]    kind (data, remote, error), t in seconds, id, extended, bus, dlc, bytes (hex), fd, dir; in order of time
"""
import datetime
import json
import os
import random
import struct
import sys
import zlib
from dataclasses import dataclass, field

UINT_LE, UINT_BE, INT_LE, INT_BE, REAL_LE, REAL_BE, LATIN_1, UTF_8, UTF_16_LE, UTF_16_BE, BYTES = range(11)
CANOPEN_DATE, CANOPEN_TIME = 13, 14
FIXED, VLSD, MASTER, VIRTUAL_MASTER, SYNC, MLSD, VIRTUAL = range(7)
TIME, ANGLE = 1, 2
ONE_TO_ONE, LINEAR, RATIONAL, ALGEBRAIC, INTERPOLATED, TABLE, RANGE_TO_VALUE = range(7)
VALUE_TO_TEXT, RANGE_TO_TEXT, TEXT_TO_VALUE, TEXT_TO_TEXT = range(7, 11)
ENCODINGS = {LATIN_1: "latin-1", UTF_8: "utf-8", UTF_16_LE: "utf-16-le", UTF_16_BE: "utf-16-be"}
DEFLATED, TRANSPOSED = 0, 1
ALL_INVALID, INVALID_BIT, BUS_EVENT_CHANNEL = 0x1, 0x2, 0x400
VLSD_GROUP, BUS_EVENT, PLAIN_BUS_EVENT, REMOTE_MASTER = 0x1, 0x2, 0x4, 0x8
START = 1_700_000_000_000_000_000
NAMESPACE = ' xmlns="http://www.asam.net/mdf/v4"'
FD_LENGTHS = [0, 1, 2, 3, 4, 5, 6, 7, 8, 12, 16, 20, 24, 32, 48, 64]


class Block:
    """Any block behind the identification: links are blocks, None, or a bare address."""

    def __init__(self, name, links, data):
        self.name, self.links, self.data = name, list(links), data
        self.length = None      # as stated, if it lies
        self.at = None

    def size(self):
        return 24 + 8 * len(self.links) + len(self.data)

    def header(self):
        stated = self.size() if self.length is None else self.length
        links = [link.at if isinstance(link, Block) else link or 0 for link in self.links]
        return struct.pack("<2s2s4xQQ%dQ" % len(links), b"##", self.name.encode(), stated, len(links), *links)


class Stream:
    """Content of a block that is too long to be held: pieces made while writing."""

    def __init__(self, length, pieces):
        self.length, self.pieces = length, pieces

    def __len__(self):
        return self.length


class Store:
    """Values of variable length: as the content of an SD block, or as records of a channel group of their own."""

    def __init__(self):
        self.values, self.length = [], 0

    def add(self, value):
        at = self.length
        self.values.append(struct.pack("<I", len(value)) + value)
        self.length += 4 + len(value)
        return at

    def stream(self):
        return b"".join(self.values)


@dataclass(eq=False)
class Channel:
    name: str
    kind: int
    byte: int
    bits: int
    bit: int = 0
    role: int = FIXED
    sync: int = 0
    unit: str = ""
    unit_block: object = None   # False: the unit is that of the conversion
    comment: str = ""
    comment_block: Block = None
    conversion: Block = None
    physical: object = None     # raw to what must come out
    type: str = None
    invalid: int = None         # bit among the invalidation bits
    flags: int = 0
    store: Store = None
    members: list = field(default_factory=list)
    shown: bool = True
    attachments: list = field(default_factory=list)
    block: Block = None

    def what(self):
        if self.type:
            return self.type
        return "bytes" if self.kind == BYTES else "text" if self.kind in ENCODINGS else "number"

    def expected(self, raw):
        if raw is None or self.flags & ALL_INVALID:
            return None
        value = self.physical(raw) if self.physical else raw
        return value.hex() if isinstance(value, bytes) else value

    def put(self, record, raw):
        if self.role in (VIRTUAL, VIRTUAL_MASTER):
            return
        if self.role == VLSD:
            at = raw if isinstance(raw, int) else self.store.add(self.encoded(raw))
            struct.pack_into("<Q", record, self.byte, at)
        elif self.kind <= INT_BE:
            order = "big" if self.kind in (UINT_BE, INT_BE) else "little"
            end = self.byte + (self.bit + self.bits + 7) // 8
            word = int.from_bytes(record[self.byte:end], order) | (raw & (1 << self.bits) - 1) << self.bit
            record[self.byte:end] = word.to_bytes(end - self.byte, order)
        elif self.kind <= REAL_BE:
            form = (">" if self.kind == REAL_BE else "<") + {16: "e", 32: "f", 64: "d"}[self.bits]
            struct.pack_into(form, record, self.byte, raw)
        else:
            value = self.encoded(raw)
            assert len(value) <= self.bits // 8, self.name
            record[self.byte:self.byte + len(value)] = value

    def encoded(self, raw):
        return raw.encode(ENCODINGS[self.kind]) if self.kind in ENCODINGS else raw


class Group:
    """A channel group with its records; record identifiers already in front."""

    def __init__(self, block, records, expected):
        self.block, self.records, self.expected = block, records, expected

    def bytes(self):
        return b"".join(self.records)


class Mdf:
    def __init__(self, name, about, version=410, unfinished=0):
        self.name, self.version, self.unfinished = name, version, unfinished
        self.expected = {"about": about, "version": version, "finalised": not unfinished, "start_ns": START,
                         "fault": False,
                         "groups": [], "frames": []}
        self.blocks, self.data_groups = [], []
        self.head = self.block("HD", [None] * 6, struct.pack("<QhhBBBxdd", START, 60, 0, 2, 0, 0, 0.0, 0.0))
        note = self.md("<FHcomment%s><TX>written by a script</TX><tool_id>samples</tool_id>"
                       "<tool_vendor>none</tool_vendor><tool_version>1</tool_version></FHcomment>" % NAMESPACE)
        self.head.links[1] = self.block("FH", [None, note], struct.pack("<QhhB3x", START, 60, 0, 2))
        self.scattered = False
        self.cut = None

    # Blocks

    def block(self, name, links, data):
        made = Block(name, links, data)
        self.blocks.append(made)
        return made

    def tx(self, text):
        if not text:
            return None
        data = text.encode() + b"\0"
        return self.block("TX", [], data + bytes(-len(data) % 8))

    def md(self, xml):
        return self.block("MD", [], xml.encode() + b"\0")

    def source(self, name, path, kind, bus):
        return self.block("SI", [self.tx(name), self.tx(path), None], struct.pack("<BBB5x", kind, bus, 0))

    def cc(self, kind, values=(), refs=(), unit=None, flags=0):
        links = [None, unit, None, None] + [self.tx(r) if isinstance(r, str) else r for r in refs]
        data = struct.pack("<BBHHHdd%dd" % len(values), kind, 0, flags, len(refs), len(values), 0.0, 0.0, *values)
        return self.block("CC", links, data)

    def linear(self, offset, factor, unit=None):
        return self.cc(LINEAR, [offset, factor], unit=unit)

    def dt(self, data):
        return self.block("DT", [], data)

    def dz(self, name, data, way=DEFLATED, columns=0):
        flat = transposed(data, columns) if way == TRANSPOSED else data
        packed = zlib.compress(flat)
        head = struct.pack("<2sBxIQQ", name.encode(), way, columns, len(data), len(packed))
        return self.block("DZ", [], head + packed)

    def dl(self, parts, at, equal=None):
        """One list block: parts, and where each begins in the whole."""
        if equal is None:
            return self.block("DL", [None] + parts, struct.pack("<B3xI%dQ" % len(parts), 0, len(parts), *at))
        return self.block("DL", [None] + parts, struct.pack("<B3xIQ", 1, len(parts), equal))

    def chain(self, name, data, cuts, per_list=100, equal=None, pack=None):
        """Data cut at the given places into blocks, listed in chained list blocks."""
        edges = [0] + list(cuts) + [len(data)]
        pieces = [data[a:b] for a, b in zip(edges, edges[1:])]
        blocks = [pack(i, p) if pack else self.block(name, [], p) for i, p in enumerate(pieces)]
        lists = [self.dl(blocks[i:i + per_list], edges[:-1][i:i + per_list], equal)
                 for i in range(0, len(blocks), per_list)]
        for a, b in zip(lists, lists[1:]):
            a.links[0] = b
        return lists[0]

    def hl(self, first, way, equal=False):
        return self.block("HL", [first], struct.pack("<HB5x", int(equal), way))

    # Channels and groups

    def cn(self, c):
        c.block = self.block("CN", [None] * 8, b"")
        unit = self.tx(c.unit) if c.unit_block is None else c.unit_block
        c.block.links[2:] = [self.tx(c.name), None, c.conversion, None, unit, c.comment_block or self.tx(c.comment)]
        c.block.links += c.attachments
        if c.members:
            c.block.links[1] = self.cns(c.members)
        flags = c.flags | (INVALID_BIT if c.invalid is not None else 0)
        c.block.data = struct.pack("<BBBBIIIIBxH6d", c.role, c.sync, c.kind, c.bit, c.byte, c.bits, flags,
                                   c.invalid or 0, 0, len(c.attachments), 0, 0, 0, 0, 0, 0)
        return c.block

    def cns(self, channels):
        blocks = [self.cn(c) for c in channels]
        for a, b in zip(blocks, blocks[1:]):
            a.links[0] = b
        return blocks[0] if blocks else None

    def cg(self, name, first, record_id, cycles, size, invalid, flags=0, source=None, links=()):
        return self.block("CG", [None, first, self.tx(name), source, None, None] + list(links),
                          struct.pack("<QQHH4xII", record_id, cycles, flags, ord(".") if flags else 0, size, invalid))

    def group(self, name, channels, rows, size, invalid=0, record_id=0, id_size=0, flags=0, source=None, links=(),
              cycles=None, times=None):
        """A group of rows of raw values by channel name; what must come out of it is noted."""
        leaves = [m for c in channels for m in ([c] + c.members)]
        records = [row_bytes(leaves, row, size, invalid, record_id, id_size) for row in rows]
        stated = len(rows) if cycles is None else cycles
        block = self.cg(name, self.cns(channels), record_id, stated, size, invalid, flags, source, links)
        expected = {"name": name, "bus": bool(flags & BUS_EVENT), "cycles": len(rows)}
        columns = {c.name: [c.expected(i if c.role in (VIRTUAL, VIRTUAL_MASTER) else row.get(c.name))
                            for i, row in enumerate(rows)] for c in leaves}
        masters = [c for c in leaves if c.role in (MASTER, VIRTUAL_MASTER)]
        for c in masters:
            if c.sync == TIME:
                times = columns[c.name]
        expected["master"] = None
        if masters:
            m = masters[0]
            expected["master"] = {"name": m.name, "unit": m.unit, "sync": {TIME: "time", ANGLE: "angle"}[m.sync],
                                  "virtual": m.role == VIRTUAL_MASTER, "values": columns[m.name]}
        expected["channels"] = [{"name": c.name, "unit": c.unit, "comment": c.comment, "type": c.what(), "times": times,
                                 "values": columns[c.name]} for c in leaves if c.shown and c not in masters[:1]]
        self.expected["groups"].append(expected)
        return Group(block, records, expected)

    def vlsd_group(self, store, record_id, id_size, cycles=None):
        records = [record_id.to_bytes(id_size, "little") + v for v in store.values]
        total = store.length if cycles is None else 0
        block = self.cg("", None, record_id, len(records) if cycles is None else cycles, total & 0xFFFFFFFF,
                        total >> 32, VLSD_GROUP)
        return Group(block, records, None)

    def data_group(self, groups, data, id_size=0):
        for a, b in zip(groups, groups[1:]):
            a.block.links[0] = b.block
        dg = self.block("DG", [None, groups[0].block if groups else None, data, None], struct.pack("<B7x", id_size))
        if self.data_groups:
            self.data_groups[-1].links[0] = dg
        else:
            self.head.links[0] = dg
        self.data_groups.append(dg)
        return dg

    # Whole files

    def last(self, block):
        """Moves a block to the end of the file."""
        self.blocks.remove(block)
        self.blocks.append(block)

    def fault(self, block):
        self.expected.update(fault=True, fault_block=block.name)
        self.faulty = block

    def write(self, folder):
        if self.scattered:
            rest = self.blocks[1:]
            random.Random(4).shuffle(rest)
            self.blocks[1:] = rest
        at = 64
        for b in self.blocks:
            b.at = at
            at += (b.size() + 7) // 8 * 8
        if self.expected["fault"]:
            self.expected["fault_at"] = self.faulty.at
        self.expected["frames"].sort(key=lambda f: f["t"])
        path = os.path.join(folder, self.name + ".mf4")
        with open(path, "wb") as out:
            version = "%d.%02d    " % (self.version // 100, self.version % 100)
            out.write(struct.pack("<8s8s8s4xH30xHH", b"UnFinMF " if self.unfinished else b"MDF     ", version.encode(),
                                  b"samples ", self.version, self.unfinished, 0))
            for b in self.blocks:
                out.write(bytes(b.at - out.tell()))
                out.write(b.header())
                if isinstance(b.data, Stream):
                    for piece in b.data.pieces:
                        out.write(piece)
                else:
                    out.write(b.data)
            if self.unfinished == 0 and self.cut is None:
                out.write(bytes(-out.tell() % 8))
            if self.cut is not None:
                out.truncate(out.tell() - self.cut)
        with open(os.path.join(folder, self.name + ".json"), "w", encoding="utf-8") as out:
            json.dump(self.expected, out, indent=1, ensure_ascii=False, allow_nan=False)


def row_bytes(channels, row, size, invalid, record_id, id_size):
    record = bytearray(size + invalid)
    for c in channels:
        if row.get(c.name) is not None:
            c.put(record, row[c.name])
        elif c.invalid is not None and c.name in row:
            record[size + c.invalid // 8] |= 1 << c.invalid % 8
    return record_id.to_bytes(id_size, "little") + bytes(record)


def transposed(data, columns):
    """The bytes as a table of so many columns, read down the columns; what fills no whole line stays at the end."""
    whole = len(data) // columns * columns
    return b"".join(data[c:whole:columns] for c in range(columns)) + data[whole:]


def single(x):
    return struct.unpack("<f", struct.pack("<f", x))[0]


def half(x):
    return struct.unpack("<e", struct.pack("<e", x))[0]


def time_channel():
    return Channel("t", REAL_LE, 0, 64, role=MASTER, sync=TIME, unit="s")


def simple(f, name="Engine", count=10, record_id=0, id_size=0, seed=1, cycles=None):
    """Time, a speed in uint16 with factor, a temperature in float32: 14 bytes."""
    dice = random.Random(seed)
    channels = [time_channel(),
                Channel(name + " speed", UINT_LE, 8, 16, unit="1/min", conversion=f.linear(0, 0.25),
                        physical=lambda x: x * 0.25),
                Channel(name + " temperature", REAL_LE, 10, 32, unit="degC")]
    rows = [{"t": i * 0.1, name + " speed": dice.randrange(65536),
             name + " temperature": single(dice.uniform(-40, 130))} for i in range(count)]
    return f.group(name, channels, rows, 14, record_id=record_id, id_size=id_size, cycles=cycles)


def only(group, count):
    """Leaves the first records in what must come out."""
    e = group.expected
    e["cycles"] = count
    if e["master"]:
        e["master"]["values"] = e["master"]["values"][:count]
    for c in e["channels"]:
        c["values"], c["times"] = c["values"][:count], c["times"] and c["times"][:count]


# Numbers, masters, conversions


def integers():
    f = Mdf("integers", "all widths, both orders of bytes, with and without sign, and fields at odd bits")
    channels, at = [time_channel()], 8
    for bits in (8, 16, 24, 32, 40, 48, 56, 64):
        for kind, word in ((UINT_LE, "unsigned little"), (UINT_BE, "unsigned big"), (INT_LE, "signed little"),
                           (INT_BE, "signed big")):
            channels.append(Channel("%s %d" % (word, bits), kind, at, bits))
            at += bits // 8
    for kind, word in ((UINT_LE, "unsigned little"), (UINT_BE, "unsigned big"), (INT_LE, "signed little"),
                       (INT_BE, "signed big")):
        channels.append(Channel("%s 12 at 3" % word, kind, at, 12, bit=3))
        channels.append(Channel("%s 1 at 7" % word, kind, at + 2, 1, bit=7))
        channels.append(Channel("%s 3 at 2" % word, kind, at + 2, 3, bit=2))
        channels.append(Channel("%s 13 at 7" % word, kind, at + 3, 13, bit=7))
        channels.append(Channel("%s 62 at 2" % word, kind, at + 6, 62, bit=2))
        channels.append(Channel("%s 60 at 6" % word, kind, at + 14, 60, bit=6))
        at += 23
    dice, rows = random.Random(2), []
    for i in range(12):
        row = {"t": i * 0.5}
        for c in channels[1:]:
            signed = c.kind in (INT_LE, INT_BE)
            low, high = (-(1 << c.bits - 1), (1 << c.bits - 1) - 1) if signed else (0, (1 << c.bits) - 1)
            row[c.name] = [low, high, 1 if high else -1][i] if i < 3 else dice.randint(low, high)
        rows.append(row)
    g = f.group("Integers", channels, rows, at)
    f.data_group([g], f.dt(g.bytes()))
    return f


def reals():
    f = Mdf("reals", "half, single and double precision, both orders of bytes")
    channels = [time_channel(), Channel("half little", REAL_LE, 8, 16), Channel("half big", REAL_BE, 10, 16),
                Channel("single little", REAL_LE, 12, 32), Channel("single big", REAL_BE, 16, 32),
                Channel("double little", REAL_LE, 20, 64), Channel("double big", REAL_BE, 28, 64)]
    # Half: greatest 65504, least normal 2^-14, least subnormal 2^-24 (IEEE 754-2008).
    halves = [0.0, 1.0, -2.0, 65504.0, 2.0 ** -14, 2.0 ** -24, -(2.0 ** -24), half(1 / 3), half(-1e-5), half(1234.5)]
    singles = [0.0, 1.0, -2.0, single(3.4e38), 2.0 ** -149, single(0.1), single(-1e-40), single(1 / 3),
               single(6.02e23), single(-273.15)]
    doubles = [0.0, 1.0, -2.0, 1.7e308, 5e-324, 0.1, -1e-310, 1 / 3, 6.02214076e23, -273.15]
    rows = [{"t": i * 0.25, "half little": h, "half big": -h, "single little": s, "single big": -s, "double little": d,
             "double big": -d}
            for i, (h, s, d) in enumerate(zip(halves, singles, doubles))]
    g = f.group("Reals", channels, rows, 36)
    f.data_group([g], f.dt(g.bytes()))
    return f


def masters():
    f = Mdf("masters",
            "time as counted milliseconds, virtual time, time big-endian, time and angle, no master at all, no records")
    a = f.group("Counted", [Channel("ms", UINT_LE, 0, 32, role=MASTER, sync=TIME, unit="s",
                                    conversion=f.linear(0.5, 0.001),
                                    physical=lambda x: 0.5 + 0.001 * x), Channel("Level", INT_LE, 4, 16, unit="mm")],
                [{"ms": 20 * i * i, "Level": 100 - 7 * i} for i in range(15)], 6)
    f.data_group([a], f.dt(a.bytes()))
    b = f.group("Virtual", [Channel("index time", UINT_LE, 0, 0, role=VIRTUAL_MASTER, sync=TIME, unit="s",
                                    conversion=f.linear(2, 0.05),
                                    physical=lambda i: 2 + 0.05 * i), Channel("Flow", REAL_LE, 0, 32, unit="kg/h"),
                            Channel("Number", UINT_LE, 0, 0, role=VIRTUAL, conversion=f.linear(10, 10),
                                    physical=lambda i: 10 + 10 * i)],
                [{"Flow": single(1.5 * i)} for i in range(9)], 4)
    f.data_group([b], f.dt(b.bytes()))
    c = f.group("Behind", [Channel("Valve", UINT_LE, 0, 8, unit="%"),
                           Channel("big time", REAL_BE, 1, 64, role=MASTER, sync=TIME, unit="s")],
                [{"Valve": 9 * i, "big time": 1 / 3 + i} for i in range(8)], 9)
    f.data_group([c], f.dt(c.bytes()))
    d = f.group("Crank", [time_channel(), Channel("crank angle", REAL_LE, 8, 32, role=MASTER, sync=ANGLE, unit="rad"),
                          Channel("Cylinder pressure", UINT_LE, 12, 16, unit="kPa")],
                [{"t": 0.001 * i, "crank angle": single(0.1 * i), "Cylinder pressure": 100 + 3 * i} for i in range(7)],
                14)
    f.data_group([d], f.dt(d.bytes()))
    e = f.group("Timeless", [Channel("Coefficient", REAL_LE, 0, 64)], [{"Coefficient": 1.5 ** i} for i in range(5)], 8)
    f.data_group([e], f.dt(e.bytes()))
    g = f.group("Empty", [time_channel(), Channel("Never", UINT_LE, 8, 8)], [], 9)
    f.data_group([g], None)
    return f


KEYS, TABLED = [0, 10, 20, 100], [0, 100, 150, 110]


def interpolated(x):
    if x <= KEYS[0]:
        return TABLED[0]
    for (a, b), (p, q) in zip(zip(KEYS, KEYS[1:]), zip(TABLED, TABLED[1:])):
        if x <= b:
            return p + (q - p) * (x - a) / (b - a)
    return TABLED[-1]


def nearest(x):
    return TABLED[min(range(4), key=lambda i: abs(KEYS[i] - x))]


def conversions():
    f = Mdf("conversions", "conversions of numbers: linear, rational, tables, ranges to value, formulas")
    integer_ranges = [0, 9, 1, 10, 19, 2, 30, 39, 3, -1]
    real_ranges = [0, 10, 1, 10, 20, 2, 30, 40, 3, -1]

    def ranged(x):
        return 1 if 0 <= x <= 9 else 2 if 10 <= x <= 19 else 3 if 30 <= x <= 39 else -1

    def ranged_real(x):     # the upper end of a range of real numbers is outside
        return 1 if 0 <= x < 10 else 2 if 10 <= x < 20 else 3 if 30 <= x < 40 else -1

    table = [x for pair in zip(KEYS, TABLED) for x in pair]
    channels = [
        time_channel(),
        Channel("one to one", UINT_LE, 8, 8, conversion=f.cc(ONE_TO_ONE)),
        Channel("linear", UINT_LE, 8, 8, conversion=f.linear(-40, 0.5), physical=lambda x: -40 + 0.5 * x, unit="degC"),
        Channel("rational", UINT_LE, 8, 8, conversion=f.cc(RATIONAL, [0, 1, -32, 0, 0, 1.8]),
                physical=lambda x: (x - 32) / 1.8),
        Channel("rational quadratic", UINT_LE, 8, 8, conversion=f.cc(RATIONAL, [1, 2, 3, 0.5, 1, 4]),
                physical=lambda x: (x * x + 2 * x + 3) / (0.5 * x * x + x + 4)),
        Channel("ranges of integers", UINT_LE, 8, 8, conversion=f.cc(RANGE_TO_VALUE, integer_ranges), physical=ranged),
        Channel("interpolated", INT_LE, 9, 16, conversion=f.cc(INTERPOLATED, table), physical=interpolated),
        Channel("nearest", INT_LE, 9, 16, conversion=f.cc(TABLE, table), physical=nearest),
        Channel("ranges of reals", REAL_LE, 11, 64, conversion=f.cc(RANGE_TO_VALUE, real_ranges), physical=ranged_real),
        Channel("linear of real", REAL_LE, 11, 64, conversion=f.linear(1, -2), physical=lambda x: 1 - 2 * x),
        Channel("formula", UINT_LE, 8, 8, conversion=f.cc(ALGEBRAIC, refs=["2.5*X - 40"]),
                physical=lambda x: 2.5 * x - 40),
        Channel("formula with root", UINT_LE, 8, 8, conversion=f.cc(ALGEBRAIC, refs=["sqrt(X) + X*X/4"]),
                physical=lambda x: x ** 0.5 + x * x / 4),
        Channel("formula with power", UINT_LE, 8, 8, conversion=f.cc(ALGEBRAIC, refs=["pow(X, 2) - (X + 1) * -3"]),
                physical=lambda x: x ** 2 + (x + 1) * 3)]
    small = [0, 9, 10, 19, 25, 30, 39, 40, 200, 255]
    wide = [-5, 0, 4, 6, 10, 12, 51, 70, 100, 200]
    real = [0.0, 9.999, 10.0, 19.999, 20.0, 30.0, 39.5, 40.0, -0.001, 1e6]
    rows = [{"t": float(i), "one to one": small[i], "interpolated": wide[i], "ranges of reals": real[i]}
            for i in range(10)]
    for row in rows:
        for c in channels[1:]:
            row[c.name] = row[{8: "one to one", 9: "interpolated", 11: "ranges of reals"}[c.byte]]
    g = f.group("Conversions", channels, rows, 19)
    f.data_group([g], f.dt(g.bytes()))
    return f


def texts_of_numbers():
    f = Mdf("conversions_text", "conversions to and from text, with default, nested conversion, and none needed")
    gears = {0: "P", 1: "R", 2: "N", 3: "D"}
    switches = {"OFF": 0, "ON": 1, "AUTO": 2.5}
    words = {"P": "Park", "R": "Rückwärts", "N": "Neutral"}

    def graded(x):
        return "off" if x == 0 else "low" if 1 <= x <= 50 else "high" if 51 <= x <= 100 else -10 + 0.1 * x

    def banded(x):      # the upper end of a range of real numbers is outside
        return "cold" if -40 <= x < 70 else "warm" if 70 <= x < 105 else "out of range"

    channels = [
        time_channel(),
        Channel("gear", UINT_LE, 8, 8, type="text",
                conversion=f.cc(VALUE_TO_TEXT, [0, 1, 2, 3], ["P", "R", "N", "D", "invalid"]),
                physical=lambda x: gears.get(x, "invalid")),
        Channel("error or value", UINT_LE, 9, 16, type="mixed", unit="bar",
                conversion=f.cc(VALUE_TO_TEXT, [65534, 65535], ["error", "not available", f.linear(0, 0.01)], flags=4),
                physical=lambda x: {65534: "error", 65535: "not available"}.get(x, x * 0.01)),
        Channel("level", UINT_LE, 11, 8, type="mixed", unit="%",
                conversion=f.cc(RANGE_TO_TEXT, [0, 0, 1, 50, 51, 100], ["off", "low", "high", f.linear(-10, 0.1)]),
                physical=graded),
        Channel("band", REAL_LE, 12, 32, type="text",
                conversion=f.cc(RANGE_TO_TEXT, [-40, 70, 70, 105], ["cold", "warm", "out of range"]), physical=banded),
        Channel("first range nested", UINT_LE, 11, 8, type="mixed", unit="K",
                conversion=f.cc(RANGE_TO_TEXT, [0, 100, 101, 255], [f.linear(273.15, 1), "error", None]),
                physical=lambda x: 273.15 + x if x <= 100 else "error"),
        Channel("switch", UTF_8, 16, 64, type="number",
                conversion=f.cc(TEXT_TO_VALUE, [0, 1, 2.5, -1], ["OFF", "ON", "AUTO"]),
                physical=lambda x: switches.get(x, -1)),
        Channel("word", LATIN_1, 24, 8,
                conversion=f.cc(TEXT_TO_TEXT, [], ["P", "Park", "R", "Rückwärts", "N", "Neutral", "other"]),
                physical=lambda x: words.get(x, "other")),
        Channel("on or off", UINT_LE, 25, 1, type="text", conversion=f.cc(VALUE_TO_TEXT, [0, 1], ["off", "on", None]),
                physical=lambda x: ["off", "on"][x])]
    rows = []
    for i in range(8):
        rows.append({"t": i * 0.2, "gear": [0, 1, 2, 3, 4, 255, 3, 0][i],
                     "error or value": [0, 100, 65534, 65535, 65533, 1, 2, 3][i],
                     "level": [0, 1, 50, 51, 100, 101, 200, 255][i],
                     "band": [-40.0, 69.5, 70.0, 104.5, 105.0, -41.0, 20.0, 500.0][i],
                     "switch": ["OFF", "ON", "AUTO", "off", "", "ONE", "AUTO", "OFF"][i], "word": "PRNDXPNR"[i],
                     "on or off": i % 2})
        rows[-1]["first range nested"] = rows[-1]["level"]
    g = f.group("Texts", channels, rows, 26)
    f.data_group([g], f.dt(g.bytes()))
    return f


def invalid_values():
    f = Mdf("invalidation",
            "single values marked as invalid, one channel invalid as a whole, one with a bit that stays clear")
    channels = [time_channel(), Channel("Oil pressure", UINT_LE, 8, 16, unit="kPa", invalid=0),
                Channel("Oil temperature", REAL_LE, 10, 32, unit="degC", invalid=9),
                Channel("Fuel", UINT_LE, 14, 8, unit="%"), Channel("Torn wire", UINT_LE, 15, 8, flags=ALL_INVALID),
                Channel("Torque", INT_LE, 16, 16, unit="N.m", invalid=3)]
    rows = [{"t": 0.1 * i, "Oil pressure": None if i % 3 == 0 else 100 + i,
             "Oil temperature": None if i in (4, 5) else single(80 + i / 7), "Fuel": 50 - i, "Torn wire": i,
             "Torque": -i * 10} for i in range(16)]
    g = f.group("Oil", channels, rows, 18, invalid=2)
    f.data_group([g], f.dt(g.bytes()))
    return f


def texts():
    f = Mdf("texts", "texts of fixed length in four encodings, filling their field or ended by zero, and byte arrays")
    channels = [time_channel(), Channel("Latin", LATIN_1, 8, 80), Channel("Eight", UTF_8, 18, 80),
                Channel("Sixteen little", UTF_16_LE, 28, 160),
                Channel("Sixteen big", UTF_16_BE, 48, 160), Channel("Array", BYTES, 68, 40)]
    words = ["", "a", "Kühler", "0123456789", "äöüß °C"]
    wide = words[:3] + ["Öl→\U0001F321", "0123456789"]
    rows = [{"t": i * 1.0, "Latin": words[i], "Eight": ["", "x", "Kühler", "0123456789", "Δp ≥ 1"][i],
             "Sixteen little": wide[i],
             "Sixteen big": wide[i], "Array": bytes([i, 0, 255 - i, 0x80, 0])} for i in range(5)]
    g = f.group("Texts", channels, rows, 73)
    f.data_group([g], f.dt(g.bytes()))
    return f


def moments():
    f = Mdf("moments", "CANopen date and time of day; a reader that does not turn them into moments says so")
    channels = [time_channel(), Channel("Clock", CANOPEN_DATE, 8, 56, type="moment", physical=lambda x: x[1]),
                Channel("Day", CANOPEN_TIME, 15, 48, type="moment", physical=lambda x: x[1]),
                Channel("Beside", UINT_LE, 21, 8)]
    for c in channels[1:3]:
        c.encoded = lambda x: x[0]
    rows = []
    for i in range(4):
        when = datetime.datetime(2021 + i, 3 + i, 9 + i, 7 + i, 58, 13, 250000)
        clock = struct.pack("<HBBBBB", when.second * 1000 + 250, when.minute, when.hour,
                            when.day | when.isoweekday() << 5,
                            when.month, when.year - 2000)
        since = when - datetime.datetime(1984, 1, 1)
        rows.append({"t": float(i), "Clock": (clock, when.isoformat(timespec="milliseconds")), "Beside": i,
                     "Day": (struct.pack("<IH", since.seconds * 1000 + 250, since.days),
                             when.isoformat(timespec="milliseconds"))})
    g = f.group("Moments", channels, rows, 22)
    f.data_group([g], f.dt(g.bytes()))
    return f


def described():
    f = Mdf("described",
            "names, units, comments in plain text and in XML, umlauts, attachment, event, hierarchy, sample reduction; "
            "blocks in any order")
    f.scattered = True
    f.head.links[5] = f.md("<HDcomment%s><TX>Höhenfahrt &amp; Rückweg</TX><common_properties>"
                           "<e name=\"author\">nobody</e></common_properties></HDcomment>" % NAMESPACE)
    attachment = f.block("AT", [None, f.tx("note.txt"), f.tx("text/plain"), None],
                         struct.pack("<HH4x16sQQ", 1, 0, bytes(16), 5, 5) + b"hello")
    f.head.links[3] = attachment
    inner = f.tx("degC")
    channels = [
        time_channel(),
        Channel("Kühlmitteltemperatur", INT_LE, 8, 16, unit="°C",
                unit_block=f.md("<CNunit%s><TX>°C</TX></CNunit>" % NAMESPACE),
                conversion=f.linear(0, 0.1, unit=f.tx("unused")), physical=lambda x: 0 + 0.1 * x,
                comment="Austritt Motor, <vorn> & links",
                comment_block=f.md("<CNcomment%s>\n  <TX>Austritt Motor, &lt;vorn&gt; &amp; links</TX>\n"
                                   "  <names><display>ECT</display></names>\n</CNcomment>" % NAMESPACE)),
        Channel("Unit of the conversion", UINT_LE, 10, 8, unit="degC", unit_block=False,
                conversion=f.linear(-40, 1, unit=inner), physical=lambda x: x - 40),
        Channel("Unit of the conversion in XML", UINT_LE, 11, 8, unit="m³/h", unit_block=False,
                physical=lambda x: 2 * x,
                conversion=f.linear(0, 2, unit=f.md("<CCunit%s><TX>m³/h</TX></CCunit>" % NAMESPACE))),
        Channel("Plain comment", UINT_LE, 12, 8, comment="only text", attachments=[attachment]),
        Channel("No unit", UINT_LE, 13, 8)]
    rows = [{"t": i / 8, "Kühlmitteltemperatur": 905 - i, "Unit of the conversion": 120 + i,
             "Unit of the conversion in XML": i,
             "Plain comment": 3 * i, "No unit": 255 - i} for i in range(24)]
    g = f.group("Motor", channels, rows, 14, source=f.source("ECU 1", "CAN 2", 1, 2))
    record = g.records[0]
    reduced = f.block("RD", [], record * 3 + g.records[-1] * 3)
    g.block.links[4] = f.block("SR", [None, reduced], struct.pack("<QdBB6x", 2, 1.0, 1, 0))
    f.head.links[4] = f.block("EV", [None, None, None, f.tx("Start"), None],
                              struct.pack("<BBBBB3xIHHqd", 6, 1, 0, 1, 0, 0, 0, 0, 0, 1.0))
    dg = f.data_group([g], f.dt(g.bytes()))
    f.head.links[2] = f.block("CH", [None, None, f.tx("Tree"), None, dg, g.block, channels[1].block],
                              struct.pack("<IB3x", 1, 0))
    same = simple(f, "Engine", 5)
    f.data_group([same], f.dt(same.bytes()))
    again = simple(f, "Engine", 6, seed=9)
    again.block.links[3] = f.source("ECU 2", "CAN 1", 1, 2)
    f.data_group([again], f.dt(again.bytes()))
    return f


def structure():
    f = Mdf("structure", "a channel made of members, their places counted from the start of the record")
    members = [Channel("Fan.Speed", UINT_LE, 8, 16, unit="1/min"), Channel("Fan.Duty", UINT_LE, 10, 8, unit="%"),
               Channel("Fan.Fault", UINT_LE, 11, 1, bit=4)]
    channels = [time_channel(), Channel("Fan", BYTES, 8, 32, members=members, shown=False),
                Channel("After", UINT_LE, 12, 8)]
    rows = [{"t": i * 0.1, "Fan.Speed": 1000 + i, "Fan.Duty": 10 * i, "Fan.Fault": i & 1, "After": i}
            for i in range(10)]
    g = f.group("Fan", channels, rows, 13)
    f.data_group([g], f.dt(g.bytes()))
    return f


# Data: unsorted, variable length, lists, compressed


def interleaved(groups, seed):
    """Records of several groups in an order by chance; each group keeps its own order."""
    dice, rest, out = random.Random(seed), [list(g) for g in groups], []
    while any(rest):
        out.append(dice.choice([r for r in rest if r]).pop(0))
    return b"".join(out)


def unsorted(id_size):
    f = Mdf("unsorted_%d" % id_size,
            "three groups and values of variable length in one stream, record identifiers of %d byte(s)" % id_size)
    ids = [1, 2, 200, 7] if id_size == 1 else [(1 << 8 * id_size - 1) + 5, 0x102, 300, 7]
    a = simple(f, "Engine", 30, ids[0], id_size)
    b = simple(f, "Gearbox", 11, ids[1], id_size, seed=3)
    store = Store()
    channels = [time_channel(), Channel("Note", UTF_8, 8, 64, role=VLSD, store=store),
                Channel("Weight", UINT_LE, 16, 8)]
    rows = [{"t": i * 0.3, "Note": "Notiz %d äöü " % i + "x" * (i * 7 % 40) + ("\0" if i % 2 else ""), "Weight": i}
            for i in range(13)]
    channels[1].physical = lambda x: x.rstrip("\0")
    c = f.group("Notes", channels, rows, 17, record_id=ids[2], id_size=id_size)
    v = f.vlsd_group(store, ids[3], id_size)
    channels[1].block.links[5] = v.block
    f.data_group([a, b, c, v], f.dt(interleaved([a.records, b.records, c.records, v.records], id_size)), id_size)
    return f


def lone_identifier():
    f = Mdf("lone_identifier", "one group only, with a record identifier all the same")
    g = simple(f, "Engine", 12, 9, 2)
    f.data_group([g], f.dt(g.bytes()), 2)
    return f


def unsorted_list():
    f = Mdf("unsorted_list",
            "unsorted groups in compressed blocks, cut in the middle of records; one with invalid values")
    a = simple(f, "Engine", 60, 0x0101, 2)
    b = simple(f, "Gearbox", 45, 0x0202, 2, seed=3)
    channels = [time_channel(), Channel("Oil pressure", INT_BE, 8, 16, unit="kPa", invalid=6)]
    rows = [{"t": 0.7 * i, "Oil pressure": None if i % 5 == 2 else 3 * i - 40} for i in range(33)]
    c = f.group("Oil", channels, rows, 10, invalid=1, record_id=0x0303, id_size=2)
    data = interleaved([a.records, b.records, c.records], 8)
    first = f.chain("DT", data, range(101, len(data), 101), per_list=4, pack=lambda i, p: f.dz("DT", p))
    f.data_group([a, b, c], f.hl(first, DEFLATED), 2)
    return f


def variable(way):
    f = Mdf("variable_" + way, "texts and bytes of variable length in data beside the records: " + way)
    texts, arrays, wide = Store(), Store(), Store()
    channels = [time_channel(), Channel("Text", UTF_8, 8, 64, role=VLSD, store=texts,
                                        physical=lambda x: x.rstrip("\0")),
                Channel("Array", BYTES, 16, 64, role=VLSD, store=arrays),
                Channel("Wide", UTF_16_LE, 24, 64, role=VLSD, store=wide, physical=lambda x: x.rstrip("\0"))]
    rows = [{"t": i * 0.5, "Text": "Zeile %d " % i + "ü" * (i % 9) + ("\0" if i % 2 else ""),
             "Array": bytes(range(i * 5 % 23)),
             "Wide": "Δ%d" % i + ("\0" if i % 3 else "")} for i in range(20)]
    g = f.group("Variable", channels, rows, 32)
    for c in channels[1:]:
        data = c.store.stream()
        if way == "list":
            c.block.links[5] = f.chain("SD", data, range(50, len(data), 50), per_list=3, equal=50)
        elif way == "compressed":
            first = f.chain("SD", data, range(70, len(data), 70),
                            pack=lambda i, p: f.dz("SD", p) if i % 3 else f.block("SD", [], p))
            c.block.links[5] = f.hl(first, DEFLATED)
        elif way == "one_compressed":
            c.block.links[5] = f.dz("SD", data)
        else:
            c.block.links[5] = f.block("SD", [], data)
    f.data_group([g], f.dt(g.bytes()))
    return f


def variable_shared():
    f = Mdf("variable_shared", "values of variable length not in the order of the records, some used several times")
    store = Store()
    words = ["idle", "drive", "", "a long word that needs some room"]
    at = [store.add(w.encode() + b"\0") for w in words]
    place = {a: w for a, w in zip(at, words)}
    channels = [time_channel(), Channel("State", UTF_8, 8, 64, role=VLSD, store=store, physical=lambda x: place[x])]
    order = [3, 0, 0, 1, 2, 3, 1, 0]
    g = f.group("State", channels, [{"t": float(i), "State": at[o]} for i, o in enumerate(order)], 16)
    channels[1].block.links[5] = f.block("SD", [], store.stream())
    f.data_group([g], f.dt(g.bytes()))
    return f


def listed(way):
    f = Mdf("data_" + way, "records in a list of blocks, crossing from one into the next: " + way)
    g = simple(f, "Engine", 100)
    data = g.bytes()
    if way == "equal":
        block = f.chain("DT", data, range(100, len(data), 100), per_list=5, equal=100)
    elif way == "unequal":
        block = f.chain("DT", data, [1, 14, 14, 15, 200, 700, 701, 1399], per_list=3)
    elif way == "deflated":
        block = f.hl(f.chain("DT", data, range(300, len(data), 300), per_list=2, equal=300,
                             pack=lambda i, p: f.dz("DT", p)), DEFLATED, True)
    elif way == "transposed":
        block = f.hl(f.chain("DT", data, range(301, len(data), 301), per_list=2, equal=301,
                             pack=lambda i, p: f.dz("DT", p, TRANSPOSED, 14)), TRANSPOSED, True)
    elif way == "mixed":
        packs = [lambda p: f.dt(p), lambda p: f.dz("DT", p), lambda p: f.dz("DT", p, TRANSPOSED, 14)]
        block = f.hl(f.chain("DT", data, [77, 400, 555, 900, 1000, 1001], pack=lambda i, p: packs[i % 3](p)),
                     TRANSPOSED)
    elif way == "one_deflated":
        block = f.dz("DT", data)
    else:
        block = f.dz("DT", data, TRANSPOSED, 14)
    f.data_group([g], block)
    return f


def columns():
    f = Mdf("columns",
            "version 4.2: every channel a group of its own with a remote master, values and invalidation bits apart",
            420)
    n = 25
    times = [0.02 * i for i in range(n)]
    master = f.group("Columns", [time_channel()], [{"t": t} for t in times], 8)
    f.data_group([master], f.block("DV", [], master.bytes()))
    a = f.group("Columns", [Channel("Speed", UINT_LE, 0, 16, unit="1/min")],
                [{"Speed": 800 + 3 * i} for i in range(n)], 2,
                flags=REMOTE_MASTER, links=[master.block], times=times)
    data = a.bytes()
    parts = [f.block("DV", [], data[0:20]), f.dz("DV", data[20:40]), f.block("DV", [], data[40:])]
    f.data_group([a], f.block("LD", [None] + parts, struct.pack("<IIQ", 1, 3, 10)))
    rows = [{"Pressure": None if i % 4 == 1 else 1.5 * i} for i in range(n)]
    b = f.group("Columns", [Channel("Pressure", REAL_LE, 0, 64, unit="bar", invalid=0)], rows, 8, invalid=1,
                flags=REMOTE_MASTER,
                links=[master.block], times=times)
    values, bits = b"".join(r[:8] for r in b.records), b"".join(r[8:] for r in b.records)
    data = [f.block("DV", [], values[:104]), f.block("DV", [], values[104:])]
    marks = [f.block("DI", [], bits[:13]), f.dz("DI", bits[13:])]
    f.data_group([b], f.block("LD", [None] + data + marks, struct.pack("<IIQ", 1 | 1 << 31, 2, 13)))
    return f


# Frames on a bus


def frame_channels(f, name, data, size, store=None, ide=True, length=True, fd=False):
    """Timestamp and one structure: bus, identifier, bits, length, then the data as given by their channel."""
    direction = f.cc(VALUE_TO_TEXT, [0, 1], ["Rx", "Tx", None])
    members = [Channel("BusChannel", UINT_LE, 8, 8), Channel("ID", UINT_LE, 9, 29 if ide else 32)]
    if ide:
        members.append(Channel("IDE", UINT_LE, 12, 1, bit=7))
    members += [Channel("DLC", UINT_LE, 13, 4), Channel("Dir", UINT_LE, 13, 1, bit=4, conversion=direction)]
    if fd:
        members += [Channel("EDL", UINT_LE, 13, 1, bit=5), Channel("BRS", UINT_LE, 13, 1, bit=6),
                    Channel("ESI", UINT_LE, 13, 1, bit=7)]
    if length:
        members.append(Channel("DataLength", UINT_LE, 14, 8))
    if data is not None:
        members.append(data)
    for m in members:
        m.name, m.shown = name + "." + m.name, False
    whole = Channel(name, BYTES, 8, (size - 8) * 8, flags=BUS_EVENT_CHANNEL, members=members, shown=False)
    return [Channel("Timestamp", REAL_LE, 0, 64, role=MASTER, sync=TIME, unit="s"), whole]


def frame_row(name, frame, ide=True):
    row = {"Timestamp": frame["t"], name + ".BusChannel": frame["bus"], name + ".DLC": frame["dlc"],
           name + ".ID": frame["id"] | (0 if ide or not frame["extended"] else 1 << 31),
           name + ".IDE": int(frame["extended"]),
           name + ".Dir": int(frame["dir"] == "Tx"), name + ".EDL": int(frame["fd"]), name + ".BRS": int(frame["fd"]),
           name + ".ESI": 0, name + ".DataLength": len(frame["bytes"]) // 2}
    if frame["kind"] == "data":
        row[name + ".DataBytes"] = bytes.fromhex(frame["bytes"])
    return row


def traffic(count, seed, fd=False, buses=(1, 2), extended=True, start=0.0):
    """Frames by chance: short and long identifiers, all lengths, both directions."""
    dice, out, t = random.Random(seed), [], start
    for i in range(count):
        t += dice.randrange(1, 4000) * 1e-6
        long = extended and dice.random() < 0.5
        flexible = fd and dice.random() < 0.7
        dlc = 15 if flexible and i % 5 == 0 else dice.randrange(16 if flexible else 9)
        length = FD_LENGTHS[dlc]
        out.append({"kind": "data", "t": t, "id": dice.randrange(1 << (29 if long else 11)), "extended": long,
                    "bus": dice.choice(buses), "dlc": dlc,
                    "bytes": bytes(dice.randrange(256) for _ in range(length)).hex(), "fd": flexible,
                    "dir": dice.choice(["Rx", "Tx"])})
    # An identifier below 2048 that is a long one all the same.
    if extended:
        out[1].update(id=0x123, extended=True)
        out[2].update(id=0x123, extended=False)
    return out


def bus_source(f):
    return f.source("CAN", "CAN", 2, 2)


def can_fixed():
    f = Mdf("can_fixed", "frames in a sorted group, eight bytes each, two buses")
    frames = traffic(60, 1)
    channels = frame_channels(f, "CAN_DataFrame", Channel("DataBytes", BYTES, 15, 64), 23)
    g = f.group("CAN_DataFrame", channels, [frame_row("CAN_DataFrame", x) for x in frames], 23,
                flags=BUS_EVENT | PLAIN_BUS_EVENT, source=bus_source(f))
    f.data_group([g], f.dt(g.bytes()))
    f.expected["frames"] = frames
    return f


def can_max_length():
    f = Mdf("can_max_length",
            "frames of CAN FD up to 64 bytes in a field whose used part is told by DataLength, compressed")
    frames = traffic(60, 2, fd=True)
    channels = frame_channels(f, "CAN_DataFrame", Channel("DataBytes", BYTES, 15, 512, role=MLSD), 79, fd=True)
    g = f.group("CAN_DataFrame", channels, [frame_row("CAN_DataFrame", x) for x in frames], 79,
                flags=BUS_EVENT | PLAIN_BUS_EVENT, source=bus_source(f))
    size, data = channels[1].members[-2:]
    data.block.links[5] = size.block
    whole = g.bytes()
    f.data_group([g], f.hl(f.chain("DT", whole, range(1000, len(whole), 1000), equal=1000,
                                   pack=lambda i, p: f.dz("DT", p, TRANSPOSED, 79)),
                           TRANSPOSED, True))
    f.expected["frames"] = frames
    return f


def can_sd():
    f = Mdf("can_sd", "frames in a sorted group, data of variable length in an SD block")
    frames, store = traffic(60, 3, fd=True), Store()
    channels = frame_channels(f, "CAN_DataFrame", Channel("DataBytes", BYTES, 15, 64, role=VLSD, store=store), 23,
                              fd=True)
    g = f.group("CAN_DataFrame", channels, [frame_row("CAN_DataFrame", x) for x in frames], 23,
                flags=BUS_EVENT | PLAIN_BUS_EVENT, source=bus_source(f))
    channels[1].members[-1].block.links[5] = f.block("SD", [], store.stream())
    f.data_group([g], f.dt(g.bytes()))
    f.expected["frames"] = frames
    return f


def other_frames(kind, count, seed, start):
    frames = traffic(count, seed, start=start)
    for x in frames:
        x.update(kind=kind, bytes="")
        if kind == "error":
            x.update(id=None, extended=None, dlc=None, dir=None, fd=None)
    return frames


def error_group(f, errors, record_id, id_size, cycles):
    name = "CAN_ErrorFrame"
    members = [Channel(name + ".BusChannel", UINT_LE, 8, 8, shown=False),
               Channel(name + ".ErrorType", UINT_LE, 9, 8, shown=False)]
    channels = [Channel("Timestamp", REAL_LE, 0, 64, role=MASTER, sync=TIME, unit="s"),
                Channel(name, BYTES, 8, 16, flags=BUS_EVENT_CHANNEL, members=members, shown=False)]
    rows = [{"Timestamp": x["t"], name + ".BusChannel": x["bus"], name + ".ErrorType": i % 6} for i,
            x in enumerate(errors)]
    return f.group(name, channels, rows, 10, record_id=record_id, id_size=id_size, flags=BUS_EVENT | PLAIN_BUS_EVENT,
                   source=bus_source(f), cycles=cycles)


def in_order(tagged):
    return b"".join(r for _, _, r in sorted(tagged, key=lambda x: x[:2]))


def can_unsorted(name, before=False, unfinished=0):
    """The usual recorder: one stream in order of time, data as records of their own before or behind the frame."""
    about = "frames, remote frames and error frames in one stream; data of variable length as records "
    about += "before their frame" if before else "behind their frame"
    if unfinished:
        about += ", unfinished: counts and places of the data are not filled in"
    f = Mdf(name, about, unfinished=unfinished)
    frames = traffic(50, 4, fd=True)
    remote, errors = other_frames("remote", 7, 5, 0.0101), other_frames("error", 5, 6, 0.0203)
    store = Store()
    channels = frame_channels(f, "CAN_DataFrame", Channel("DataBytes", BYTES, 15, 64, role=VLSD, store=store), 23,
                              fd=True)
    rows = [frame_row("CAN_DataFrame", x) for x in frames]
    flags = BUS_EVENT | PLAIN_BUS_EVENT
    cycles = 0 if unfinished else None
    a = f.group("CAN_DataFrame", channels, rows, 23, record_id=1, id_size=1, flags=flags, source=bus_source(f),
                cycles=cycles)
    v = f.vlsd_group(store, 2, 1, cycles)
    channels[1].members[-1].block.links[5] = v.block
    b = f.group("CAN_RemoteFrame", frame_channels(f, "CAN_RemoteFrame", None, 15),
                [frame_row("CAN_RemoteFrame", x) for x in remote], 15,
                record_id=3, id_size=1, flags=flags, source=bus_source(f), cycles=cycles)
    c = error_group(f, errors, 4, 1, cycles)
    if unfinished:
        a.records = [r[:16] + bytes(8) for r in a.records]
    order = [1, 0] if before else [0, 1]
    tagged = [(x["t"], order[0], r) for x, r in zip(frames, a.records)] + [(x["t"], order[1], r) for x,
                                                                           r in zip(frames, v.records)]
    tagged += [(x["t"], 0, r) for x, r in zip(remote, b.records)] + [(x["t"], 0, r) for x, r in zip(errors, c.records)]
    data = f.dt(in_order(tagged))
    if unfinished:
        data.length = 24
    f.data_group([a, v, b, c], data, 1)
    f.last(data)
    f.expected["frames"] = frames + remote + errors
    return f


def can_two_groups():
    f = Mdf("can_two_groups", "two data groups, one for each bus; times overlap; the second with long identifiers only")
    for bus, long in ((1, False), (2, True)):
        frames = traffic(30, 10 + bus, buses=(bus,), extended=False)
        for x in frames:
            if long:
                x.update(extended=True, id=x["id"] | 0x18FE0000)
        channels = frame_channels(f, "CAN_DataFrame", Channel("DataBytes", BYTES, 15, 64), 23)
        g = f.group("CAN_DataFrame", channels, [frame_row("CAN_DataFrame", x) for x in frames], 23,
                    flags=BUS_EVENT | PLAIN_BUS_EVENT, source=f.source("CAN%d" % bus, "CAN%d" % bus, 2, 2))
        f.data_group([g], f.dt(g.bytes()))
        f.expected["frames"] += frames
    return f


def can_without_ide():
    f = Mdf("can_without_ide",
            "no IDE and no DataLength: bit 31 of the identifier marks the long ones, DLC tells the length", 400)
    frames = traffic(40, 7)
    channels = frame_channels(f, "CAN_DataFrame", Channel("DataBytes", BYTES, 15, 64), 23, ide=False, length=False)
    g = f.group("CAN_DataFrame", channels, [frame_row("CAN_DataFrame", x, False) for x in frames], 23, flags=BUS_EVENT,
                source=bus_source(f))
    f.data_group([g], f.dt(g.bytes()))
    f.expected["frames"] = frames
    return f


def can_with_signals():
    f = Mdf("can_with_signals",
            "frames of one message with its signal decoded beside them; beside them a group of plain channels")
    frames = [{"kind": "data", "t": 0.01 * i, "id": 0x3E9, "extended": False, "bus": 1, "dlc": 8,
               "bytes": bytes([40 + i] + [0] * 7).hex(),
               "fd": False, "dir": "Rx"} for i in range(20)]
    channels = frame_channels(f, "CAN_DataFrame", Channel("DataBytes", BYTES, 15, 64), 23)
    channels.append(Channel("Coolant", UINT_LE, 15, 8, unit="degC", conversion=f.linear(-40, 1),
                            physical=lambda x: x - 40))
    rows = [dict(frame_row("CAN_DataFrame", x), Coolant=40 + i) for i, x in enumerate(frames)]
    g = f.group("CAN_DataFrame", channels, rows, 23, flags=BUS_EVENT, source=bus_source(f))
    f.data_group([g], f.dt(g.bytes()))
    h = simple(f, "Engine", 10)
    f.data_group([h], f.dt(h.bytes()))
    f.expected["frames"] = frames
    return f


# Unfinished

CYCLES_OPEN, DT_OPEN, DL_OPEN, VLSD_BYTES_OPEN, VLSD_PLACES_OPEN = 0x1, 0x4, 0x10, 0x20, 0x40


def unfinished(way):
    flags = CYCLES_OPEN | (DL_OPEN if way == "list" else DT_OPEN)
    f = Mdf("unfinished_" + way, "the recorder lost power: " + {
        "zero": "no cycles counted, last DT of length 0, half a record at the end",
        "header": "no cycles counted, last DT of the length of its head, records to the end of the file",
        "list": "no cycles counted, the list has room for ten blocks and holds four",
        "unsorted": "two groups in one stream, no cycles counted, last DT open, half a record at the end"}[way],
            unfinished=flags)
    if way == "unsorted":
        a, b = simple(f, "Engine", 20, 1, 1, cycles=0), simple(f, "Gearbox", 15, 2, 1, seed=3, cycles=0)
        data = f.dt(interleaved([a.records, b.records], 3) + a.records[0][:9])
        data.length = 24
        f.data_group([a, b], data, 1)
    else:
        g = simple(f, "Engine", 40, cycles=0)
        if way == "list":
            whole = g.bytes()
            parts = [f.dt(whole[i:i + 140]) for i in range(0, 560, 140)]
            data = f.block("DL", [None] + parts + [None] * 6, struct.pack("<B3xIQ", 1, 10, 140))
        else:
            data = f.block("DT", [], g.bytes() + (g.records[0][:5] if way == "zero" else b""))
            data.length = 0 if way == "zero" else 24
        f.data_group([g], data)
    f.last([b for b in f.blocks if b.name == "DT"][-1])
    return f


# Broken on purpose


def broken(name, about):
    """A file with a whole group in front; the fault comes behind it."""
    f = Mdf("broken_" + name, about)
    g = simple(f, "Whole", 8)
    f.data_group([g], f.dt(g.bytes()))
    return f


def broken_files():
    far = 1 << 40
    f = broken("link_group", "the link to the second data group points beyond the file")
    f.data_groups[0].links[0] = far
    f.fault(f.data_groups[0])
    yield f

    f = broken("link_group_negative", "the link to the second data group has its highest bit set")
    f.data_groups[0].links[0] = (1 << 64) - 8
    f.fault(f.data_groups[0])
    yield f

    f = broken("link_kind", "the link to the second data group points to a block of another kind")
    f.data_groups[0].links[0] = f.head.links[1]
    f.fault(f.head.links[1])
    yield f

    f = broken("link_data", "the link to the records points beyond the file; nothing of this group is whole")
    g = simple(f, "Engine", 10)
    f.fault(f.data_group([g], far))
    only(g, 0)
    yield f

    f = broken("link_channel", "the link from the second to the third channel points beyond the file; two are whole")
    g = simple(f, "Engine", 10)
    cn = g.block.links[1].links[0]
    cn.links[0] = far
    g.expected["channels"] = g.expected["channels"][:1]
    f.data_group([g], f.dt(g.bytes()))
    f.fault(cn)
    yield f

    f = broken("loop_channels", "the last channel links back to the first; each counts once")
    g = simple(f, "Engine", 10)
    last = g.block.links[1].links[0].links[0]
    last.links[0] = g.block.links[1]
    f.data_group([g], f.dt(g.bytes()))
    f.fault(last)
    yield f

    f = broken("loop_members", "a channel is a member of itself")
    channels = [time_channel(), Channel("Fan", UINT_LE, 8, 16)]
    g = f.group("Fan", channels, [{"t": float(i), "Fan": i} for i in range(5)], 10)
    channels[1].block.links[1] = channels[1].block
    f.data_group([g], f.dt(g.bytes()))
    f.fault(channels[1].block)
    yield f

    f = broken("loop_data_groups", "the second data group links back to the first; each counts once")
    g = simple(f, "Engine", 10)
    dg = f.data_group([g], f.dt(g.bytes()))
    dg.links[0] = f.data_groups[0]
    f.fault(dg)
    yield f

    f = broken("loop_groups", "the channel group links to itself")
    g = simple(f, "Engine", 10)
    g.block.links[0] = g.block
    f.data_group([g], f.dt(g.bytes()))
    f.fault(g.block)
    yield f

    f = broken("loop_list", "the list of data links to itself; its blocks count once")
    g = simple(f, "Engine", 30)
    data = f.chain("DT", g.bytes(), [100, 200, 300], equal=100)
    data.links[0] = data
    f.data_group([g], data)
    f.fault(data)
    yield f

    f = broken("loop_conversion", "the default of a conversion is that conversion itself; the key has its text")
    cc = f.cc(VALUE_TO_TEXT, [1], ["on", None])
    cc.links[-1] = cc
    channels = [time_channel(), Channel("State", UINT_LE, 8, 8, type="text", conversion=cc,
                                        physical=lambda x: {1: "on"}.get(x)),
                Channel("Beside", UINT_LE, 9, 8)]
    g = f.group("State", channels, [{"t": float(i), "State": 1 + i % 2, "Beside": i} for i in range(6)], 10)
    f.data_group([g], f.dt(g.bytes()))
    f.fault(cc)
    yield f

    for name, about in (("size", "the second compressed block states more bytes than come out"),
                        ("small", "the second compressed block states fewer bytes than come out"),
                        ("bytes", "the second compressed block is damaged in its middle"),
                        ("bomb", "the second compressed block states 2^60 bytes"),
                        ("way", "the second compressed block is packed in a way that is not known (99)")):
        f = broken("deflated_" + name, about + "; the records of the first block are whole")
        g = simple(f, "Engine", 40)
        data = f.chain("DT", g.bytes(), [140, 280, 420], equal=140, pack=lambda i, p: f.dz("DT", p))
        f.data_group([g], f.hl(data, DEFLATED, True))
        dz = data.links[2]
        head = list(struct.unpack("<2sBxIQQ", dz.data[:24]))
        packed = dz.data[24:]
        if name == "bytes":
            packed = packed[:20] + bytes(b ^ 0xFF for b in packed[20:60]) + packed[60:]
        if name == "way":
            head[1] = 99
        head[3] = {"size": 500, "small": 60, "bomb": 1 << 60}.get(name, head[3])
        dz.data = struct.pack("<2sBxIQQ", *head) + packed
        only(g, 10)
        f.fault(dz)
        yield f

    f = broken("truncated_data", "the file ends in the middle of the records; 12 of 30 are whole")
    g = simple(f, "Engine", 30)
    dt = f.dt(g.bytes())
    f.data_group([g], dt)
    f.last(dt)
    f.cut = 30 * 14 - 12 * 14 - 5
    only(g, 12)
    f.fault(dt)
    yield f

    f = broken("truncated_channels", "the file ends in the middle of the third channel; two are whole")
    g = simple(f, "Engine", 10)
    f.data_group([g], f.dt(g.bytes()))
    last = g.block.links[1].links[0].links[0]
    f.last(last)
    f.cut = 90
    g.expected["channels"] = g.expected["channels"][:1]
    f.fault(last)
    yield f

    f = broken("no_record_length", "ten records of no length are stated; nothing of this group is whole")
    g = simple(f, "Engine", 10)
    g.block.data = struct.pack("<QQHH4xII", 0, 10, 0, 0, 0, 0)
    f.data_group([g], f.dt(g.bytes()))
    only(g, 0)
    f.fault(g.block)
    yield f

    f = broken("channel_outside", "a channel reaches beyond its record; the others are whole")
    channels = [time_channel(), Channel("Inside", UINT_LE, 8, 8), Channel("Outside", UINT_LE, 9, 8)]
    g = f.group("Fan", channels, [{"t": float(i), "Inside": i} for i in range(5)], 9)
    cn = channels[2].block
    g.expected["channels"] = g.expected["channels"][:1]
    f.data_group([g], f.dt(g.bytes()))
    f.fault(cn)
    yield f

    f = broken("cycles", "a thousand million records are stated, ten are there")
    g = simple(f, "Engine", 10, cycles=10 ** 9)
    f.data_group([g], f.dt(g.bytes()))
    f.fault(g.block)
    yield f

    f = broken("name_length",
               "the name of the second channel states a length of 2^60 bytes; the third and the time are whole")
    g = simple(f, "Engine", 10)
    name = g.block.links[1].links[0].links[2]
    name.length = 1 << 60
    g.expected["channels"] = g.expected["channels"][1:]
    f.data_group([g], f.dt(g.bytes()))
    f.fault(name)
    yield f

    f = broken("block_length", "a channel group block states a length of 8 bytes; nothing of this group is whole")
    g = simple(f, "Engine", 10)
    g.block.length = 8
    f.data_group([g], f.dt(g.bytes()))
    f.expected["groups"].pop()
    f.fault(g.block)
    yield f

    f = broken("list_count",
               "a list of data states four thousand million blocks and holds two; the records of these are whole")
    g = simple(f, "Engine", 20)
    data = f.chain("DT", g.bytes(), [140], equal=140)
    data.data = struct.pack("<B3xIQ", 1, 0xFFFFFFFF, 140)
    f.data_group([g], data)
    f.fault(data)
    yield f

    f = broken("record_identifier",
               "an identifier that no group has, in the middle of the stream; what stands before it is whole")
    a, b = simple(f, "Engine", 10, 1, 1), simple(f, "Gearbox", 10, 2, 1, seed=3)
    dt = f.dt(b"".join(a.records[:4] + b.records[:6]) + b"\x63" + bytes(14) + b"".join(a.records[4:] + b.records[6:]))
    f.data_group([a, b], dt, 1)
    only(a, 4)
    only(b, 6)
    f.fault(dt)
    yield f

    f = broken("variable_place",
               "two records point beyond the data of variable length, one value is longer than these; others are whole")
    store = Store()
    words = ["one", "two", "three", "four", "five", "six"]
    channels = [time_channel(), Channel("Word", UTF_8, 8, 64, role=VLSD, store=store)]
    g = f.group("Words", channels, [{"t": float(i), "Word": w} for i, w in enumerate(words)], 16)
    rows = [bytearray(r) for r in g.records]
    struct.pack_into("<Q", rows[1], 8, 1 << 33)
    struct.pack_into("<Q", rows[2], 8, store.length - 1)
    data = bytearray(store.stream())
    struct.pack_into("<I", data, store.length - 7, 0xFFFFFFF0)
    sd = f.block("SD", [], bytes(data))
    channels[1].block.links[5] = sd
    for i in (1, 2, 5):
        g.expected["channels"][0]["values"][i] = None
    f.data_group([g], f.dt(b"".join(rows)))
    f.fault(sd)
    yield f

    f = broken("conversion_count",
               "a conversion states more numbers than its block holds; the other channels are whole")
    channels = [time_channel(), Channel("Bad", UINT_LE, 8, 8, conversion=f.cc(INTERPOLATED, [0, 0, 1, 1])),
                Channel("Good", UINT_LE, 9, 8)]
    g = f.group("Fan", channels, [{"t": float(i), "Bad": i, "Good": i} for i in range(5)], 10)
    cc = channels[1].conversion
    cc.data = cc.data[:6] + struct.pack("<H", 60000) + cc.data[8:]
    g.expected["channels"] = g.expected["channels"][1:]
    f.data_group([g], f.dt(g.bytes()))
    f.fault(cc)
    yield f


def odd_heads(folder):
    """Files that are no MDF 4: an older version, a head alone, an empty one."""
    def put(name, about, data):
        with open(os.path.join(folder, name + ".mf4"), "wb") as out:
            out.write(data)
        with open(os.path.join(folder, name + ".json"), "w", encoding="utf-8") as out:
            json.dump({"about": about, "fault": True, "refused": True, "groups": [], "frames": []}, out, indent=1)

    head = struct.pack("<8s8s8s4xH30xHH", b"MDF     ", b"4.10    ", b"samples ", 410, 0, 0)
    put("refused_version_3", "a file of version 3.30",
        struct.pack("<8s8s8sHHHH32x", b"MDF     ", b"3.30    ", b"samples ", 0, 0, 330, 0)
        + struct.pack("<2sH", b"HD", 164) + bytes(160))
    put("refused_head_only", "the identification and nothing behind it", head)
    put("refused_head_cut", "40 bytes of the identification", head[:40])
    put("refused_no_header_block", "the header block has another name", head + struct.pack("<4s4xQQ", b"##XX", 104, 6)
        + bytes(80))


# For measuring speed

PIECE = 50_000


def big_table(million, way):
    """Ten channels in 37 bytes: time, three reals, four integers with factor, a state and a counter."""
    f = Mdf("big_table" + way, "%d million records of ten channels" % million)
    count = million * 1_000_000
    channels = [time_channel()]
    channels += [Channel("Temperature %d" % i, REAL_LE, 8 + 4 * i, 32, unit="degC") for i in range(3)]
    channels += [Channel("Pressure %d" % i, UINT_LE, 20 + 2 * i, 16, unit="kPa", conversion=f.linear(-10, 0.125),
                         physical=lambda x: -10 + 0.125 * x) for i in range(4)]
    channels += [Channel("State", UINT_LE, 28, 8), Channel("Counter", UINT_LE, 29, 64)]
    sums, dice = [0.0] * 10, random.Random(1)
    form = struct.Struct("<d3f4HBQ")

    def rows(a, b):
        out = []
        for i in range(a, b):
            k = dice.getrandbits(32)
            t, p = (k >> 20) * 0.03125 - 40, k & 0xFFFF
            row = (i * 0.001, t, t + 1, t - 1, p, p ^ 0xFFFF, i & 0xFFFF, k >> 16, k >> 30, i)
            for c in range(10):
                sums[c] += row[c]
            out.append(form.pack(*row))
        return b"".join(out)

    pieces = (rows(i, i + PIECE) for i in range(0, count, PIECE))
    g = f.group("Big", channels, [], 37, cycles=count)
    if way:
        blocks = [f.dz("DT", p, TRANSPOSED, 37) for p in pieces]
        length = PIECE * 37
        f.data_group([g], f.hl(f.dl(blocks, None, length), TRANSPOSED, True))
    else:
        f.data_group([g], f.dt(Stream(count * 37, pieces)))
    e = g.expected
    e["cycles"] = count
    del e["master"]

    def finish():
        for c in range(1, 10):
            total = -10 * count + 0.125 * sums[c] if 4 <= c <= 7 else sums[c]
            e["channels"][c - 1].pop("times")
            e["channels"][c - 1].pop("values")
            e["channels"][c - 1]["sum"] = total

    f.finish = finish
    return f


def big_can(million, way):
    f = Mdf("big_can" + way, "%d million CAN frames of eight bytes" % million)
    count = million * 1_000_000
    store = Store()
    data = Channel("DataBytes", BYTES, 15, 64, role=VLSD if way else FIXED, store=store)
    channels = frame_channels(f, "CAN_DataFrame", data, 23)
    flags = BUS_EVENT | PLAIN_BUS_EVENT
    g = f.group("CAN_DataFrame", channels, [], 23, record_id=1, id_size=1, flags=flags, source=bus_source(f),
                cycles=count)
    g.expected["cycles"] = count
    del g.expected["master"]
    sums, dice = [0, 0], random.Random(1)
    plain, marked = struct.Struct("<dBIBB8s"), struct.Struct("<BdBIBBQ BI8s")

    def rows(a, b):
        out = []
        for i in range(a, b):
            k = dice.getrandbits(32)
            long = i & 1
            identifier = 0x18FEEE00 + (k >> 26) if long else 0x100 + (k >> 24)
            payload = ((k << 32) | i).to_bytes(8, "little")
            sums[0] += identifier
            sums[1] += payload[0]
            word = identifier | long << 31
            if way:
                out.append(marked.pack(1, i * 0.0002, 1 + (k >> 31), word, 8, 8, i * 12, 2, 8, payload))
            else:
                out.append(plain.pack(i * 0.0002, 1 + (k >> 31), word, 8, 8, payload))
        return b"".join(out)

    pieces = (rows(i, i + PIECE) for i in range(0, count, PIECE))
    if way:
        v = f.vlsd_group(store, 2, 1)
        total = 12 * count
        v.block.data = struct.pack("<QQHH4xII", 2, count, VLSD_GROUP, ord("."), total & 0xFFFFFFFF, total >> 32)
        data.block.links[5] = v.block
        f.data_group([g, v], f.dt(Stream(count * marked.size, pieces)), 1)
    else:
        f.data_group([g], f.dt(Stream(count * 23, pieces)))

    def finish():
        del f.expected["frames"]
        f.expected["frame_count"], f.expected["sum_of_ids"], f.expected["sum_of_first_bytes"] = count, sums[0], sums[1]

    f.finish = finish
    return f


def small_files():
    yield from (integers(), reals(), masters(), conversions(), texts_of_numbers(), invalid_values(), texts(),
                moments(), described(),
                structure(), lone_identifier(), unsorted_list(), variable_shared(), columns())
    for size in (1, 2, 4, 8):
        yield unsorted(size)
    for way in ("plain", "list", "compressed", "one_compressed"):
        yield variable(way)
    for way in ("equal", "unequal", "deflated", "transposed", "mixed", "one_deflated", "one_transposed"):
        yield listed(way)
    yield from (can_fixed(), can_max_length(), can_sd(), can_unsorted("can_unsorted"),
                can_unsorted("can_unsorted_before", before=True), can_two_groups(), can_without_ide(),
                can_with_signals(),
                can_unsorted("unfinished_can", unfinished=CYCLES_OPEN | DT_OPEN | VLSD_BYTES_OPEN | VLSD_PLACES_OPEN))
    for way in ("zero", "header", "list", "unsorted"):
        yield unfinished(way)
    yield from broken_files()


def main(folder, option=None, million="0"):
    os.makedirs(folder, exist_ok=True)
    if option == "--big":
        for make, way in ((big_table, ""), (big_table, "_deflated"), (big_can, ""), (big_can, "_unsorted")):
            f = make(int(million), way)
            f.write(folder)
            f.finish()
            with open(os.path.join(folder, f.name + ".json"), "w", encoding="utf-8") as out:
                json.dump(f.expected, out, indent=1)
        return
    for f in small_files():
        f.write(folder)
    odd_heads(folder)


if __name__ == "__main__":
    main(*sys.argv[1:])
