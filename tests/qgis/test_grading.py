"""Grading in QGIS: pads, strips and the height that balances, against closed forms."""

from __future__ import annotations

import math
from pathlib import Path
from typing import Any, Dict, List

import numpy as np
import pytest
from in_qgis import DEMO, Listener, layer_of, memory_layer, message_of

EAST, NORTH = 500000.0, 5700000.0


def place(east: float, north: float) -> str:
    return f"{EAST + east} {NORTH + north}"


def polygon(*rings: Any) -> str:
    texts = [", ".join(place(*corner) for corner in (*ring, ring[0])) for ring in rings]
    return "Polygon(" + ", ".join(f"({text})" for text in texts) + ")"


def square(side: float, at: float) -> List[Any]:
    return [(at, at), (at + side, at), (at + side, at + side), (at, at + side)]


def mesh_of(folder: Path, name: str, heights: Any, crs: str = "EPSG:25832") -> str:
    """A surface of 100 m by 100 m with ``heights(east, north)`` at its corners, in a 2DM file."""
    from pyproj import CRS

    from plugin.core.handover.mesh import write_2dm
    from plugin.core.handover.projection import write_prj
    from plugin.core.points.pointset import make_points
    from plugin.core.surface.build import build_surface
    from plugin.core.units import metres_per_unit

    system = CRS(crs)
    corners = np.array([(0, 0), (100, 0), (100, 100), (0, 100.0)])
    xy = corners * metres_per_unit(system) + [EAST, NORTH]
    points = make_points(*xy.T, [heights(*corner) for corner in corners], crs=system)
    path = str(folder / f"{name}.2dm")
    write_2dm(build_surface(points).tin, path)
    write_prj(path, system)
    return path


@pytest.fixture(scope="module")
def level(tmp_path_factory: pytest.TempPathFactory) -> str:
    """Level ground at 10 m."""
    return mesh_of(tmp_path_factory.mktemp("level"), "level", lambda e, n: 10.0)


@pytest.fixture(scope="module")
def tilted(tmp_path_factory: pytest.TempPathFactory) -> str:
    """Ground that rises 10 % eastward from 0 m."""
    return mesh_of(tmp_path_factory.mktemp("tilted"), "tilted", lambda e, n: e / 10)


def pads(*texts: str, fields: str = "") -> Any:
    return memory_layer("Polygon", texts, f"EPSG:25832{fields}", "pads")


def outputs(folder: Path, *names: str) -> Dict[str, str]:
    found = {"OUTPUT": str(folder / "design.2dm"), "FINISHED": str(folder / "finished.2dm"), "LOAD": False}
    found.update({name: str(folder / f"{name}.gpkg") for name in ("LINES", "DAYLIGHT", "DEPTH", "TABLE")})
    found.update({"HTML": None, "CURVE": None})
    for name in names:
        found[name] = str(folder / ("page.html" if name == "HTML" else f"{name}.gpkg"))
    return found


def heights_in(mesh: str, *places: Any) -> Any:
    """Heights of a mesh at places counted from the corner of the ground."""
    from pyproj import CRS

    from plugin.core.handover.mesh import read_2dm
    from plugin.core.surface.locate import heights_at

    return heights_at(read_2dm(mesh, CRS("EPSG:25832")), np.array(places, float) + np.array([EAST, NORTH]))


def frustum(side: float, height: float, run: float) -> float:
    wide = side + 2 * run * height
    return height / 3 * (side**2 + wide**2 + side * wide)


def rows_of(source: Any) -> List[Dict[str, Any]]:
    layer = layer_of(source)
    names = layer.fields().names()
    return [dict(zip(names, feature.attributes())) for feature in layer.getFeatures()]


# Pads


