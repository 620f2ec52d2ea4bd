"""The objects of a PDF file in one order, so that the same pages are the same file.

Qt writes the fonts of a document in an order that differs from one run of a program to the next, and a library that
adds to a file appends what is new behind what it replaces. Here the objects are numbered anew as one meets them on the
way from the document's root (ISO 32000-1, 7.5: header, objects, cross-reference table, trailer); nothing in them
changes but the numbers and the tags of embedded fonts (9.6.4).
"""

from __future__ import annotations

import re
from pathlib import Path
from typing import Dict, List, NamedTuple, Tuple

from ..files import PathLike

_START = re.compile(rb"startxref\s+(\d+)")
_SECTION = re.compile(rb"\s*(\d+)[ ]+(\d+)[ ]*\r?\n")
_TRAILER = re.compile(rb"\s*trailer\s*(<<.*?>>)\s*startxref", re.DOTALL)
_HEAD = re.compile(rb"\s*(\d+)\s+(\d+)\s+obj\b")
#: What is looked for in an object, after the strings that might look like it.
_TOKEN = re.compile(
    rb"\((?:\\.|[^\\()])*\)|<[0-9A-Fa-f\s]*>|\b(?P<number>\d+)\s+(?P<version>\d+)\s+R\b"
    rb"|\b(?P<stream>stream)\r?\n|\b(?P<end>endobj)\b",
    re.DOTALL,
)
_LENGTH = re.compile(rb"/Length\s+(\d+)(\s+\d+\s+R)?")
_TAG = re.compile(rb"/([A-Z]{6})\+")
_MOST_SECTIONS = 1000


class NotPlain(ValueError):
    """The file is built in another way (compressed objects, encryption); it is left as it is."""


class _Object(NamedTuple):
    text: bytes
    "Up to the end or the stream."
    stream: bytes


def settle_pdf(path: PathLike) -> bool:
    """Write the PDF file anew with its objects in one order; whether it could be done.

    For a file that is not yet in its place (see ``replace_file``). A file of another build is left as it is. Raises
    OSError.
    """
    try:
        settled = ordered(Path(path).read_bytes())
    except NotPlain:
        return False
    with open(path, "wb") as file:
        file.write(settled)
    return True


def ordered(data: bytes) -> bytes:
    """The file with its objects numbered anew. Raises NotPlain."""
    places, trailer = _cross_references(data)
    if b"/Encrypt" in trailer:
        raise NotPlain("encrypted")
    objects = {number: _object_at(data, place, number, places) for number, place in places.items()}
    roots = [_reference(trailer, b"/Root")]
    roots += [_reference(trailer, b"/Info")] if b"/Info" in trailer else []
    order = _as_met(objects, roots)
    anew = {number: i + 1 for i, number in enumerate(order)}
    tags: Dict[bytes, bytes] = {}
    parts: List[bytes] = [data[: data.index(b"\n") + 1], b"%\xe2\xe3\xcf\xd3\n"]
    starts: List[int] = []
    length = sum(len(part) for part in parts)
    for number in order:
        text = _with_tags(_renumbered(objects[number].text, anew), tags)
        part = b"%d 0 obj\n" % anew[number] + text.strip(b"\r\n \t") + objects[number].stream + b"\nendobj\n"
        starts.append(length)
        parts.append(part)
        length += len(part)
    parts.append(b"xref\n0 %d\n0000000000 65535 f \n" % (len(order) + 1))
    parts += [b"%010d 00000 n \n" % start for start in starts]
    info = b"/Info %d 0 R\n" % anew[roots[1]] if len(roots) > 1 else b""
    parts.append(b"trailer\n<<\n/Size %d\n/Root %d 0 R\n" % (len(order) + 1, anew[roots[0]]) + info + b">>\n")
    parts.append(b"startxref\n%d\n%%%%EOF\n" % length)
    return b"".join(parts)


