"""The surface as a 2DM mesh file, which QGIS loads as a mesh layer.

2DM is a text format: ``MESH2D``, a node a line (``ND number x y z``) and a cell a line
(``E3T number node node node material``); ``#`` begins a comment. A breakline edge is written as a
node string of its two nodes (``NS node -node``). QGIS passes over node strings and comments
(tried with QGIS 3.22); :func:`read_2dm` gets the edge kinds back from both.

Plan coordinates are written with 4 decimals. In a CRS in metres that is the grid of the surface
(``GRID``), so plan positions and all topology survive the file exactly; in feet the reader
comes back to the same grid. Heights are written with 6 decimals. What the file can't hold: which
survey point a vertex came from, vertices that no triangle uses, and the CRS.
"""

from __future__ import annotations

import warnings
from dataclasses import dataclass, replace
from pathlib import Path
from typing import Any, BinaryIO, Dict, Iterator, List, Optional, Sequence, Tuple

import numpy as np

from ..files import PathLike, replace_file
from ..georeference.crs import height_unit, plan_unit
from ..linework.constraints import LineKind
from ..messages import QT_TRANSLATE_NOOP, SurveyError, Text
from ..surface.mesh import twins_of
from ..surface.network import local_origin, to_grid
from ..surface.tin import GRID, Tin
from .digits import from_digits, to_digits
from .edges import constrained_edges, mark_edges
from .numbering import height_integers, places_of, plan_integers, used_of

PLAN_DECIMALS = 4
HEIGHT_DECIMALS = 6
_ROWS = 1 << 17  # rows formatted at a time; bounds the memory
_STRING_KIND = "# edges of kind "
_COUNTS = "# counts: nodes {nodes}, triangles {triangles}, constrained edges {edges}"

NO_FILE = Text(
    "mesh.missing",
    QT_TRANSLATE_NOOP("core", "{file}: the mesh file cannot be read ({reason}); check the path."),
)
NOT_2DM = Text(
    "mesh.not_2dm",
    QT_TRANSLATE_NOOP("core", "{file}, line 1: this is not a 2DM mesh, which begins with MESH2D; choose another file."),
)
BAD_RECORD = Text(
    "mesh.bad_record",
    QT_TRANSLATE_NOOP(
        "core", "{file}, line {line}: “{found}” is not a whole {record} record; write the mesh anew or mend this line."
    ),
)
NOT_TRIANGLE = Text(
    "mesh.not_triangle",
    QT_TRANSLATE_NOOP(
        "core", "{file}, line {line}: a {record} cell is not a triangle; split the cells into triangles (E3T) first."
    ),
)
NODE_TWICE = Text(
    "mesh.node_twice",
    QT_TRANSLATE_NOOP("core", "{file}, line {line}: node {node} was given before; number each node once."),
)
UNKNOWN_NODE = Text(
    "mesh.unknown_node",
    QT_TRANSLATE_NOOP(
        "core", "{file}, line {line}: node {node} is not in the file; it may have been cut short, write it anew."
    ),
)
FLAT_TRIANGLE = Text(
    "mesh.flat_triangle",
    QT_TRANSLATE_NOOP("core", "{file}, line {line}: the triangle has no area in plan; remove it."),
)
OVERLAP = Text(
    "mesh.overlap",
    QT_TRANSLATE_NOOP(
        "core", "{file}, line {line}: the triangle lies on the same side of an edge as another; remove one of them."
    ),
)
CUT_SHORT = Text(
    "mesh.cut_short",
    QT_TRANSLATE_NOOP(
        "core", "{file}: {found} {record} records found but {expected} announced; the file is cut short, write it anew."
    ),
)
NO_TRIANGLES = Text(
    "mesh.no_triangles",
    QT_TRANSLATE_NOOP("core", "{file}: the mesh has no triangles; choose another file or write it anew."),
)


# Writing


