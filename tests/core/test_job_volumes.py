"""Volumes and basins from the main job, against closed forms and the true ground of the demo."""

import csv
import json
import sys
from dataclasses import replace
from pathlib import Path
from types import SimpleNamespace

import numpy as np
import pytest
from pyproj import Transformer
from test_job import run, write

from plugin.core.__main__ import STAGES
from plugin.core.contours.lines import ContourOptions
from plugin.core.earthwork.region_file import read_region_file
from plugin.core.handover.mesh import read_2dm, write_2dm
from plugin.core.job.basin import BasinQuestion
from plugin.core.job.run import run_job
from plugin.core.job.settings import JobSettings
from plugin.core.job.volumes import VolumeQuestion
from plugin.core.progress import silent
from plugin.core.quality.repeatability import Repeatability
from plugin.core.report.output_sections import FILES, kind_of_file
from tests.core.earthworks import square, surface

TEST_DATA = Path(__file__).parents[2] / "test_data"
DEMO = TEST_DATA / "demo"
sys.path.insert(0, str(TEST_DATA))
import ground  # noqa: E402  the demo's own script, beside its data

EAST, NORTH = 432_000.0, 5_765_000.0
STEP = 0.1  # metres, of the grid on which the true volumes are summed


def rows(path):
    with open(path, encoding="utf-8", newline="") as file:
        return list(csv.DictReader(file))


# The demo, whose earlier and later ground are known in closed form


@pytest.fixture(scope="module")
def demo(tmp_path_factory):
    return run_job(
        JobSettings(
            survey=DEMO / "survey.csv",
            out=tmp_path_factory.mktemp("demo"),
            contours=ContourOptions(0.25),
            crs="EPSG:25832",
            decisions=DEMO / "decisions.csv",
            check=False,
            questions=(
                VolumeQuestion(
                    since=DEMO / "before.2dm", regions=DEMO / "phases.geojson", line=DEMO / "centreline.geojson",
                    half_width=6.0, other_sigma=0.015,
                ),
                BasinQuestion(tuple(np.ravel(ground.to_grid(*np.array(ground.BASIN_CENTRE))).tolist())),
            ),
        )
    )  # fmt: skip


def true_net(region):
    """Ground later less ground earlier over a region, cubic metres, from the closed forms."""
    ring = np.column_stack(ground.to_site(*region.rings[0][:-1].T))
    low, high = ring.min(axis=0), ring.max(axis=0)
    x, y = (v.ravel() for v in np.meshgrid(*(np.arange(a, b, STEP) + STEP / 2 for a, b in zip(low, high))))
    inside = ground.inside(ring, x, y) & ground.inside(ground.SITE, x, y) & ~ground.inside(ground.pump_house(), x, y)
    x, y = x[inside], y[inside]
    return float(np.sum(ground.site_height(x, y) - ground.hillside(x, y)) * STEP**2)


def test_the_true_volumes_lie_in_the_intervals(demo):
    found = demo.answers[0].study
    for region, each in zip(read_region_file(DEMO / "phases.geojson", demo.crs).regions, found.regions):
        low, high = each.doubt.net.interval_95
        assert low < true_net(region) < high, region.name
        assert each.part.name == region.name
    mound = found.regions[2].part.net
    # the whole mound holds 2 pi h R² m³ (integral of a bell); the meadow's parcel has most of it
    whole = 2 * np.pi * ground.MOUND_HEIGHT * ground.MOUND_RADIUS**2
    assert 0.7 * whole < mound < whole
    assert found.volumes.total.net == pytest.approx(found.doubt.net.value, rel=1e-9)


def test_the_noise_of_the_survey_is_in_the_doubt(demo):
    """What repeats to 40 mm is less sure than what repeats to 8 mm, and neither has the doubt of a survey that does
    not tell."""

    def random(total):
        found = None if total is None else Repeatability(total, 99.0, 0.0, total, 99.0, total, total, 99)
        result = replace(demo, check=SimpleNamespace(noise=found))
        return VolumeQuestion(level=86.0).answer(result, silent).study.doubt.net.random

    quiet, loud = random(0.008), random(0.04)
    assert loud == pytest.approx(5 * quiet, rel=1e-6)
    assert quiet < 0.9 * random(None) < loud


