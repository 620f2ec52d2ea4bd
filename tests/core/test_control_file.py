"""Control files as people keep them, and what is asked of them."""

import numpy as np
import pytest
from pyproj import CRS

from plugin.core.georeference.control import ControlPoints, match_control
from plugin.core.georeference.control_file import read_control
from plugin.core.messages import SurveyError
from plugin.core.points.pointset import make_points
from plugin.core.points.questions import QuestionError

UTM32 = CRS.from_epsg(25832)
PLACES = [("6", 547844.306, 5712133.244, 92.494), ("31", 547852.524, 5712143.962, 92.799),
          ("65", 547860.101, 5712121.003, 93.100), ("89", 547871.222, 5712155.444, 92.001)]  # fmt: skip
FOOT, US = 0.3048, 1200 / 3937


def control(tmp_path, text, word=""):
    path = tmp_path / "control.csv"
    path.write_text(text, encoding="utf-8")
    return read_control(path, None, UTM32, word)


def rows(form, metres=1.0):
    return "".join(form.format(name, e / metres, n / metres, h / metres) + "\n" for name, e, n, h in PLACES)


@pytest.mark.parametrize(
    "text",
    [
        rows("{} {:.3f} {:.3f} {:.3f}"), rows("{0} {2:.3f} {1:.3f} {3:.3f}"),
        "name;geom\n" + rows("{};POINT Z ({:.3f} {:.3f} {:.3f})"),
        "name,easting,northing,height\n-,m,m,m\n" + rows("{},{:.3f},{:.3f},{:.3f}"),
        "name,easting,northing,h_ell,H_ortho\n" + rows("{0},{1:.3f},{2:.3f},150.0,{3:.3f}"),
    ],
)  # fmt: skip
def test_files_of_other_forms(tmp_path, text):
    read = control(tmp_path, text)
    found = np.column_stack((read.easting, read.northing, read.height))
    np.testing.assert_allclose(found, [one[1:] for one in PLACES], atol=1e-6)
    assert read.name.tolist() == [one[0] for one in PLACES]


@pytest.mark.parametrize(("unit", "metres"), [("ft", FOOT), ("us-ft", US)])
def test_feet_of_a_header_are_asked_which_and_obeyed(tmp_path, unit, metres):
    text = "name,easting (ft),northing (ft),height (ft)\n" + rows("{},{:.4f},{:.4f},{:.4f}", metres)
    with pytest.raises(QuestionError) as asked:
        control(tmp_path, text)
    answers = asked.value.questions[0].answers
    assert [one.typed for one in answers] == ["--control-as control:ft", "--control-as control:us-ft"]
    from plugin.core.georeference.fit_readings import parse_reading

    word = f"control:{unit}"
    read = parse_reading(word).of_control(control(tmp_path, text, word))
    np.testing.assert_allclose(read.easting, [one[1] for one in PLACES], atol=1e-3)
    np.testing.assert_allclose(read.height, [one[3] for one in PLACES], atol=1e-3)


def test_a_zone_before_eastings_is_asked_about(tmp_path):
    text = "name;easting;northing;height\n" + rows("{};32{:.3f};{:.3f};{:.3f}")
    with pytest.raises(QuestionError) as asked:
        control(tmp_path, text)
    answers = asked.value.questions[0].answers
    assert [one.typed for one in answers] == ["--control-as control-prefix", "--control-as as-read"]
    assert "51.5" in str(answers[0].place)
    from plugin.core.georeference.fit_readings import parse_reading

    read = parse_reading("control-prefix").of_control(control(tmp_path, text, "control-prefix"))
    np.testing.assert_allclose(read.easting, [one[1] for one in PLACES], atol=1e-6)


def test_a_height_that_stands_for_none_is_told(tmp_path):
    text = "name,easting,northing,height\n" + rows("{},{:.3f},{:.3f},{:.3f}").replace("93.100", "-9999")
    read = control(tmp_path, text)
    assert np.isnan(read.height).tolist() == [False, False, True, False]
    assert any("-9999" in str(one) for one in read.messages)


def test_names_written_otherwise_are_matched_and_told():
    points = make_points(
        np.arange(3.0), np.arange(3.0), np.arange(3.0), name=np.array(["6", "p-31", "65"], object), source="s.csv"
    )
    known = ControlPoints(np.array(["0006", "P31"], object), *np.ones((3, 2)), np.arange(2), "c.csv")
    match = match_control(points, known)
    assert match.names == ("0006", "P31")
    assert any("0006 = 6, P31 = p-31" in str(one) for one in match.messages)


def test_names_that_could_be_several_are_not_matched():
    points = make_points(
        np.arange(3.0), np.arange(3.0), np.arange(3.0), name=np.array(["6", "06", "65"], object), source="s.csv"
    )
    known = ControlPoints(np.array(["006"], object), *np.ones((3, 1)), np.arange(1), "c.csv")
    with pytest.raises(SurveyError, match="written alike"):
        match_control(points, known)
