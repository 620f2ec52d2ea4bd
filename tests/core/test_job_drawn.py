"""Lines drawn by hand in the main job: the surface is the one that the core builds with the same lines."""

from __future__ import annotations

import json
import sqlite3
import struct
from dataclasses import replace
from pathlib import Path

import numpy as np
import pytest
import shapely
from pyproj import Transformer
from test_found_lines import FLAT, break_at, step
from test_found_lines import coded as known
from test_job import hill, run, write

from plugin.core.__main__ import STAGES
from plugin.core.contours.lines import ContourOptions
from plugin.core.features.ground_lines import LineStatus
from plugin.core.handover.mesh import write_2dm
from plugin.core.job.run import compute, run_job
from plugin.core.job.settings import JobSettings
from plugin.core.linework.constraints import LineKind
from plugin.core.linework.drawn import DrawnRow, constraints_from_rows
from plugin.core.surface.build import SurfaceOptions, build_surface
from plugin.core.surface.crossings import CrossingRule
from plugin.core.surface.giving_way import found_breaklines
from plugin.core.surface.locate import heights_at

DEMO = Path(__file__).resolve().parents[2] / "test_data" / "demo"
EAST, NORTH = 500000.0, 5800000.0
#: Within the hill of 22 by 22 m, away from its points.
FIELD = [(3.3, 3.1), (17.7, 4.9), (18.3, 16.7), (5.1, 18.9), (3.3, 3.1)]
HOUSE = [(8.3, 8.1), (11.9, 8.3), (11.7, 12.1), (8.1, 11.9), (8.3, 8.1)]
#: Where a line is laid on the surface it is cut at places of the grid of 0.1 mm: over 70 m of outline, in m².
CUT = 70 * 0.5e-4
UTM = {"type": "name", "properties": {"name": "urn:ogc:def:crs:EPSG::25832"}}


def at(places):
    return [[EAST + x, NORTH + y, *z] for x, y, *z in places]


def drawn(path, *geometries, crs=UTM):
    """A GeoJSON file of pairs of a kind of geometry and its coordinates."""
    features = [
        {"type": "Feature", "properties": {}, "geometry": {"type": kind, "coordinates": coordinates}}
        for kind, coordinates in geometries
    ]
    data = {"type": "FeatureCollection", "features": features, **({"crs": crs} if crs else {})}
    path.write_text(json.dumps(data), encoding="utf-8")
    return path


def job(folder, survey=None, **more):
    file = write(folder / "hill.csv", hill()) if survey is None else survey
    return JobSettings(file, folder / "out", ContourOptions(0.25), "EPSG:25832", check=False, find_lines=False, **more)


def same_as(result, *rows, folder):
    """Whether the surface is that of the points with these rows, to the last digit."""
    built = build_surface(result.points, constraints_from_rows(rows).constraints)
    for name, tin in (("job", result.surface.tin), ("built", built.tin)):
        write_2dm(tin, folder / f"{name}.2dm")
    assert result.surface.report.edges == built.report.edges
    return (folder / "job.2dm").read_bytes() == (folder / "built.2dm").read_bytes()


# The kinds


def test_a_boundary_and_a_void_cut_the_surface(tmp_path):
    boundary = drawn(tmp_path / "b.geojson", ("Polygon", [at(FIELD)]))
    voids = drawn(tmp_path / "v.geojson", ("LineString", at(HOUSE)))
    result = compute(job(tmp_path, boundary=boundary, voids=voids))
    rows = DrawnRow(LineKind.BOUNDARY, [at(FIELD)]), DrawnRow(LineKind.VOID, [at(HOUSE)])
    assert same_as(result, *rows, folder=tmp_path)
    field = shapely.Polygon(FIELD).difference(shapely.Polygon(HOUSE))
    assert result.surface.tin.plan_area == pytest.approx(field.area, abs=CUT)
    assert not heights_at(result.surface.tin, np.array(at([(10.0, 10.0)]))) > 0


def test_a_ring_in_a_ring_is_a_hole(tmp_path):
    boundary = drawn(tmp_path / "b.geojson", ("MultiPolygon", [[at(FIELD), at(HOUSE)]]))
    area = compute(job(tmp_path, boundary=boundary)).surface.tin.plan_area
    assert area == pytest.approx(shapely.Polygon(FIELD, [HOUSE]).area, abs=CUT)


def test_a_breakline_with_heights_becomes_edges_and_one_without_is_laid_on_the_surface(tmp_path):
    wall, path = [(3.1, 4.3, 103.0), (17.3, 4.7, 103.5)], [(3.1, 9.3, 0.0), (17.3, 15.7, 0.0)]
    breaklines = drawn(tmp_path / "wall.geojson", ("LineString", at(wall)))
    soft = drawn(tmp_path / "path.geojson", ("MultiLineString", [at(path)]))
    plain = compute(job(tmp_path)).surface.tin
    result = compute(job(tmp_path, breaklines=breaklines, soft_lines=soft))
    bare = [place[:2] for place in at(path)]
    rows = DrawnRow(LineKind.BREAKLINE, [at(wall)]), DrawnRow(LineKind.BREAKLINE, [bare])
    assert same_as(result, *rows, folder=tmp_path)
    tin = result.surface.tin
    middle, along = np.array(at([(10.2, 4.5)])), np.array(at([(8.1, 9.3 + 5 * 6.4 / 14.2)]))
    assert heights_at(tin, middle) == pytest.approx([103.25])
    assert heights_at(plain, middle) < 102.5
    assert heights_at(tin, along) == pytest.approx(heights_at(plain, along), abs=1e-4)
    assert result.surface.report.edges[LineKind.BREAKLINE] > len(hill()) ** 0.5
    assert not [one for one in result.remarks if "heights are 0" in str(one)]


