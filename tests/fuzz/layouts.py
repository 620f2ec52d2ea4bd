"""Files of a known layout, damaged below their header: no point may have other values than its line says in truth."""

from __future__ import annotations

from dataclasses import dataclass
from pathlib import Path
from typing import List, Optional, Tuple

import numpy as np
from pyproj import CRS

from plugin.core.messages import SurveyError
from plugin.core.points.survey import read_survey
from tests.core.file_shapes import HEADERS, ORDERS, UNITS, columns_of, lines_of, site
from tests.fuzz.mutate import mutated

UTM = CRS.from_epsg(25832)
#: What is left as it was, so that the file still says its layout.
KEPT = 12
PLAN = ("easting", "northing", "height")


@dataclass(frozen=True)
class Layout:
    """How the lines of a file are read in truth: ``places`` of easting, northing, height; ``factor``: metres."""

    delimiter: str
    decimal: str
    places: Tuple[int, int, int]
    width: int
    factor: float
    headed: bool

    def values(self, line: str) -> Optional[Tuple[float, ...]]:
        """Easting, northing, height of a line in metres, None where it has another shape or no three numbers."""
        line = line.replace("\u00a0", " ")
        fields = line.split() if self.delimiter == " " else line.split(self.delimiter)
        if len(fields) != self.width or '"' in line:
            return None
        found = []
        for place in self.places:
            word = fields[place].strip()
            if self.decimal == ",":
                word = word.replace(".", "?").replace(",", ".")
            try:
                found.append(float(word) * self.factor)
            except ValueError:
                return None
        return tuple(found)


def make(rng: np.random.Generator) -> Tuple[Layout, str, str]:
    """A layout, what stays of a file of it, and what is damaged."""
    delimiter = (",", ";", "\t", "|", " ")[int(rng.integers(5))]
    decimal = "." if delimiter == "," else ".,"[int(rng.integers(2))]
    order = ORDERS[int(rng.integers(len(ORDERS)))]
    unit = ("m", "m", "m", "cm", "us-ft")[int(rng.integers(5))]
    headed = bool(rng.integers(4))
    unit = unit if headed else "m"
    truth = site(int(rng.integers(1000)))
    columns = columns_of(truth)
    columns["code"] = [code.replace(" ", "") for code in columns["code"]]
    for role, values in zip(PLAN, (truth.east, truth.north, truth.height)):
        columns[role] = [f"{value / UNITS[unit]:.3f}".replace(".", decimal) for value in values]
    words = HEADERS[("en", "de", "fr", "es", "en short", "pl")[int(rng.integers(6))]]
    said = {"m": "", "cm": "[cm]", "us-ft": "(sft)"}[unit]
    head = []
    for role in order:
        word = words[("name", *PLAN, "code").index(role)]
        head.append((word + said if role in PLAN else word).replace(" ", "") if delimiter == " " else
                    f"{word} {said}".strip() if role in PLAN else word)  # fmt: skip
    text = lines_of([columns[role] for role in order], delimiter, head if headed else None)
    lines = text.split("\n")
    places = tuple(order.index(role) for role in PLAN)
    layout = Layout(delimiter, decimal, places, len(order), UNITS[unit], headed)  # type: ignore[arg-type]
    return layout, "\n".join(lines[:KEPT]) + "\n", "\n".join(lines[KEPT:])


def check_layout(path: Path, rng: np.random.Generator) -> str:
    """Damage a file and read it; "points" or the code of the error. Raises AssertionError."""
    layout, kept, rest = make(rng)
    body = mutated([rest.encode()], rng).decode("utf-8", "replace").replace("\0", " ")
    raw = (kept + body).encode()
    path.write_bytes(raw)
    try:
        read = read_survey(path, crs=UTM, geographic=True)
    except SurveyError as error:
        return f"layout: {error.code}"
    lines = _lines(kept + body)
    points = read.points
    assert read.geographic is None, "degrees"
    for i, line in enumerate(points.source_line.tolist()):
        said = layout.values(lines[line - 1])
        if said is None or not np.isfinite(said).all():
            continue
        found = (points.easting[i], points.northing[i], points.height[i])
        assert np.allclose(found, said, rtol=1e-12, atol=1e-9), (
            f"line {line} says {said}, read {found}: {lines[line - 1]!r}"
        )
    return "layout: points"


def _lines(text: str) -> List[str]:
    return text.replace("\r\n", "\n").replace("\r", "\n").split("\n")
