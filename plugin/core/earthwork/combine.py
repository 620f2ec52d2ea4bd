"""The ground as it will be: the design where there is one, the existing surface around it."""

from __future__ import annotations

from dataclasses import replace
from typing import List, Sequence, Tuple, Union

import numpy as np

from ..linework.constraints import ConstraintLine, Constraints, LineKind
from ..points.pointset import make_points
from ..surface.along import lay_lines
from ..surface.ask import gradients, triangle_boxes
from ..surface.boxes import box_pairs
from ..surface.build import SurfaceOptions, build_surface
from ..surface.crossings import CrossingRule
from ..surface.dissolve import dissolve
from ..surface.locate import heights_at, locate, triangles_at
from ..surface.mesh import twins_of
from ..surface.network import to_grid
from ..surface.parts import connected_parts
from ..surface.tin import GRID, Tin
from .polygons import FLAT
from .segments import edge_segments, rim_edges, split_at

_FACE = 0.02  # metres in plan that a step takes, since a surface has one height at a place
_ON_EDGE = 1.5e-4  # an outline vertex so near to an edge was on it before it was rounded to the grid
_SHIFT, _HELD = 3, 64  # bits: edges of the triangulation that are no lines of the surface are held all the same
_GROUND_RIM, _DESIGN_RIM = 1, 128  # bits of edges at which ground or design ends
_CLOSE = 2 * GRID  # metres beside an edge within which a vertex may be joined to it, or around it a slope matters
_SLIVER = 3 * GRID  # a triangle that is higher than this has its middle clear of what rounding moves


def combine(existing: Tin, design: Tin) -> Tin:
    """``design`` and, outside it, ``existing``: one surface over all the ground that either covers.

    Away from the design's outline all triangles stay as they are; those that the outline cuts are cut there. Where the
    design ends above or below the ground (an end without slopes), the step leans outward by 2 cm. At the outline, where
    both meet but for the rounding of its vertices to the grid (see :func:`_meet`), the ground's height counts, but the
    design's in the face of a steeper wall. A design wholly beside the ground stands beside it. Edge kinds of both stay.
    """
    near = _near(existing, design)
    if not np.any(near):
        return _stitched(existing, near, design)
    ground = existing.part(near)
    border = (existing.neighbours[near] >= 0) & (ground.neighbours < 0)
    rings = [_met(ground, ring[:-1]) for ring in _outline(design)]
    return _stitched(existing, near, _joined(ground, border, design, rings))


def _near(existing: Tin, design: Tin) -> np.ndarray:
    """Mask (m,) of the existing triangles that meet the bounds of the design."""
    west, south, east, north = design.bounds
    low, high = np.array([west, south]) - existing.origin - 0.5, np.array([east, north]) - existing.origin + 0.5
    least, greatest = triangle_boxes(existing)
    mask: np.ndarray = np.all((greatest[:, :2] >= low) & (least[:, :2] <= high), axis=1)
    while True:
        squeezed = _squeezed(existing, mask)
        if len(squeezed) == 0:
            return mask
        mask[squeezed] = True


def _squeezed(existing: Tin, near: np.ndarray) -> np.ndarray:
    """Triangles beyond the border of ``near`` (m,) to take in too: across edges that run so close past a vertex that
    they may be joined to it. So all edges of the border stay as they are."""
    triangle, side = np.nonzero((existing.neighbours >= 0) & near[:, None] & ~near[existing.neighbours])
    ends = existing.triangles[triangle, side], existing.triangles[triangle, (side + 1) % 3]
    vertex = np.unique(existing.triangles[near])
    a, b, place = (existing.vertices[v, :2] for v in (*ends, vertex))
    found = [np.empty(0, np.int64)]
    for i, j in box_pairs(np.minimum(a, b) - _CLOSE, np.maximum(a, b) + _CLOSE, place, place):
        step, to = b[i] - a[i], place[j] - a[i]
        beside = np.abs(step[:, 0] * to[:, 1] - step[:, 1] * to[:, 0]) / np.hypot(*step.T)
        other = (vertex[j] != ends[0][i]) & (vertex[j] != ends[1][i])
        found.append(i[other & (beside < _CLOSE)])
    border = np.unique(np.concatenate(found))
    return np.unique(existing.neighbours[triangle[border], side[border]])


def _met(ground: Tin, ring: np.ndarray) -> np.ndarray:
    """A ring (k, 2) of the design's outline with a vertex wherever it crosses an edge of the ground."""
    closed = np.vstack([ring, ring[:1]])
    met = lay_lines(ground, [closed]).xyz[:, :2]
    met = np.round(met - ground.origin, 4) + ground.origin
    return split_at(np.stack([ring, closed[1:]], axis=1), met, _ON_EDGE)[0][:, 0]


