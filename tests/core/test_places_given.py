"""Places near a site as people write them, and coordinates whose leading digits were left out."""

import numpy as np
import pytest
from pyproj import CRS, Transformer

from plugin.core.contours.lines import ContourOptions
from plugin.core.georeference.correction import AS_READ
from plugin.core.georeference.intake import take_in
from plugin.core.georeference.intake_options import IntakeOptions, with_answer
from plugin.core.georeference.position import Kind, Landmark
from plugin.core.job.landmarks import landmarks_of, place_of_words
from plugin.core.job.settings import JobSettings
from plugin.core.messages import SurveyError
from plugin.core.points.nmea import read_nmea
from plugin.core.points.questions import QuestionError
from tests.core.file_shapes import decimals, lines_of, site

UTM32 = CRS.from_epsg(25832)
TRUTH = site(7)
HERE = Landmark("near", Kind.LAYER, 9.70, 51.56, 9.70, 51.56)


@pytest.mark.parametrize(
    ("words", "lon", "lat"),
    [
        ("51.45N,9.0E", 9.0, 51.45),
        ("51.45 N, 9.0 E", 9.0, 51.45),
        ("N51.45 E9.0", 9.0, 51.45),
        ("51.56,9.696", 9.696, 51.56),
        ("51.56 9.696", 9.696, 51.56),
        ("51,56 9,696", 9.696, 51.56),
        ("9.0E 51.45N", 9.0, 51.45),
        ("51°27'N 9°00'E", 9.0, 51.45),
        ("-33.5,151.2", 151.2, -33.5),
        ("51.45;9.0", 9.0, 51.45),
        ("51.45N 9.0W", -9.0, 51.45),
        ("33.5S,70.6W", -70.6, -33.5),
        ("51,45N; 9,0O", 9.0, 51.45),
        ("51°33'36\"N, 9°41'42\"E", 9.695, 51.56),
    ],
)
def test_a_place_is_understood(words, lon, lat):
    assert place_of_words(words) == pytest.approx((lon, lat), abs=1e-9)


@pytest.mark.parametrize("words", ["", "here", "51.45", "548240,5712395", "lat 5", "51N,52N", "200,300"])
def test_what_is_no_place_is_none(words):
    assert place_of_words(words) is None


def near(tmp_path, word):
    return landmarks_of(JobSettings(tmp_path / "x.csv", tmp_path, ContourOptions(0.25), near=(word,)), UTM32)


def test_near_may_be_a_place_in_the_crs_or_a_file(tmp_path):
    (one,) = near(tmp_path, "548240,5712395")
    assert (one.west, one.south) == pytest.approx((9.6959, 51.5606), abs=1e-3)
    file = tmp_path / "known.csv"
    columns = [TRUTH.names, decimals(TRUTH.east), decimals(TRUTH.north), decimals(TRUTH.height)]
    file.write_text(lines_of(columns, ",", ["name", "easting", "northing", "height"]), encoding="utf-8")
    (one,) = near(tmp_path, str(file))
    assert (one.west, one.south) == pytest.approx((9.696, 51.5606), abs=1e-3)
    with pytest.raises(SurveyError, match="--near must be a place"):
        near(tmp_path, "the old mill")


@pytest.mark.parametrize(
    ("east", "north"), [(500_000, 0), (540_000, 5_710_000), (548_000, 5_712_000), (0, 5_700_000), (500_000, 5_700_000)]
)
def test_leading_digits_left_out_are_found_by_what_lies_near(tmp_path, east, north):
    file = tmp_path / "reduced.csv"
    columns = [TRUTH.names, decimals(TRUTH.east - east), decimals(TRUTH.north - north), decimals(TRUTH.height)]
    file.write_text(lines_of(columns, ",", ["name", "easting", "northing", "height"]), encoding="utf-8")
    options = IntakeOptions(crs=UTM32, landmarks=(HERE,))
    with pytest.raises(QuestionError) as asked:
        take_in([file], options)
    answers = asked.value.questions[0].answers
    assert len({answer.typed for answer in answers}) == len(answers)
    assert answers[0].value.startswith("reduced")
    came = take_in([file], with_answer(options, answers[0]))
    np.testing.assert_allclose(came.survey.points.easting, TRUTH.east, rtol=0, atol=1e-6)
    np.testing.assert_allclose(came.survey.points.northing, TRUTH.north, rtol=0, atol=1e-6)


def test_without_anything_near_the_refusal_says_how_to_name_it(tmp_path):
    file = tmp_path / "reduced.csv"
    columns = [TRUTH.names, decimals(TRUTH.east - 540_000), decimals(TRUTH.north - 5_710_000), decimals(TRUTH.height)]
    file.write_text(lines_of(columns, ",", ["name", "easting", "northing", "height"]), encoding="utf-8")
    with pytest.raises(QuestionError, match="--near") as asked:
        take_in([file], IntakeOptions(crs=UTM32))
    assert [answer.option for answer in asked.value.questions[0].answers][-2:] == ["--correct", "--near"]
    assert asked.value.questions[0].answers[-2].value == AS_READ


def sentence(body):
    check = 0
    for byte in body.encode():
        check ^= byte
    return f"${body}*{check:02X}"


def minutes(value, width):
    return f"{int(value):0{width}d}{(value - int(value)) * 60:010.7f}"


@pytest.mark.parametrize("before", ["", "2025-04-09 07:06:02.123 ", "[07:06:02] RX: ", "COM3> ", "1744182362.120;"])
@pytest.mark.parametrize(
    ("said", "up"), [({"pole_height": 2.0}, 0.0), ({"heights_of": "antenna"}, 2.0), ({"heights_of": "ground"}, 2.0)]
)
def test_logs_with_something_before_their_sentences(tmp_path, before, said, up):
    lon, lat = Transformer.from_crs(25832, 4258, always_xy=True).transform(TRUTH.east, TRUTH.north)
    lines = [
        before
        + sentence(
            f"GNGGA,0706{i:02d}.00,{minutes(lat[i], 2)},N,{minutes(lon[i], 3)},E,4,20,0.6,"
            f"{TRUTH.height[i] + 2:.3f},M,46.0,M,1.0,0000"
        )
        for i in range(48)
    ]
    lines.insert(20, "a line that is no sentence")
    path = tmp_path / "walk.log"
    path.write_text("\n".join(lines) + "\n", encoding="utf-8")
    read = read_nmea(path, **said)
    assert len(read.points) == 48
    np.testing.assert_allclose(read.points.height, TRUTH.height + up, rtol=0, atol=1e-6)
    assert read.rejects.text.tolist() == ["a line that is no sentence"]