def test_a_square_pad_is_a_frustum(run: Any, level: str, tmp_path: Path) -> None:
    listener = Listener()
    found = run(
        "padgrading", listener, INPUT=level, PADS=pads(polygon(square(20, 40))), LEVEL=12.0, FILL_RUN=3.0, CORNERS=1,
        SIGMA=0.02, OFFSET_SIGMA=0.01, **outputs(tmp_path, "HTML"),
    )  # fmt: skip
    assert found["FILL"] == pytest.approx(frustum(20, 2, 3), rel=1e-6)
    assert found["CUT"] == pytest.approx(0, abs=1e-6)
    assert found["AREA"] == pytest.approx(32**2, rel=1e-6)
    assert found["FILL_95"] > 1.96 * 0.01 * 32**2  # the offset's part alone
    assert "SHIFT" not in found
    from qgis.core import QgsMeshLayer

    for name in ("OUTPUT", "FINISHED"):
        layer = QgsMeshLayer(found[name], "mesh", "mdal")
        assert layer.isValid()
        assert Path(found[name]).with_suffix(".prj").exists()
    kinds: Dict[str, float] = {}
    for row in rows_of(found["LINES"]) + rows_of(found["DAYLIGHT"]):
        kinds[row["kind"]] = kinds.get(row["kind"], 0.0) + row["length_m"]
    assert kinds["platform_edge"] == pytest.approx(80)
    assert kinds["toe_of_fill"] == pytest.approx(4 * 32)
    assert kinds["slope_break"] == pytest.approx(4 * 6 * math.sqrt(2), rel=1e-4)
    heights = {v.z() for f in layer_of(found["DAYLIGHT"]).getFeatures() for v in f.geometry().vertices()}
    assert np.allclose(list(heights), 10)
    table = {(row["region"], row["quantity"]): row for row in rows_of(found["TABLE"])}
    assert table["1", "fill"]["volume_m3"] == pytest.approx(frustum(20, 2, 3), rel=1e-6)
    assert table["whole design", "fill"]["half_95_m3"] == pytest.approx(found["FILL_95"])
    depth = rows_of(found["DEPTH"])
    assert sum(row["volume_m3"] for row in depth) == pytest.approx(found["FILL"], rel=1e-6)
    page = Path(found["HTML"]).read_text(encoding="utf-8")
    assert "not a design for construction" in page
    assert any("Not a design for construction" in text for text in listener.infos)


def test_the_finished_ground_is_a_surface_for_the_next_step(run: Any, level: str, tmp_path: Path) -> None:
    """Its volume against the existing surface, by the algorithm for volumes, is that of the grading."""
    hole = square(6, 47)
    found = run(
        "padgrading", INPUT=level, PADS=pads(polygon(square(20, 40), hole)), LEVEL=8.0, CUT_RUN=1.5, CORNERS=1,
        **outputs(tmp_path),
    )  # fmt: skip
    # cut: the pad's frustum less the hill that stays in the hole, 6 m wide at the bottom, running up to a ridge
    assert found["CUT"] == pytest.approx(frustum(20, 2, 1.5) - 6 * 6 * 2 / 3, rel=1e-6)
    again = run(
        "volume", EXISTING=level, DESIGN=found["FINISHED"], POLYGONS=None, ZERO_LINE=None, TABLE=None, RASTER=None,
        HTML=None,
    )  # fmt: skip
    assert again["CUT"] == pytest.approx(found["CUT"], rel=1e-5)
    assert again["FILL"] == pytest.approx(0, abs=1e-3)


def test_a_pad_that_balances(run: Any, tilted: str, tmp_path: Path) -> None:
    """Amid an even slope with equal slopes of cut and fill, by symmetry at the ground's height in its middle."""
    listener = Listener()
    found = run(
        "padgrading", listener, INPUT=tilted, PADS=pads(polygon(square(20, 40))), BALANCE=True, CUT_RUN=2.0,
        FILL_RUN=2.0, SIGMA=0.0, OFFSET_SIGMA=0.03, GROUND=False, **outputs(tmp_path, "CURVE", "HTML"),
    )  # fmt: skip
    assert found["HEIGHT"] == pytest.approx(5.0, abs=1e-3)
    assert found["CUT"] == pytest.approx(found["FILL"], abs=0.5)
    assert found["HEIGHT_95"] == pytest.approx(1.96 * 0.03, rel=1e-3)
    curve = rows_of(found["CURVE"])
    assert [row["height"] for row in curve] == sorted(row["height"] for row in curve)
    rest = [row["rest_m3"] for row in curve]
    assert rest == sorted(rest, reverse=True)
    assert rest[0] > 0 > rest[-1]
    assert "Balance of cut and fill" in Path(found["HTML"]).read_text(encoding="utf-8")
    assert any("balance at 5.000" in text for text in listener.infos)
    factor = run(
        "padgrading", INPUT=tilted, PADS=pads(polygon(square(20, 40))), BALANCE=True, COMPACTED=0.9, UNUSABLE=10.0,
        SURPLUS=5.0, **outputs(tmp_path),
    )  # fmt: skip
    assert factor["CUT"] * 0.9 * 0.9 == pytest.approx(factor["FILL"] + 5, abs=0.5)


