"""Make the demo survey: ``python test_data/make_demo.py [FOLDER]`` (default ``test_data/demo``).

Everything is invented and deterministic: the same text files come out on every run. The GeoPackage needs
GDAL's Python module (QGIS carries it); where it is missing the text files are made all the same.
"""

from __future__ import annotations

import json
import sys
from pathlib import Path
from typing import Dict, List

import numpy as np

sys.path.insert(0, str(Path(__file__).resolve().parents[1]))

from test_data import demo_before, demo_layers, demo_survey, demo_uncoded
from test_data import ground as g
from test_data.demo_walk import GAP, SPACING, SPEED, make_walk

RING_WORD = "CLOSE"


def make_texts() -> Dict[str, str]:
    """All text files of the demo by name."""
    # RandomState, not a Generator: NumPy promises that its streams never change.
    random = np.random.RandomState(demo_survey.SEED)
    walk = make_walk(random)
    survey = demo_survey.make_survey(walk, random)
    files = demo_survey.write_lines(survey)
    check_crossings(files.survey)
    return {
        "survey.csv": text(files.survey),
        "decisions.csv": text(files.decisions),
        "truth.csv": text(files.truth),
        "check_points.csv": text(demo_survey.check_points(random)),
        "centreline.geojson": demo_layers.centreline_geojson(),
        "scenario.json": json.dumps(scenario(files), indent=1) + "\n",
        "pad.geojson": demo_layers.yard_geojson(),
        "before.2dm": demo_before.mesh(),
        "before.prj": demo_before.PROJECTION + "\n",
        "phases.geojson": demo_before.phases(),
        "inlets.csv": text(demo_layers.inlets()),
        "uncoded.csv": text(demo_uncoded.uncoded()),
    }


def text(lines: List[str]) -> str:
    return "\n".join(lines) + "\n"


def scenario(files: demo_survey.Files) -> Dict[str, object]:
    """What was put into the survey: parameters and the lines of each fault."""

    def corners(xy: np.ndarray) -> List[List[float]]:
        return np.round(xy, 3).tolist()

    gap = np.column_stack(g.to_grid(GAP[:, 0], GAP[:, 1]))
    return {
        "place": "Pippin Field (invented)",
        "crs": g.CRS,
        "recorded_every_m": SPACING,
        "walking_speed_m_s": SPEED,
        "noise_m": {
            "plan_per_axis": round(float(np.hypot(demo_survey.PLAN_SLOW, demo_survey.PLAN_QUICK)), 4),
            "height": round(float(np.hypot(demo_survey.HEIGHT_SLOW, demo_survey.HEIGHT_QUICK)), 4),
            "check_shots_per_axis": demo_survey.CHECK_SIGMA,
            "check_points_per_axis": demo_survey.TOTAL_STATION_SIGMA,
        },
        "boundary": corners(g.boundary()),
        "void": corners(g.void()),
        "kerb": {"face_m": g.KERB_FACE, "top_behind_foot_m": g.KERB_OFFSET},
        "faults": [*files.faults, {"kind": "gap", "what": demo_survey.WHAT_HAPPENED["gap"], "polygon": corners(gap)}],
    }


# --- self-check --------------------------------------------------------------------------------------


def coded_lines(lines: List[str]) -> Dict[str, np.ndarray]:
    """Vertices (k, 3) of each coded line of the survey file, closed where its last word says so."""
    chains: Dict[str, List[List[float]]] = {}
    for raw in lines[1:]:
        cells = raw.split(",")
        words = cells[4].split() if len(cells) > 4 and not raw.startswith("#") else []
        if len(words) > 1:
            chain = chains.setdefault(" ".join(words[:2]), [])
            chain.append([float(v) for v in cells[1:4]])
            if words[-1] == RING_WORD:
                chain.append(chain[0])
    return {name: np.array(chain) for name, chain in chains.items()}


def check_crossings(lines: List[str]) -> None:
    """Raise ValueError when two pieces of coded lines meet other than at a shared vertex."""
    chains = coded_lines(lines)
    origin = np.array([g.ORIGIN_EASTING, g.ORIGIN_NORTHING])
    start = np.vstack([chain[:-1, :2] for chain in chains.values()]) - origin
    end = np.vstack([chain[1:, :2] for chain in chains.values()]) - origin
    label = np.repeat(list(chains), [len(chain) - 1 for chain in chains.values()])

    def side(p: np.ndarray) -> np.ndarray:
        """On which side of each piece (row) each place (column) lies."""
        leg, arm = (end - start)[:, None], p[None] - start[:, None]
        return np.sign(np.round(leg[..., 0] * arm[..., 1] - leg[..., 1] * arm[..., 0], 9))

    s, e = side(start), side(end)
    crossing = (s * e <= 0) & (s.T * e.T <= 0)
    joined = (start[:, None] == end[None]).all(axis=2) | (start[:, None] == start[None]).all(axis=2)
    crossing &= ~(joined | joined.T)
    if crossing.any():
        i, j = np.argwhere(crossing)[0]
        raise ValueError(f"coded lines {label[i]} and {label[j]} cross")


def main(folder: Path) -> None:
    folder.mkdir(parents=True, exist_ok=True)
    for name, content in make_texts().items():
        (folder / name).write_bytes(content.encode("utf-8"))
        print(folder / name)
    try:
        demo_layers.write_geopackage(folder / "site.gpkg")
        print(folder / "site.gpkg")
    except ImportError:
        print("site.gpkg was not made: GDAL's Python module (osgeo) is missing", file=sys.stderr)


if __name__ == "__main__":
    main(Path(sys.argv[1]) if len(sys.argv) > 1 else Path(__file__).resolve().parent / "demo")
