"""Texts in metres said in the units of a site, and that every text and translation can be."""

from __future__ import annotations

import ast
import string
import xml.etree.ElementTree as ElementTree
from pathlib import Path
from typing import Iterator, List, Tuple

import pytest
from pyproj import CRS

from plugin.core.messages import Figure, Text, message
from plugin.core.said_in_units import in_units
from plugin.core.units import METRIC, LengthUnit, SiteUnits, nice_length, site_units, usual_contour_interval

ROOT = Path(__file__).parents[2]
US = LengthUnit.US_SURVEY_FOOT
FEET = SiteUnits(US, US)
FOOT = 1200 / 3937  # NIST SP 811


def said(english: str, units: SiteUnits = FEET, code: str = "a.text", **values: object) -> str:
    return message(Text(code, english), **values).say(units=units)


@pytest.mark.parametrize(
    ("english", "values", "told"),
    [
        ("off {size:+.3f} m", {"size": -0.3}, "off -0.984 ftUS"),
        ("to {sigma:.0f} mm", {"sigma": 14.0}, "to 0.046 ftUS"),
        ("{area:.1f} m², {far:.1f} km", {"area": 10.0, "far": 16.09347}, "107.6 ftUS², 10.0 mi"),
        ("cut {cut:.1f} ± {half:.1f} m³ of it", {"cut": 100.0, "half": 10.0}, "cut 130.8 ± 13.1 yd³ of it"),
        ("{part:.0f} of {area:.0f} m²", {"part": 1.0, "area": 2.0}, "11 of 22 ftUS²"),
        ("{count} of {area:.0f} m²", {"count": 3, "area": 2.0}, "3 of 22 ftUS²"),
        ("at E {easting:.2f} N {northing:.2f}: ", {"easting": 300.0, "northing": 30.0}, "at E 984.25 N 98.43: "),
        ("by {up} m up", {"up": Figure("-1.2345")}, "by -4.0502 ftUS up"),
        ("{far} away", {"far": Figure("1.5 km")}, "0.9 mi away"),
        ("grid of {cell:g} m", {"cell": 0.5}, "grid of 1.64 ftUS"),
        ("a cell of {cell} m", {"cell": 0.5}, "a cell of 0.5 m"),  # an option, as it was given
        ("{speed:.1f} m/s, {bend:.4f} 1/m, {file} m.txt", {"speed": 1.2, "bend": 0.1, "file": "a"}, None),
        ("{{{size:.1f} m}}", {"size": 3.0}, "{9.8 ftUS}"),
    ],
)
def test_in_feet(english: str, values: dict, told: str) -> None:
    metric = said(english, METRIC, **values)
    assert metric == english.format(**values)
    assert said(english, **values) == (metric if told is None else told)


def test_water_is_told_in_cubic_feet() -> None:
    assert said("{volume:.1f} m³", volume=10.0, code="job.water_line") == f"{10 / FOOT**3:.1f} ftUS³"
    assert said("{volume:.1f} m³", volume=10.0) == f"{10 / (3 * FOOT) ** 3:.1f} yd³"


def test_what_stays_metric() -> None:
    text = Text("a.text", "a drift of {drift:g} m", metric=True)
    assert message(text, drift=0.02).say(units=FEET) == "a drift of 0.02 m"


def test_heights_in_another_unit_than_distances() -> None:
    mixed = SiteUnits(US, LengthUnit.METRE)
    text = "{distance:.1f} m beside, {size:+.3f} m off, at {height:.2f} m"
    assert said(text, mixed, distance=1.0, size=0.1, height=5.0) == "3.3 ftUS beside, +0.100 m off, at 5.00 m"


def test_a_message_in_a_message() -> None:
    inner = message(Text("b.text", "{size:.1f} m"), size=3.0)
    assert message(Text("a.text", "{what} and {area:.0f} m²"), what=inner, area=1.0).say(units=FEET) == (
        "9.8 ftUS and 11 ftUS²"
    )


def test_units_of_a_crs() -> None:
    assert site_units(None) == site_units(CRS("EPSG:25832")) == METRIC
    assert site_units(CRS("EPSG:2263")) == FEET
    assert site_units(CRS("EPSG:2263+5703")) == SiteUnits(US, LengthUnit.METRE)
    assert site_units(CRS("EPSG:2263"), LengthUnit.METRE) == SiteUnits(US, LengthUnit.METRE)
    assert [usual_contour_interval(unit) for unit in (LengthUnit.METRE, LengthUnit.FOOT, US)] == [0.25, 0.5, 0.5]
    assert nice_length(0.7, CRS("EPSG:2263")) == pytest.approx(2 * FOOT)
    assert nice_length(0.7, None) == 0.5


def texts() -> Iterator[Tuple[str, str]]:
    """File and English of every text that can be translated."""
    for path in sorted((ROOT / "plugin").rglob("*.py")):
        for node in ast.walk(ast.parse(path.read_text(encoding="utf-8"))):
            name = getattr(getattr(node, "func", None), "id", getattr(getattr(node, "func", None), "attr", ""))
            if name in ("QT_TRANSLATE_NOOP", "translate") and len(getattr(node, "args", ())) >= 2:
                told = node.args[1]  # type: ignore[attr-defined]
                if isinstance(told, ast.Constant) and isinstance(told.value, str):
                    yield path.name, told.value


def lengths(text: str) -> List[str]:
    """The gaps of a text that are told in other units for a site in feet, with these."""
    names = {name for _, name, _, _ in string.Formatter().parse(text) if name}
    changed, _ = in_units(text, dict.fromkeys(names, 1.0), FEET, False)
    return sorted(set(_gaps(changed)) - set(_gaps(text)))


def _gaps(text: str) -> List[str]:
    pieces = [*string.Formatter().parse(text), ("", None, None, None)]
    return [
        f"{(name or '').rstrip('_0123456789')} {form} {behind[0].strip()[:4].split(' ')[0].rstrip('.,;:)')}"
        for (_, name, form, _), behind in zip(pieces, pieces[1:])
    ]


def test_no_text_is_spoilt() -> None:
    """Every text can be said in feet, and keeps its gaps."""
    count = 0
    for file, english in texts():
        gaps = {name: form or "" for _, name, form, _ in string.Formatter().parse(english) if name}
        given = {name: 1 if form.endswith("d") else 1.0 for name, form in gaps.items()}
        told, values = in_units(english, given, FEET, False)
        assert len(told.format(**values)) > 0, file
        count += told != english
    assert count > 150


@pytest.mark.parametrize("path", sorted((ROOT / "i18n").glob("*.ts")), ids=lambda path: path.stem)
def test_translations_have_their_units_where_the_english_has_them(path: Path) -> None:
    """Else a reader of another language would be told metres as feet, or the reverse."""
    wrong = []
    for entry in ElementTree.parse(path).iter("message"):
        source, translation = entry.findtext("source") or "", entry.findtext("translation") or ""
        try:
            here, there = lengths(source), lengths(translation)
        except (ValueError, KeyError):  # a text with other braces, such as a style
            continue
        if translation and _units(here) != _units(there):
            wrong.append((source[:24], translation))
    assert wrong == []


def _units(gaps: List[str]) -> List[Tuple[str, str]]:
    return sorted((gap.split(" ")[0], gap.split(" ")[1]) for gap in gaps)
