"""Survey files that say something below or between their points: units, poles, rows of units, a header; and rows at the
end that sum the points up.
"""

from __future__ import annotations

import itertools
from dataclasses import replace
from typing import Dict, Iterator, List, Optional, Tuple

import numpy as np

from tests.core.file_shapes import N, Shape, Truth, decimals, hash_of, lines_of, site, truth_of
from tests.core.file_shapes_asked import HEAD, cells, raised
from tests.core.file_shapes_found import made

HALF = N // 2


def table(truth: Truth, height: Optional[List[str]] = None, sign: str = ",", head: Optional[List[str]] = None) -> str:
    return lines_of(cells(truth, height), sign, HEAD if head is None else head or None)


def in_two(truth: Truth, gap: int) -> Dict[int, Tuple[float, float, float]]:
    """Lines of a header, half the points, ``gap`` other lines and the rest."""
    return {line if line < 2 + HALF else line + gap: point for line, point in truth_of(truth, 2).items()}


def below() -> Iterator[Shape]:
    """Lines below the points that say what is so, or what counts as it does above them."""
    harmless = (
        "# Units: m", "# Heights in metres", "# Heights: m, DHHN2016", "Units: m", "Linear unit: metre", "Units,m,m,m",
        "# Name Easting Northing Height", "# Pt,E,N,Z", "# Horizontal units: metres\n# Vertical units: metres\n# end",
        "# CRS: EPSG:25832", "Coordinate system: ETRS89 / UTM zone 32N", "# Base antenna height 1.500 m", "-,m,m,m",
        "# Einheit: m", "# Unités: mètres", "# Unidades: metros",
    )  # fmt: skip
    for line in harmless:
        for sign in (",", ";", "\t"):
            truth = site(hash_of(line + sign))
            yield made(f"below {line!r} {sign!r}", table(truth, sign=sign) + line + "\n", truth, 2)
            text = table(truth, sign=sign, head=[]) + line + "\n"
            yield made(f"below {line!r} {sign!r} without header", text, truth, 1, meant={"--columns": _EVERY})
    truth = site(3)
    yield made("below with a sign given", table(truth) + "# Units: m\n", truth, 2, options={"comment": "#"})
    feet = (
        "# Vertical unit: ft", "# Elevations are in feet", "Elevations in feet", "Vertical unit: international feet",
        "# Höhen in Fuß", "# altitudes en pieds", "Units,m,m,ft", "-,m,m,ft", "Elevation units:,feet,,",
        "# Units of heights: ft",
    )  # fmt: skip
    for line in feet:
        truth = site(hash_of(line))
        height = decimals(truth.height, "ft", 4)
        yield made(f"below {line}", table(truth, height) + line + "\n", truth, 2, meant=_FEET)
        if "units:," not in line:
            yield made(f"row above {line}", line + "\n" + table(truth, height), truth, 3, meant=_FEET)
    for top, foot in (("# Heights in metres", "# Heights in feet"), ("# Vertical unit: m", "Units,m,m,ft")):
        truth = site(hash_of(top + foot))
        height = decimals(truth.height, "ft", 4)
        text = f"{top}\n{table(truth, height)}{foot}\n"
        yield made(f"below against above {foot}", text, truth, 3, meant={"--height-unit": "ft"})
    head = [*HEAD[:3], "Z (m)"]
    text = table(truth, height, head=head) + "Units,m,m,ft\n"
    yield made("row below against the header", text, truth, 2, meant={"--height-unit": "ft"})
    for last in (",".join(HEAD), "# " + ",".join(HEAD)):
        truth = site(hash_of(last))
        yield made(f"header below {last}", table(truth, head=[]) + last + "\n", truth, 1)
    text = table(truth, decimals(truth.height, "ft", 4), head=[]) + "# Pt,E,N,Z (ft)\n"
    yield made("header below with feet", text, truth, 1)


_EVERY = "name=1,easting=2,northing=3,height=4"
_FEET = {"--height-unit": "ft", "--units-from": "header"}


def poles() -> Iterator[Shape]:
    """Poles below the points, between them, and with words that they were taken off or not."""
    lines = (
        "# Antenna height: 2.000 m, not applied", "# Hauteur d'antenne 2.000 m déduite",
        "# Hauteur d'antenne 2.000 m non déduite", "# Antennehoogte 2,000 m niet afgetrokken",
        "# Hoogte van de antenne 2,000 m niet afgetrokken", "# Wysokość anteny 2,000 m nie odjęta",
        "# Altura de antena 2.000 m no restada", "# Altura da antena 2.000 m não deduzida",
        "# Heights: antenna, pole 2.000 m, not yet subtracted", "# Antenna height 2.000 m already subtracted",
        "# Antennenhöhe 2,000 m abgezogen",
    )  # fmt: skip
    for line in lines:
        for of, up in (("ground", 0.0), ("antenna", 2.0)):
            truth = site(hash_of(line))
            text = table(truth, raised(truth, up))
            yield made(f"pole above {line} {of}", f"{line}\n{text}", truth, 3, meant={"--heights-of": of})
            yield made(f"pole below {line} {of}", f"{text}{line}\n", truth, 2, meant={"--heights-of": of})
    truth = site(8)
    for said, asked in (("# Antenna heights, pole {} m", False), ("# Pole height: {} m", True)):
        high, low = raised(truth, 2.0), raised(truth, 1.5)
        rows = table(truth, [*high[:HALF], *low[HALF:]]).splitlines()
        parts = [said.format("2.000"), *rows[: 1 + HALF], said.format("1.500"), *rows[1 + HALF :]]
        lined = {line + 1: point for line, point in in_two(truth, 1).items()}
        meant = {"--heights-of": "antenna"} if asked else {}
        yield Shape(f"two poles {said}", "\n".join(parts).encode(), lined, meant=meant)
    rows = table(truth, [*decimals(truth.height)[:HALF], *raised(truth, 0.0)[HALF:]]).splitlines()
    parts = [*rows[: 1 + HALF], "# Pole height: 2.000 m", *rows[1 + HALF :]]
    yield Shape("pole between", "\n".join(parts).encode(), in_two(truth, 1), meant={"--heights-of": "ground"})


