"""From points and lines to the surface."""

from __future__ import annotations

from dataclasses import dataclass
from typing import List, Mapping, Optional, Tuple

import numpy as np

from ..linework.constraints import Constraints, LineKind
from ..messages import QT_TRANSLATE_NOOP, Message, SurveyError, Text, message
from ..points.pointset import PointSet
from ..progress import Progress, part, silent
from .crossings import CrossingRule, Snapped, split_crossings
from .delaunay import triangulate
from .drape import HELD, RIM, drape_soft_lines
from .insert import insert_segments
from .line_heights import doubtful_heights
from .meetings import Conflict
from .mesh import Mesh
from .network import Duplicate, Network, build_network
from .region import beyond_rim, inside_rings, without_long_rim
from .rim import radius_in_passes, without_hollow_rim, without_rim_slivers
from .tin import GRID, Tin

ALL_ON_A_LINE = Text(
    "points_on_a_line",
    QT_TRANSLATE_NOOP(
        "core",
        "{file}: all {count} points lie on one straight line, which spans no surface. "
        "Check the column mapping (the same column for easting and northing?) or add points beside the line.",
    ),
)
NOTHING_LEFT = Text(
    "no_triangle_left",
    QT_TRANSLATE_NOOP(
        "core",
        "{file}: no triangle is left inside the boundary and outside the voids with rim edges up to the limit. "
        "Check the boundary's place and the maximum rim edge.",
    ),
)
DUPLICATE_POSITIONS = Text(
    "duplicate_positions",
    QT_TRANSLATE_NOOP(
        "core",
        "{count} positions were recorded more than once (equal to 0.1 mm); the surface takes the mean height. "
        "Largest difference {spread:.3f} m, at E {easting:.3f} N {northing:.3f}: from {lowest:.3f} m to "
        "{highest:.3f} m.",
    ),
    one=QT_TRANSLATE_NOOP(
        "core",
        "One position was recorded more than once (equal to 0.1 mm); the surface takes the mean height. "
        "Largest difference {spread:.3f} m, at E {easting:.3f} N {northing:.3f}: from {lowest:.3f} m to "
        "{highest:.3f} m.",
    ),
)
UNUSED_POINTS = Text(
    "points_outside_surface",
    QT_TRANSLATE_NOOP("core", "{count} vertices are outside the boundary or the trimmed rim, or inside a void."),
    one=QT_TRANSLATE_NOOP("core", "One vertex is outside the boundary or the trimmed rim, or inside a void."),
)
BOUNDARIES = Text(
    "several_boundaries",
    QT_TRANSLATE_NOOP(
        "core",
        "There are {count} boundaries, such as one by field codes and one that was drawn: the surface is what lies "
        "within all of them.",
    ),
)
SPLIT_CROSSINGS = Text(
    "crossings_split",
    QT_TRANSLATE_NOOP(
        "core",
        "Lines cross or meet at {count} places; they were joined there. Largest difference of heights {spread:.3f} m, "
        "at E {easting:.3f} N {northing:.3f}: {first} at {first_height:.3f} m and {second} at {second_height:.3f} m.",
    ),
    one=QT_TRANSLATE_NOOP(
        "core",
        "Lines cross or meet at one place; they were joined there. Difference of heights {spread:.3f} m, "
        "at E {easting:.3f} N {northing:.3f}: {first} at {first_height:.3f} m and {second} at {second_height:.3f} m.",
    ),
)
LINES_OVER_POINTS = Text(
    "lines_over_points",
    QT_TRANSLATE_NOOP(
        "core",
        "Lines run through or end on {count} survey points at other heights; the points keep theirs. Largest "
        "difference {spread:.3f} m, at E {easting:.3f} N {northing:.3f}: {first} at {first_height:.3f} m and the "
        "point {second} at {second_height:.3f} m.",
    ),
    one=QT_TRANSLATE_NOOP(
        "core",
        "Lines run through or end on a survey point at another height; the point keeps its own. Largest difference "
        "{spread:.3f} m, at E {easting:.3f} N {northing:.3f}: {first} at {first_height:.3f} m and the point {second} "
        "at {second_height:.3f} m.",
    ),
)