def _cross_references(data: bytes) -> Tuple[Dict[int, int], bytes]:
    """Place of every object in use, what was added last first; and the last trailer."""
    found = _START.findall(data[-2048:])
    if not found:
        raise NotPlain("no cross-reference table")
    places: Dict[int, int] = {}
    free: Dict[int, bool] = {}
    last = b""
    place = int(found[-1])
    for _ in range(_MOST_SECTIONS):
        place = _read_sections(data, place, places, free)
        trailer = _TRAILER.match(data, place)
        if trailer is None or b"/XRefStm" in trailer.group(1):
            raise NotPlain("no trailer")
        last = last or trailer.group(1)
        earlier = re.search(rb"/Prev\s+(\d+)", trailer.group(1))
        if earlier is None:
            return places, last
        place = int(earlier.group(1))
    raise NotPlain("too many parts")


def _read_sections(data: bytes, place: int, places: Dict[int, int], free: Dict[int, bool]) -> int:
    """Read the table at ``place`` into ``places``; where its trailer begins."""
    if data[place : place + 4] != b"xref":
        raise NotPlain("compressed cross-references")
    place += 4
    while True:
        section = _SECTION.match(data, place)
        if section is None:
            return place
        first, count, place = int(section.group(1)), int(section.group(2)), section.end()
        for number in range(first, first + count):
            entry = data[place : place + 20]
            place += 20
            if not re.fullmatch(rb"\d{10} \d{5} [nf][ \r][\r\n]", entry):
                raise NotPlain("an odd cross-reference")
            if number not in places and number not in free:
                if entry[17:18] == b"n":
                    places[number] = int(entry[:10])
                else:
                    free[number] = True


def _object_at(data: bytes, place: int, number: int, places: Dict[int, int]) -> _Object:
    head = _HEAD.match(data, place)
    if head is None or int(head.group(1)) != number:
        raise NotPlain(f"object {number} is not where the table says")
    for token in _TOKEN.finditer(data, head.end()):
        if token.group("end"):
            return _Object(data[head.end() : token.start()], b"")
        if token.group("stream"):
            text = data[head.end() : token.start()]
            end = token.end() + _length_of_stream(data, text, places)
            if not re.match(rb"\s*endstream\s+endobj\b", data[end : end + 40]):
                raise NotPlain(f"the stream of object {number} does not end where it says")
            return _Object(text, b"\nstream\n" + data[token.end() : end] + b"\nendstream")
    raise NotPlain(f"object {number} does not end")


def _length_of_stream(data: bytes, text: bytes, places: Dict[int, int]) -> int:
    said = _LENGTH.search(text)
    if said is None:
        raise NotPlain("a stream without length")
    if said.group(2) is None:
        return int(said.group(1))
    number = int(said.group(1))
    value = re.match(rb"\s*%d\s+\d+\s+obj\s+(\d+)\s+endobj" % number, data[places.get(number, 0) :][:80])
    if value is None:
        raise NotPlain("a stream whose length is not there")
    return int(value.group(1))


def _reference(text: bytes, key: bytes) -> int:
    found = re.search(key + rb"\s+(\d+)\s+\d+\s+R", text)
    if found is None:
        raise NotPlain(f"no {key.decode()}")
    return int(found.group(1))


def _as_met(objects: Dict[int, _Object], roots: List[int]) -> List[int]:
    """Numbers of all objects that are referred to, in the order in which one meets them, depth first."""
    met: Dict[int, None] = {}
    waiting = roots[::-1]
    while waiting:
        number = waiting.pop()
        if number in met or number not in objects:  # a reference to nothing means null
            continue
        met[number] = None
        waiting += [int(token["number"]) for token in _TOKEN.finditer(objects[number].text) if token["number"]][::-1]
    return list(met)


def _renumbered(text: bytes, anew: Dict[int, int]) -> bytes:
    def new(token: re.Match[bytes]) -> bytes:
        if not token["number"]:
            return token.group()
        number = int(token["number"])
        return b"%d 0 R" % anew[number] if number in anew else b"null"

    return _TOKEN.sub(new, text)


def _with_tags(text: bytes, tags: Dict[bytes, bytes]) -> bytes:
    """Tags of subsets of fonts by the order in which they are met."""

    def new(found: re.Match[bytes]) -> bytes:
        count = len(tags)
        letters = bytes(65 + count // 26**i % 26 for i in range(5))
        return b"/" + tags.setdefault(found.group(1), b"Q" + letters) + b"+"

    return _TAG.sub(new, text) if b"+" in text else text
