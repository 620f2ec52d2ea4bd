"""Water in the report: sentences, tables and maps from results of known ground."""

import html
import re

import numpy as np
import pytest
from test_drainage_ponds import basins

from plugin.core.drainage.analysis import analyse, compare
from plugin.core.drainage.inlet_list import Inlet
from plugin.core.drainage.ponds import PondOptions
from plugin.core.drainage.rational import FlowUnits
from plugin.core.drainage.shores import pond_shores
from plugin.core.drainage.study import Hollows, Rain, WaterOptions, study_water
from plugin.core.georeference.crs import read_crs
from plugin.core.report.labels import Words
from plugin.core.report.water_page import write_change_page, write_ponds_page, write_water_page
from plugin.core.report.water_sections import water_body
from plugin.core.surface.tin import Tin
from tests.core.drainage_grounds import cone, gridded, plane

SIDE = np.arange(0.0, 21.0)
WORDS = Words()


def told(text):
    """What a reader sees, without pictures."""
    return html.unescape(re.sub(r"<[^>]+>", " ", re.sub(r"<style>.*?</style>|<img[^>]*>", "", text, flags=re.S)))


def table(text, caption):
    """Rows of cells of the table whose caption begins so."""
    found = next(t for t in re.findall(r"<table.*?</table>", text, flags=re.S) if caption in told(t))
    rows = re.findall(r"<tr>(.*?)</tr>", found, flags=re.S)
    return [[html.unescape(c) for c in re.findall(r"<t[hd][^>]*>(.*?)</t[hd]>", row, flags=re.S)] for row in rows]


def value(cell):
    return float(cell.replace("\u202f", "").replace("\u2212", "-"))


def study(tin, inlets=(), **options):
    return study_water(tin, inlets, WaterOptions(**{"ponds": PondOptions(), "min_outlet": 5.0, **options}))


def with_crs(tin, code):
    return Tin(**{**vars(tin), "crs": read_crs(code)})


def test_catchments_sum_to_the_site():
    tin = gridded(basins, SIDE, SIDE)
    rows = table(water_body(study(tin), WORDS), "Catchments, the largest first")[1:]
    assert rows[-1][0] == "whole site"
    assert value(rows[-1][2]) == pytest.approx(400)
    assert sum(value(row[2]) for row in rows[:-1]) == pytest.approx(400, abs=0.05 * len(rows))
    assert sum(value(row[3]) for row in rows[:-1]) == pytest.approx(100, abs=0.005 * len(rows))
    assert sum(value(row[4]) for row in rows[:-1]) == pytest.approx(value(rows[-1][4]), abs=0.05 * len(rows))


def test_very_many_catchments_are_summed_up():
    rng = np.random.default_rng(1)
    tin = gridded(lambda x, y: rng.normal(0, 0.1, x.shape), np.arange(0.0, 51.0), np.arange(0.0, 51.0))
    rows = table(water_body(study(tin, hollows=Hollows.PITS_KEEP), WORDS), "Catchments, the largest first")[1:]
    assert len(rows) == 62
    assert "smaller ones" in rows[-2][0]
    assert sum(value(row[2]) for row in rows[:-1]) == pytest.approx(2500, abs=4)


def test_ponds_in_the_table_are_those_found():
    found = study(gridded(basins, SIDE, SIDE))
    rows = table(water_body(found, WORDS), "Ponds, the deepest first")[1:]
    assert [row[0] for row in rows] == [f"P{k + 1}" for k in range(len(found.ponds))]
    for row, depth, volume in zip(rows, found.ponds.depth, found.ponds.volume):
        assert float(row[2].split()[0]) == pytest.approx(depth, abs=5e-4)
        assert value(row[5]) == pytest.approx(volume, abs=5e-3)


def test_ground_that_drains_nowhere_is_stated():
    text = told(water_body(study(cone(-4.0)), WORDS))
    assert "100.0 % of the site, drain nowhere" in text
    text = told(water_body(study(plane(count=200)), WORDS))
    assert "No ground drains nowhere" in text
    assert "There is no pond" in text