def write_2dm(tin: Tin, path: PathLike) -> None:
    """Write the triangles of ``tin`` to the 2DM file ``path``, in the units of its CRS.

    Metres for a local grid; heights in the CRS's unit of height, which is that of the plan where it has
    no height axis. Nodes are numbered from 1 in the order of ``tin.vertices``, without those that no
    triangle uses. The file appears only when it is whole. Raises ValueError when a height is not finite.
    """
    used, triangles = np.unique(tin.triangles, return_inverse=True)
    triangles = triangles.reshape(-1, 3) + 1
    edges, kinds = constrained_edges(tin)
    edges = np.searchsorted(used, edges) + 1
    plan = plan_integers(tin, used, plan_unit(tin.crs).metres, PLAN_DECIMALS)
    height = height_integers(tin, used, height_unit(tin.crs).metres, HEIGHT_DECIMALS)
    node, cell = np.arange(1, len(used) + 1), np.arange(1, len(triangles) + 1)
    with replace_file(path) as name, open(name, "wb") as file:
        counts = _COUNTS.format(nodes=len(used), triangles=len(triangles), edges=len(edges))
        file.write(f"MESH2D\n{counts}\n".encode())
        _write_rows(
            file,
            b"ND",
            [(node, 0), (plan[:, 0], PLAN_DECIMALS), (plan[:, 1], PLAN_DECIMALS), (height, HEIGHT_DECIMALS)],
        )
        _write_rows(file, b"E3T", [(cell, 0), *((triangles[:, i], 0) for i in range(3)), (np.ones_like(cell), 0)])
        for kind in np.unique(kinds):
            file.write(f"{_STRING_KIND}{_kind_words(int(kind))}\n".encode())
            _write_rows(file, b"NS", [(edges[kinds == kind, 0], 0), (-edges[kinds == kind, 1], 0)])


def _kind_words(kind: int) -> str:
    return "+".join(member.name or "" for member in LineKind if member and kind & member)


def _write_rows(file: BinaryIO, record: bytes, columns: Sequence[Tuple[np.ndarray, int]]) -> None:
    """Write ``record`` and the (integers, decimals) ``columns``, a line a row."""
    for start in range(0, len(columns[0][0]), _ROWS):
        blocks = [to_digits(values[start : start + _ROWS], decimals) for values, decimals in columns]
        rows = len(blocks[0])
        head = np.broadcast_to(np.frombuffer(record, np.uint8), (rows, len(record)))
        end = np.full((rows, 1), ord("\n"), np.uint8)
        file.write(np.hstack([head, *blocks, end]).tobytes())


# Reading


@dataclass(frozen=True)
class _Records:
    """The bytes of a file, where its lines ``begin`` (behind blanks) and ``end``, and their numbers by record.

    ``data``: (b,) uint8. Lines are counted from 1; line i is ``data[begin[i - 1]:end[i - 1]]``.
    """

    file: str
    data: np.ndarray
    begin: np.ndarray
    end: np.ndarray
    rows: Dict[bytes, np.ndarray]

    def text(self, line: int) -> bytes:
        return self.data[self.begin[line - 1] : self.end[line - 1]].tobytes()

    def texts(self, record: bytes) -> Iterator[bytes]:
        return (self.text(line) for line in self.rows[record].tolist())


def read_2dm(path: PathLike, crs: Optional[Any] = None) -> Tin:
    """The surface in the 2DM file ``path``, whose coordinates are in the units of ``crs`` (metres if None).

    Triangles are turned counter-clockwise; neighbours are found anew. ``vertex_source`` is -1 throughout.
    Node strings under one of our own comment lines give edge kinds; others, which elsewhere mean flow
    boundaries, do not. Raises SurveyError, naming file and line, when the file is missing, cut short or
    damaged, has cells other than triangles, or its triangles overlap at an edge.
    """
    records = _split_records(Path(path))
    number, coordinates = _read_nodes(records)
    triangles = _read_triangles(records, number)
    _check_counts(records)
    used, triangles = used_of(triangles, len(number))
    plan = coordinates[used, :2] * plan_unit(crs).metres
    height = coordinates[used, 2] * height_unit(crs).metres
    origin = local_origin(plan)
    grid = to_grid(plan, origin)
    _turn_counter_clockwise(triangles, grid, records)
    neighbours = _find_neighbours(triangles, records)
    return Tin(
        vertices=np.column_stack([grid * GRID, height]),
        triangles=triangles,
        neighbours=neighbours,
        edge_kind=_read_edge_kinds(records, number[used], triangles),
        grid=grid,
        origin=origin,
        vertex_source=np.full(len(used), -1, np.int64),
        crs=crs,
    )


