"""Damaged LandXML files: each is read whole or refused in one line that names the file; never anything between."""

from __future__ import annotations

import re
import time
from collections import Counter
from datetime import datetime
from typing import List

import numpy as np
import pytest
from pyproj import CRS
from test_landxml import ALIGNMENT, NASTY

from plugin.core.handover.edges import rim_lines
from plugin.core.handover.landxml_model import LandSurface, LandXml
from plugin.core.handover.landxml_read import read_landxml
from plugin.core.handover.landxml_write import write_landxml
from plugin.core.messages import SurveyError
from plugin.core.points.pointset import make_points
from plugin.core.surface.mesh import twins_of
from tests.core.surfaces import random_tin, ring

COUNT, PARTS = 1500, 5

NUMBERS = [
    "nan",
    "INF",
    "-INF",
    "1e400",
    "1e18",
    "-1",
    "0",
    "1_0",
    "١",
    "",
    "2,5",
    "0x10",
    "99999999999999999999",
    "+3",
]
GROWING = "".join(f"<!ENTITY a{i} '&a{i - 1};&a{i - 1};'>" for i in range(1, 40)).encode()
DOCTYPES = [
    b"<!DOCTYPE LandXML>",
    b'<!DOCTYPE L [<!ENTITY a "aaaaaaaaaaaaaaaa">]>',
    b'<!DOCTYPE L [<!ENTITY % p SYSTEM "file:///etc/passwd">%p;]>',
    b'<!DOCTYPE L SYSTEM "http://127.0.0.1:1/x.dtd">',
    b"<!DOCTYPE L [<!ENTITY a0 '0'>" + GROWING + b"]>",
]
UNITS = [b'"meter"', b'"foot"', b'"USSurveyFoot"', b'"metre"', b'"inch"', b'"kilometer"', b'""', b'"mile"']


@pytest.fixture(scope="module")
def whole(tmp_path_factory) -> List[bytes]:
    """Files with everything in them, as written by the program and with lines of their own for each element."""
    made = []
    for seed, crs in ((1, None), (2, CRS("EPSG:25832")), (3, CRS("EPSG:2263"))):
        tin = random_tin(60, seed, keep=ring)
        points = make_points([1.0, 2.0], [3.0, 4.0], [5.0, np.nan], name=np.array(["a", NASTY], object))
        surfaces = (LandSurface("ground", tin, rim_lines(tin), tin.vertices[:5]), LandSurface("design", tin))
        path = tmp_path_factory.mktemp("whole") / "a.xml"
        contents = LandXml(crs, surfaces, points, (ALIGNMENT,), "p")
        write_landxml(contents, path, datetime(2024, 1, 2), neighbours=seed == 2)
        made.append(path.read_bytes())
    made.append(made[1].replace(b"<P id=", b"\n\t<P\r\n id=").replace(b"UTF-8", b"UTF-16").decode().encode("utf-16"))
    return made


def mutated(whole: List[bytes], rng: np.random.Generator) -> bytes:
    """One of the files with one to three things wrong."""
    raw = whole[rng.integers(len(whole))]
    for _ in range(rng.integers(1, 4)):
        raw = MUTATIONS[rng.integers(len(MUTATIONS))](raw, rng)
    return raw


def cut(raw, rng):
    return raw[: rng.integers(len(raw) + 1)]


def change_byte(raw, rng):
    place = int(rng.integers(len(raw))) if raw else 0
    return raw[:place] + bytes([rng.integers(256)]) + raw[place + 1 :]


def drop_slice(raw, rng):
    first, size = int(rng.integers(len(raw) + 1)), int(rng.integers(1, 400))
    return raw[:first] + raw[first + size :]


def repeat_slice(raw, rng):
    first, size = int(rng.integers(len(raw) + 1)), int(rng.integers(1, 400))
    return raw[: first + size] + raw[first:]


def change_number(raw, rng):
    found = list(re.finditer(rb"(?<=[ >\"])-?\d+(\.\d+)?(?=[ <\"])", raw))
    if not found:
        return raw
    hit = found[rng.integers(len(found))]
    return raw[: hit.start()] + NUMBERS[rng.integers(len(NUMBERS))].encode() + raw[hit.end() :]


def change_corner(raw, rng):
    found = list(re.finditer(rb"(?<=>)\d+ \d+ \d+(?=</F>)", raw))
    if not found:
        return raw
    hit = found[rng.integers(len(found))]
    words = hit.group().split()
    words[rng.integers(3)] = str(rng.integers(-1, 90)).encode()
    return raw[: hit.start()] + b" ".join(words) + raw[hit.end() :]


