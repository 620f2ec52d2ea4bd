"""The headless main job: LandXML and DXF, files that are whole or not there, and the same again."""

from __future__ import annotations

import hashlib
import re
from pathlib import Path

import ezdxf
import numpy as np
import pytest
from test_job import hill, run, write

from plugin.core.arguments.parser import make_parser
from plugin.core.arguments.settings import job_settings
from plugin.core.handover.landxml_read import read_landxml
from plugin.core.handover.mesh import read_2dm
from plugin.core.job.run import run_job
from plugin.core.progress import Cancelled
from tests.core.landxml_rules import broken_rules

EVERYTHING = ("--landxml", "--dxf", "--smooth", "0.25", "--dem", "1", "--thin", "0.05")
#: A breakline across the hill.
LINE = ["a1,500003.1,5800003.1,100,KT 1 BEGIN", "a2,500017.1,5800017.1,100,KT 1 END"]
#: When a LandXML file was written, which it says.
MOMENT = re.compile(rb'date="[0-9-]+" time="[0-9:]+"')


def survey_of(folder: Path) -> Path:
    return write(folder / "hill.csv", hill() + LINE)


def test_landxml_and_dxf_hold_the_surface(tmp_path):
    assert run(survey_of(tmp_path), tmp_path / "out", "--landxml", "--dxf") == 0
    out = tmp_path / "out"
    assert broken_rules(out / "surface.xml") == []
    back, mesh = read_landxml(out / "surface.xml"), read_2dm(out / "surface.2dm")
    assert back.crs.to_epsg() == 25832
    tin = back.surfaces[0].tin
    np.testing.assert_array_equal(tin.triangles, mesh.triangles)
    np.testing.assert_array_equal(tin.grid, mesh.grid)
    np.testing.assert_array_equal(tin.edge_kind, mesh.edge_kind)
    assert back.surfaces[0].name == "hill"
    assert len(back.points) == (out / "points.csv").read_text().count(",used,")
    space = ezdxf.readfile(out / "surface.dxf").modelspace()
    assert len(space.query("3DFACE")) == len(mesh.triangles)
    assert len(space.query("POINT")) == len(back.points)
    assert {line.dxf.layer for line in space.query("POLYLINE")} >= {"CONTOUR", "CONTOUR_INDEX", "BREAKLINE"}
    report = (out / "report.html").read_text()
    assert "surface.xml" in report
    assert "LandXML 1.2" in report


def settings_of(survey: Path, out: Path):
    words = [str(survey), "--crs", "EPSG:25832", "--interval", "0.25", "--out", str(out), "--no-check", *EVERYTHING]
    return job_settings(make_parser().parse_args(words))


def whole_files(folder: Path):
    """Contents by name, without the moment that a LandXML file says, and so without its sum elsewhere."""
    raw = (folder / "surface.xml").read_bytes() if (folder / "surface.xml").exists() else b"-"
    own = hashlib.sha256(raw).hexdigest().encode()
    products = sorted(path for path in folder.iterdir() if path.name not in ("stages", "job.json"))
    return {path.name: MOMENT.sub(b"", path.read_bytes()).replace(own, b"SUM") for path in products}


def test_the_same_input_gives_the_same_files(tmp_path):
    survey = survey_of(tmp_path)
    for name in ("one", "other"):
        run_job(settings_of(survey, tmp_path / name))
    one, other = (whole_files(tmp_path / name) for name in ("one", "other"))
    assert {"surface.xml", "surface.dxf", "dem.asc", "report.html"} <= set(one)
    assert set(one) == set(other)
    assert [name for name in one if one[name] != other[name]] == []


@pytest.mark.parametrize("stop_at", [0.0, 0.1, 0.4, 0.7, 0.8, 0.82, 0.85, 0.9, 0.94, 0.97, 0.999])
def test_a_job_that_is_stopped_leaves_whole_files_only(tmp_path, stop_at):
    survey, out = survey_of(tmp_path), tmp_path / "out"
    run_job(settings_of(survey, tmp_path / "whole"))
    whole = whole_files(tmp_path / "whole")
    out.mkdir()
    for name in whole:
        (out / name).write_bytes(b"before")

    def stop(fraction, stage):
        if fraction >= stop_at:
            raise Cancelled

    with pytest.raises(Cancelled):
        run_job(settings_of(survey, out), stop)
    left = whole_files(out)
    assert set(left) == set(whole)
    for name, content in left.items():
        assert content in (b"before", whole[name]), name