def test_fields_stand_over_parameters(run: Any, level: str, tmp_path: Path) -> None:
    from qgis.core import edit

    layer = pads(
        polygon(square(10, 15)), polygon(square(10, 70)),
        fields="&field=nom:string&field=z:double&field=out:double&field=steep:double&field=way:double",
    )  # fmt: skip
    first, second = layer.getFeatures()
    with edit(layer):
        for feature, values in ((first, ["north", 12.0, 3.0, None, None]), (second, [None, None, None, 2.0, 90.0])):
            for index, value in enumerate(values):
                layer.changeAttributeValue(feature.id(), index, value)
    found = run(
        "padgrading", INPUT=level, PADS=layer, LEVEL=8.0, LEVEL_FIELD="z", FILL_FIELD="out", NAME_FIELD="nom",
        FALL_FIELD="steep", TOWARDS_FIELD="way", CORNERS=1, **outputs(tmp_path),
    )  # fmt: skip
    assert found["FILL"] == pytest.approx(frustum(10, 2, 3), rel=1e-5)
    rows = {(row["region"], row["quantity"]): row["volume_m3"] for row in rows_of(found["TABLE"])}
    assert rows["north", "fill"] == pytest.approx(frustum(10, 2, 3), rel=1e-5)
    assert rows["2", "cut"] == pytest.approx(frustum(10, 2, 2), rel=0.01)  # falls 2 % about its middle
    assert {region for region, _ in rows} == {"north", "2", "whole design"}
    assert heights_in(found["OUTPUT"], (72, 75), (78, 75)) == pytest.approx([8.06, 7.94])


def test_edges_with_slopes_of_their_own(run: Any, level: str, tmp_path: Path) -> None:
    """South 1 : 1 by a line, the others 1 : 2: at depth s a rectangle of 20 + 4 s by 20 + 3 s."""
    layer = memory_layer(
        "LineString",
        [f"LineString({place(40, 40)}, {place(60, 40)})", f"LineString({place(0, 0)}, {place(5, 5)})"],
        "EPSG:25832&field=fill_run:double",
        "edges",
    )
    from qgis.core import edit

    with edit(layer):
        for feature in layer.getFeatures():
            layer.changeAttributeValue(feature.id(), 0, 1.0)
    listener = Listener()
    found = run(
        "padgrading", listener, INPUT=level, PADS=pads(polygon(square(20, 40))), LEVEL=12.0, EDGES=layer, CORNERS=1,
        **outputs(tmp_path),
    )  # fmt: skip
    s = 2.0
    assert found["FILL"] == pytest.approx(400 * s + (80 + 60) * s**2 / 2 + 12 * s**3 / 3, rel=1e-6)
    assert any("1 of 2" in text for text in listener.warnings)
    plain = memory_layer("LineString", [f"LineString({place(40, 40)}, {place(60, 40)})"], "EPSG:25832", "edges")
    given = {"INPUT": level, "PADS": pads(polygon(square(20, 40))), "LEVEL": 12.0, **outputs(tmp_path)}
    assert "neither a field cut_run nor fill_run" in message_of(run, "padgrading", EDGES=plain, **given)


def test_what_a_pad_must_have(run: Any, level: str, tmp_path: Path) -> None:
    given = {"INPUT": level, **outputs(tmp_path)}
    assert "nothing says how high" in message_of(run, "padgrading", PADS=pads(polygon(square(20, 40))), **given)
    away = pads(polygon(square(20, 4000)))
    assert "wholly outside" in message_of(run, "padgrading", PADS=away, LEVEL=12.0, **given)
    bow = pads(polygon([(40, 40), (60, 60), (60, 40), (40, 60)]))
    assert "invalid geometry" in message_of(run, "padgrading", PADS=bow, LEVEL=12.0, **given)
    assert "no pad to grade" in message_of(run, "padgrading", PADS=pads(), LEVEL=12.0, **given)
    assert not (tmp_path / "design.2dm").exists()