def parts() -> Iterator[Shape]:
    """What stands above the first part counts on in a second."""
    truth = site(12)
    rows = table(truth, decimals(truth.height, "ft", 4)).splitlines()
    other = [",".join(([*row.split(","), ""])[i] for i in (0, 2, 1, 3)) for row in rows]
    text = "\n".join([*rows[: 1 + HALF], other[0], *other[1 + HALF :], "# Heights in feet"])
    yield Shape("feet below two parts", text.encode(), in_two(truth, 1))
    text = "\n".join(["# Heights in feet", *rows[: 1 + HALF], other[0], *other[1 + HALF :]])
    lined = {line + 1: point for line, point in in_two(truth, 1).items()}
    yield Shape("feet above two parts", text.encode(), lined)


def rows_of_units() -> Iterator[Shape]:
    """A second section of the same header with a row of units of its own, or such a row alone."""
    for first, second, again in itertools.product(
        ("-,m,m,m", "Unit,m,m,m"), ("-,m,m,ft", "Unit,m,m,ft"), (True, False)
    ):
        truth = site(hash_of(first + second))
        high = [*decimals(truth.height)[:HALF], *decimals(truth.height, "ft", 4)[HALF:]]
        rows = table(truth, high).splitlines()
        text = [rows[0], first, *rows[1 : 1 + HALF], *rows[: int(again)], second, *rows[1 + HALF :]]
        lined = {line + 1: point for line, point in in_two(truth, 1 + again).items()}
        yield Shape(f"row of units {first} {second} {again}", "\n".join(text).encode(), lined)


def beside_values() -> Iterator[Shape]:
    """Feet by a sign behind each height, and a column of units that is of the heights alone."""
    for said in ("'", "′", " ft.", "ft.", " sFt", "sft"):
        truth = site(hash_of(said))
        unit = "us-ft" if "s" in said else "ft"
        height = [f"{one}{said}" for one in decimals(truth.height, unit, 4)]
        meant = {**_FEET, "--height-unit": unit}
        yield made(f"feet by {said}", table(truth, height, sign=";"), truth, 2, meant=meant)
    for said, unit in (("ft", "ft"), ("feet", "ft"), ("US survey feet", "us-ft")):
        truth = site(hash_of(said))
        columns = [*cells(truth, decimals(truth.height, unit, 4)), [said] * N]
        text = lines_of(columns, ",", [*HEAD, "Unit"])
        yield made(f"column of units {said}", text, truth, 2, meant={"--height-unit": unit})


def summed_up() -> Iterator[Shape]:
    """Rows at the end that sum the points up, by words nobody knows or none; and points that look a little like it."""
    for name, sign in itertools.product(("Keskiarvo", "Medelvärde", "平均", "Ø", "Centroid", "", "999"), (",", ";")):
        truth = site(hash_of(name + sign))
        columns = [np.round(one, 3) for one in (truth.east, truth.north, truth.height)]
        mean = sign.join([name, *(f"{one.mean():.3f}" for one in columns)])
        yield made(f"mean {name} {sign}", f"{table(truth, sign=sign)}{mean}\n", truth, 2)
        rough = sign.join([name, *(f"{one.mean():.4f}" for one in columns)])
        yield made(f"mean to other digits {name} {sign}", f"{table(truth, sign=sign)}{rough}\n", truth, 2)
    truth = site(81)
    columns = [np.round(one, 3) for one in (truth.east, truth.north, truth.height)]
    ends = [",".join([name, *(f"{get(one):.3f}" for one in columns)]) for name, get in _LIMITS]
    yield made("limits", table(truth) + "\n".join(ends) + "\n", truth, 2)
    yield made("limits and mean", table(truth) + "\n".join([*ends, _mean(columns)]) + "\n# end\n", truth, 2)
    yield made(
        "mean of no header", table(truth, head=[]) + _mean(columns) + "\n", truth, 1, meant={"--columns": _EVERY}
    )
    for place, most in ((1, 0.01), (2, 0.02), (3, 0.02)):  # a point beside the mean is a point
        near = [one.copy() for one in columns]
        for one in near:
            one[-1] = round(float(one[:-1].mean()), 3)
        near[place - 1][-1] += most
        other = replace(truth, east=near[0], north=near[1], height=near[2])
        yield made(f"near the mean {place}", table(other), other, 2)


_LIMITS = (("BBOX min", np.min), ("BBOX max", np.max))


def _mean(columns: List[np.ndarray]) -> str:
    return ",".join(["Mitte", *(f"{one.mean():.3f}" for one in columns)])


def every_below() -> List[Shape]:
    """All families."""
    return [shape for family in (below, poles, parts, rows_of_units, beside_values, summed_up) for shape in family()]