@dataclass(frozen=True)
class SurfaceOptions:
    """How the surface is made.

    Triangles are peeled off the rim (None: never) while their outer edge is longer than ``max_rim_edge`` metres,
    their circumscribed circle is wider than ``max_rim_radius`` metres (a hollow outline, see :mod:`.rim`) or than
    ``max_rim_passes`` times the distance of the passes, or the angle opposite their outer edge is wider than
    ``max_rim_angle`` degrees (slivers; 165 is a good value).
    ``crossing``: the height where lines cross or meet; ``crossing_tolerance``: metres up to which ``REFUSE`` joins
    them.
    """

    max_rim_edge: Optional[float] = None
    max_rim_radius: Optional[float] = None
    max_rim_angle: Optional[float] = None
    crossing: CrossingRule = CrossingRule.REFUSE
    crossing_tolerance: float = 0.05
    max_rim_passes: Optional[float] = None


@dataclass(frozen=True)
class SurfaceReport:
    """What went into a surface and what was done on the way.

    ``points_used``: survey points that shaped it by themselves; ``duplicates``, ``conflicts``: records; ``on_points``:
    lines that run through or end on survey points at other heights; ``outside``: triangles dropped by boundary and
    voids; ``trimmed``: peeled off the rim; ``edges``: marked edges by kind;
    ``unused_vertices``: vertices without a triangle; ``messages`` say the same for people.
    """

    points_used: int
    points_rejected: int
    vertices: int
    triangles: int
    outside: int
    trimmed: int
    unused_vertices: int
    edges: Mapping[LineKind, int]
    duplicates: Tuple[Duplicate, ...]
    conflicts: Tuple[Conflict, ...]
    on_points: Tuple[Conflict, ...]
    messages: Tuple[Message, ...]


@dataclass(frozen=True)
class Surface:
    """A TIN and how it came about."""

    tin: Tin
    report: SurfaceReport


def build_surface(
    points: PointSet,
    constraints: Constraints = Constraints(),  # noqa: B008  frozen and empty
    options: SurfaceOptions = SurfaceOptions(),
    progress: Progress = silent,
) -> Surface:
    """Triangulate the points that are not rejected, with ``constraints`` as edges.

    Constrained Delaunay, decided in whole numbers of 0.1 mm: exact, no vertices added on lines with
    heights, one result whatever the order of the points. Lines without heights are laid on the surface and leave
    its shape as it is; triangles they run through are cut, not drawn anew.
    Raises SurveyError for points that span no surface, crossing lines, or a boundary that leaves nothing.
    """
    whole = triangulate_survey(points, constraints, options, progress)
    surface = cut_surface(whole, points)
    progress(1.0, "surface")
    return surface


@dataclass(frozen=True)
class Triangulation:
    """The triangulation of all that the survey gives, and which of its m triangles the surface takes.

    ``mesh`` covers the convex hull and shares ``x``, ``y`` with ``network``, which has the heights.
    ``inside`` (m,): within the boundary and the rim, outside the voids; ``trimmed`` (m,): peeled off the rim;
    ``keep`` (m,): what the surface takes. ``doubts``: what is to be told of the heights of lines.
    """

    mesh: Mesh
    network: Network
    inside: np.ndarray
    trimmed: np.ndarray
    keep: np.ndarray
    duplicates: Tuple[Duplicate, ...]
    conflicts: Tuple[Conflict, ...]
    on_points: Tuple[Conflict, ...]
    doubts: Tuple[Message, ...]


