"""Edits that change the triangles themselves: swapped edges, removed and added triangles, heights of vertices.

They work on the triangulation of the convex hull and on the mask of the triangles that the surface takes, so
what comes out is always a valid triangulation. Everything is decided on the whole-number plan grid.
"""

from __future__ import annotations

from dataclasses import replace
from typing import Dict, Iterable, Iterator, List, Optional, Sequence, Set, Tuple

import numpy as np

from ..messages import QT_TRANSLATE_NOOP, Text
from .build import Triangulation
from .cells import candidate_pairs
from .edit_data import NO_POINT
from .edit_log import REACH, EditLog, PlaceIndex, first_of
from .edits import AddTriangle, DropTriangles, Edit, MovePoint, Place, RemoveTriangle, SwapEdge
from .mesh import Mesh
from .predicates import LIMIT
from .region import even_odd
from .tin import GRID

NO_TRIANGLE = Text(
    "edits.no_triangle",
    QT_TRANSLATE_NOOP(
        "core",
        "Edit {number} ({kind}) does not apply: the surface has no triangle at E {easting:.3f} N {northing:.3f}.",
    ),
)
NO_EDGE = Text(
    "edits.no_edge",
    QT_TRANSLATE_NOOP(
        "core",
        "Edit {number} ({kind}) does not apply: no edge joins E {easting:.3f} N {northing:.3f} and "
        "E {end_easting:.3f} N {end_northing:.3f}.",
    ),
)
EDGE_ON_RIM = Text(
    "edits.edge_on_rim",
    QT_TRANSLATE_NOOP(
        "core",
        "Edit {number} ({kind}) does not apply: the edge at E {easting:.3f} N {northing:.3f} is on the rim; "
        "there are not two triangles to swap it in.",
    ),
)
EDGE_HELD = Text(
    "edits.edge_held",
    QT_TRANSLATE_NOOP(
        "core",
        "Edit {number} ({kind}) does not apply: the edge at E {easting:.3f} N {northing:.3f} belongs to a breakline, "
        "boundary, void or forced edge.",
    ),
)
NOT_CONVEX = Text(
    "edits.not_convex",
    QT_TRANSLATE_NOOP(
        "core",
        "Edit {number} ({kind}) does not apply: the two triangles at E {easting:.3f} N {northing:.3f} form no "
        "convex quadrilateral, so there is no other diagonal.",
    ),
)
THERE_ALREADY = Text(
    "edits.there_already",
    QT_TRANSLATE_NOOP(
        "core",
        "Edit {number} ({kind}) does not apply: the surface has the triangle at E {easting:.3f} N {northing:.3f} "
        "already.",
    ),
)
NOTHING_TO_ADD = Text(
    "edits.nothing_to_add",
    QT_TRANSLATE_NOOP(
        "core",
        "Edit {number} ({kind}) does not apply: E {easting:.3f} N {northing:.3f} is outside the outermost points; "
        "no triangle can be added there.",
    ),
)
NO_SUCH_TRIANGLE = Text(
    "edits.no_such_triangle",
    QT_TRANSLATE_NOOP(
        "core",
        "Edit {number} ({kind}) does not apply: its three corners are not the corners of one triangle, "
        "the first at E {easting:.3f} N {northing:.3f}. Force or swap edges first.",
    ),
)
NONE_IN_POLYGON = Text(
    "edits.none_in_polygon",
    QT_TRANSLATE_NOOP(
        "core",
        "Edit {number} ({kind}) does not apply: the surface has no triangle with its centroid in the polygon at "
        "E {easting:.3f} N {northing:.3f}.",
    ),
)
LAST_TRIANGLE = Text(
    "edits.last_triangle",
    QT_TRANSLATE_NOOP("core", "Edit {number} ({kind}) does not apply: it would leave no triangle of the surface."),
)

_TRIANGLE_EDITS = (SwapEdge, RemoveTriangle, AddTriangle, DropTriangles)


