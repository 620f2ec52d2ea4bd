"""Taking in a large survey file whole, against numpy.loadtxt on its three numeric columns.

Ours is :func:`take_in`: find out delimiter, decimal mark, encoding and columns, read names and codes, account for
every line, check against the area of use, transform to another CRS. Both take turns in one run and the least of
each counts, by the clock and by processor time; peak memory is that of a fresh process that takes in one file:
``python -m tests.benchmarks.bench_points [LINES]``.
"""

from __future__ import annotations

import resource
import subprocess
import sys
import tempfile
import time
from pathlib import Path
from typing import Any, Callable, Dict, NamedTuple, Tuple

import numpy as np
from pyproj import CRS, Transformer

from plugin.core.georeference.intake import Intake, take_in
from plugin.core.georeference.intake_options import IntakeOptions
from plugin.core.points.geographic import HeightKind

BAR = 3.3
BAR_MIB = 350.0
TURNS = 4


class Case(NamedTuple):
    """A file and what is wanted of it. ``source`` and ``target``: EPSG codes."""

    source: str
    target: str
    header: bool = True


#: UTM zones 32 and 33 are of one datum, so the operation is exact and needs no grid file.
CASES: Dict[str, Case] = {
    "as it is": Case("25832", "25832"),
    "no header": Case("25832", "25832", header=False),
    "another zone": Case("25832", "25833"),
    "another zone, no header": Case("25832", "25833", header=False),
    "degrees": Case("4258", "25832"),
    "compound": Case("25832", "25833+7837"),
    "degrees to compound": Case("4258", "25832+7837"),
}


def write_survey(path: Path, n: int, seed: int = 1, header: bool = True, degrees: bool = False) -> None:
    """A survey of ``n`` points with name, position, height and code: to the millimetre, or 9 decimals of a degree."""
    rng = np.random.default_rng(seed)
    columns = [rng.uniform(548_000, 551_000, n), rng.uniform(5_712_000, 5_715_000, n), rng.uniform(80, 120, n)]
    names, form = "name,easting,northing,height,code", "P{},{:.3f},{:.3f},{:.3f},{}\n"
    if degrees:
        lon, lat = Transformer.from_crs(25832, 4258, always_xy=True).transform(columns[0], columns[1])
        columns[:2] = lat, lon
        names, form = "name,latitude,longitude,height,code", "P{},{:.9f},{:.9f},{:.3f},{}\n"
    codes = ("GR", "KB", "DT", "")
    with open(path, "w", encoding="utf-8") as stream:
        stream.write(f"{names}\n" * header)
        for i, (first, second, height) in enumerate(zip(*(column.tolist() for column in columns))):
            stream.write(form.format(i, first, second, height, codes[i % 4]))


def options_of(case: Case) -> IntakeOptions:
    """What a user says for ``case``."""
    same = case.source == case.target
    target = CRS.from_user_input(f"EPSG:{case.target}")
    levels = HeightKind.ORTHOMETRIC if "+" in case.target and case.source == "4258" else None
    source = None if same else CRS.from_epsg(int(case.source))
    return IntakeOptions(crs=target, source_crs=source, heights_are=levels)


def path_of(folder: Path, case: Case) -> Path:
    """The file of ``case``; cases that read alike share one."""
    return folder / f"{case.source}{'' if case.header else '-bare'}.csv"


def timed(work: Callable[[], Any]) -> Tuple[Any, float, float]:
    """What ``work`` gave, and its seconds by the clock and of the processor."""
    wall, cpu = time.perf_counter(), time.process_time()
    done = work()
    return done, time.perf_counter() - wall, time.process_time() - cpu


def check(case: Case, intake: Intake, numbers: np.ndarray) -> None:
    """All lines are accounted for, and all points where PROJ alone puts the numbers that loadtxt read."""
    points, account = intake.survey.points, intake.survey.account
    assert account.lines == len(numbers) + case.header == account.points + account.header
    assert not intake.areas[0].outside.any()
    first, second = (1, 0) if case.source == "4258" else (0, 1)
    east, north = numbers[:, first], numbers[:, second]
    if case.source != case.target:
        plan = case.target.split("+")[0]
        there = Transformer.from_crs(int(case.source), int(plan), always_xy=True)
        east, north = there.transform(east, north)
        assert intake.records, "nothing says that the coordinates were transformed"
    assert np.array_equal(points.easting, east)
    assert np.array_equal(points.northing, north)
    assert np.array_equal(points.height, numbers[:, 2])


def high_water_mib() -> float:
    """Most memory that this process held. Linux's ``ru_maxrss`` begins with that of the process it came from."""
    status = Path("/proc/self/status")
    if status.exists():
        return next(int(line.split()[1]) for line in status.read_text().splitlines() if line.startswith("VmHWM")) / 1024
    return resource.getrusage(resource.RUSAGE_SELF).ru_maxrss / 1024


def peak_mib(path: Path, name: str) -> float:
    """Peak memory of a fresh process that takes in one file."""
    words = [sys.executable, "-m", "tests.benchmarks.bench_points", "--peak", name, str(path)]
    return float(subprocess.run(words, check=True, capture_output=True, text=True).stdout)


def run(n: int = 1_000_000) -> Dict[str, float]:
    """The worst ratio and peak over all cases; prints each."""
    worst = {"ratio": 0.0, "cpu_ratio": 0.0, "peak_mib": 0.0}
    with tempfile.TemporaryDirectory() as folder:
        for case in CASES.values():
            if not path_of(Path(folder), case).exists():
                write_survey(path_of(Path(folder), case), n, header=case.header, degrees=case.source == "4258")
        for name, case in CASES.items():
            path = path_of(Path(folder), case)
            ours, theirs = [], []
            for _ in range(TURNS):
                intake, *seconds = timed(lambda: take_in([path], options_of(case)))  # noqa: B023
                ours.append(seconds)
                read = {"delimiter": ",", "skiprows": int(case.header), "usecols": (1, 2, 3)}
                numbers, *seconds = timed(lambda: np.loadtxt(path, **read))  # noqa: B023
                theirs.append(seconds)
            check(case, intake, numbers)
            (wall, cpu), (their_wall, their_cpu) = np.min(ours, axis=0), np.min(theirs, axis=0)
            peak = peak_mib(path, name)
            print(
                f"taking in {n:,} lines, {name}: {wall:.3f} s, numpy.loadtxt {their_wall:.3f} s, ratio "
                f"{wall / their_wall:.2f}, of processor time {cpu / their_cpu:.2f} (bar {BAR:g}); peak memory "
                f"{peak:.0f} MiB (bar {BAR_MIB:.0f})",
                flush=True,
            )
            one = {"ratio": wall / their_wall, "cpu_ratio": cpu / their_cpu, "peak_mib": peak}
            worst = {key: max(worst[key], value) for key, value in one.items()}
            del intake, numbers
    print(f"worst: ratio {worst['ratio']:.2f}, of processor time {worst['cpu_ratio']:.2f}")
    return worst


if __name__ == "__main__":
    if sys.argv[1:2] == ["--peak"]:
        take_in([sys.argv[3]], options_of(CASES[sys.argv[2]]))
        print(high_water_mib())
    else:
        run(int(sys.argv[1]) if len(sys.argv) > 1 else 1_000_000)