def test_lines_in_degrees_and_in_another_zone_are_brought_in(tmp_path):
    areas = []
    for name, crs in (("degrees", None), ("zone", {"type": "name", "properties": {"name": "EPSG:25833"}})):
        to = Transformer.from_crs(25832, 25833 if crs else 4326, always_xy=True)
        ring = [list(to.transform(*place)) for place in at(FIELD)]
        boundary = drawn(tmp_path / f"{name}.geojson", ("Polygon", [ring]), crs=crs)
        result = compute(job(tmp_path, boundary=boundary, accept=("null", "noop")))
        areas.append(result.surface.tin.plan_area)
        assert any(f"{name}.geojson" in str(one) for one in result.remarks)
    assert areas == pytest.approx([shapely.Polygon(FIELD).area] * 2, abs=0.01)


def test_heights_in_another_unit_are_refused_and_others_told(tmp_path, capsys):
    wall = [(3.1, 4.3, 103.0), (17.3, 4.7, 103.5)]
    to = Transformer.from_crs(25832, 25833, always_xy=True)
    moved = [[*to.transform(*place[:2]), place[2]] for place in at(wall)]
    zone = drawn(tmp_path / "zone.geojson", ("LineString", moved), crs="EPSG:25833")
    result = compute(job(tmp_path, breaklines=zone))
    assert "heights are taken as they stand" in " ".join(str(one) for one in result.remarks)
    assert heights_at(result.surface.tin, np.array(at([(10.2, 4.5)]))) == pytest.approx([103.25], abs=1e-3)
    feet = drawn(tmp_path / "feet.geojson", ("LineString", [[1e6, 2e5, 300.0], [1e6 + 9, 2e5, 300.0]]), crs="EPSG:2263")
    survey = write(tmp_path / "hill.csv", hill())
    assert run(survey, tmp_path / "out", "--breaklines", str(feet), "--accept", "ballpark") == 2
    (line,) = [one for one in capsys.readouterr().err.splitlines() if one not in STAGES.values()]
    assert line.startswith("--breaklines: ")
    assert "feet.geojson" in line


def test_heights_of_nothing_but_0_are_doubted(tmp_path):
    flat = drawn(tmp_path / "flat.geojson", ("LineString", at([(3.1, 4.3, 0.0), (17.3, 4.7, 0.0)])))
    remarks = [str(one) for one in compute(job(tmp_path, breaklines=flat)).remarks]
    assert any(one.startswith("flat: all heights are 0.") for one in remarks)


@pytest.mark.parametrize("option", ["--boundary", "--breaklines", "--soft-lines", "--voids"])
@pytest.mark.parametrize(
    ("text", "said"),
    [
        (None, "it cannot be read"),
        ("name,easting\n", "line 1: this is no GeoJSON"),
        ('{"type": "FeatureCollection", "features": []}', "no lines or polygons in it"),
        ('{"type": "Point", "coordinates": [9, 52]}', "feature 1: Point is no line or polygon"),
        ('{"type": "LineString", "coordinates": [[9, 52], [9, null]]}', "feature 1: LineString is no line"),
        ('{"type": "Polygon", "coordinates": [[9, 52], [9, 53]]}', "feature 1: Polygon is no line"),
        ('{"type": "LineString", "coordinates": []}', "no lines or polygons in it"),
        ('{"type": "MultiLineString", "coordinates": [[], []]}', "no lines or polygons in it"),
        ('{"type": "Polygon", "coordinates": [[]]}', "no lines or polygons in it"),
        ('{"type": "Polygon", "coordinates": [[], [[9, 52], [9, 53], [10, 52], [9, 52]]]}', "feature 1: Polygon is no"),
    ],
)
def test_a_file_that_is_none_is_refused_in_one_line(tmp_path, capsys, option, text, said):
    if text is not None:
        (tmp_path / "site.geojson").write_text(text)
    survey = write(tmp_path / "hill.csv", hill())
    assert run(survey, tmp_path / "out", option, str(tmp_path / "site.geojson")) == 2
    (line,) = [one for one in capsys.readouterr().err.splitlines() if one not in STAGES.values()]
    assert line.startswith(f"{option}: ")
    assert "site.geojson" in line
    assert said in line


# What goes first


def coded(height):
    """The hill with a breakline by field codes from west to east."""
    return [*hill(), f"a,500001,5800010.5,{height},KT 1 BEGIN", f"b,500021,5800010.5,{height},KT 1 END"]