def edit_triangles(
    whole: Triangulation, edits: Sequence[Edit], pending: Iterable[int], log: EditLog, reach: float = REACH
) -> Triangulation:
    """Replay the edits of triangles in their order, and the moves of numbers ``pending``; ``whole`` stays as it is.

    What does not apply is told to ``log``. ``reach``: metres within which a place means a vertex.
    """
    moves = set(pending)
    mine = [
        (number, edit)
        for number, edit in enumerate(edits, start=1)
        if isinstance(edit, _TRIANGLE_EDITS) or number in moves
    ]
    if not mine:
        return whole
    editor = _Editor(whole, [edit for _, edit in mine], reach)
    for number, edit in mine:
        refusal = editor.apply(edit)
        if refusal is None:
            log.done(number)
        else:
            text, place, values = refusal
            log.tell(number, edit, text, easting=place[0], northing=place[1], **values)
    network = replace(whole.network, z=editor.z)
    return replace(whole, mesh=editor.mesh, network=network, keep=editor.keep)


#: Why an edit does not apply: text, place, further values.
_Refusal = Tuple[Text, Place, Dict[str, float]]


class _Editor:
    """A copy of the triangulation while edits change it."""

    def __init__(self, whole: Triangulation, edits: Sequence[Edit], reach: float) -> None:
        mesh, network = whole.mesh, whole.network
        self.mesh = Mesh(mesh.x, mesh.y, mesh.vertex.copy(), mesh.twin.copy(), mesh.kind.copy())
        self.keep, self.z, self.origin, self.reach = whole.keep.copy(), network.z.copy(), network.origin, reach
        east, north = (network.x * GRID + self.origin[0], network.y * GRID + self.origin[1])
        self.index = PlaceIndex(east, north)
        self.leaving = np.full(len(network.x), -1, np.int64)  # any half-edge that starts at the vertex
        self.leaving[self.mesh.vertex] = np.arange(len(self.mesh.vertex))
        self.changed: Set[int] = set()  # triangles of swapped edges
        by_place = (edit for edit in edits if isinstance(edit, (SwapEdge, RemoveTriangle, AddTriangle)))
        places = [edit.place for edit in by_place if edit.place is not None]
        self.met = self._locate(places)  # triangles of the untouched mesh at each place

    def apply(self, edit: Edit) -> Optional[_Refusal]:
        if isinstance(edit, SwapEdge):
            return self._swap(edit)
        if isinstance(edit, RemoveTriangle):
            return self._remove(edit)
        if isinstance(edit, AddTriangle):
            return self._add(edit)
        if isinstance(edit, DropTriangles):
            return self._drop(edit)
        if isinstance(edit, MovePoint):
            return self._move(edit)
        raise TypeError(f"not an edit of triangles: {edit}")

    # --- the edits

    def _swap(self, edit: SwapEdge) -> Optional[_Refusal]:
        if edit.ends is not None:
            a, b = edit.ends
            h = self._edge(self._vertex(a), self._vertex(b))
            place = ((a[0] + b[0]) / 2, (a[1] + b[1]) / 2)
            if h is None or not self._on_surface(h):
                return NO_EDGE, a, {"end_easting": b[0], "end_northing": b[1]}
        else:
            place = edit.place or (np.nan, np.nan)
            h = self._nearest_edge(place)
            if h is None:
                return NO_TRIANGLE, place, {}
        g = int(self.mesh.twin[h])
        if self.mesh.kind[h]:
            return EDGE_HELD, place, {}
        if g < 0 or not (self.keep[h // 3] and self.keep[g // 3]):
            return EDGE_ON_RIM, place, {}
        if not self.mesh.convex(np.array([h]))[0]:
            return NOT_CONVEX, place, {}
        self.mesh.flip(np.array([h]))
        for t in (h // 3, g // 3):
            self.changed.add(t)
            for i in range(3 * t, 3 * t + 3):
                self.leaving[self.mesh.vertex[i]] = i
        return None

    def _remove(self, edit: RemoveTriangle) -> Optional[_Refusal]:
        there = [t for t in self._at(edit.place) if self.keep[t]]
        if not there:
            return NO_TRIANGLE, edit.place, {}
        if np.count_nonzero(self.keep) == 1:
            return LAST_TRIANGLE, edit.place, {}
        self.keep[self._first(there)] = False
        return None

    def _add(self, edit: AddTriangle) -> Optional[_Refusal]:
        if edit.corners is not None:
            place = edit.corners[0]
            there = self._triangles_of(edit.corners)
            missing = NO_SUCH_TRIANGLE
        else:
            place = edit.place or (np.nan, np.nan)
            there = self._at(place)
            missing = NOTHING_TO_ADD
        if not there:
            return missing, place, {}
        absent = [t for t in there if not self.keep[t]]
        if not absent:
            return THERE_ALREADY, place, {}
        self.keep[self._first(absent)] = True
        return None

    def _drop(self, edit: DropTriangles) -> Optional[_Refusal]:
        ring = (np.array(edit.polygon, float) - self.origin) / GRID
        corner = self.mesh.vertex.reshape(-1, 3)
        centroid = np.column_stack([self.mesh.x[corner].sum(axis=1), self.mesh.y[corner].sum(axis=1)]) / 3.0
        near = self.keep & np.all((centroid >= ring.min(axis=0)) & (centroid <= ring.max(axis=0)), axis=1)
        inside = np.flatnonzero(near)
        inside = inside[even_odd(centroid[inside], [ring])]
        if len(inside) == 0:
            return NONE_IN_POLYGON, edit.polygon[0], {}
        if len(inside) == np.count_nonzero(self.keep):
            return LAST_TRIANGLE, edit.polygon[0], {}
        self.keep[inside] = False
        return None

    def _move(self, edit: MovePoint) -> Optional[_Refusal]:
        vertex = self._vertex(edit.place)
        if vertex is None or self.leaving[vertex] < 0:
            return NO_POINT, edit.place, {"reach": self.reach}
        self.z[vertex] = edit.height if edit.height is not None else self.z[vertex] + (edit.difference or 0.0)
        return None

    # --- finding vertices and edges

    def _vertex(self, place: Place) -> Optional[int]:
        return first_of(self.index.near(place, self.reach))

    def _around(self, vertex: int) -> Iterator[int]:
        """Half-edges that start at a vertex."""
        begin = int(self.leaving[vertex])
        h = begin
        while h >= 0:
            yield h
            h = int(self.mesh.twin[_before(h)])
            if h == begin:
                return
        h = int(self.mesh.twin[begin]) if begin >= 0 else -1
        while h >= 0:
            h = _after(h)
            yield h
            h = int(self.mesh.twin[h])

    def _edge(self, a: Optional[int], b: Optional[int]) -> Optional[int]:
        """A half-edge between two vertices, None if they are not joined."""
        if a is None or b is None:
            return None
        for start, end in ((a, b), (b, a)):
            for h in self._around(start):
                if self.mesh.vertex[_after(h)] == end:
                    return h
        return None

    def _on_surface(self, h: int) -> bool:
        g = int(self.mesh.twin[h])
        return bool(self.keep[h // 3] or (g >= 0 and self.keep[g // 3]))

    def _triangles_of(self, corners: Sequence[Place]) -> List[int]:
        """The triangle with these corners, if there is one."""
        a, b, c = (self._vertex(corner) for corner in corners)
        h = self._edge(a, b)
        if h is None or c is None:
            return []
        sides = [side for side in (h, int(self.mesh.twin[h])) if side >= 0]
        return [side // 3 for side in sides if self.mesh.vertex[_before(side)] == c]

    def _nearest_edge(self, place: Place) -> Optional[int]:
        """The edge of the triangles at ``place`` that is nearest to it; of two, the one with the western ends."""
        sides = [h for t in self._at(place) if self.keep[t] for h in range(3 * t, 3 * t + 3)]
        return min(sides, key=lambda h: (self._distance(place, h), self._key((h, _after(h))))) if sides else None

    def _distance(self, place: Place, h: int) -> float:
        """From ``place`` to the edge ``h``, in units of the grid."""
        a, b = (np.array([self.mesh.x[v], self.mesh.y[v]], float) for v in self.mesh.vertex[[h, _after(h)]])
        p = self._on_grid([place])[0]
        along = float(np.clip(np.dot(p - a, b - a) / np.dot(b - a, b - a), 0.0, 1.0))
        return round(float(np.hypot(*(a + along * (b - a) - p))), 3)

    def _key(self, half_edges: Iterable[int]) -> List[Tuple[int, int]]:
        """What orders edges and triangles independently of their numbers: places of their corners, sorted."""
        vertices = [int(self.mesh.vertex[h]) for h in half_edges]
        return sorted((int(self.mesh.x[v]), int(self.mesh.y[v])) for v in vertices)

    def _first(self, triangles: Iterable[int]) -> int:
        """Of several triangles at a place on their edge, the one whose corners come first from the west."""
        return min(triangles, key=lambda t: self._key(range(3 * t, 3 * t + 3)))

    # --- finding triangles

    def _on_grid(self, places: Sequence[Place]) -> np.ndarray:
        """Places (q, 2) as whole numbers (float) of the grid; far outside, -1."""
        grid = np.rint((np.array(places, float).reshape(-1, 2) - self.origin) / GRID)
        grid[~np.all((grid >= 0) & (grid < LIMIT), axis=1)] = -1
        return grid

    def _locate(self, places: Sequence[Place]) -> Dict[Place, List[int]]:
        """Triangles at each place, on the rim of several where it is on an edge."""
        found: Dict[Place, List[int]] = {place: [] for place in places}
        distinct = list(found)
        grid = self._on_grid(distinct)
        on = np.flatnonzero(grid[:, 0] >= 0)
        if len(on) == 0:
            return found
        corner = self.mesh.vertex.reshape(-1, 3)
        x, y = self.mesh.x[corner], self.mesh.y[corner]
        even = float(np.sqrt(float(x.max()) * float(y.max()) / len(on)))
        cell = max(1.0, min(even, 4 * float(np.median(np.maximum(np.ptp(x, axis=1), np.ptp(y, axis=1))))))
        at = grid[on].astype(np.int64)
        for i, t in candidate_pairs(at[:, :1], at[:, 1:], x, y, cell):
            for j in np.flatnonzero(_contain(self.mesh, t, at[i, 0], at[i, 1])):
                triangles = found[distinct[on[i[j]]]]
                if int(t[j]) not in triangles:
                    triangles.append(int(t[j]))
        return found

    def _at(self, place: Place) -> List[int]:
        """Triangles at a place now."""
        found = [t for t in self.met[place] if t not in self.changed]
        grid = self._on_grid([place]).astype(np.int64)[0]
        changed = np.array(sorted(self.changed), np.int64)
        return found + changed[_contain(self.mesh, changed, grid[0], grid[1])].tolist()


def _contain(mesh: Mesh, triangle: np.ndarray, px: np.ndarray, py: np.ndarray) -> np.ndarray:
    """Mask of the triangles (k,) that have the place in them or on their edge; exact."""
    inside = np.ones(len(triangle), bool)
    for i in range(3):
        a, b = mesh.vertex[3 * triangle + i], mesh.vertex[3 * triangle + (i + 1) % 3]
        xa, ya = mesh.x[a], mesh.y[a]
        inside &= (mesh.x[b] - xa) * (py - ya) - (mesh.y[b] - ya) * (px - xa) >= 0
    return inside


def _after(h: int) -> int:
    return h - 2 if h % 3 == 2 else h + 1


def _before(h: int) -> int:
    return h + 2 if h % 3 == 0 else h - 1
