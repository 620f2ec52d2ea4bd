"""LandXML written and read: exact to the written decimals, by the schema's rules, and for other people's files."""

from __future__ import annotations

from dataclasses import replace
from datetime import datetime, timezone
from pathlib import Path
from xml.etree import ElementTree

import numpy as np
import pytest
from hypothesis import HealthCheck, given, settings
from hypothesis import strategies as st
from pyproj import CRS
from test_mesh import same_surface, with_kinds

from plugin.core.alignment.curves import fit_heights
from plugin.core.alignment.line import make_alignment
from plugin.core.handover.edges import marked_lines, rim_lines
from plugin.core.handover.landxml_geometry import (
    chords,
    design_profile,
    element_length,
    from_alignment,
    profile_heights,
    to_alignment,
)
from plugin.core.handover.landxml_model import (
    NAMESPACE,
    Arc,
    Clothoid,
    LandAlignment,
    LandProfile,
    LandSurface,
    LandXml,
    Straight,
)
from plugin.core.handover.landxml_read import read_landxml
from plugin.core.handover.landxml_write import write_landxml
from plugin.core.linework.constraints import LineKind
from plugin.core.messages import SurveyError
from plugin.core.points.pointset import make_points
from plugin.core.progress import Cancelled
from plugin.core.surface.tin import GRID, Tin
from plugin.core.units import WORKING_UNITS, LengthUnit
from tests.core.landxml_rules import broken_rules
from tests.core.surfaces import delaunay_tin, random_tin, ring

MOMENT = datetime(2024, 5, 6, 7, 8, 9, tzinfo=timezone.utc)


def written(path, *surfaces, crs=None, **more):
    contents = LandXml(crs, tuple(surfaces), **more)
    write_landxml(contents, path, MOMENT)
    assert broken_rules(path) == []
    return read_landxml(path)


def surface_of(tin, name="ground"):
    return LandSurface(name, tin, marked_lines(tin))


# Surfaces


@pytest.mark.parametrize("code", [None, "EPSG:25832", "EPSG:2263", "EPSG:2222"])  # metre, US survey foot, foot
def test_a_surface_comes_back_exactly(tmp_path, code):
    crs = None if code is None else CRS(code)
    tin = with_kinds(replace(random_tin(500, 7, keep=ring), crs=crs), 3, [1])
    back = written(tmp_path / "a.xml", surface_of(tin), crs=crs)
    same_surface(tin, back.surfaces[0].tin)
    assert back.messages == ()
    if crs is not None:
        assert back.crs.equals(crs)


def test_rings_come_back_as_boundary_and_void(tmp_path):
    tin = random_tin(900, 8, keep=ring)
    lines = rim_lines(tin)
    assert {line.kind for line in lines} == {LineKind.BOUNDARY, LineKind.VOID}
    back = written(tmp_path / "a.xml", LandSurface("rim", tin, lines)).surfaces[0]
    rim = back.tin.neighbours < 0
    np.testing.assert_array_equal(back.tin.edge_kind > 0, rim)
    assert set(np.unique(back.tin.edge_kind)) == {0, int(LineKind.BOUNDARY), int(LineKind.VOID)}
    # the area inside the rings by the shoelace formula
    area = sum((1 if line.kind is LineKind.BOUNDARY else -1) * shoelace(line.xyz[:, :2]) for line in back.lines)
    assert area == pytest.approx(tin.plan_area, rel=1e-9)


def test_areas_in_plan_and_along_the_slope_are_told(tmp_path):
    """A plane of 3 in 4: its area along the slope is 5/4 of that in plan."""
    x, y = (v.ravel() for v in np.meshgrid(np.arange(5.0), np.arange(4.0)))
    written(tmp_path / "a.xml", surface_of(delaunay_tin(np.column_stack([x, y]), 0.75 * x)))
    (definition,) = ElementTree.parse(tmp_path / "a.xml").findall(".//{*}Definition")
    assert float(definition.get("area2DSurf")) == pytest.approx(12.0)
    assert float(definition.get("area3DSurf")) == pytest.approx(15.0)


def shoelace(xy):
    x, y = (xy - xy[0]).T
    return abs(np.dot(x, np.roll(y, -1)) - np.dot(y, np.roll(x, -1))) / 2


