"""A correction on the user's word: only for the lines it explains, judged first and looked at again afterwards."""

import numpy as np
import pytest
from pyproj import CRS, Transformer

from plugin.core.georeference.area import check_area, suggestion_names
from plugin.core.georeference.correction import correct_lines
from plugin.core.georeference.intake import take_in
from plugin.core.georeference.intake_options import IntakeOptions
from plugin.core.georeference.position import Kind, Landmark
from plugin.core.messages import SurveyError
from plugin.core.points.pointset import make_points
from plugin.core.points.questions import QuestionError

UTM32 = CRS.from_epsg(25832)


def walk(count=200, east=500_000.0, north=5_700_000.0, step=0.5, crs=UTM32):
    i = np.arange(count)
    return make_points(
        east + step * i, north + 3.0 * (i // 40), 100 + 0.01 * i, crs=crs, source="s.csv", source_line=i + 2
    )


def changed(points, **columns):
    values = {key: columns.get(key, getattr(points, key)) for key in ("easting", "northing", "height")}
    return make_points(
        *values.values(), crs=columns.get("crs", points.crs), source=points.source, source_line=points.source_line
    )


def swapped(points, which):
    east, north = points.easting.copy(), points.northing.copy()
    east[which], north[which] = points.northing[which], points.easting[which]
    return changed(points, easting=east, northing=north)


def correct(points, name, **more):
    return correct_lines(points, check_area(points), name, (), more.pop("follow", True), **more)


@pytest.mark.parametrize("share", [0.02, 0.3, 0.7, 1.0])
def test_swapped_lines_are_exchanged_and_the_others_stay(share):
    true = walk()
    which = np.arange(200) < 200 * share
    done = correct(swapped(true, which), "swapped")
    np.testing.assert_array_equal(done.points.easting, true.easting)
    np.testing.assert_array_equal(done.points.northing, true.northing)
    np.testing.assert_array_equal(done.changed, which)
    assert not done.area.outside.any()
    (record,) = done.records
    assert record.statements[0].values["count"] == which.sum()
    if share < 1:
        assert any(f"{200 - which.sum()} points lie well as they are" in str(one) for one in done.messages)


def test_a_line_of_zeros_does_not_take_the_others_with_it():
    """A neighbouring zone would bring 0, 0 into its area no better; the others are not touched."""
    true = walk()
    east, north = true.easting.copy(), true.northing.copy()
    east[7], north[7] = 0.0, 0.0
    points = changed(true, easting=east, northing=north)
    area = check_area(points)
    assert area.outside.sum() == 1
    for name in suggestion_names(area):
        if area.suggestions[suggestion_names(area).index(name)].reading is None:
            continue
        with pytest.raises(QuestionError, match="is not applied"):
            correct_lines(points, area, name, (), True)


def test_lines_of_another_zone_are_brought_into_the_zone_of_the_others():
    true = walk(east=690_000.0)
    there = Transformer.from_crs(25832, 25833, always_xy=True)
    which = np.arange(200) >= 120
    east, north = true.easting.copy(), true.northing.copy()
    east[which], north[which] = there.transform(true.easting[which], true.northing[which])
    east[which] += 33_000_000.0  # with the zone number before them, so that they are outside
    points = changed(true, easting=east, northing=north)
    area = check_area(points)
    name = next(one for one in suggestion_names(area) if "zone" in one or "prefix" in one)
    done = correct_lines(points, area, name, (), True)
    assert np.hypot(done.points.easting - true.easting, done.points.northing - true.northing).max() < 0.01
    assert done.points.crs == UTM32


def test_heights_follow_the_unit_of_plan():
    true = walk()
    feet = changed(true, easting=true.easting / 0.3048, northing=true.northing / 0.3048, height=true.height / 0.3048)
    done = correct(feet, "unit:ft")
    np.testing.assert_allclose(done.points.height, true.height, rtol=0, atol=1e-9)
    assert any("heights were in the same unit" in str(one) for one in done.records[0].statements)
    done = correct(feet, "unit:ft", follow=False)
    np.testing.assert_array_equal(done.points.height, feet.height)


def test_a_height_unit_of_its_own_stays(tmp_path):
    """A file whose heights are said to be metres, and whose plan turns out to be feet."""
    file = tmp_path / "a.csv"
    rows = [f"p{i},{(500000 + 0.5 * i) / 0.3048:.4f},{(5700000 + i % 3) / 0.3048:.4f},100.5" for i in range(40)]
    file.write_text("name,easting,northing,height\n" + "\n".join(rows) + "\n", encoding="utf-8")
    from plugin.core.units import LengthUnit

    options = IntakeOptions(crs=UTM32, unit=LengthUnit.METRE, correct="unit:ft")
    assert take_in([file], options).survey.points.height[0] == pytest.approx(100.5 * 0.3048)
    options = IntakeOptions(crs=UTM32, unit=LengthUnit.METRE, height_unit=LengthUnit.METRE, correct="unit:ft")
    assert take_in([file], options).survey.points.height[0] == pytest.approx(100.5)


def test_a_cause_far_from_what_is_known_is_refused_with_the_near_one():
    """Numbers of zone 33 that a file has swapped too: the zone alone is offered, a layer tells another is right."""
    true = walk()
    points = swapped(true, np.ones(200, bool))
    area = check_area(points)
    lon, lat = 9.0, 51.45
    marks = [Landmark("parcels", Kind.LAYER, lon - 0.01, lat - 0.01, lon + 0.01, lat + 0.01)]
    done = correct_lines(points, area, "swapped", (), True, marks)
    np.testing.assert_array_equal(done.points.easting, true.easting)
    # ETRS89 / UTM zone 32N (zE-N) without its zone number: zones 29 to 33 of other variants are offered too.
    home = walk(east=32_500_000.0, crs=CRS.from_epsg(4647))
    bare = changed(home, easting=home.easting - 32_000_000.0)
    area = check_area(bare)
    places = {name: correct_place(area, bare, name) for name in suggestion_names(area)}
    wrong = "zone:EPSG:25831"
    assert abs(places[wrong][0] - lon) > 5
    with pytest.raises(QuestionError, match="from what is known of it; it is not applied") as raised:
        correct_lines(bare, area, wrong, (), True, marks)
    better = [answer.value for answer in raised.value.questions[0].answers]
    assert better[0] == "prefix:EPSG:4647"
    assert wrong not in better


def correct_place(area, points, name):
    from plugin.core.georeference.position import site_of

    one = area.suggestions[suggestion_names(area).index(name)]
    site = site_of(one.crs, *one.reading.of(points.easting, points.northing))
    return site.lon, site.lat


def test_a_unit_that_is_no_walk_is_refused_where_another_cause_is():
    """New Zealand, exchanged: feet bring the points into the area too, with steps of 15 cm in place of 50."""
    crs = CRS.from_epsg(2193)
    true = walk(east=1_570_000.0, north=5_180_000.0, crs=crs)
    points = swapped(true, np.ones(200, bool))
    area = check_area(points)
    units = [name for name in suggestion_names(area) if name.startswith("unit")]
    for name in units:
        with pytest.raises(QuestionError, match="from point to point"):
            correct_lines(points, area, name, (), True)
    np.testing.assert_array_equal(correct_lines(points, area, "swapped", (), True).points.easting, true.easting)


def test_what_is_not_explained_is_told_by_its_line():
    true = walk()
    points = swapped(true, np.arange(200) < 60)
    points.easting[199] = 99.0
    done = correct(points, "swapped")
    assert done.area.outside.sum() == 1
    assert any("line 201 is not explained" in str(one) for one in done.messages)


def test_far_outside_is_asked_and_a_few_kilometres_beyond_the_border_are_not(tmp_path):
    far = tmp_path / "far.csv"
    far.write_text("name,easting,northing,height\n" + "".join(f"p{i},{i}.5,{2 * i}.25,1\n" for i in range(20)))
    with pytest.raises(SurveyError):
        take_in([far], IntakeOptions(crs=UTM32))
    beyond = tmp_path / "beyond.csv"
    rows = "".join(f"p{i},{720000 + 0.5 * i:.2f},{5700000 + i % 3}.25,100\n" for i in range(20))
    beyond.write_text("name,easting,northing,height\n" + rows)
    done = take_in([beyond], IntakeOptions(crs=UTM32))
    assert done.areas[0].outside.all()
    assert any("beyond the border" in str(one) for one in done.messages)


@pytest.mark.parametrize("from_line", [100, 133])
def test_part_of_the_lines_in_another_order_names_the_correction_that_mends_them(tmp_path, from_line):
    rng = np.random.default_rng(from_line)
    east = np.round(548_240 + np.cumsum(rng.normal(0, 0.4, 200)), 3)
    north = np.round(5_712_395 + np.cumsum(rng.normal(0, 0.4, 200)), 3)
    rows = []
    for i, (e, n) in enumerate(zip(east, north)):
        first, second = (n, e) if i >= from_line else (e, n)
        rows.append(f"{i},{first:.3f},{second:.3f},92.{i:03d}")
    path = tmp_path / "survey.csv"
    path.write_text("Pt,E,N,Z\n" + "\n".join(rows) + "\n")
    try:
        said = " ".join(map(str, take_in([path], IntakeOptions(crs=UTM32)).messages))
        assert from_line > 100  # the gate put the fewer lines aside
    except QuestionError as error:
        said = str(error)
    assert "--correct swapped" in said
    points = take_in([path], IntakeOptions(crs=CRS.from_epsg(25832), correct="swapped")).survey.points
    assert np.allclose(points.easting, east)
    assert np.allclose(points.northing, north)
