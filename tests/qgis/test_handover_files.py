"""All files of one hand-over of the demo, opened by readers that have nothing to do with QGIS.

That they are whole and the same each time is tried in test_whole_files.py.
"""

from __future__ import annotations

import hashlib
import json
import os
import subprocess
import sys
from pathlib import Path
from typing import Any, Dict

import numpy as np
import pytest
from in_qgis import DEMO, Listener, Profile, layer_of, memory_layer, message_of

from plugin.core.handover.mesh import read_2dm
from plugin.core.surface.tin import Tin

sys.path.append(str(Path(__file__).parent.parent / "core"))
from landxml_rules import broken_rules


def opened(kind: str, path: str) -> Any:
    """What an independent library reads from the file."""
    clean = {name: value for name, value in os.environ.items() if not name.startswith(("PROJ", "GDAL"))}
    program = str(Path(__file__).with_name("independent.py"))
    ran = subprocess.run([sys.executable, program, kind, path], capture_output=True, text=True, env=clean)
    assert ran.returncode == 0, ran.stderr
    return json.loads(ran.stdout.splitlines()[-1])


@pytest.fixture(scope="module")
def parcels(application: Any) -> Any:
    from qgis.core import QgsVectorLayer

    layer = QgsVectorLayer(f"{DEMO / 'site.gpkg'}|layername=parcels", "Parcels of the site", "ogr")
    assert layer.isValid()
    return layer


@pytest.fixture(scope="module")
def handed(chain: Dict[str, Any], parcels: Any, tmp_path_factory: pytest.TempPathFactory) -> Dict[str, Any]:
    import processing
    from qgis.core import QgsProject

    QgsProject.instance().addMapLayer(parcels, False)
    parameters = {
        "INPUT": chain["surface"]["OUTPUT"],
        "INTERVAL": 0.25,
        "POINTS": chain["points"]["OUTPUT"],
        "LAYERS": [parcels],
        "CELL": 0.5,
        "NAME": "pippin field",
        "FOLDER": str(tmp_path_factory.mktemp("handed") / "over"),
    }
    return processing.run("hummock:handoverfiles", parameters, feedback=Listener().feedback)


@pytest.fixture(scope="module")
def tin(chain: Dict[str, Any]) -> Tin:
    from pyproj import CRS

    return read_2dm(chain["surface"]["OUTPUT"], CRS("EPSG:25832"))


def extent(tin: Tin) -> np.ndarray:
    """Lowest and highest corner of the surface."""
    west, south, east, north = tin.bounds
    low, high = tin.height_range
    return np.array([[west, south, low], [east, north, high]])


def area_on_slope(tin: Tin) -> float:
    corner = tin.corners()
    return 0.5 * float(np.linalg.norm(np.cross(corner[:, 1] - corner[:, 0], corner[:, 2] - corner[:, 0]), axis=1).sum())


def test_the_files_are_named_and_summed(handed: Dict[str, Any]) -> None:
    folder = Path(handed["FOLDER"])
    names = sorted(path.name for path in folder.iterdir())
    suffixes = (".2dm", ".dxf", ".gpkg", ".prj", ".sha256", ".tif", ".xml")
    assert names == [f"pippin field{suffix}" for suffix in suffixes]
    assert handed["FILES"] == 6
    lines = Path(handed["CHECKSUMS"]).read_text().splitlines()
    said = dict(reversed(line.split("  ", 1)) for line in lines)
    for path in folder.iterdir():
        if path.suffix != ".sha256":
            assert said[path.name] == hashlib.sha256(path.read_bytes()).hexdigest()


def test_dxf(handed: Dict[str, Any], tin: Tin, chain: Dict[str, Any]) -> None:
    drawing = opened("dxf", handed["DXF"])
    assert drawing["errors"] == []
    assert drawing["faces"] == len(tin.triangles)
    assert drawing["area"] == pytest.approx(area_on_slope(tin), rel=1e-5)
    np.testing.assert_allclose(drawing["bounds"], extent(tin), atol=1e-4)
    contours = layer_of(chain["contours"]["OUTPUT"])
    index = len(list(contours.getFeatures('"index"')))
    assert drawing["lines"]["CONTOUR_INDEX"] == index
    assert drawing["lines"]["CONTOUR"] == contours.featureCount() - index
    assert drawing["heights"] == sorted({feature["level"] for feature in contours.getFeatures()})
    assert {"BREAKLINE", "VOID"} <= set(drawing["lines"])
    points = len(list(layer_of(chain["points"]["OUTPUT"]).getFeatures("\"status\" != 'rejected'")))
    assert drawing["points"] == points
    assert points < drawing["texts"] <= 2 * points


def test_geotiff(handed: Dict[str, Any], tin: Tin) -> None:
    from pyproj import CRS

    raster = opened("raster", handed["DEM"])
    assert CRS(raster["crs"]).to_epsg() == 25832
    west, south, east, north = raster["bounds"]
    bounds = tin.bounds
    assert west <= bounds[0] < west + 0.5
    assert south <= bounds[1] < south + 0.5
    assert east - 0.5 < bounds[2] <= east
    assert north - 0.5 < bounds[3] <= north
    assert raster["size"] == [round((east - west) / 0.5), round((north - south) / 0.5)]
    assert raster["nodata"] == -9999.0
    assert raster["units"] == ["m"]
    assert raster["compressed"].lower() == "deflate"
    assert raster["tiled"]
    assert raster["filled"] == pytest.approx(tin.plan_area / 0.25, rel=0.01)
    low, high = tin.height_range
    assert low - 1e-4 <= raster["range"][0] < raster["range"][1] <= high + 1e-4
    assert "exact" in raster["description"]