@settings(max_examples=60, suppress_health_check=[HealthCheck.function_scoped_fixture], deadline=None)
@given(
    st.integers(0, 2**32 - 1),
    st.sampled_from([None, "EPSG:25832", "EPSG:2263"]),
    st.tuples(st.integers(-400_000, 900_000), st.integers(-100_000, 9_000_000)),
)
def test_any_surface_comes_back_exactly(tmp_path, seed, code, origin):
    tin = replace(random_tin(40, seed), origin=np.array(origin, float), crs=None if code is None else CRS(code))
    heights = np.random.default_rng(seed).choice([1e-7, -1e-7, 0.0, -5.0, 8848.86, 1234.567891], len(tin.vertices))
    tin = replace(tin, vertices=np.column_stack([tin.vertices[:, :2], heights]))
    write_landxml(LandXml(tin.crs, (surface_of(tin),)), tmp_path / "a.xml", MOMENT)
    same_surface(tin, read_landxml(tmp_path / "a.xml").surfaces[0].tin)


def test_what_is_read_is_written_to_the_same_bytes(tmp_path):
    crs = CRS("EPSG:25832+7837")
    tin = replace(with_kinds(random_tin(300, 5), 1, [1]), crs=crs)
    points = make_points([1.5, 2.25], [3.0, 4.0], [5.0, np.nan], crs=crs, name=np.array(["a", "b"], object))
    one = LandXml(crs, (surface_of(tin), surface_of(tin, "again")), points, (ALIGNMENT,), "field")
    write_landxml(one, tmp_path / "a.xml", MOMENT)
    again = read_landxml(tmp_path / "a.xml")
    write_landxml(again, tmp_path / "b.xml", MOMENT)
    assert (tmp_path / "b.xml").read_bytes() == (tmp_path / "a.xml").read_bytes()
    assert len(again.crs.axis_info) == 3, "the heights' system comes from the WKT"


def test_northing_stands_before_easting_and_numbers_as_python_writes_them(tmp_path):
    grid = np.array([(0, 0), (123_456_789, 1), (5, 987_654_321)])
    tin = Tin(
        np.column_stack([grid * GRID, [-0.0000004, -123.4567891, 8848.86]]), np.array([[0, 1, 2]], np.int32),
        np.full((1, 3), -1, np.int32), np.zeros((1, 3), np.uint8), grid, np.array([-1.0, 7.0]), np.arange(3),
    )  # fmt: skip
    write_landxml(LandXml(None, (LandSurface("s", tin),)), tmp_path / "a.xml", MOMENT)
    rows = [line for line in (tmp_path / "a.xml").read_text().splitlines() if line.startswith(("<P ", "<F"))]
    assert rows == [
        '<P id="1">7.0000 -1.0000 0.000000</P>',
        '<P id="2">7.0001 12344.6789 -123.456789</P>',
        '<P id="3">98772.4321 -0.9995 8848.860000</P>',
        "<F>1 2 3</F>",
    ]


def test_neighbours_are_written_where_asked_for(tmp_path):
    tin = random_tin(200, 4)
    write_landxml(LandXml(None, (surface_of(tin),)), tmp_path / "a.xml", MOMENT, neighbours=True)
    assert broken_rules(tmp_path / "a.xml") == []
    assert (tmp_path / "a.xml").read_text().count(' n="') == len(tin.triangles)
    same_surface(tin, read_landxml(tmp_path / "a.xml").surfaces[0].tin)


NASTY = "a<b>&\"c'\n\t]]> \x00\x1b ß 坂 \U0001f3d4 &amp; ​"


def test_names_may_hold_anything(tmp_path):
    tin = delaunay_tin([(0, 0), (10, 0), (0, 10)], [1, 2, 3])
    points = make_points([1.0], [2.0], [3.0], name=np.array([NASTY], object), code=np.array(["<&>"], object))
    back = written(tmp_path / "a.xml", LandSurface(NASTY, tin, description=NASTY), points=points, project=NASTY)
    cleaned = NASTY.replace("\x00", "\ufffd").replace("\x1b", "\ufffd").strip()
    assert back.surfaces[0].name == cleaned
    assert back.surfaces[0].description == cleaned
    assert back.points.name.tolist() == [cleaned]
    assert back.points.code.tolist() == ["<&>"]


def test_a_stop_leaves_the_file_of_before(tmp_path):
    path = tmp_path / "a.xml"
    path.write_text("before")

    def stop(fraction, stage):
        if fraction >= 0.5:
            raise Cancelled

    with pytest.raises(Cancelled):
        write_landxml(LandXml(None, (surface_of(random_tin(300, 1)),)), path, MOMENT, progress=stop)
    assert path.read_text() == "before"
    assert list(tmp_path.iterdir()) == [path]


# Files of others


def document(body, units='<Metric linearUnit="meter"/>', head="", root=f'LandXML xmlns="{NAMESPACE}" version="1.2"'):
    return f"<{root}><Units>{units}</Units>{head}{body}</{root.split()[0]}>"


