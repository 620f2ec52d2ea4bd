"""Coverage: how densely a site was recorded, where it was not, and what contour interval that bears."""

from __future__ import annotations

from dataclasses import dataclass, field
from typing import List, Optional, Sequence, Tuple

import numpy as np
from scipy.spatial import cKDTree

from ..features.ground_lines import GroundLine
from ..files import PathLike, TableWriter, replace_file
from ..linework.constraints import Constraints
from ..messages import QT_TRANSLATE_NOOP, Message, SurveyError, Text, message
from ..points.pointset import PointSet, make_points
from ..progress import Progress, part, silent
from ..surface.findings import FindingOptions
from ..surface.locate import heights_at, locate
from ..surface.spacing import pass_spacing, recorded_spacing
from ..surface.tin import Tin
from ..units import heights_to_crs_units, to_crs_units
from .empty_circles import EmptyCircles, Openings

BAD_LIMIT = Text(
    "coverage.bad_limit",
    QT_TRANSLATE_NOOP("core", "The limit {option} is {value}; give a number above 0."),
)
SPACING = Text(
    "coverage.spacing",
    QT_TRANSLATE_NOOP("core", "Recorded every {along:.2f} m along the passes, {across:.1f} m from pass to pass."),
)
LONG_SHARE = Text(
    "coverage.long_share",
    QT_TRANSLATE_NOOP(
        "core", "{share:.1f} % of the site ({area:.0f} m²) lies in triangles with an edge over {limit:.1f} m."
    ),
)
WIDEST = Text(
    "coverage.widest",
    QT_TRANSLATE_NOOP(
        "core",
        "The widest circle without a measured point has a radius of {radius:.1f} m, at E {easting:.3f} N "
        "{northing:.3f}; {count} circles are wider than {limit:.1f} m.",
    ),
    one=QT_TRANSLATE_NOOP(
        "core",
        "The widest circle without a measured point has a radius of {radius:.1f} m, at E {easting:.3f} N "
        "{northing:.3f}; no other is wider than {limit:.1f} m.",
    ),
)
WALK_AGAIN = Text(
    "coverage.walk_again",
    QT_TRANSLATE_NOOP(
        "core", "{count} places to walk again; with them no place is farther than {limit:.1f} m from a measured one."
    ),
    one=QT_TRANSLATE_NOOP(
        "core", "One place to walk again; with it no place is farther than {limit:.1f} m from a measured one."
    ),
)

SKIPPED = Text(
    "coverage.skipped",
    QT_TRANSLATE_NOOP(
        "core",
        "{area:.0f} m² of the surface lie in triangles so wide that no places to walk are listed in them: they reach "
        "to points far from the others. Reject these points, or limit the rim or draw a boundary.",
    ),
)
NOWHERE = Text(
    "coverage.nowhere",
    QT_TRANSLATE_NOOP(
        "core", "Nowhere to walk again: no place of the surface is farther than {limit:.1f} m from a measured one."
    ),
)

ON_LINES = Text(
    "coverage.on_lines",
    QT_TRANSLATE_NOOP(
        "core",
        "{count} places to walk again on lines, where {stretches} stretches of them are carried across rejected points "
        "or end short of them.",
    ),
    one=QT_TRANSLATE_NOOP(
        "core",
        "One place to walk again on a line, where it is carried across rejected points or ends short of them.",
    ),
)
IN_DOUBT = Text(
    "coverage.in_doubt",
    QT_TRANSLATE_NOOP(
        "core",
        "{count} places where one more pass squarely across would settle a line that the points show in doubt.",
    ),
    one=QT_TRANSLATE_NOOP(
        "core", "One place where one more pass squarely across would settle a line that the points show in doubt."
    ),
)
LEFT_OUT = Text(
    "coverage.left_out",
    QT_TRANSLATE_NOOP("core", "{count} places to walk again where flagged stretches were left out of the surface."),
    one=QT_TRANSLATE_NOOP("core", "One place to walk again where a flagged stretch was left out of the surface."),
)
_NO_LINES = Constraints()
_ASK = 500  # places between two questions whether to go on


