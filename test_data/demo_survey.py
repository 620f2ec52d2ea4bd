"""What the receiver stored on the walk: noise, faults, the lines of the file, decisions and truth."""

from __future__ import annotations

from dataclasses import dataclass, field
from datetime import datetime, timezone
from typing import Dict, List, Optional, Tuple

import numpy as np

from test_data import ground as g
from test_data.demo_walk import TREES, Walk

SEED = 20250409
FIRST_NAME = 1001
HEADER = "name,easting,northing,height,code,sigma_h,sigma_v,fix,satellites,pdop,tilt,time"

#: Standard deviations in metres: slow part (first-order Gauss-Markov, 90 s) and part new at each point.
PLAN_SLOW, PLAN_QUICK = 0.004, 0.0058  # together 7 mm an axis, 10 mm in plan
HEIGHT_SLOW, HEIGHT_QUICK = 0.007, 0.0133  # together 15 mm
SLOW_SECONDS = 90.0
CHECK_SIGMA = 0.005  # each axis, check shots averaged over a minute
TOTAL_STATION_SIGMA = 0.003  # each axis, the independent check points

#: Fault of a record: (status, reason) given to it by hand.
DECISIONS: Dict[str, Tuple[str, str]] = {
    "lifted_pole": ("rejected", "pole_height"),
    "slipped_pole": ("rejected", "pole_height"),
    "fallen_pole": ("rejected", "tilt"),
    "tilted_pole": ("rejected", "tilt"),
    "no_fix": ("rejected", "no_fix"),
    "wrong_fix": ("rejected", "fix_jump"),
    "weak_fix": ("flagged", "sigma_vertical"),
    "standing_still": ("rejected", "standing_still"),
    "duplicate_block": ("rejected", "duplicate"),
}
WHAT_HAPPENED = {
    "lifted_pole": "pole carried or held up over grass and branches: too high by 0.15 to 1.2 m",
    "slipped_pole": "pole slipped in its clamp, shorter than stated: too low by 0.25 m",
    "fallen_pole": "pole fell over: antenna near the ground, 1.9 m aside",
    "tilted_pole": "pole held far out of plumb, its tilt hardly corrected: decimetres in plan, centimetres in height",
    "no_fix": "ambiguities not fixed (fix 5): decimetres, and the receiver says so",
    "wrong_fix": "ambiguities fixed wrongly (fix 4): 0.38 m too high though the receiver claims centimetres",
    "weak_fix": "few satellites under the trees: twice the usual noise, honestly stated",
    "standing_still": "stored every second by mistake while standing",
    "duplicate_block": "the same lines stored twice",
    "text_in_height": "text in the height column",
    "truncated_line": "line cut off when the battery failed",
    "gap": "a piece of two passes was not walked",
}
NOT_GROUND = {"CK": "check_shot", "TR": "not_ground", "MH": "not_ground"}

#: Where faults begin: kind, place (site coordinates) of the first point, number of points.
FAULTS: Tuple[Tuple[str, Tuple[float, float], int], ...] = (
    ("lifted_pole", (24, 29), 5),
    ("lifted_pole", (70, 46), 11),
    ("lifted_pole", (97, 16.5), 3),
    ("lifted_pole", (50, 72.5), 16),
    ("lifted_pole", (34, 64), 7),
    ("slipped_pole", (52, 4.6), 14),
    ("fallen_pole", (14, 42), 3),
    ("tilted_pole", (44, 37.7), 10),
    ("no_fix", (92, 55), 44),
    ("wrong_fix", (116, 59), 17),
    ("weak_fix", (80, 33), 20),
)
DUPLICATED = ((20, 50.3), 60)
TEXT_IN_HEIGHT = (62, 55)
TRUNCATED = (108, 76.5)

#: About where the independent check points on grass are, clear of kerbs, ditch, banks and pump house.
CHECK_PLACES = (
    (8, 26), (29, 24), (52, 30), (77, 28), (99, 40), (16, 46), (40, 43), (66, 51),
    (108, 54), (6, 64), (28, 68), (54, 64), (84, 67), (114, 81), (66, 86), (105, 10),
)  # fmt: skip


