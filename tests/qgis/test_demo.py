"""The demo survey through the three algorithms, in this QGIS and through qgis_process."""

from __future__ import annotations

import json
import shutil
from pathlib import Path
from typing import Any, Dict

import numpy as np
import pytest
from in_qgis import DEMO, SURVEY, Listener, Profile, layer_of


def test_every_line_is_accounted_for(chain: Dict[str, Any]) -> None:
    result = chain["points"]
    text = (DEMO / "survey.csv").read_text(encoding="utf-8-sig").splitlines()
    points, rejects = layer_of(result["OUTPUT"]), layer_of(result["REJECTS"])
    assert result["LINES"] == len(text)
    assert points.featureCount() == result["POINTS"]
    assert rejects.featureCount() == result["REJECTED_LINES"] > 0
    others = sum(line.startswith(("#", "name,")) or not line.strip() for line in text)
    assert result["POINTS"] + result["REJECTED_LINES"] + others == len(text)
    for feature in rejects.getFeatures():
        assert text[feature["line"] - 1] == feature["text"]
        assert feature["reason"]


def test_points_carry_what_the_file_says(chain: Dict[str, Any]) -> None:
    points = layer_of(chain["points"]["OUTPUT"])
    assert points.crs().authid() == "EPSG:25832"
    text = (DEMO / "survey.csv").read_text(encoding="utf-8-sig").splitlines()
    header = text[0].split(",")
    for feature in list(points.getFeatures())[::500]:
        told = dict(zip(header, text[feature["line"] - 1].split(",")))
        place = feature.geometry().constGet()
        assert (place.x(), place.y(), place.z()) == pytest.approx(
            [float(told[name]) for name in ("easting", "northing", "height")], abs=1e-9
        )
        assert feature["name"] == told["name"]
        assert feature["fix"] == int(told["fix"])
        assert feature["time"].toUTC().toString("yyyy-MM-ddTHH:mm:ss") == told["time"][:19]


def test_decisions_set_the_status(chain: Dict[str, Any]) -> None:
    points = layer_of(chain["points"]["OUTPUT"])
    decided = [line.split(",") for line in (DEMO / "decisions.csv").read_text().splitlines()[1:]]
    found = {f["line"]: (f["status"], f["reason"]) for f in points.getFeatures()}
    for line, status, reason in decided:
        if int(line) in found:
            assert found[int(line)][0] == status
            assert reason in found[int(line)][1].split("+")


def test_surface_stays_on_the_true_ground(chain: Dict[str, Any]) -> None:
    """The heights of the mesh against the closed-form ground of the scenario, as QGIS reads the file."""
    import sys

    from qgis.core import QgsMeshLayer

    sys.path.insert(0, str(DEMO.parent))
    try:
        from ground import true_height
    finally:
        sys.path.pop(0)
    mesh_layer = QgsMeshLayer(chain["surface"]["OUTPUT"], "surface", "mdal")
    assert mesh_layer.isValid()
    from qgis.core import QgsMesh

    mesh = QgsMesh()
    mesh_layer.dataProvider().populateMesh(mesh)
    assert mesh.faceCount() == chain["surface"]["TRIANGLE_COUNT"]
    vertices = np.array([(v.x(), v.y(), v.z()) for v in (mesh.vertex(i) for i in range(0, mesh.vertexCount(), 7))])
    miss = vertices[:, 2] - true_height(vertices[:, 0], vertices[:, 1])
    assert np.sqrt(np.mean(miss**2)) < 0.03


def test_triangles_and_lines_fit_the_mesh(chain: Dict[str, Any]) -> None:
    triangles, lines = layer_of(chain["surface"]["TRIANGLES"]), layer_of(chain["surface"]["LINES"])
    assert triangles.featureCount() == chain["surface"]["TRIANGLE_COUNT"]
    areas = [(f["area_m2"], f.geometry().area()) for f in triangles.getFeatures()]
    assert max(abs(told - is_) for told, is_ in areas) < 1e-6
    assert sum(area for area, _ in areas) == pytest.approx(chain["surface"]["AREA"])
    assert {f["kind"] for f in lines.getFeatures()} == {"breakline", "boundary", "void"}
    assert triangles.crs().authid() == lines.crs().authid() == "EPSG:25832"