_CELLS = (b"E2L", b"E3L", b"E4Q", b"E6T", b"E8Q", b"E9Q")
_BLANKS = np.isin(np.arange(256), np.frombuffer(b" \t\n\v\f\r", np.uint8))


def _split_records(path: Path) -> _Records:
    try:
        content = path.read_bytes()
    except OSError as error:
        raise SurveyError(NO_FILE, file=str(path), reason=error.strerror or str(error)) from None
    if b"\r" in content:
        content = content.replace(b"\r\n", b"\n").replace(b"\r", b"\n")
    data, begin, end = _lines(content)
    first = data[begin[0] : end[0]].tobytes() if len(begin) else b""
    if first.split() != [b"MESH2D"]:
        raise SurveyError(NOT_2DM, file=str(path))
    for kind in _CELLS:
        other = _begin_with(kind, data, begin)
        if other.any():
            raise SurveyError(NOT_TRIANGLE, file=str(path), line=int(np.argmax(other)) + 1, record=kind.decode())
    rows = {record: np.flatnonzero(_begin_with(record, data, begin)) + 1 for record in (b"ND", b"E3T", b"NS", b"#")}
    if len(rows[b"E3T"]) == 0:
        raise SurveyError(NO_TRIANGLES, file=str(path))
    return _Records(str(path), data, begin, end, rows)


def _lines(content: bytes) -> Tuple[np.ndarray, np.ndarray, np.ndarray]:
    """The bytes, some line ends after them, and where each line begins (behind blanks) and ends."""
    data = np.frombuffer(content + b"\n\n\n", np.uint8)  # so that any line has three bytes to look at
    end = np.flatnonzero(data[: len(content) + 1] == ord("\n"))
    begin = np.concatenate([[0], end[:-1] + 1])
    indented = np.flatnonzero(_BLANKS[data[begin]] & (begin < end))
    while len(indented):
        begin[indented] += 1
        indented = indented[_BLANKS[data[begin[indented]]] & (begin[indented] < end[indented])]
    return data, begin, end


def _begin_with(word: bytes, data: np.ndarray, begin: np.ndarray) -> np.ndarray:
    """Which lines (k,) begin with the letters ``word``."""
    mask: np.ndarray = data[begin] == word[0]
    for offset in range(1, len(word)):
        mask[mask] = data[begin[mask] + offset] == word[offset]
    return mask


def _numbers(records: _Records, record: bytes, counts: Sequence[int], whole: bool) -> np.ndarray:
    """The numbers of all ``record`` lines (n, k), k one of ``counts`` and the same in each line."""
    rows = records.rows[record]
    if len(rows) == 0:
        return np.empty((0, counts[0]))
    values = _equal_lines(records, record)
    if values is not None and values.shape[1] in counts and not (whole and (values != np.rint(values)).any()):
        return values
    text, found = _words(records, record)
    if found in counts:
        with warnings.catch_warnings():
            warnings.simplefilter("error", DeprecationWarning)  # how numpy says that it met no number
            try:
                values = np.fromstring(text, float, sep=" ").reshape(-1, found)
            except (DeprecationWarning, ValueError):
                values = np.empty((0, found))
        good = len(values) == len(rows) and np.isfinite(values).all()
        if good and (not whole or (values == np.rint(values)).all()):
            return values
    raise _bad_record(records, record, counts, whole)


