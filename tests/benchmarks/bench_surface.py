"""The surface from many points and breaklines, against scipy's Delaunay and the host's own TIN mesh.

``python -m tests.benchmarks.bench_surface [POINTS] [--five-million] [--host [HOST_POINTS]]``. Both sides of a ratio get
the same coordinates, shifted to a local origin, in one process, one after the other.
"""

from __future__ import annotations

import argparse
import os
import tempfile
import time
from pathlib import Path
from typing import Callable, Dict, List, Sequence, Tuple

import numpy as np
import triangle
from scipy.spatial import Delaunay, cKDTree

from plugin.core.handover.mesh import write_2dm
from plugin.core.linework.constraints import ConstraintLine, Constraints, LineKind
from plugin.core.points.pointset import PointSet, make_points
from plugin.core.surface.build import build_surface
from plugin.core.surface.crossings import crossing_pairs
from plugin.core.surface.network import Network
from plugin.core.surface.tin import GRID

from .bench_contours import rolling_ground

BAR_PLAIN, BAR_FLOOR = 0.27, 2.2  # of scipy, of the compiled ``triangle`` package
BARS_CONSTRAINED = {20_000: 0.8, 100_000: 1.5}  # of scipy without segments
BARS_CONSTRAINED_FLOOR = {20_000: 3.0}  # of ``triangle`` with the same segments
BAR_EXPONENT = 1.1
BAR_ARRANGED = 0.6
BAR_HOST = 50.0  # at 1,000,000 points
SIZES = (10_000, 100_000, 1_000_000)
STEPS = 20  # segments of a walk
TRIES = 12  # directions tried at once for each walk's next step
SITE = np.array([432_000.0, 5_765_000.0])


def random_survey(n: int, seed: int = 1) -> PointSet:
    """``n`` points at different places in whole 0.1 mm, one a square metre on average, on rolling ground."""
    rng = np.random.default_rng(seed)
    xy = np.unique(rng.integers(0, int(np.sqrt(n) / GRID), (n, 2)), axis=0)
    rng.shuffle(xy)
    xy = xy * GRID
    return make_points(xy[:, 0] + SITE[0], xy[:, 1] + SITE[1], rolling_ground(xy[:, 0], xy[:, 1], rng))


def local(points: PointSet) -> np.ndarray:
    return np.column_stack([points.easting, points.northing]) - SITE


def seconds(work: Callable[[], object]) -> np.ndarray:
    """Seconds that pass, and of processor time, (2,)."""
    begin = np.array([time.perf_counter(), time.process_time()])
    work()
    return np.array([time.perf_counter(), time.process_time()]) - begin


def best_of(works: Sequence[Callable[[], object]], times: int) -> np.ndarray:
    """The least of both kinds of :func:`seconds` of each of the works, (w, 2), which take turns: a busy machine slows
    all of them."""
    found: np.ndarray = np.min([[seconds(work) for work in works] for _ in range(times)], axis=0)
    return found


def run_delaunay(n: int = 1_000_000) -> Dict[str, float]:
    """Points to a finished TIN (snapping, duplicates, neighbours and all); scipy and ``triangle`` triangulate alone."""
    found = {}
    for name, points in (("uniform", random_survey(n)), ("in passes", pass_survey(n))):
        xy = local(points)
        works = (
            lambda points=points: build_surface(points),
            lambda xy=xy: Delaunay(xy),
            lambda xy=xy: triangle.triangulate({"vertices": xy}),
        )
        ours, theirs, floor = best_of(works, 2)
        (ratio, cpu), (times, cpu_times) = ours / theirs, ours / floor
        print(
            f"surface of {n:,} points {name}: ours {ours[0]:.2f} s; {ratio:.3f} of scipy's time (bar {BAR_PLAIN}), "
            f"{times:.2f} times triangle's (bar {BAR_FLOOR}); of processor time {cpu:.3f} and {cpu_times:.2f}"
        )
        found[name] = {"ours": ours[0], "reference": theirs[0], "ratio": ratio, "floor": times}
    return found["uniform"]