@dataclass(frozen=True)
class CoverageOptions:
    """Limits in metres. ``max_edge``: longest edge of a triangle; None for the factor of
    :class:`..surface.findings.FindingOptions` times the pass spacing. ``max_radius``: of a circle without a measured
    point; None for half of ``max_edge``. ``most_circles``: how many circles to list.
    """

    max_edge: Optional[float] = None
    max_radius: Optional[float] = None
    most_circles: int = 50

    def check(self) -> None:
        """Raise SurveyError when a limit is not above 0."""
        for option in ("max_edge", "max_radius", "most_circles"):
            value = getattr(self, option)
            if value is not None and not 0 < value < float("inf"):
                raise SurveyError(BAD_LIMIT, option=option, value=value)


@dataclass(frozen=True)
class Coverage:
    """How a site is covered; metres and square metres.

    ``along``, ``along_95``: median and 95th percentile of the steps between records; ``across``: pass spacing.
    ``long``: mask (m,) of the triangles with a free edge over ``max_edge`` (edges of lines do not count: a line between
    two shots was meant). ``long_area``, ``area``: theirs and that of the surface. ``circles``: widest first, radius
    over ``max_radius``. ``walk_again``: places for the data collector, in walking order, heights from the
    surface; its extra column ``radius`` tells how far each was from everything measured, ``line`` which line is to be
    walked again, or crossed once more, there.
    """

    along: float
    along_95: float
    across: float
    max_edge: float
    max_radius: float
    long: np.ndarray
    long_area: float
    area: float
    circles: EmptyCircles
    walk_again: PointSet
    messages: Tuple[Message, ...] = field(default_factory=tuple)

    @property
    def long_share(self) -> float:
        """Share 0..1 of the site's area in triangles with a long edge."""
        return self.long_area / self.area if self.area else 0.0


def coverage(
    tin: Tin, points: PointSet, options: CoverageOptions = CoverageOptions(), progress: Progress = silent,
    constraints: Constraints = _NO_LINES, found: Sequence[GroundLine] = (),
) -> Coverage:  # fmt: skip
    """Spacing, long triangles, empty circles and places to walk again. Raises SurveyError for limits not above 0.

    ``constraints``: the lines of the surface; where they are carried across rejected points is to be walked again, and
    where one more pass across would settle one of ``found``, the lines that the points show.
    """
    options.check()
    length = _edge_lengths(tin)
    along, across = recorded_spacing(points), pass_spacing(length)
    usual = float(np.fmax(along, across))
    max_edge = options.max_edge or FindingOptions().long_factor * usual
    max_radius = options.max_radius or max_edge / 2
    area = tin.plan_areas()
    long = _longest_free(tin, length) > max_edge
    progress(0.0, "quality")
    openings = Openings(tin, max_radius, part(progress, 0.0, 0.8), _beside_vertices(tin, points))
    flagged = places_left_out(points, openings.least)
    circles = openings.circles(options.most_circles)
    again = places_to_walk(openings, constraints, found, flagged, part(progress, 0.8, 1.0))
    long_area = float(area[long].sum())
    said = [message(SPACING, along=along, across=across)]
    share = 100 * long_area / float(area.sum())
    said.append(message(LONG_SHARE, share=share, area=long_area, limit=max_edge))
    doubtful = sum(line.asks_for_a_pass for line in found)
    on_lines = int(np.count_nonzero(again.extra["line"] != "")) - doubtful
    said += _about_gaps(circles, len(again) - on_lines - doubtful - len(flagged), max_radius)
    if len(flagged):
        said.append(message(LEFT_OUT, count=len(flagged)))
    if on_lines:
        said.append(message(ON_LINES, count=on_lines, stretches=sum(len(line.bridges) for line in constraints.lines)))
    if doubtful:
        said.append(message(IN_DOUBT, count=doubtful))
    if openings.skipped:
        said.append(message(SKIPPED, area=openings.skipped))
    return Coverage(
        along, _step_percentile(points, 95), across, max_edge, max_radius, long, long_area, float(area.sum()), circles,
        again, tuple(said),
    )  # fmt: skip