def definition(points, faces):
    places = "".join(f'<P id="{number}">{place}</P>' for number, place in points.items())
    return f'<Definition surfType="TIN"><Pnts>{places}</Pnts><Faces>{"".join(faces)}</Faces></Definition>'


def surfaces(*definitions):
    inner = "".join(f'<Surface name="s{i}">{each}</Surface>' for i, each in enumerate(definitions))
    return f"<Surfaces>{inner}</Surfaces>"


SQUARE = {10: "0 0 1", 20: "0 10 2", 7: "10 0 3", 8: "10 10 4"}


def read(tmp_path, text, **more):
    (tmp_path / "other.xml").write_bytes(text if isinstance(text, bytes) else text.encode())
    return read_landxml(tmp_path / "other.xml", **more)


def codes(contents):
    return [message.text.code for message in contents.messages]


def test_free_numbering_clockwise_faces_and_holes(tmp_path):
    faces = ["<F>10 7 20</F>", '<F i="1">20 8 7</F>']
    back = read(tmp_path, document(surfaces(definition(SQUARE, faces))))
    tin = back.surfaces[0].tin
    assert tin.plan_area == pytest.approx(50.0)
    assert codes(back) == ["landxml.invisible"]
    corner = (tin.vertices + np.append(tin.origin, 0))[tin.triangles[0]]
    assert {tuple(row) for row in corner} == {(0, 0, 1), (10, 0, 2), (0, 10, 3)}, "northing is the first number"


def test_several_surfaces_and_what_is_passed_over(tmp_path):
    faces = ["<F n='0 0 0'>10 20 7</F>", "<F>20 8 7</F>"]
    extra = '<Parcels><Parcel name="x"><CoordGeom><Line/></CoordGeom></Parcel></Parcels><x:P xmlns:x="y" id="q">1</x:P>'
    body = extra + surfaces(definition(SQUARE, faces), definition(SQUARE, faces[:1]))
    back = read(tmp_path, document(body))
    assert [surface.tin.plan_area for surface in back.surfaces] == pytest.approx([100.0, 50.0])


@pytest.mark.parametrize("encoding", ["utf-8", "utf-16", "latin-1"])
def test_encodings(tmp_path, encoding):
    head = f'<?xml version="1.0" encoding="{encoding}"?>'
    text = head + document(surfaces(definition(SQUARE, ["<F>10 20 7</F>"]))).replace("s0", "Höhe")
    assert read(tmp_path, text.encode(encoding)).surfaces[0].name == "Höhe"


@pytest.mark.parametrize("root", ["LandXML", 'LandXML xmlns="http://www.landxml.org/schema/LandXML-1.1" version="1.1"'])
def test_older_files_and_files_without_namespace(tmp_path, root):
    body = surfaces(definition(SQUARE, ["<F>10 20 7</F>"]))
    assert read(tmp_path, document(body, root=root)).surfaces[0].tin.plan_area == pytest.approx(50.0)


def test_corners_written_anew_for_each_face_are_joined(tmp_path):
    points = {1: "0 0 1", 2: "0 10 2", 3: "10 0 3", 4: "0 10 2", 5: "10 10 4", 6: "10 0 3"}
    tin = read(tmp_path, document(surfaces(definition(points, ["<F>1 2 3</F>", "<F>4 5 6</F>"])))).surfaces[0].tin
    assert len(tin.vertices) == 4
    assert (tin.neighbours >= 0).sum() == 2


def test_upright_faces_are_left_out_and_said(tmp_path):
    points = {**SQUARE, 30: "10 0 9"}
    back = read(tmp_path, document(surfaces(definition(points, ["<F>10 20 7</F>", "<F>20 7 30</F>"]))))
    assert len(back.surfaces[0].tin.triangles) == 1
    assert codes(back) == ["landxml.flat_faces"]


@pytest.mark.parametrize(
    ("units", "metres"),
    [
        ('<Metric linearUnit="millimeter"/>', 0.001),
        ('<Imperial linearUnit="foot" elevationUnit="feet"/>', 0.3048),
        ('<Imperial linearUnit="USSurveyFoot"/>', 1200 / 3937),
        ('<Imperial linearUnit="inch"/>', 0.0254),
    ],
)
def test_units(tmp_path, units, metres):
    back = read(tmp_path, document(surfaces(definition(SQUARE, ["<F>10 20 7</F>"])), units))
    tin = back.surfaces[0].tin
    assert tin.plan_area == pytest.approx(50 * metres**2, rel=2e-2 if metres < 0.01 else 1e-4)
    assert tin.height_range == pytest.approx((metres, 3 * metres))


