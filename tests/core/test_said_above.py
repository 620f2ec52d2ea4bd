"""What lines above the data say: units of plan and heights apart, what heights are of, the pole."""

import numpy as np
import pytest

from plugin.core.points.said_above import Units, heights_of_line, units_of_line
from plugin.core.points.survey import read_survey
from plugin.core.points.words import Word
from plugin.core.units import LengthUnit

M, FT, US, CM = LengthUnit.METRE, LengthUnit.FOOT, LengthUnit.US_SURVEY_FOOT, LengthUnit.CENTIMETRE


@pytest.mark.parametrize(
    ("line", "units"),
    [
        ("Horizontal units: metres, vertical units: feet", (None, M, FT)), ("# Vertical units: feet", (None, None, FT)),
        ("Elevation unit: ft", (None, None, FT)), ("Job 12; linear units: international feet", (FT, None, None)),
        ("Units: m (horizontal), ft (vertical)", (None, M, FT)), ("Units m vertical ft", (M, None, FT)),
        ("Vertical datum NAVD88, units: US survey feet", (US, None, None)), ("Höhen in cm, Lage in m", (None, M, CM)),
        ("walk with the 3 m pole", (None, None, None)), ("accuracy 0.02 m vertical", (None, None, None)),
        ("antenna height 1.8 m", (None, None, None)), ("Site of the feet", (None, None, None)),
    ],
)  # fmt: skip
def test_units_of_a_line(line, units):
    assert tuple(word.unit for word in units_of_line(line)) == units


def test_a_line_without_units_says_nothing():
    assert units_of_line("Survey of the mill, 4 May") == Units(Word(), Word(), Word())


@pytest.mark.parametrize(
    ("line", "of"),
    [
        ("Heights: antenna phase centre, antenna height 1.800 m", "antenna"), ("Heights are of the antenna", "antenna"),
        ("Antenna height: 1.800 m", ""), ("Antenna height 1.8 m measured to the antenna mount", ""),
        ("Heights reduced to ground", "ground"), ("elevations are of the ground mark", "ground"),
        ("Höhen: Antenne", "antenna"), ("antenna type X, heights of the ground", "ground"),
    ],
)  # fmt: skip
def test_what_heights_are_of(line, of):
    assert heights_of_line(line) == of


def test_a_pole_of_a_title_lowers_heights_of_the_antenna_and_is_told(tmp_path):
    path = tmp_path / "a.csv"
    path.write_text("# Heights: antenna, pole height 1.800 m\nP,E,N,Z\n1,5,6,11.8\n2,6,7,12.8\n3,7,9,13.0\n")
    read = read_survey(path)
    np.testing.assert_allclose(read.points.height, [10.0, 11.0, 11.2])
    assert "1.800" in str(read.ground)
    assert "a line of the file" in str(read.ground)