def test_contours_lie_on_their_levels(chain: Dict[str, Any]) -> None:
    contours = layer_of(chain["contours"]["OUTPUT"])
    assert contours.crs().authid() == "EPSG:25832"
    assert contours.featureCount() == chain["contours"]["CONTOURS"] > 10
    for feature in contours.getFeatures():
        steps = feature["level"] / 0.25
        assert steps == round(steps)
        assert bool(feature["index"]) == (round(steps) % 5 == 0)
        assert feature["unit"] == "m"
        assert feature.geometry().constGet().zAt(0) == feature["level_m"] == feature["level"]
        if feature["closed"]:
            assert feature.geometry().constGet().isClosed()


def test_contours_in_feet(run: Any, chain: Dict[str, Any]) -> None:
    listener = Listener()
    result = run(
        "contours",
        listener,
        INPUT=chain["surface"]["OUTPUT"],
        INTERVAL=0.5,
        UNIT=1,
        INDEX_EVERY=2,
        OUTPUT="TEMPORARY_OUTPUT",
    )
    levels = [(f["level"], f["level_m"], f["index"], f["unit"]) for f in result["OUTPUT"].getFeatures()]
    assert levels
    for feet, metres, index, unit in levels:
        assert feet * 2 == round(feet * 2)
        assert metres == pytest.approx(feet * 0.3048, abs=1e-12)  # NIST SP 811
        assert bool(index) == (feet == round(feet))
        assert unit == "ft"


def test_a_status_changed_in_the_layer_counts(run: Any, chain: Dict[str, Any], tmp_path: Path) -> None:
    copy = shutil.copy(chain["points"]["OUTPUT"], tmp_path / "points.gpkg")
    points = layer_of(copy)
    used = [feature.id() for feature in points.getFeatures("\"status\" = 'used'")]
    place = points.fields().indexFromName("status")
    assert points.dataProvider().changeAttributeValues({fid: {place: "rejected"} for fid in used[:100]})
    again = run("buildsurface", INPUT=points, OUTPUT=str(tmp_path / "again.2dm"))
    assert again["POINTS_USED"] == chain["surface"]["POINTS_USED"] - 100


def test_the_same_through_qgis_process(profile: Profile, chain: Dict[str, Any], tmp_path: Path) -> None:
    folder = tmp_path / "process"
    folder.mkdir()

    def process(algorithm: str, **parameters: str) -> Dict[str, Any]:
        words = [f"--{name}={value}" for name, value in parameters.items()]
        ran = profile.qgis_process("--json", "run", f"hummock:{algorithm}", *words)
        assert ran.returncode == 0, ran.stdout + ran.stderr
        return json.loads(ran.stdout)["results"]

    points = process("importpoints", **SURVEY, OUTPUT=str(folder / "points.gpkg"), REJECTS=str(folder / "rejects.csv"))
    surface = process("buildsurface", INPUT=points["OUTPUT"], MAX_RIM_EDGE="10", OUTPUT=str(folder / "surface.2dm"))
    contours = process("contours", INPUT=surface["OUTPUT"], INTERVAL="0.25", OUTPUT=str(folder / "contours.gpkg"))
    assert points["POINTS"] == chain["points"]["POINTS"]
    assert surface["TRIANGLE_COUNT"] == chain["surface"]["TRIANGLE_COUNT"]
    assert contours["CONTOURS"] == chain["contours"]["CONTOURS"]
    assert (folder / "surface.2dm").read_bytes() == Path(chain["surface"]["OUTPUT"]).read_bytes()
    assert layer_of(contours["OUTPUT"]).crs().authid() == "EPSG:25832"
    assert (folder / "rejects.csv").read_text().count("\n") == points["REJECTED_LINES"] + 1
