"""What the survey knows of its noise goes with its mesh, and every tool on a surface takes it."""

from __future__ import annotations

import csv
import math
import re
import shutil
from pathlib import Path
from typing import Any, Dict, List

import numpy as np
import pytest
from in_qgis import DEMO, Listener, layer_of, memory_points

from plugin.core.__main__ import main
from plugin.core.handover.mesh_noise import MeshNoise, noise_file, read_mesh_noise, write_mesh_noise

LANE = {"LINE": f"{DEMO / 'site.gpkg'}|layername=centreline", "LANE_LEFT": 2.3, "LANE_RIGHT": 2.3}


@pytest.fixture(scope="module")
def job(application: Any, tmp_path_factory: pytest.TempPathFactory) -> Path:
    """The demo from the command line, with its lane and volumes."""
    out = tmp_path_factory.mktemp("job")
    words = ["--crs", "EPSG:25832", "--interval", "0.25", "--rim-edge", "10", "--out", str(out)]
    words += ["--line", str(DEMO / "centreline.geojson"), "--lane", "2.3", "--volume-level", "87"]
    words += ["--pad", str(DEMO / "pad.geojson"), "--pad-level", "87", "--thin", "0.03"]
    assert main([str(DEMO / "survey.csv"), *words]) == 0
    return out


@pytest.fixture
def mesh(job: Path, tmp_path: Path) -> Path:
    """A copy of its mesh with what is beside it, to be changed."""
    for file in ("surface.2dm", "surface.prj", "surface.noise.json"):
        shutil.copy(job / file, tmp_path / file)
    return tmp_path / "surface.2dm"


def table(path: Path) -> List[Dict[str, str]]:
    return list(csv.DictReader(path.read_text(encoding="utf-8").splitlines()))


def checked(run: Any, mesh: Path, folder: Path, **more: Any) -> List[Any]:
    """Rule, stations, verdict, worst value and its deviation of each stretch; in thousandths of per cent."""
    run("checkline", INPUT=str(mesh), **LANE, **more, OUTPUT=str(folder / "stretches.csv"), FLOW=None, LOW_POINTS=None)
    return [
        (
            row["rule"], round(float(row["from_m"]), 3), round(float(row["to_m"]), 3), row["verdict"],
            *(round(float(row[name]), 3) if row[name] else None for name in ("value", "value_sd")),
        )
        for row in table(folder / "stretches.csv")
    ]  # fmt: skip


def test_the_same_verdicts_from_the_toolbox_and_the_job(run: Any, job: Path, mesh: Path, tmp_path: Path) -> None:
    found = checked(run, mesh, tmp_path)
    told = [
        (
            row["rule"], float(row["from_m"]), float(row["to_m"]), row["verdict"],
            *(float(row[name]) if row[name] else None for name in ("value", "sigma")),
        )
        for row in table(job / "checks.csv")
    ]  # fmt: skip
    assert {row[3] for row in told} >= {"pass", "too_close"}
    assert found == told
    noise_file(mesh).unlink()
    assert checked(run, mesh, tmp_path) != told, "the usual noise is not that of this survey"


def test_the_same_volumes_from_the_toolbox_and_the_job(run: Any, job: Path, mesh: Path) -> None:
    found = run("volumetoplane", INPUT=str(mesh), LEVEL=87.0, OUTPUT="TEMPORARY_OUTPUT", RASTER=None)
    told = {row["quantity"]: row for row in table(job / "volumes_level.csv") if row["region"] == "all"}
    for name in ("cut", "fill"):
        assert found[name.upper()] == pytest.approx(float(told[name]["volume_m3"]), abs=0.0006)
        assert found[f"{name.upper()}_95"] == pytest.approx(float(told[name]["half_95_m3"]), abs=0.0006)


def test_the_same_pad_from_the_toolbox_and_the_job(run: Any, job: Path, mesh: Path) -> None:
    found = run(
        "padgrading", INPUT=str(mesh), PADS=str(DEMO / "pad.geojson"), LEVEL=87.0, OUTPUT="TEMPORARY_OUTPUT",
        FINISHED="TEMPORARY_OUTPUT",
    )  # fmt: skip
    page = (job / "report.html").read_text(encoding="utf-8")
    said = re.search(r"From existing ground to design: cut ([\d.]+) ± ([\d.]+) m³, fill ([\d.]+) ± ([\d.]+)", page)
    assert said is not None
    for name, told in zip(("CUT", "CUT_95", "FILL", "FILL_95"), said.groups()):
        assert found[name] == pytest.approx(float(told), rel=0.05, abs=0.06)


