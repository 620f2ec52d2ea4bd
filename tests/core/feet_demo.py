"""The demo survey as one in US survey feet, at a made-up place of EPSG:2263, with all that goes with it."""

from __future__ import annotations

import csv
import json
from pathlib import Path
from typing import Any, List

DEMO = Path(__file__).resolve().parents[2] / "test_data" / "demo"
FOOT = 1200 / 3937  # metres, NIST SP 811
CRS = "EPSG:2263"
EAST, NORTH = 548240.0, 5712390.0  # of the demo, which comes to
TO_EAST, TO_NORTH = 985000.0, 200000.0  # US survey feet


def east(metres: float) -> float:
    return TO_EAST + (metres - EAST) / FOOT


def north(metres: float) -> float:
    return TO_NORTH + (metres - NORTH) / FOOT


def make(folder: Path) -> Path:
    """Write the survey, check points, inlets, lane, pad, regions and the earlier mesh; returns the folder."""
    for name in ("survey.csv", "check_points.csv", "inlets.csv"):
        _table(DEMO / name, folder / name)
    for name in ("centreline.geojson", "pad.geojson", "phases.geojson"):
        _drawing(DEMO / name, folder / name)
    _mesh(DEMO / "before.2dm", folder / "before.2dm")
    return folder


def words(folder: Path, out: Path) -> List[str]:
    """The command line for all that the demo is asked, as in the Makefile, but with no unit said anywhere."""
    given = [str(folder / "survey.csv"), "--crs", CRS, "--interval", "1", "--rim-edge", "10"]
    given += ["--check-points", str(folder / "check_points.csv"), "--smooth", "0.25", "--calm", "0.015"]
    given += ["--thin", "0.03", "--line", str(folder / "centreline.geojson"), "--lane", "2.3", "--stations", "50"]
    given += ["--water", "--inlets", str(folder / "inlets.csv"), "--rain", "2.4", "--runoff", "0.3"]
    given += ["--pad", str(folder / "pad.geojson"), "--pad-level", "balance", "--cut-slope", "2", "--fill-slope", "2.5"]
    given += ["--since", str(folder / "before.2dm"), "--regions", str(folder / "phases.geojson")]
    given += ["--volume-line", str(folder / "centreline.geojson"), "--volume-level", "285"]
    place = f"{east(548322.8):.2f},{north(5712471.2):.2f}"
    return [*given, "--basin", place, "--out", str(out)]


def _table(source: Path, target: Path) -> None:
    """Coordinates and heights in feet; what the receiver claims stays as receivers write it, in metres."""
    lines = [line for line in source.read_text(encoding="utf-8").splitlines() if not line.startswith("#")]
    rows = list(csv.reader(lines))
    head = rows[0]
    for row in rows[1:]:
        for k, name in enumerate(head[: len(row)]):
            if name in ("easting", "northing", "height", "sigma_h", "sigma_v"):
                row[k] = _moved(name, row[k])
    with open(target, "w", encoding="utf-8", newline="") as stream:
        csv.writer(stream).writerows(rows)


def _moved(name: str, text: str) -> str:
    try:
        value = float(text)
    except ValueError:
        return text
    return f"{ {'easting': east, 'northing': north}.get(name, lambda metres: metres / FOOT)(value):.4f}"


def _drawing(source: Path, target: Path) -> None:
    told = json.loads(source.read_text(encoding="utf-8"))
    told["crs"]["properties"]["name"] = "urn:ogc:def:crs:EPSG::2263"
    for feature in told["features"]:
        feature["geometry"]["coordinates"] = _places(feature["geometry"]["coordinates"])
    target.write_text(json.dumps(told), encoding="utf-8")


def _places(given: Any) -> Any:
    if isinstance(given[0], (int, float)):
        return [round(east(given[0]), 4), round(north(given[1]), 4), *(round(z / FOOT, 4) for z in given[2:])]
    return [_places(each) for each in given]


def _mesh(source: Path, target: Path) -> None:
    lines = []
    for line in source.read_text(encoding="utf-8").splitlines():
        parts = line.split()
        if parts and parts[0] == "ND":
            x, y, z = map(float, parts[2:])
            line = f"ND {parts[1]} {east(x):.4f} {north(y):.4f} {z / FOOT:.6f}"
        lines.append(line)
    target.write_text("\n".join(lines) + "\n", encoding="utf-8")