def test_pads_of_another_crs_and_in_feet(run: Any, tmp_path: Path) -> None:
    """In a CRS in feet heights and coordinates are in feet, volumes in cubic metres."""
    system = "EPSG:2263"
    mesh = mesh_of(tmp_path, "feet", lambda e, n: 10 * 1200 / 3937, system)
    origin = np.array([EAST, NORTH]) * 3937 / 1200
    corners = [origin + corner for corner in ((40, 40), (60, 40), (60, 60), (40, 60), (40, 40))]
    text = "Polygon((" + ", ".join(f"{x} {y}" for x, y in corners) + "))"
    layer = memory_layer("Polygon", [text], system, "pads")
    found = run("padgrading", INPUT=mesh, PADS=layer, LEVEL=12.0, CORNERS=1, **outputs(tmp_path))
    assert found["FILL"] == pytest.approx(frustum(20, 2, 2) * (1200 / 3937) ** 3, rel=1e-4)
    zs = [v.z() for f in layer_of(found["LINES"]).getFeatures() for v in f.geometry().vertices()]
    assert max(zs) == pytest.approx(12.0, abs=1e-4)


# Strips


def centreline(heights: Any = (13.0, 13.0)) -> Any:
    text = f"LineStringZ({place(20, 50)} {heights[0]}, {place(80, 50)} {heights[1]})"
    return memory_layer("LineStringZ", [text], "EPSG:25832", "path")


def test_a_level_bank_is_a_prism(run: Any, level: str, tmp_path: Path) -> None:
    found = run(
        "stripgrading", INPUT=level, LINE=centreline(), LANE_WIDTH=3.5, CROSSFALL=0.0, CUT_RUN=1.5, FILL_RUN=2.0,
        **outputs(tmp_path, "MASS", "HTML"),
    )  # fmt: skip
    assert found["FILL"] == pytest.approx(60 * (7 * 3 + 2 * 3 * 3), rel=1e-6)
    mass = rows_of(found["MASS"])
    assert sum(row["fill_m3"] for row in mass) == pytest.approx(found["FILL"], rel=1e-6)
    assert mass[-1]["mass_end_m3"] == pytest.approx(-found["FILL"], rel=1e-6)
    assert [row["from_m"] for row in mass] == sorted(row["from_m"] for row in mass)
    lines = rows_of(found["LINES"])
    assert {row["kind"] for row in lines} == {"centreline", "platform_edge"}
    kinds = {row["kind"] for row in rows_of(found["DAYLIGHT"])}
    assert kinds == {"toe_of_fill", "steep_end"}
    page = Path(found["HTML"]).read_text(encoding="utf-8")
    assert "Mass diagram" in page
    assert "prismoidal formula" in page
    sloped = run(
        "stripgrading", INPUT=level, LINE=centreline(), LANE_WIDTH=3.5, CROSSFALL=0.0, FILL_RUN=2.0, SLOPED_ENDS=True,
        MASS=None, **outputs(tmp_path),
    )  # fmt: skip
    more = 2 * 7 * 3 * 6 / 2 + math.pi * 6**2 * 3 / 3
    assert sloped["FILL"] - found["FILL"] == pytest.approx(more, rel=3e-3)


def test_profile_and_section_out_of_tables(run: Any, level: str, tmp_path: Path) -> None:
    """A cutting 2 m deep with a ditch 0.5 m deep on the left only: area by hand times the length."""
    profile = tmp_path / "profile.csv"
    profile.write_text("station,height\n0,8\n60,8\n")
    section = tmp_path / "section.csv"
    rows = ["both,lane,4,0,,", "left,ditch,0.4,,0.5,2", "both,cut slope,,,,1.5"]
    section.write_text("side,part,width,crossfall,depth,run\n" + "\n".join(rows) + "\n")
    flat = memory_layer("LineString", [f"LineString({place(20, 50)}, {place(80, 50)})"], "EPSG:25832", "path")
    given = {"INPUT": level, "LINE": flat, "MASS": None, **outputs(tmp_path)}
    found = run("stripgrading", PROFILE=str(profile), SECTION=str(section), **given)
    ditch = (2 + 2.5) / 2 * 1.0 + 2.5 * 0.4 + 1.5 * 2.5**2 / 2
    assert found["CUT"] == pytest.approx(60 * (8 * 2 + ditch + 1.5 * 2**2 / 2), rel=1e-5)
    names = {row["name"] for row in rows_of(found["LINES"])}
    assert {"left lane", "left ditch"} <= names
    assert "no heights" in message_of(run, "stripgrading", **given)
    profile.write_text("station,height\n0,8\n40,8\n")
    assert "covers 0.00 to 40.00" in message_of(run, "stripgrading", PROFILE=str(profile), **given)
    section.write_text("side,part,width\nup,lane,4\n")
    said = message_of(run, "stripgrading", PROFILE=str(profile), SECTION=str(section), **given)
    assert "section.csv, line 2" in said
    two = memory_layer("LineString", [f"LineString({place(0, 0)}, {place(9, 9)})"] * 2, "EPSG:25832", "path")
    assert "2 lines" in message_of(run, "stripgrading", **{**given, "LINE": two})


