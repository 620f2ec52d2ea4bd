"""Over a thousand shapes of survey files: read right, or asked about with an answer that makes it right."""

from collections import Counter

import pytest

from plugin.core.messages import SurveyError
from plugin.core.points.survey import read_survey
from tests.core.file_shapes import every_shape
from tests.core.file_shapes_found import every_found
from tests.core.file_shapes_gdal import every_of_gdal
from tests.core.file_shapes_world import every_of_the_world, refused
from tests.core.shape_trial import trial

SHAPES = [*every_shape(), *every_found(), *every_of_the_world()]
try:
    import osgeo  # noqa: F401
except ImportError:
    pass
else:
    SHAPES += every_of_gdal()


@pytest.fixture(scope="module")
def outcomes(tmp_path_factory):
    folder = tmp_path_factory.mktemp("shapes")
    return {shape.label: trial(shape, folder) for shape in SHAPES}


def test_there_are_as_many_shapes_as_said():
    assert len({shape.label for shape in SHAPES}) == len(SHAPES) >= 1200


def test_none_is_read_wrong_and_every_refusal_is_mended_by_an_answer_it_offers(outcomes):
    bad = {label: said for label, (what, said) in outcomes.items() if what in ("wrong", "stuck")}
    assert not bad


def test_most_are_read_right_without_an_option(outcomes):
    counts = Counter(what for what, _ in outcomes.values())
    assert counts["right"] >= 0.85 * len(SHAPES), counts
    assert counts["asked"] >= 10  # guards against a trial that never asks


@pytest.mark.parametrize("shape", refused(), ids=lambda shape: shape.label)
def test_what_nobody_can_read_right_is_refused(tmp_path, shape):
    path = tmp_path / "survey.csv"
    path.write_bytes(shape.raw)
    with pytest.raises(SurveyError):
        read_survey(path, geographic=True)