def run_constrained(n: int = 1_000_000, segments: int = 20_000, theirs: float = 0.0) -> Dict[str, float]:
    """Points and breaklines to a finished TIN; ``theirs``: seconds of scipy if known from the same run."""
    points = random_survey(n)
    walks = random_walks(local(points), segments)
    xyz = np.column_stack([points.easting, points.northing, points.height])
    constraints = Constraints(tuple(ConstraintLine(LineKind.BREAKLINE, xyz[walk], walk) for walk in walks))
    surface = build_surface(points, constraints)
    marked = surface.report.edges[LineKind.BREAKLINE]
    assert marked >= segments
    assert surface.report.conflicts == ()
    given = {
        "vertices": local(points),
        "segments": np.concatenate([np.column_stack([walk[:-1], walk[1:]]) for walk in walks]),
    }
    ours, floor = best_of((lambda: build_surface(points, constraints), lambda: triangle.triangulate(given, "p")), 2)
    theirs = theirs or float(seconds(lambda: Delaunay(given["vertices"]))[0])
    bar, bar_floor = BARS_CONSTRAINED.get(segments), BARS_CONSTRAINED_FLOOR.get(segments)
    times, cpu_times = ours / floor
    print(
        f"surface of {n:,} points and {segments:,} breakline segments: ours {ours[0]:.2f} s; {ours[0] / theirs:.3f} of "
        f"scipy's time without them (bar {bar}), {times:.2f} times triangle's with them (bar {bar_floor}), "
        f"{cpu_times:.2f} of processor time"
    )
    return {"ours": ours[0], "reference": theirs, "ratio": ours[0] / theirs, "floor": times, "marked": marked}


def run_scaling(sizes: Sequence[int] = SIZES, known: Dict[int, float] = {}) -> float:  # noqa: B006  only read
    """The exponent of time over size, fitted to the logarithms; ``known``: seconds measured already."""
    seconds = []
    for n in sizes:
        if n in known:
            seconds.append(known[n])
            continue
        points = random_survey(n)
        runs = []
        for _ in range(3 if n <= 100_000 else 1):
            begin = time.perf_counter()
            build_surface(points)
            runs.append(time.perf_counter() - begin)
        seconds.append(min(runs))
    exponent = float(np.polyfit(np.log(sizes), np.log(seconds), 1)[0])
    listed = ", ".join(f"{n:,} in {s:.2f} s" for n, s in zip(sizes, seconds))
    print(f"surface by size: {listed}; exponent {exponent:.3f} (bar {BAR_EXPONENT})")
    return exponent


def placed(xy: np.ndarray) -> PointSet:
    """Places (n, 2) in metres as a survey, rounded to 0.1 mm, each once, in no order."""
    grid = np.unique(np.rint(xy / GRID).astype(np.int64), axis=0)
    np.random.default_rng(0).shuffle(grid)
    xy = (grid - grid.min(axis=0)) * GRID
    return make_points(xy[:, 0] + SITE[0], xy[:, 1] + SITE[1], np.sin(xy[:, 0] / 30) + np.cos(xy[:, 1] / 20))


def pass_survey(n: int) -> PointSet:
    """Passes 2 m apart, a point each half metre, not quite straight."""
    rng = np.random.default_rng(5)
    rows = int(n**0.5 / 2)
    columns = n // rows
    x = np.tile(np.arange(columns) * 0.5, rows) + rng.normal(0, 0.05, rows * columns)
    return placed(np.column_stack([x, np.repeat(np.arange(rows) * 2.0, columns) + rng.normal(0, 0.1, rows * columns)]))


def string_survey(n: int, turn: float = 0.0) -> PointSet:
    """Strings of points 10 m apart, ten a metre; along the axes unless turned by so many radians."""
    rng = np.random.default_rng(6)
    rows = int(n**0.5 / 10)
    columns = n // rows
    x = rng.uniform(0, columns * 0.1, rows * columns)
    y = np.repeat(np.arange(rows) * 10.0, columns)
    cos, sin = np.cos(turn), np.sin(turn)
    return placed(np.column_stack([cos * x - sin * y, sin * x + cos * y]))


def parabola_survey(n: int) -> PointSet:
    x = np.linspace(-1000, 1000, n)
    return placed(np.column_stack([x, x * x / 1000]))


