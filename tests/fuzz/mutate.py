"""Survey files and receiver logs, broken in every way that transfer, editing and bad luck can break them."""

from __future__ import annotations

from functools import reduce
from typing import Callable, List, Tuple

import numpy as np

from tests.core.survey_forms import degrees_text, forms

# fmt: off
TOKENS = (
    b",", b";", b"\t", b" ", b'"', b'""', b"#", b"\n", b"\r", b"\r\n", b"\0", b"nan", b"inf", b"-", b"1e9",
    b"1e999", b"-0", b".", b"..", b"9" * 30, b"0" * 60, b"\xff", b"\xc3", b"\xe2\x80\xa8", b"\xef\xbb\xbf",
    b"\x1f", b"\x1a", b"$GPGGA,", b"*47", b"*", b"$", b"!", b"//", b"%", b"=", b"N", b"E", b"O", b"\xc2\xb0", b"'",
    b"48 07 02", b"91", b"181", b"_", b"+", b"1,5", b"2025-04-09T07:06:02Z", b"24:61:61", b"easting", b"northing",
    b"height", b"X", b"Y", b"(ft)", b"(m)", b"Latitude",
)
# fmt: on


def seeds(seed: int) -> List[bytes]:
    """Whole files to start from, short ones."""
    rng = np.random.default_rng(seed)
    files = []
    for form in forms(60, seed):
        lines = form.raw.split(b"\n")
        files.append(b"\n".join(lines[: int(rng.integers(3, 14))]) + b"\n" * int(rng.integers(0, 2)))
    files += [_degrees(rng, style, letters) for style in ("d", "dm", "dms") for letters in (True, False)]
    files += [_log(rng) for _ in range(12)]
    files += [b"name,easting,northing,height,code,sigma_h,sigma_v,fix,satellites,pdop,tilt,time\n"
              b"1,548240.7,5712395.5,91.0,KB,0.005,0.007,4,20,1.5,0.2,2025-04-09T07:06:02.0Z\n" * 2]  # fmt: skip
    return files


def _degrees(rng: np.random.Generator, style: str, letters: bool) -> bytes:
    rows = []
    for lat, lon in zip(rng.uniform(-80, 80, 6), rng.uniform(-170, 170, 6)):
        fields = (degrees_text(lat, style, "NS" * letters), degrees_text(lon, style, "EW" * letters), "12.5")
        rows.append(";".join(fields))
    return ("Lat;Lon;h\n" + "\n".join(rows) + "\n").encode()


def _log(rng: np.random.Generator) -> bytes:
    lines = []
    for i in range(int(rng.integers(1, 5))):
        clock = f"{int(rng.choice([0, 12, 235959])):06d}"
        clock = f"{(int(clock) + i) % 240000:06d}.{int(rng.integers(0, 100)):02d}"
        for body in (
            f"GNGGA,{clock},4807.{i:07d},N,01131.0,E,4,18,0.7,545.4,M,46.9,M,1.0,0001",
            f"GNGST,{clock},0.01,,,,0.006,0.008,0.015", f"GPRMC,{clock},A,4807.0,N,01131.0,E,0.5,84.4,090425,,,R",
            f"GPZDA,{clock},09,04,2025,00,00", f"GNGNS,{clock},4807.0,N,01131.0,E,RR,17,0.8,545.4,46.9,,",
        ):  # fmt: skip
            if rng.random() < 0.7:
                total = reduce(lambda value, sign: value ^ ord(sign), body, 0)
                lines.append(f"${body}*{total:02X}")
    return ("\r\n".join(lines) + "\r\n").encode()


def mutated(files: List[bytes], rng: np.random.Generator) -> bytes:
    """One of ``files`` after a few mutations."""
    raw = files[int(rng.integers(len(files)))]
    for _ in range(int(rng.integers(1, 6))):
        raw = _MUTATIONS[int(rng.integers(len(_MUTATIONS)))](raw, files, rng)
    return raw[: 1 << 20]


def _place(raw: bytes, rng: np.random.Generator) -> int:
    return int(rng.integers(len(raw) + 1))


def _change(raw: bytes, files: List[bytes], rng: np.random.Generator) -> bytes:
    at = _place(raw, rng)
    return raw[:at] + bytes([int(rng.integers(256))]) + raw[at + 1 :]


def _insert(raw: bytes, files: List[bytes], rng: np.random.Generator) -> bytes:
    at = _place(raw, rng)
    return raw[:at] + TOKENS[int(rng.integers(len(TOKENS)))] + raw[at:]


def _remove(raw: bytes, files: List[bytes], rng: np.random.Generator) -> bytes:
    at = _place(raw, rng)
    return raw[:at] + raw[at + int(rng.integers(1, 12)) :]


def _cut(raw: bytes, files: List[bytes], rng: np.random.Generator) -> bytes:
    return raw[: _place(raw, rng)]


def _repeat(raw: bytes, files: List[bytes], rng: np.random.Generator) -> bytes:
    at, size = _place(raw, rng), int(rng.integers(1, 40))
    return raw[:at] + raw[at : at + size] * int(rng.integers(2, 30)) + raw[at + size :]


def _splice(raw: bytes, files: List[bytes], rng: np.random.Generator) -> bytes:
    other = files[int(rng.integers(len(files)))]
    return raw[: _place(raw, rng)] + other[_place(other, rng) :]


def _shuffle(raw: bytes, files: List[bytes], rng: np.random.Generator) -> bytes:
    lines = raw.split(b"\n")
    return b"\n".join(lines[i] for i in rng.permutation(len(lines)))


def _field(raw: bytes, files: List[bytes], rng: np.random.Generator) -> bytes:
    """Another token in place of what stands between two delimiters."""
    places = [i for i, byte in enumerate(raw) if byte in b",;\t \n"]
    if len(places) < 2:
        return raw
    i = int(rng.integers(len(places) - 1))
    return raw[: places[i] + 1] + TOKENS[int(rng.integers(len(TOKENS)))] + raw[places[i + 1] :]


def _recode(raw: bytes, files: List[bytes], rng: np.random.Generator) -> bytes:
    text = raw.decode("utf-8", "replace")
    return text.encode(("utf-16", "utf-8-sig", "utf-16-le", "cp1252", "utf-32")[int(rng.integers(5))], "replace")


Mutation = Callable[[bytes, List[bytes], np.random.Generator], bytes]
_MUTATIONS: Tuple[Mutation, ...] = (
    _change,
    _insert,
    _remove,
    _cut,
    _repeat,
    _splice,
    _shuffle,
    _field,
    _insert,
    _field,
    _recode,
)