def _steps(existing: Tin, design: Tin, rings: Sequence[np.ndarray]) -> Tuple[List[np.ndarray], np.ndarray]:
    """Lines (2, 2) in the CRS, up to 2 cm beside the parts of the design's outline that end in a step, and the
    vertices (q, 2) of the outline where it does."""
    lines: List[np.ndarray] = []
    places = [np.empty((0, 2))]
    for xy in rings:
        step = np.isfinite(heights_at(existing, xy)) & ~_meet(existing, design, xy)[0]
        places.append(xy[step])
        out = _beside_outline(existing, design, xy)
        known = np.isfinite(out[:, 0])
        whole = (step | np.roll(step, -1)) & known & np.roll(known, -1)
        lines += [out[[i, (i + 1) % len(out)]] for i in np.flatnonzero(whole).tolist()]
    return lines, np.concatenate(places)


def _beside_outline(existing: Tin, design: Tin, xy: np.ndarray) -> np.ndarray:
    """A place (k, 2) on the ground up to 2 cm beside each vertex (k, 2) of a ring of the design's outline, or nan."""
    ahead = np.roll(xy, -1, axis=0) - xy
    along = ahead / np.hypot(*ahead.T)[:, None]
    normal = np.column_stack([along[:, 1], -along[:, 0]])
    both = normal + np.roll(normal, 1, axis=0)
    away = 2 * _FACE * both / np.maximum(np.sum(both * both, axis=1), 0.5)[:, None]
    ways = [share * away for share in (1.0, 0.5, 0.25, 0.1, 0.05)]  # nearer, where the rim of the ground is near
    for angle in np.radians([60.0, 30.0, 10.0]):  # and nearer to either edge, where the outline comes to that rim
        for edge, side in ((along, normal), (-np.roll(along, 1, axis=0), np.roll(normal, 1, axis=0))):
            ways.append(2 * _FACE * (np.cos(angle) * edge + np.sin(angle) * side))
    out = np.full(xy.shape, np.nan)
    for number, way in enumerate(ways):
        lost = np.flatnonzero(np.isnan(out[:, 0]))
        place = xy[lost] + way[lost]
        on = np.isfinite(heights_at(existing, place))
        if number >= 5:
            on &= locate(design, place) < 0
        out[lost[on]] = place[on]
    return out


def _meet(existing: Tin, design: Tin, place: np.ndarray) -> Tuple[np.ndarray, np.ndarray]:
    """Masks of the places (q, 2) at which both surfaces have one height, as far as the plan grid can tell, and of those
    where the ground is a wall: steeper than 1 : 1 and than the design.

    A vertex where they meet is moved by up to the grid, so their heights differ by up to that times both slopes. Of the
    triangles about the place the flattest of each surface counts: beside a steep slope, or a step that is lost in the
    grid, a platform's height holds.
    """
    ground, own = _flattest(existing, place), _flattest(design, place)
    with np.errstate(invalid="ignore"):
        apart = np.abs(heights_at(existing, place) - heights_at(design, place))
        mask: np.ndarray = apart <= GRID * (ground + own) + FLAT
    return mask, ground > np.maximum(own, 1.0)