def test_geopackage(handed: Dict[str, Any], tin: Tin, chain: Dict[str, Any], parcels: Any) -> None:
    package = opened("package", handed["GPKG"])
    layers = package["layers"]
    assert package["check"] == "ok"
    names = {"points", "contours", "lines", "triangles", "parcels_of_the_site"}
    assert names <= set(layers)
    assert {(name, bool(default)) for name, default, length in package["styles"] if length > 1000} == {
        (name, True) for name in names
    }
    expected = {
        "points": layer_of(chain["points"]["OUTPUT"]),
        "contours": layer_of(chain["contours"]["OUTPUT"]),
        "triangles": layer_of(chain["surface"]["TRIANGLES"]),
        "parcels_of_the_site": parcels,
    }
    for name, layer in expected.items():
        box = layer.extent()
        assert layers[name]["count"] == layer.featureCount(), name
        assert layers[name]["crs"] == 25832, name
        corners = [box.xMinimum(), box.yMinimum(), box.xMaximum(), box.yMaximum()]
        np.testing.assert_allclose(layers[name]["bounds"], corners, atol=1e-6)
    assert list(layers["parcels_of_the_site"]["fields"]) == [
        field.name() for field in parcels.fields() if field.name() != "fid"
    ]


def test_the_styles_come_back_in_qgis(handed: Dict[str, Any]) -> None:
    from qgis.core import QgsVectorLayer

    kinds = {"points": "categorizedSymbol", "contours": "RuleRenderer", "lines": "categorizedSymbol"}
    for name, kind in kinds.items():
        layer = QgsVectorLayer(f"{handed['GPKG']}|layername={name}", name, "ogr")
        assert layer.isValid()
        assert layer.renderer().type() == kind, name


def test_mesh(handed: Dict[str, Any], tin: Tin) -> None:
    mesh = opened("mesh", handed["MESH"])
    assert mesh["faces"] == len(tin.triangles)
    assert mesh["vertices"] == len(tin.vertices)
    assert mesh["consistent"]
    np.testing.assert_allclose(mesh["bounds"], extent(tin), atol=1e-6)
    assert mesh["area"] == pytest.approx(area_on_slope(tin), rel=1e-9)
    assert "UTM" in Path(handed["MESH"]).with_suffix(".prj").read_text()


def test_landxml(handed: Dict[str, Any], tin: Tin) -> None:
    from plugin.core.handover.landxml_read import read_landxml

    assert broken_rules(Path(handed["LANDXML"])) == []
    back = read_landxml(handed["LANDXML"])
    assert back.surfaces[0].name == "pippin field"
    np.testing.assert_array_equal(back.surfaces[0].tin.triangles, tin.triangles)
    assert back.crs.to_epsg() == 25832


@pytest.mark.parametrize("code", ["EPSG:2263", "EPSG:25832+7837"])
def test_feet_and_compound_systems(run: Any, tmp_path: Path, code: str) -> None:
    """Vertical unit and CRS arrive: US survey feet (NIST SP 811), and heights above a named level."""
    from pyproj import CRS

    from plugin.core.handover.projection import write_prj

    texts = [f"PointZ({980000 + 20 * i} {200000 + 20 * j} {30 + i})" for i in range(4) for j in range(4)]
    points = memory_layer("PointZ", texts, code.split("+")[0], "survey")
    mesh = run("buildsurface", INPUT=points, OUTPUT=str(tmp_path / "surface.2dm"))["OUTPUT"]
    write_prj(mesh, CRS(code))  # QGIS before 3.34 knows no compound systems
    made = run("handoverfiles", INPUT=mesh, INTERVAL=1.0, CELL=5.0, FORMATS=[1, 3], FOLDER=str(tmp_path / "out"))
    raster = opened("raster", made["DEM"])
    assert raster["range"] == pytest.approx([30, 33], abs=0.5)
    read = CRS(raster["crs"])
    if "+" in code:
        assert read.is_compound
        assert "DHHN2016" in read.name
        assert raster["units"] == ["m"]
    else:
        assert read.to_epsg() == 2263
        assert raster["units"] == ["US survey foot"]
    bounds = np.array(opened("dxf", made["DXF"])["bounds"])
    np.testing.assert_allclose(bounds, [[980000, 200000, 30], [980060, 200060, 33]], atol=2e-4)


def test_what_cannot_be_is_refused(run: Any, chain: Dict[str, Any], tmp_path: Path) -> None:
    mesh = chain["surface"]["OUTPUT"]
    (tmp_path / "file").write_text("x")
    said = message_of(run, "handoverfiles", INPUT=mesh, FOLDER=str(tmp_path / "file"))
    assert str(tmp_path / "file") in said


def test_by_qgis_process(profile: Profile, chain: Dict[str, Any], tmp_path: Path) -> None:
    ran = profile.qgis_process(
        "run", "hummock:handoverfiles", f"--INPUT={chain['surface']['OUTPUT']}",
        f"--POINTS={chain['points']['OUTPUT']}", f"--FOLDER={tmp_path / 'out'}", "--INTERVAL=1",
    )  # fmt: skip
    assert ran.returncode == 0, ran.stdout + ran.stderr
    assert len(list((tmp_path / "out").iterdir())) == 7