def test_every_tool_on_a_surface_asks_for_it_in_one_way(application: Any) -> None:
    """Empty by default, under one label and with one help text."""
    from qgis.core import QgsApplication, QgsProcessingParameterMeshLayer

    asked: Dict[str, List[Any]] = {}
    for algorithm in QgsApplication.processingRegistry().providerById("hummock").algorithms():
        of_surface = any(isinstance(one, QgsProcessingParameterMeshLayer) for one in algorithm.parameterDefinitions())
        for one in algorithm.parameterDefinitions() if of_surface else ():
            if "SIGMA" in one.name() or "DRIFT" in one.name() or one.name() == "CALM":
                help_text = "" if algorithm.name() == "coverage" else one.help()  # the receiver's claims stand in there
                asked.setdefault(one.name(), []).append((one.description(), help_text, one.defaultValue()))
    assert {name: len(ways) for name, ways in asked.items() if name in ("SIGMA", "DRIFT")} == {"SIGMA": 18, "DRIFT": 12}
    assert set(asked) == {
        "SIGMA", "DRIFT", "SECOND_SIGMA", "SECOND_DRIFT", "DRIFT_LENGTH", "OFFSET_SIGMA", "PLAN_SIGMA", "CALM"
    }  # fmt: skip
    for name, ways in asked.items():
        assert len({way[0] for way in ways}) == len({way[2] for way in ways}) == 1, name
        assert len({way[1] for way in ways} - {""}) == 1, name
        if name not in ("DRIFT_LENGTH", "OFFSET_SIGMA", "PLAN_SIGMA"):
            assert ways[0][2] is None, name


PLAIN = {
    "checkline": {**LANE, "OUTPUT": "TEMPORARY_OUTPUT", "FLOW": None, "LOW_POINTS": None},
    "roadprofile": {"LINE": LANE["LINE"], "OUTPUT": "TEMPORARY_OUTPUT"},
    "ponds": {"OUTPUT": "TEMPORARY_OUTPUT"},
    "flowpaths": {"OUTPUT": "TEMPORARY_OUTPUT"},
    "catchments": {"OUTPUT": "TEMPORARY_OUTPUT"},
    "volumetoplane": {"LEVEL": 87.0, "OUTPUT": "TEMPORARY_OUTPUT", "RASTER": None},
    "padgrading": {
        "PADS": str(DEMO / "pad.geojson"), "LEVEL": 87.0, "OUTPUT": "TEMPORARY_OUTPUT", "FINISHED": "TEMPORARY_OUTPUT"
    },
    "contoursheet": {"OUTPUT": "TEMPORARY_OUTPUT"},
}  # fmt: skip


@pytest.mark.parametrize("name", PLAIN)
def test_the_log_says_which_figure_and_from_where(run: Any, mesh: Path, name: str) -> None:
    own, _ = read_mesh_noise(mesh)
    assert own is not None
    file = "as surface.noise.json tells"
    assert said(run, name, mesh) == [
        f"surface: noise of a height {own.total:.4f} m ({file}), of it drift {own.drift:.4f} m ({file})."
    ]
    noise_file(mesh).unlink()
    usual = "the usual value, as nothing tells"
    assert said(run, name, mesh) == [f"surface: noise of a height 0.0150 m ({usual}), of it drift 0.0070 m ({usual})."]


def said(run: Any, name: str, mesh: Path, **more: Any) -> List[str]:
    listener = Listener()
    run(name, listener, INPUT=str(mesh), **{**PLAIN[name], **more})
    return [text for text in listener.infos if "noise of a height" in text]


def test_what_is_given_goes_first(run: Any, mesh: Path) -> None:
    own, _ = read_mesh_noise(mesh)
    assert own is not None
    file = "as surface.noise.json tells"
    assert said(run, "checkline", mesh, SIGMA=0.04) == [
        f"surface: noise of a height 0.0400 m (as given), of it drift {own.drift:.4f} m ({file})."
    ]
    assert said(run, "checkline", mesh, SIGMA=0.001) == [
        f"surface: noise of a height 0.0010 m (as given), of it drift 0.0010 m ({file})."
    ]
    assert said(run, "checkline", mesh, DRIFT=0.0) == [
        f"surface: noise of a height {own.total:.4f} m ({file}), of it drift 0.0000 m (as given)."
    ]