@dataclass
class Survey:
    """Columns of the stored records, (n,), in site order; plan less the grid origin, metres."""

    code: List[str]
    how: List[str]
    time: np.ndarray
    true_east: np.ndarray
    true_north: np.ndarray
    true_height: np.ndarray
    east: np.ndarray
    north: np.ndarray
    height: np.ndarray
    sigma_h: np.ndarray
    sigma_v: np.ndarray
    fix: np.ndarray
    satellites: np.ndarray
    pdop: np.ndarray
    tilt: np.ndarray
    fault: List[str]


@dataclass
class Files:
    """Text of the demo's files, and the runs of faulty lines."""

    survey: List[str] = field(default_factory=list)
    truth: List[str] = field(default_factory=list)
    decisions: List[str] = field(default_factory=list)
    faults: List[Dict[str, object]] = field(default_factory=list)


def make_survey(walk: Walk, random: np.random.RandomState) -> Survey:
    """The stored records of a walk, with noise and faults."""
    x, y, time = np.array(walk.x), np.array(walk.y), np.array(walk.time)
    east, north = g.to_shift(x, y)
    height = g.site_height(x, y)
    check = np.array([how == "check" for how in walk.how])
    satellites, pdop = sky(x, y, time, random)
    parts = [(PLAN_SLOW, PLAN_QUICK), (PLAN_SLOW, PLAN_QUICK), (HEIGHT_SLOW, HEIGHT_QUICK)]
    noise = [rtk_noise(time, slow, quick, random) for slow, quick in parts]
    calm = random.normal(0, CHECK_SIGMA, (3, len(x)))
    noise = [np.where(check, quiet, loud) for quiet, loud in zip(calm, noise)]
    spread = random.uniform(0.85, 1.15, (2, len(x))) * np.where(check, 0.5, 1.0) * pdop / 1.5
    survey = Survey(
        code=walk.code, how=walk.how, time=time,
        true_east=east, true_north=north, true_height=height,
        east=east + noise[0], north=north + noise[1], height=height + noise[2],
        sigma_h=0.0100 * spread[0], sigma_v=0.0150 * spread[1], fix=np.full(len(x), 4),
        satellites=satellites, pdop=pdop, tilt=np.abs(random.normal(0, 1.0, len(x))) + 0.3 * ~check,
        fault=["standing_still" if how == "still" else "" for how in walk.how],
    )  # fmt: skip
    for kind, (x0, y0), count in FAULTS:
        spoil(survey, kind, run_at(survey, x, y, (x0, y0), count), random)
    return survey


def rtk_noise(time: np.ndarray, slow: float, quick: float, random: np.random.RandomState) -> np.ndarray:
    """Noise (n,) with a part that drifts over a minute or two and a part that is new at each point."""
    fresh, drift = random.normal(0, 1, (2, len(time)))
    keep = np.exp(-np.diff(time) / SLOW_SECONDS)
    for k in range(1, len(time)):
        drift[k] = keep[k - 1] * drift[k - 1] + np.sqrt(1 - keep[k - 1] ** 2) * drift[k]
    return slow * drift + quick * fresh


def sky(x: np.ndarray, y: np.ndarray, time: np.ndarray, random: np.random.RandomState) -> Tuple[np.ndarray, np.ndarray]:
    """Satellites and PDOP (n,): change over the hours, worse near trees."""
    to_tree = np.hypot(x[:, None] - TREES[:, 0], y[:, None] - TREES[:, 1]).min(axis=1)
    shade = np.exp(-((to_tree / 4) ** 2))
    hours = (time - time[0]) / 3600
    seen = 20 + 3 * np.sin(2 * np.pi * hours / 1.7) - 6 * shade + random.uniform(-1, 1, len(x))
    satellites = np.round(seen).astype(int)
    return satellites, 1.5 * (20 / satellites) ** 0.8


