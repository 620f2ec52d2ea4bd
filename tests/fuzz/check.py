"""What must hold of any bytes that are read as a survey file."""

from __future__ import annotations

import re
import time
from pathlib import Path
from typing import Any, Dict, List

import numpy as np
from pyproj import CRS

from plugin.core.georeference.intake import take_in
from plugin.core.georeference.intake_options import IntakeOptions
from plugin.core.messages import SurveyError
from plugin.core.points.columns import parse_columns
from plugin.core.points.geographic import HeightKind
from plugin.core.points.survey import read_survey

#: Seconds of processor time a file of up to 1 MB may take; by the clock a busy machine would seem to hang.
LONGEST = 5.0
CRSS = (None, CRS.from_epsg(25832), CRS.from_epsg(2263))
MAPPINGS = (None, None, None, "name,easting,northing,height,code", "easting=2,northing=3,height=4", "lat,lon,height")


TARGETS = (None, CRS.from_epsg(25832), CRS.from_epsg(25833), CRS.from_user_input("EPSG:25832+7837"))
SOURCES = (None, None, CRS.from_epsg(25832), CRS.from_epsg(4258))


def options_of(rng: np.random.Generator) -> Dict[str, Any]:
    """What a user may say of a file."""
    return {
        "columns": MAPPINGS[int(rng.integers(len(MAPPINGS)))],
        "crs": CRSS[int(rng.integers(len(CRSS)))],
        "comment": ("auto", "auto", "#", "", "//")[int(rng.integers(5))],
        "heights": (HeightKind.ORTHOMETRIC, HeightKind.ELLIPSOIDAL)[int(rng.integers(2))],
        "geographic": bool(rng.integers(4)),
        "heights_of": ("antenna", "antenna", "ground", "")[int(rng.integers(4))],
        "no_value": (None, None, (), ("0", "*"))[int(rng.integers(4))],
        "units_from": ("", "", "header", "options")[int(rng.integers(4))],
        "pole_height": (None, None, None, 2.0)[int(rng.integers(4))],
    }


def check(path: Path, raw: bytes, options: Dict[str, Any]) -> str:
    """Read ``raw`` and check what comes out; "points" or the code of the error. Raises AssertionError."""
    path.write_bytes(raw)
    begin = time.process_time()
    try:
        result = read_survey(path, **options)
    except SurveyError as error:
        said = str(error)
        assert said.strip(), "an error says nothing"
        assert "\n" not in said, f"an error of several lines: {said!r}"
        assert path.name in said or "--" in said, f"an error that does not name its file: {said!r}"
        return error.code
    finally:
        took = time.process_time() - begin
        assert took < LONGEST, f"took {took:.1f} s"
    points, rejects, account = result.points, result.rejects, result.account
    n = len(points)
    assert account.points == n > 0
    assert account.rejects == len(rejects)
    assert account.lines == n + len(rejects) + account.comments + account.blanks + account.header + account.other
    lines = lines_of(raw, result.format.encoding)
    assert account.lines == len(lines), f"{account.lines} lines told, {len(lines)} counted"
    numbers = points.source_line.tolist() + rejects.line.tolist()
    assert len(set(numbers)) == len(numbers), "a line is told twice"
    assert not numbers or (min(numbers) >= 1 and max(numbers) <= len(lines))
    assert rejects.text.tolist() == [lines[number - 1] for number in rejects.line]
    assert all(str(reason).strip() for reason in rejects.reason)
    assert np.isfinite(points.height).all()
    assert all(len(values) == n for values in points.extra.values())
    for note in result.messages:
        assert str(note)
    if result.geographic is not None:
        assert len(result.geographic) == n
        assert np.abs(result.geographic.latitude).max() <= 90
        assert np.abs(result.geographic.longitude).max() <= 180
    else:
        assert np.isfinite(points.easting).all()
        assert np.isfinite(points.northing).all()
    if not result.log:
        assert account.other == 0
    return "points"


def check_intake(path: Path, raw: bytes, options: Dict[str, Any], rng: np.random.Generator) -> str:
    """Take ``raw`` in: read, transformed, held against the area of use. As :func:`check`."""
    path.write_bytes(raw)
    begin = time.process_time()
    wanted = IntakeOptions(
        crs=TARGETS[int(rng.integers(len(TARGETS)))], source_crs=SOURCES[int(rng.integers(len(SOURCES)))],
        columns=parse_columns(options["columns"]) if options["columns"] else None, comment=options["comment"],
        heights=(None, None, HeightKind.ELLIPSOIDAL)[int(rng.integers(3))], heights_of=options["heights_of"],
    )  # fmt: skip
    try:
        came = take_in([path], wanted)
    except SurveyError as error:
        said = str(error)
        assert said.strip(), "an error says nothing"
        assert "\n" not in said, f"an error of several lines: {said!r}"
        return f"taken in: {error.code}"
    finally:
        took = time.process_time() - begin
        assert took < LONGEST, f"taking in took {took:.1f} s"
    points, account = came.survey.points, came.survey.account
    assert account.points == len(points) > 0
    assert len(came.areas[0].outside) == len(points)
    assert np.isfinite(points.easting).all()
    assert np.isfinite(points.northing).all()
    assert points.source_line.tolist() == came.files[0].points.source_line.tolist()
    for note in (*came.messages, *came.survey.messages, *came.statements):
        assert str(note)
    return "taken in: points"


def lines_of(raw: bytes, encoding: str) -> List[str]:
    """The lines of a file, found another way than by the reader; without the zeros that a lost power leaves behind."""
    text = raw.decode(encoding).rstrip("\0")
    marked = encoding != "utf-8-sig" and text.startswith("\ufeff")  # of utf-8-sig one mark is gone already
    lines = re.split("\r\n|\r|\n", text[1:] if marked else text)
    return lines[:-1] if lines[-1] == "" else lines
