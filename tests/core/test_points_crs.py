"""The coordinate system a survey is said to be in, and its units."""

import numpy as np
import pytest
from pyproj import CRS

from plugin.core.georeference.crs import (
    height_unit,
    heights_to_crs_units,
    local_grid,
    metres_per_unit,
    plan_unit,
    projected_crs,
    read_crs,
    to_crs_units,
)
from plugin.core.messages import SurveyError
from plugin.core.units import LengthUnit


@pytest.mark.parametrize(
    ("text", "unit", "rise"),
    [
        ("EPSG:25832", "m", "m"),
        (" 25832 ", "m", "m"),
        ("epsg:2193", "m", "m"),
        ("EPSG:2263", "us-ft", "us-ft"),
        ("EPSG:6405", "ft", "ft"),
        ("25832+7837", "m", "m"),
        ("EPSG:25832+6360", "m", "us-ft"),
        ("EPSG:2263+5703", "us-ft", "m"),
    ],
)
def test_projected_crs_and_units(text, unit, rise):
    """Units as the EPSG register gives them; feet of NIST SP 811."""
    crs = projected_crs(text)
    assert crs.is_projected
    assert (plan_unit(crs), height_unit(crs)) == (LengthUnit(unit), LengthUnit(rise))
    assert metres_per_unit(crs) == LengthUnit(unit).metres
    assert to_crs_units([LengthUnit(unit).metres], crs).tolist() == [1.0]
    assert heights_to_crs_units([LengthUnit(rise).metres], crs).tolist() == [1.0]


def test_wkt_in_either_version_and_with_other_digits_of_the_foot():
    for version in ("WKT1_GDAL", "WKT1_ESRI", "WKT2_2019"):
        assert plan_unit(projected_crs(CRS("EPSG:2263").to_wkt(version))) is LengthUnit.US_SURVEY_FOOT
        assert plan_unit(projected_crs(CRS("EPSG:25832").to_wkt(version))) is LengthUnit.METRE
    short = CRS("EPSG:2263").to_wkt("WKT1_GDAL").replace("0.304800609601219", "0.30480061")
    assert plan_unit(projected_crs(short)) is LengthUnit.US_SURVEY_FOOT


@pytest.mark.parametrize(
    ("text", "code"),
    [
        ("", "not_said"),
        ("  ", "not_said"),
        ("nowhere", "not_understood"),
        ("EPSG:999999", "not_understood"),
        ("9" * 500, "not_understood"),
        ("PROJCS[", "not_understood"),
        ("EPSG:4326", "geographic"),
        ("4979", "geographic"),
        ("EPSG:4326+5773", "geographic"),
        ("EPSG:4978", "not_projected"),
        ("EPSG:7837", "not_projected"),
        ("EPSG:2314", "other_unit"),
    ],
)
def test_what_is_refused(text, code):
    with pytest.raises(SurveyError) as caught:
        projected_crs(text)
    assert caught.value.code == "crs." + code
    assert len(str(caught.value)) < 250
    assert "\n" not in str(caught.value)


def test_local_grid():
    assert local_grid("local")
    assert local_grid(" Local ")
    assert not local_grid(None)
    assert not local_grid("EPSG:25832")
    assert read_crs("LOCAL") is None
    assert read_crs("25832") == CRS("EPSG:25832")
    assert plan_unit(None) is LengthUnit.METRE
    assert metres_per_unit(None) == 1.0
    values = np.array([1.5, np.nan])
    assert np.array_equal(to_crs_units(values, None), values, equal_nan=True)