def test_haul_of_a_strip_on_a_slope(run: Any, tilted: str, tmp_path: Path) -> None:
    """Level at 5 m on ground rising with it: fill on the first half is cut of the second."""
    found = run(
        "stripgrading", INPUT=tilted, LINE=centreline((4.0, 4.0)), BALANCE=True, CROSSFALL=0.0,
        **outputs(tmp_path, "MASS", "CURVE"),
    )  # fmt: skip
    assert found["SHIFT"] == pytest.approx(1.0, abs=1e-3)
    assert "HEIGHT" not in found
    mass = [row["mass_end_m3"] for row in rows_of(found["MASS"])]
    assert min(mass) < -10
    assert mass[-1] == pytest.approx(0, abs=0.5)
    assert rows_of(found["CURVE"])[0]["height"] is None or rows_of(found["CURVE"])[0]["height"] != 0


# Balance


def test_balance_alone(run: Any, tilted: str, tmp_path: Path) -> None:
    page = str(tmp_path / "page.html")
    found = run(
        "balanceheight", INPUT=tilted, PADS=pads(polygon(square(20, 40))), CURVE="TEMPORARY_OUTPUT", HTML=page
    )  # fmt: skip
    assert found["HEIGHT"] == pytest.approx(5.0, abs=1e-3)
    assert found["REST"] == pytest.approx(0, abs=0.5)
    assert found["CURVE"].featureCount() > 8
    strip = run("balanceheight", INPUT=tilted, LINE=centreline((4.5, 4.5)), CROSSFALL=0.0, CURVE=None, HTML=None)
    assert strip["SHIFT"] == pytest.approx(0.5, abs=1e-3)
    given = {"INPUT": tilted, "CURVE": None, "HTML": None}
    assert "one of both" in message_of(run, "balanceheight", **given)
    both = {"PADS": pads(polygon(square(20, 40))), "LINE": centreline()}
    assert "one of both" in message_of(run, "balanceheight", **both, **given)
    far = message_of(run, "balanceheight", PADS=pads(polygon(square(20, 40))), SURPLUS=1e9, **given)
    assert "Check the surplus" in far


# Styles, the demo


def test_design_lines_have_a_symbol_for_each_kind(application: Any) -> None:
    from plugin.core.earthwork.design_lines import DesignLineKind
    from plugin.processing.styles import DESIGN_LINES, LEGEND_TEXTS, apply_qml

    layer = memory_layer("LineStringZ", [], "EPSG:25832&field=kind:string", "lines")
    apply_qml(layer, DESIGN_LINES)
    categories = layer.renderer().categories()
    assert {category.value() for category in categories} == {"centreline", *(kind.value for kind in DesignLineKind)}
    assert {category.label() for category in categories} <= set(LEGEND_TEXTS)


def test_the_demo_yard(run: Any, chain: Dict[str, Any], tmp_path: Path) -> None:
    yard = layer_of(DEMO / "pad.geojson")
    listener = Listener()
    found = run(
        "padgrading", listener, INPUT=chain["surface"]["OUTPUT"], PADS=yard, BALANCE=True, FALL_FIELD="fall",
        TOWARDS_FIELD="towards", NAME_FIELD="name", COMPACTED=0.9, TRUCK=8.0, LOOSE=1.25, **outputs(tmp_path, "HTML"),
    )  # fmt: skip
    assert found["CUT"] * 0.9 == pytest.approx(found["FILL"], abs=0.5)
    assert 85.5 < found["HEIGHT"] < 87.5
    assert found["AREA"] > 340
    assert any(text.startswith("Loads") for text in listener.infos)


def test_it_can_be_cancelled(run: Any, tilted: str, tmp_path: Path) -> None:
    listener = Listener(cancel_at=20.0)
    given = outputs(tmp_path)
    found = run("padgrading", listener, INPUT=tilted, PADS=pads(polygon(square(20, 40))), BALANCE=True, **given)
    assert found == {} or not (tmp_path / "design.2dm").exists()
    assert any("Cancelled" in text for text in listener.infos)