def places_left_out(points: PointSet, limit: float) -> np.ndarray:
    """Places (k, 3) on flagged stretches that were left out of the surface, with the distance to the nearest end (m).

    On each the middle, and on long ones as many as leave nothing of it farther than ``limit`` (m) from one.
    """
    index = np.flatnonzero(points.left_out)
    found = [np.empty((0, 3))]
    for stretch in np.split(index, np.flatnonzero(np.diff(index) > 1) + 1) if len(index) else []:
        xy = np.column_stack([points.easting[stretch], points.northing[stretch]])
        run = np.append(0.0, np.cumsum(np.hypot(*np.diff(xy, axis=0).T)))
        count = max(1, int(np.ceil(run[-1] / (2 * limit))))
        at = (np.arange(count) + 0.5) * run[-1] / count
        place = [np.interp(at, run, xy[:, k]) for k in (0, 1)]
        found.append(np.column_stack([*place, np.minimum(at, run[-1] - at)]))
    return np.vstack(found)


def places_to_walk(
    openings: Openings, constraints: Constraints = _NO_LINES, found: Sequence[GroundLine] = (),
    flagged: Optional[np.ndarray] = None, progress: Progress = silent,
) -> PointSet:  # fmt: skip
    """Places that leave nothing farther than the limit of ``openings`` from a measured point, those of the lines of
    ``constraints`` that were rejected, where a pass across settles one of ``found``, and those of
    :func:`places_left_out`, in walking order from the westernmost, named W001 and so on.

    Heights from the surface; extra columns ``radius`` (m), how far anything measured is, and ``line``, the label of the
    line to be walked again or crossed there, "" for others.
    """
    tin = openings.tin
    xy, radius = openings.cover()
    on_lines, away, label = _places_on_lines(constraints, openings.least)
    asking = [(f"{line.kind.value} {number}", line) for number, line in enumerate(found, 1) if line.asks_for_a_pass]
    across = np.array([line.cross_at for _, line in asking]).reshape(-1, 2)
    on_lines, away = np.vstack([on_lines, across]), np.append(away, openings.away(across))
    label = np.append(label, np.array([name for name, _ in asking], object))
    more = np.empty((0, 3)) if flagged is None else flagged
    xy, radius = np.vstack([xy.reshape(-1, 2), more[:, :2], on_lines]), np.concatenate([radius, more[:, 2], away])
    line = np.append(np.full(len(radius) - len(label), "", object), label)
    order = _walking_order(xy, progress)
    xy, radius, line = xy[order], radius[order], line[order]
    width = max(3, len(str(len(xy))))
    names = np.array([f"W{number:0{width}d}" for number in range(1, len(xy) + 1)], object)
    height = heights_at(tin, xy) if len(xy) else np.empty(0)
    return make_points(xy[:, 0], xy[:, 1], height, name=names, crs=tin.crs, extra={"radius": radius, "line": line})


def _places_on_lines(constraints: Constraints, limit: float) -> Tuple[np.ndarray, np.ndarray, np.ndarray]:
    """Places (k, 2) on the stretches that lines are carried across or end short of, with distance (m) to the next good
    point of the line, and the line's label.

    On each the middle, and on long ones as many as leave nothing of it farther than ``limit`` (m) from one.
    """
    xy, away, label = [np.empty((0, 2))], [np.empty(0)], []
    for line in constraints.lines:
        for bridge in line.bridges:
            run = np.append(0.0, np.cumsum(np.hypot(*np.diff(bridge.xyz[:, :2], axis=0).T)))
            if not run[-1] > 0:
                continue
            count = max(1, int(np.ceil(run[-1] / (2 * limit))))
            at = (np.arange(count) + 0.5) * run[-1] / count
            xy.append(np.column_stack([np.interp(at, run, bridge.xyz[:, k]) for k in (0, 1)]))
            ends = [at] * (bridge.before >= 0) + [run[-1] - at] * (bridge.after >= 0)
            away.append(np.min(ends, axis=0))
            label += [line.label] * count
    return np.vstack(xy), np.concatenate(away), np.array(label, object)