def test_feet_and_acres():
    foot = 1200 / 3937
    tin = with_crs(cone(-4.0), "EPSG:2263")
    found = study(tin, rain=Rain(2.0, 0.5, FlowUnits.US))
    text = water_body(found, WORDS)
    (row,) = table(text, "Ponds, the deepest first")[1:]
    assert float(row[2].split()[0]) == pytest.approx(4 / foot, abs=1e-3)
    assert value(row[5]) == pytest.approx(found.ponds.volume[0] / foot**3, abs=0.06)
    said = told(text)
    for unit in ("ftUS²", "ftUS³", "ft³/s", "2.00 in/h"):
        assert unit in said
    assert " m³" not in said


def test_peak_flows_are_told_with_their_method():
    tin = gridded(basins, SIDE, SIDE)
    inlet = Inlet("<Gully & Co>", (np.array([[2.5, 2.5]]) + tin.origin,), 0.9)
    text = water_body(study(tin, [inlet], rain=Rain(60.0, 0.3)), WORDS)
    head = table(text, "Catchments, the largest first")[0]
    assert head[-1] == "Peak flow (l/s)"
    assert "Kuichling" in told(text)
    assert "&lt;Gully &amp; Co&gt;" in text, "names are text, whatever is in them"


def test_pages_are_the_same_every_time(tmp_path):
    tin = gridded(basins, SIDE, SIDE)
    found = study(tin)
    for name in ("a.html", "b.html"):
        write_water_page(found, tmp_path / name)
    assert (tmp_path / "a.html").read_bytes() == (tmp_path / "b.html").read_bytes()
    write_ponds_page(found.flow, found.ponds, found.shores, (), PondOptions(), tmp_path / "ponds.html")
    assert (tmp_path / "ponds.html").read_text(encoding="utf-8").count("<img") == 1


def test_a_change_is_told(tmp_path):
    def holes(x, y):
        return 0.1 * y - 1.5 * ((abs(x - 5) < 1) & (abs(y - 12) < 1))

    before = analyse(gridded(holes, SIDE, SIDE))
    after = analyse(gridded(lambda x, y: 0.1 * y - 2.0 * ((abs(x - 15) < 1) & (abs(y - 12) < 1)), SIDE, SIDE))
    change = compare(before, after, 0.25)
    write_change_page(before, after, change, (), PondOptions(), tmp_path / "change.html")
    text = (tmp_path / "change.html").read_text(encoding="utf-8")
    rows = table(text, "Ponds before and after")[1:]
    assert {row[0] for row in rows} == {"new", "gone"}
    new = next(row for row in rows if row[0] == "new")
    assert value(new[5]) == pytest.approx(after.ponds.volume[0], abs=5e-3)
    moved = table(text, "Ground whose water goes elsewhere")[1:]
    assert {(row[0], row[1]) for row in moved[:-1]} == {("the rim", "a pond or pit"), ("a pond or pit", "the rim")}
    assert value(moved[-1][2]) == pytest.approx(sum(value(row[2]) for row in moved[:-1]), abs=0.2)
    areas = table(text, "Catchments before and after")[1:]
    assert areas[-1][0] == "whole surface"
    assert [value(cell) for cell in areas[-1][1:]] == pytest.approx([400, 400, 0], abs=0.05)
    for row in areas:
        assert value(row[3]) == pytest.approx(value(row[2]) - value(row[1]), abs=0.16)
    same = compare(before, before, 1.0)
    write_change_page(before, before, same, (), PondOptions(), tmp_path / "same.html")
    assert "No ground has its water go elsewhere" in told((tmp_path / "same.html").read_text(encoding="utf-8"))


def test_shores_come_with_every_pond():
    found = study(gridded(basins, SIDE, SIDE))
    assert len(found.shores) == len(found.ponds) == len(pond_shores(found.flow, found.ponds))
