"""Longitudes without a sign whose survey other things put into the west."""

import numpy as np
import pytest
from pyproj import CRS

from plugin.core.georeference.intake import take_in
from plugin.core.georeference.intake_options import IntakeOptions, with_answer
from plugin.core.georeference.position import Kind, Landmark
from plugin.core.points.questions import QuestionError

#: A yard at 45.5 degrees north, 73.6 west, in UTM zone 18.
LON, LAT = 73.6, 45.5
UTM18, UTM43 = CRS.from_epsg(32618), CRS.from_epsg(32643)


def file(path, sign=1.0, seed=3):
    random = np.random.default_rng(seed)
    lon, lat = (LON + np.cumsum(random.normal(0, 6e-6, 40)), LAT + np.cumsum(random.normal(0, 5e-6, 40)))
    rows = [f"{i},{b:.8f},{sign * a:.8f},{30 + 0.01 * i:.3f}" for i, (a, b) in enumerate(zip(lon, lat))]
    path.write_text("Name,Latitude,Longitude,Height\n" + "\n".join(rows) + "\n", encoding="utf-8")
    return path


def beside(sign, kind=Kind.LAYER):
    return Landmark("parcels", kind, sign * LON - 0.01, LAT - 0.01, sign * LON + 0.01, LAT + 0.01)


def asked(paths, **how):
    with pytest.raises(QuestionError) as caught:
        take_in(paths, IntakeOptions(**how))
    (question,) = caught.value.questions
    assert [answer.value for answer in question.answers] == ["west", "degrees"]
    return question


@pytest.mark.parametrize("kind", [Kind.LAYER, Kind.CONTROL, Kind.FILE])
def test_what_lies_in_the_west_asks_and_its_answer_leads_there(tmp_path, kind):
    path = file(tmp_path / "yard.csv")
    options = {"landmarks": (beside(-1.0, kind),)}
    question = asked([path], **options)
    assert "parcels" in str(question.text)
    options["crs"] = UTM18
    west = with_answer(IntakeOptions(**options), question.answers[0])
    points = take_in([path], west).survey.points
    assert 600_000 < np.median(points.easting) < 620_000  # 1.4 degrees east of the middle of zone 18
    assert 5_030_000 < np.median(points.northing) < 5_045_000


def test_the_other_file_of_a_survey_asks(tmp_path):
    asked([file(tmp_path / "one.csv"), file(tmp_path / "two.csv", sign=-1.0, seed=4)], crs=UTM18)


def test_the_crs_of_the_project_asks(tmp_path):
    asked([file(tmp_path / "yard.csv")], project=UTM18)


def test_what_lies_in_the_east_and_no_hint_at_all_ask_nothing(tmp_path):
    path = file(tmp_path / "yard.csv")
    for options in ({}, {"landmarks": (beside(1.0),)}, {"project": UTM43}):
        read = take_in([path], IntakeOptions(crs=UTM43, **options)).files[0]
        assert np.median(read.geographic.longitude) == pytest.approx(LON, abs=0.01)


def test_a_sign_is_never_asked_about(tmp_path):
    read = take_in([file(tmp_path / "yard.csv", sign=-1.0)], IntakeOptions(crs=UTM18, landmarks=(beside(-1.0),))).files[
        0
    ]
    assert np.median(read.geographic.longitude) == pytest.approx(-LON, abs=0.01)