def test_lines_of_field_codes_go_before_drawn_ones_and_the_report_tells_where_they_meet(tmp_path, capsys):
    survey = write(tmp_path / "hill.csv", coded(103.0))
    across = drawn(tmp_path / "across.geojson", ("LineString", at([(10.5, 3.0, 104.0), (10.5, 19.0, 104.0)])))
    assert run(survey, tmp_path / "out", "--breaklines", str(across)) == 2
    assert "KT 1 at 103.000 m and across 1 at 104.000 m" in capsys.readouterr().err
    assert run(survey, tmp_path / "out", "--breaklines", str(across), "--crossings", "first") == 0
    said = capsys.readouterr().out
    assert "Drawn     1 breaklines, 0 boundary rings, 0 voids, from across.geojson" in said
    assert "across 1 at 104.000 m" in said
    page = (tmp_path / "out" / "report.html").read_text(encoding="utf-8")
    assert "Lines drawn by hand" in page
    assert "another height: 1; see" in page
    result = run_job(job(tmp_path, survey, breaklines=across, surface=SurfaceOptions(crossing=CrossingRule.FIRST)))
    assert heights_at(result.surface.tin, np.array(at([(10.5, 10.5)]))) == pytest.approx([103.0])


def test_found_lines_give_way_to_drawn_ones():
    lines, beside = [step(), break_at(21.0)], known((0, 9.85, 10), (40, 9.85, 10))
    held = found_breaklines(lines, beside, FLAT)
    assert {line.label for line in held.breaklines.lines} == {"top 2"}, "the step runs beside the known line"
    assert held.messages[0].values["count"] == 1
    assert max(line.xyz[:, 1].min() for line in held.breaklines.lines) >= 9.85, "and the other gives way across it"


def test_found_lines_of_the_demo_give_way_to_a_drawn_one(tmp_path):
    """The demo without codes; one of its used lines drawn again, and one across it."""
    settings = JobSettings(DEMO / "uncoded.csv", tmp_path / "out", ContourOptions(0.5), "EPSG:25832")
    alone = compute(settings)
    used = alone.ground_lines.of_status(LineStatus.USED)
    longest = max(used, key=lambda line: line.length)
    again = drawn(tmp_path / "again.geojson", *(("LineString", part.tolist()) for part in longest.parts))
    result = compute(replace(settings, breaklines=again))
    gone = f"{longest.kind.value} {alone.ground_lines.lines.index(longest) + 1}"
    before = {line.label for line in alone.ground_lines.breaklines.lines}
    after = {line.label for line in result.ground_lines.breaklines.lines}
    assert gone in before
    assert gone not in after
    assert result.surface.report.edges[LineKind.BREAKLINE] > 0
    assert any("of lines that are known already" in str(one) for one in result.remarks)


# In a job


def test_a_drawn_line_that_changes_does_again_the_lines_and_the_surface_only(tmp_path):
    boundary = drawn(tmp_path / "b.geojson", ("Polygon", [at(FIELD)]))
    settings = job(tmp_path, boundary=boundary)
    first = run_job(settings)
    told = []
    run_job(settings, lambda fraction, stage: told.append(stage))
    assert told == []
    drawn(boundary, ("Polygon", [at(HOUSE)]))
    again = run_job(settings, lambda fraction, stage: told.append(stage))
    assert "points" not in told
    assert "surface" in told
    assert again.surface.tin.plan_area < first.surface.tin.plan_area / 5
    assert again.surface.tin.plan_area == pytest.approx(shapely.Polygon(HOUSE).area, abs=CUT)
    assert run_job(settings).drawn[0].lines.constraints.lines[0].label == "b 1", "as it is kept"


def parcels():
    """The parcels of the demo, out of its GeoPackage (OGC 12-128, clause 2.1.3, from memory: a header, then WKB)."""
    with sqlite3.connect(f"file:{DEMO}/site.gpkg?mode=ro", uri=True) as base:
        blobs = [blob for (blob,) in base.execute("SELECT geom FROM parcels")]
    assert all(struct.unpack_from("<i", blob, 4) == (25832,) for blob in blobs)
    return [shapely.from_wkb(blob[8 + {0: 0, 1: 32}[(blob[3] >> 1) & 7] :]) for blob in blobs]


def test_the_demo_within_a_parcel_covers_what_of_it_was_surveyed(tmp_path):
    settings = replace(job(tmp_path, DEMO / "survey.csv"), use_codes=False)
    points = compute(settings).points
    hull = shapely.convex_hull(shapely.multipoints(np.column_stack([points.easting, points.northing])[points.used]))
    polygons = [polygon for polygon in parcels() if polygon.intersects(hull)]
    assert polygons
    for number, polygon in enumerate(polygons):
        boundary = drawn(tmp_path / f"{number}.geojson", ("Polygon", [list(map(list, polygon.exterior.coords))]))
        area = compute(replace(settings, boundary=boundary)).surface.tin.plan_area
        assert area == pytest.approx(polygon.intersection(hull).area, abs=0.05)