def triangulate_survey(
    points: PointSet, constraints: Constraints, options: SurfaceOptions, progress: Progress = silent
) -> Triangulation:
    """First half of :func:`build_surface`: everything but leaving triangles out. Raises SurveyError as it does."""
    network, duplicates = build_network(points, constraints)
    mesh, network, snapped = _triangulate_lines(network, points, constraints, options, progress)
    inside = inside_rings(mesh, network.rings) if network.rings else np.ones(mesh.triangle_count, bool)
    inside &= ~beyond_rim(mesh)
    mesh.kind &= np.uint8(255 - HELD - RIM)
    keep = without_long_rim(mesh, inside, options.max_rim_edge)
    keep = without_hollow_rim(mesh, keep, options.max_rim_radius)
    if options.max_rim_passes is not None:
        keep = without_hollow_rim(mesh, keep, radius_in_passes(mesh, keep, options.max_rim_passes))
    keep = without_rim_slivers(mesh, keep, options.max_rim_angle)
    told = duplicates, snapped.conflicts, snapped.on_points, doubtful_heights(points, constraints)
    return Triangulation(mesh, network, inside, inside & ~keep, keep, *told)


def cut_surface(whole: Triangulation, points: PointSet) -> Surface:
    """Second half of :func:`build_surface`: the triangles to keep as a TIN. Raises SurveyError if there is none."""
    keep = whole.keep
    if not np.any(keep):
        raise SurveyError(NOTHING_LEFT, file=points.source)
    tin = _tin(whole.mesh, whole.network, keep, points)
    unused = len(whole.network.x) - len(tin.vertices)
    report = SurfaceReport(
        points_used=int(np.count_nonzero(points.shaping)),
        points_rejected=int(np.count_nonzero(~points.used)),
        vertices=len(tin.vertices),
        triangles=len(tin.triangles),
        outside=int(np.count_nonzero(~whole.inside & ~keep)),
        trimmed=int(np.count_nonzero(whole.trimmed & ~keep)),
        unused_vertices=unused,
        edges=_edge_counts(tin),
        duplicates=whole.duplicates,
        conflicts=whole.conflicts,
        on_points=whole.on_points,
        messages=_messages(whole, unused),
    )
    return Surface(tin, report)


def _triangulate_lines(
    network: Network, points: PointSet, constraints: Constraints, options: SurfaceOptions, progress: Progress
) -> Tuple[Mesh, Network, Snapped]:
    file, rule, tolerance = points.source, options.crossing, options.crossing_tolerance
    hard = network.part(~network.soft)
    snapped = split_crossings(hard, constraints, rule, tolerance, file, points.source_line)
    hard = snapped.network
    if not np.any(network.soft):
        return _triangulate_network(hard, ~hard.soft, file, progress), hard, snapped
    both = _with_soft(hard, network)
    around = _triangulate_network(both, ~both.soft, file, part(progress, 0.0, 0.5))
    draped = drape_soft_lines(both, around)
    draped = split_crossings(draped, constraints, CrossingRule.FIRST, 0.0, file).network
    mesh = _triangulate_network(draped, np.ones(len(draped.segments), bool), file, part(progress, 0.5, 1.0))
    return mesh, draped.part(draped.kind & np.uint8(255 - HELD - RIM) != 0), snapped


def _with_soft(hard: Network, network: Network) -> Network:
    """``hard`` with the soft segments of ``network`` after its own; vertices of ``network`` come first in both."""
    soft = network.part(network.soft)
    names = ("segments", "kind", "line", "soft")
    columns = {name: np.concatenate([getattr(hard, name), getattr(soft, name)]) for name in names}
    return Network(x=hard.x, y=hard.y, z=hard.z, source=hard.source, rings=hard.rings, origin=hard.origin, **columns)