def change_unit(raw, rng):
    return raw.replace(UNITS[rng.integers(3)], UNITS[rng.integers(len(UNITS))])


def drop_attribute(raw, rng):
    found = list(re.finditer(rb' [A-Za-z]+="[^"]*"', raw))
    if not found:
        return raw
    hit = found[rng.integers(len(found))]
    return raw[: hit.start()] + raw[hit.end() :]


def rename_element(raw, rng):
    names = sorted(set(re.findall(rb"<([A-Za-z0-9]+)", raw)))
    if not names:
        return raw
    one, other = names[rng.integers(len(names))], names[rng.integers(len(names))]
    return raw.replace(b"<" + one + b">", b"<" + other + b">").replace(b"</" + one + b">", b"</" + other + b">")


def drop_element(raw, rng):
    names = sorted(set(re.findall(rb"<([A-Za-z0-9]+)", raw)))
    if not names:
        return raw
    name = names[rng.integers(len(names))]
    return re.sub(rb"<" + name + rb"[ >].*?</" + name + rb">", b"", raw, count=1, flags=re.DOTALL)


def declare(raw, rng):
    at = raw.find(b"<LandXML")
    return raw[:at] + DOCTYPES[rng.integers(len(DOCTYPES))] + raw[at:]


def nest(raw, rng):
    depth, at = int(rng.integers(1, 200)), raw.find(b"<Surfaces>")
    return raw[:at] + b"<Feature>" * depth + b"</Feature>" * depth + raw[at:]


MUTATIONS = [
    cut, change_byte, change_byte, drop_slice, repeat_slice, change_number, change_number, change_corner, change_corner,
    change_unit, drop_attribute, rename_element, drop_element, declare, nest,
]  # fmt: skip


def check_whole(contents: LandXml) -> None:
    """What is read must be fit for all that asks a surface."""
    for surface in contents.surfaces:
        tin = surface.tin
        if tin is None:
            continue
        assert np.isfinite(tin.vertices).all()
        assert np.isfinite(tin.plan_area)
        assert tin.plan_area > 0
        assert tin.triangles.min() >= 0
        assert tin.triangles.max() < len(tin.vertices)
        twin = twins_of(tin.triangles.ravel())
        np.testing.assert_array_equal(tin.neighbours.ravel(), np.where(twin >= 0, twin // 3, -1))
        a, b, c = (tin.grid[tin.triangles[:, i]] for i in range(3))
        assert ((b - a)[:, 0] * (c - a)[:, 1] - (b - a)[:, 1] * (c - a)[:, 0] > 0).all()
    if contents.points is not None:
        assert np.isfinite(contents.points.easting).all()
    for message in contents.messages:
        assert "\n" not in str(message)


@pytest.mark.parametrize("part", range(PARTS))
def test_damaged_files_are_read_whole_or_refused(whole, tmp_path, part):
    path, became = tmp_path / "damaged.xml", Counter()
    for number in range(COUNT // PARTS):
        rng = np.random.default_rng([20240506, part, number])
        path.write_bytes(mutated(whole, rng))
        begin = time.process_time()
        try:
            check_whole(read_landxml(path))
            became["read"] += 1
        except SurveyError as error:
            said = str(error)
            assert str(path) in said, (part, number, said)
            assert "\n" not in said, (part, number)
            became[error.code] += 1
        assert time.process_time() - begin < 5, (part, number)
    # the mutations reach all stages of reading: some files are still good, others fail in many ways
    assert became["read"] > 10
    assert len(became) > 8, became
    assert became["landxml.declarations"] > 5
    assert list(tmp_path.iterdir()) == [path]


def test_over_a_thousand_different_files_are_damaged(whole):
    """Of all that is tried above; some changes leave a file as it was."""
    tried = [
        mutated(whole, np.random.default_rng([20240506, part, number]))
        for part in range(PARTS)
        for number in range(COUNT // PARTS)
    ]
    damaged = set(tried) - set(whole)
    assert len(damaged) > 1000
    assert sum(b"<!DOCTYPE" in raw for raw in damaged) > 100
    assert sum(b"<!ENTITY" in raw for raw in damaged) > 50


def test_the_files_are_good_before(whole, tmp_path):
    for number, raw in enumerate(whole):
        (tmp_path / "a.xml").write_bytes(raw)
        contents = read_landxml(tmp_path / "a.xml")
        check_whole(contents)
        assert len(contents.surfaces) == 2, number
        assert len(contents.alignments) == 1
