"""Tables within web pages, lists of objects in JSON, and elements that repeat in XML, as text."""

from __future__ import annotations

import json
import re
from html.parser import HTMLParser
from typing import Any, Dict, Iterator, List, NamedTuple, Optional, Sequence, Tuple
from xml.etree import ElementTree  # nosec B405

_MOST_DEPTH = 8


class MarkupTable(NamedTuple):
    """A table as lines of cells with tabs between. ``kind``: what it was read from; ``headed``: whether its first line
    is the header for sure.
    """

    kind: str
    text: str
    headed: bool


def table_in(raw: bytes) -> Optional[MarkupTable]:
    """The largest table of a web page, or list of objects of JSON; None for any other file."""
    head = raw[:4096].lstrip(b"\xef\xbb\xbf \t\r\n").lower()
    if head.startswith(b"<") and b"<table" in raw[: 1 << 20].lower():
        return _of_page(raw)
    if head[:1] in (b"[", b"{"):
        return _of_json(raw)
    return _of_xml(raw) if re.match(rb"<(?:\?xml|[a-z_])", head) else None


def _of_page(raw: bytes) -> Optional[MarkupTable]:
    reader = _Reader()
    reader.feed(raw.decode("utf-8", "replace"))
    rows = max(reader.tables, key=len, default=[])
    return MarkupTable("HTML", _lines(rows), False) if len(rows) > 1 else None


def _of_xml(raw: bytes) -> Optional[MarkupTable]:
    """Of the elements that repeat, with values within or as attributes, those with most values."""
    if b"<!DOCTYPE" in raw or b"<!ENTITY" in raw or b"\0" in raw[:256]:
        return None
    try:
        root = ElementTree.fromstring(raw)  # nosec B314: without document types and entities
    except (ElementTree.ParseError, ValueError, LookupError):
        return None
    rows: Dict[str, List[Dict[str, Any]]] = {}
    for one in root.iter():
        cells = dict(_cells_of(one, "", 0))
        if len(cells) >= 3:
            rows.setdefault(one.tag, []).append(cells)
    best = max(rows.values(), key=lambda each: (len(each) > 1, sum(map(len, each))), default=[])
    if len(best) < 2:
        return None
    keys = list(dict.fromkeys(key for row in best for key in row))
    return MarkupTable("XML", _lines([keys, *([row.get(key, "") for key in keys] for row in best)]), True)


def _cells_of(element: Any, before: str, depth: int) -> Iterator[Tuple[str, str]]:
    for key, value in element.attrib.items():
        yield f"{before}{_bare(key)}", value
    for child in element if depth < 2 else ():
        name = f"{before}{_bare(child.tag)}"
        if len(child) or child.attrib:
            yield from _cells_of(child, f"{name} ", depth + 1)
        if (child.text or "").strip():
            yield name, (child.text or "").strip()


def _bare(name: str) -> str:
    return name.rpartition("}")[2]


class _Reader(HTMLParser):
    """Collects the rows of each table."""

    def __init__(self) -> None:
        super().__init__(convert_charrefs=True)
        self.tables: List[List[List[str]]] = []
        self._cell: Optional[List[str]] = None

    def handle_starttag(self, tag: str, attrs: List[Tuple[str, Optional[str]]]) -> None:
        if tag == "table":
            self.tables.append([])
        elif tag == "tr" and self.tables:
            self.tables[-1].append([])
        elif tag in ("td", "th") and self.tables and self.tables[-1]:
            self.tables[-1][-1].append("")
            self._cell = self.tables[-1][-1]

    def handle_endtag(self, tag: str) -> None:
        if tag in ("td", "th", "tr", "table"):
            self._cell = None

    def handle_data(self, data: str) -> None:
        if self._cell is not None:
            self._cell[-1] += data


def _of_json(raw: bytes) -> Optional[MarkupTable]:
    try:
        text = raw.decode("utf-8-sig")
    except UnicodeDecodeError:
        return None
    try:
        data = json.loads(text)
    except ValueError:
        data = _by_line(text)
    except RecursionError:
        return None
    rows = max(_lists(data, 0), key=len, default=[])
    if not rows:
        return None
    flat = [dict(_flat(row)) for row in rows]
    keys = list(dict.fromkeys(key for row in flat for key in row))
    cells = [[_written(row.get(key)) for key in keys] for row in flat]
    return MarkupTable("JSON", _lines([keys, *cells]), True) if len(keys) >= 3 else None


def _by_line(text: str) -> Any:
    """Objects of which each stands in a line of its own."""
    found = []
    for line in text.split("\n"):
        if line.strip():
            try:
                found.append(json.loads(line))
            except (ValueError, RecursionError):
                return None
    return found


def _lists(data: Any, depth: int) -> Iterator[List[Dict[str, Any]]]:
    """Lists of objects, at any depth."""
    if depth > _MOST_DEPTH or (isinstance(data, dict) and "type" in data and "coordinates" in data):
        return
    if isinstance(data, list):
        rows = [one for one in data if isinstance(one, dict)]
        if rows:
            yield rows
        if len(rows) * 2 > len(data):
            return
    for one in data.values() if isinstance(data, dict) else data if isinstance(data, list) else ():
        yield from _lists(one, depth + 1)


def _flat(row: Dict[str, Any], before: str = "", depth: int = 0) -> Iterator[Tuple[str, Any]]:
    for key, value in row.items():
        if isinstance(value, dict) and depth < _MOST_DEPTH:
            yield from _flat(value, f"{before}{key} ", depth + 1)
        else:
            yield f"{before}{key}", value


def _written(value: Any) -> str:
    if value is None:
        return ""
    return repr(value) if isinstance(value, float) else str(value)


def _lines(rows: Sequence[Sequence[str]]) -> str:
    made = []
    for row in rows:
        cells = [" ".join(cell.split()) for cell in row]
        made.append("\t".join('"' + cell.replace('"', '""') + '"' if '"' in cell else cell for cell in cells) + "\n")
    return "".join(made)