def write_places(places: PointSet, path: PathLike) -> None:
    """Write name, easting, northing, height and line, in units of the CRS, as CSV for a data collector.

    Raises SurveyError when the file can't be written.
    """
    plan = [to_crs_units(each, places.crs) for each in (places.easting, places.northing)]
    columns = [*plan, heights_to_crs_units(places.height, places.crs)]
    with replace_file(path) as temporary, open(temporary, "w", encoding="utf-8", newline="") as stream:
        writer = TableWriter(stream)
        writer.writerow(("name", "easting", "northing", "height", "line"))
        words = places.name.tolist(), places.extra["line"].tolist()
        for name, line, *numbers in zip(*words, *(column.tolist() for column in columns)):
            writer.writerow((name, *("" if number != number else f"{number:.3f}" for number in numbers), line))


def _beside_vertices(tin: Tin, points: PointSet) -> np.ndarray:
    """Places (k, 2) of used points on the surface that are no vertices of it, as those for which a line stands."""
    rest = points.used & ~points.alone & np.isfinite(points.easting + points.northing)
    rest[tin.vertex_source[tin.vertex_source >= 0]] = False
    xy = np.column_stack([points.easting[rest], points.northing[rest]])
    return xy[locate(tin, xy) >= 0] if len(xy) else xy


def _edge_lengths(tin: Tin) -> np.ndarray:
    """Plan length (m, 3) of the edges of each triangle, metres."""
    corner = tin.vertices[tin.triangles][:, :, :2]
    step = np.roll(corner, -1, axis=1) - corner
    length: np.ndarray = np.hypot(step[:, :, 0], step[:, :, 1])
    return length


def _longest_free(tin: Tin, length: np.ndarray) -> np.ndarray:
    """Longest edge (m,) of each triangle that no line holds, metres; 0 if lines hold all three."""
    longest: np.ndarray = np.where(tin.edge_kind != 0, 0.0, length).max(axis=1)
    return longest


def _step_percentile(points: PointSet, percent: float) -> float:
    used = points.used
    step = np.hypot(np.diff(points.easting[used]), np.diff(points.northing[used]))
    step = step[step >= 0.02]
    return float(np.percentile(step, percent)) if len(step) else float("nan")


def _about_gaps(circles: EmptyCircles, places: int, limit: float) -> List[Message]:
    said = []
    if len(circles):
        place = {"easting": float(circles.easting[0]), "northing": float(circles.northing[0])}
        said.append(message(WIDEST, radius=float(circles.radius[0]), count=len(circles), limit=limit, **place))
    if places:
        said.append(message(WALK_AGAIN, count=places, limit=limit))
    elif not len(circles):
        said.append(message(NOWHERE, limit=limit))
    return said


def _walking_order(xy: np.ndarray, progress: Progress = silent) -> np.ndarray:
    """Indices in the order of a walk: from the westernmost place always to the nearest one not yet seen, of equally
    near ones the first.
    """
    if len(xy) == 0:
        return np.empty(0, np.int64)
    left = np.ones(len(xy), bool)
    at = int(np.lexsort((xy[:, 1], xy[:, 0]))[0])
    order = [at]
    left[at] = False
    known = np.flatnonzero(left)
    tree = cKDTree(xy[known]) if len(known) else None
    while len(order) < len(xy) and tree is not None:
        if 2 * (len(xy) - len(order)) < len(known):  # most of those in the tree have been seen
            known = np.flatnonzero(left)
            tree = cKDTree(xy[known])
        if len(order) % _ASK == 0:
            progress(len(order) / len(xy), "quality")
        at = _nearest_left(tree, known, left, xy[at])
        order.append(at)
        left[at] = False
    return np.array(order)


def _nearest_left(tree: cKDTree, known: np.ndarray, left: np.ndarray, place: np.ndarray) -> int:
    """Of the places ``known`` (k,) in the tree the nearest of those ``left``, of equally near ones the first."""
    count = 8
    while True:
        distance, near = tree.query(place, k=min(count, len(known)))
        distance, near = np.atleast_1d(distance), known[np.atleast_1d(near)]
        free = left[near]
        if count >= len(known) or (free.any() and distance[free][0] < distance[-1]):
            first = distance[free][0]
            return int(near[free & (distance == first)].min())
        count *= 2