def _equal_lines(records: _Records, record: bytes) -> Optional[np.ndarray]:
    """The numbers (n, k) of ``record`` lines that come in runs of equal columns, as :func:`write_2dm` has them.

    None where they do not; they may be good all the same.
    """
    line = records.rows[record] - 1
    begin, end = records.begin[line], records.end[line]
    width = end - begin
    changes = np.flatnonzero((begin[1:] - end[:-1] != 1) | (width[1:] != width[:-1])) + 1
    if len(changes) > len(line) // 1000 + 16:
        return None
    runs = np.unique(np.concatenate([[0], changes, np.arange(0, len(line), _ROWS), [len(line)]]))
    found: List[np.ndarray] = []
    for first, last in zip(runs[:-1].tolist(), runs[1:].tolist()):
        wide = int(width[first]) + 1
        text = records.data[begin[first] : begin[first] + (last - first) * wide].reshape(-1, wide)
        text = text[:, len(record) : -1]
        values = from_digits(text) if text.size and (text[:, 0] == ord(" ")).all() else None
        if values is None or (found and values.shape[1] != found[0].shape[1]):
            return None
        found.append(values)
    return np.concatenate(found)


def _words(records: _Records, record: bytes) -> Tuple[bytes, int]:
    """What stands behind the word ``record`` in all its lines, and how many words that is in each.

    The number is -1 where lines differ.
    """
    line = records.rows[record] - 1
    begin, end = records.begin[line] + len(record), records.end[line]
    if not _BLANKS[records.data[begin]].all():
        return b"", -1  # the record's word goes on
    low, high = int(begin[0]), int(end[-1])
    # All that is between these lines becomes blank.
    turn = np.zeros(high - low + 1, np.int8)
    turn[begin - low] = 1
    turn[end - low] -= 1
    inside = np.cumsum(turn, dtype=np.int8, out=turn)[:-1].view(bool)
    text = np.where(inside, records.data[low:high], np.uint8(ord(" ")))
    solid = ~_BLANKS[text]
    starts = np.flatnonzero(solid[1:] & ~solid[:-1]) + (low + 1)
    count, more = divmod(len(starts), len(line))
    if more or count == 0:
        return b"", -1
    # Each line has as many words if the first and the last of every so many are in one line.
    first, last = starts[::count], starts[count - 1 :: count]
    same = bool(np.all((first >= begin) & (last < end)))
    return text.tobytes(), count if same else -1


def _bad_record(records: _Records, record: bytes, counts: Sequence[int], whole: bool) -> SurveyError:
    """The first ``record`` line that is not what it should be."""
    usual = None
    line, text = 0, b""
    for line, text in zip(records.rows[record].tolist(), records.texts(record)):  # noqa: B007  used after the loop
        words = text.split()
        try:
            values = [float(word) for word in words[1:]]
        except ValueError:
            values = []
        usual = usual or len(values)
        good = words[0] == record and len(values) == usual and len(values) in counts and np.isfinite(values).all()
        if not good or (whole and any(value != int(value) for value in values)):
            break
    shown = text.decode("utf-8", "replace").strip()[:60]
    return SurveyError(BAD_RECORD, file=records.file, line=line, found=shown, record=record.decode())


def _read_nodes(records: _Records) -> Tuple[np.ndarray, np.ndarray]:
    """Node numbers (n,) int64 in rising order and their coordinates (n, 3) as in the file."""
    values = _numbers(records, b"ND", (4,), whole=False)
    number = values[:, 0].astype(np.int64)
    order = np.argsort(number, kind="stable")
    twice = order[1:][number[order][1:] == number[order][:-1]]
    if len(twice):
        line = int(records.rows[b"ND"][twice.min()])
        raise SurveyError(NODE_TWICE, file=records.file, line=line, node=int(number[twice.min()]))
    return number[order], values[order, 1:]


def _read_triangles(records: _Records, number: np.ndarray) -> np.ndarray:
    """Corners (m, 3) as positions in ``number``."""
    nodes = _numbers(records, b"E3T", (5, 4), whole=True)[:, 1:4].astype(np.int64)
    place = places_of(number, nodes)
    unknown = place < 0
    if unknown.any():
        row, corner = np.argwhere(unknown)[0]
        line = int(records.rows[b"E3T"][row])
        raise SurveyError(UNKNOWN_NODE, file=records.file, line=line, node=int(nodes[row, corner]))
    return place


