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

from dataclasses import replace
from pathlib import Path
from typing import Any, BinaryIO, Optional, Sequence, Tuple

import numpy as np

from ..files import PathLike, replace_file
from ..georeference.crs import height_unit, plan_unit
from ..linework.constraints import LineKind
from ..messages import QT_TRANSLATE_NOOP, SurveyError, Text
from ..surface.mesh import twins_of
from ..surface.network import local_origin, to_grid
from ..surface.tin import GRID, Tin
from .digits import to_digits
from .edges import constrained_edges, mark_edges
from .mesh_records import BAD_RECORD, ROWS, Records, content_of, numbers_of, split_records
from .numbering import height_integers, places_of, plan_integers, used_of

PLAN_DECIMALS = 4
HEIGHT_DECIMALS = 6
_STRING_KIND = "# edges of kind "
_COUNTS = "# counts: nodes {nodes}, triangles {triangles}, constrained edges {edges}"

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
    for start in range(0, len(columns[0][0]), ROWS):
        blocks = [to_digits(values[start : start + ROWS], decimals) for values, decimals in columns]
        rows = len(blocks[0])
        head = np.broadcast_to(np.frombuffer(record, np.uint8), (rows, len(record)))
        end = np.full((rows, 1), ord("\n"), np.uint8)
        file.write(np.hstack([head, *blocks, end]).tobytes())


# Reading


def read_2dm(path: PathLike, crs: Optional[Any] = None) -> Tin:
    """The surface in the 2DM file ``path``, whose coordinates are in the units of ``crs`` (metres if None).

    Triangles are turned counter-clockwise; neighbours are found anew. ``vertex_source`` is -1 throughout.
    Node strings under one of our own comment lines give edge kinds; others, which elsewhere mean flow
    boundaries, do not. Raises SurveyError, naming file and line, when the file is missing, cut short or
    damaged, has cells other than triangles, or its triangles overlap at an edge.
    """
    return parse_2dm(content_of(Path(path)), path, crs)


def parse_2dm(content: bytes, path: PathLike, crs: Optional[Any] = None) -> Tin:
    """As :func:`read_2dm`, from the ``content`` of the file ``path``."""
    records = split_records(Path(path), content)
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


def _read_nodes(records: Records) -> Tuple[np.ndarray, np.ndarray]:
    """Node numbers (n,) int64 in rising order and their coordinates (n, 3) as in the file."""
    values = numbers_of(records, b"ND", (4,), whole=False)
    number = values[:, 0].astype(np.int64)
    order = np.argsort(number, kind="stable")
    twice = order[1:][number[order][1:] == number[order][:-1]]
    if len(twice):
        line = int(records.rows[b"ND"][twice.min()])
        raise SurveyError(NODE_TWICE, file=records.file, line=line, node=int(number[twice.min()]))
    return number[order], values[order, 1:]


def _read_triangles(records: Records, number: np.ndarray) -> np.ndarray:
    """Corners (m, 3) as positions in ``number``."""
    nodes = numbers_of(records, b"E3T", (5, 4), whole=True)[:, 1:4].astype(np.int64)
    place = places_of(number, nodes)
    unknown = place < 0
    if unknown.any():
        row, corner = np.argwhere(unknown)[0]
        line = int(records.rows[b"E3T"][row])
        raise SurveyError(UNKNOWN_NODE, file=records.file, line=line, node=int(nodes[row, corner]))
    return place


def _check_counts(records: Records) -> None:
    """Compare with the counts that :func:`write_2dm` announces; other programs' files have none."""
    words = records.text(2).decode("utf-8", "replace").replace(",", " ").split() if len(records.begin) > 1 else []
    if words[:2] != ["#", "counts:"]:
        return
    expected = [int(word) for word in words if word.isdigit()]
    for record, count in zip((b"ND", b"E3T", b"NS"), expected):
        found = len(records.rows[record])
        if found != count:
            raise SurveyError(CUT_SHORT, file=records.file, record=record.decode(), found=found, expected=count)


def _turn_counter_clockwise(triangles: np.ndarray, grid: np.ndarray, records: Records) -> None:
    """Swap two corners of the clockwise rows of ``triangles``, in place; refuse flat ones."""
    a, b, c = (grid[triangles[:, i]] for i in range(3))
    twice_area = (b[:, 0] - a[:, 0]) * (c[:, 1] - a[:, 1]) - (b[:, 1] - a[:, 1]) * (c[:, 0] - a[:, 0])
    if (twice_area == 0).any():
        line = int(records.rows[b"E3T"][np.argmax(twice_area == 0)])
        raise SurveyError(FLAT_TRIANGLE, file=records.file, line=line)
    clockwise = twice_area < 0
    triangles[clockwise] = triangles[clockwise][:, [0, 2, 1]]


def _find_neighbours(triangles: np.ndarray, records: Records) -> np.ndarray:
    """Triangles across each edge (m, 3) int32, -1 at the rim."""
    try:
        twin = twins_of(triangles.ravel())
    except ValueError:
        raise _overlap(triangles, records) from None
    return np.where(twin >= 0, twin // 3, -1).reshape(-1, 3).astype(np.int32)


def _overlap(triangles: np.ndarray, records: Records) -> SurveyError:
    """Names the first triangle that has an edge in the same direction as an earlier one."""
    key = triangles.astype(np.int64) * (int(triangles.max()) + 1) + np.roll(triangles, -1, axis=1)
    _, first = np.unique(key, return_index=True)
    again = np.setdiff1d(np.arange(key.size), first)
    return SurveyError(OVERLAP, file=records.file, line=int(records.rows[b"E3T"][again[0] // 3]))


def _read_edge_kinds(records: Records, number: np.ndarray, triangles: np.ndarray) -> np.ndarray:
    """Edge kinds (m, 3) uint8 from our node strings; ``number``: the node number of each vertex."""
    ours = _string_kinds(records)
    edge_kind = np.zeros(triangles.shape, np.uint8)
    if not ours.any():
        return edge_kind
    mine = replace(records, rows={b"NS": records.rows[b"NS"][ours > 0]})
    nodes = np.abs(numbers_of(mine, b"NS", (2,), whole=True)).astype(np.int64)
    ends = np.minimum(np.searchsorted(number, nodes), len(number) - 1)
    edge_kind, found = mark_edges(triangles, len(number), ends, ours[ours > 0])
    lost = np.flatnonzero(~found | (number[ends] != nodes).any(axis=1))
    if len(lost):
        line = int(mine.rows[b"NS"][lost[0]])
        text = records.text(line).decode("utf-8", "replace").strip()
        raise SurveyError(BAD_RECORD, file=records.file, line=line, found=text[:60], record="NS")
    return edge_kind


def _string_kinds(records: Records) -> np.ndarray:
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