def _triangulate_network(network: Network, lines: np.ndarray, file: str, progress: Progress) -> Mesh:
    """The constrained triangulation of the vertices with heights and the segments of mask ``lines``."""
    known = np.isfinite(network.z)
    x, y = (network.x, network.y) if np.all(known) else (network.x[known], network.y[known])
    mesh = triangulate(x, y, progress=part(progress, 0.0, 0.7))
    if mesh.triangle_count == 0:
        raise SurveyError(ALL_ON_A_LINE, file=file, count=len(x))
    vertex = mesh.vertex if np.all(known) else np.flatnonzero(known).astype(np.int32)[mesh.vertex]
    whole = Mesh(network.x, network.y, vertex, mesh.twin)
    crossings = insert_segments(whole, network.segments[lines], network.kind[lines], part(progress, 0.7, 1.0))
    if crossings:  # split_crossings has left none
        raise AssertionError(f"a segment crosses an edge: {crossings[0]}")
    return whole


def _tin(mesh: Mesh, network: Network, keep: np.ndarray, points: PointSet) -> Tin:
    corner, kind = mesh.vertex.reshape(-1, 3), mesh.kind.reshape(-1, 3)
    beyond = (mesh.twin // np.int32(3)).reshape(-1, 3)  # -1 stays -1
    if not np.all(keep):
        triangle = np.full(len(keep) + 1, -1, np.int32)  # the last entry answers for "no twin"
        triangle[:-1][keep] = np.arange(np.count_nonzero(keep), dtype=np.int32)
        corner, kind, beyond = corner[keep], kind[keep], triangle[beyond[keep]]
    met = np.isfinite(network.z)  # all of these are in the triangulation
    if len(corner) < mesh.triangle_count:
        met = np.zeros(len(network.x), bool)
        met[corner.ravel()] = True
    grid, z, source = np.column_stack([network.x, network.y]), network.z, network.source
    if not np.all(met):
        number = np.cumsum(met, dtype=np.int32) - np.int32(1)
        corner, grid, z, source = number[corner], grid[met], z[met], source[met]
    vertices = np.empty((len(z), 3))
    vertices[:, :2], vertices[:, 2] = grid, z
    vertices[:, :2] *= GRID
    return Tin(
        vertices=vertices,
        triangles=corner,
        neighbours=beyond,
        edge_kind=kind,
        grid=grid,
        origin=network.origin,
        vertex_source=source,
        crs=points.crs,
    )


def _edge_counts(tin: Tin) -> Mapping[LineKind, int]:
    """Marked edges by kind, each edge once."""
    marked = np.flatnonzero(tin.edge_kind)
    found, beyond = tin.edge_kind.ravel()[marked], tin.neighbours.ravel()[marked]
    once = (beyond < 0) | (beyond > marked // 3)
    kinds = (LineKind.BREAKLINE, LineKind.BOUNDARY, LineKind.VOID)
    return {kind: int(np.count_nonzero(once & (found & int(kind) != 0))) for kind in kinds}


def _messages(whole: Triangulation, unused: int) -> Tuple[Message, ...]:
    said: List[Message] = []
    if whole.duplicates:
        worst = max(whole.duplicates, key=lambda d: d.highest - d.lowest)
        spread = worst.highest - worst.lowest
        values = {name: getattr(worst, name) for name in ("easting", "northing", "lowest", "highest")}
        said.append(message(DUPLICATE_POSITIONS, count=len(whole.duplicates), spread=spread, **values))
    for text, found in ((SPLIT_CROSSINGS, whole.conflicts), (LINES_OVER_POINTS, whole.on_points)):
        if found:
            most = max(found, key=lambda c: c.difference)
            places = len({(c.easting, c.northing) for c in found})
            said.append(message(text, count=places, spread=most.difference, **vars(most)))
    said += whole.doubts
    boundaries = {source for kind, source, _ in whole.network.rings if kind & LineKind.BOUNDARY}
    if len(boundaries) > 1:
        said.append(message(BOUNDARIES, count=len(boundaries)))
    if unused:
        said.append(message(UNUSED_POINTS, count=unused))
    return tuple(said)