def run_arrangements(n: int = 100_000) -> Dict[str, float]:
    """Points in strings, on a curve and few: processor time against scipy's and the compiled ``triangle`` package."""
    found = {}
    for name, points, bar in (
        ("strings along an axis", string_survey(n), BAR_ARRANGED),
        ("strings turned", string_survey(n, 0.3), None),
        ("parabola", parabola_survey(n // 5), BAR_ARRANGED),
        ("passes", pass_survey(n), None),
        ("few points", pass_survey(7000), None),
    ):
        xy = local(points)
        works = (
            lambda points=points: build_surface(points),
            lambda xy=xy: Delaunay(xy),
            lambda xy=xy: triangle.triangulate({"vertices": xy}),
        )
        ours, theirs, floor = best_of(works, 5)[:, 1]
        print(
            f"{name}, {len(xy):,} points: ours {ours:.3f} s of processor time, {ours / theirs:.2f} of scipy's "
            f"(bar {bar}; {ours - theirs:+.3f} s), {ours / floor:.1f} times triangle's"
        )
        found[name] = ours / theirs
    return found


def random_walks(xy: np.ndarray, segments: int, seed: int = 2) -> List[np.ndarray]:
    """Walks of ``STEPS`` steps from point to point of ``xy`` (n, 2; about one a square metre), none crossing another.

    Steps are 3 to 10 m, or 2 to 6 m where more would not find room, so few are edges already. All walks grow side by
    side; a step is taken if it crosses no step of any walk. A walk that is walled in ends, and others begin.
    """
    reach = (3.0, 10.0) if segments <= len(xy) // 20 else (2.0, 6.0)
    rng = np.random.default_rng(seed)
    tree = cKDTree(xy)
    grid = np.rint(xy / GRID).astype(np.int64)
    done: List[np.ndarray] = []
    steps = np.empty((0, 2), np.int64)
    missing = segments
    while missing > 0:
        count = max(50, missing // STEPS)
        chains = rng.integers(0, len(xy), count)[:, None]
        heading = rng.uniform(0, 2 * np.pi, count)
        for _ in range(STEPS):
            ends, turned, walks = _next_steps(xy, grid, tree, reach, chains[:, -1], heading, steps, rng)
            lost = np.setdiff1d(np.arange(len(chains)), walks)
            done += [chain for chain in chains[lost] if len(chain) > 1]
            steps = np.vstack([steps, np.column_stack([chains[walks, -1], ends])])
            chains, heading = np.column_stack([chains[walks], ends]), turned
            if len(chains) == 0 or len(steps) >= 1.02 * segments:
                break
        done += [chain for chain in chains if len(chain) > 1]
        missing = segments - len(steps)
    return _first_segments(done, segments)


def _next_steps(
    xy: np.ndarray,
    grid: np.ndarray,
    tree: cKDTree,
    reach: Tuple[float, float],
    at: np.ndarray,
    heading: np.ndarray,
    steps: np.ndarray,
    rng: np.random.Generator,
) -> Tuple[np.ndarray, np.ndarray, np.ndarray]:
    """The next point of each walk that finds one, its new heading, and the walk's number."""
    walk = np.repeat(np.arange(len(at)), TRIES)
    turned = heading[walk] + rng.normal(0, 0.5, len(walk))
    target = xy[at[walk]] + rng.uniform(*reach, len(walk))[:, None] * np.column_stack([np.cos(turned), np.sin(turned)])
    inside = np.all((target > xy.min(axis=0)) & (target < xy.max(axis=0)), axis=1)
    walk, turned = walk[inside], turned[inside]
    new = np.column_stack([at[walk], tree.query(target[inside])[1]])
    old = len(steps)
    first, second = crossing_pairs(_network(grid, np.vstack([steps, new])))
    blocked = np.zeros(len(new), bool)
    blocked[second[first < old] - old] = True
    among = first >= old
    first, second = first[among] - old, second[among] - old
    # Of tries that cross each other the earlier goes before, unless it is blocked itself or of the same walk.
    rival = (walk[first] != walk[second]) & ~blocked[first]
    blocked[second[rival]] = True
    key = np.sort(np.vstack([steps, new]), axis=1) @ np.array([len(xy), 1])
    again = np.ones(len(key), bool)
    again[np.unique(key, return_index=True)[1]] = False
    free = np.flatnonzero(~blocked & (new[:, 0] != new[:, 1]) & ~again[old:])
    walks, place = np.unique(walk[free], return_index=True)
    chosen = free[place]
    return new[chosen, 1], turned[chosen], walks


def _network(grid: np.ndarray, segments: np.ndarray) -> Network:
    n, k = len(grid), len(segments)
    return Network(
        grid[:, 0], grid[:, 1], np.zeros(n), np.zeros(n, np.int64), segments, np.ones(k, np.uint8),
        np.zeros(k, np.int64), np.zeros(k, bool), (), np.zeros(2),
    )  # fmt: skip


def _first_segments(walks: List[np.ndarray], segments: int) -> List[np.ndarray]:
    """The first walks that together have so many segments, the last one cut."""
    total = np.cumsum([len(walk) - 1 for walk in walks])
    last = int(np.searchsorted(total, segments))
    too_many = int(total[last]) - segments
    return [*walks[:last], walks[last][: len(walks[last]) - too_many]]


def run_host(n: int = 100_000) -> Dict[str, float]:
    """Points to a 2DM file, here and by ``native:tinmeshcreation`` of the QGIS that Python finds."""
    from qgis.analysis import QgsNativeAlgorithms
    from qgis.core import (
        QgsApplication,
        QgsFeature,
        QgsGeometry,
        QgsPoint,
        QgsProcessingContext,
        QgsProcessingFeedback,
        QgsVectorLayer,
    )  # fmt: skip

    os.environ.setdefault("QT_QPA_PLATFORM", "offscreen")
    application = QgsApplication.instance() or QgsApplication([], False)
    application.initQgis()
    registry = application.processingRegistry()
    if registry.algorithmById("native:tinmeshcreation") is None:
        registry.addProvider(QgsNativeAlgorithms(registry))
    points = random_survey(n)
    layer = QgsVectorLayer("PointZ?crs=EPSG:25832", "points", "memory")
    features = []
    for e, h, z in zip(points.easting.tolist(), points.northing.tolist(), points.height.tolist()):
        feature = QgsFeature()
        feature.setGeometry(QgsGeometry(QgsPoint(e, h, z)))
        features.append(feature)
    layer.dataProvider().addFeatures(features)
    with tempfile.TemporaryDirectory() as folder:
        begin = time.perf_counter()
        write_2dm(build_surface(points).tin, Path(folder, "ours.2dm"))
        ours = time.perf_counter() - begin
        parameters = {
            "SOURCE_DATA": [{"source": layer.source(), "type": 0, "attributeIndex": -1}],
            "MESH_FORMAT": 0,
            "CRS_OUTPUT": layer.crs(),
            "OUTPUT_MESH": str(Path(folder, "host.2dm")),
        }
        context, feedback = QgsProcessingContext(), QgsProcessingFeedback()
        context.temporaryLayerStore().addMapLayer(layer)
        parameters["SOURCE_DATA"][0]["source"] = layer.id()  # type: ignore[index]
        algorithm = registry.createAlgorithmById("native:tinmeshcreation")
        begin = time.perf_counter()
        _, fine = algorithm.run(parameters, context, feedback)
        theirs = time.perf_counter() - begin
        written = Path(folder, "host.2dm")
        assert fine, feedback.textLog()
        assert written.stat().st_size > 20 * n
    bar = f" (bar {BAR_HOST:.0f})" if n >= 1_000_000 else ""
    print(
        f"surface of {n:,} points to a 2DM file: ours {ours:.2f} s, native:tinmeshcreation {theirs:.2f} s, "
        f"{theirs / ours:.1f} times faster{bar}"
    )
    return {"ours": ours, "reference": theirs, "ratio": theirs / ours}


def run(n: int = 1_000_000, five_million: bool = False, host: int = 0) -> Dict[str, float]:
    """All of the above; ``host``: points for the comparison with the host, 0 for none."""
    plain = run_delaunay(n)
    found = {"ratio": plain["ratio"], "reference": plain["reference"]}
    for segments in (n // 50, n // 10):
        found[f"ratio_{segments}"] = run_constrained(n, segments, plain["reference"])["ratio"]
    sizes = tuple(size for size in SIZES if size < n) + ((n, 5_000_000) if five_million else (n,))
    found["exponent"] = run_scaling(sizes, {n: plain["ours"]})
    found.update(run_arrangements(n // 10))
    if host:
        found["host"] = run_host(host)["ratio"]
    return found


if __name__ == "__main__":
    parser = argparse.ArgumentParser(description=(__doc__ or "").splitlines()[0])
    parser.add_argument("points", type=int, nargs="?", default=1_000_000)
    parser.add_argument("--five-million", action="store_true", help="5,000,000 points in the scaling as well")
    parser.add_argument("--host", type=int, nargs="?", const=100_000, default=0, metavar="POINTS",
                        help="compare with native:tinmeshcreation of QGIS (100,000 points unless said)")  # fmt: skip
    given = parser.parse_args()
    run(given.points, given.five_million, given.host)