def test_the_users_unit_wins(tmp_path):
    text = document(surfaces(definition(SQUARE, ["<F>10 20 7</F>"])), '<Metric linearUnit="cubit"/>')
    back = read(tmp_path, text, unit=LengthUnit.FOOT, height_unit=LengthUnit.METRE)
    assert back.surfaces[0].tin.plan_area == pytest.approx(50 * 0.3048**2, rel=1e-6)
    assert back.surfaces[0].tin.height_range == (1.0, 3.0)


def test_two_kinds_of_feet_are_told_apart(tmp_path):
    points = {1: "200000 1000000 1", 2: "200000 1000010 1", 3: "200010 1000000 1"}
    body, crs = surfaces(definition(points, ["<F>1 2 3</F>"])), '<CoordinateSystem epsgCode="2263"/>'
    text = document(body, '<Imperial linearUnit="foot"/>', crs)
    back = read(tmp_path, text)
    assert codes(back) == ["landxml.feet_differ"]
    # 2 parts in a million of 304.8 km (NIST SP 811: the factors of both feet)
    assert back.messages[0].values["shift"] == pytest.approx(1000010 * 0.3048 * 2e-6, rel=1e-3)


def test_crs_by_code_by_wkt_and_both(tmp_path):
    body = '<CgPoints><CgPoint name="p">5700000 500000 3</CgPoint></CgPoints>'
    wkt = CRS("EPSG:25833").to_wkt().replace('"', "&quot;")
    for head, code, said in [
        ('<CoordinateSystem epsgCode="EPSG:25832"/>', 25832, []),
        (f'<CoordinateSystem ogcWktCode="{wkt}"/>', 25833, []),
        (f'<CoordinateSystem epsgCode="25832" ogcWktCode="{wkt}"/>', 25832, ["landxml.crs_differ"]),
        ('<CoordinateSystem epsgCode="25832" ogcWktCode="some name"/>', 25832, []),
    ]:
        back = read(tmp_path, document(body, head=head))
        assert back.crs.to_epsg() == code
        assert codes(back) == said
    assert read(tmp_path, document(body)).crs is None
    assert read(tmp_path, document(body), crs=CRS("EPSG:25831")).crs.to_epsg() == 25831


def test_points_with_references_and_without_heights(tmp_path):
    body = (
        '<CgPoints name="g"><CgPoint name="a" code="KB" desc="kerb">2 1 3</CgPoint><CgPoint name="b">20 10</CgPoint>'
        '<CgPoint name="c" pntRef="a"/><CgPoint name="b">21 11</CgPoint></CgPoints>'
    )
    back = read(tmp_path, document(body))
    assert back.points.easting.tolist() == [1, 10, 1, 11]
    assert back.points.northing.tolist() == [2, 20, 2, 21]
    np.testing.assert_array_equal(back.points.height, [3, np.nan, 3, np.nan])
    assert back.points.code.tolist() == ["KB", "", "", ""]
    assert codes(back) == ["landxml.name_twice"]


def test_source_data_only(tmp_path):
    source = (
        "<SourceData><Breaklines><Breakline name='kerb'><PntList3D>0 0 1 0 5 2</PntList3D></Breakline></Breaklines>"
        "<DataPoints><PntList3D>0 0 1 1 1 2</PntList3D></DataPoints></SourceData>"
    )
    back = read(tmp_path, document(surfaces(source)))
    assert back.surfaces[0].tin is None
    assert back.surfaces[0].points.tolist() == [[0, 0, 1], [1, 1, 2]]
    assert back.surfaces[0].lines[0].xyz.tolist() == [[0, 0, 1], [5, 0, 2]]
    assert back.surfaces[0].lines[0].label == "kerb"
    assert codes(back) == ["landxml.no_faces"]


def test_lines_that_are_no_edges_are_said(tmp_path):
    source = (
        "<SourceData><Breaklines><Breakline><PntList2D>0 0 10 10 10 0</PntList2D></Breakline></Breaklines></SourceData>"
    )
    back = read(tmp_path, document(surfaces(source + definition(SQUARE, ["<F>10 20 7</F>", "<F>20 8 7</F>"]))))
    assert codes(back) == ["landxml.lines_off_edges"]
    assert back.messages[0].values["count"] == 1
    assert (back.surfaces[0].tin.edge_kind == LineKind.BREAKLINE).sum() == 1, "the rim's edge, of one triangle"


# Alignments