def _flattest(tin: Tin, place: np.ndarray) -> np.ndarray:
    """The least slope (q,), rise over run, of the triangles about each place (q, 2); 0 without any."""
    around = np.array([[x, y] for x in (-1, 0, 1) for y in (-1, 0, 1)]) * _CLOSE
    number, triangle = triangles_at(tin, (place[:, None] + around).reshape(-1, 2))
    some, at = np.unique(triangle, return_inverse=True)
    slope = np.hypot(*gradients(tin.vertices[tin.triangles[some]]).T)
    found = np.full(len(place), np.inf)
    np.minimum.at(found, number // len(around), slope[at.reshape(-1)])
    found[np.isinf(found)] = 0.0
    return found


def _joined(near: Tin, border: np.ndarray, design: Tin, rings: Sequence[np.ndarray]) -> Tin:
    """The near part of the ground cut along the design's outline, and the design's triangles in it.

    ``border``: (m, 3) bool, edges of the near part across which the ground goes on.
    """
    steps, stepping = _steps(near, design, rings)
    outline = np.vstack(rings)
    edges, edge_kind = edge_segments(design)
    at_rim = rim_edges(design)
    rim, of_rim = split_at(edges[at_rim], outline, _ON_EDGE)
    around, kind = edge_segments(near)
    ends_ground = rim_edges(near)
    around, of = split_at(around, np.unique(outline, axis=0), _ON_EDGE)
    outside = locate(design, around.mean(axis=1)) < 0
    around, of = _set_back(around[outside], of[outside], to_grid(stepping, near.origin), near.origin)
    segments = np.concatenate([around, edges[~at_rim], rim])
    bits = np.concatenate(
        [
            _held(kind, _GROUND_RIM * ends_ground)[of],
            _held(edge_kind[~at_rim]),
            _held(edge_kind[at_rim], _DESIGN_RIM)[of_rim],
        ]
    )
    lines = [_line(segment, int(own)) for segment, own in zip(segments, bits)]
    lines += [_line(line, _HELD | int(LineKind.BREAKLINE) << _SHIFT) for line in steps]
    corners = np.vstack([line.xyz for line in lines])
    options = SurfaceOptions(crossing=CrossingRule.MEAN)
    tin = build_surface(make_points(*corners.T, crs=design.crs), Constraints(tuple(lines)), options).tin
    far = _across(tin, near, border)
    keep = _within(tin, design, _DESIGN_RIM, far) | _within(tin, near, _GROUND_RIM, far)
    return replace(
        tin,
        vertices=np.column_stack([tin.vertices[:, :2], _heights(tin, near, design, outline)]),
        triangles=tin.triangles[keep],
        edge_kind=(tin.edge_kind[keep] >> _SHIFT) & 7,
    )


def _held(kind: np.ndarray, rim: Union[int, np.ndarray] = 0) -> np.ndarray:
    """Bits (e,) of edges that stay, with the ``kind`` (e,) they had."""
    bits: np.ndarray = _HELD | (kind.astype(np.int64) << _SHIFT) | rim
    return bits


def _across(tin: Tin, near: Tin, border: np.ndarray) -> np.ndarray:
    """The triangles of ``tin`` across ``border`` (m, 3), edges of the ``near`` ground that it has too."""
    triangle, side = np.nonzero(border)
    other, edge = np.nonzero(tin.edge_kind & _GROUND_RIM)
    pairs = []
    for surface, first, last in (
        (near, near.triangles[triangle, side], near.triangles[triangle, (side + 1) % 3]),
        (tin, tin.triangles[other, (edge + 1) % 3], tin.triangles[other, edge]),
    ):
        keys = _keys(to_grid(surface.vertices[:, :2] + surface.origin, tin.origin))
        pairs.append(np.column_stack([keys[first], keys[last]]))
    number = np.unique(np.concatenate(pairs), axis=0, return_inverse=True)[1].reshape(-1)
    found: np.ndarray = other[np.isin(number[len(triangle) :], number[: len(triangle)])]
    return found


def _within(tin: Tin, surface: Tin, rim: int, far: np.ndarray) -> np.ndarray:
    """Mask (m,) of the triangles that are in a ``surface`` whose rim is the edges with the bit ``rim``; those of the
    numbers ``far`` (f,) are not.

    Whole parts between rims of ground and design are in or out. What is but slivers is told by what is across the rim
    from it: a place in it may be on the wrong side of the rim as it was before its vertices were rounded.
    """
    triangle, edge = np.nonzero(tin.neighbours >= 0)
    other, bits = tin.neighbours[triangle, edge], tin.edge_kind[triangle, edge] & (_GROUND_RIM | _DESIGN_RIM)
    between = bits > 0
    part = connected_parts(len(tin.triangles), triangle[~between], other[~between])
    corner = tin.corners()[:, :, :2]
    one, two = corner[:, 1] - corner[:, 0], corner[:, 2] - corner[:, 0]
    longest = tin.edge_lengths().max(axis=1)
    height = (one[:, 0] * two[:, 1] - one[:, 1] * two[:, 0]) / longest
    order = np.lexsort((height, part))
    widest = order[np.append(part[order][1:] != part[order][:-1], True)]
    known = height[widest] > _SLIVER
    inside = np.zeros(len(widest), bool)
    inside[known] = locate(surface, corner[widest[known]].mean(axis=1) + tin.origin) >= 0
    known[part[far]], inside[part[far]] = True, False
    a, b, turns = part[triangle[between]], part[other[between]], bits[between] & rim > 0
    while True:
        new = known[a] & ~known[b]
        if not np.any(new):
            return inside[part]  # type: ignore[no-any-return]
        inside[b[new]] = inside[a[new]] ^ turns[new]
        known[b[new]] = True


def _set_back(
    segments: np.ndarray, of: np.ndarray, places: np.ndarray, origin: np.ndarray
) -> Tuple[np.ndarray, np.ndarray]:
    """Segments (s, 2, 2) with a vertex 2 cm from each end that is at one of ``places`` (q, 2) on the grid, where the
    design steps off the ground: from there on they are on the ground."""
    for end in (0, 1):
        step = segments[:, 1 - end] - segments[:, end]
        length = np.hypot(*step.T)
        own = np.isin(_keys(to_grid(segments[:, end], origin)), _keys(places)) & (length > 3 * _FACE)
        middle = segments[own, end] + _FACE * step[own] / length[own, None]
        near = np.stack([segments[own, end], middle], axis=1)
        segments = segments.copy()
        segments[own, end] = middle
        segments, of = np.concatenate([segments, near]), np.concatenate([of, of[own]])
    return segments, of


def _heights(tin: Tin, near: Tin, design: Tin, outline: np.ndarray) -> np.ndarray:
    """Heights (n,): the design's in it, the ground's outside, and where both meet."""
    place = tin.vertices[:, :2] + tin.origin
    height, ground = heights_at(design, place), heights_at(near, place)
    rim = np.flatnonzero(np.isin(_keys(tin.grid), _keys(to_grid(outline, tin.origin))))
    meets = np.zeros(len(place), bool)
    met, wall = _meet(near, design, place[rim])
    meets[rim] = met & ~wall
    result: np.ndarray = np.where(np.isnan(height) | meets, ground, height)
    lost = np.isnan(result)
    if np.any(lost):  # between both rims, where one of them was moved to the grid
        result[lost] = _beside([design, near], place[lost])
    return result


def _beside(surfaces: Sequence[Tin], place: np.ndarray) -> np.ndarray:
    """Heights (q,) of the nearest place on a rim of one of the surfaces, for few places (q, 2) in the CRS."""
    ends = []
    for tin in surfaces:
        triangle, side = np.nonzero(tin.neighbours < 0)
        corners = tin.triangles[triangle, side], tin.triangles[triangle, (side + 1) % 3]
        ends.append(np.stack([tin.vertices[corner] + [*tin.origin, 0.0] for corner in corners], axis=1))
    a, b = np.moveaxis(np.concatenate(ends), 1, 0)
    step = b - a
    to = place[:, None] - a[:, :2]
    share = np.clip(np.sum(to * step[:, :2], axis=2) / np.sum(step[:, :2] ** 2, axis=1), 0, 1)
    away = np.hypot(*np.moveaxis(to - share[:, :, None] * step[:, :2], 2, 0))
    nearest = np.argmin(away, axis=1)
    rows = np.arange(len(place))
    result: np.ndarray = a[nearest, 2] + share[rows, nearest] * step[nearest, 2]
    return result


def _outline(design: Tin) -> List[np.ndarray]:
    """The rings (k, 2) of a design's outline, closed."""
    polygons = dissolve(design, np.zeros(len(design.triangles), np.int64))
    return [ring for polygon in polygons for ring in polygon.rings]


def _keys(grid: np.ndarray) -> np.ndarray:
    """A whole number for each place (q, 2) on a local grid."""
    result: np.ndarray = (grid[:, 0] << 32) + grid[:, 1]
    return result


def _line(xy: np.ndarray, bits: int) -> ConstraintLine:
    """A line of no height yet that stays an edge, with the kind it had kept in higher bits."""
    xyz = np.column_stack([xy, np.zeros(len(xy))])
    return ConstraintLine(LineKind(bits), xyz, np.full(len(xy), -1, np.int64))


def _stitched(existing: Tin, near: np.ndarray, joined: Tin) -> Tin:
    """The existing surface with its near part replaced; vertices of both that coincide become one."""
    far = existing.triangles[~near]
    shift = np.rint((joined.origin - existing.origin) / GRID).astype(np.int64)
    used, corner = np.unique(far, return_inverse=True)
    grid = np.vstack([existing.grid[used], joined.grid + shift])
    grid, first, number = np.unique(grid, axis=0, return_index=True, return_inverse=True)
    triangles = np.vstack([corner.reshape(-1, 3), joined.triangles.astype(np.int64) + len(used)])
    triangles = number.reshape(-1)[triangles]
    # vertices that both have take the existing one's height and source: the first of the two
    height = np.concatenate([existing.vertices[used, 2], joined.vertices[:, 2]])[first]
    source = np.concatenate([existing.vertex_source[used], np.full(len(joined.grid), -1, np.int64)])[first]
    kept, triangles = np.unique(triangles, return_inverse=True)
    triangles = triangles.reshape(-1, 3)
    twin = twins_of(triangles.ravel())
    return replace(
        existing,
        vertices=np.column_stack([grid[kept] * GRID, height[kept]]),
        triangles=triangles.astype(np.int32),
        neighbours=np.where(twin >= 0, twin // 3, -1).astype(np.int32).reshape(-1, 3),
        edge_kind=np.vstack([existing.edge_kind[~near], joined.edge_kind]).astype(np.uint8),
        grid=grid[kept],
        vertex_source=source[kept],
    )