def test_regions_in_degrees_come_by_an_operation_that_is_told(demo, tmp_path):
    """The same regions as RFC 7946 has them, brought to degrees by pyproj: the same volumes, and a remark."""
    there = Transformer.from_crs("EPSG:25832", "EPSG:4326", always_xy=True)
    data = json.loads((DEMO / "phases.geojson").read_text(encoding="utf-8"))
    del data["crs"]
    for feature in data["features"]:
        rings = feature["geometry"]["coordinates"]
        rings[:] = [np.column_stack(there.transform(*np.array(ring).T[:2])).tolist() for ring in rings]
    path = tmp_path / "degrees.geojson"
    path.write_text(json.dumps(data), encoding="utf-8")
    plain, brought = (
        VolumeQuestion(level=86.0, regions=file).answer(demo, silent) for file in (DEMO / "phases.geojson", path)
    )
    for one, other in zip(plain.study.regions, brought.study.regions):
        assert other.part.net == pytest.approx(one.part.net, rel=1e-6)
    said = [str(each) for each in brought.messages if each not in plain.messages]
    assert len(said) == 1
    assert "degrees.geojson: Positions transformed from WGS 84 (EPSG:4326) to ETRS89" in said[0]


def test_the_basin_holds_what_its_shape_says(demo):
    """Between the cylinders on its floor and its rim, near the frustum of the two ellipses less what spills."""
    basin = demo.answers[1].basin
    depth = basin.storage.curve[-1].level - basin.storage.curve[0].level
    a, b = np.array(ground.BASIN_TOE), np.array(ground.BASIN_RIM)
    share = depth / ground.BASIN_DEPTH
    top = np.pi * np.prod(a + share * (b - a))
    floor = np.pi * np.prod(a)
    middle = np.pi * np.prod(a + share / 2 * (b - a))
    prismoid = depth / 6 * (floor + 4 * middle + top)
    assert basin.storage.capacity == pytest.approx(prismoid, rel=0.2)
    assert 0.2 < depth < ground.BASIN_DEPTH + 0.1


def test_files_and_report(demo):
    files = {path.name: path for path in demo.files}
    others = {"checksums.sha256", "report.html", "job.json", "lines_found.geojson"}
    assert {kind_of_file(name) for name in files} - set(FILES) <= others
    table = rows(files["volumes_since.csv"])
    assert [row["region"] for row in table[::3]] == ["1 lane", "2 ditch and basin", "3 mound", "all"]
    fill = next(row for row in table if row["region"] == "all" and row["quantity"] == "fill")
    study = demo.answers[0].study
    assert float(fill["volume_m3"]) == pytest.approx(study.doubt.fill.value, abs=1e-3)
    assert float(fill["triangles_m3"]) == pytest.approx(study.measured.fill, abs=1e-3)
    assert study.doubt.fill.value == pytest.approx(study.volume.fill - study.doubt.noise_excess)
    assert float(fill["half_95_m3"]) == pytest.approx(study.doubt.fill.half_95, abs=1e-3)
    depths = json.loads(files["depths_since.geojson"].read_text(encoding="utf-8"))["features"]
    assert sum(f["properties"]["volume_m3"] for f in depths) == pytest.approx(
        study.volume.cut + study.volume.fill, abs=0.01
    )
    lines = json.loads(files["zero_line_since.geojson"].read_text(encoding="utf-8"))["features"]
    assert len(lines) == len(study.zero_lines)
    curve = rows(files["storage.csv"])
    assert float(curve[-1]["volume_m3"]) == pytest.approx(demo.answers[1].basin.storage.capacity, abs=1e-3)
    report = files["report.html"].read_text(encoding="utf-8")
    for text in ("Volumes: before.2dm to survey.csv", "2 ditch and basin", "not a payment certificate",
                 "average end areas", "Storage of the basin"):  # fmt: skip
        assert text in report