#: A straight, an arc of a quarter circle to the right, and a straight.
ALIGNMENT = LandAlignment(
    "lane <1>",
    (
        Straight(np.array([[0.0, 0.0], [0.0, 100.0]])),
        Arc(np.array([0.0, 100.0]), np.array([50.0, 100.0]), np.array([50.0, 150.0]), clockwise=True),
        Straight(np.array([[50.0, 150.0], [80.0, 150.0], [90.0, 151.0]])),
    ),
    start=1000.0,
    equations=((1050.0, 2000.0), (2010.0, 100.0)),
    profiles=(
        LandProfile("design", np.array([0.0, 100.0, 200.0]), np.array([10.0, 12.0, 11.0]), np.array([0.0, 60.0, 0.0])),
        LandProfile("ground", np.array([0.0, 90.0, 150.0]), np.array([10.5, 11.0, 12.0])),
    ),
    description="a & b",
)


@pytest.mark.parametrize("unit", WORKING_UNITS)
def test_an_alignment_comes_back(tmp_path, unit):
    crs = {LengthUnit.METRE: None, LengthUnit.FOOT: CRS("EPSG:2222"), LengthUnit.US_SURVEY_FOOT: CRS("EPSG:2263")}[unit]
    line = replace(ALIGNMENT, unit=unit)
    back = written(tmp_path / "a.xml", crs=crs, alignments=(line,)).alignments[0]
    assert back.name == line.name
    assert back.unit is unit
    assert back.start == pytest.approx(line.start)
    np.testing.assert_allclose(back.equations, line.equations)
    np.testing.assert_allclose(chords(back.elements), chords(line.elements), atol=1e-4)
    for one, other in zip(back.profiles, line.profiles):
        assert one.name == other.name
        np.testing.assert_allclose(one.distance, other.distance, atol=1e-4)
        np.testing.assert_allclose(one.height, other.height, atol=1e-6)
        assert (one.curve is None) == (other.curve is None)
    np.testing.assert_allclose(back.profiles[0].curve, line.profiles[0].curve, atol=1e-4)


def test_an_arc_keeps_to_its_circle():
    arc = ALIGNMENT.elements[1]
    assert element_length(arc) == pytest.approx(np.pi * 25)
    xy = chords([arc])
    np.testing.assert_allclose(np.hypot(*(xy - arc.centre).T), 50.0)
    middle = (xy[:-1] + xy[1:]) / 2
    assert (50.0 - np.hypot(*(middle - arc.centre).T)).max() <= 0.001
    assert xy[:, 1].max() == 150.0, "clockwise from the west over the north"
    other = chords([replace(arc, clockwise=False)])
    assert other[:, 1].min() == pytest.approx(50.0, abs=0.001), "the other way round is three quarters"


def test_a_clothoid_against_fresnel_integrals(tmp_path):
    """Abramowitz and Stegun, Handbook of Mathematical Functions, 7.3: x = a C(t), y = a S(t), a = sqrt(pi R L)."""
    from scipy.special import fresnel

    radius, length = 200.0, 80.0
    scale = np.sqrt(np.pi * radius * length)
    s, c = fresnel(length / scale)
    end = np.array([c, s]) * scale  # to the left of the x axis
    angle = length / (2 * radius)
    pi = np.array([end[0] - end[1] / np.tan(angle), 0.0])
    spiral = Clothoid(np.zeros(2), pi, end, length, np.inf, radius, clockwise=False)
    xy = chords([spiral])
    t = np.linspace(0, length, len(xy)) / scale
    s, c = fresnel(t)
    np.testing.assert_allclose(xy, np.column_stack([c, s]) * scale, atol=1e-6)
    back = written(tmp_path / "a.xml", alignments=(LandAlignment("spiral", (spiral,)),)).alignments[0].elements[0]
    np.testing.assert_allclose(chords([back]), xy, atol=2e-4)
    assert back.radius_start == np.inf


def test_a_line_with_stations_is_handed_over_whole(tmp_path):
    line = make_alignment(np.array([[0, 0], [30, 40], [30, 140.0]]), "axis", 100.0, [(120.0, 500.0)])
    back = to_alignment(written(tmp_path / "a.xml", alignments=(from_alignment(line),)).alignments[0])
    np.testing.assert_allclose(back.xy, line.xy)
    distance = np.array([0.0, 10.0, 20.0, 30.0, 150.0])
    np.testing.assert_allclose(back.numbering.stations(distance), line.numbering.stations(distance))


