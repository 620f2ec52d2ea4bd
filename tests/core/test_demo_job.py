"""The main job on the demo survey, against the true ground it was made from."""

import json
import sys
from pathlib import Path

import numpy as np
import pytest

from plugin.core.contours.lines import ContourOptions
from plugin.core.handover.mesh import read_2dm
from plugin.core.job.run import run_job
from plugin.core.job.settings import JobSettings
from plugin.core.points.pointset import Reason, Status
from plugin.core.surface.locate import heights_at

TEST_DATA = Path(__file__).parents[2] / "test_data"
DEMO = TEST_DATA / "demo"
sys.path.insert(0, str(TEST_DATA))
import ground  # noqa: E402  the demo's own script, beside its data

PLACES = 10_000
BAR = 0.020  # m, RMSE


def run(folder, decisions, check=False):
    return run_job(
        JobSettings(
            survey=DEMO / "survey.csv",
            out=folder,
            contours=ContourOptions(0.25),
            crs="EPSG:25832",
            decisions=DEMO / "decisions.csv" if decisions else None,
            check=check,
        )
    )


@pytest.fixture(scope="module")
def result(tmp_path_factory):
    return run(tmp_path_factory.mktemp("demo"), decisions=True)


@pytest.fixture(scope="module")
def places():
    """Random places (easting, northing) inside the boundary and outside the footprint left out of the survey."""
    rng = np.random.default_rng(20250409)
    corners = ground.boundary()
    low, high = corners.min(axis=0), corners.max(axis=0)
    xy = low + rng.random((3 * PLACES, 2)) * (high - low)
    xy = xy[ground.inside(corners, *xy.T) & ~ground.inside(ground.void(), *xy.T)]
    assert len(xy) >= PLACES
    return xy[:PLACES]


def errors(tin, places):
    """Height of the surface less the true height, at the places on the surface."""
    height = heights_at(tin, places)
    error = height - ground.true_height(*places.T)
    return error[np.isfinite(height)]


def rmse(error):
    return float(np.sqrt(np.mean(error**2)))


def test_the_surface_is_within_20_mm_of_the_true_ground(result, places):
    error = errors(result.surface.tin, places)
    assert len(error) >= 0.995 * PLACES, "the surface does not cover the site"
    assert rmse(error) <= BAR
    assert abs(error.mean()) <= 0.003


def test_the_checks_alone_come_close_to_the_true_list_of_faults(result, tmp_path, places):
    """Bar: RMSE of the surface at most 1.1 times that with every fault left out by the list of the generator."""
    alone = run(tmp_path, decisions=False, check=True)
    error = errors(alone.surface.tin, places)
    assert len(error) >= 0.99 * PLACES
    assert rmse(error) <= 1.1 * rmse(errors(result.surface.tin, places))


def test_the_faults_matter(tmp_path, places):
    """Without the decisions the bar is missed, so the check above can fail."""
    error = errors(run(tmp_path, decisions=False).surface.tin, places)
    assert rmse(error) > 1.5 * BAR


def test_the_mesh_file_is_the_surface(result, places):
    mesh = next(path for path in result.files if path.suffix == ".2dm")
    back = read_2dm(mesh, result.crs)
    np.testing.assert_allclose(
        heights_at(back, places), heights_at(result.surface.tin, places), rtol=0, atol=1e-6, equal_nan=True
    )
    assert back.plan_area == pytest.approx(result.surface.tin.plan_area, rel=1e-12)


def test_every_line_of_the_survey_is_accounted_for(result):
    with open(DEMO / "survey.csv", "rb") as file:
        lines = sum(1 for _ in file)
    account = result.survey.account
    assert account.lines == lines
    assert account.points + account.rejects + account.comments + account.blanks + account.header == lines
    assert account.rejects == 2  # the generator breaks two lines
    assert len(result.points) == account.points


def test_no_rejected_point_shapes_the_surface(result):
    points, source = result.points, result.surface.tin.vertex_source
    assert (points.status[source[source >= 0]] != Status.REJECTED).all()
    check = (points.reasons & int(Reason.CHECK_SHOT)) != 0
    assert check.sum() >= 8
    assert (points.status[check] == Status.REJECTED).all()


def test_contours_lie_on_the_true_ground_at_their_level(result):
    """A contour's height error is that of the surface under it."""
    contours = result.contours
    line = np.repeat(np.arange(len(contours)), np.diff(contours.start))
    place = contours.xy + contours.origin
    error = contours.level[line] - ground.true_height(*place.T)
    assert len(error) > 3000
    assert float(np.sqrt(np.mean(error**2))) <= BAR


def test_the_written_contours_are_those_of_the_result(result):
    path = next(path for path in result.files if path.suffix == ".geojson")
    collection = json.loads(path.read_text(encoding="utf-8"))
    assert len(collection["features"]) == len(result.contours)
