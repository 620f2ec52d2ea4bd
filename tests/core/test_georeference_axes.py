"""Every order of axes that PROJ's database has among projected CRSs in use: the place is right, or it is refused."""

import re
from collections import defaultdict

import numpy as np
import pytest
from pyproj import CRS, Transformer
from pyproj.database import query_crs_info
from pyproj.enums import PJType

from plugin.core.georeference.area import check_area
from plugin.core.georeference.axes import computed, from_lonlat, mirrored, to_lonlat, turned
from plugin.core.georeference.intake import take_in
from plugin.core.georeference.intake_options import IntakeOptions
from plugin.core.georeference.upright import upright
from plugin.core.messages import SurveyError
from plugin.core.points.pointset import make_points
from plugin.core.points.questions import QuestionError, Topic
from plugin.core.units import metres_per_unit

#: Of an order with more CRSs than this every so manieth is looked at.
MOST = 60


def by_order():
    """Codes of projected CRSs in use by the directions of their axes, and the names that tell polar ones apart."""
    found = defaultdict(list)
    for info in query_crs_info(auth_name="EPSG", pj_types=PJType.PROJECTED_CRS, allow_deprecated=False):
        crs = CRS.from_epsg(int(info.code))
        found[", ".join(axis.direction for axis in crs.axis_info[:2])].append(int(info.code))
    return {order: codes[:: max(1, len(codes) // MOST)] for order, codes in found.items()}


ORDERS = by_order()


def middle(crs):
    area = crs.area_of_use
    lon = area.west + ((area.east - area.west) % 360.0 or 360.0) / 2.0
    return (lon + 180.0) % 360.0 - 180.0, min(max((area.south + area.north) / 2.0, -89.0), 89.0)


def as_registered(crs, lon, lat):
    """Coordinates in the order and unit of the register, first axis first, by PROJ without any normalising."""
    there = Transformer.from_crs(crs.geodetic_crs, crs)
    unit = crs.geodetic_crs.axis_info[0].unit_conversion_factor
    zero = crs.geodetic_crs.prime_meridian.longitude * crs.geodetic_crs.prime_meridian.unit_conversion_factor
    first, second = np.radians(lat) / unit, (np.radians(lon) - zero) / unit
    if crs.geodetic_crs.axis_info[0].direction == "east":
        first, second = second, first
    return there.transform(first, second)


def test_the_database_has_the_orders_we_know():
    known = {
        "east, north", "north, east", "west, south", "south, west", "north, west", "west, north", "north, north",
        "south, south",
    }  # fmt: skip
    assert {"east, north", "north, east", "west, south", "south, west"} <= set(ORDERS) <= known


@pytest.mark.parametrize("order", sorted(ORDERS))
def test_a_place_in_each_order_of_axes(order):
    """The place is that of PROJ by the axes of the register; no plan is mirrored but those that are refused."""
    looked = 0
    for code in ORDERS[order]:
        crs = CRS.from_epsg(code)
        if not computed(crs):
            continue
        lon, lat = middle(crs)
        x, y = (float(values[0]) for values in from_lonlat(crs, [lon], [lat]))
        registered = np.array(as_registered(crs, lon, lat)) * metres_per_unit(crs)
        if not np.isfinite(registered).all():
            continue
        looked += 1
        # The columns hold the axes as they are; of north and east, the eastings come first.
        assert (x, y) in [pytest.approx(registered, abs=1e-3), pytest.approx(registered[::-1], abs=1e-3)], code
        if order in ("east, north", "west, south", "south, west"):
            assert (x, y) == pytest.approx(registered, abs=1e-3), code
        if order == "north, east":
            assert (x, y) == pytest.approx(registered[::-1], abs=1e-3), code
        there = to_lonlat(crs, [x], [y])
        np.testing.assert_allclose(np.cos(np.radians(there[0] - lon)), 1.0, rtol=0, atol=1e-12, err_msg=str(code))
        np.testing.assert_allclose(there[1], lat, rtol=0, atol=1e-8, err_msg=str(code))
        assert mirrored(crs) == (order == "south, west"), code
        assert turned(crs) == (order == "west, south"), code
    computable = [code for code in ORDERS[order] if computed(CRS.from_epsg(code))]
    assert looked >= 0.9 * len(computable)


def survey(path, crs, count=30):
    """A walk of some metres in the middle of the area of use, in the columns as they are, east and north growing."""
    lon, lat = middle(crs)
    east, north = from_lonlat(crs, lon + np.arange(count) * 1e-5, lat + (np.arange(count) % 5) * 1e-5)
    unit = metres_per_unit(crs)
    rows = [f"p{i},{e / unit:.4f},{n / unit:.4f},100" for i, (e, n) in enumerate(zip(east, north))]
    path.write_text("name,easting,northing,height\n" + "\n".join(rows) + "\n", encoding="utf-8")
    return lon, lat


@pytest.mark.parametrize("code", [2048, 2053, 22279, 29371])
def test_a_survey_in_a_turned_system_lies_where_it_is_and_says_so(tmp_path, code):
    crs = CRS.from_epsg(code)
    lon, lat = survey(tmp_path / "a.csv", crs)
    done = take_in([tmp_path / "a.csv"], IntakeOptions(crs=crs))
    assert not done.areas[0].outside.any()
    said = [str(one) for one in done.messages]
    assert any("run west and south" in one and "south at the top" in one for one in said)
    told = re.search(r"(\d+\.\d+)° ([NS]), (\d+\.\d+)° ([EW])", str(done.where))
    assert float(told.group(1)) == pytest.approx(abs(lat), abs=1e-3)
    assert float(told.group(3)) == pytest.approx(abs(lon), abs=1e-3)
    assert (told.group(2), told.group(4)) == ("S", "E")


@pytest.mark.parametrize("code", [2065, 5513, 8352])
def test_a_mirrored_system_is_refused_with_the_upright_one_which_is_right(tmp_path, code):
    crs = CRS.from_epsg(code)
    lon, lat = survey(tmp_path / "a.csv", crs)
    with pytest.raises(QuestionError) as raised:
        take_in([tmp_path / "a.csv"], IntakeOptions(crs=crs))
    (question,) = raised.value.questions
    assert question.topic is Topic.CRS
    option, (answer,) = f"--source-crs EPSG:{code} --crs", question.answers
    assert answer.option == option
    other = CRS.from_user_input(answer.value)
    assert [axis.direction for axis in other.axis_info] == ["east", "north"]
    done = take_in([tmp_path / "a.csv"], IntakeOptions(crs=other, source_crs=crs))
    there = to_lonlat(other, done.survey.points.easting, done.survey.points.northing)
    assert (there[0][0], there[1][0]) == pytest.approx((lon, lat), abs=1e-7)
    assert np.diff(done.survey.points.easting).min() > 0  # eastward again


def test_krovak_north_oriented_by_the_guidance_note():
    """S-JTSK (Ferro) / Krovak, worked example of IOGP publication 373-7-2 (EPSG Guidance Note 7-2), method 9819.

    Latitude 50°12'32.442" N, longitude 16°50'59.179" E of Greenwich; southing 1050538.63 m, westing 568991.00 m.
    Figures from memory; that PROJ meets the printed result speaks for them.
    """
    crs = CRS.from_epsg(2065)
    lon, lat = 16 + 50 / 60 + 59.179 / 3600, 50 + 12 / 60 + 32.442 / 3600
    south, west = (float(values[0]) for values in from_lonlat(crs, [lon], [lat]))
    assert (south, west) == pytest.approx((1050538.63, 568991.00), abs=0.02)
    east, north = (float(values[0]) for values in from_lonlat(upright(crs), [lon], [lat]))
    assert (east, north) == pytest.approx((-568991.00, -1050538.63), abs=0.02)


def test_transverse_mercator_south_oriented_by_the_guidance_note():
    """Hartebeesthoek94 / Lo29, worked example of IOGP publication 373-7-2, method 9808.

    Latitude 25°43'55.302" S, longitude 28°16'57.479" E; westing 71984.48 m, southing 2847342.74 m. Figures from
    memory; that PROJ meets the printed result speaks for them.
    """
    lon, lat = 28 + 16 / 60 + 57.479 / 3600, -(25 + 43 / 60 + 55.302 / 3600)
    west, south = (float(values[0]) for values in from_lonlat(CRS.from_epsg(2053), [lon], [lat]))
    assert (west, south) == pytest.approx((71984.48, 2847342.74), abs=0.02)


def test_what_proj_cannot_compute_is_told_and_not_called_outside(tmp_path):
    lost = [code for codes in ORDERS.values() for code in codes if not computed(CRS.from_epsg(code))]
    if not lost:
        pytest.skip("this PROJ computes all of them")
    crs = CRS.from_epsg(lost[0])
    steps = np.arange(20) * 3.0
    points = make_points(1000 + steps, 2000 + steps, steps, crs=crs)
    assert not check_area(points).outside.any()
    file = tmp_path / "a.csv"
    rows = [f"p{i},{1000 + i}.5,{2000 + i % 3}.25,100" for i in range(20)]
    file.write_text("name,easting,northing,height\n" + "\n".join(rows) + "\n", encoding="utf-8")
    done = take_in([file], IntakeOptions(crs=crs))
    assert any("cannot compute" in str(one) for one in done.messages)
    with pytest.raises(SurveyError, match="cannot compute"):
        take_in([file], IntakeOptions(crs=CRS.from_epsg(25832), source_crs=crs))