def test_heights_of_a_vertical_curve():
    """Grades +2 % and -1 % with a curve of 60 m: at the meeting point A L / 800 below it, A in percent (common
    practice, no source): 3 * 60 / 800 = 0.225 m."""
    heights = profile_heights(ALIGNMENT.profiles[0], np.array([0.0, 70.0, 100.0, 130.0, 200.0, 201.0]))
    np.testing.assert_allclose(heights, [10.0, 11.4, 12.0 - 0.225, 11.7, 11.0, np.nan])


def test_alignments_by_points_and_what_is_left_out(tmp_path):
    body = (
        '<CgPoints><CgPoint name="a">0 0</CgPoint><CgPoint name="b">0 10</CgPoint></CgPoints>'
        '<Alignments><Alignment name="x" length="10" staStart="5"><CoordGeom><Line><Start pntRef="a"/><End pntRef="b"/>'
        '</Line></CoordGeom><StaEquation staInternal="8" staAhead="100"/></Alignment>'
        '<Alignment name="y" length="10" staStart="0"><CoordGeom><Spiral length="1" radiusStart="INF" radiusEnd="5" '
        'rot="cw" spiType="bloss"><Start>0 0</Start><PI>0 1</PI><End>0 1</End></Spiral></CoordGeom></Alignment>'
        '<Alignment name="z" length="0" staStart="0"/></Alignments>'
    )
    back = read(tmp_path, document(body))
    assert [line.name for line in back.alignments] == ["x"]
    assert chords(back.alignments[0].elements).tolist() == [[0, 0], [10, 0]]
    assert back.alignments[0].equations == ((8.0, 100.0),)
    assert codes(back) == ["landxml.no_such_spiral", "landxml.no_geometry"]


# Damage


def faces_text(face):
    return document(surfaces(definition(SQUARE, ["<F>10 20 7</F>", face])))