def run_at(survey: Survey, x: np.ndarray, y: np.ndarray, place: Tuple[float, float], count: int) -> np.ndarray:
    """Indices of ``count`` records stored by distance one after another, the first nearest to ``place``."""
    auto = np.array([how == "auto" for how in survey.how])
    first = int(np.argmin(np.where(auto, np.hypot(x - place[0], y - place[1]), np.inf)))
    run = np.arange(first, first + count)
    if not auto[run].all() or np.ptp(survey.time[run]) > 1.5 * count or any(survey.fault[k] for k in run):
        raise ValueError(f"no free run of {count} points at {place}")
    return run


def spoil(survey: Survey, kind: str, run: np.ndarray, random: np.random.RandomState) -> None:
    """Put a fault into the records of a run."""
    count = len(run)
    quick = random.normal(0, 1, (3, count))
    angle = random.uniform(0, 2 * np.pi)
    aside = np.array([np.cos(angle), np.sin(angle)])
    if kind == "lifted_pole":
        rise = random.uniform(0.2, 1.1) * np.sin(np.pi * (np.arange(count) + 1) / (count + 1)) ** 0.4
        survey.height[run] += np.clip(rise + 0.02 * quick[2], 0.15, 1.2)
        survey.tilt[run] += 3.0
    elif kind == "slipped_pole":
        survey.height[run] -= 0.25
    elif kind == "fallen_pole":
        survey.tilt[run] = 74.0 + 2 * quick[2]
        move(survey, run, 1.9 * aside[:, None] + 0.02 * quick[:2], -1.75 + 0.04 * quick[2])
    elif kind == "tilted_pole":
        survey.tilt[run] = 27.0 + 2 * quick[2]
        move(survey, run, 0.13 * aside[:, None] + 0.03 * quick[:2], -0.09 + 0.02 * quick[2])
    elif kind == "no_fix":
        spoil_ambiguities(survey, run, random)
    elif kind == "wrong_fix":
        move(survey, run, 0.17 * aside[:, None] + 0 * quick[:2], 0.38 + 0 * quick[2])
    elif kind == "weak_fix":
        survey.sigma_h[run] *= 2.2
        survey.sigma_v[run] *= 2.2
        survey.satellites[run] = 8
        survey.pdop[run] = 3.1
        move(survey, run, 0.012 * quick[:2], 0.026 * quick[2])
    for k in run:
        survey.fault[k] = kind


def spoil_ambiguities(survey: Survey, run: np.ndarray, random: np.random.RandomState) -> None:
    """Float solution: decimetres off, wandering from point to point."""
    wander = np.array([rtk_noise(survey.time[run], 0.20, 0.05, random) for _ in range(3)])
    move(survey, run, wander[:2] + np.array([[0.14], [-0.10]]), 1.5 * wander[2] + 0.15)
    survey.fix[run] = 5
    survey.sigma_h[run] = random.uniform(0.16, 0.30, len(run))
    survey.sigma_v[run] = random.uniform(0.25, 0.50, len(run))
    survey.satellites[run] = np.minimum(survey.satellites[run], 9)
    survey.pdop[run] = np.maximum(survey.pdop[run], 3.4)


def move(survey: Survey, run: np.ndarray, plan: np.ndarray, rise: np.ndarray) -> None:
    survey.east[run] += plan[0]
    survey.north[run] += plan[1]
    survey.height[run] += rise


# --- text --------------------------------------------------------------------------------------------


def grid_text(shift: float, origin: int) -> str:
    """A coordinate to the millimetre; the origin is added in whole numbers, so no machine rounds otherwise."""
    mm = round(float(shift) * 1000) + origin * 1000
    return f"{mm // 1000}.{mm % 1000:03d}"


def plan_text(east: float, north: float) -> str:
    return f"{grid_text(east, g.ORIGIN_EASTING)},{grid_text(north, g.ORIGIN_NORTHING)}"


def time_text(seconds: float) -> str:
    tenths = round(seconds * 10)
    return f"{datetime.fromtimestamp(tenths // 10, timezone.utc):%Y-%m-%dT%H:%M:%S}.{tenths % 10}Z"