def test_what_belongs_to_another_mesh_is_told_and_not_used(run: Any, mesh: Path) -> None:
    with open(mesh, "a", encoding="utf-8") as file:
        file.write("# later\n")
    listener = Listener()
    run("ponds", listener, INPUT=str(mesh), OUTPUT="TEMPORARY_OUTPUT")
    assert any("does not belong to surface.2dm as it is now" in text for text in listener.warnings)
    assert any("0.0150 m (the usual value" in text for text in listener.infos)


def test_a_noisier_survey_has_fewer_ponds(run: Any, mesh: Path) -> None:
    before = run("ponds", INPUT=str(mesh), OUTPUT="TEMPORARY_OUTPUT")["PONDS"]
    write_mesh_noise(mesh, MeshNoise(0.3, 0.0))
    assert run("ponds", INPUT=str(mesh), OUTPUT="TEMPORARY_OUTPUT")["PONDS"] < before


def test_it_goes_on_with_a_thinned_surface(run: Any, mesh: Path, tmp_path: Path) -> None:
    own, _ = read_mesh_noise(mesh)
    thin = tmp_path / "thin.2dm"
    kept = run("thinsurface", INPUT=str(mesh), TOLERANCE=0.05, OUTPUT=str(thin))["VERTEX_COUNT"]
    noise, _ = read_mesh_noise(thin)
    assert own is not None
    assert noise is not None
    assert (noise.sigma, noise.drift) == (own.sigma, own.drift)
    assert own.time is not None
    assert noise.time is not None
    assert len(noise.time) == kept < len(own.time)
    assert np.isin(noise.time[np.isfinite(noise.time)], own.time).all()
    noise_file(mesh).unlink()
    run("thinsurface", INPUT=str(mesh), TOLERANCE=0.05, OUTPUT=str(thin))
    assert not noise_file(thin).exists()


def test_a_second_survey_brings_its_own(run: Any, mesh: Path, tmp_path: Path) -> None:
    """A mesh with noise beside it is a survey, one without is a design."""
    other = tmp_path / "other.2dm"
    for suffix in (".2dm", ".prj"):
        shutil.copy(mesh.with_suffix(suffix), other.with_suffix(suffix))
    plain = {"EXISTING": str(mesh), "DESIGN": str(other), "OUTPUT": "TEMPORARY_OUTPUT", "RASTER": None}
    listener = Listener()
    run("volume", listener, **plain)
    assert any("other: noise of a height 0.0000 m (a design" in text for text in listener.infos)
    write_mesh_noise(other, MeshNoise(0.012, 0.005))
    listener = Listener()
    run("volume", listener, **plain)
    assert any("other: noise of a height 0.0130 m (as other.noise.json" in text for text in listener.infos)


def test_the_datum_of_heights_is_said_where_the_mesh_knows_it(run: Any, tmp_path: Path) -> None:
    from pyproj import CRS

    rows = [("", x, y, 50.0 + 0.1 * math.sin(x)) for x in range(0, 40, 4) for y in range(0, 40, 4)]
    mesh = tmp_path / "levelled.2dm"
    run("buildsurface", INPUT=memory_points(rows), OUTPUT=str(mesh))
    mesh.with_suffix(".prj").write_text(CRS("EPSG:25832+7837").to_wkt(), encoding="utf-8")
    listener = Listener()
    run("ponds", listener, INPUT=str(mesh), OUTPUT="TEMPORARY_OUTPUT")
    assert "levelled: heights are DHHN2016 height." in listener.infos


def test_sections_take_both(run: Any, mesh: Path, tmp_path: Path) -> None:
    other = tmp_path / "other.2dm"
    for suffix in (".2dm", ".prj"):
        shutil.copy(mesh.with_suffix(suffix), other.with_suffix(suffix))

    def doubts(**more: Any) -> List[float]:
        found = run(
            "crosssections", INPUT=str(mesh), DESIGN=str(other), LINE=LANE["LINE"], INTERVAL=20.0, LEFT=2.0, RIGHT=2.0,
            OUTPUT="TEMPORARY_OUTPUT", POINTS_OUTPUT=None, AREAS="TEMPORARY_OUTPUT", **more,
        )  # fmt: skip
        return [row["net_sd"] for row in layer_of(found["AREAS"]).getFeatures()]

    alone, both = doubts(), doubts(SECOND_SIGMA=0.05)
    write_mesh_noise(other, MeshNoise(0.05, 0.0))
    beside = doubts()
    assert all(b > 2 * a for a, b in zip(alone, both))
    assert beside == pytest.approx(both)