def _check_counts(records: _Records) -> None:
    """Compare with the counts that :func:`write_2dm` announces; other programs' files have none."""
    words = records.text(2).decode("utf-8", "replace").replace(",", " ").split() if len(records.begin) > 1 else []
    if words[:2] != ["#", "counts:"]:
        return
    expected = [int(word) for word in words if word.isdigit()]
    for record, count in zip((b"ND", b"E3T", b"NS"), expected):
        found = len(records.rows[record])
        if found != count:
            raise SurveyError(CUT_SHORT, file=records.file, record=record.decode(), found=found, expected=count)


def _turn_counter_clockwise(triangles: np.ndarray, grid: np.ndarray, records: _Records) -> None:
    """Swap two corners of the clockwise rows of ``triangles``, in place; refuse flat ones."""
    a, b, c = (grid[triangles[:, i]] for i in range(3))
    twice_area = (b[:, 0] - a[:, 0]) * (c[:, 1] - a[:, 1]) - (b[:, 1] - a[:, 1]) * (c[:, 0] - a[:, 0])
    if (twice_area == 0).any():
        line = int(records.rows[b"E3T"][np.argmax(twice_area == 0)])
        raise SurveyError(FLAT_TRIANGLE, file=records.file, line=line)
    clockwise = twice_area < 0
    triangles[clockwise] = triangles[clockwise][:, [0, 2, 1]]


def _find_neighbours(triangles: np.ndarray, records: _Records) -> np.ndarray:
    """Triangles across each edge (m, 3) int32, -1 at the rim."""
    try:
        twin = twins_of(triangles.ravel())
    except ValueError:
        raise _overlap(triangles, records) from None
    return np.where(twin >= 0, twin // 3, -1).reshape(-1, 3).astype(np.int32)


def _overlap(triangles: np.ndarray, records: _Records) -> SurveyError:
    """Names the first triangle that has an edge in the same direction as an earlier one."""
    key = triangles.astype(np.int64) * (int(triangles.max()) + 1) + np.roll(triangles, -1, axis=1)
    _, first = np.unique(key, return_index=True)
    again = np.setdiff1d(np.arange(key.size), first)
    return SurveyError(OVERLAP, file=records.file, line=int(records.rows[b"E3T"][again[0] // 3]))


def _read_edge_kinds(records: _Records, number: np.ndarray, triangles: np.ndarray) -> np.ndarray:
    """Edge kinds (m, 3) uint8 from our node strings; ``number``: the node number of each vertex."""
    ours = _string_kinds(records)
    edge_kind = np.zeros(triangles.shape, np.uint8)
    if not ours.any():
        return edge_kind
    mine = replace(records, rows={b"NS": records.rows[b"NS"][ours > 0]})
    nodes = np.abs(_numbers(mine, b"NS", (2,), whole=True)).astype(np.int64)
    ends = np.minimum(np.searchsorted(number, nodes), len(number) - 1)
    edge_kind, found = mark_edges(triangles, len(number), ends, ours[ours > 0])
    lost = np.flatnonzero(~found | (number[ends] != nodes).any(axis=1))
    if len(lost):
        line = int(mine.rows[b"NS"][lost[0]])
        text = records.text(line).decode("utf-8", "replace").strip()
        raise SurveyError(BAD_RECORD, file=records.file, line=line, found=text[:60], record="NS")
    return edge_kind


def _string_kinds(records: _Records) -> np.ndarray:
    """The kind (k,) uint8 that our comments give to each node string; 0 for one of another program."""
    rows = records.rows[b"NS"]
    kinds = np.zeros(len(rows), np.uint8)
    if len(rows) == 0:
        return kinds
    mark = _STRING_KIND.encode()
    known = {member.name: int(member) for member in LineKind}
    for line in records.rows[b"#"].tolist():
        text = records.text(line)
        if text.startswith(mark):
            words = text[len(mark) :].decode("ascii", "replace").strip().split("+")
            kinds[rows > line] = sum(known.get(word, 0) for word in words)
    return kinds