def record_text(survey: Survey, k: int, height: Optional[str] = None) -> str:
    return ",".join(
        [
            str(FIRST_NAME + k),
            plan_text(survey.east[k], survey.north[k]),
            f"{survey.height[k]:.3f}" if height is None else height,
            survey.code[k],
            f"{survey.sigma_h[k]:.3f}",
            f"{survey.sigma_v[k]:.3f}",
            str(survey.fix[k]),
            str(survey.satellites[k]),
            f"{survey.pdop[k]:.1f}",
            f"{survey.tilt[k]:.1f}",
            time_text(survey.time[k]),
        ]
    )


def write_lines(survey: Survey) -> Files:
    """The raw file's lines with its broken ones, and truth and decisions line by line."""
    files = Files([HEADER], ["line,easting,northing,height,fault"], ["line,status,reason"])
    files.survey.append("# Pippin Field, before the school ground; EPSG:25832, heights in metres; invented")
    x, y = g.to_site(survey.true_east + g.ORIGIN_EASTING, survey.true_north + g.ORIGIN_NORTHING)
    place, count = DUPLICATED
    doubled = run_at(survey, x, y, place, count)
    text_at = run_at(survey, x, y, TEXT_IN_HEIGHT, 1)[0]
    cut_at = run_at(survey, x, y, TRUNCATED, 1)[0]
    again = next(k for k in range(doubled[-1], len(survey.how)) if survey.how[k] == "still")
    for k in range(len(survey.how)):
        if k == again:
            for j in doubled:
                add_record(files, survey, j, "duplicate_block")
        if k == text_at:
            add_broken(files, survey, k, record_text(survey, k, height="no height"), "text_in_height")
        elif k == cut_at:
            add_broken(files, survey, k, record_text(survey, k)[:18], "truncated_line")
            files.survey += ["", "# battery changed"]
        else:
            add_record(files, survey, k, survey.fault[k])
    return files


def add_record(files: Files, survey: Survey, k: int, fault: str) -> None:
    files.survey.append(record_text(survey, k))
    line = len(files.survey)
    add_truth(files, survey, k, fault)
    what = survey.code[k].split()[0]
    if fault in DECISIONS:
        files.decisions.append(f"{line},{','.join(DECISIONS[fault])}")
    elif what in NOT_GROUND:
        files.decisions.append(f"{line},rejected,{NOT_GROUND[what]}")


def add_broken(files: Files, survey: Survey, k: int, text: str, fault: str) -> None:
    files.survey.append(text)
    add_truth(files, survey, k, fault)


def add_truth(files: Files, survey: Survey, k: int, fault: str) -> None:
    """A truth row for the line just stored; runs of one fault are gathered for the scenario file."""
    line = len(files.survey)
    plan = plan_text(survey.true_east[k], survey.true_north[k])
    files.truth.append(f"{line},{plan},{survey.true_height[k]:.4f},{fault or 'none'}")
    if not fault:
        return
    last = files.faults[-1] if files.faults else None
    if last and last["kind"] == fault and last["last_line"] == line - 1:
        last["last_line"] = line
    else:
        files.faults.append({"kind": fault, "first_line": line, "last_line": line, "what": WHAT_HAPPENED[fault]})


def check_points(random: np.random.RandomState) -> List[str]:
    """24 independent check points spread over the site, a third of them on the lane."""
    spread = np.array(CHECK_PLACES) + random.uniform(-1.5, 1.5, (len(CHECK_PLACES), 2))
    lane = np.column_stack(g.lane_xy(np.linspace(8, 106, 8), np.tile([-1.9, 2.0, 0.6, -0.9], 2)))
    rows = ["name,easting,northing,height,sigma_h,sigma_v,cover"]
    for k, (x, y) in enumerate(np.vstack([lane, spread])):
        east, north = g.to_shift(x, y)
        noise = random.normal(0, TOTAL_STATION_SIGMA, 3)
        height = float(g.site_height(x, y)) + noise[2]
        cover = "hard" if k < len(lane) else "grass"
        plan = plan_text(east + noise[0], north + noise[1])
        rows.append(f"TS{k + 1:02d},{plan},{height:.3f},0.004,0.003,{cover}")
    return rows