def test_earlier_mesh_knows_its_system():
    from pyproj import CRS

    from plugin.core.handover.projection import read_prj

    assert read_prj(DEMO / "before.2dm").equals(CRS.from_epsg(25832), ignore_axis_order=True)


# A level square, from the command line


def flat(folder):
    """A survey of a level square of 30 m at 10 m."""
    lines = []
    for i in range(11):
        lines += [f"{100 * i + j},{EAST + 3 * i},{NORTH + 3 * j},10.0,GR" for j in range(11)]
    return write(folder / "flat.csv", lines)


def made(folder, *more):
    assert run(flat(folder), folder / "out", *more) == 0
    return folder / "out"


def test_to_a_level_and_a_design_with_regions(tmp_path, capsys):
    tin = surface(square(30, 12.0), origin=np.array([EAST, NORTH]))
    write_2dm(tin, tmp_path / "design.2dm")
    ring = [(EAST + x, NORTH + y) for x, y in ((0, 0), (10, 0), (10, 30), (0, 30), (0, 0))]
    shape = {"type": "Polygon", "coordinates": [ring]}
    feature = {"type": "Feature", "properties": {"name": "west"}, "geometry": shape}
    crs = {"type": "name", "properties": {"name": "urn:ogc:def:crs:EPSG::25832"}}
    collection = {"type": "FeatureCollection", "crs": crs, "features": [feature]}
    (tmp_path / "regions.geojson").write_text(json.dumps(collection))
    out = made(
        tmp_path, "--volume-level", "9.5", "--against", str(tmp_path / "design.2dm"), "--regions",
        str(tmp_path / "regions.geojson"), "--depths", "1,3",
    )  # fmt: skip
    level, design = rows(out / "volumes_level.csv"), rows(out / "volumes_against.csv")
    cut = {row["region"]: float(row["volume_m3"]) for row in level if row["quantity"] == "cut"}
    assert cut == {"west": pytest.approx(150), "all": pytest.approx(450)}
    fill = {row["region"]: float(row["volume_m3"]) for row in design if row["quantity"] == "fill"}
    assert fill == {"west": pytest.approx(600), "all": pytest.approx(1800)}
    (depth,) = json.loads((out / "depths_against.geojson").read_text(encoding="utf-8"))["features"]
    assert depth["properties"]["from_m"] == 1.0
    assert depth["properties"]["area_m2"] == pytest.approx(900)
    assert "Volume    flat.csv to 9.5 m: cut 450.0 ± " in capsys.readouterr().out


@pytest.mark.parametrize(
    ("more", "said"),
    [
        (["--regions", "x.geojson"], "--regions is for volumes"),
        (["--volume-level", "9", "--depths", "1,0.5"], "--depths must be rising"),
        (["--volume-level", "9", "--regions", "nowhere.geojson"], "nowhere.geojson: it cannot be read"),
        (["--against", "nowhere.2dm"], "nowhere.2dm"),
        (["--volume-level", "nine"], "--volume-level must be a number"),
    ],
)
def test_mistakes_are_told_in_a_line(tmp_path, capsys, more, said):
    assert run(flat(tmp_path), tmp_path / "out", *more) == 2
    lines = [line for line in capsys.readouterr().err.splitlines() if line not in STAGES.values()]
    assert len(lines) == 1
    assert said in lines[0]


def test_a_mesh_of_another_system_is_refused(tmp_path, capsys):
    from pyproj import CRS

    from plugin.core.handover.projection import write_prj

    write_2dm(surface(square(30, 12.0), origin=np.array([EAST, NORTH])), tmp_path / "other.2dm")
    write_prj(tmp_path / "other.2dm", CRS.from_epsg(25833))
    assert read_2dm(tmp_path / "other.2dm").plan_area == pytest.approx(900)
    assert run(flat(tmp_path), tmp_path / "out", "--against", str(tmp_path / "other.2dm")) == 2
    said = capsys.readouterr().err
    assert "flat.csv is in EPSG:25832, other.2dm in EPSG:25833" in said
