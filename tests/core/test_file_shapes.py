"""Over nineteen hundred shapes of survey files: read right, or asked about with an answer that makes it right."""

from collections import Counter

import pytest

from plugin.core.messages import SurveyError
from plugin.core.points.survey import read_survey
from tests.core.file_shapes import every_shape
from tests.core.file_shapes_abroad import every_abroad
from tests.core.file_shapes_asked import every_asked
from tests.core.file_shapes_below import every_below
from tests.core.file_shapes_desks import every_of_desks
from tests.core.file_shapes_exports import every_export
from tests.core.file_shapes_found import every_found
from tests.core.file_shapes_gdal import every_of_gdal
from tests.core.file_shapes_left import every_left, must_ask
from tests.core.file_shapes_sent import every_sent
from tests.core.file_shapes_words import every_of_words, pole_words
from tests.core.file_shapes_world import every_of_the_world, refused
from tests.core.shape_trial import trial

SHAPES = [*every_shape(), *every_found(), *every_of_the_world(), *every_asked(), *every_below()]
SHAPES += [*every_export(), *every_of_words(), *every_of_desks(), *every_sent(), *every_left(), *every_abroad()]
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
    assert len({shape.label for shape in SHAPES}) == len(SHAPES) >= 2000


def test_none_is_read_wrong_and_every_refusal_is_mended_by_an_answer_it_offers(outcomes):
    bad = {label: said for label, (what, said) in outcomes.items() if what in ("wrong", "stuck")}
    assert not bad


def test_what_only_the_user_can_say_is_asked(outcomes):
    asked = {label: what for label, (what, _) in outcomes.items() if must_ask(label)}
    assert set(asked.values()) == {"asked"}, asked


def test_most_are_read_right_without_an_option(outcomes):
    counts = Counter(what for what, _ in outcomes.values())
    assert counts["right"] >= 0.85 * len(SHAPES), counts
    assert counts["asked"] >= 10  # guards against a trial that never asks


def test_a_column_of_pole_heights_asks_in_each_language(tmp_path):
    outcomes = {shape.label: trial(shape, tmp_path) for shape in pole_words()}
    assert len(outcomes) > 110
    assert {label: said for label, (what, said) in outcomes.items() if what != "asked"} == {}


@pytest.mark.parametrize("shape", refused(), ids=lambda shape: shape.label)
def test_what_nobody_can_read_right_is_refused(tmp_path, shape):
    path = tmp_path / "survey.csv"
    path.write_bytes(shape.raw)
    with pytest.raises(SurveyError):
        read_survey(path, geographic=True)
