"""The .prj file beside a mesh."""

from __future__ import annotations

from pathlib import Path

import pytest
from pyproj import CRS

from plugin.core.handover.projection import read_prj, write_prj


# UTM, a state plane in US survey feet, one in international feet, a compound CRS, a national grid
@pytest.mark.parametrize("code", ["EPSG:25832", "EPSG:2263", "EPSG:2222", "EPSG:25832+7837", "EPSG:27700"])
def test_the_crs_comes_back(tmp_path: Path, code: str) -> None:
    crs = CRS.from_user_input(code)
    written = write_prj(tmp_path / "surface.2dm", crs)
    assert written == tmp_path / "surface.prj"
    back = read_prj(tmp_path / "surface.2dm")
    assert back is not None
    plan = [axis.unit_conversion_factor for axis in crs.axis_info]
    assert [axis.unit_conversion_factor for axis in back.axis_info] == pytest.approx(plan, rel=1e-12)
    first, second = (c.sub_crs_list[0] if c.is_compound else c for c in (crs, back))
    assert second.to_authority() == first.to_authority()


def test_gdal_reads_what_is_written(tmp_path: Path) -> None:
    osr = pytest.importorskip("osgeo.osr")
    text = write_prj(tmp_path / "a.2dm", CRS.from_epsg(25832)).read_text()
    reference = osr.SpatialReference()
    assert reference.ImportFromESRI([text]) == 0
    matches = reference.FindMatches()
    assert matches[0][0].GetAuthorityCode(None) == "25832"


def test_a_local_grid_leaves_no_stale_crs(tmp_path: Path) -> None:
    write_prj(tmp_path / "a.2dm", CRS.from_epsg(25832))
    assert write_prj(tmp_path / "a.2dm", None) is None
    assert not (tmp_path / "a.prj").exists()
    assert read_prj(tmp_path / "a.2dm") is None


@pytest.mark.parametrize("content", [b"", b"\xff\xfe\x00", b"no WKT at all"])
def test_what_cannot_be_read_is_none(tmp_path: Path, content: bytes) -> None:
    (tmp_path / "a.prj").write_bytes(content)
    assert read_prj(tmp_path / "a.2dm") is None