LINE = '<Alignments><Alignment name="x" length="1" staStart="0"><CoordGeom>{}</CoordGeom>{}</Alignment></Alignments>'
PROFILE = '<Profile><ProfAlign name="d">{}</ProfAlign></Profile>'
CURVE = '<ParaCurve length="30">10 1</ParaCurve>'
STRAIGHT = "<Line><Start>0 0</Start><End>0 10</End></Line>"
GOOD = document(surfaces(definition(SQUARE, ["<F>10 20 7</F>", "<F>20 8 7</F>"])))
DAMAGE = {
    "another kind of file": ("<kml/>", "landxml.not_landxml"),
    "no XML": ("MESH2D\n", "landxml.not_xml"),
    "empty": ("", "landxml.not_xml"),
    "binary": (bytes(range(256)), "landxml.not_xml"),
    "cut short": (GOOD[: len(GOOD) // 2], "landxml.not_xml"),
    "version 2": (GOOD.replace('version="1.2"', 'version="2.0"'), "landxml.other_version"),
    "namespace of version 2": (GOOD.replace("LandXML-1.2", "LandXML-2.0"), "landxml.other_version"),
    "unknown encoding": ('<?xml version="1.0" encoding="klingon"?>' + GOOD, "landxml.not_xml"),
    "a document type": ("<!DOCTYPE LandXML>" + GOOD, "landxml.declarations"),
    "a file of the system": (
        '<!DOCTYPE L [<!ENTITY x SYSTEM "file:///etc/hostname">]>' + GOOD.replace("s0", "&x;"),
        "landxml.declarations",
    ),
    "entities that grow": (
        '<!DOCTYPE L [<!ENTITY a "aaaaaaaaaa"><!ENTITY b "&a;&a;&a;&a;">]>' + GOOD.replace("s0", "&b;"),
        "landxml.declarations",
    ),
    "an entity that is not declared": (GOOD.replace("s0", "&x;"), "landxml.not_xml"),
    "a DTD from elsewhere": ('<!DOCTYPE L SYSTEM "x.dtd">' + GOOD, "landxml.declarations"),
    "elements in elements": (document("<a>" * 200 + "</a>" * 200), "landxml.too_deep"),
    "nothing in it": (document(""), "landxml.nothing"),
    "no units": (GOOD.replace("<Metric", "<Other"), "landxml.no_units"),
    "no linear unit": (GOOD.replace("linearUnit", "areaUnit"), "landxml.missing_attribute"),
    "a unit of the other system": (GOOD.replace('"meter"', '"foot"'), "landxml.unknown_unit"),
    "a unit in capitals": (GOOD.replace('"meter"', '"Meter"'), "landxml.unknown_unit"),
    "two units": (GOOD.replace("</Units>", '<Imperial linearUnit="foot"/></Units>'), "landxml.units_twice"),
    "heights in another unit": (
        GOOD.replace('"meter"', '"meter" elevationUnit="feet"'),
        "landxml.other_height_unit",
    ),
    "a CRS in degrees": (document(surfaces(), head='<CoordinateSystem epsgCode="4326"/>') , "landxml.nothing"),
    "a CRS in degrees with points": (
        document('<CgPoints><CgPoint name="a">1 2</CgPoint></CgPoints>', head='<CoordinateSystem epsgCode="4326"/>'),
        "landxml.crs_unreadable",
    ),
    "no number": (GOOD.replace("0 10 2", "0 ten 2"), "landxml.bad_numbers"),
    "a decimal comma": (GOOD.replace("0 10 2", "0 10 2,5"), "landxml.bad_numbers"),
    "an underscore": (GOOD.replace("0 10 2", "0 1_0 2"), "landxml.bad_numbers"),
    "digits of another script": (GOOD.replace("0 10 2", "0 ١٠ 2"), "landxml.bad_numbers"),
    "a number short": (GOOD.replace("0 10 2", "0 10"), "landxml.bad_numbers"),
    "a number too many": (GOOD.replace("0 10 2", "0 10 2 2"), "landxml.bad_numbers"),
    "not finite": (GOOD.replace("0 10 2", "0 NaN 2"), "landxml.too_large"),
    "without end": (GOOD.replace("0 10 2", "0 INF 2"), "landxml.too_large"),
    "not on Earth": (GOOD.replace("0 10 2", "0 1e300 2"), "landxml.too_large"),
    "too wide": (GOOD.replace("0 10 2", "0 200000 2"), "landxml.too_wide"),
    "a point without number": (GOOD.replace('<P id="10">', "<P>"), "landxml.missing_attribute"),
    "a number that is none": (GOOD.replace('id="10"', 'id="ten"'), "landxml.bad_attribute"),
    "a number below 0": (GOOD.replace('id="10"', 'id="-10"'), "landxml.bad_attribute"),
    "a number beyond 64 bits": (GOOD.replace('id="10"', f'id="{10**30}"'), "landxml.bad_attribute"),
    "a point twice": (GOOD.replace('id="8"', 'id="7"'), "landxml.id_twice"),
    "a corner that is not there": (faces_text("<F>20 9 7</F>"), "landxml.unknown_point"),
    "a corner beyond 64 bits": (faces_text(f"<F>20 {10**30} 7</F>"), "landxml.unknown_point"),
    "a face of two": (faces_text("<F>20 8</F>"), "landxml.bad_numbers"),
    "a face of four": (faces_text("<F>20 8 7 10</F>"), "landxml.not_triangle"),
    "a face of fractions": (faces_text("<F>20 8.5 7</F>"), "landxml.bad_numbers"),
    "a face of nothing": (faces_text("<F/>"), "landxml.bad_numbers"),
    "a face that is maybe seen": (faces_text('<F i="maybe">20 8 7</F>'), "landxml.bad_attribute"),
    "a face twice": (faces_text("<F>10 20 7</F>"), "landxml.overlap"),
    "a face over another": (faces_text("<F>10 20 8</F>"), "landxml.overlap"),
    "a surface without name": (GOOD.replace(' name="s0"', ""), "landxml.missing_attribute"),
    "a list that does not part": (
        document(surfaces("<SourceData><DataPoints><PntList3D>1 2 3 4</PntList3D></DataPoints></SourceData>")),
        "landxml.bad_numbers",
    ),
    "a boundary of no kind": (
        document(surfaces('<SourceData><Boundaries><Boundary bndType="x"/></Boundaries></SourceData>')),
        "landxml.bad_attribute",
    ),
    "a point that is referred to but not there": (
        document('<CgPoints><CgPoint name="a" pntRef="b"/></CgPoints>'),
        "landxml.unknown_reference",
    ),
    "a reference in a ring": (
        document('<CgPoints><CgPoint name="a" pntRef="b"/><CgPoint name="b" pntRef="a"/></CgPoints>'),
        "landxml.unknown_reference",
    ),
    "a reference to two points": (
        document("<CgPoints>" + 2 * '<CgPoint name="a">1 2</CgPoint>' + '<CgPoint pntRef="a"/></CgPoints>'),
        "landxml.unknown_reference",
    ),
    "a gap in a line": (document(LINE.format(STRAIGHT * 2, "")), "landxml.gap"),
    "a curve off its circle": (
        document(LINE.format('<Curve rot="cw"><Start>0 0</Start><Center>0 5</Center><End>0 11</End></Curve>', "")),
        "landxml.bad_curve",
    ),
    "a curve without a way": (
        document(LINE.format("<Curve><Start>0 0</Start><Center>0 5</Center><End>0 10</End></Curve>", "")),
        "landxml.bad_attribute",
    ),
    "a line without end": (document(LINE.format("<Line><Start>0 0</Start></Line>", "")), "landxml.missing_attribute"),
    "a spiral elsewhere": (
        document(LINE.format('<Spiral length="10" radiusStart="INF" radiusEnd="50" rot="cw" spiType="clothoid">'
                             "<Start>0 0</Start><PI>0 5</PI><End>0 20</End></Spiral>", "")),
        "landxml.spiral_misfit",
    ),
    "a profile that runs back": (
        document(LINE.format(STRAIGHT, PROFILE.format("<PVI>5 1</PVI><PVI>4 1</PVI>"))),
        "landxml.bad_profile",
    ),
    "vertical curves that overlap": (
        document(LINE.format(STRAIGHT, PROFILE.format("<PVI>0 1</PVI>" + CURVE + "<PVI>20 1</PVI>"))),
        "landxml.bad_profile",
    ),
}  # fmt: skip


def test_the_file_to_be_damaged_is_good(tmp_path):
    back = read(tmp_path, GOOD)
    assert back.surfaces[0].tin.plan_area == pytest.approx(100.0)
    assert back.messages == ()


@pytest.mark.parametrize("what", DAMAGE)
def test_damage_is_said_in_a_line_with_file_and_reason(tmp_path, what):
    text, code = DAMAGE[what]
    assert text != GOOD
    with pytest.raises(SurveyError) as caught:
        read(tmp_path, text)
    said = str(caught.value)
    assert caught.value.code == code, said
    assert str(tmp_path / "other.xml") in said
    assert "\n" not in said
    assert "None" not in said
    if code not in ("landxml.nothing", "landxml.no_units"):
        assert "line " in said


def test_the_line_is_that_of_the_damage(tmp_path):
    lines = GOOD.replace("><", ">\n<").split("\n")
    wrong = next(i for i, line in enumerate(lines) if line == "<F>20 8 7</F>")
    lines[wrong] = "<F>20 99 7</F>"
    with pytest.raises(SurveyError, match=f"line {wrong + 1}:"):
        read(tmp_path, "\n".join(lines))


@pytest.mark.parametrize("path", ["/nowhere/a.xml", "/tmp", "bad\0name.xml"])
def test_files_that_cannot_be_opened(path):
    with pytest.raises(SurveyError, match="cannot be read") as caught:
        read_landxml(path)
    assert caught.value.code == "landxml.no_file"


def test_the_reader_can_be_stopped(tmp_path):
    (tmp_path / "a.xml").write_text(GOOD)

    def stop(fraction, stage):
        raise Cancelled

    with pytest.raises(Cancelled):
        read_landxml(tmp_path / "a.xml", progress=stop)


def test_a_surface_without_height_is_refused_and_leaves_no_file(tmp_path):
    tin = delaunay_tin([(0, 0), (10, 0), (0, 10)], [1, np.nan, 3])
    with pytest.raises(ValueError, match="height"):
        write_landxml(LandXml(None, (LandSurface("s", tin),)), Path(tmp_path, "a.xml"))
    assert list(tmp_path.iterdir()) == []


def test_a_ground_may_have_steps_and_places_closer_than_the_decimals(tmp_path):
    ground = LandProfile("g", np.array([0.0, 5.0, 5.0, 9.0, 9.00001]), np.array([1.0, 1.0, 2.0, 3.0, 3.0]))
    line = LandAlignment("x", (Straight(np.array([[0.0, 0.0], [10.0, 0.0]])),), profiles=(ground,))
    back = written(tmp_path / "a.xml", alignments=(line,)).alignments[0].profiles[0]
    assert back.distance.tolist() == [0, 5, 5, 9]
    assert back.height.tolist() == [1, 1, 2, 3]


def test_fitted_grades_and_curves_are_handed_over(tmp_path):
    """Heights of two grades and a parabola, fitted, written and read: the same heights."""
    distance = np.arange(0.0, 200.0, 2.0)
    truth = profile_heights(ALIGNMENT.profiles[0], distance)
    profile = design_profile(fit_heights(distance, truth), "fitted")
    line = LandAlignment("x", (Straight(np.array([[0.0, 0.0], [198.0, 0.0]])),), profiles=(profile,))
    back = written(tmp_path / "a.xml", alignments=(line,)).alignments[0].profiles[0]
    assert len(back.distance) == 3
    assert back.curve[1] == pytest.approx(60.0, abs=1.0)
    np.testing.assert_allclose(profile_heights(back, distance), truth, atol=1e-3)
